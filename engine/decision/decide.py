"""From one morning's answers to the day's carbohydrate: gates, then rules, then limits."""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from typing import Any

from engine.decision.band import WeightBand, weight_band
from engine.decision.foresight import Foresight, has_mornings_to_follow, look_ahead, with_proposed
from engine.decision.gates import Gate, Stop, first_shut, unanswered
from engine.decision.gather import expected_fullness, gather
from engine.decision.record import GateStep, Trace, case_as_dict, case_from_dict, plain
from engine.decision.rules import RULES, Forecast, Rule, first_match
from engine.decision.sizing import graded_g, settled, sized_by
from engine.evidence.source import Source
from engine.safety import Flag, Level, safety_flags
from engine.values.case import DEFAULT_CUT_OFF, Case, ForecastUse, answers_needed
from engine.values.limits import CAUTION, Fitted, Target, Window, fit, round_carbs
from engine.values.plan import PLAN_DAYS

__all__ = [
    "DEFAULT_CUT_OFF",
    "Case",
    "Decision",
    "Outcome",
    "answers_needed",
    "asks_the_model",
    "case_as_dict",
    "case_from_dict",
    "decide",
    "decision_as_dict",
    "flags_of_case",
]


WARNING_GATE = "warning-flag"


class Outcome(StrEnum):
    ADJUSTED = "adjusted"
    HELD = "held"
    ESCALATED = "escalated"


@dataclass(frozen=True, slots=True, kw_only=True)
class Decision:
    """What a check-in led to.

    `date` is the check-in's, `sets_date` the eating day set. `rule` is the id of the gate or rule
    that decided, `bound` the limit that cut what it asked for. `carb_g` is None where no figure can
    stand; `change_g` is against the plan. With `needs_sign_off`, `lapse_g` is what stands if the
    coach says nothing: the same change, as far as it may go out without asking. `ask_again` names
    `CheckIn` fields.
    """

    date: dt.date
    sets_date: dt.date
    days_out: int
    outcome: Outcome
    target: Target | None
    planned_carb_g: float | None
    lapse_g: float | None
    rule: str
    bound: str | None
    needs_sign_off: bool
    flags: tuple[Flag, ...]
    sources: tuple[Source, ...]
    tell_coach: bool
    ask_again: tuple[str, ...]
    band: WeightBand | None
    expected_fullness: int | None
    trace: Trace
    foresight: Foresight | None = None

    @property
    def carb_g(self) -> float | None:
        return self.target.carb_g if self.target else None

    @property
    def change_g(self) -> float:
        """Grams more (or, negative, less) than planned; 0 where either is unknown."""
        if self.target is None or self.planned_carb_g is None:
            return 0.0
        return difference(self.target.carb_g, self.planned_carb_g)


def decide(
    case: Case, *, without: frozenset[str] = frozenset(), table: Sequence[Rule] = RULES
) -> Decision:
    """The decision a case leads to. It never raises: every doubt has its own gate.

    `without` leaves rules out by their ids, and `table` puts others in their place, to measure what
    each is worth and to replay; never on a person.
    """
    if case.forecast is ForecastUse.SHOWS:
        return _shown(case, without, table)
    flags = flags_of_case(case)
    shut, passed = first_shut(case, flags)
    steps = tuple(GateStep(gate.id, passed=True) for gate in passed)
    if shut is not None:
        gate, stop = shut
        return _stopped(case, flags, gate, stop, (*steps, GateStep(gate.id, passed=False)))
    return _ruled(case, flags, steps, without, table)


def asks_the_model(case: Case) -> bool:
    """Whether deciding on a case takes a forecast with mornings to follow, which is what takes time."""
    if case.forecast is ForecastUse.RULES_ONLY or not has_mornings_to_follow(case):
        return False
    shut, _ = first_shut(case, flags_of_case(case))
    return shut is None


def _shown(case: Case, without: frozenset[str], table: Sequence[Rule]) -> Decision:
    """What the rules decide alone, with what the forecast sees and would have proposed beside it."""
    rules_only = replace(case, forecast=ForecastUse.RULES_ONLY)
    alone = decide(rules_only, without=without, table=table)
    seen = decide(replace(case, forecast=ForecastUse.PROPOSES), without=without, table=table)
    if seen.foresight is None:
        return alone
    trace = replace(alone.trace, forecast_g=seen.trace.forecast_g, would_g=seen.carb_g)
    view = replace(seen.foresight, proposed=None)
    if alone.carb_g is not None:
        view = with_proposed(view, case, alone.carb_g)
    return replace(alone, foresight=view, trace=trace)


def decision_as_dict(decision: Decision) -> dict[str, Any]:
    """The whole decision as JSON-able data."""
    whole: dict[str, Any] = plain(decision)
    return {**whole, "carb_g": plain(decision.carb_g), "change_g": plain(decision.change_g)}


def flags_of_case(case: Case) -> tuple[Flag, ...]:
    """The safety flags of a case, whatever is decided of it."""
    return safety_flags(case.week_so_far, water_ceiling_l=case.limits.water_ceiling_l)


