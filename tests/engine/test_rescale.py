"""The next plan is scaled by what a trial taught, inside the coach's limits."""

from __future__ import annotations

import numpy as np
import pytest

from engine.model.forecast import (
    PARTICLES,
    REHEARSED,
    UNTRIED,
    DayAhead,
    DoseForecast,
    choose,
    expected_utility,
    subsample,
)
from engine.model.particles import Band, Belief, Covariates
from engine.model.physiology import Intake
from engine.model.tracker import Look, after_day, first_belief, next_prior, update_on_look
from engine.planning.drafting.bridge import Against, Load, suggested_plan
from engine.values.athlete import Sex

WOMAN = Covariates(sex=Sex.FEMALE, body_mass_kg=58, body_fat_percent=14)
WEEK = (110.0, 90.0, 90.0, 90.0, 460.0, 490.0, 400.0)


def week(around: float = 140.0) -> list[DayAhead]:
    return [
        DayAhead(planned=Intake(carb_g=g), low_g=max(50.0, g - around), high_g=g + around)
        for g in WEEK
    ]


def belief_after_a_trial_that_was(seen: Look) -> tuple[Belief, np.random.Generator]:
    rng = np.random.default_rng(5)
    belief = first_belief(WOMAN, rng, particles=1500)
    for grams in WEEK:
        belief = after_day(belief, Intake(carb_g=grams), rng)
    after = next_prior(update_on_look(belief, seen, rng), WOMAN, rng, weeks=3)
    return subsample(after, PARTICLES, rng), rng


def test_a_trial_that_ended_flat_suggests_a_larger_load_than_one_that_spilled_over() -> None:
    loads = {}
    for seen in (Look.FLAT, Look.SPILLED):
        belief, rng = belief_after_a_trial_that_was(seen)
        loads[seen] = sum(suggested_plan(belief, week(), rng).carbs_g[-3:])
    assert loads[Look.FLAT] > loads[Look.SPILLED]
    assert loads[Look.SPILLED] <= sum(WEEK[-3:])


def test_days_before_the_load_stay_as_planned() -> None:
    belief, rng = belief_after_a_trial_that_was(Look.SPILLED)
    assert suggested_plan(belief, week(), rng).carbs_g[:4] == WEEK[:4]


def test_the_scaled_load_stays_inside_each_day_and_the_total() -> None:
    belief, rng = belief_after_a_trial_that_was(Look.FLAT)
    total = sum(WEEK[-3:]) * 1.05
    found = suggested_plan(belief, week(around=60), rng, within=Load(total_g=total))
    assert sum(found.carbs_g[-3:]) <= total + 1e-6
    for dose, day in zip(found.carbs_g, week(around=60), strict=True):
        assert day.low_g <= dose <= day.high_g


def test_where_nothing_is_worth_a_change_the_coachs_own_load_stands() -> None:
    belief, rng = belief_after_a_trial_that_was(Look.FULL)
    stays = suggested_plan(belief, week(), rng, against=Against(1e6, 1.1))
    assert stays.factor == 1.1
    assert sum(stays.carbs_g[-3:]) == pytest.approx(1.1 * sum(WEEK[-3:]))
    assert suggested_plan(belief, week(), rng, against=Against(1e6)).carbs_g == WEEK


def test_what_a_load_may_lose_is_lost_against_what_the_coach_meant() -> None:
    """Over a load that leaves everybody empty nothing is lost, however dear a loss is."""

    def against(aversion: float, meant: tuple[float, ...] | None) -> tuple[float, ...]:
        belief, rng = belief_after_a_trial_that_was(Look.SPILLED)
        return suggested_plan(belief, week(), rng, against=Against(aversion, meant=meant)).carbs_g

    empty, same = (60.0, 60.0, 60.0), WEEK[-3:]
    assert against(1, same) == against(1, None)
    assert against(50, same) == against(50, None) != against(1, None)
    assert against(50, empty) == against(1, empty)


def test_a_week_shorter_than_its_load_is_refused() -> None:
    belief, rng = belief_after_a_trial_that_was(Look.FULL)
    with pytest.raises(ValueError, match="whole week"):
        suggested_plan(belief, week()[:2], rng)


def test_a_change_that_loses_as_often_as_it_wins_is_not_worth_it() -> None:
    assert expected_utility(np.array([0.1, -0.1, 0.2, -0.2])) < 0
    assert expected_utility(np.array([0.1, 0.0, 0.0, 0.0])) > 0


def test_what_no_later_day_makes_good_counts_most() -> None:
    """Common practice: more on the last day is seen on the event; early it can be taken back.

    A day's storing has a most (Fairchild 2002: 89 mmol/kg in 24 h at 10 g/kg), so what is left out
    early is not eaten after; on the last day less can at worst leave what one day would have stored.
    """
    day = DayAhead(planned=Intake(carb_g=400.0), low_g=250, high_g=550)
    doses = [300.0, 400.0, 500.0]
    less_last, _, more_last = UNTRIED.of_a_step([day], doses)
    less, _, more = UNTRIED.of_a_step([day, day], doses)
    assert more_last > less > less_last > more == 0


def test_a_trial_and_a_load_planned_from_one_are_moved_less_lightly_than_a_first_plan() -> None:
    """Common practice: a trial is there to show what its plan does."""
    gains = np.array([0.10, -0.03])
    assert expected_utility(gains, UNTRIED.loss) > 0 > expected_utility(gains, REHEARSED.loss)


def outlook(carb_g: float, worth_of: float) -> DoseForecast:
    return DoseForecast(
        carb_g=carb_g, flat=0.2, full=0.7, spilled=0.1, look=0.9, expected_utility=worth_of,
        tomorrow=Band(low=57, middle=58, high=59), replanned_g=(),
    )  # fmt: skip


def test_where_no_dose_is_worth_a_change_the_plan_stands() -> None:
    doses = [outlook(300, -0.02), outlook(360, 0.0), outlook(420, 0.0005)]
    assert choose(doses, planned_g=360).carb_g == 360


def test_the_dose_most_worth_giving_is_chosen_however_far_from_the_plan() -> None:
    doses = [outlook(210, 0.06), outlook(300, 0.03), outlook(360, 0.0)]
    assert choose(doses, planned_g=360).carb_g == 210
