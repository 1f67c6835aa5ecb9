"""How fast the models are; the one by the hour beside a plain-Python loop over the same equations.

Run by itself to see the figures: `pytest tests/bench -s`. The bounds are those that a person would
notice, with room for a slow machine.
"""

from __future__ import annotations

from collections.abc import Callable
from time import perf_counter, process_time

import numpy as np
import pytest

from engine.model.forecast import DayAhead, Doses, forecast
from engine.model.particles import Covariates, Morning
from engine.model.physiology import Body, Floats, Intake, Trained, body, first_morning, simulate_day
from engine.model.tracker import after_day, first_belief, update_belief
from engine.values.athlete import Sex
from tests.bench.plain import plain_day

WEEK = [Intake(carb_g=g) for g in (120.0, 120, 120, 120, 450, 500, 320)]


def seconds(work: Callable[[], object], times: int = 3) -> float:
    """The least of a few runs."""
    spent = []
    for _ in range(times):
        begin = perf_counter()
        work()
        spent.append(perf_counter() - begin)
    return min(spent)


def people(number: int) -> Body:
    return body(
        sex=Sex.FEMALE,
        body_mass_kg=np.linspace(48, 70, number),
        body_fat_percent=15.0,
        trained=Trained.TRAINED,
    )


def a_week(person: Body) -> Floats:
    state = first_morning(person)
    for day in WEEK:
        state = simulate_day(state, day, person)
    return state


def test_athlete_weeks_a_second_against_a_plain_loop() -> None:
    many = people(2000)
    fast = 2000 / seconds(lambda: a_week(many))
    one = body(sex=Sex.FEMALE, body_mass_kg=58, body_fat_percent=15.0, trained=Trained.TRAINED)

    def plainly() -> None:
        state = [float(value) for value in first_morning(one)]
        for day in WEEK:
            state = plain_day(state, float(day.carb_g), one)

    slow = 1 / seconds(plainly)
    print(f"\nathlete-weeks a second: {fast:,.0f}; in a plain loop {slow:,.0f}")  # noqa: T201
    assert fast > 5 * slow


def test_the_plain_loop_and_the_arrays_say_the_same() -> None:
    one = body(sex=Sex.FEMALE, body_mass_kg=58, body_fat_percent=15.0, trained=Trained.TRAINED)
    arrays, plain = first_morning(one), [float(value) for value in first_morning(one)]
    for day in WEEK:
        arrays, plain = simulate_day(arrays, day, one), plain_day(plain, float(day.carb_g), one)
    assert plain == pytest.approx(arrays, rel=1e-9, abs=1e-9)


def cpu_ms(work: Callable[[], object], times: int = 7) -> float:
    """The least processor time of a few runs, ms: what a busy machine leaves alone."""
    spent = []
    for _ in range(times):
        begin = process_time()
        work()
        spent.append(process_time() - begin)
    return 1000 * min(spent)


def test_a_mornings_update_takes_under_fifteen_milliseconds() -> None:
    rng = np.random.default_rng(1)
    frame = Covariates(sex=Sex.FEMALE, body_mass_kg=58, body_fat_percent=14)
    belief = update_belief(first_belief(frame, rng), Morning(weight_kg=58.0), rng)

    def morning() -> None:
        told = update_belief(belief, Morning(weight_kg=58.2, fullness=5, sharpness=4), rng)
        after_day(told, WEEK[4], rng, planned=WEEK[5])

    took = cpu_ms(morning)
    print(f"\na tracked morning: {took:.1f} ms")  # noqa: T201
    assert took < 15


def test_a_forecast_of_eleven_doses_takes_under_thirty_milliseconds() -> None:
    rng = np.random.default_rng(1)
    frame = Covariates(sex=Sex.FEMALE, body_mass_kg=58, body_fat_percent=14)
    belief = first_belief(frame, rng)
    ahead = [
        DayAhead(planned=day, low_g=float(day.carb_g) - 100, high_g=float(day.carb_g) + 100)
        for day in WEEK[4:]
    ]
    doses = [350.0 + 25 * k for k in range(11)]
    took = cpu_ms(lambda: forecast(belief, ahead, Doses(doses), rng))
    print(f"\na forecast of {len(doses)} doses, three days ahead: {took:.1f} ms")  # noqa: T201
    assert took < 30
