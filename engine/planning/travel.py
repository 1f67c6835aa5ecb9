"""A journey to an event in another zone: how far the clock shifts, and when to eat on the way.

Durations are real ones, on instants in UTC; clocks are only for showing.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from engine.evidence.planning import drafting as e
from engine.evidence.source import Number


@dataclass(frozen=True, slots=True, kw_only=True)
class Journey:
    """Leaving and arriving as aware instants; `wake` is the usual time of getting up.

    `told`: when the plan is made (aware); mornings that are over by then are not planned.
    """

    leave: datetime
    arrive: datetime
    home_zone: str
    away_zone: str
    wake: time
    told: datetime | None = None

    def __post_init__(self) -> None:
        instants = (self.leave, self.arrive, *([self.told] if self.told is not None else []))
        if any(instant.tzinfo is None for instant in instants):
            raise ValueError("an instant needs its zone")
        if not timedelta(0) < self.arrive - self.leave <= timedelta(days=3):
            raise ValueError("a journey ends after it begins, and within three days")
        ZoneInfo(self.home_zone), ZoneInfo(self.away_zone)  # unknown zones are refused by name


@dataclass(frozen=True, slots=True)
class JourneyMeal:
    """When to eat, and on whose clocks it is shown: home until leaving, away from then on."""

    at: datetime
    zone: str


@dataclass(frozen=True, slots=True)
class JourneyPlan:
    """`shift_h`: the clock away is so much ahead of home (negative: behind).

    `at_home`: for days before leaving, the waking time to move to, earliest day first.
    `settled_on`: the date away on which the body clock has about caught up.
    """

    shift_h: float
    at_home: tuple[tuple[date, time], ...]
    meals: tuple[JourneyMeal, ...]
    settled_on: date


def plan_journey(journey: Journey) -> JourneyPlan:
    """The shift, what of it can be begun at home, meals on the way, and when it is settled."""
    shift = _shift_h(journey)
    at_home = _at_home(journey, shift)
    rate = float(e.EAST_H_A_DAY if shift > 0 else e.WEST_H_A_DAY)
    moved = min(len(at_home) * rate, abs(shift))
    days = math.ceil((abs(shift) - moved) / rate - 1e-9)
    arrival = journey.arrive.astimezone(ZoneInfo(journey.away_zone)).date()
    return JourneyPlan(shift, at_home, _meals(journey), arrival + timedelta(days=max(days, 0)))


def _shift_h(journey: Journey) -> float:
    """By how much the clocks differ on arrival, the shorter way round."""
    home, away = (
        journey.arrive.astimezone(ZoneInfo(zone)).utcoffset() or timedelta()
        for zone in (journey.home_zone, journey.away_zone)
    )
    hours = (away - home) / timedelta(hours=1)
    if hours > 12:
        return hours - 24
    return hours + 24 if hours <= -12 else hours


def _at_home(journey: Journey, shift: float) -> tuple[tuple[date, time], ...]:
    if abs(shift) < float(e.SHIFT_WORTH_H):
        return ()
    rate = float(e.EAST_H_A_DAY if shift > 0 else e.WEST_H_A_DAY)
    days = min(
        int(e.SHIFT_AT_HOME_DAYS.value), math.floor(abs(shift) / rate), _mornings_left(journey)
    )
    leaving = journey.leave.astimezone(ZoneInfo(journey.home_zone)).date()
    way = -1 if shift > 0 else 1  # east: earlier, west: later
    found = []
    for number in range(1, days + 1):
        moved = datetime.combine(leaving, journey.wake) + timedelta(hours=way * rate * number)
        found.append((leaving - timedelta(days=days - number + 1), moved.time()))
    return tuple(found)


def _mornings_left(journey: Journey) -> int:
    """How many mornings at home lie between the telling and the day of leaving."""
    leaving = journey.leave.astimezone(ZoneInfo(journey.home_zone)).date()
    if journey.told is None:
        return int(e.SHIFT_AT_HOME_DAYS.value)
    told = journey.told.astimezone(ZoneInfo(journey.home_zone))
    over = 0 if told.time() < journey.wake else 1
    return max((leaving - told.date()).days - over, 0)


def _meals(journey: Journey) -> tuple[JourneyMeal, ...]:
    """From waking at home to bed away, three hours apart, on the clocks away from leaving on.

    None comes in the night, and the first after it half an hour after waking. But who has been up
    since the morning at home is not left without food all day because it is night where they go.
    """
    woke = min(_wakes_at_home(journey), journey.leave.astimezone(UTC) - _minutes(e.UP_BEFORE_MIN))
    end = max(_bed(journey) - _minutes(e.LAST_MEAL_BEFORE_BED_MIN), woke)
    found: list[JourneyMeal] = []
    at = _rounded(woke + _minutes(e.FIRST_MEAL_MIN))
    while at <= end:
        if _eats(journey, at, found[-1].at if found else None):
            away = at >= journey.leave
            found.append(JourneyMeal(at, journey.away_zone if away else journey.home_zone))
        at += _GRAIN
    return tuple(found)


_GRAIN = timedelta(minutes=5)


def _eats(journey: Journey, at: datetime, last: datetime | None) -> bool:
    """Whether the next meal comes at this instant, the last one having been at `last`."""
    if last is not None and at - last < _minutes(e.MEAL_EVERY_MIN):
        return False
    if at < journey.leave:
        wakes = _wakes_at_home(journey)
        if at < wakes:
            return at >= wakes - _minutes(e.EARLY_MEAL_MIN)
        return _since_waking(journey, at, journey.home_zone) < _awake_for()
    since = _since_waking(journey, at, journey.away_zone)
    if _minutes(e.FIRST_MEAL_MIN) <= since < _awake_for():
        return True
    up = at - _wakes_at_home(journey)
    hungry = last is not None and at - last >= _minutes(e.LONGEST_WITHOUT_MIN)
    return at < journey.arrive and hungry and up <= timedelta(hours=float(e.NO_SLEEP_YET_H))


def _wakes_at_home(journey: Journey) -> datetime:
    zone = ZoneInfo(journey.home_zone)
    leaving = journey.leave.astimezone(zone).date()
    return datetime.combine(leaving, journey.wake, zone).astimezone(UTC)


def _bed(journey: Journey) -> datetime:
    """When the day of the arrival ends there."""
    zone = ZoneInfo(journey.away_zone)
    arriving = journey.arrive.astimezone(zone).date()
    wake = datetime.combine(arriving, journey.wake, zone).astimezone(UTC)
    return wake + timedelta(hours=float(e.BED_AFTER_WAKE_H))


def _awake_for() -> timedelta:
    return timedelta(hours=24 - float(e.NIGHT_H))


def _since_waking(journey: Journey, at: datetime, zone: str) -> timedelta:
    """How long ago the usual time of getting up was, by the clocks of this zone."""
    local = at.astimezone(ZoneInfo(zone))
    wakes = datetime.combine(local.date(), journey.wake)
    return (local.replace(tzinfo=None) - wakes) % timedelta(days=1)


def _minutes(number: Number) -> timedelta:
    return timedelta(minutes=float(number))


def _rounded(at: datetime) -> datetime:
    return at - timedelta(minutes=at.minute % 5, seconds=at.second, microseconds=at.microsecond)
