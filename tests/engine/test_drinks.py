"""Drinks told in parts come to their sum, and nothing of them is passed over in silence."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import constants

from engine.written.oneline import CORE, DoubtCode, read_report
from tests.engine.test_morning_shapes import athlete

HALVES = st.integers(1, 4).map(lambda halves: halves / 2)
OF_THE_DAY = {
    "en": ("in the morning", "at work", "before lunch", "with dinner", "in the evening"),
    "de": ("morgens", "auf arbeit", "vor dem training", "zum abendessen", "abends"),
}


@settings(max_examples=40)
@given(st.sampled_from(("en", "de")), st.data())
def test_what_was_drunk_over_the_day_is_added_up_whatever_its_parts(
    language: str, data: st.DataObject
) -> None:
    when = data.draw(st.lists(st.sampled_from(OF_THE_DAY[language]), min_size=2, max_size=3))
    amounts = data.draw(st.lists(HALVES, min_size=len(when), max_size=len(when)))
    told = ", ".join(f"{amount:g} l {day}" for amount, day in zip(amounts, when, strict=True))
    report = read_report(f"60.2 6 {told}", athlete(language, "kg", 60.4))
    assert not report.doubts
    assert report.answers == {"weight_kg": 60.2, "fullness": 6, "water_l": sum(amounts)}
    assert report.meant["water_l"]  # the words are said back with what they came to


@settings(max_examples=40)
@given(st.integers(2, 8), st.sampled_from((250, 330, 500, 750)))
def test_bottles_of_one_size_come_to_so_many_times_their_size(many: int, millilitres: int) -> None:
    report = read_report(f"60.2 6 {many} bottles of {millilitres} ml", athlete("en", "kg", 60.4))
    drunk = report.answers.get("water_l", report.doubts[0].facts["value"] if report.doubts else 0)
    assert drunk == pytest.approx(many * millilitres / 1000, abs=0.006)


@pytest.mark.parametrize(
    ("told", "litres"),
    [
        ("a gallon plus 16 oz", constants.gallon_US + 16 * constants.fluid_ounce_US),
        ("half gallon am, half gallon pm", constants.gallon_US),
        ("four 32 oz bottles", 4 * 32 * constants.fluid_ounce_US),
        ("a gallon and a quarter", 1.25 * constants.gallon_US),
    ],
)
def test_larger_measures_are_those_of_the_country(told: str, litres: float) -> None:
    report = read_report(f"133.2, 6, {told}", athlete("en", "us", 60.4))
    assert report.answers["water_l"] == pytest.approx(litres * 1000, abs=0.02)


@pytest.mark.parametrize(
    "told",
    [
        "two big bottles and a half", "3 l and a glass", "9 glasses, 2 coffees and a bottle",
        "a litre on waking, one with each of 3 meals",
    ],
)  # fmt: skip
def test_what_nobody_can_add_up_is_asked_about_whole(told: str) -> None:
    report = read_report(f"weight 60.2, full 6, {told}", athlete("en", "kg", 60.4))
    (doubt,) = report.doubts
    assert doubt.answer == "water_l" and doubt.given in told
    assert "water_l" not in report.answers and report.answers["fullness"] == 6


@pytest.mark.parametrize("language", ["en", "de"])
@pytest.mark.parametrize("between", [" + ", " and ", ", ", " / "])
def test_answers_parted_by_what_else_adds_are_not_added(language: str, between: str) -> None:
    line = between.join(("60.2", "1", "3.5 l"))
    report = read_report(line, athlete(language, "kg", 60.4))
    assert report.answers.get("water_l") in (3.5, None)
    assert report.doubts or all(key in report.answers for key in CORE)


def test_another_drink_than_water_is_asked_about_with_both_sums() -> None:
    report = read_report("60.2 6 3 l water, 0.5 l cola", athlete("en", "kg", 60.4))
    (doubt,) = report.doubts
    assert doubt.code is DoubtCode.TWO_VALUES
    assert {option["water_l"] for option in doubt.options} == {3.0, 3.5}


@pytest.mark.parametrize("fullness", [None, 6])
def test_a_fullness_told_by_how_it_moved_is_asked_about(fullness: int | None) -> None:
    known = replace(athlete("en", "kg", 60.4), fullness=fullness)
    report = read_report("60.2, fullness one up from yesterday, 3.5 l", known)
    (doubt,) = report.doubts
    assert doubt.answer == "fullness" and "fullness" not in report.answers
    assert doubt.options == (() if fullness is None else ({"fullness": 7},))
