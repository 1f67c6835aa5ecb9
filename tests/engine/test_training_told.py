"""How yesterday's training went, as people put it."""

from __future__ import annotations

import pytest

from engine.written.oneline import Known, read_report
from engine.written.training_told import how_training_went
from engine.written.units import VolumeUnit, WeightUnit

KNOWN = Known(
    weight_unit=WeightUnit.KG, volume_unit=VolumeUnit.L, wants_sharpness=True, language="de",
    weight_kg=61.0, fullness=5, water_l=3.5, carb_g=310.0,
)  # fmt: skip


@pytest.mark.parametrize(
    ("said", "went"),
    [
        ("did the session as planned", "as-planned"),
        ("Training und Cardio wie geplant", "as-planned"),
        ("did half my cardio", "less"),
        ("actually skipped cardio", "less"),
        ("und cardio auch nicht", "less"),
        ("Training gemacht, Cardio nicht", "less"),
        ("weniger als geplant trainiert", "less"),
        ("trained a bit more than planned", "more"),
        ("doppeltes Cardio gemacht", "more"),
        ("doch kein Training gestern", "none"),
        ("missed the gym", "none"),
    ],
)
def test_how_the_training_went_is_read_alone_and_behind_the_figures(said: str, went: str) -> None:
    assert how_training_went(said) == went
    report = read_report(f"61,2 5 3,5 3 {said}", KNOWN)
    assert report.training == went and not report.note and len(report.answers) == 4


@pytest.mark.parametrize(
    "said",
    [
        "trained legs instead", "Beine statt Oberkörper trainiert", "did 40 min cardio instead of 20",
        "no training today", "did I train as planned?", "trained my dog",
        "more cardio, less training",
    ],
)  # fmt: skip
def test_what_says_anything_else_is_no_answer_to_how_it_went(said: str) -> None:
    assert how_training_went(said) is None
    assert said.rstrip("?") in read_report(f"61,2 5 3,5 3 {said}", KNOWN).note


def test_figures_told_of_the_training_stay_readable_for_the_coach() -> None:
    report = read_report("61,2 5 3,5 3 20 min more cardio", KNOWN)
    assert (report.training, report.note) == ("more", "20 min more cardio")


def test_training_named_beside_a_drink_is_no_word_of_how_it_went() -> None:
    assert how_training_went("1 training") is None
    report = read_report("Wasser 0,5 morgens, 1,5 Arbeit, 1 Training, 0,5 abends", KNOWN)
    assert report.training is None
