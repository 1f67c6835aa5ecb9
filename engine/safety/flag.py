"""What a safety finding is."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from engine.evidence.source import Source
from engine.level import Level

Fact = float | str


@dataclass(frozen=True, slots=True, init=False)
class Flag:
    """A safety finding: a stable id, how urgent, the figures it rests on, and the sources."""

    id: str
    level: Level
    facts: tuple[tuple[str, Fact], ...]
    sources: tuple[Source, ...]

    def __init__(
        self,
        id: str,
        level: Level,
        facts: Mapping[str, Fact] | Iterable[tuple[str, Fact]] = (),
        sources: tuple[Source, ...] = (),
    ) -> None:
        object.__setattr__(self, "id", id)
        object.__setattr__(self, "level", level)
        object.__setattr__(self, "facts", tuple(dict(facts).items()))
        object.__setattr__(self, "sources", tuple(sources))
        if not self.id or not self.sources:
            raise ValueError("a flag needs an id and a source")

    @property
    def facts_dict(self) -> dict[str, Fact]:
        return dict(self.facts)


def highest_level(flags: Iterable[Flag]) -> Level | None:
    """The most urgent level among `flags`, or None without any."""
    return max((flag.level for flag in flags), key=lambda level: level.rank, default=None)
