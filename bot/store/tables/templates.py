"""A coach's own plan templates."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import JSON, UniqueConstraint
from sqlmodel import Field

from bot.store.base import Row
from bot.store.driver import UTCDateTime


class TemplateRow(Row, table=True):
    """`days`: one record a day, in shares of an athlete's body mass and habits; so are `limits`.

    `habits`: what belongs to it beside the figures: asked_at, always_tomorrow and the stage day's
    spans in minutes. Both are empty in a template that was saved before there was more than the plan.
    """

    __tablename__ = "plan_template"
    __table_args__ = (UniqueConstraint("coach_id", "name"),)

    id: int | None = Field(default=None, primary_key=True)
    coach_id: int = Field(foreign_key="person.id")
    name: str
    shape: str
    days: list[dict[str, Any]] = Field(sa_type=JSON)
    limits: dict[str, Any] = Field(
        default_factory=dict, sa_type=JSON, sa_column_kwargs={"server_default": "{}"}
    )
    habits: dict[str, Any] = Field(
        default_factory=dict, sa_type=JSON, sa_column_kwargs={"server_default": "{}"}
    )
    made_at: datetime = Field(sa_type=UTCDateTime)
