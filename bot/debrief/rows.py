"""The row that keeps what was said of a week."""

from __future__ import annotations

from sqlmodel import Session, select

from bot.store.base import id_of
from bot.store.tables.debrief import DebriefRow
from bot.store.tables.week import EventRow


def kept_of(session: Session, event: EventRow) -> DebriefRow | None:
    """What is kept of the week so far, for who reads only."""
    return session.exec(select(DebriefRow).where(DebriefRow.event_id == event.id)).first()


def debrief_row(session: Session, event: EventRow) -> DebriefRow:
    """The event's row, made where there is none yet."""
    row = kept_of(session, event)
    if row is None:
        row = DebriefRow(event_id=id_of(event), athlete_id=event.athlete_id)
        session.add(row)
        session.flush()
    return row
