"""Limits at their edges: what is suggested to the gram, what is refused, how a bound is said."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.evidence import deciding as e
from engine.values.athlete import Athlete, Sex
from engine.values.limits import (
    Limits,
    OutsideGuardRail,
    Problem,
    Rail,
    Window,
    fit,
    nearest_inside,
    plan_problems,
)
from engine.values.plan import PeakPlan, Phase
from tests.engine.test_limits import HABIT, MIRA, WEEK, limits, plan


def suggested(athlete: Athlete, week: PeakPlan) -> dict[str, float]:
    found = Limits.suggested(athlete, week, HABIT)
    return {
        name: getattr(found, name)
        for name in Limits.__dataclass_fields__
        if name != "guard_rails"
    }  # fmt: skip


def test_limits_are_suggested_from_the_plans_own_lowest_and_highest_days() -> None:
    """60 kg: steps of 0.4 g/kg, 3 g/kg of change, 2.5 g/kg of room a load day, water 75 to 150 %."""
    wet = PeakPlan(
        tuple(replace(day, water_l=2.8 if day.days_out < 4 else 3.6) for day in WEEK)
    )  # fmt: skip
    assert suggested(MIRA, wet) == {
        "carb_floor_g": 110 - 2 * 25, "carb_ceiling_g": 460 + 180, "step_g": 25,
        "change_per_day_g": 180, "load_total_g": 1380 + 450, "apply_without_asking_g": 25,
        "water_floor_l": 2.1, "water_ceiling_l": 5.4,
    }  # fmt: skip


def test_limits_stop_at_the_guard_rails_and_never_shut_out_what_is_planned() -> None:
    """At most 12 g/kg and 100 mL/kg a day (Burke 2011, Reale 2018); women drink 1.4 L (EFSA 2010)."""
    edge = plan(30, 30, 30, 30, 715, 715, 715, 180, water_l=1.42)
    found = suggested(MIRA, edge)
    assert (found["carb_floor_g"], found["carb_ceiling_g"], found["load_total_g"]) == (
        30, 720, 2160,
    )  # fmt: skip
    assert found["water_floor_l"] == 1.4
    flooded = suggested(MIRA, plan(110, 110, 110, 110, 460, 460, 460, 180, water_l=5.99))
    assert flooded["water_ceiling_l"] == 6.0
    dry = suggested(MIRA, plan(110, 110, 110, 110, 460, 460, 460, 180, water_l=0.5))
    assert dry["water_floor_l"] == 1.4
    assert dry["water_ceiling_l"] == 2.1


def test_without_a_plan_limits_are_suggested_around_the_habit() -> None:
    found = suggested(MIRA, PeakPlan(()))
    assert (found["carb_floor_g"], found["carb_ceiling_g"]) == (180 - 50, 180 + 180)
    assert (found["water_floor_l"], found["water_ceiling_l"]) == (2.4, 4.8)


def test_the_room_of_a_load_grows_with_its_days() -> None:
    two = PeakPlan(
        tuple(
            replace(day, phase=Phase.EVENT if day.days_out == 0 else
                    Phase.LOAD if day.days_out < 3 else Phase.DEPLETION)
            for day in WEEK
        )
    )  # fmt: skip
    assert suggested(MIRA, two)["load_total_g"] == 920 + 300


def test_a_load_at_its_total_keeps_it() -> None:
    exact = limits(load_total_g=WEEK.load_g)
    assert exact.with_room_for(WEEK) is exact


@pytest.mark.parametrize(
    ("wanted", "low", "high", "grain", "nearest"),
    [
        (100, 30, 720, 5, 100),
        (102.4, 30, 720, 5, 100),
        (102.5, 30, 720, 5, 105),
        (0, 30, 720, 5, 30),
        (1000, 30, 720, 5, 720),
        (0, 31.2, 720, 5, 35),  # the first round figure inside
        (1000, 30, 718.8, 5, 715),
        (32, 31, 33, 5, 31),  # none inside: the rail's end
        (1.0, 1.4, 6, 0.05, 1.4),
        (7.0, 1.4, 6, 0.05, 6.0),
        (1.73, 1.4, 6, 0.05, 1.75),
    ],
)
def test_a_figure_is_the_nearest_round_one_that_a_rail_allows(
    wanted: float, low: float, high: float, grain: float, nearest: float
) -> None:
    rail = Rail(low, high, e.OWN_CHOICE, e.OWN_CHOICE)
    assert nearest_inside(wanted, rail, grain) == nearest


def test_the_guard_rails_of_a_day_are_what_a_signed_word_may_reach() -> None:
    window = limits().guard_rail_window()
    assert window == Window(30, 720, "guard_rail", "guard_rail")
    he = Athlete(sex=Sex.MALE, birth_year=1990, height_cm=181, body_mass_kg=80.5)
    assert limits(he, water_floor_l=1.75).guard_rail_window().high == 966


def test_a_refusal_says_at_least_or_at_most() -> None:
    with pytest.raises(
        OutsideGuardRail, match=r"carb floor a day .* must be at least 30 g, not 29"
    ):
        limits(carb_floor_g=29)
    with pytest.raises(OutsideGuardRail, match=r"step .* must be at most 90 g, not 91 g"):
        limits(step_g=91)


def test_equal_ends_are_limits_too() -> None:
    assert limits(carb_floor_g=460, carb_ceiling_g=460).carb_floor_g == 460
    assert limits(water_floor_l=3.2, water_ceiling_l=3.2).water_floor_l == 3.2
    assert Window(100, 100, "a", "b").low == 100
    with pytest.raises(ValueError, match="no figure lies between"):
        Window(100, 99, "a", "b")
    with pytest.raises(ValueError, match="no figure lies between"):
        Window(float("nan"), 99, "a", "b")


@pytest.mark.parametrize("wish", [float("nan"), float("inf"), float("-inf")])
def test_a_wish_that_is_no_figure_is_refused(wish: float) -> None:
    with pytest.raises(ValueError, match="no figure to fit"):
        fit(wish, Window(100, 200, "a", "b"))


def test_a_window_may_be_a_single_figure_at_the_end_of_what_is_left() -> None:
    window = limits().window(460, 360)
    assert window == Window(360, 360, "change_per_day_g", "load_total_g")
    assert limits().window(460, 359.9) is None


@pytest.mark.parametrize(
    ("problem", "says"),
    [
        (
            Problem(5, "carb_g", 40, "carb_floor_g", 60),
            "5 days out: carb_g 40 g is under the carb floor a day of 60 g",
        ),
        (
            Problem(0, "water_l", 5, "water_ceiling_l", 4.8),
            "0 days out: water_l 5 L is over the water ceiling a day of 4.8 L",
        ),
        (
            Problem(None, "carb_g", 1600, "load_total_g", 1500),
            "The load: carb_g 1600 g is over the load total of 1500 g",
        ),
    ],
)
def test_a_problem_says_where_what_and_by_which_limit(problem: Problem, says: str) -> None:
    assert str(problem) == says


def test_a_load_total_is_passed_by_grams_and_not_by_dust() -> None:
    thirds = plan(110, 110, 110, 110, 460.1, 460.1, 460.1, 180)  # 1380.3000000000002 as floats
    assert plan_problems(thirds, limits(load_total_g=1380.3)) == ()
    (problem,) = plan_problems(thirds, limits(load_total_g=1380.2))
    assert (problem.value, problem.bound) == (1380.3, 1380.2)
