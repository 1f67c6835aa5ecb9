"""Check-ins as people type them: read exactly right, or asked about, and never wrong."""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st
from scipy import constants

from engine.written.oneline import Known, Report, read_report
from engine.written.units import VolumeUnit, WeightUnit
from tests.engine import checkin_shapes as shapes

KEYS = {
    "w": "weight_kg", "f": "fullness", "d": "water_l", "s": "sharpness", "c": "carb_eaten_g",
    "z": "sleep_h",
}  # fmt: skip


def rows(table: str) -> list[tuple[str, str]]:
    pairs = [line.rsplit(" | ", 1) for line in table.splitlines()]
    return [(text.replace("\\n", "\n"), meant) for text, meant in pairs]


def athlete(language: str, *, sharpness: bool) -> Known:
    return Known(
        weight_unit=WeightUnit.KG, volume_unit=VolumeUnit.L, wants_sharpness=sharpness,
        language=language, weight_kg=60.4, on_file_kg=61.2, height_cm=165, water_l=3.5, carb_g=170,
    )  # fmt: skip


def problem(report: Report, meant: str) -> str:
    """What is wrong with a reading, in a word; "" where nothing is."""
    asks = meant.startswith("?")
    words = meant.removeprefix("?").split()
    figures = {KEYS[w[0]]: float(w[1:]) for w in words if w[0] in KEYS and w not in ("on", "ok")}
    skipped = {KEYS[w[1]] for w in words if w.startswith("-")}
    training = next((w[1:] for w in words if w[0] == "t"), None)
    for key, value in report.answers.items():
        if value is None:
            if key not in skipped:
                return f"{key} skipped"
        elif key not in figures or value != pytest.approx(figures[key], rel=0.001):
            return f"{key} read as {value}"
    if report.training != training:
        return f"training {report.training}"
    if asks:
        return "" if report.doubts else "not asked about"
    if report.doubts:
        return f"asked about: {report.doubts[0]}"
    missing = (set(figures) | skipped) - set(report.answers)
    if missing:
        return f"{missing} not read"
    if report.on_target != ("on" in words) or report.all_fine != ("ok" in words):
        return f"on target {report.on_target}, all fine {report.all_fine}"
    if bool(report.note) != ("~" in words):
        return f"note {report.note!r}"
    return ""


@pytest.mark.parametrize(
    ("table", "language", "sharpness"),
    [
        (shapes.ENGLISH, "en", False),
        (shapes.ENGLISH_LOAD, "en", True),
        (shapes.GERMAN, "de", False),
        (shapes.GERMAN_LOAD, "de", True),
    ],
)
def test_every_shape_is_read_right_or_asked_about(
    table: str, language: str, sharpness: bool
) -> None:
    known = athlete(language, sharpness=sharpness)
    wrong = [
        f"{text!r}: {trouble} (meant {meant})"
        for text, meant in rows(table)
        if (trouble := problem(read_report(text, known), meant))
    ]
    assert not wrong, "\n".join([f"{len(wrong)} of {len(rows(table))}", *wrong])


SEPARATORS = (" ", ", ", "; ", "\n", " / ", ",", " | ", "  ", ". ")
AND = {"en": " and ", "de": " und "}


