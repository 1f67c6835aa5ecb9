"""A check-in in one line."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import constants

from engine.oneline import OneLine, parse_one_line
from engine.units import Refusal, VolumeUnit, WeightUnit


def read(
    text: str,
    *,
    weight_unit: WeightUnit = WeightUnit.KG,
    volume_unit: VolumeUnit = VolumeUnit.L,
    sharpness: bool = False,
) -> OneLine:
    return parse_one_line(
        text, weight_unit=weight_unit, volume_unit=volume_unit, wants_sharpness=sharpness
    )


def code_of(text: str, **settings: object) -> str:
    with pytest.raises(Refusal) as caught:
        read(text, **settings)  # type: ignore[arg-type]
    return str(caught.value.code)


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
    assert (line.weight.kg, line.fullness, line.water.litres) == pytest.approx((61.2, 7, 3.5))
    assert (line.sharpness, line.carb_eaten_g, line.on_target, line.all_fine, line.note) == (
        None, None, False, False, "",
    )  # fmt: skip


def test_units_are_the_athletes_own_unless_written() -> None:
    line = read("134 7 120", weight_unit=WeightUnit.LB, volume_unit=VolumeUnit.FLOZ_US)
    assert line.weight.kg == pytest.approx(134 * constants.pound)
    assert line.water.litres == pytest.approx(120 * constants.fluid_ounce_US * 1000)
    assert read("134lb 7 120 us fl oz").weight.kg == pytest.approx(134 * constants.pound)


@pytest.mark.parametrize(
    "text", ["9st 8 7 3.5", "9st8 7 3.5", "9 st 8 lb 7 3.5", "9 stone 8 pounds, 7, 3.5L"]
)
def test_stones_and_pounds_are_told_from_the_fullness_where_only_one_reading_holds(
    text: str,
) -> None:
    line = read(text)
    assert line.weight.kg == pytest.approx(9 * constants.stone + 8 * constants.pound)
    assert (line.fullness, line.water.litres) == (7, 3.5)


def test_a_bare_line_in_stones_is_read_where_only_one_reading_holds() -> None:
    line = read("9 8 7 3.5", weight_unit=WeightUnit.ST)
    assert line.weight.kg == pytest.approx(9 * constants.stone + 8 * constants.pound)
    assert read("9st 8 3.5").weight.kg == pytest.approx(9 * constants.stone)


def test_stones_that_can_be_read_two_ways_are_refused() -> None:
    assert code_of("9st 8 7 3", sharpness=True) == "ambiguous-stone"
    assert code_of("9st 8 7") == "ambiguous-stone"  # water forgotten, or no pounds
    assert code_of("9 8 7", weight_unit=WeightUnit.ST) == "ambiguous-stone"


def test_the_fourth_number_is_the_sharpness_when_it_is_asked_for() -> None:
    assert read("61.2 7 3.5 4", sharpness=True).sharpness == 4
    assert read("61.2 7 3.5 4/5", sharpness=True).sharpness == 4
    assert read("61.2 7 3.5", sharpness=True).sharpness is None
    assert code_of("61.2 7 3.5 4") == "too-many-numbers"
    assert code_of("61.2 7 3.5 4 3", sharpness=True) == "too-many-numbers"
    assert code_of("61.2 7 3.5 6", sharpness=True) == "out-of-range"


def test_labelled_extras_follow_in_any_order() -> None:
    line = read("61.2 7 3.5 carbs 310 sharp 4, on target, fine")
    assert (line.carb_eaten_g, line.sharpness, line.on_target, line.all_fine) == (
        310,
        4,
        True,
        True,
    )
    assert read("61.2 7 3.5 sharpness: 4/5").sharpness == 4
    assert read("61.2 7 3.5 All fine, thanks coach!").all_fine


def test_words_after_the_numbers_are_the_note_as_written() -> None:
    assert read("61.2 7 3.5 Slept 5 hours, legs Heavy").note == "Slept 5 hours, legs Heavy"
    assert read("61.2 7 3.5 5 hours sleep", sharpness=True).note == "5 hours sleep"
    assert read("61.2 7 3.5\nChest pain 😟").note == "Chest pain 😟"


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
        ("840 7 3.5", "implausible", "weight"),
        ("8.4 7 3.5", "implausible", "weight"),
        ("-61 7 3.5", "negative", "weight"),
        ("61.2 11 3.5", "out-of-range", "fullness"),
        ("61.2 6.5 3.5", "not-a-whole-number", "fullness"),
        ("61.2 -7 3.5", "negative", "fullness"),
        ("61.2 7 3500", "implausible", "water"),
        ("61.2 7 3,500", "ambiguous-separator", "water"),
        ("61.2 7 120 fl oz", "which-fluid-ounce", "water"),
        ("61.2 7 3.5 sharp 9", "out-of-range", "sharpness"),
        ("61.2 7 3.5 carbs 9000", "out-of-range", "carbs"),
    ],
)
def test_a_refusal_names_the_answer_that_it_is_about(text: str, code: str, field: str) -> None:
    with pytest.raises(Refusal) as caught:
        read(text)
    assert caught.value.code == code
    assert caught.value.facts["field"] == field


def test_commas_that_run_numbers_together_are_refused_as_ambiguous() -> None:
    assert code_of("61.2,7,3.5") == "ambiguous-separator"
    assert code_of("61,7,3") == "ambiguous-separator"


def test_missing_water_is_said_to_be_missing() -> None:
    with pytest.raises(Refusal) as caught:
        read("61.2 7")
    assert (caught.value.code, caught.value.facts["missing"]) == ("incomplete", "water")


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
    assert line.weight.kg == pytest.approx(kg / 10)
    assert line.fullness == fullness
    assert line.water.litres == pytest.approx(decilitres / 10)


@given(
    st.one_of(
        st.text(max_size=4096), st.text(alphabet="0123456789.,- /stlbkgcarbsharpfine½", max_size=60)
    ),
    st.sampled_from(WeightUnit),
    st.booleans(),
)
def test_any_text_gives_a_check_in_or_a_refusal(text: str, unit: WeightUnit, sharp: bool) -> None:
    try:
        line = read(text, weight_unit=unit, sharpness=sharp)
    except Refusal:
        return
    assert 30 <= line.weight.kg <= 250
    assert 1 <= line.fullness <= 10
    assert 0 <= line.water.litres <= 15
    assert line.note in text
