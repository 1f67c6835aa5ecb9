"""What a safety finding is."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from engine.evidence.source import Number, Source
from engine.symptoms import Symptom
from engine.values.level import Level
from engine.values.telling import Telling

Fact = float | str


class FlagId(StrEnum):
    """What can be found beside a single complaint; a complaint is flagged as its `Symptom`."""

    EMERGENCY = "emergency"
    LOW_SODIUM = "low-sodium-pattern"
    NO_URINE_SWELLING = "no-urine-with-swelling"
    DOUBT = "doubt"
    WEIGHT_DROP_DAY = "weight-drop-24h"
    WEIGHT_DROP_BASELINE = "weight-drop-baseline"
    WEEKLY_LOSS = "weekly-loss-fast"
    WATER_UNDER_ADEQUATE = "water-under-adequate"
    WATER_UNDER_TARGET = "water-under-target"
    WATER_OVER_TARGET = "water-over-target"
    WATER_OVER_GUARD_RAIL = "water-over-guard-rail"
    WATER_TOO_FAST = "water-too-fast"
    PULSE_HIGH = "pulse-high"
    DRUG_NAMED = "drug-named"
    SYMPTOM_UNREAD = "symptom-unread"
    MISSED_CHECK_IN = "missed-check-in"
    SHORT_SLEEP = "short-sleep"
    LOW_ENERGY = "low-energy-availability"
    AFTER_SHOW_COMPLAINT = "after-show-complaint"
    AFTER_SHOW_RISE = "after-show-rise"


#: Everything that a flag can be about: a complaint, or one of the findings.
Finding = Symptom | FlagId
FINDINGS: tuple[Finding, ...] = (*Symptom, *FlagId)


def finding(id: str) -> Finding:
    """The finding with this id. Raises ValueError for an id that there is not."""
    return FlagId(id) if id in set(FlagId) else Symptom(id)


@dataclass(frozen=True, slots=True, init=False)
class Flag:
    """A safety finding: what, how urgent, the figures and words it rests on, and the sources."""

    id: Finding
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
        if not id or not sources:
            raise ValueError("a flag needs an id and a source")
        object.__setattr__(self, "id", finding(id))
        object.__setattr__(self, "level", level)
        object.__setattr__(self, "facts", tuple(dict(facts).items()))
        object.__setattr__(self, "sources", tuple(sources))


def highest_level(flags: Iterable[Flag]) -> Level | None:
    """The most urgent level among `flags`, or None without any."""
    return max((flag.level for flag in flags), key=lambda level: level.rank, default=None)


LONGEST_QUOTE = 200


class OfFinding(Telling):
    """A finding's facts; `name` is whose words are quoted, "" for the reader's own."""

    def __init__(self, facts: Mapping[str, Any], name: str = "") -> None:
        super().__init__(facts)
        self.name = name

    def gap(self, name: str) -> object:
        return GAPS[name](self) if name in GAPS else super().gap(name)

    def number(self, key: str) -> str:
        return self.plain(round(self.facts[key], 1))

    def bound(self, number: Number) -> str:
        """The threshold that was passed."""
        return self.plain(float(number))

    def plain(self, value: float) -> str:
        return f"{value:g}"

    def symptoms(self, ids: Iterable[str]) -> str:
        """Several in a row, by their names."""
        return ", ".join(one.replace("-", " ") for one in ids)

    def quote(self) -> str:
        """The athlete's own words, in quotation marks."""
        words = str(self.facts.get("words", ""))
        short = words if len(words) <= LONGEST_QUOTE else words[: LONGEST_QUOTE - 1] + "…"
        return self.tr('"{words}"', words=short)

    def wrote(self) -> str:
        """The same as a sentence; "" where a button was tapped."""
        if not self.facts.get("words"):
            return ""
        if not self.name:
            return self.tr("You wrote {words}.", words=self.quote())
        return self.tr("{name} wrote {words}.", words=self.quote())

    def with_words(self, sentence: str) -> str:
        return " ".join(part for part in (sentence, self.wrote()) if part)


_PERCENT = ("up_percent", "down_percent", "percent")
#: What a gap in a sentence on a finding stands for, where it is not a fact as it is.
GAPS: Mapping[str, Callable[[OfFinding], object]] = {
    "adequate": lambda told: told.water("adequate_l"),
    "before": lambda told: told.weight("before_kg"),
    "colour": lambda told: told.number("colour"),
    "mornings": lambda told: told.number("mornings"),
    "most": lambda told: told.water("most_l"),
    "name": lambda told: told.name,
    "now": lambda told: told.weight("weight_kg"),
    "percent": lambda told: told.number(next(key for key in _PERCENT if key in told.facts)),
    "pulse": lambda told: told.number("pulse"),
    "target": lambda told: told.water("target_l"),
    "water": lambda told: told.water("water_l"),
}
