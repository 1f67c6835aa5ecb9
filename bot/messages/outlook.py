"""How the day looks from here, in words: never more precise than the model is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from bot.languages import mark, tr
from engine.units import WeightUnit, show_weight

Decision = Mapping[str, Any]
LIKELY, REAL, UNLIKELY = 0.6, 0.35, 0.1  # our own choice of words for chances


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


def odds_in_force(decision: Decision) -> Mapping[str, Any] | None:
    """The odds of the candidate nearest to the figure that the decision came to."""
    view, carb_g = decision.get("foresight"), decision["carb_g"]
    if view is None or view["best"] is None or view["planned"] is None or carb_g is None:
        return None
    candidates: list[Mapping[str, Any]] = [view["planned"], view["best"]]
    return min(candidates, key=lambda odds: abs(odds["carb_g"] - carb_g))


def why_lines(decision: Decision, weight_unit: str) -> list[str]:
    """What the model saw: how the weight lay to its band, and the odds, for whoever asks why."""
    view = decision.get("foresight")
    if view is None:
        return []
    if not view["trusted"]:
        return [f"• The forecast is not used: {view['why_not']}"]
    lines = []
    if view["residual_kg"] is not None:
        off = view["residual_kg"]
        size = show_weight(abs(off), WeightUnit.LB if weight_unit != "kg" else WeightUnit.KG)
        lines.append(f"• Weight {size} {'over' if off > 0 else 'under'} the middle of its band")
    for odds, name in ((view["planned"], "as planned"), (view["best"], "at best")):
        if odds is not None:
            lines.append(
                f"• Odds with {odds['carb_g']:.0f} g ({name}): flat {_tenths(odds['flat'])}, "
                f"full {_tenths(odds['full'])}, spilled over {_tenths(odds['spilled'])}"
            )
    if len(lines) > 1 and view["planned"] == view["best"]:
        lines.pop()
    trace = decision["trace"]
    if trace.get("disagree"):
        lines.append("• Rule and forecast pulled apart, so the smaller step was taken")
    return lines


def _tenths(chance: float) -> str:
    """ "3 in 10": the model knows no better than that."""
    tenths = round(chance * 10)
    return "under 1 in 10" if tenths == 0 else "over 9 in 10" if tenths == 10 else f"{tenths} in 10"


def ask_look(name: str, kind: str) -> str:
    """To the coach, the day after."""
    return (
        f"{name}'s {kind} was yesterday. How did they look when it mattered? Your word teaches the "
        "forecast where their ceiling is."
    )


ASK_OWN_LOOK = {
    "show": mark(
        "Your show was yesterday. How did you look when it mattered? Your word teaches the forecast "
        "where your ceiling is."
    ),
    "shoot": mark(
        "Your shoot was yesterday. How did you look when it mattered? Your word teaches the forecast "
        "where your ceiling is."
    ),
    "trial": mark(
        "Your trial was yesterday. How did you look when it mattered? Your word teaches the forecast "
        "where your ceiling is."
    ),
}


def ask_own_look(kind: str) -> str:
    """The same to somebody who coaches themself."""
    return tr(ASK_OWN_LOOK[kind])


LOOKS = {"flat": "Flat", "full": "Full", "spilled over": "Spilled over"}


def look_unknown_button() -> str:
    return "Can't say"


def look_kept(name: str, look: str) -> str:
    return f"Kept: {name} was {look} on the day. The next forecast begins from that."


OWN_LOOK_KEPT = {
    "flat": mark("Kept: you were flat on the day. The next forecast begins from that."),
    "full": mark("Kept: you were full on the day. The next forecast begins from that."),
    "spilled over": mark(
        "Kept: you were spilled over on the day. The next forecast begins from that."
    ),
}


def own_look_kept(look: str) -> str:
    return tr(OWN_LOOK_KEPT[look])


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
