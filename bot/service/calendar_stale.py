"""When calendar files that were given out have grown old: noted at once, seen to when it is still."""

from __future__ import annotations

from datetime import timedelta

from sqlmodel import Session, select

from bot import agenda
from bot.context import Context
from bot.store.calendar import CalendarRow
from bot.store.week import EventRow

ANEW = "calendar"
# Our own choice: a coach who changes five numbers in a row brings one file, not five.
STILL_FOR = timedelta(minutes=5)

#: Things kept that can change days, times, zone, or whether there are sessions at all. A morning's
#: decision is not among them, since a file a day would be a nuisance: the entries say that /today has
#: the latest.
CHANGES = frozenset(
    {
        "event set", "plan set", "taken back", "day laid out", "day moved", "stage called off",
        "times taken back",
        "journey", "arrived", "settings", "frozen", "freeze lifted",
    }
)  # fmt: skip


def calendar_stale(session: Session, athlete_id: int, what: str, context: Context) -> None:
    """Something was kept about the athlete: where it can matter to a file given out, look soon."""
    if what not in CHANGES:
        return
    given_out = (
        select(CalendarRow.id)
        .join(EventRow)
        .where(CalendarRow.athlete_id == athlete_id, EventRow.active)
    )
    if session.exec(given_out).first() is None:
        return
    agenda.cancel(session, subject=f"athlete:{athlete_id}", kind=ANEW)
    agenda.put(
        session, subject=f"athlete:{athlete_id}", local_date=context.now.date(), kind=ANEW,
        due_at=context.now + STILL_FOR, again=True,
    )  # fmt: skip
