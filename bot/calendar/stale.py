"""When calendar files that were given out have grown old: noted at once, seen to when it is still."""

from __future__ import annotations

from datetime import timedelta

from sqlmodel import select

from bot.core.timing import agenda
from bot.core.timing.agenda import Subject
from bot.core.turn import Turn
from bot.store.tables.event import CalendarRow
from bot.store.tables.people import AthleteProfile, HistoryRow
from bot.store.tables.week import EventRow

ANEW = "calendar"
# Our own choice: a coach who changes five numbers in a row brings one file, not five.
STILL_FOR = timedelta(minutes=5)


def look_at_moved(turn: Turn, moved: list[HistoryRow]) -> None:
    """Whether what was kept in a use case makes a file that was given out stale."""
    for athlete_id in dict.fromkeys(row.athlete_id for row in moved):
        calendar_stale(turn, athlete_id)


def calendar_stale(turn: Turn, athlete_id: int) -> None:
    """Something was kept about the athlete that can matter to a file given out: look soon."""
    given_out = (
        select(CalendarRow.id)
        .join(EventRow)
        .where(CalendarRow.athlete_id == athlete_id, EventRow.active)
    )
    profile = turn.session.get(AthleteProfile, athlete_id)
    of_all = select(CalendarRow.id).where(
        CalendarRow.reader_id == (profile.coach_id if profile is not None else None),
        CalendarRow.athlete_id != CalendarRow.reader_id,
    )  # a coach's file holds all their athletes, new ones too
    if not any(turn.session.exec(query).first() for query in (given_out, of_all)):
        return
    agenda.cancel(turn.session, subject=Subject.ATHLETE(athlete_id), kinds=[ANEW])
    agenda.put(
        turn.session, agenda.Named(Subject.ATHLETE(athlete_id), turn.now.date(), ANEW),
        due_at=turn.now + STILL_FOR, again=True,
    )  # fmt: skip
