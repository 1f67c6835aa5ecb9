"""What coaches saw of an athlete on a morning."""

from __future__ import annotations

import datetime as dt
from datetime import datetime

from sqlalchemy import UniqueConstraint
from sqlmodel import Field

from bot.store.base import Row
from bot.store.driver import UTCDateTime


class CoachLookRow(Row, table=True):
    """One a local date and coach; `look` is a `CoachLook`. Taken back, the row goes."""

    __tablename__ = "coach_look"
    __table_args__ = (UniqueConstraint("athlete_id", "date", "by_id"),)

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="person.id", index=True)
    date: dt.date
    by_id: int = Field(foreign_key="person.id", index=True)
    look: str
    sharpness: int | None = None
    at: datetime = Field(sa_type=UTCDateTime)
