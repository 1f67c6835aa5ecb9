"""A plan as shares of body mass and habits, and back; expected figures by hand arithmetic."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.planning.drafting.draft import Asked, draft_plan
from engine.planning.drafting.template import relative, scaled
from engine.values.athlete import Athlete, Baseline, Sex
from engine.values.plan import DayTarget, PeakPlan

ATHLETE = Athlete(sex=Sex.MALE, birth_year=1995, height_cm=180, body_mass_kg=80)
HABITS = Baseline(carb_g=400, protein_g=180, fat_g=70, fibre_g=30, water_l=4, sodium_mg=3000)


def test_the_load_goes_by_body_mass_and_the_rest_by_habit() -> None:
    plan = PeakPlan(
        tuple(
            DayTarget(
                days_out=out, carb_g=carb_g, protein_g=160, fat_g=35, fibre_g=15, water_l=4,
                sodium_mg=3000, training="rest", cardio_min=20, steps=8000,
            )
            for out, carb_g in ((5, 200), (2, 640))
        )
    )  # fmt: skip
    other = replace(ATHLETE, body_mass_kg=100)
    habits = Baseline(carb_g=300, protein_g=200, fat_g=90, fibre_g=40, water_l=3.33, sodium_mg=2510)
    early, load = scaled(relative(plan, ATHLETE, HABITS), other, habits)
    assert (early.carb_g, load.carb_g) == (150, 800)  # 200/400 x 300; 640/80 x 100
    assert early.protein_g == 178  # 160/180 x 200 = 177.8
    assert (early.fat_g, early.fibre_g) == (45, 20)
    assert (early.water_l, early.sodium_mg) == (3.33, 2510)  # steady at habit, unrounded
    assert (early.training, early.cardio_min, early.steps) == ("rest", 20, 8000)


@pytest.mark.parametrize("shape", ["even", "front-load", "back-load"])
def test_a_plan_put_back_on_its_own_athlete_is_the_same_plan(shape: str) -> None:
    plan = draft_plan(ATHLETE, HABITS, Asked(shape=shape))
    again = scaled(relative(plan, ATHLETE, HABITS), ATHLETE, HABITS)
    for was, now in zip(plan, again, strict=True):
        assert (now.carb_g, now.water_l, now.sodium_mg) == (was.carb_g, was.water_l, was.sodium_mg)
        assert abs(now.fat_g - was.fat_g) <= 0.5


def test_a_habit_of_nothing_is_no_share_of_anything() -> None:
    none = replace(HABITS, fat_g=0.0)
    plan = PeakPlan(
        (
            DayTarget(
                days_out=4, carb_g=200, protein_g=160, fat_g=40, fibre_g=15, water_l=4,
                sodium_mg=3000,
            ),
        )
    )  # fmt: skip
    (day,) = scaled(relative(plan, ATHLETE, none), replace(ATHLETE, body_mass_kg=40), HABITS)
    assert day.fat_g == 20  # 40 g / 80 kg x 40 kg
