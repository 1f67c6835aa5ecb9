"""How the day looks from here, in words: never more precise than the model is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from bot import figures
from bot.languages import mark, tr
from bot.messages.common import kind_word
from engine.units import WeightUnit

Decision = Mapping[str, Any]
LIKELY, REAL, UNLIKELY = 0.6, 0.35, 0.1  # our own choice of words for chances


def outlook_line(decision: Decision) -> str:
    """One plain line for the athlete; empty where the forecast has nothing to say."""
    odds = odds_in_force(decision)
    if odds is None:
        return ""
    return tr("{course}; {risk}.", course=_course(odds), risk=_risk(odds))


def _course(odds: Mapping[str, float]) -> str:
    if odds["full"] >= LIKELY:
        return tr("On course for full")
    if odds["flat"] >= max(odds["full"], odds["spilled"]):
        return tr("More likely flat than full as things stand")
    if odds["spilled"] >= odds["full"]:
        return tr("More likely spilled over than full as things stand")
    return tr("Full is within reach")


def _risk(odds: Mapping[str, float]) -> str:
    spilled, flat = odds["spilled"], odds["flat"]
    if spilled >= REAL:
        return tr("spilling over is a real risk")
    if spilled >= UNLIKELY:
        return tr("spilling over is possible")
    if flat >= REAL:
        return tr("spilling over is unlikely, coming in flat is the risk")
    return tr("spilling over is unlikely")


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
        why_not = view["why_not"]
        why_not = tr(WHY_NOT[why_not]) if why_not in WHY_NOT else why_not
        return [tr("The forecast is not used: {why_not}", why_not=why_not)]
    lines = []
    if view["residual_kg"] is not None:
        lines.append(_against_band(view["residual_kg"], weight_unit))
    for odds, name in ((view["planned"], tr("as planned")), (view["best"], tr("at best"))):
        if odds is not None:
            lines.append(
                tr(
                    "Odds with {carb_g:.0f} g ({name}): flat {flat}, full {full}, "
                    "spilled over {spilled}",
                    carb_g=odds["carb_g"],
                    name=name,
                    flat=_tenths(odds["flat"]),
                    full=_tenths(odds["full"]),
                    spilled=_tenths(odds["spilled"]),
                )
            )
    if len(lines) > 1 and view["planned"] == view["best"]:
        lines.pop()
    if decision["trace"].get("disagree"):
        lines.append(tr("Rule and forecast pulled apart, so the smaller step was taken"))
    return lines


#: Why a forecast is not believed, as `engine.foresight` has it.
WHY_NOT = {
    "too few mornings yet": mark("too few mornings yet"),
    "three mornings running outside what it expected": mark(
        "three mornings running outside what it expected"
    ),
}


def _against_band(off_kg: float, weight_unit: str) -> str:
    unit = WeightUnit.LB if weight_unit != WeightUnit.KG else WeightUnit.KG
    size = figures.weight(abs(off_kg), unit)
    if off_kg > 0:
        return tr("Weight {size} over the middle of its band", size=size)
    return tr("Weight {size} under the middle of its band", size=size)


def _tenths(chance: float) -> str:
    """ "3 in 10": the model knows no better than that."""
    tenths = round(chance * 10)
    if tenths == 0:
        return tr("under 1 in 10")
    return tr("over 9 in 10") if tenths == 10 else tr("{tenths} in 10", tenths=tenths)


def ask_look(name: str, kind: str) -> str:
    """To the coach, the day after."""
    return tr(
        "{name}'s {kind} was yesterday. How did they look when it mattered? Your word teaches the "
        "forecast where their ceiling is.",
        name=name,
        kind=kind_word(kind),
    )


LOOKS = {"flat": mark("Flat"), "full": mark("Full"), "spilled over": mark("Spilled over")}


#: The same inside a sentence.
LOOK_WORDS = {"flat": mark("flat"), "full": mark("full"), "spilled over": mark("spilled over")}


def look_button(look: str) -> str:
    return tr(LOOKS[look])


def look_unknown_button() -> str:
    return tr("Can't say")


def look_kept(name: str, look: str) -> str:
    return tr(
        "Kept: {name} was {look} on the day. The next forecast begins from that.",
        name=name,
        look=tr(LOOK_WORDS[look]) if look in LOOK_WORDS else look,
    )


def look_left() -> str:
    return tr("Left open.")


def forecast_button(on: bool) -> str:
    return tr("Forecast off") if on else tr("Forecast on")


def forecast_switched(name: str, on: bool) -> str:
    if on:
        return tr(
            "The forecast is on for {name}: from the load on it sizes the changes that the rules "
            "propose, inside your limits and your sign-off.",
            name=name,
        )
    return tr("The forecast is off for {name}: the rules decide alone.", name=name)
