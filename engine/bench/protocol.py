"""A loading protocol as data: a subject and the phases of diet and exercise that they go through.

The keys are those of a protocol file, `[subject]` and `[[phase]]`; an unknown one is refused.
Only a phase's length and its carbohydrate are required. Amounts are a day's, in a phase of hours
too: 1.6 g/kg drunk within a quarter of an hour are 153.6 g/kg a day for 0.25 hours.
What is not stated: body fat 15 % (men) or 24 % (women), "recreational", start at the usual stores;
protein 1.6 g/kg a day, fat up to energy balance, fibre and sodium with the energy, water as usual
and to replace sweat, no exercise.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Any, TypeVar

import numpy as np

from engine.evidence.body import physiology as known
from engine.model.physiology import (
    HOURS_A_DAY,
    Body,
    Exercise,
    Floats,
    Intake,
    Row,
    Trained,
    advance,
    body,
    complete,
    first_morning,
    mass_change_kg,
    water_change_l,
)
from engine.values.athlete import Sex

NUTRIENTS = ("carb", "protein", "fat")
SUBJECT_KEYS = {
    "sex", "body_mass_kg", "body_fat_percent", "trained", "start_muscle_glycogen_mmol_per_kg",
}  # fmt: skip
PHASE_KEYS = {"hours", "days", "fibre_g", "sodium_mg", "water_l", "exercise"} | {
    f"{name}_{unit}" for name in NUTRIENTS for unit in ("g_per_kg_day", "g_per_day", "g")
}
TITLES = {"name", "source", "note"}
LONGEST_DAYS = 60
SHORTEST_HOURS = 0.05  # a drink
Choice = TypeVar("Choice", bound=StrEnum)


class BadProtocol(ValueError):  # noqa: N818 - the name says what was given
    """The protocol cannot be read; the message says which key, and what to write instead."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Phase:
    hours: float
    intake: Intake


