"""Check-ins as people type them: read exactly right, or asked about, and never wrong."""

from __future__ import annotations

import pytest

from engine.oneline import Known, Report, read_report
from engine.units import VolumeUnit, WeightUnit
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
