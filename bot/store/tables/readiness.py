"""What coach and athlete answered about whether a peak week is worth it, and what came of it."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import JSON
from sqlmodel import Field

from bot.store.base import Row
from bot.store.driver import UTCDateTime


class ReadinessRow(Row, table=True):
    """One a set of answers; its outcome is "open" while one half is to come.

    `went_on`: the coach's reason for going on against the outcome.
    """

    __tablename__ = "readiness"

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="person.id", index=True)
    event_id: int | None = Field(default=None, foreign_key="event.id", index=True)
    answers: dict[str, Any] = Field(sa_type=JSON)
    outcome: str
    reasons: list[dict[str, Any]] = Field(sa_type=JSON)
    by_id: int = Field(foreign_key="person.id", index=True)
    at: datetime = Field(sa_type=UTCDateTime)
    went_on: str = ""