@dataclass(frozen=True, slots=True, kw_only=True)
class Protocol:
    person: Body
    start_mmol_per_kg: float | None
    phases: tuple[Phase, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """The body at one time; changes are against the first morning (hour 0)."""

    hours: float
    phase: int  # 0 before the first, then counted from 1
    muscle_glycogen_mmol_per_kg: float
    muscle_glycogen_g: float
    liver_glycogen_g: float
    water_change_l: float
    muscle_water_change_l: float
    extracellular_change_l: float
    gut_kg: float
    tissue_change_kg: float
    body_mass_change_kg: float
    body_mass_kg: float
    carb_made_fat_g: float

    @property
    def day(self) -> float:
        return self.hours / HOURS_A_DAY


#: As in case files, and as tables of studies write it.
SHORT = {"f": "female", "m": "male"}


def read_protocol(data: Mapping[str, Any]) -> Protocol:
    """Read a protocol from its parsed file.

    Raises BadProtocol, naming the key, on anything unknown, missing or out of range.
    """
    _refuse_unknown(data, {"subject", "phase"} | TITLES, "the protocol")
    subject, phases = data.get("subject"), data.get("phase")
    if not isinstance(subject, Mapping):
        raise BadProtocol("a [subject] with sex and body_mass_kg is needed")
    if not isinstance(phases, list) or not phases:
        raise BadProtocol(
            "at least one [[phase]] with hours or days and its carbohydrate is needed"
        )
    _refuse_unknown(subject, SUBJECT_KEYS, "[subject]")
    mass = _figure(subject, "body_mass_kg", 30, 250, "[subject]")
    if mass is None:
        raise BadProtocol("[subject] needs body_mass_kg")
    person = body(
        sex=_choice(subject, "sex", Sex, None, "[subject]"),
        body_mass_kg=mass,
        body_fat_percent=_figure(subject, "body_fat_percent", 2, 60, "[subject]"),
        trained=_choice(subject, "trained", Trained, Trained.RECREATIONAL, "[subject]"),
    )
    return Protocol(
        person=person,
        start_mmol_per_kg=_figure(
            subject, "start_muscle_glycogen_mmol_per_kg", 1, 250, "[subject]"
        ),
        phases=tuple(_phase(phase, number, mass) for number, phase in enumerate(phases, 1)),
    )


def _phase(data: Mapping[str, Any], number: int, mass: float) -> Phase:
    where = f"[[phase]] {number}"
    if not isinstance(data, Mapping):
        raise BadProtocol(f"{where} is not a table")
    _refuse_unknown(data, PHASE_KEYS | TITLES, where)
    hours = _figure(data, "hours", SHORTEST_HOURS, LONGEST_DAYS * HOURS_A_DAY, where)
    days = _figure(data, "days", SHORTEST_HOURS / HOURS_A_DAY, LONGEST_DAYS, where)
    if (hours is None) == (days is None):
        raise BadProtocol(f"{where} needs hours or days, one of the two")
    length = hours if hours is not None else (days or 0) * HOURS_A_DAY
    # What is drunk within minutes is a large amount a day; what it comes to is what has a bound.
    times = max(HOURS_A_DAY / length, 1.0)
    carb = _nutrient(data, "carb", mass, times, where)
    if carb is None:
        raise BadProtocol(f"{where} needs carb_g_per_kg_day or carb_g_per_day")
    return Phase(
        hours=length,
        intake=Intake(
            carb_g=carb,
            protein_g=_nutrient(data, "protein", mass, times, where),
            fat_g=_nutrient(data, "fat", mass, times, where),
            fibre_g=_figure(data, "fibre_g", 0, 150 * times, where),
            sodium_mg=_figure(data, "sodium_mg", 0, 30000 * times, where),
            water_l=_figure(data, "water_l", 0, 25 * times, where),
            exercise=_choice(data, "exercise", Exercise, Exercise.NONE, where),
        ),
    )


def _nutrient(
    data: Mapping[str, Any], name: str, mass: float, times: float, where: str
) -> float | None:
    """Grams a day of a nutrient, given a day or per kg of body mass a day; a bare _g is a day's."""
    given = [unit for unit in ("g_per_kg_day", "g_per_day", "g") if f"{name}_{unit}" in data]
    if len(given) > 1:
        raise BadProtocol(f"{where} gives {name} twice: {', '.join(f'{name}_{u}' for u in given)}")
    if not given:
        return None
    most = 40.0 if given[0] == "g_per_kg_day" else 4000.0
    amount = _figure(data, f"{name}_{given[0]}", 0, most * times, where)
    if amount is None:
        return None
    return amount * mass if given[0] == "g_per_kg_day" else amount


def _refuse_unknown(data: Mapping[str, Any], allowed: set[str], where: str) -> None:
    if unknown := sorted(set(data) - allowed):
        raise BadProtocol(
            f"{where} has unknown keys: {', '.join(unknown)}; "
            f"known are {', '.join(sorted(allowed))}"
        )


def _figure(
    data: Mapping[str, Any], key: str, least: float, most: float, where: str
) -> float | None:
    if key not in data:
        return None
    value = data[key]
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise BadProtocol(f"{where}: {key} must be a number, not {value!r}")
    if not least <= value <= most:
        raise BadProtocol(f"{where}: {key} {value} is outside {least:g} to {most:g}")
    return float(value)


def _choice(
    data: Mapping[str, Any], key: str, kind: type[Choice], default: Choice | None, where: str
) -> Choice:
    value = data.get(key, default)
    if isinstance(value, str):
        value = SHORT.get(value.casefold(), value)
    try:
        return kind(value)
    except ValueError:
        choices = ", ".join(f'"{choice}"' for choice in kind)
        raise BadProtocol(f"{where}: {key} must be one of {choices}, not {value!r}") from None


def simulate(protocol: Protocol, *, step_h: float = 0.25) -> list[Reading]:
    """The body at the start, then at the end of each day and of each phase."""
    person = protocol.person
    start = first_morning(person, protocol.start_mmol_per_kg)
    state, hours = start, 0.0
    readings = [_reading(start, start, person, hours, 0)]
    for number, phase in enumerate(protocol.phases, 1):
        day = complete(phase.intake, person)
        left = phase.hours
        first = True
        while left > 1e-9:
            length = min(HOURS_A_DAY, left)
            # A last part of a day has no session of its own.
            works = first or length == HOURS_A_DAY
            spent = day if works else day.without_session()
            state = advance(state, spent, person, hours=length, step_h=step_h)
            hours, left, first = hours + length, left - length, False
            readings.append(_reading(state, start, person, hours, number))
    return readings


def _reading(state: Floats, start: Floats, person: Body, hours: float, phase: int) -> Reading:
    change = state - start
    glycogen_water = person.bound_water * change[Row.MUSCLE] / 1000
    shared = float(known.MUSCLE_WATER_SHARE) * change[Row.DEFICIT]
    mass = mass_change_kg(state, start, person)
    return Reading(
        hours=hours,
        phase=phase,
        muscle_glycogen_mmol_per_kg=float(person.concentration(state[Row.MUSCLE])),
        muscle_glycogen_g=float(state[Row.MUSCLE]),
        liver_glycogen_g=float(state[Row.LIVER]),
        water_change_l=float(water_change_l(state, start, person)),
        muscle_water_change_l=float(glycogen_water + shared),
        extracellular_change_l=float(change[Row.EXTRACELLULAR]),
        gut_kg=float(state[Row.GUT_BULK] + np.asarray(state[Row.GUT_CARB]) / 1000),
        tissue_change_kg=float(change[Row.TISSUE]),
        body_mass_change_kg=float(mass),
        body_mass_kg=float(person.body_mass_kg + mass),
        carb_made_fat_g=float(state[Row.LIPOGENESIS]),
    )
