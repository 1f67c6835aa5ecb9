"""Weights and water as people write them."""

from __future__ import annotations

from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import constants

from engine.written.units import (
    ParseError,
    ParseErrorCode,
    Towards,
    VolumeUnit,
    WeightUnit,
    parse_volume,
    parse_weight,
    show_volume,
    show_weight,
)
from tests.support.any_text import any_text

KG, LB, ST = WeightUnit
L, ML, US, IMP = VolumeUnit


def refused(parse: object, text: str, **settings: object) -> ParseError:
    with pytest.raises(ParseError) as caught:
        parse(text, **settings)  # type: ignore[operator]
    assert str(caught.value)  # a plain sentence to fall back on
    return caught.value


@pytest.mark.parametrize(
    ("text", "kg", "unit"),
    [
        ("61.2", 61.2, KG),
        ("61,2", 61.2, KG),
        ("61,2kg", 61.2, KG),
        ("61.2 KG", 61.2, KG),
        ("61.2 kilos.", 61.2, KG),
        (" 61.2 ", 61.2, KG),
        ("61\u00a0kg", 61, KG),
        ("61½", 61.5, KG),
        ("６１．２", 61.2, KG),
        ("٦١٫٢", 61.2, KG),
        ("6️⃣1️⃣", 61, KG),
        ("weight: 61.2 kg", 61.2, KG),
        # scipy.constants has the exact international pound and stone
        ("134 lb", 134 * constants.pound, LB),
        ("134.5lbs", 134.5 * constants.pound, LB),
        ("134 pounds", 134 * constants.pound, LB),
        ("9st 8", 9 * constants.stone + 8 * constants.pound, ST),
        ("9st8", 9 * constants.stone + 8 * constants.pound, ST),
        ("9 st 8.5 lb", 9 * constants.stone + 8.5 * constants.pound, ST),
        ("9 stone 8 pounds", 9 * constants.stone + 8 * constants.pound, ST),
        ("9st, 8lb", 9 * constants.stone + 8 * constants.pound, ST),
        ("9 stone", 9 * constants.stone, ST),
    ],
)
def test_a_weight_is_read_with_its_unit(text: str, kg: float, unit: WeightUnit) -> None:
    weight = parse_weight(text, unit=KG)
    assert weight.kg == pytest.approx(kg, rel=1e-12)
    assert weight.unit is unit


def test_a_bare_number_takes_the_athletes_own_unit() -> None:
    assert parse_weight("134", unit=LB).kg == pytest.approx(134 * constants.pound)
    assert parse_weight("61", unit=KG).kg == 61
    assert parse_weight("10", unit=ST).kg == pytest.approx(10 * constants.stone)
    assert refused(parse_weight, "61").code == "no-unit"


@pytest.mark.parametrize(
    ("text", "unit", "code"),
    [
        ("", KG, "empty"),
        ("   ", KG, "empty"),
        ("💪", KG, "not-a-number"),
        ("sixty-one", KG, "not-a-number"),
        ("nan", KG, "not-a-number"),
        ("inf", KG, "not-a-number"),
        ("x" * 201, KG, "too-long"),
        ("6" * 4096, KG, "too-long"),
        ("-1", KG, "negative"),
        ("−61 kg", KG, "negative"),
        ("840 kg", KG, "implausible"),
        ("8.4 kg", KG, "implausible"),
        ("8.4", KG, "implausible"),
        ("29.9", KG, "implausible"),
        ("250.1", KG, "implausible"),
        ("61 62", KG, "too-many-numbers"),
        ("61-62", KG, "too-many-numbers"),
        ("61 200", KG, "too-many-numbers"),
        ("61,250", KG, "ambiguous-separator"),
        ("1,234.5", KG, "ambiguous-separator"),
        ("61.2.3", KG, "ambiguous-separator"),
        ("61 oz", KG, "unknown-unit"),
        ("61 kg lb", KG, "unknown-unit"),
        ("61²", KG, "unknown-unit"),
        ("9 8", ST, "ambiguous-stone"),
        ("9.8", ST, "ambiguous-stone"),
        ("9.8 st", KG, "ambiguous-stone"),
        ("9.5 st 3", KG, "ambiguous-stone"),
        ("9 st 14", KG, "out-of-range"),
    ],
)
def test_what_cannot_be_read_one_way_only_is_refused_by_name(
    text: str, unit: WeightUnit, code: str
) -> None:
    assert refused(parse_weight, text, unit=unit).code == code


def test_the_bounds_of_a_body_mass_are_believed_themselves() -> None:
    assert parse_weight("30", unit=KG).kg == 30
    assert parse_weight("250 kg").kg == 250


def test_a_refused_weight_says_what_would_have_been_believed() -> None:
    facts = refused(parse_weight, "61.2", unit=LB).facts
    assert facts["unit"] == "lb"
    assert facts["low"] == pytest.approx(30 / constants.pound, abs=0.05)
    assert facts["high"] == pytest.approx(250 / constants.pound, abs=0.05)
    assert facts["hint"] == "61.2 kg"
    assert "hint" not in refused(parse_weight, "840 kg", unit=KG).facts


@given(kg=st.floats(30.1, 249.9), unit=st.sampled_from(WeightUnit))
def test_a_shown_weight_reads_back_as_itself_to_the_tenth(kg: float, unit: WeightUnit) -> None:
    tenth = 0.1 if unit is KG else 0.1 * constants.pound
    back = parse_weight(show_weight(kg, unit), unit=None)
    assert back.kg == pytest.approx(kg, abs=tenth / 2 + 1e-9)
    assert back.unit is unit


