"""The engine's sentences in a chat: in the language in force, figures as the reader writes them."""

from __future__ import annotations

from collections.abc import Sequence

from bot.words import figures
from bot.words.languages import translated
from engine.values.telling import Telling
from engine.written.units import Towards


class InChat(Telling):
    """Laid over a `Telling` of the engine, before it in the bases. Units are set by who lays it."""

    weight_unit: str
    volume_unit: str

    def translated(self, message: str, /) -> str:
        return translated(message)

    def weight(self, key: str) -> str:
        return figures.weight(self.facts[key], self.weight_unit)

    def weight_at_most(self, key: str) -> str:
        return figures.weight(self.facts[key], self.weight_unit, Towards.MOST)

    def weight_at_least(self, key: str) -> str:
        return figures.weight(self.facts[key], self.weight_unit, Towards.LEAST)

    def water(self, key: str) -> str:
        return figures.volume(self.facts[key], self.volume_unit)

    def each_and(self, parts: Sequence[str]) -> str:
        return figures.each_and(list(parts))
