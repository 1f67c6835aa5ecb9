"""How the day looks from here, in words: never more precise than the model is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from bot.languages import mark, tr
from bot.messages.chances import all_three, in_ten
from bot.messages.reasons import change_in_words
from engine.evidence.deciding import MORNINGS_TO_TRUST
from engine.units import WeightUnit, show_weight

Decision = Mapping[str, Any]
LIKELY, REAL, UNLIKELY = 0.6, 0.35, 0.1  # our own choice of words for chances
AS_EXPECTED_KG = 0.05
NEAR_G = 25.0  # a usual step: within it the odds are as good as the same


def outlook_line(decision: Decision) -> str:
    """One plain line for the athlete; empty where the forecast has nothing to say."""
    odds = odds_in_force(decision)
    if odds is None:
        return ""
    if odds["full"] >= LIKELY:
        course = "On course for full"
    elif odds["flat"] >= max(odds["full"], odds["spilled"]):
        course = "More likely flat than full as things stand"
    elif odds["spilled"] >= odds["full"]:
        course = "More likely spilled over than full as things stand"
    else:
        course = "Full is within reach"
    return f"{course}; {_risk(odds)}."


def _risk(odds: Mapping[str, float]) -> str:
    spilled, flat = odds["spilled"], odds["flat"]
    if spilled >= REAL:
        return "spilling over is a real risk"
    if spilled >= UNLIKELY:
        return "spilling over is possible"
    if flat >= REAL:
        return "spilling over is unlikely, coming in flat is the risk"
    return "spilling over is unlikely"


def odds_in_force(decision: Decision, set_g: float | None = None) -> Mapping[str, Any] | None:
    """The odds of the candidate nearest to the figure that was set, or the decision came to."""
    view, carb_g = decision.get("foresight"), decision["carb_g"] if set_g is None else set_g
    if view is None or view["best"] is None or view["planned"] is None or carb_g is None:
        return None
    candidates: list[Mapping[str, Any]] = [view["planned"], view["best"]]
    nearest = min(candidates, key=lambda odds: abs(odds["carb_g"] - carb_g))
    # Odds of another figure than was set since say nothing of it.
    return nearest if set_g is None or abs(nearest["carb_g"] - set_g) <= NEAR_G else None


#: Why the forecast stands aside, by what the engine says of it.
ASIDE = {
    "too few mornings yet": mark(
        "• The forecast stands aside, so the rules decide alone: there is too little to go by yet "
        "(it takes {mornings} mornings of this week, or an earlier week)"
    ),
    "three mornings running outside what it expected": mark(
        "• The forecast stands aside, so the rules decide alone: three mornings running the weight "
        "lay outside the bands it gave, so it does not follow this body"
    ),
}


def why_lines(decision: Decision, weight_unit: str) -> list[str]:
    """What the model saw: the weight against its band, rule and forecast, and the odds."""
    view = decision.get("foresight")
    if view is None:
        return []
    if not view["trusted"]:
        aside = ASIDE.get(view["why_not"], mark("• The forecast stands aside"))
        return [tr(aside, mornings=f"{MORNINGS_TO_TRUST.value:g}")]
    lines = [
        _residual(decision, view["residual_kg"], weight_unit),
        _rule_and_forecast(decision["trace"]),
        *odds_lines(view),
    ]
    return [f"• {line}" for line in lines if line]


def _residual(decision: Decision, off_kg: float | None, weight_unit: str) -> str:
    if off_kg is None:
        return ""
    size = show_weight(abs(off_kg), WeightUnit.LB if weight_unit != "kg" else WeightUnit.KG)
    band, facts = decision["band"], decision["trace"]["facts"]
    inside = band is None or not facts or not (facts["above_band"] or facts["under_band"])
    if inside and abs(off_kg) < AS_EXPECTED_KG:
        return tr("The weight is what the model expected")
    if inside:
        return (
            tr("The weight is {size} over what the model expected, inside its band", size=size)
            if off_kg > 0
            else tr(
                "The weight is {size} under what the model expected, inside its band", size=size
            )
        )
    return (
        tr("The weight is {size} over what the model expected, outside its band", size=size)
        if off_kg > 0
        else tr("The weight is {size} under what the model expected, outside its band", size=size)
    )


def _rule_and_forecast(trace: Mapping[str, Any]) -> str:
    """What each of the two would have done, and which was followed; "" without a forecast."""
    rule_g, forecast_g = trace.get("rule_g"), trace.get("forecast_g")
    if forecast_g is None or rule_g is None:
        return ""
    said = {"rule": change_in_words(rule_g), "forecast": change_in_words(forecast_g)}
    if trace.get("disagree"):
        return tr(
            "The rule alone says {rule}, the forecast {forecast}. They pull apart, so the smaller "
            "step: no change",
            **said,
        )
    if rule_g == forecast_g:
        return tr("The rule and the forecast say the same: {rule}", **said)
    if trace["asked_g"] == rule_g:
        return tr(
            "The rule says {rule}, the forecast {forecast}. Here the rule has the say", **said
        )
    return tr("The rule alone says {rule}. The forecast sizes it: {forecast}", **said)


def odds_lines(view: Mapping[str, Any]) -> list[str]:
    """The chances of the day with the plan's figure, and with the best of those allowed."""
    planned, best = view["planned"], view["best"]
    if planned is None or best is None:
        return []
    said = [
        tr(
            "With {grams} g, as planned, the day looks: {chances}",
            grams=f"{planned['carb_g']:.0f}", chances=all_three(planned),
        )
    ]  # fmt: skip
    if best["carb_g"] == planned["carb_g"]:
        return [*said, tr("No other allowed figure looks better")]
    if in_ten(best) == in_ten(planned):
        return [
            *said,
            tr(
                "With {grams} g, the best of what is allowed, it is a shade better, in tenths the "
                "same",
                grams=f"{best['carb_g']:.0f}",
            ),
        ]
    return [
        *said,
        tr(
            "With {grams} g, the best of what is allowed: {chances}",
            grams=f"{best['carb_g']:.0f}", chances=all_three(best),
        ),
    ]  # fmt: skip


def foreseen(decision: Decision) -> str:
    """The chances for a coach who is to sign a change; "" where the forecast has nothing to say."""
    view = decision.get("foresight")
    if view is None or not view["trusted"]:
        return ""
    return "\n".join(f"{line}." for line in odds_lines(view))


def ask_look(name: str, kind: str) -> str:
    """To the coach, the day after."""
    return (
        f"{name}'s {kind} was yesterday. How did they look when it mattered? Your word teaches the "
        "forecast where their ceiling is."
    )


LOOKS = {"flat": "Flat", "full": "Full", "spilled over": "Spilled over"}


def look_unknown_button() -> str:
    return "Can't say"


def look_kept(name: str, look: str) -> str:
    return f"Kept: {name} was {look} on the day. The next forecast begins from that."


def look_left() -> str:
    return "Left open."


def forecast_button(on: bool) -> str:
    return "Forecast off" if on else "Forecast on"


def forecast_switched(name: str, on: bool) -> str:
    if on:
        return (
            f"The forecast is on for {name}: from the load on it sizes the changes that the rules "
            "propose, inside your limits and your sign-off."
        )
    return f"The forecast is off for {name}: the rules decide alone."
