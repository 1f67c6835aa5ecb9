"""What is said of a week that is over, to be read again before the next one is planned."""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Field

from bot.store.base import Row
from bot.store.driver import UTCDateTime


class DebriefRow(Row, table=True):
    """One an event. `sent_at`: when it was brought to coach and athlete by itself."""

    __tablename__ = "debrief"

    id: int | None = Field(default=None, primary_key=True)
    event_id: int = Field(foreign_key="event.id", unique=True)
    athlete_id: int = Field(foreign_key="person.id", index=True)
    athlete_said: str = ""
    coach_note: str = ""
    placing: str = Field(default="", sa_column_kwargs={"server_default": ""})
    sent_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
