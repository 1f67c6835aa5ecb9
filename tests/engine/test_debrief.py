"""What a week that is over teaches: the look first, but only of a load that was eaten."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from engine.planning.behind.debrief import DayBehind, Debrief, debrief
from engine.planning.drafting.draft import Asked, draft_plan
from engine.values.athlete import Athlete, Baseline, Sex
from engine.values.checkin import CheckIn, Gut, Look

DAY = date(2027, 5, 9)
ATHLETE = Athlete(sex=Sex.FEMALE, birth_year=1996, height_cm=165, body_mass_kg=60)
BASELINE = Baseline(carb_g=300, protein_g=130, fat_g=55, fibre_g=25, water_l=3.5, sodium_mg=2300)


def week(eaten: float = 1.0, moved: float = 1.0) -> list[DayBehind]:
    """A drafted week with all its mornings; the load days set and eaten at these shares."""
    days = []
    for target in draft_plan(ATHLETE, BASELINE, Asked("even")):
        set_g = target.carb_g * (moved if target.days_out in (3, 2, 1) else 1)
        morning = CheckIn(
            date=DAY - timedelta(days=target.days_out), weight_kg=60 - 0.2 * target.days_out,
            fullness=7, sharpness=4, water_l=3.5, gut=Gut.FINE, sleep_h=8,
        )  # fmt: skip
        days.append(DayBehind(target=target, set_g=set_g, eaten_g=set_g * eaten, morning=morning))
    return days


def changed(days: list[DayBehind], days_out: int, **answers: object) -> list[DayBehind]:
    return [
        replace(day, morning=replace(day.morning, **answers))  # type: ignore[type-var]
        if day.days_out == days_out and day.morning is not None
        else day
        for day in days
    ]


def ids(found: Debrief) -> list[str]:
    return [lesson.id for lesson in found.lessons]


@pytest.mark.parametrize(
    ("look", "eaten", "lessons"),
    [
        (Look.FULL, 1.0, ["full-again"]),
        (Look.FLAT, 1.0, ["flat-more"]),
        # just at and just under nine tenths of what was set
        (Look.FLAT, 0.9001, ["flat-more"]),
        (Look.FLAT, 0.8999, ["flat-not-eaten"]),
        (Look.SPILLED, 1.0, ["spilled-less"]),
        (Look.SPILLED, 1.0999, ["spilled-less"]),
        (Look.SPILLED, 1.1001, ["spilled-overeaten"]),
        (Look.FULL, 0.85, ["full-again", "eaten-short"]),
        (Look.SPILLED, 0.85, ["spilled-less", "eaten-short"]),
        (Look.FLAT, 1.15, ["flat-more", "eaten-over"]),
        (None, 1.0, ["no-word-on-the-look"]),
    ],
)
def test_the_look_is_read_together_with_what_was_eaten(
    look: Look | None, eaten: float, lessons: list[str]
) -> None:
    assert ids(debrief(week(eaten), look)) == lessons


def test_without_two_load_days_told_nothing_is_said_of_eating() -> None:
    days = [day if day.days_out == 3 else replace(day, eaten_g=None) for day in week(eaten=0.5)]
    found = debrief(days, Look.FLAT)
    assert found.eaten_share is None
    assert ids(found) == ["flat-more"]
    two = [day if day.days_out >= 2 else replace(day, eaten_g=None) for day in week(eaten=0.5)]
    assert ids(debrief(two, Look.FLAT)) == ["flat-not-eaten"]


def test_a_load_that_the_mornings_moved_by_more_than_a_tenth_is_where_to_begin_next_time() -> None:
    assert "load-moved" not in ids(debrief(week(moved=1.1), Look.FULL))
    found = debrief(week(moved=1.11), Look.FULL)
    assert "load-moved" in ids(found)
    assert found.set_g == pytest.approx(1.11 * found.planned_g)


def test_the_sums_are_those_of_the_load_and_the_weight_runs_over_it() -> None:
    days = week()
    found = debrief(days, Look.FULL)
    assert found.planned_g == sum(d.target.carb_g for d in days if d.days_out in (1, 2, 3))
    assert found.load_days == 3
    assert found.weight_change_kg == pytest.approx(0.6)
    assert found.mornings == 8


def test_gut_water_sleep_and_missing_mornings_are_carried_over_too() -> None:
    days = changed(week(), 1, gut=Gut.HEAVY)
    assert ids(debrief(days, Look.FULL)) == ["full-again", "gut-in-the-load"]
    # before the load a heavy gut says nothing about it
    assert ids(debrief(changed(week(), 5, gut=Gut.BAD), Look.FULL)) == ["full-again"]
    # 80 % of 3.5 L is 2.8 L; the morning of 1 day out speaks of the day before
    assert ids(debrief(changed(week(), 1, water_l=2.8), Look.FULL)) == ["full-again"]
    assert "water-short" in ids(debrief(changed(week(), 1, water_l=2.79), Look.FULL))
    assert "water-short" not in ids(debrief(changed(week(), 3, water_l=1.0), Look.FULL))
    assert "sleep-short" in ids(debrief(changed(week(), 4, sleep_h=4.9), Look.FULL))
    one = [replace(day, morning=None) if day.days_out == 6 else day for day in week()]
    assert "mornings-missed" not in ids(debrief(one, Look.FULL))
    two = [replace(day, morning=None) if day.days_out in (6, 5) else day for day in week()]
    assert "mornings-missed" in ids(debrief(two, Look.FULL))


def test_every_lesson_says_where_it_comes_from() -> None:
    days = changed(changed(week(0.8, 1.3), 1, gut=Gut.BAD, water_l=1.0), 2, sleep_h=3)
    for look in (*Look, None):
        for lesson in debrief(days, look).lessons:
            assert lesson.source.citation


def test_a_week_without_a_plan_has_nothing_to_say_of_a_load() -> None:
    found = debrief([], Look.FULL)
    assert (found.planned_g, found.set_g, found.eaten_share) == (0, 0, None)
