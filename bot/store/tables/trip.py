"""A journey to an event in another zone."""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Field

from bot.store.base import Row
from bot.store.driver import UTCDateTime


class TripRow(Row, table=True):
    """The newest row of an event counts. `arrived_at`: when the prompts went over to its clocks."""

    __tablename__ = "trip"

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="person.id", index=True)
    event_id: int = Field(foreign_key="event.id", index=True)
    leave_at: datetime = Field(sa_type=UTCDateTime)
    arrive_at: datetime = Field(sa_type=UTCDateTime)
    home_zone: str
    away_zone: str
    set_at: datetime = Field(sa_type=UTCDateTime)
    arrived_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