@st.composite
def three_figures(draw: st.DrawFn) -> tuple[str, Known, dict[str, float]]:
    """Weight, fullness and water with any labels, units, order and marks between them.

    A number with neither label nor unit stands in the order that is asked for.
    """
    language = draw(st.sampled_from(["en", "de"]))
    weight_unit = draw(st.sampled_from([WeightUnit.KG, WeightUnit.LB]))
    volume_unit = draw(st.sampled_from([VolumeUnit.L, VolumeUnit.ML, VolumeUnit.FLOZ_US]))
    kg = 60.4 + draw(st.integers(-20, 20)) / 10
    fullness = draw(st.integers(1, 10))
    litres = 3.5 + draw(st.integers(-10, 14)) / 10
    weight_number = kg if weight_unit is WeightUnit.KG else kg / constants.pound
    per = {VolumeUnit.L: 1.0, VolumeUnit.ML: 0.001}.get(
        volume_unit, constants.fluid_ounce_US * 1000
    )
    volume_number = litres / per
    shown_weight = f"{weight_number:.1f}"
    shown_volume = f"{volume_number:.1f}" if volume_unit is VolumeUnit.L else f"{volume_number:.0f}"
    labels = {
        "en": {"weight_kg": "weight", "fullness": "full", "water_l": "water"},
        "de": {"weight_kg": "Gewicht", "fullness": "voll", "water_l": "Wasser"},
    }[language]
    units = {
        "weight_kg": str(weight_unit), "fullness": "/10",
        "water_l": {VolumeUnit.L: " l", VolumeUnit.ML: "ml"}.get(volume_unit, " us fl oz"),
    }  # fmt: skip
    mark = draw(st.sampled_from(".,")) if language == "de" else "."
    said, bare = {}, []
    for key, number in (
        ("weight_kg", shown_weight), ("fullness", str(fullness)), ("water_l", shown_volume),
    ):  # fmt: skip
        text = number.replace(".", mark)
        way = draw(st.sampled_from(["bare", "before", "after", "unit", "both"]))
        if way in ("unit", "both"):
            text += units[key]
        if way in ("before", "both"):
            text = f"{labels[key]} {text}"
        elif way == "after":
            text = f"{text} {labels[key]}"
        elif way == "bare":
            bare.append(key)
        said[key] = text
    order = draw(st.permutations(list(said)))
    places = iter(bare)
    order = [next(places) if key in bare else key for key in order]
    # between decimal commas, a comma without a space is one more of them to anybody; before three
    # digits it marks thousands
    tight = mark == "." and weight_unit is WeightUnit.KG and volume_unit is VolumeUnit.L
    parted = [between for between in SEPARATORS if tight or between != ","]
    line = draw(st.sampled_from([*parted, AND[language]])).join(said[key] for key in order)
    known = Known(
        weight_unit=weight_unit, volume_unit=volume_unit, wants_sharpness=draw(st.booleans()),
        language=language, weight_kg=60.4, on_file_kg=61.2, water_l=3.5, carb_g=170,
    )  # fmt: skip
    truth = {
        "weight_kg": float(shown_weight) * (1 if weight_unit is WeightUnit.KG else constants.pound),
        "fullness": float(fullness),
        "water_l": float(shown_volume) * per,
    }
    return line, known, truth


@settings(max_examples=150)
@example(
    (
        "water 3500, 133.2, 1",
        Known(
            weight_unit=WeightUnit.LB,
            volume_unit=VolumeUnit.ML,
            wants_sharpness=False,
            weight_kg=60.4,
            on_file_kg=61.2,
            water_l=3.5,
        ),
        {"weight_kg": 133.2 * constants.pound, "fullness": 1.0, "water_l": 3.5},
    )
)
@given(three_figures())
def test_three_plausible_figures_are_read_right_or_asked_about_and_never_wrong(
    written: tuple[str, Known, dict[str, float]],
) -> None:
    right_or_asked_about(*written)


@pytest.mark.soak
@settings(max_examples=6000, suppress_health_check=list(HealthCheck))
@given(three_figures())
def test_of_many_more_figures_none_is_read_wrong(
    written: tuple[str, Known, dict[str, float]],
) -> None:
    right_or_asked_about(*written)


def right_or_asked_about(line: str, known: Known, truth: dict[str, float]) -> None:
    report = read_report(line, known)
    for key, value in report.answers.items():
        assert value == pytest.approx(truth[key], rel=1e-3), f"{line!r} {key}"
    assert report.doubts or set(report.answers) == set(truth), f"{line!r}: {report}"
