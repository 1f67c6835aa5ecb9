"""Why a day's carbs are what they are: one to three plain sentences, told to whoever reads them.

The rules and gates hold their own; here is what the forecast, a bound and skipped answers add. By
itself it is English, kilograms and litres; a chat gives a `Told` of its own.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from engine.decision.decide import Decision
from engine.decision.gates import GATES
from engine.decision.kept import InShort
from engine.decision.rules import RULES, Forecast
from engine.decision.rules.rule import Told
from engine.values.limits import CAUTION
from engine.values.telling import mark

BY_RULE = {rule.id: rule for rule in RULES}
BY_GATE = {gate.id: gate for gate in GATES}
#: Rules that stand on what is seen: their own sentence is told, whatever the forecast adds to it.
SEEN_FIRST = frozenset(rule.id for rule in RULES if rule.forecast is Forecast.DEEPENS)
#: The answers of the look inside a sentence.
LOOK_NEEDED = {"fullness": mark("how full you are"), "sharpness": mark("how sharp the lines are")}

Teller = Callable[[Mapping[str, Any], float], Told]


def reason(
    decision: Decision | InShort,
    teller: Teller = Told,
    *,
    self_coached: bool = False,
    stands_g: float | None = None,
) -> str:
    """One to three sentences for the athlete; `self_coached` is somebody without another coach.

    `stands_g`: the change that is in force while a larger one waits, so that nobody eats the larger.
    """
    told = teller(decision.trace.facts, decision.change_g)
    if decision.rule in BY_GATE:
        return told.tr(BY_GATE[decision.rule].says, missing=_missing(decision, told))
    seen_first = decision.rule in SEEN_FIRST
    foreseen = "" if seen_first else _foreseen(decision, told, self_coached=self_coached)
    in_force = told if stands_g is None else teller(decision.trace.facts, stands_g)
    said = [
        foreseen or BY_RULE[decision.rule].tells(in_force),
        _seen_too(told) if foreseen else "",
        _not_told(told),
    ]
    if decision.bound == CAUTION:
        said.append(told.tr("I won't add carbs on these answers."))
    if decision.tell_coach and not self_coached and not foreseen:
        said.append(told.tr("Your coach will have a look."))
    return " ".join(part for part in said if part)


def _foreseen(decision: Decision | InShort, told: Told, *, self_coached: bool) -> str:
    """The sentence where the forecast, and not the rule alone, made the figure what it is."""
    trace, rule_g = decision.trace, decision.trace.rule_g or 0.0
    if trace.disagree and self_coached:
        return told.tr(
            "Going by this morning alone I would have said {change}, but the forecast for the day is "
            "no better with it. Stay on plan.",
            change=told.change_of(rule_g),
        )
    if trace.disagree:
        return told.tr(
            "Going by this morning alone I would have said {change}, but the forecast for the day is "
            "no better with it. Stay on plan. Your coach has been told.",
            change=told.change_of(rule_g),
        )
    if trace.forecast_g is None or trace.asked_g == trace.rule_g:
        return ""
    if told["weight_kg"] is None:
        return told.tr(
            "Fullness {fullness} this morning. The forecast for the day is best with {change}."
        )
    return told.tr(
        "Fullness {fullness} and {weight} this morning. The forecast for the day is best with "
        "{change}."
    )


def _seen_too(told: Told) -> str:
    """What the coach saw, where the sentence of the rule that says so is not told."""
    return told.tr("Your coach sees: {look}.") if told.look() else ""


def _missing(decision: Decision | InShort, told: Told) -> str:
    """The answers that nothing is decided without, by name."""
    return told.each_and(
        [told.tr(name) for key, name in LOOK_NEEDED.items() if key in decision.ask_again]
    )


def _not_told(told: Told) -> str:
    """What was skipped, where that leaves more doubt."""
    if told["weight_kg"] is None:
        return told.tr("Without a weight I went by the look alone.")
    if told["water_l"] is None:
        return told.tr("I don't know how much you drank.")
    return ""