def test_weights_are_shown_as_people_say_them() -> None:
    assert show_weight(61.24, KG) == "61.2 kg"
    assert show_weight(61.2, LB) == "134.9 lb"
    assert show_weight(61.2, ST) == "9 st 8.9 lb"
    assert show_weight(10 * constants.stone - 0.001, ST) == "10 st 0.0 lb"


@pytest.mark.parametrize(
    ("text", "litres", "unit"),
    [
        ("3.5", 3.5, L),
        ("3,5 l", 3.5, L),
        ("3.5L", 3.5, L),
        ("3.5 litres", 3.5, L),
        ("3.5 liters of water", 3.5, L),
        (".5", 0.5, L),
        ("0", 0, L),
        ("3500ml", 3.5, ML),
        ("3,500 ml", 3.5, ML),
        ("3.500 ml", 3.5, ML),
        ("35 dl", 3.5, L),
        # scipy.constants has both fluid ounces and the US gallon, in cubic metres
        ("120 us fl oz", 120 * constants.fluid_ounce_US * 1000, US),
        ("120 fl oz (US)", 120 * constants.fluid_ounce_US * 1000, US),
        ("120oz imperial", 120 * constants.fluid_ounce_imp * 1000, IMP),
        ("1 US gallon", constants.gallon_US * 1000, US),
        ("1 uk gallon", constants.gallon_imp * 1000, IMP),
        ("6 imperial pints", 6 * constants.gallon_imp / 8 * 1000, IMP),
        ("3 us quarts", 3 * constants.gallon_US / 4 * 1000, US),
    ],
)
def test_water_is_read_with_its_unit(text: str, litres: float, unit: VolumeUnit) -> None:
    volume = parse_volume(text, unit=L)
    assert volume.litres == pytest.approx(litres, rel=1e-9)
    assert volume.unit is unit


def test_a_fluid_ounce_is_never_guessed() -> None:
    assert refused(parse_volume, "120 fl oz", unit=L).code == "which-fluid-ounce"
    assert refused(parse_volume, "1 gallon").code == "which-fluid-ounce"
    assert parse_volume("120 fl oz", unit=IMP).unit is IMP
    assert parse_volume("1 gal", unit=US).litres == pytest.approx(constants.gallon_US * 1000)
    assert parse_volume("120", unit=US).litres == pytest.approx(
        120 * constants.fluid_ounce_US * 1000
    )


@pytest.mark.parametrize(
    ("text", "unit", "code", "hint"),
    [
        ("3500", L, "implausible", "3500 ml"),
        ("3.5", ML, "implausible", "3.5 L"),
        ("3.5 ml", L, "implausible", "3.5 L"),
        ("3.5", US, "implausible", "3.5 L"),
        ("15.1 l", L, "implausible", None),
        ("-2", L, "negative", None),
        ("3 500 ml", L, "too-many-numbers", None),
        ("3,500", L, "ambiguous-separator", None),
        ("3.5", None, "no-unit", None),
        ("three", L, "not-a-number", None),
        ("4 bottles", L, "unknown-unit", None),
        ("", L, "empty", None),
        ("🥤", L, "not-a-number", None),
    ],
)
def test_water_that_cannot_be_believed_or_read_is_refused(
    text: str, unit: VolumeUnit | None, code: str, hint: str | None
) -> None:
    error = refused(parse_volume, text, unit=unit)
    assert error.code == code
    assert error.facts.get("hint") == hint


@given(litres=st.floats(0.5, 14.9), unit=st.sampled_from(VolumeUnit))
def test_shown_water_reads_back_as_itself(litres: float, unit: VolumeUnit) -> None:
    back = parse_volume(show_volume(litres, unit))
    assert back.litres == pytest.approx(litres, abs=0.015)
    assert back.unit is unit


def test_water_is_shown_as_people_say_it() -> None:
    assert show_volume(3.5, L) == "3.5 L"
    assert show_volume(3.25, L) == "3.25 L"
    assert show_volume(4, L) == "4.0 L"
    assert show_volume(3.5, ML) == "3500 ml"
    assert show_volume(3.5, US) == "118 US fl oz"
    assert show_volume(3.5, IMP) == "123 imp fl oz"


@given(any_text(300))
def test_any_text_gives_a_quantity_or_a_refusal(text: str) -> None:
    for parse, units in ((parse_weight, WeightUnit), (parse_volume, VolumeUnit)):
        for unit in (None, *units):
            try:
                parse(text, unit=unit)  # type: ignore[operator]
            except ParseError as error:
                assert error.code in set(ParseErrorCode)


@given(st.text(alphabet="0123456789.,-+ '\"kgstlbmozf½", max_size=24))
def test_no_reading_of_a_weight_or_water_is_out_of_bounds(text: str) -> None:
    for unit in WeightUnit:
        with suppress(ParseError):
            assert 30 <= parse_weight(text, unit=unit).kg <= 250
    for volume_unit in VolumeUnit:
        with suppress(ParseError):
            assert 0 <= parse_volume(text, unit=volume_unit).litres <= 15


@given(st.floats(40, 150), st.sampled_from((KG, LB)))
def test_no_weight_a_scale_can_show_is_over_a_most_that_prints_alike(
    most: float, unit: WeightUnit
) -> None:
    per = 1.0 if unit is KG else constants.pound
    shown = float(show_weight(most, unit, Towards.MOST).split()[0])
    least = float(show_weight(most, unit, Towards.LEAST).split()[0])
    assert shown * per <= most + 1e-6 < (shown + 0.1) * per + 1e-5
    assert least * per >= most - 1e-6 > (least - 0.1) * per - 1e-5
