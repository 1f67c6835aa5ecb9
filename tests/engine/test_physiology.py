"""The body model keeps physics, and its own integration agrees with a general-purpose solver."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from engine.model.physiology import (
    Body,
    DayPhase,
    Exercise,
    Intake,
    Row,
    Trained,
    advance,
    body,
    complete,
    first_morning,
    mass_change_kg,
    rates,
    simulate_day,
    water_change_l,
)
from engine.values.athlete import Sex

STORES = (Row.MUSCLE, Row.LIVER, Row.GUT_CARB, Row.GUT_BULK, Row.SPILL, Row.SHOWN_SPILL)

# Eight people go through a week side by side, as an array: it costs what one of them costs, and
# `test_many_people_at_once_come_out_as_each_alone` holds them to it.
AT_ONCE = 32


def each(least: float, most: float) -> st.SearchStrategy[Any]:
    """A figure for each of the people, every fifth of them the least or the most."""

    def drawn(seed: int) -> np.ndarray:
        dice = np.random.default_rng(seed)
        figures = dice.uniform(least, most, AT_ONCE)
        at_its_end = dice.random(AT_ONCE)
        figures[at_its_end < 0.1], figures[at_its_end > 0.9] = least, most
        return figures

    return st.integers(0, 2**32 - 1).map(drawn)


people = st.builds(
    lambda activity, **facts: replace(body(**facts), activity=activity),
    activity=each(0, 8),
    sex=st.sampled_from(Sex),
    body_mass_kg=each(42, 120),
    body_fat_percent=each(4, 35),
    trained=st.sampled_from(Trained),
)
days = st.lists(
    st.builds(
        Intake,
        carb_g=each(0, 1400),
        protein_g=each(0, 300),
        fat_g=each(0, 200),
        fibre_g=each(0, 80),
        sodium_mg=each(200, 12000),
        water_l=each(0.5, 10),
        exercise=st.sampled_from(Exercise),
    ),
    min_size=1,
    max_size=5,
)


def follow(person: Body, week: list[Intake], *, step_h: float = 0.25) -> list[np.ndarray]:
    states = [first_morning(person)]
    for day in week:
        states.append(simulate_day(states[-1], day, person, step_h=step_h))
    return states


@settings(max_examples=5)
@given(person=people, week=days)
def test_no_store_is_ever_negative(person: Body, week: list[Intake]) -> None:
    for state in follow(person, week):
        assert all(np.all(state[row] >= -1e-9) for row in STORES)


@settings(max_examples=5)
@given(person=people, week=days)
def test_carbohydrate_eaten_or_made_is_stored_burnt_or_turned_to_fat_to_the_gram(
    person: Body, week: list[Intake]
) -> None:
    first, *_, last = follow(person, week)
    eaten = sum(day.carb_g for day in week)
    stored = sum(last[row] - first[row] for row in (Row.MUSCLE, Row.LIVER, Row.GUT_CARB))
    gone = last[Row.OXIDISED] + last[Row.LIPOGENESIS]
    assert eaten + last[Row.GLUCONEOGENESIS] == pytest.approx(stored + gone, abs=1)


@settings(max_examples=4)
@given(person=people, week=days)
def test_body_mass_changes_by_the_sum_of_its_parts_to_the_gram(
    person: Body, week: list[Intake]
) -> None:
    first, *_, last = follow(person, week)
    grams = sum(last[row] - first[row] for row in (Row.MUSCLE, Row.LIVER, Row.GUT_CARB))
    kilos = sum(last[row] - first[row] for row in (Row.GUT_BULK, Row.TISSUE))
    parts = grams / 1000 + kilos + water_change_l(last, first, person)
    assert mass_change_kg(last, first, person) == pytest.approx(parts, abs=0.001)


@settings(max_examples=5)
@given(person=people, week=days, more=each(5, 400), which=st.integers(0, 4))
def test_more_carbohydrate_on_a_day_never_means_less_glycogen_later(
    person: Body, week: list[Intake], more: np.ndarray, which: int
) -> None:
    which = which % len(week)
    richer = [
        replace(day, carb_g=day.carb_g + more) if number == which else day
        for number, day in enumerate(week)
    ]
    for less, rich in zip(follow(person, week), follow(person, richer), strict=True):
        total = less[Row.MUSCLE] + less[Row.LIVER]
        assert np.all(rich[Row.MUSCLE] + rich[Row.LIVER] >= total - 0.01)


@settings(max_examples=4)
@given(person=people, week=days)
def test_halving_the_time_step_moves_the_stores_by_less_than_one_percent(
    person: Body, week: list[Intake]
) -> None:
    coarse, fine = follow(person, week)[-1], follow(person, week, step_h=0.125)[-1]
    assert coarse[Row.MUSCLE] == pytest.approx(fine[Row.MUSCLE], rel=0.01)
    assert coarse[Row.LIVER] == pytest.approx(fine[Row.LIVER], rel=0.01, abs=0.5)
    first = first_morning(person)
    assert mass_change_kg(coarse, first, person) == pytest.approx(
        mass_change_kg(fine, first, person), rel=0.01, abs=0.01
    )


def test_what_was_spilled_shows_more_a_day_after_than_on_the_morning_after() -> None:
    # Common practice: a blur is seen a day after what caused it.
    person = body(sex=Sex.MALE, body_mass_kg=80, body_fat_percent=8, trained=Trained.TRAINED)
    week = [Intake(carb_g=1100), *[Intake(carb_g=300)] * 3]
    _, morning, day_after, third, fourth = (one[Row.SHOWN_SPILL] for one in follow(person, week))
    assert 0 < morning < day_after
    assert day_after > third > fourth


def test_moving_about_burns_carbohydrate_while_meals_offer_it() -> None:
    still = body(sex=Sex.FEMALE, body_mass_kg=57, body_fat_percent=14, trained=Trained.TRAINED)
    moving = replace(still, activity=3.0)

    def stored(person: Body, carb_g: float) -> float:
        first, last = follow(person, [Intake(carb_g=carb_g)])
        return float(sum(last[row] - first[row] for row in (Row.MUSCLE, Row.LIVER)))

    assert stored(still, 450) - stored(moving, 450) > 10
    assert stored(still, 0) == pytest.approx(stored(moving, 0), abs=8)


@pytest.mark.parametrize("exercise", list(Exercise))
@pytest.mark.parametrize("carb_g", [40, 300, 800])
def test_the_same_equations_in_a_general_purpose_solver_agree_within_half_a_percent(
    exercise: Exercise, carb_g: float
) -> None:
    from scipy.integrate import solve_ivp  # noqa: PLC0415 - no other test waits for it to be loaded

    person = body(sex=Sex.FEMALE, body_mass_kg=58, body_fat_percent=16, trained=Trained.TRAINED)
    day = complete(Intake(carb_g=carb_g, exercise=exercise), person)
    ours = theirs = first_morning(person)
    for _ in range(3):
        ours = advance(ours, day, person, hours=24)
        for begin, end in pairwise(sorted({0.0, day.work.hours, 16.0, 24.0})):
            now = DayPhase(
                eating=1.5 if begin < 16 else 0.0,
                working_hours=day.work.hours if begin < day.work.hours else 0.0,
            )
            theirs = solve_ivp(
                lambda _, y, now=now: rates(y, day, now, person),
                (begin / 24, end / 24),
                theirs,
                method="LSODA",
                rtol=1e-8,
                atol=1e-8,
            ).y[:, -1]
    for row in (Row.MUSCLE, Row.LIVER, Row.GUT_BULK, Row.OXIDISED, Row.GLUCONEOGENESIS):
        assert ours[row] == pytest.approx(theirs[row], rel=0.005, abs=0.05), row
    start = first_morning(person)
    assert mass_change_kg(ours, start, person) == pytest.approx(
        mass_change_kg(theirs, start, person), rel=0.005, abs=0.003
    )


def test_many_people_at_once_come_out_as_each_alone() -> None:
    masses = np.array([50.0, 65.0, 90.0])
    together = body(sex=Sex.MALE, body_mass_kg=masses, body_fat_percent=np.array([8.0, 12, 20]))
    day = Intake(carb_g=np.array([100.0, 500, 900]), exercise=Exercise.LIGHT)
    at_once = simulate_day(first_morning(together), day, together)
    for i, (mass, fat, carb) in enumerate(zip(masses, (8, 12, 20), (100, 500, 900), strict=True)):
        one = body(sex=Sex.MALE, body_mass_kg=float(mass), body_fat_percent=float(fat))
        alone = simulate_day(
            first_morning(one), Intake(carb_g=float(carb), exercise=Exercise.LIGHT), one
        )
        assert at_once[:, i] == pytest.approx(alone, rel=1e-9, abs=1e-9)


def test_drinking_under_the_losses_shows_as_a_water_deficit() -> None:
    person = body(sex=Sex.MALE, body_mass_kg=80)
    dry = follow(person, [Intake(carb_g=300, water_l=0.5)] * 2)[-1]
    usual = follow(person, [Intake(carb_g=300)] * 2)[-1]
    assert dry[Row.DEFICIT] < usual[Row.DEFICIT] - 0.5
