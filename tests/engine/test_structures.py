"""The tracker's bodies by the day, held against what was measured in people."""

from __future__ import annotations

import numpy as np
import pytest

from engine.evidence.body import physiology as sizes
from engine.model.particles import Belief, Covariates
from engine.model.physiology import Exercise, Intake
from engine.model.structures import KINDS, Row, Usual, draw_kinds, hours_lifted
from engine.model.tracker import after_day, first_belief, weights_kg
from engine.values.athlete import Sex

MAN = Covariates(sex=Sex.MALE, body_mass_kg=70, body_fat_percent=12)
PER_LEVEL = MAN.muscle_kg * float(sizes.GLYCOGEN_MOLAR)  # g per mmol/kg wet


def starting_at(mmol_per_kg: float) -> tuple[Belief, np.random.Generator]:
    rng = np.random.default_rng(1)
    belief = first_belief(MAN, rng, particles=3000)
    state = belief.state.copy()
    state[Row.MUSCLE] = np.minimum(mmol_per_kg * PER_LEVEL, belief.body.ceiling_g)
    return Belief(frame=MAN, person=belief.person, state=state, first=state, planned=state), rng


@pytest.mark.parametrize(
    ("begin", "g_per_kg", "days", "measured"),
    [
        # Bussau 2002, Eur J Appl Physiol 87:290: 95 to 180 mmol/kg wet, unchanged after three days.
        (95.0, 10.0, 3, 180.0),
        # Shiose (abstract): 28.1 to 72.7 mmol/kg wet in 24 h of 7 g/kg after a depleting ride.
        (28.1, 7.0, 1, 72.7),
        # Bergstrom 1967, Acta Physiol Scand 71:140: 3.31 g/100 g wet is 204, after three days of
        # carbohydrate; intake of about 9 g/kg is assumed, and the 39 it began from is its low diet's.
        (39.0, 9.0, 3, 204.0),
    ],
)
def test_what_was_measured_lies_within_what_is_believed_of_anybody(
    begin: float, g_per_kg: float, days: int, measured: float
) -> None:
    belief, rng = starting_at(begin)
    for _ in range(days):
        belief = after_day(belief, Intake(carb_g=g_per_kg * 70), rng)
    low, high = np.quantile(belief.state[Row.MUSCLE] / PER_LEVEL, [0.025, 0.975])
    assert low < measured < high


def test_kinds_come_as_often_as_they_are_held_likely() -> None:
    kinds = draw_kinds(40_000, np.random.default_rng(2))
    for row, likely in zip(kinds, KINDS, strict=True):
        assert sum(likely) == pytest.approx(1)
        shares = np.bincount(row, minlength=len(likely)) / kinds.shape[1]
        assert shares == pytest.approx(np.array(likely), abs=0.01)


def test_a_harder_session_and_more_cardio_count_for_more_and_none_done_for_nothing() -> None:
    rest = hours_lifted(Intake(carb_g=300))
    light = hours_lifted(Intake(carb_g=300, exercise=Exercise.LIGHT))
    legs = hours_lifted(Intake(carb_g=300, exercise=Exercise.DEPLETING))
    cardio = hours_lifted(Intake(carb_g=300, exercise=Exercise.LIGHT, cardio_h=1))
    assert rest == 0 < light < cardio and light < legs
    assert hours_lifted(Intake(carb_g=300, exercise=Exercise.DEPLETING, work_done=0)) == 0


def test_less_fibre_and_less_salt_than_the_habit_weigh_less_and_the_habit_nothing() -> None:
    frame = Covariates(
        sex=Sex.MALE, body_mass_kg=70, body_fat_percent=12, usual=Usual(fibre_g=30, sodium_mg=3000)
    )

    def after(fibre_g: float, sodium_mg: float) -> float:
        rng = np.random.default_rng(3)
        belief = first_belief(frame, rng, particles=500)
        for _ in range(4):
            day = Intake(carb_g=300, fibre_g=fibre_g, sodium_mg=sodium_mg)
            belief = after_day(belief, day, rng)
        return float(np.mean(weights_kg(belief)))

    usual = after(30, 3000)
    # Foo 2022: about 0.4 kg less on under 10 g of fibre a day, after four days.
    assert 0.2 < usual - after(9, 3000) < 0.8
    assert after(30, 1500) < usual < after(30, 5000)
