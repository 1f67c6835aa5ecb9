"""What a published experiment is as data: a protocol, and the figures that were measured."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from engine.evidence.source import Source

Data = Mapping[str, Any]


class Measure(StrEnum):
    MUSCLE = "muscle glycogen, mmol/kg wet"
    MUSCLE_RATIO = "muscle glycogen against the start, %"
    MUSCLE_RATE = "muscle glycogen gained an hour, mmol/kg wet"
    MASS_PERCENT = "body mass change, %"
    MASS = "body mass change, kg"
    WATER = "body water change, L"
    STORES_PER_KG = "glycogen in muscle and liver, g/kg body mass"
    WATER_PER_GLYCOGEN = "water gained per muscle glycogen, g/g"
    GUT_DIFFERENCE = "gut content against usual fibre, kg"


@dataclass(frozen=True, slots=True, kw_only=True)
class Measured:
    """One figure: after which phase (0 is the start), against which phase if it is a change."""

    measure: Measure
    value: float
    after: int
    since: int = 0
    spread: float | None = None  # reported SD, or SEM where the note says so
    hours: float | None = None  # hours into the protocol where it is not a phase's end


@dataclass(frozen=True, slots=True, kw_only=True)
class Study:
    id: str
    source: Source
    protocol: Data
    measured: tuple[Measured, ...]
    note: str = ""
