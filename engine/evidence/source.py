"""Where a number comes from."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from types import ModuleType, SimpleNamespace
from typing import Self


def mark(message: str, /) -> str:
    """Names a sentence that people read, for whoever translates."""
    return message


class Provenance(StrEnum):
    """How well a source was seen by whoever wrote its number down here."""

    SEEN = "seen in the abstract or page"
    MEMORY = "from memory, not seen"
    COMPUTED = "computed from other numbers here"
    PRACTICE = "common practice"
    OURS = "our own choice"


@dataclass(frozen=True, slots=True)
class Source:
    """A publication, standard or habit of the trade that a number or rule rests on."""

    id: str
    citation: str
    provenance: Provenance

    def __post_init__(self) -> None:
        if not self.id or not self.citation:
            raise ValueError("a source needs an id and a citation")


def seen(id: str, citation: str) -> Source:
    """A source whose abstract or page was seen by whoever wrote its number down here."""
    return Source(id, citation, Provenance.SEEN)


def from_memory(id: str, citation: str) -> Source:
    """A source that was written down from memory, and not seen."""
    return Source(id, citation, Provenance.MEMORY)


def source_shown(id: str, citation: str, provenance: Provenance) -> Source:
    """A source that people are shown: its citation is a sentence for whoever translates."""
    return Source(id, citation, provenance)


class Number(float):
    """A named figure with its unit and where it comes from; `float(number)` is the bare value.

    It computes as any number does; `value` is as it was written down, whole where that is whole.
    """

    __slots__ = ("name", "note", "source", "unit", "value")
    name: str
    value: float
    unit: str
    source: Source
    note: str

    def __new__(cls, name: str, value: float, unit: str, source: Source, note: str = "") -> Self:
        if not name or not unit:
            raise ValueError("a number needs a name and a unit")
        number = super().__new__(cls, value)
        number.name, number.value, number.unit = name, value, unit
        number.source, number.note = source, note
        return number


def bare(evidence: ModuleType) -> SimpleNamespace:
    """The numbers of a module as floats by their names there, for sums that are done a million times:
    to ask a `Number` for its value takes as long as the sum.
    """
    numbers = {name: float(n) for name, n in vars(evidence).items() if isinstance(n, Number)}
    return SimpleNamespace(**numbers)
