"""What a coach has to know of an athlete's event: the days that begin something, times, deadlines."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta

from sqlmodel import Session, col, select

from bot.calendar import words
from bot.calendar.week_calendar import LENGTH_MIN, SHORT_MIN, Drawn
from bot.event.stage import day as stage_day
from bot.people.people import name_of
from bot.store.tables.event import TripRow
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import EventRow
from bot.week.load import current_plan, limits_row
from engine.stage_day.stage_day import Kind
from engine.values.plan import PLAN_DAYS

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
