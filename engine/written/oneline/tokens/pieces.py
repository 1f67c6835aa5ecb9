"""What a line is cut into: figures, words and marks, and the clauses that they stand in."""

from __future__ import annotations

from collections.abc import Mapping, Set
from dataclasses import dataclass, field
from enum import StrEnum

from engine.written.oneline.vocabulary.meanings import Meaning, Means


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
    """`start` and `end` are places in the plain line; `unknown` is a word that is not known here."""

    start: int
    end: int
    text: str
    unknown: bool = field(init=False, compare=False, default=False)


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
    """What it says, by what is meant: of several meanings of a kind the first."""

    meanings: tuple[Meaning, ...] = ()
    means: Mapping[Means, Meaning] = field(init=False, compare=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "means", {one.means: one for one in reversed(self.meanings)})
        letters = any(map(str.isalnum, self.text))  # a picture counts nothing
        object.__setattr__(self, "unknown", letters and not self.meanings)

    def says(self, *means: Means) -> Meaning | None:
        """Its first meaning that is one of these."""
        return next((meaning for meaning in self.meanings if meaning.means in means), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark(Token):
    pass


@dataclass(slots=True)
class Named:
    """A figure whose answer a label names; several keys where it may be either of two labels."""

    key: str
    figure: Figure
    label: Word


@dataclass(slots=True)
class Clause:
    """What stands between two marks, and what is made of it."""

    tokens: list[Token]
    end: str = ""  # the mark that ends it
    asks: bool = False
    named: list[Named] = field(default_factory=list)
    torn: list[list[Named]] = field(default_factory=list)  # labels that can be read in two ways
    odd: set[int] = field(default_factory=set)  # starts of figures not to be taken unasked
    trailed: set[int] = field(default_factory=set)  # of these, for nothing but a word behind them
    beside: set[int] = field(default_factory=set)  # for nothing but words beside them, or for a day
    dated: set[int] = field(default_factory=set)  # of these, for the name of another day
    foreign: set[int] = field(default_factory=set)  # starts of figures that are no answers
    vessels: set[int] = field(default_factory=set)  # starts of figures that count glasses
    pointing: frozenset[int] = frozenset()  # starts of labels with a colon: they name what follows
    figures: list[Figure] = field(init=False)
    words: list[Word] = field(init=False)
    unknown: list[Word] = field(init=False)
    means: Set[Means] = field(init=False)  # what any of its words may say

    def __post_init__(self) -> None:
        self.figures = [token for token in self.tokens if isinstance(token, Figure)]
        self.words = [token for token in self.tokens if isinstance(token, Word)]
        self.unknown = [word for word in self.words if word.unknown]
        self.means = {means for word in self.words for means in word.means}

    def is_told_plainly(self, one: Named) -> bool:
        """Whether its label stands right before the figure, so that no word behind it is counted."""
        start = one.figure.start
        only_trailed = start in self.beside & self.trailed - self.dated
        after = [token for token in self.tokens if token.start > start][:2]
        if any(isinstance(token, Word) and Means.CORRECTS in token.means for token in after):
            return False
        return only_trailed and one.label.start < start and adjacent(self, one.label, one.figure)


def adjacent(clause: Clause, label: Token, figure: Token) -> bool:
    """Whether the figure stands right behind its label."""
    return clause.tokens.index(figure) - clause.tokens.index(label) == 1
