"""How large a change is: the rule gives direction and vetoes, the forecast may give the size.

A load that has come in full twice running is repeated: there the forecast has no say, and only what
is seen of a morning moves the plan.
"""

from __future__ import annotations

from dataclasses import dataclass

from engine.decision.foresight import Foresight
from engine.decision.rules.rule import Forecast, Rule
from engine.evidence import deciding as e
from engine.values.case import Case
from engine.values.look import Look


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
    """Whether the last two weeks came in full on a load about as large as this plan's."""
    weeks = case.trials[-2:]
    if len(weeks) < 2 or any(week.look is not Look.FULL for week in weeks):
        return False
    if any(week.plan.load_days != case.plan.load_days for week in weeks):
        return False  # as much on other days is another load
    planned = case.plan.load_g
    loads = [week.as_it_went.load_g for week in weeks]
    return all(abs(load - planned) <= e.SAME_LOAD_WITHIN.value * planned for load in loads)
