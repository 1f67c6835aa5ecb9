"""A check-in in one line."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import constants

from engine.written.oneline import Known, Report, read_report
from engine.written.units import VolumeUnit, WeightUnit
from tests.support.any_text import any_text


def read(
    text: str,
    *,
    weight_unit: WeightUnit = WeightUnit.KG,
    volume_unit: VolumeUnit = VolumeUnit.L,
    sharpness: bool = False,
) -> Report:
    """Of somebody of whom nothing is known."""
    return read_report(
        text, Known(weight_unit=weight_unit, volume_unit=volume_unit, wants_sharpness=sharpness)
    )


def code_of(text: str, **settings: object) -> str:
    """Why the text is not a check-in as it stands; the code of the first question otherwise."""
    report = read(text, **settings)  # type: ignore[arg-type]
    if report.told < 2:
        return "not-a-check-in"
    assert not report.whole, f"{text!r} was read: {report}"
    return str(report.doubts[0].code) if report.doubts else "incomplete"


@pytest.mark.parametrize(
    "text",
    [
        "61.2 7 3.5",
        "61,2 7 3,5",
        "61.2, 7, 3.5",
        "61,2, 7, 3,5",
        "61.2; 7; 3.5",
        "61.2 / 7 / 3.5",
        "61.2/7/3.5",
        "61.2 - 7 - 3.5",
        "61.2\n7\n3.5",
        "61.2kg 7/10 3.5L",
        "61.2 kg, 7 of 10, 3500 ml",
        "61.2 full 7 water 3.5",
        "  ６１.2   7   3½ ",
    ],
)
def test_weight_fullness_and_water_are_read_in_order(text: str) -> None:
    line = read(text)
    assert line.answers == pytest.approx({"weight_kg": 61.2, "fullness": 7, "water_l": 3.5})
    assert (line.on_target, line.all_fine, line.note, line.doubts) == (False, False, "", ())


@pytest.mark.parametrize("text", ["fifty nine four", "sixty two five"])
def test_a_weight_said_aloud_without_its_point_is_asked_about(text: str) -> None:
    report = read(text)
    assert report.answers == {}
    [doubt] = report.doubts
    assert any(set(option) == {"weight_kg"} for option in doubt.options)
    assert any(set(option) == {"weight_kg", "fullness"} for option in doubt.options)


def test_units_are_the_athletes_own_unless_written() -> None:
    line = read("134 7 120", weight_unit=WeightUnit.LB, volume_unit=VolumeUnit.FLOZ_US)
    assert line.answers["weight_kg"] == pytest.approx(134 * constants.pound)
    assert line.answers["water_l"] == pytest.approx(120 * constants.fluid_ounce_US * 1000)
    assert read("134lb 7 120 us fl oz").answers["weight_kg"] == pytest.approx(134 * constants.pound)


@pytest.mark.parametrize(
    "text", ["9st 8 7 3.5", "9st8 7 3.5", "9 st 8 lb 7 3.5", "9 stone 8 pounds, 7, 3.5L"]
)
def test_stones_and_pounds_are_told_from_the_fullness_where_only_one_reading_holds(
    text: str,
) -> None:
    line = read(text)
    assert line.answers["weight_kg"] == pytest.approx(9 * constants.stone + 8 * constants.pound)
    assert (line.answers["fullness"], line.answers["water_l"]) == (7, 3.5)


def test_a_bare_line_in_stones_is_read_where_only_one_reading_holds() -> None:
    line = read("9 8 7 3.5", weight_unit=WeightUnit.ST)
    assert line.answers["weight_kg"] == pytest.approx(9 * constants.stone + 8 * constants.pound)
    assert read("9st 8 3.5").answers["weight_kg"] == pytest.approx(9 * constants.stone)


def test_stones_that_can_be_read_two_ways_are_refused() -> None:
    assert code_of("9st 8 7 3", sharpness=True) == "ambiguous-stone"
    assert code_of("9st 8 7") == "ambiguous-stone"  # water forgotten, or no pounds
    assert code_of("9 8 7", weight_unit=WeightUnit.ST) == "ambiguous-stone"


def test_the_fourth_number_is_the_sharpness_when_it_is_asked_for() -> None:
    assert read("61.2 7 3.5 4", sharpness=True).answers["sharpness"] == 4
    assert read("61.2 7 3.5 4/5", sharpness=True).answers["sharpness"] == 4
    assert "sharpness" not in read("61.2 7 3.5", sharpness=True).answers
    assert code_of("61.2 7 3.5 4") == "spare-number"
    assert code_of("61.2 7 3.5 4 3", sharpness=True) == "spare-number"
    assert code_of("61.2 7 3.5 6", sharpness=True) == "out-of-range"


def test_labelled_extras_follow_in_any_order() -> None:
    line = read("61.2 7 3.5 carbs 310 sharp 4, on target, fine")
    assert (line.answers["carb_eaten_g"], line.answers["sharpness"]) == (310, 4)
    assert line.on_target is False  # the figure says more than the word
    assert line.all_fine
    assert read("61.2 7 3.5 sharpness: 4/5").answers["sharpness"] == 4
    assert read("61.2 7 3.5 All fine, thanks coach!").all_fine


def test_words_after_the_numbers_are_the_note_as_written() -> None:
    assert read("61.2 7 3.5 Slept 5 hours, legs Heavy").note == "Slept 5 hours, legs Heavy"
    assert read("61.2 7 3.5 5 hours sleep", sharpness=True).note == "5 hours sleep"
    assert read("61.2 7 3.5\nChest pain 😟").note == "Chest pain 😟"


def test_lines_told_out_of_ten_are_a_note_unless_they_are_asked_for() -> None:
    untold = read("61.2 7 3.5 sharp 9")
    assert (untold.doubts, untold.note) == ((), "sharp 9")
    assert "sharpness" not in untold.answers
    (doubt,) = read("61.2 7 3.5 sharp 9", sharpness=True).doubts
    assert (doubt.code, doubt.answer) == ("out-of-range", "sharpness")


def test_fine_with_further_words_is_left_to_a_person() -> None:
    for text in ("61.2 7 3.5 fine but dizzy", "61.2 7 3.5 not fine", "61.2 7 3.5 fine, no cramps"):
        line = read(text)
        assert not line.all_fine
        assert line.note == text.removeprefix("61.2 7 3.5 ")
    assert not read("61.2 7 3.5 not on target").on_target


@pytest.mark.parametrize(
    "text",
    [
        "", "hello", "💪", "fine", "full 7", "61.2", "61.2 kg", "9st 8", "3.5L", "310 g", "7/10",
        "14 May 2027", "14.5.2027", "in 12 days", "6:30", "7am", "12 days out", "2 eggs and rice",
    ],
)  # fmt: skip
def test_an_answer_to_one_question_or_a_message_is_no_check_in(text: str) -> None:
    assert code_of(text) == "not-a-check-in"


@pytest.mark.parametrize(
    ("text", "code", "field"),
    [
        ("840 7 3.5", "implausible", "weight_kg"),
        ("8.4 7 3.5", "implausible", "weight_kg"),
        ("-61 7 3.5", "negative", "weight_kg"),
        ("61.2 11 3.5", "out-of-range", "fullness"),
        ("61.2 6.5 3.5", "not-a-whole-number", "fullness"),
        ("61.2 -7 3.5", "negative", "fullness"),
        ("61.2 7 3500", "implausible", "water_l"),
        ("61.2 7 3,500", "ambiguous-separator", "water_l"),
        ("61.2 7 120 fl oz", "which-fluid-ounce", "water_l"),
        ("61.2 7 3.5 carbs 9000", "out-of-range", "carb_eaten_g"),
    ],
)
def test_a_refusal_names_the_answer_that_it_is_about(text: str, code: str, field: str) -> None:
    doubts = read(text).doubts
    assert [(doubt.code, doubt.answer) for doubt in doubts] == [(code, field)]


def test_commas_that_run_numbers_together_part_them_where_points_mark_the_decimals() -> None:
    assert read("61.2,7,3.5").answers == {"weight_kg": 61.2, "fullness": 7, "water_l": 3.5}


def test_commas_that_may_be_decimals_or_part_numbers_are_asked_about() -> None:
    assert code_of("61,7,3") == "ambiguous-separator"


def test_missing_water_is_said_to_be_missing() -> None:
    line = read("61.2 7")
    assert line.answers == {"weight_kg": 61.2, "fullness": 7}
    assert not line.whole


@given(
    kg=st.integers(300, 2500),
    fullness=st.integers(1, 10),
    decilitres=st.integers(0, 150),
    mark=st.sampled_from(".,"),
    between=st.sampled_from([" ", ", ", "; ", "  ", " / ", "\n"]),
)
def test_every_line_of_three_numbers_reads_back(
    kg: int, fullness: int, decilitres: int, mark: str, between: str
) -> None:
    numbers = [f"{kg / 10:.1f}", str(fullness), f"{decilitres / 10:.1f}"]
    line = read(between.join(number.replace(".", mark) for number in numbers))
    assert line.answers["weight_kg"] == pytest.approx(kg / 10)
    assert line.answers["fullness"] == fullness
    assert line.answers["water_l"] == pytest.approx(decilitres / 10)


@given(
    st.one_of(any_text(4096), st.text(alphabet="0123456789.,- /stlbkgcarbsharpfine½", max_size=60)),
    st.sampled_from(WeightUnit),
    st.booleans(),
)
def test_any_text_gives_a_check_in_or_a_refusal(text: str, unit: WeightUnit, sharp: bool) -> None:
    line = read(text, weight_unit=unit, sharpness=sharp)
    told = {key: value for key, value in line.answers.items() if value is not None}
    assert 30 <= told.get("weight_kg", 60) <= 250
    assert 1 <= told.get("fullness", 5) <= 10
    assert 0 <= told.get("water_l", 3) <= 15
    assert line.note in text
