"""The day itself: what is known of it, and the timetable as it now stands."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import JSON
from sqlmodel import Field

from bot.store.base import Row
from bot.store.driver import UTCDateTime


class StageRow(Row, table=True):
    """One an event. Instants in the JSON columns are ISO text in UTC.

    `facts`: stages, usual_wake, travel_min, registration, tan. `entries`: key, kind, at,
    class_number and "done", done ones included.
    """

    __tablename__ = "stage_day"

    id: int | None = Field(default=None, primary_key=True)
    event_id: int = Field(foreign_key="event.id", unique=True)
    athlete_id: int = Field(foreign_key="person.id", index=True)
    facts: dict[str, Any] = Field(sa_type=JSON)
    entries: list[dict[str, Any]] = Field(sa_type=JSON)
    cancelled_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
    set_by: int = Field(foreign_key="person.id", index=True)
    set_at: datetime = Field(sa_type=UTCDateTime)
