"""The load after one that mornings had moved: how far that is taken back, by how it looked."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from engine.values.checkin import Look
from engine.values.plan import LOAD_DAYS
from tests.engine.test_next_load import MIRA, TRIAL, WIDE, _load, moved, planned, suggested, trial


@pytest.mark.parametrize(("mean", "by_g"), [(6.5, -120.0), (7.0, 120.0), (9.0, 100.0)])
def test_full_on_what_mornings_had_moved_may_go_part_of_the_way_back_to_the_plan(
    mean: float, by_g: float
) -> None:
    week = moved(mean, by_g)
    found = suggested([week], week.as_it_went, None)
    toward = found.g_per_kg - found.then_g_per_kg
    assert found.changes and toward * by_g < 0
    assert abs(found.then_g_per_kg - found.g_per_kg) < abs(by_g) / MIRA.body_mass_kg
    assert found.after.full > found.before.full
    assert not found.disagrees and found.bound is None


def test_full_on_what_mornings_had_moved_never_goes_past_plan_or_what_was_eaten() -> None:
    for mean, by_g in ((8.0, -90.0), (5.0, -10.0), (10.0, 10.0), (5.0, 60.0)):
        week = moved(mean, by_g)
        found = suggested([week], week.as_it_went, None)
        if by_g > 0:  # at least half of a raise is taken back: it may have been full as planned
            assert _load(found.plan) <= week.plan.load_g + 1.5 * by_g + 7.5  # in fives of grams
        least, most = sorted((week.plan.load_g, week.as_it_went.load_g))
        assert least <= _load(found.plan) <= most


@pytest.mark.parametrize(
    ("look", "mean", "by_g"), [(Look.FLAT, 9.5, -180.0), (Look.SPILLED, 5.0, 60.0)]
)
def test_a_look_that_tells_against_the_mornings_takes_half_of_what_they_moved_back(
    look: Look, mean: float, by_g: float
) -> None:
    """Flat on what they had cut, spilled over on what they had raised: so far the word counts."""
    week = moved(mean, by_g, look)
    found = suggested([week], week.as_it_went, None)
    taken_back = (found.g_per_kg - found.then_g_per_kg) * MIRA.body_mass_kg / -by_g
    assert taken_back > 0.5 - 0.06  # in fives of grams
    assert not found.disagrees
    # Of the same load as planned the model would have left it, or gone about as far.
    planned_so = replace(week, plan=week.as_it_went)
    alone = suggested([planned_so], planned_so.plan, None)
    assert abs(alone.g_per_kg - alone.then_g_per_kg) <= abs(found.g_per_kg - found.then_g_per_kg)


@pytest.mark.parametrize(
    ("look", "mean", "by_g"), [(Look.FLAT, 5.0, -60.0), (Look.SPILLED, 8.0, 30.0)]
)
def test_where_more_than_half_taken_back_is_better_more_is(
    look: Look, mean: float, by_g: float
) -> None:
    week = moved(mean, by_g, look)
    found = suggested([week], week.as_it_went, None)
    half = week.as_it_went.load_g - 1.5 * by_g
    assert (_load(found.plan) - half) * by_g < 0


@pytest.mark.parametrize(
    ("look", "mean", "by_g"),
    [
        (Look.SPILLED, 9.0, -60.0), (Look.SPILLED, 5.5, -30.0), (Look.FLAT, 5.5, 30.0),
        (Look.FLAT, 9.0, 60.0),
    ],
)  # fmt: skip
def test_a_look_that_bears_the_mornings_out_takes_nothing_back(
    look: Look, mean: float, by_g: float
) -> None:
    week = moved(mean, by_g, look)
    found = suggested([week], week.as_it_went, None)
    assert (found.g_per_kg - found.then_g_per_kg) * by_g >= 0


@pytest.mark.parametrize(
    ("look", "mean", "by_g", "other"), [(Look.SPILLED, 5.0, 60.0, 4.5), (Look.FLAT, 9.5, -180.0, 7.5)]
)  # fmt: skip
def test_of_another_plan_nothing_is_taken_back(
    look: Look, mean: float, by_g: float, other: float
) -> None:
    found = suggested([moved(mean, by_g, look)], planned(other), None)
    assert not found.changes


def test_a_load_that_spilled_over_twice_as_it_was_is_cut_as_far_as_it_takes() -> None:
    def after(*looks: tuple[Look, float]) -> float:
        weeks = [
            replace(trial(look, day=TRIAL + timedelta(21 * k)), plan=planned(mean))
            for k, (look, mean) in enumerate(looks)
        ]
        return suggested(weeks, planned(looks[-1][1]), None).g_per_kg

    assert after((Look.SPILLED, 8.5), (Look.SPILLED, 8.5)) < 8.0
    assert after((Look.FULL, 9.0), (Look.SPILLED, 8.9)) < 8.5, "the first was no spill"


def test_limits_that_contradict_the_plan_leave_the_day_as_near_to_it_as_the_change_allows() -> None:
    plan = planned(9.0)
    limits = replace(WIDE, carb_ceiling_g=300.0, change_per_day_g=100.0)
    found = suggested([replace(trial(Look.SPILLED), plan=plan)], plan, limits)
    assert {d.carb_g for d in found.plan if d.days_out in LOAD_DAYS} == {450}
