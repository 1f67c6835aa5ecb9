"""What a sentence on a decision is given: its facts, in the athlete's units."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from bot.words import figures
from bot.words.languages import tr
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

    def __getitem__(self, key: str) -> Any:
        return self.facts[key]

    def get(self, key: str) -> Any:
        """A fact that decisions of an earlier table did not know; None there."""
        return self.facts.get(key)
