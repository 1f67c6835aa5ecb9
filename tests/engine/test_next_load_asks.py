"""A trial after one that came in full asks how far full reaches; the load after it hears both looks."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import numpy as np
import pytest

from engine.decision.beliefs import frame_of
from engine.decision.sizing import tried_beside
from engine.evidence.body import tracking as known
from engine.model.forecast import subsample
from engine.model.tracker import outcome_probabilities, seen_as
from engine.planning.behind.load_room import Room, day_ahead
from engine.planning.behind.next_load import Ahead, NextLoad, _learnt, next_load
from engine.planning.drafting.bridge import ASKED, FACTORS, Load, _scaled_by, _tried, most_telling
from engine.values.athlete import EventKind
from engine.values.case import PastWeek
from engine.values.checkin import DaySet, Look
from engine.values.plan import LOAD_DAYS, PLAN_DAYS, PeakPlan, Phase
from tests.engine.test_next_load import HABIT, MIRA, TRIAL, planned, trial
from tests.engine.test_rescale import belief_after_a_trial_that_was, week

A_SHOW, A_TRIAL = Ahead(), Ahead(kind=EventKind.TRIAL)
FULL_ON = 7.0
FULL_WEEK = replace(trial(Look.FULL), plan=planned(FULL_ON))


def after(*weeks: PastWeek, ahead: Ahead = A_SHOW, plan: PeakPlan | None = None) -> NextLoad:
    return next_load(MIRA, HABIT, plan or weeks[-1].as_it_went, weeks, ahead)


def tried(mean: float, look: Look | None) -> tuple[PastWeek, PastWeek]:
    """A load that came in full, and four weeks later another that came in so."""
    later = trial(look, day=TRIAL + timedelta(weeks=4))
    return FULL_WEEK, replace(later, plan=planned(mean))


def test_after_full_a_show_has_the_same_again_and_a_trial_asks_how_far_full_reaches() -> None:
    show, asks = after(FULL_WEEK), after(FULL_WEEK, ahead=A_TRIAL)
    assert (show.asks, show.changes) == (False, False)
    assert asks.asks and asks.changes
    factor = asks.g_per_kg / show.g_per_kg
    assert min(abs(factor - one) for one in ASKED) < 0.02
    assert asks.after.spilled < known.TOLD_SPILLED.value + 0.05, "a trial is not run to miss"
    assert after(FULL_WEEK, ahead=A_TRIAL) == asks, "asked again it says the same"


def test_a_trial_is_asked_in_place_of_a_plan_that_stands_as_in_place_of_the_week_behind() -> None:
    standing = after(FULL_WEEK, ahead=A_TRIAL, plan=planned(8.0))
    assert standing.asks
    assert standing.g_per_kg == pytest.approx(after(FULL_WEEK, ahead=A_TRIAL).g_per_kg, rel=0.05)


@pytest.mark.parametrize("look", [Look.FLAT, Look.SPILLED])
def test_after_a_miss_the_trial_has_the_load_that_a_show_would_have(look: Look) -> None:
    missed = replace(trial(look), plan=planned(7.0))
    assert after(missed, ahead=A_TRIAL) == after(missed)


@pytest.mark.parametrize(
    ("mean", "look", "least", "most"),
    [
        (8.4, Look.SPILLED, 0.85, 1.0),  # spills a little over it: no more than came in full
        (5.6, Look.FLAT, 1.0, 1.15),  # flat a little under it: no less
        (8.4, Look.FULL, 0.85, 1.15),
        (5.6, Look.FULL, 0.85, 1.15),
    ],
)
def test_after_two_looks_beside_each_other_the_load_lies_where_both_leave_it(
    mean: float, look: Look, least: float, most: float
) -> None:
    found = after(*tried(mean, look))
    assert found.between
    assert least * FULL_ON - 0.05 <= found.g_per_kg <= most * FULL_ON + 0.05


def test_a_load_that_spilled_over_leaves_less_room_than_one_that_came_in_full_too() -> None:
    spilled, full = after(*tried(8.4, Look.SPILLED)), after(*tried(8.4, Look.FULL))
    assert spilled.g_per_kg < full.g_per_kg
    flat, full = after(*tried(5.6, Look.FLAT)), after(*tried(5.6, Look.FULL))
    assert flat.g_per_kg > full.g_per_kg


@pytest.mark.parametrize(
    ("mean", "look"),
    [
        (8.4, Look.FLAT),  # on more than came in full, and on less: it tells of something else
        (5.6, Look.SPILLED),
        (7.1, Look.FULL),  # the same load
        (8.4, None),
    ],
)
def test_two_looks_that_do_not_fit_beside_each_other_are_not_taken_together(
    mean: float, look: Look | None
) -> None:
    assert not after(*tried(mean, look)).between


def test_a_look_at_a_load_over_other_days_is_not_taken_together_with_one_over_these() -> None:
    first, second = tried(8.4, Look.FULL)
    over_two_days = PeakPlan(
        tuple(
            replace(day, phase=Phase.DEPLETION) if day.days_out == 3 else day for day in first.plan
        )
    )
    assert after(first, second).between
    other_days = replace(first, plan=over_two_days)
    assert not after(other_days, second).between
    assert tried_beside((first, second)) is first
    assert tried_beside((other_days, second)) is None


def test_a_trial_that_its_mornings_moved_is_not_the_load_that_was_to_be_looked_at() -> None:
    first, second = tried(8.4, Look.FULL)
    moved = tuple(
        DaySet(second.day - timedelta(days=day.days_out), day.carb_g - 60)
        for day in second.plan
        if day.days_out in LOAD_DAYS
    )
    undone = replace(second, history=replace(second.history, set_days=moved))
    assert not after(first, undone).between


def test_what_a_look_is_worth_is_what_looks_drawn_by_chance_are_worth() -> None:
    """Against Bayes' rule by counting: draw a body and its look, choose by those who looked so."""
    belief = _learnt(frame_of(MIRA, HABIT, None), HABIT, (FULL_WEEK,), "counted")
    plan = FULL_WEEK.plan
    room = Room.of(MIRA, plan, None)
    days = [day_ahead(plan, HABIT, out, room) for out in PLAN_DAYS if out > 0]
    few = subsample(belief, 1000, np.random.default_rng(8))
    found = most_telling(few, days, np.random.default_rng(9))
    assert found is not None
    factors = (1.0, *FACTORS)
    loads = np.array(_scaled_by(days, Load(), factors))
    tried_ = _tried(few, days, np.random.default_rng(9), loads)
    gains = tried_.looks - tried_.looks[0]
    gains = np.where(gains < 0, 2 * gains, gains)
    odds = outcome_probabilities(tried_.state, few.person, few.body)
    rng, times = np.random.default_rng(2), 60

    def counted(row: int) -> float:
        chances = np.stack([seen_as(odds[:, row], look) for look in Look])
        assert chances.sum(axis=0) == pytest.approx(1, abs=1e-5)
        drawn = rng.random((times, chances.shape[1]))
        looks = (drawn[None] > np.cumsum(chances, axis=0)[:, None]).sum(axis=0)
        won = 0.0
        for look in range(3):
            how_many = (looks == look).sum(axis=0)
            won += max(float((gains * how_many).sum(axis=1).max()), 0.0)
        return won / drawn.size

    row, by_chance = factors.index(found.factor), 0.001
    told = {k: counted(k) for k, one in enumerate(factors) if one in ASKED}
    worth_more = [k for k, look in told.items() if look > told[row] + by_chance]
    assert all(odds[-1, k].mean() > known.TOLD_SPILLED.value for k in worth_more)
    assert min(told.values()) < told[row] - 2 * by_chance, "else any load would do"
    assert found.tells == pytest.approx(told[row] - counted(0), abs=by_chance)
    assert found.flat + found.full + found.spilled == pytest.approx(1)


def test_a_look_that_could_change_nothing_is_not_asked_for() -> None:
    belief, rng = belief_after_a_trial_that_was(Look.FULL)
    assert most_telling(belief, week(0), rng) is None
