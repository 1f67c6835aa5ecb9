"""What finished weeks have taught of each athlete, for the prior of the coach's next one."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import JSON, UniqueConstraint
from sqlmodel import Field

from bot.store.base import Row
from bot.store.driver import UTCDateTime


class TaughtRow(Row, table=True):
    """One a coach and athlete, made anew with each finished week. `taught`: `engine.values.prior`.

    `model` is the number of the model that learnt it; rows of another one wait to be made anew.
    """

    __tablename__ = "taught"
    __table_args__ = (UniqueConstraint("coach_id", "athlete_id"),)

    id: int | None = Field(default=None, primary_key=True)
    coach_id: int = Field(foreign_key="person.id", index=True)
    athlete_id: int = Field(foreign_key="person.id", index=True)
    weeks: int
    model: int
    taught: dict[str, Any] = Field(sa_type=JSON)
    at: datetime = Field(sa_type=UTCDateTime)
