"""Hundreds of invented mornings, as odd as they are typed at seven: read as meant, or asked about."""

from __future__ import annotations

import random
from collections import Counter
from types import ModuleType

import pytest

from engine.written.oneline import Known, read_report
from engine.written.units import VolumeUnit, WeightUnit
from tests.engine import mended_shapes, odd_shapes, odder_shapes, told_shapes
from tests.engine.morning_shapes import MORNINGS

KEYS = {"weight_kg": 0.12, "fullness": 0.0, "water_l": 0.08}  # and what counts as the same
UNITS = {
    "kg": (WeightUnit.KG, VolumeUnit.L),
    "us": (WeightUnit.LB, VolumeUnit.FLOZ_US),
    "st": (WeightUnit.ST, VolumeUnit.L),
}
#: Of the rows that may be asked about, so many are at most: a question costs a tired person a tap.
ASKED_AT_MOST = 0.2


def athlete(language: str, units: str, kg: float = 72.4) -> Known:
    weight_unit, volume_unit = UNITS[units]
    return Known(
        weight_unit=weight_unit, volume_unit=volume_unit, wants_sharpness=False, language=language,
        asked=tuple(KEYS), weight_kg=kg, on_file_kg=kg, height_cm=170, water_l=3.5,
    )  # fmt: skip


#: Every so manieth of them in a run, each of them where all is tried.
A_FEW, ALL = 6, 1


def rows(every: int = ALL) -> list[tuple[str, str, str, list[str]]]:
    found = []
    for line in MORNINGS.strip().splitlines()[::every]:
        language, units, rest = line.split(" | ", 2)
        text, *meant = rest.rsplit(" | ", 3)
        found.append((language, units, text.replace("\\n", "\n"), meant))
    return found


def problem(language: str, units: str, text: str, meant: list[str], kg: float = 72.4) -> str:
    report = read_report(text, athlete(language, units, kg))
    may_ask = any(value.startswith("~") for value in meant)
    for (key, same), value in zip(KEYS.items(), meant, strict=True):
        told = value.removeprefix("~")
        read = report.answers.get(key)
        if told in ("none", "-", "") and read is not None:
            return f"{key} read as {read}"
        if told not in ("none", "-", ""):
            if read is not None and read != pytest.approx(float(told), abs=same):
                return f"{key} read as {read}"
            if read is None and not value.startswith("~"):
                return f"{key} not read"
    return "was asked about" if report.doubts and not may_ask else ""


@pytest.mark.parametrize("every", [A_FEW, pytest.param(ALL, marks=pytest.mark.soak)])
def test_every_morning_is_read_as_it_was_meant_or_asked_about_and_never_otherwise(
    every: int,
) -> None:
    wrong = [f"{row[2]!r}: {found}" for row in rows(every) if (found := problem(*row))]
    assert not wrong, "\n".join([f"{len(wrong)} of {len(rows(every))}", *wrong])


@pytest.mark.parametrize("table", [told_shapes, odd_shapes, odder_shapes, mended_shapes])
def test_slips_second_weighings_and_figures_of_something_else_are_read_as_meant(
    table: ModuleType,
) -> None:
    wrong = []
    for line in table.MORNINGS.strip().splitlines():
        language, units, kg, rest = line.split(" | ", 3)
        text, *meant = rest.rsplit(" | ", 3)
        if found := problem(language, units, text.replace("\\n", "\n"), meant, float(kg)):
            wrong.append(f"{text!r}: {found}")
    assert not wrong, "\n".join(wrong)


def test_most_mornings_are_read_without_a_question() -> None:
    asked = Counter(any(value.startswith("~") for value in meant) for *_, meant in rows())
    assert asked[True] <= ASKED_AT_MOST * len(rows())


def test_no_patchwork_of_what_people_type_breaks_the_reading() -> None:
    chance = random.Random(7)
    pieces = [piece for _, _, text, _ in rows() for piece in text.split(" ")]
    for _ in range(60):
        text = chance.choice((" ", ", ", "")).join(chance.sample(pieces, chance.randint(1, 6)))
        language, units = chance.choice(("en", "de")), chance.choice(tuple(UNITS))
        read_report(text + chance.choice(("", "+", "-", "?", "'", "/")), athlete(language, units))


@pytest.mark.parametrize(
    ("language", "text", "key", "words"),
    [
        ("en", "72. look 5. 3l jug with about 400 ml left in it", "water_l", "400 ml left in it"),
        ("en", "drank 500 500 750, 72.1, look 6", "water_l", "500 500 750"),
        ("de", "72,1. Zwei Flaschen à 0,75 und eine mit 0,5. Optik 6", "water_l", "eine mit 0,5"),
        ("en", "72.9 minus half. 6. 3 litres", "weight_kg", "72.9 minus half"),
        ("en", "fullness 60%. 72.1. 3 litres", "fullness", "60%"),
    ],
)
def test_what_was_worked_out_keeps_the_words_it_was_worked_out_from(
    language: str, text: str, key: str, words: str
) -> None:
    report = read_report(text, athlete(language, "kg"))
    assert report.answers[key] is not None
    assert words.lower() in report.meant[key].lower()
