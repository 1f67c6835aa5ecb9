"""Weeks that came in from a sheet, and what they consist of, so that they can go as they came."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import JSON
from sqlmodel import Field

from bot.store.base import Row
from bot.store.driver import UTCDateTime


class PastImportRow(Row, table=True):
    """One sheet. `rows`: the ids that it made, by table name; emptied when it is taken back."""

    __tablename__ = "past_import"

    id: int | None = Field(default=None, primary_key=True)
    athlete_id: int = Field(foreign_key="person.id", index=True)
    by_id: int = Field(foreign_key="person.id", index=True)
    at: datetime = Field(sa_type=UTCDateTime)
    rows: dict[str, list[int]] = Field(sa_type=JSON)
    days: list[Any] = Field(sa_type=JSON)  # of the events, ISO
    taken_back_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
