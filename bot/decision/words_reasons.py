"""Why a day's carbs are what they are, as people read it. The engine words it (`engine.decision`)."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from bot.words.figures import InChat
from bot.words.languages import mark, tr
from bot.words.names import seen_in
from engine.decision import reason as engine_reason
from engine.decision.decide import Decision
from engine.decision.kept import InShort
from engine.decision.reason import BY_GATE
from engine.decision.rules.rule import Told

BOUNDS = {
    "carb_floor_g": mark("the day's floor"),
    "carb_ceiling_g": mark("the day's ceiling"),
    "change_per_day_g": mark("the largest change a day"),
    "load_total_g": mark("the total for the load"),
    # Of decisions made while a last day was allowed half the change.
    "last_day_change": mark("the smaller change allowed so near the day"),
    "guard_rail": mark("the safety bound"),
    "caution": mark("an open caution: nothing is raised while one is there"),
}


def bound_name(bound: str) -> str:
    """What held a figure, inside a sentence."""
    return tr(BOUNDS[bound]) if bound in BOUNDS else bound


def gate_name(gate: str) -> str:
    return tr(BY_GATE[gate].name) if gate in BY_GATE else gate.replace("-", " ")


class ToldInChat(InChat, Told):
    """A decision's facts in the language in force."""

    def look(self) -> str:
        return seen_in(self.facts)


def change_in_words(change_g: float) -> str:
    return ToldInChat({}, change_g).change


def reason(
    decision: Decision | InShort,
    weight_unit: str,
    volume_unit: str,
    *,
    self_coached: bool = False,
    stands_g: float | None = None,
) -> str:
    """One to three sentences for the athlete (see `engine.decision.reason`), in their units."""

    def teller(facts: Mapping[str, Any], change_g: float) -> Told:
        told = ToldInChat(facts, change_g)
        told.weight_unit, told.volume_unit = weight_unit, volume_unit
        return told

    return engine_reason.reason(decision, teller, self_coached=self_coached, stands_g=stands_g)
