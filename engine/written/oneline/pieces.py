"""What a line is cut into: figures, words and marks."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from engine.written.oneline.meanings import Meaning, Means


class Unit(StrEnum):
    NONE = "none"
    WEIGHT = "weight"
    VOLUME = "volume"
    GRAMS = "grams"
    HOURS = "hours"
    OF_TEN = "of-ten"
    OF_FIVE = "of-five"


@dataclass(frozen=True, slots=True, kw_only=True)
class Token:
    """`start` and `end` are places in the plain line."""

    start: int
    end: int
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Figure(Token):
    """`number` as written; `high` is the other end of a range; `bound` where it is only a bound;
    `corrected` where the other end was put in its stead.
    """

    number: str
    unit: Unit = Unit.NONE
    unit_text: str = ""
    high: str = ""
    bound: bool = False
    thousand: bool = False
    corrected: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Word(Token):
    """`meanings` is empty for a word that is not known here."""

    meanings: tuple[Meaning, ...] = ()

    def says(self, *means: Means) -> Meaning | None:
        return next((meaning for meaning in self.meanings if meaning.means in means), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark(Token):
    pass
