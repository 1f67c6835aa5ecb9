"""What stands in the calendar file that somebody was given, so that a later one can replace it."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import JSON, UniqueConstraint
from sqlmodel import Field

from bot.store.base import Row
from bot.store.driver import UTCDateTime


class CalendarRow(Row, table=True):
    """One an athlete's event and reader; a moved event takes it along, so that its names stay.

    `root` is the end of every UID. `entries`: by key start (ISO), minutes (None: a whole day), zone,
    summary, description, sequence, revised_at and cancelled, as last given out.
    """

    __tablename__ = "calendar"
    __table_args__ = (UniqueConstraint("event_id", "reader_id"),)

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="person.id", index=True)
    event_id: int = Field(foreign_key="event.id")
    reader_id: int = Field(foreign_key="person.id", index=True)
    root: str
    entries: dict[str, dict[str, Any]] = Field(sa_type=JSON)
    issued_at: datetime = Field(sa_type=UTCDateTime)
