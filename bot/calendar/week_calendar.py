"""The athlete's week, sessions, meals and stage day as they are to stand in a calendar.

What a coach has to know of an athlete's event: the days that begin something, times, deadlines.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import asdict, dataclass, replace
from datetime import date, datetime, time, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.calendar import words
from bot.core.timing.instants import local_instant
from bot.decision.to_athlete import rests
from bot.decision.words_target import resting_line
from bot.event.stage import day as stage_day
from bot.food import words_day as food_words
from bot.food.list import food_of, rows_of, times_of
from bot.people.people import is_own_coach, name_of
from bot.store.tables.event import TripRow
from bot.store.tables.food import FoodDayRow
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import EventRow
from bot.week.load import current_plan, day_set, limits_row
from engine.evidence.staging import (
    CLASS_LASTS_MIN,
    PUMP_LENGTH_MIN,
    REGISTRATION_LASTS_MIN,
    TAN_LASTS_MIN,
)
from engine.planning.travel import Journey, plan_journey
from engine.stage_day.stage_day import MEALS, Kind
from engine.values.plan import PLAN_DAYS, DayTarget, PeakPlan

LENGTH_MIN = {
    Kind.PUMP: int(PUMP_LENGTH_MIN.value),
    Kind.TAN: int(TAN_LASTS_MIN.value),
    Kind.REGISTRATION: int(REGISTRATION_LASTS_MIN.value),
    Kind.STAGE: int(CLASS_LASTS_MIN.value),
}
SHORT_MIN = 15
MEAL_MIN = 30


@dataclass(frozen=True, slots=True)
class Drawn:
    """What one entry says. `start`: ISO, a date for a whole day (`minutes` None) or an instant."""

    start: str
    minutes: int | None
    zone: str
    summary: str
    description: str = ""

    def says(self) -> dict[str, Any]:
        return asdict(self)


def drawn(session: Session, profile: AthleteProfile, event: EventRow) -> dict[str, Drawn]:
    """Every entry by a key that keeps its meaning; empty while neither plan nor timetable is there."""
    return dict(_Week(session, profile, event).entries())


class _Week:
    def __init__(self, session: Session, profile: AthleteProfile, event: EventRow) -> None:
        self._session, self._profile, self._event = session, profile, event
        self._stage = stage_day.stage_row(session, event)
        trips = select(TripRow).where(TripRow.event_id == event.id)
        self._trip = session.exec(trips.order_by(col(TripRow.id).desc())).first()
        self._resting = ""  # why no session stands in it
        if rests(profile):
            coach = "" if is_own_coach(profile) else name_of(session, profile.coach_id)
            self._resting = resting_line(coach, warned=True)

    def entries(self) -> Iterator[tuple[str, Drawn]]:
        plan = current_plan(self._session, self._event) or PeakPlan(())
        for planned in plan:
            day = self._event.day - timedelta(days=planned.days_out)
            set_row = day_set(self._session, self._profile.person_id, day)
            target = replace(planned, carb_g=set_row.carb_g) if set_row is not None else planned
            yield from self._day(day, target, planned.carb_g, plan)
            yield from self._meals(day, target)
        yield from self._stage_day()

    def _day(
        self, day: date, target: DayTarget, planned_g: float, plan: PeakPlan
    ) -> Iterator[tuple[str, Drawn]]:
        zone = self._zone_on(day)
        unit = self._profile.volume_unit
        details = words.day_details(target, plan, planned_g, unit, resting=self._resting or None)
        yield (
            f"day-{target.days_out}",
            Drawn(day.isoformat(), None, zone, words.day_summary(target), details),
        )
        if target.training and target.days_out > 0 and not self._resting:
            yield (
                f"session-{target.days_out}",
                Drawn(
                    day.isoformat(), None, zone, words.session_summary(target.training),
                    words.session_details(target),
                ),
            )  # fmt: skip

    def _meals(self, day: date, target: DayTarget) -> Iterator[tuple[str, Drawn]]:
        """The usual meals; on a day of travel those on the way, on the day itself the timetable's."""
        if target.days_out == 0 and self._stage is not None and self._stage.cancelled_at is None:
            return
        if self._trip is not None and self._travels_on(day):
            yield from self._journey_meals(day, target)
            return
        zone, menu = self._zone_on(day), self._menu(day)
        times = times_of(self._session, self._profile.person_id)
        for number, at in enumerate(times, start=1):
            start = local_instant(day, time.fromisoformat(at), zone)
            yield (
                f"meal-{target.days_out}-{number}",
                Drawn(
                    start.isoformat(), MEAL_MIN, zone, words.meal_summary(number, len(times)),
                    words.meal_details(menu.get(at, ()), target.carb_g),
                ),
            )  # fmt: skip

    def _journey_meals(self, day: date, target: DayTarget) -> Iterator[tuple[str, Drawn]]:
        trip = self._trip
        assert trip is not None
        journey = Journey(
            leave=trip.leave_at, arrive=trip.arrive_at, home_zone=trip.home_zone,
            away_zone=trip.away_zone, wake=self._profile.prompt_time,
        )  # fmt: skip
        of_day = [
            meal
            for meal in plan_journey(journey).meals
            if meal.at.astimezone(ZoneInfo(meal.zone)).date() == day
        ]
        for number, meal in enumerate(of_day, start=1):
            yield (
                f"meal-{target.days_out}-{number}",
                Drawn(
                    meal.at.isoformat(), MEAL_MIN, meal.zone, words.journey_meal_summary(),
                    words.meal_details((), target.carb_g),
                ),
            )  # fmt: skip

    def _stage_day(self) -> Iterator[tuple[str, Drawn]]:
        row = self._stage
        if row is None or row.cancelled_at is not None:
            return
        menu = self._menu(self._event.day)
        for entry, _ in stage_day.entries_of(row):
            if self._resting and entry.kind is Kind.PUMP:
                continue
            portions = menu.get(_nearest(menu, entry.at, self._event.zone), ())
            yield (
                f"stage-{entry.key}",
                Drawn(
                    entry.at.isoformat(), LENGTH_MIN.get(entry.kind, SHORT_MIN),
                    self._event.zone, words.stage_summary(entry, len(row.facts["stages"])),
                    "\n".join(portions) if entry.kind in MEALS else "",
                ),
            )  # fmt: skip

    def _zone_on(self, day: date) -> str:
        """On whose clocks the athlete lives that day."""
        home, trip = self._profile.zone or self._event.zone, self._trip
        if trip is None or (trip.arrived_at is None and home != trip.home_zone):
            return home
        arrival = trip.arrive_at.astimezone(ZoneInfo(trip.away_zone)).date()
        return trip.away_zone if day > arrival else trip.home_zone

    def _travels_on(self, day: date) -> bool:
        trip = self._trip
        assert trip is not None
        leaving = trip.leave_at.astimezone(ZoneInfo(trip.home_zone)).date()
        arriving = trip.arrive_at.astimezone(ZoneInfo(trip.away_zone)).date()
        return leaving <= day <= arriving

    def _menu(self, day: date) -> dict[str, tuple[str, ...]]:
        """Portions by meal time, where the athlete has had a menu made for that day."""
        query = select(FoodDayRow).where(
            FoodDayRow.athlete_id == self._profile.person_id, FoodDayRow.date == day
        )
        row = self._session.exec(query).first()
        if row is None or not row.meals:
            return {}
        foods = {str(food.id): food_of(food) for food in rows_of(self._session, row.athlete_id)}
        return {
            meal["at"]: tuple(
                food_words.amount(foods[id], steps * foods[id].step_g)
                for id, steps in meal["portions"].items()
                if id in foods
            )
            for meal in row.meals
        }


