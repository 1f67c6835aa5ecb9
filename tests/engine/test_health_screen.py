"""The health questions: what asks for a doctor first, what for caution, and bodies that can be."""

from __future__ import annotations

import itertools

import pytest

from engine.planning.health_screen import (
    Leads,
    Part,
    Sign,
    asked_of,
    believable,
    bmi_of,
    body_fat_believable,
    judged,
)
from engine.values.athlete import Sex

EATING = asked_of(Part.EATING, Sex.FEMALE)
TALL, USUAL = 170.0, 65.0  # cm, kg: a body mass index of 22.5


def test_scoff_has_its_five_questions_in_its_order_for_women_and_men() -> None:
    """Morgan, Reid & Lacey 1999, BMJ 319:1467: Sick, Control, One stone, Fat, Food."""
    assert EATING == (Sign.SICK, Sign.CONTROL, Sign.ONE_STONE, Sign.FAT, Sign.FOOD)
    assert asked_of(Part.EATING, Sex.MALE) == EATING


@pytest.mark.parametrize("count", range(6))
def test_two_or_more_of_the_five_are_positive(count: int) -> None:
    """Morgan, Reid & Lacey 1999: the threshold of two. One's own: vomiting counts by itself."""
    for ticked in itertools.combinations(EATING, count):
        health = judged(ticked, TALL, USUAL)
        assert health.eating is (count >= 2 or Sign.SICK in ticked)
        assert health.doctor_first is health.eating


def test_no_single_answer_of_the_five_is_ever_named_beside_the_outcome() -> None:
    health = judged(EATING, TALL, USUAL)
    assert not {s for s in (*health.clearance, *health.cautions) if s.part is Part.EATING}


@pytest.mark.parametrize("sign", [s for s in Sign if s.part is not Part.EATING], ids=str)
def test_each_other_sign_leads_where_it_says(sign: Sign) -> None:
    health = judged([sign], TALL, USUAL)
    assert health.doctor_first is (sign.leads is Leads.CLEARANCE)
    assert (sign in health.cautions) is (sign.leads is Leads.CAUTION)


def test_three_signs_of_low_energy_ask_for_a_doctor_and_two_for_caution() -> None:
    two = [Sign.ALWAYS_COLD, Sign.BAD_SLEEP]
    assert not judged(two, TALL, USUAL).doctor_first
    assert judged([*two, Sign.ILL_OFTEN], TALL, USUAL).low_energy
    assert judged([*two, Sign.ILL_OFTEN], TALL, USUAL).doctor_first


def test_women_and_men_are_asked_what_concerns_them() -> None:
    """Mountjoy et al. 2023, Br J Sports Med 57:1073: periods in women, libido in men, bones in both."""
    women, men = (set(asked_of(Part.ENERGY, sex)) for sex in (Sex.FEMALE, Sex.MALE))
    assert women - men == {Sign.PERIODS_AWAY, Sign.PERIODS_IRREGULAR}
    assert men - women == {Sign.DRIVE_GONE, Sign.DRIVE_LOW}
    assert {Sign.STRESS_FRACTURE, Sign.ILL_OFTEN, Sign.ALWAYS_COLD} <= women & men
    assert Sign.PREGNANT not in asked_of(Part.CONDITIONS, Sex.MALE)


@pytest.mark.parametrize(
    ("kg", "underweight", "floor"),
    [
        # World Health Organization: underweight under 18.5 kg/m2, that is 53.465 kg at 170 cm.
        (53.47, False, False),
        (53.46, True, False),
        # ICD-10 F50.0: 17.5 kg/m2, that is 50.575 kg at 170 cm.
        (50.58, True, False),
        (50.57, True, True),
    ],
)
def test_weight_for_height_has_two_floors(kg: float, underweight: bool, floor: bool) -> None:
    health = judged([], TALL, kg)
    assert (health.underweight, health.floor) == (underweight, floor)
    assert health.doctor_first is underweight


def test_body_mass_index_is_kilograms_over_square_metres() -> None:
    """World Health Organization: 70 kg at 1.75 m are 22.9."""
    assert round(bmi_of(175, 70), 1) == 22.9


@pytest.mark.parametrize(
    ("cm", "kg", "can_be"),
    [(170, 31.75, False), (170, 70, True), (170, 150, False), (188, 130, True), (150, 40, True)],
)
def test_a_weight_that_goes_with_no_such_height_is_doubted(
    cm: float, kg: float, can_be: bool
) -> None:
    assert believable(cm, kg) is can_be


@pytest.mark.parametrize(
    ("sex", "percent", "can_be"),
    [
        (Sex.FEMALE, 9.9, False),
        (Sex.FEMALE, 10, True),
        (Sex.FEMALE, 45.1, False),
        (Sex.MALE, 3.9, False),
        (Sex.MALE, 4, True),
        (Sex.MALE, 35.1, False),
    ],
)
def test_a_body_fat_is_held_against_the_sex(sex: Sex, percent: float, can_be: bool) -> None:
    assert body_fat_believable(sex, percent) is can_be
