"""What the engine says of its findings: English sentences with named gaps, each worded once.

A rule, a gate or a flag words itself as a function of a `Telling`, which fills the gaps from facts.
By itself that speaks English, kilograms and litres, as the command line does; a chat tells the very
same sentences through a subclass of its own, in its reader's language and units. Whoever translates
finds a sentence where it stands: as the first argument of `tr`, or inside `mark`.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from typing import Any

from engine.evidence.source import mark

__all__ = ["Telling", "mark"]


#: Tenths of a tenth that are only the computer's rounding.
_NOTHING = 1e-6


class Telling:
    """Facts by name, and how they are put into sentences. Weights in kg, waters in L."""

    def __init__(self, facts: Mapping[str, Any]) -> None:
        self.facts = facts

    def tr(self, message: str, /, **given: object) -> str:
        """The sentence, its gaps filled in with what is `given`, else by `gap`."""
        return self.translated(message).format_map(_Gaps(self, given))

    def translated(self, message: str, /) -> str:
        """The sentence in the language that is spoken here."""
        return message

    def gap(self, name: str) -> object:
        """What stands for a gap of that name: the fact. Raises KeyError where there is none."""
        return self.facts[name]

    def weight(self, key: str) -> str:
        return f"{self.facts[key]:.1f} kg"

    def weight_at_most(self, key: str) -> str:
        """A most, as the last tenth of a kilogram within it."""
        return f"{math.floor(self.facts[key] * 10 + _NOTHING) / 10:.1f} kg"

    def weight_at_least(self, key: str) -> str:
        """Likewise a least."""
        return f"{math.ceil(self.facts[key] * 10 - _NOTHING) / 10:.1f} kg"

    def water(self, key: str) -> str:
        return f"{self.facts[key]:g} L"

    def each_and(self, parts: Sequence[str]) -> str:
        """ "a, b and c"."""
        return " and ".join(filter(None, (", ".join(parts[:-1]), *parts[-1:])))

    def __getitem__(self, key: str) -> Any:
        return self.facts[key]

    def get(self, key: str) -> Any:
        """A fact that records of an earlier version did not know; None there."""
        return self.facts.get(key)


class _Gaps(dict[str, object]):
    """What is filled in, each worked out when a sentence asks for it."""

    def __init__(self, telling: Telling, given: Mapping[str, object]) -> None:
        super().__init__(given)
        self._telling = telling

    def __missing__(self, name: str) -> object:
        return self._telling.gap(name)