def _nearest(menu: dict[str, tuple[str, ...]], at: datetime, zone: str) -> str:
    local = at.astimezone(ZoneInfo(zone))

    def off(clock: str) -> int:
        hours, minutes = clock.split(":")
        return abs(int(hours) * 60 + int(minutes) - local.hour * 60 - local.minute)

    return min(menu, key=off, default="")


TIMES = (Kind.LEAVE, Kind.REGISTRATION, Kind.STAGE)  # of the timetable


def drawn_for_coach(session: Session, profile: AthleteProfile, event: EventRow) -> dict[str, Drawn]:
    """The entries by a key that keeps its meaning; each names whose it is."""
    name = name_of(session, profile.person_id)
    return {
        key: replace(entry, summary=words.for_coach(name, entry.summary))
        for key, entry in _entries(session, profile, event)
    }


def _entries(
    session: Session, profile: AthleteProfile, event: EventRow
) -> Iterator[tuple[str, Drawn]]:
    plan = current_plan(session, event)
    home = profile.zone or event.zone
    first = max((day.days_out for day in plan), default=0) if plan else max(PLAN_DAYS)
    set_up = plan is not None and limits_row(session, event) is not None
    begins = event.day - timedelta(days=first)
    missing = "" if set_up else words.to_set_by(plan=plan is not None)
    yield "begins", Drawn(begins.isoformat(), None, home, words.week_begins(), missing)
    if plan:
        load_days = plan.load_days
        loads = [day for day in plan if day.days_out in load_days]
        for day in loads[:1]:
            on = event.day - timedelta(days=day.days_out)
            yield "load", Drawn(on.isoformat(), None, home, words.load_begins())
    yield "event", Drawn(event.day.isoformat(), None, event.zone, words.event_day(event.kind))
    trip = session.exec(
        select(TripRow).where(TripRow.event_id == event.id).order_by(col(TripRow.id).desc())
    ).first()
    if trip is not None:
        minutes = round((trip.arrive_at - trip.leave_at).total_seconds() / 60)
        leave = trip.leave_at.isoformat()
        yield "travel", Drawn(leave, minutes, trip.home_zone, words.on_the_way())
    row = stage_day.stage_row(session, event)
    if row is None or row.cancelled_at is not None:
        return
    for entry, _ in stage_day.entries_of(row):
        if entry.kind in TIMES:
            minutes = LENGTH_MIN.get(entry.kind, SHORT_MIN)
            said = words.stage_summary(entry, len(row.facts["stages"]))
            yield f"stage-{entry.key}", Drawn(entry.at.isoformat(), minutes, event.zone, said)
