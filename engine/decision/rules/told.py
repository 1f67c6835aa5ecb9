"""What a rule's sentence is given: the facts of the decision, and the change that is in force."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from engine.values.telling import Telling, mark

#: A change of the day's carbs inside a sentence, by whether it is less, none or more.
CHANGES = (mark("{grams:.0f} g less"), mark("no change"), mark("{grams:.0f} g more"))


class Told(Telling):
    """A decision's facts and change; `change_g` is what the sentence asks for."""

    def __init__(self, facts: Mapping[str, Any], change_g: float) -> None:
        super().__init__(facts)
        self.change_g = change_g

    @property
    def change(self) -> str:
        return self.change_of(self.change_g)

    def change_of(self, change_g: float) -> str:
        """A change of grams in words: "25 g more"."""
        less_none_more = (change_g > 0) - (change_g < 0) + 1
        return self.tr(CHANGES[less_none_more], grams=abs(change_g))

    def look(self) -> str:
        """What the coach sees, in words; "" where none has looked."""
        seen, sharpness = self.get("coach_saw") or "", self.get("coach_sharpness")
        return f"{seen}, sharpness {sharpness}" if sharpness is not None else seen

    def gap(self, name: str) -> object:
        return GAPS[name](self) if name in GAPS else super().gap(name)


#: What a gap in a sentence on a decision stands for, where it is not a fact as it is.
GAPS: Mapping[str, Callable[[Told], object]] = {
    "band_high": lambda told: told.weight_at_most("band_high_kg"),
    "band_low": lambda told: told.weight_at_least("band_low_kg"),
    "change": lambda told: told.change,
    "expected": lambda told: told["expected_fullness"],
    "look": lambda told: told.look(),
    "most": lambda told: told["fullness_most"],
    "target": lambda told: told.water("water_target_l"),
    "water": lambda told: told.water("water_l"),
    "weight": lambda told: told.weight("weight_kg"),
}
