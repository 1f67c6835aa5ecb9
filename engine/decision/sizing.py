"""How large a change is: the rule gives direction and vetoes, the forecast may give the size.

A load that has come in full twice running is repeated, and one that a trial is to look at is eaten as
planned: there the forecast has no say, and only what is seen of a morning moves the plan.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from engine.decision.facts import Facts
from engine.decision.foresight import Foresight
from engine.decision.rules.rule import Forecast, Rule
from engine.evidence import deciding as e
from engine.evidence import grading as known
from engine.evidence.body import tracking
from engine.evidence.source import Number
from engine.values.athlete import EventKind
from engine.values.case import Case, PastWeek
from engine.values.checkin import Look


def graded_g(facts: Facts, steps: int, step_g: float, body_mass_kg: float) -> float:
    """Grams that a rule asks for, in whole steps of the coach's: at least its own steps.

    A rule's steps give direction and the small step that goes out alone. Where no forecast gives a
    size, the proposal grows from there: with how far fullness was from what was expected, today and the
    morning before, less what is this athlete's own way of answering; and with how the planned load
    stands beside the usual one, which counts by itself, too. Once a trial has shown what such a load
    does, only a spill earns more than steps. It never turns a step round, nor makes it smaller.
    """
    small = steps * step_g
    size = _g_per_kg(facts, steps) * body_mass_kg
    whole = round(min(size, known.GRADED_MOST.value * body_mass_kg) / step_g) * step_g
    return max(small, whole) if steps > 0 else min(small, -whole)


def _g_per_kg(facts: Facts, steps: int) -> float:
    if steps == 0 or not facts.loading:
        return 0.0
    # One morning alone earns no more than the rule's steps, nor do two where a week has shown more.
    small = facts.fullness_short_before is None or facts.load_shown
    if steps > 0:
        if not facts.measured:
            return 0.0
        past = 0.0 if small else max(facts.behind - known.RAISE_FROM.value, 0.0)
        return max(past * known.RAISE_PER_GRADE.value, facts.under_by)
    cut = max(facts.ahead_by, 0.0) * known.CUT_PER_GRADE.value
    cut = cut if facts.ahead and not small else 0.0
    # Blur on a load that did not spill the last time is more likely water, or a strict eye.
    doubtful = facts.load_held and not facts.seen_spilled
    if steps <= -2 and (facts.spilling or facts.seen_spilled) and not doubtful:
        clear = facts.blurred or facts.seen_spilled or facts.says_spilled
        spill = known.SPILL_CUT if clear else known.FALLEN_CUT
        cut = max(cut, _for_spill(facts, spill))
    if facts.soft_on_much and not small and not doubtful:
        cut = max(cut, _for_spill(facts, known.SOFT_ON_MUCH_CUT))
    # What the plan's load alone asks for stands on no morning.
    return cut if facts.flat else max(cut, facts.over_by)


def _for_spill(facts: Facts, on_a_usual_load: Number) -> float:
    return on_a_usual_load.value + known.SPILL_CUT_PER_LOAD.value * facts.load_counted


@dataclass(frozen=True, slots=True)
class Sized:
    """A change in grams, what rule and forecast alone would have done, and whether they pull apart."""

    change_g: float
    rule_g: float
    forecast_g: float | None = None
    disagree: bool = False


def sized_by(
    view: Foresight | None,
    rule: Rule,
    small_g: float,
    *,
    graded_g: float | None = None,
    settled: bool = False,
) -> Sized:
    """What rule and forecast come to together; opposed, the smaller step.

    But for a rule that stands on what is seen: that the forecast may deepen, and not undo. `small_g`
    are the rule's own steps; `graded_g` is what it asks for where the forecast gives no size.
    """
    rule_g = small_g if graded_g is None else graded_g
    if view is None or view.planned is None or view.best is None:
        return Sized(rule_g, rule_g)
    forecast_g = round(view.best.carb_g - view.planned.carb_g, 6)  # no dust of binary fractions
    if rule.forecast is Forecast.SILENT:
        return Sized(rule_g, rule_g, forecast_g)
    if settled:
        return Sized(rule_g, rule_g, forecast_g)
    # Beside a forecast the rule stands for a direction, and for no more than its own steps.
    if rule.forecast is Forecast.DEEPENS and forecast_g >= small_g:
        return Sized(small_g, small_g, forecast_g)
    if rule.forecast in (Forecast.LOWERS, Forecast.DEEPENS):
        forecast_g = min(forecast_g, 0.0)
    opposed = bool(small_g) and small_g * forecast_g <= 0
    if opposed and rule.forecast is not Forecast.DECIDES:
        return Sized(0.0, small_g, forecast_g, disagree=True)
    return Sized(forecast_g, small_g, forecast_g)


def settled(case: Case) -> bool:
    """Whether the load stands on looks already, or is to be looked at as it is planned.

    The last two weeks came in full on a load about as large; or one that came in full and one that was
    tried beside it tell where this one lies; or this trial itself is put beside one that came in full.
    """
    return _repeated(case) or _between(case) or _asking(case)


def _repeated(case: Case) -> bool:
    weeks = case.trials[-2:]
    if len(weeks) < 2 or any(week.look is not Look.FULL for week in weeks):
        return False
    if any(week.plan.load_days != case.plan.load_days for week in weeks):
        return False  # as much on other days is another load
    return all(_alike(week.as_it_went.load_g, case.plan.load_g) for week in weeks)


def _between(case: Case) -> bool:
    full = tried_beside(case.trials)
    if full is None or full.plan.load_days != case.plan.load_days:
        return False
    reaches = float(tracking.BETWEEN_LOADS) + e.SAME_LOAD_WITHIN.value
    there = full.as_it_went.load_g
    return abs(case.plan.load_g - there) <= reaches * there


def _asking(case: Case) -> bool:
    looked_at = [week for week in case.trials if week.look is not None]
    if case.event.kind is not EventKind.TRIAL or not looked_at:
        return False
    last = looked_at[-1]
    return (
        last.look is Look.FULL
        and last.plan.load_days == case.plan.load_days
        and not _alike(last.as_it_went.load_g, case.plan.load_g)
    )


def tried_beside(weeks: Sequence[PastWeek]) -> PastWeek | None:
    """The week that came in full beside whose load the last one was put, to see how far full reaches.

    Of those that were looked at. None where the last was not planned so, was not eaten as planned, or
    came in on the other side: flat on more, or spilled over on less, tells of something else.
    """
    looked_at = [week for week in weeks if week.look is not None][-2:]
    if len(looked_at) < 2:
        return None
    full, last = looked_at
    was_g, put_g = full.as_it_went.load_g, last.plan.load_g
    if full.look is not Look.FULL or full.plan.load_days != last.plan.load_days:
        return None
    if _alike(was_g, put_g) or not _alike(last.as_it_went.load_g, put_g):
        return None
    other_side = Look.FLAT if put_g > was_g else Look.SPILLED
    return None if last.look is other_side else full


def _alike(load_g: float, planned_g: float) -> bool:
    return abs(load_g - planned_g) <= e.SAME_LOAD_WITHIN.value * planned_g
