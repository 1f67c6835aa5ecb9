"""What a trial is expected to teach: more where its look is open, less where it is known already."""

from __future__ import annotations

from datetime import date

import numpy as np
import pytest

from engine.planning.drafting.draft import MILD, Asked, draft_plan
from engine.planning.teaching import Lesson, _lesson, best_lesson, lessons
from engine.values.athlete import Athlete, Baseline, Sex
from engine.values.case import PastWeek
from engine.values.checkin import CheckIn, History, Look
from engine.values.limits import GuardRails

MIRA = Athlete(sex=Sex.FEMALE, birth_year=1994, height_cm=166, body_mass_kg=60, body_fat_percent=14)
USUAL = Baseline(carb_g=180, protein_g=130, fat_g=50, fibre_g=28, water_l=3.2, sodium_mg=2800)
PLAN = draft_plan(MIRA, USUAL, Asked("even", 8.0, MILD))
TRIAL = date(2026, 10, 24)


@pytest.fixture(scope="module")
def before() -> tuple[Lesson, ...]:
    return lessons(MIRA, USUAL, PLAN)


def test_a_trial_teaches_most_where_its_look_is_open(before: tuple[Lesson, ...]) -> None:
    best = max(before, key=lambda one: one.narrower)
    smallest = before[0]
    assert 0.05 < best.narrower < 1
    assert max(smallest.flat, smallest.full, smallest.spilled) > max(
        best.flat, best.full, best.spilled
    )
    assert smallest.narrower < best.narrower
    for one in before:
        assert one.flat + one.full + one.spilled == pytest.approx(1)


def test_no_load_past_the_rails_or_more_likely_to_spill_than_not_is_put_over_the_plans(
    before: tuple[Lesson, ...],
) -> None:
    rail = GuardRails.of(MIRA).rail("carb_ceiling_g")
    for one in before:
        assert rail.low <= one.g_per_kg * 60 <= rail.high
        assert one.spilled <= 0.5 or one.g_per_kg <= 8.0


def test_what_is_asked_again_is_answered_alike_and_a_plan_without_a_load_teaches_nothing(
    before: tuple[Lesson, ...],
) -> None:
    assert lessons(MIRA, USUAL, PLAN) == before
    empty = PLAN
    for out in PLAN.load_days:
        empty = empty.with_carbs(out, 0)
    assert best_lesson(MIRA, USUAL, empty) is None


def test_after_a_week_that_came_in_full_the_same_load_teaches_less(
    before: tuple[Lesson, ...],
) -> None:
    mornings = tuple(
        CheckIn(date=TRIAL.replace(day=24 - out), weight_kg=kg, fullness=full)
        for out, kg, full in ((7, 60.0, 5), (3, 59.0, 4), (2, 60.0, 6), (1, 61.0, 8), (0, 61.5, 9))
    )
    week = PastWeek(day=TRIAL, plan=PLAN, history=History(checkins=mornings), look=Look.FULL)
    after = lessons(MIRA, USUAL, PLAN, (week,))

    def same(found: tuple[Lesson, ...]) -> Lesson:
        return min(found, key=lambda one: abs(one.g_per_kg - 8.0))

    assert same(after).full > same(before).full
    assert same(after).narrower < same(before).narrower


def test_the_expected_narrowing_is_that_of_looks_drawn_by_chance() -> None:
    """Against Bayes' rule by counting: draw a body and its look, keep the bodies that fit, measure."""
    rng = np.random.default_rng(3)
    flat = np.exp(rng.normal(np.log(6.5), 0.2, 60_000)).astype(np.float32)
    spill = (flat * np.exp(rng.normal(0.3, 0.1, len(flat)))).astype(np.float32)
    found = _lesson(7.0, flat, spill)
    over = np.log(7.0) + 0.09 * rng.normal(size=len(flat)) > np.log(spill)
    under = np.log(7.0) + 0.14 * rng.normal(size=len(flat)) < np.log(flat)
    look = np.where(over, 2, np.where(under, 0, 1))
    left = [
        sum((look == k).mean() * np.log(edge[look == k]).std() for k in range(3))
        / np.log(edge).std()
        for edge in (flat, spill)
    ]
    assert found.narrower == pytest.approx(1 - np.mean(left), abs=0.01)
    assert [found.flat, found.full, found.spilled] == pytest.approx(
        [(look == k).mean() for k in range(3)], abs=0.01
    )
