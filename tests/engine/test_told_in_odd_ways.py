"""What a morning says beside its three plain figures: read as meant, kept, or asked about."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.written.oneline import Known, Report, read_report
from engine.written.units import VolumeUnit, WeightUnit

ASKED = ("weight_kg", "fullness", "water_l")
SHE = Known(
    weight_unit=WeightUnit.KG, volume_unit=VolumeUnit.L, wants_sharpness=False, asked=ASKED,
    weight_kg=60.4, on_file_kg=60.4, height_cm=165, fullness=5, water_l=3.5, carb_g=170,
)  # fmt: skip
HE = replace(SHE, language="de")


def told(report: Report) -> tuple[object, ...]:
    return tuple(report.answers.get(key) for key in ASKED)


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("60.9 in clothes, 60.3 without, 5, 3", 60.3),
        ("60.3 nude (60.9 dressed), 5, 3", 60.3),
        ("before the loo 60.8, after 60.3, 5, 3", 60.3),
        ("60.3 before breakfast, 60.9 after breakfast, 5, 3", 60.3),
        ("60.8, reweighed 60.3, 5, 3", 60.3),
        ("60.8 then 60.3, take the first, 5, 3", 60.8),
        ("60.8 60.3 60.5, going with the last one, 5, 3", 60.5),
        ("home 60.8 gym 60.3, going with home, 5, 3", 60.8),
    ],
)
def test_of_two_weighings_the_one_that_counts_is_taken_and_said_back(text: str, kg: float) -> None:
    report = read_report(text, SHE)
    assert told(report) == (kg, 5, 3) and not report.doubts
    assert "60.8" in report.meant["weight_kg"] or "60.9" in report.meant["weight_kg"]


def test_of_two_scales_that_differ_neither_is_taken_unasked() -> None:
    report = read_report("one scale says 60.1 the other 60.7. full 5. 3l", SHE)
    assert told(report) == (None, 5, 3)
    assert report.doubts[0].options == ({"weight_kg": 60.1}, {"weight_kg": 60.7})


def test_the_weight_of_another_day_stays_in_the_words_for_the_coach() -> None:
    report = read_report("60.9 yesterday, today 60.3, 5, 3", SHE)
    assert told(report) == (60.3, 5, 3) and "60.9 yesterday" in report.note


@pytest.mark.parametrize("text", ["60.3 / - / 3", "60.3, x, 3", "60.3 ? 3", "60.3\n?\n3 l"])
def test_what_holds_the_place_of_an_answer_leaves_it_out(text: str) -> None:
    report = read_report(text, SHE)
    assert told(report) == (60.3, None, 3) and "fullness" in report.answers and not report.doubts
    assert "fullness" in read_report("60.3 / - / 3", replace(SHE, asked=())).answers


def test_a_line_of_dashes_holds_the_place_of_nothing() -> None:
    assert told(read_report("check-in\n---\n60.3\n5\n3", SHE)) == (60.3, 5, 3)


@pytest.mark.parametrize(
    ("beside", "language"),
    [
        ("half past six", "en"), ("got up at six", "en"), ("woke at quarter to 6", "en"),
        ("waist 68", "en"), ("bp 118/76", "en"), ("resting hr 52", "en"), ("mood 4/10", "en"),
        ("day 3", "en"), ("5 sets of 12", "en"), ("36.8 degrees", "en"), ("12,000 steps", "en"),
        ("halb sieben", "de"), ("um sechs auf", "de"), ("taille 68", "de"), ("laune 4", "de"),
        ("blutdruck 118/76", "de"), ("ruhepuls 52", "de"), ("schritte 12000", "de"),
    ],
)  # fmt: skip
def test_a_figure_of_something_else_is_no_answer_and_stays_in_the_note(
    beside: str, language: str
) -> None:
    known = replace(SHE, language=language)
    for text in (f"{beside}, 60.3, 5, 3", f"60.3, 5, 3, {beside}"):
        report = read_report(text, known)
        assert told(report) == (60.3, 5, 3) and not report.doubts and beside in report.note
    alone = read_report(beside, known)
    assert not alone.answers and not alone.doubts and alone.note


def test_a_figure_behind_a_word_for_an_answer_is_no_hour() -> None:
    assert told(read_report("60.3, fullness up at 7, 3 l", SHE)) == (60.3, 7, 3)


@pytest.mark.parametrize("text", ["57.s, 5, 3", "60.something 5 3", "6x 5 3"])
def test_a_number_counts_whole_or_not_at_all(text: str) -> None:
    assert "weight_kg" not in read_report(text, SHE).answers


def test_a_drink_told_by_another_days_is_asked_about_where_that_one_is_not_known() -> None:
    text = "60.3, 5, a litre less than yesterday"
    (doubt,) = read_report(text, SHE).doubts
    assert doubt.options == ({"water_l": 2.5},)
    known = read_report(text, replace(SHE, water_before_l=4.0))
    assert told(known) == (60.3, 5, 3.0) and known.meant["water_l"] == "a litre less than yesterday"
    assert told(read_report("60.3, 5, half a litre less than planned", SHE)) == (60.3, 5, 3.0)


def test_pints_of_who_tells_stones_are_imperial_ones() -> None:
    # 20 imperial fluid ounces, of 28.4130625 ml each (Units of Measurement Regulations 1995, UK)
    report = read_report("9 st 7, full 5, 6 pints", replace(SHE, weight_kg=60.3))
    assert report.answers["water_l"] == pytest.approx(6 * 20 * 0.0284130625, abs=0.01)


def test_what_glasses_hold_is_asked_for_by_name() -> None:
    (doubt,) = read_report("60.3 5 10 glasses", SHE).doubts
    assert (doubt.answer, doubt.given, doubt.options) == ("water_l", "10 glasses", ())


def test_a_measure_of_beer_is_a_litre_and_a_half_one_is_half() -> None:
    assert told(read_report("60,3 voll 5, 2 Maß Wasser", HE)) == (60.3, 5, 2)
    assert told(read_report("60,3 voll 5, 7 Halbe", HE)) == (60.3, 5, 3.5)


@pytest.mark.parametrize(
    "text",
    [
        "60.3 5 3 on target? no",
        "60.3 5 3 not on target",
        "60.3 5 3, missed my target",
        "off target",
    ],
)
def test_carbs_off_target_are_known_to_be_so(text: str) -> None:
    report = read_report(text, SHE)
    assert report.off_target and not report.on_target


def test_carbs_told_are_not_asked_for_once_more() -> None:
    report = read_report("60.3 5 3, carbs 120, off target", SHE)
    assert report.answers["carb_eaten_g"] == 120 and not report.off_target


def test_a_weight_that_is_to_follow_is_no_number_of_the_line() -> None:
    assert told(read_report("weight to follow, 7, 4 l", SHE)) == (None, 7, 4)


def test_the_same_is_said_of_the_answer_in_whose_place_it_stands() -> None:
    report = read_report("same, same, 3 l", SHE)
    assert told(report) == (60.4, 5, 3) and set(report.meant) == {"weight_kg", "fullness"}
