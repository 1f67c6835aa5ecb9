"""A journey to another zone: the shift, its beginning at home, and meals on the way."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from engine.planning.travel import Journey, JourneyPlan, plan_journey

LONDON, NEW_YORK, TOKYO = "Europe/London", "America/New_York", "Asia/Tokyo"


def journey(away: str, leave: str | datetime, hours: float, home: str = LONDON) -> Journey:
    when = datetime.fromisoformat(leave) if isinstance(leave, str) else leave
    start = when.replace(tzinfo=ZoneInfo(home)).astimezone(UTC)
    return Journey(
        leave=start, arrive=start + timedelta(hours=hours), home_zone=home, away_zone=away,
        wake=time(7),
    )  # fmt: skip


def test_westwards_the_clock_falls_back_and_sleep_moves_later() -> None:
    plan = plan_journey(journey(NEW_YORK, "2027-05-05T11:00", 8))
    assert plan.shift_h == -5
    assert plan.at_home == (
        (date(2027, 5, 2), time(8, 30)),
        (date(2027, 5, 3), time(10, 0)),
        (date(2027, 5, 4), time(11, 30)),
    )
    # 4.5 of 5 h are moved at home; the rest within a day (1.5 h a day westwards)
    assert plan.settled_on == date(2027, 5, 6)


def test_eastwards_sleep_moves_earlier_and_settling_takes_longer() -> None:
    plan = plan_journey(journey(TOKYO, "2027-05-01T10:00", 14))
    assert plan.shift_h == 8
    assert [at for _, at in plan.at_home] == [time(6), time(5), time(4)]
    # 3 h at home, 5 h left at an hour a day; arriving on 2 May by the clocks there
    assert plan.settled_on == date(2027, 5, 7)


@pytest.mark.parametrize(
    ("told", "left"),
    [
        ("2027-05-02T06:59", [time(8, 30), time(10), time(11, 30)]),
        ("2027-05-02T07:01", [time(8, 30), time(10)]),  # that morning is over
        ("2027-05-04T12:00", []),
    ],
)
def test_the_shift_begins_with_the_first_morning_that_is_not_over(
    told: str, left: list[time]
) -> None:
    trip = replace(
        journey(NEW_YORK, "2027-05-05T11:00", 8),
        told=datetime.fromisoformat(told).replace(tzinfo=ZoneInfo(LONDON)),
    )
    plan = plan_journey(trip)
    assert [at for _, at in plan.at_home] == left
    assert all(day >= date(2027, 5, 5) - timedelta(days=len(left)) for day, _ in plan.at_home)


def test_a_small_shift_is_not_worth_beginning_at_home() -> None:
    plan = plan_journey(journey("Europe/Athens", "2027-05-05T09:00", 4))
    assert (plan.shift_h, plan.at_home) == (2, ())


def test_the_way_round_is_the_shorter_one() -> None:
    # Auckland is 11 h ahead of London in May, Honolulu 11 h behind; between them 22 h are 2.
    plan = plan_journey(journey("Pacific/Honolulu", "2027-05-05T09:00", 9, home="Pacific/Auckland"))
    assert plan.shift_h == 2


def test_meals_of_a_day_flight_are_three_hours_apart_on_the_clocks_where_one_is() -> None:
    trip = journey(NEW_YORK, "2027-05-05T11:00", 8)
    meals = plan_journey(trip).meals
    times = [(f"{m.at.astimezone(ZoneInfo(m.zone)):%H:%M}", m.zone) for m in meals]
    assert times[:2] == [("07:30", LONDON), ("10:30", LONDON)]
    assert times[2] == ("08:30", NEW_YORK)  # 13:30 in London, in the air
    assert all(b.at - a.at == timedelta(hours=3) for a, b in pairwise(meals))


def test_on_a_night_flight_nobody_is_woken_to_eat() -> None:
    trip = journey(LONDON, "2027-05-05T19:00", 7, home=NEW_YORK)
    meals = [m for m in plan_journey(trip).meals if m.at >= trip.leave]
    local = [m.at.astimezone(ZoneInfo(LONDON)) for m in meals]
    assert all(7 <= at.hour < 23 for at in local)


def shown(plan: JourneyPlan) -> list[str]:
    return [
        f"{m.at.astimezone(ZoneInfo(m.zone)):%a %H:%M} {m.zone.rpartition('/')[2]}"
        for m in plan.meals
    ]


def test_nobody_flies_through_a_whole_day_unfed_because_it_is_night_where_they_go() -> None:
    # ten in the morning in London is two at night in Los Angeles; eleven hours in the air
    plan = plan_journey(journey("America/Los_Angeles", "2027-05-06T10:00", 11))
    assert shown(plan)[:3] == [
        "Thu 07:30 London", "Thu 05:30 Los_Angeles", "Thu 08:30 Los_Angeles",
    ]  # fmt: skip
    assert max(b.at - a.at for a, b in pairwise(plan.meals)) == timedelta(hours=6)


def test_the_first_meal_after_the_night_on_the_way_is_breakfast_there() -> None:
    plan = plan_journey(journey(LONDON, "2027-05-06T20:00", 7, home=NEW_YORK))
    there = [meal for meal in shown(plan) if meal.endswith("London")]
    assert there[:2] == ["Fri 07:30 London", "Fri 10:30 London"]


def test_before_an_early_flight_there_is_breakfast_and_at_two_at_night_there_is_none() -> None:
    early = shown(plan_journey(journey("Europe/Madrid", "2027-05-06T05:00", 2.5)))
    assert early[:2] == ["Thu 04:30 London", "Thu 08:30 Madrid"]
    night = shown(plan_journey(journey("Europe/Madrid", "2027-05-06T02:00", 2.5)))
    assert night[0] == "Thu 07:30 Madrid"


def test_an_arrival_after_midnight_ends_in_bed_and_begins_with_breakfast() -> None:
    plan = plan_journey(journey("Europe/Athens", "2027-05-06T19:00", 3.7))
    assert shown(plan)[-6:-4] == ["Thu 21:30 Athens", "Fri 07:30 Athens"]


@pytest.mark.parametrize("hours", [-1, 0, 73])
def test_a_journey_that_cannot_be_is_refused(hours: float) -> None:
    with pytest.raises(ValueError, match="ends after it begins"):
        journey(TOKYO, "2027-05-05T09:00", hours)


@settings(max_examples=200)
@given(
    home=st.sampled_from([LONDON, NEW_YORK, TOKYO, "Pacific/Auckland", "Asia/Kathmandu"]),
    away=st.sampled_from([LONDON, NEW_YORK, TOKYO, "Pacific/Honolulu", "America/Santiago"]),
    leave=st.dates(date(2027, 1, 1), date(2027, 12, 31)),
    at=st.times(),
    hours=st.floats(0.5, 48),
)
def test_wherever_it_goes_meals_are_apart_and_the_shift_is_under_half_a_day(
    home: str, away: str, leave: date, at: time, hours: float
) -> None:
    trip = journey(away, datetime.combine(leave, at), hours, home)
    plan = plan_journey(trip)
    assert -12 < plan.shift_h <= 12
    assert all(b.at - a.at >= timedelta(hours=2, minutes=55) for a, b in pairwise(plan.meals))
    assert plan.settled_on >= trip.arrive.astimezone(ZoneInfo(away)).date()
    assert len(plan.at_home) <= 3
    away = [m for m in plan.meals if m.at >= trip.arrive]
    # once there, no meal comes in the eight hours of the night before the usual waking
    assert all(7 <= m.at.astimezone(ZoneInfo(m.zone)).hour < 23 for m in away)
