"""Morning pictures: what is known of each. The pictures themselves are files in a folder."""

from __future__ import annotations

import datetime as dt
from datetime import datetime
from enum import StrEnum

from sqlalchemy import Index, UniqueConstraint
from sqlmodel import Field

from bot.store.base import NumberedRow
from bot.store.driver import UTCDateTime


class Pose(StrEnum):
    FRONT = "front"
    SIDE = "side"
    BACK = "back"
    OTHER = "other"


class PhotoRow(NumberedRow, table=True):
    """`name` is the file's, drawn at random. Shown to nobody before `kept_at` is set."""

    __tablename__ = "photo"
    __table_args__ = (Index("ix_photo_athlete", "athlete_id", "date"),)

    athlete_id: int = Field(foreign_key="person.id")
    date: dt.date
    pose: str
    name: str = Field(unique=True)
    received_at: datetime = Field(sa_type=UTCDateTime)
    kept_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
    forwarded_at: datetime | None = Field(default=None, sa_type=UTCDateTime)


class PhotoMorning(NumberedRow, table=True):
    """The one message under which an athlete sees what was kept of a morning."""

    __tablename__ = "photo_morning"
    __table_args__ = (UniqueConstraint("athlete_id", "date"),)

    athlete_id: int = Field(foreign_key="person.id")
    date: dt.date
    outbox_id: int | None = None