def _stopped(
    case: Case, flags: tuple[Flag, ...], gate: Gate, stop: Stop, steps: tuple[GateStep, ...]
) -> Decision:
    """A gate decides: the figure in force stays, where there is one."""
    warned = gate.id == WARNING_GATE
    fitted = _standing(case, warned=warned)
    bound = fitted.bound if fitted else None
    return Decision(
        **_common(case, flags),
        outcome=Outcome.ESCALATED if warned else Outcome.HELD,
        target=fitted.target if fitted else None,
        lapse_g=fitted.target.carb_g if fitted else None,
        rule=gate.id,
        bound=bound,
        needs_sign_off=False,
        sources=_sources(flags, gate.source),
        tell_coach=stop.tell_coach,
        ask_again=stop.ask_again,
        trace=Trace(
            gates=steps,
            stopped=stop.facts,
            wanted_g=fitted.wanted_g if fitted else None,
            window=fitted.target.window if fitted else None,
            bound=bound,
            limits=case.limits.by_key,
        ),
    )


def _ruled(
    case: Case,
    flags: tuple[Flag, ...],
    steps: tuple[GateStep, ...],
    without: frozenset[str],
    table: Sequence[Rule],
) -> Decision:
    """A rule decides: what it asks for, fitted into what the limits leave."""
    planned, common = case.planned, _common(case, flags)
    window = _window(case)
    view = look_ahead(case, window) if case.forecast is ForecastUse.PROPOSES else None
    if view is not None and view.band is not None:
        common["band"] = view.band
    band = common["band"]
    if planned is None or band is None or window is None:
        raise AssertionError("the gates let a case through that has no plan or no window")
    facts = gather(case, planned, band)
    rule = first_match(facts, without, table)
    asked = rule.steps(facts)
    small_g = asked * case.limits.step_g
    rule_g = graded_g(facts, asked, case.limits.step_g, case.athlete.body_mass_kg)
    sized = sized_by(view, rule, small_g, graded_g=rule_g, settled=settled(case))
    wanted = planned.carb_g
    if sized.change_g:
        wanted = round_carbs(planned.carb_g + sized.change_g)
    fitted = _fit(wanted, planned.carb_g, window, flags)
    if view is not None:
        view = with_proposed(view, case, fitted.target.carb_g)
    change = difference(fitted.target.carb_g, planned.carb_g)
    asked_g = difference(wanted, planned.carb_g)
    # What only the coach may judge: no part of it goes out alone.
    only_asks = rule.forecast is Forecast.ASKS and sized.change_g != rule_g
    alone = case.limits.small_step(fitted.target, planned.carb_g)
    return Decision(
        **common,
        outcome=Outcome.ADJUSTED if change else Outcome.HELD,
        target=fitted.target,
        lapse_g=fit(planned.carb_g, window).target.carb_g if only_asks else alone,
        rule=rule.id,
        bound=fitted.bound,
        needs_sign_off=abs(change) > (0 if only_asks else case.limits.apply_without_asking_g),
        sources=_sources(flags, *rule.sources),
        tell_coach=rule.tell_coach(facts) or sized.disagree,
        foresight=view,
        ask_again=unanswered(case),
        trace=Trace(
            gates=steps,
            facts=facts.as_dict(),
            steps=asked,
            rule_g=sized.rule_g,
            forecast_g=sized.forecast_g,
            disagree=sized.disagree,
            asked_g=asked_g,
            wanted_g=wanted,
            window=window,
            bound=fitted.bound,
            limits=case.limits.by_key,
        ),
    )


def _fit(wanted: float, planned: float, window: Window, flags: tuple[Flag, ...]) -> Fitted:
    """The wish inside the window; a caution turns a raise into a hold first."""
    cautioned = wanted > planned and any(flag.level is Level.CAUTION for flag in flags)
    if not cautioned:
        return fit(wanted, window)
    held = fit(planned, window)
    return Fitted(held.target, wanted, held.bound or CAUTION)


def _standing(case: Case, *, warned: bool) -> Fitted | None:
    """The figure in force without any rule: the coach's signed one, else the plan's, fitted.

    In a warning a signed figure over the plan's is not raised to.
    """
    override, planned = case.override_g, case.planned
    if override is not None:
        if warned and planned is not None:
            override = min(override, planned.carb_g)
        return fit(override, case.limits.guard_rail_window())
    window = _window(case)
    return fit(planned.carb_g, window) if planned and window else None


def _window(case: Case) -> Window | None:
    if case.planned is None:
        return None
    return case.limits.window(case.planned.carb_g, case.load_room_g)


def _common(case: Case, flags: tuple[Flag, ...]) -> dict[str, Any]:
    """What every decision on this case holds, whoever decides."""
    morning = case.event.days_out(case.checkin.date)
    in_week = 0 <= morning <= max(PLAN_DAYS) + 1
    return {
        "date": case.checkin.date,
        "sets_date": case.sets_date,
        "days_out": case.days_out,
        "planned_carb_g": case.planned.carb_g if case.planned else None,
        "flags": flags,
        "band": _band(case) if in_week else None,
        "expected_fullness": (
            expected_fullness(case.plan, case.baseline, morning, case.event.look)
            if in_week
            else None
        ),
    }


def _band(case: Case) -> WeightBand:
    return weight_band(case.week_so_far)


def difference(grams: float, other: float) -> float:
    """Grams apart, without the dust of binary fractions that would ask for a needless sign-off."""
    return round(grams - other, 6)


def _sources(flags: tuple[Flag, ...], *own: Source) -> tuple[Source, ...]:
    """The deciding sources first, then those of the flags, each once."""
    return tuple(dict.fromkeys([*own, *(s for flag in flags for s in flag.sources)]))
