"""Why a coach went on with a plan that the review warned about."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import JSON
from sqlmodel import Field

from bot.store.base import Row
from bot.store.driver import UTCDateTime


class PlanReviewRow(Row, table=True):
    """One a version of a plan that had warnings to answer.

    `answered`: the warnings that the reason is for, as {"id", "days_out", "value"}; the same figure
    is not asked about twice for one event.
    """

    __tablename__ = "plan_review"

    id: int | None = Field(default=None, primary_key=True)
    plan_id: int = Field(foreign_key="plan.id", unique=True)
    event_id: int = Field(foreign_key="event.id", index=True)
    answered: list[dict[str, Any]] = Field(sa_type=JSON)
    reason: str
    by_id: int = Field(foreign_key="person.id", index=True)
    at: datetime = Field(sa_type=UTCDateTime)
