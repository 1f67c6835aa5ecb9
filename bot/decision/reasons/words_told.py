"""What a sentence on a decision is given: its facts, in the athlete's units."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from bot.words import figures
from bot.words.languages import tr, tr_with
from bot.words.looks import seen_in
from engine.decision.decide import Decision
from engine.decision.kept import InShort


def change_in_words(change_g: float) -> str:
    if change_g == 0:
        return tr("no change")
    if change_g > 0:
        return tr("{grams:.0f} g more", grams=change_g)
    return tr("{grams:.0f} g less", grams=-change_g)


class Told:
    """A decision's facts, with the weights and waters as the athlete writes them."""

    def __init__(
        self,
        decision: Decision | InShort,
        weight_unit: str,
        volume_unit: str,
        *,
        stands_g: float | None = None,
    ) -> None:
        """`stands_g`: the change that is in force, where it is not the one that was decided."""
        self.facts: Mapping[str, Any] = decision.trace.facts
        self._weight_unit = weight_unit
        self._volume_unit = volume_unit
        self.change_g = decision.change_g if stands_g is None else stands_g

    @property
    def change(self) -> str:
        return change_in_words(self.change_g)

    def weight(self, key: str) -> str:
        return figures.weight(self.facts[key], self._weight_unit)

    def water(self, key: str) -> str:
        return figures.volume(self.facts[key], self._volume_unit)

    def tr(self, message: str, /) -> str:
        """The sentence in the language in force, its gaps filled in by what they are called: as in
        `GAPS`, else with the fact of that name.
        """
        return tr_with(message, _Gaps(self))

    def __getitem__(self, key: str) -> Any:
        return self.facts[key]

    def get(self, key: str) -> Any:
        """A fact that decisions of an earlier table did not know; None there."""
        return self.facts.get(key)


#: What a gap in a sentence on a decision stands for, where it is not a fact as it is.
GAPS: Mapping[str, Callable[[Told], str]] = {
    "band_high": lambda told: told.weight("band_high_kg"),
    "band_low": lambda told: told.weight("band_low_kg"),
    "change": lambda told: told.change,
    "expected": lambda told: told["expected_fullness"],
    "look": lambda told: seen_in(told.facts),
    "most": lambda told: told["fullness_most"],
    "target": lambda told: told.water("water_target_l"),
    "water": lambda told: told.water("water_l"),
    "weight": lambda told: told.weight("weight_kg"),
}


class _Gaps(dict[str, object]):
    """What is filled in of a decision, each worked out when a sentence asks for it."""

    def __init__(self, told: Told) -> None:
        super().__init__()
        self._told = told

    def __missing__(self, gap: str) -> object:
        return GAPS[gap](self._told) if gap in GAPS else self._told[gap]
