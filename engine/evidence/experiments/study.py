"""What a published experiment is as data: a protocol, and the figures that were measured."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
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


#: Two hours of work that leaves little in the muscle.
RIDE: Data = {"hours": 2, "carb_g_per_day": 0, "exercise": "depleting"}


def published(
    source: Source, subject: Data, phases: Sequence[Data], measured: Sequence[Measured],
    note: str = "",
) -> Study:  # fmt: skip
    """A study whose source goes by the same name."""
    return Study(
        id=source.id,
        source=source,
        protocol={"subject": subject, "phase": phases},
        measured=tuple(measured),
        note=note,
    )


def subject(sex: str, mass: float, fat: float, trained: str, start: float | None = None) -> Data:
    """A subject: body mass in kg, body fat in %, muscle glycogen at the start in mmol/kg wet."""
    told = {"sex": sex, "body_mass_kg": mass, "body_fat_percent": fat, "trained": trained}
    return told | ({} if start is None else {"start_muscle_glycogen_mmol_per_kg": start})


def muscle(value: float, after: int, spread: float | None = None) -> Measured:
    """Muscle glycogen in mmol/kg wet after that phase."""
    return Measured(measure=Measure.MUSCLE, value=value, after=after, spread=spread)
