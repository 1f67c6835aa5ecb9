"""What hangs on an event: the day's times, the journey, its calendar, what is said before and after."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import JSON, UniqueConstraint
from sqlmodel import Field

from bot.store.base import NumberedRow
from bot.store.driver import UTCDateTime


class StageRow(NumberedRow, table=True):
    """One an event. Instants in the JSON columns are ISO text in UTC.

    `facts`: stages, usual_wake, travel_min, registration, tan. `entries`: key, kind, at,
    class_number and "done", done ones included.
    """

    __tablename__ = "stage_day"

    event_id: int = Field(foreign_key="event.id", unique=True)
    athlete_id: int = Field(foreign_key="person.id", index=True)
    facts: dict[str, Any] = Field(sa_type=JSON)
    entries: list[dict[str, Any]] = Field(sa_type=JSON)
    cancelled_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
    set_by: int = Field(foreign_key="person.id", index=True)
    set_at: datetime = Field(sa_type=UTCDateTime)


class TripRow(NumberedRow, table=True):
    """The newest row of an event counts. `arrived_at`: when the prompts went over to its clocks."""

    __tablename__ = "trip"

    athlete_id: int = Field(foreign_key="person.id", index=True)
    event_id: int = Field(foreign_key="event.id", index=True)
    leave_at: datetime = Field(sa_type=UTCDateTime)
    arrive_at: datetime = Field(sa_type=UTCDateTime)
    home_zone: str
    away_zone: str
    set_at: datetime = Field(sa_type=UTCDateTime)
    arrived_at: datetime | None = Field(default=None, sa_type=UTCDateTime)


class CalendarRow(NumberedRow, table=True):
    """One an athlete's event and reader; a moved event takes it along, so that its names stay.

    `root` is the end of every UID. `entries`: by key start (ISO), minutes (None: a whole day), zone,
    summary, description, sequence, revised_at and cancelled, as last given out.
    """

    __tablename__ = "calendar"
    __table_args__ = (UniqueConstraint("event_id", "reader_id"),)

    athlete_id: int = Field(foreign_key="person.id", index=True)
    event_id: int = Field(foreign_key="event.id")
    reader_id: int = Field(foreign_key="person.id", index=True)
    root: str
    entries: dict[str, dict[str, Any]] = Field(sa_type=JSON)
    issued_at: datetime = Field(sa_type=UTCDateTime)


class ReadinessRow(NumberedRow, table=True):
    """One a set of answers; its outcome is "open" while one half is to come.

    `went_on`: the coach's reason for going on against the outcome.
    """

    __tablename__ = "readiness"

    athlete_id: int = Field(foreign_key="person.id", index=True)
    event_id: int | None = Field(default=None, foreign_key="event.id", index=True)
    answers: dict[str, Any] = Field(sa_type=JSON)
    outcome: str
    reasons: list[dict[str, Any]] = Field(sa_type=JSON)
    by_id: int = Field(foreign_key="person.id", index=True)
    at: datetime = Field(sa_type=UTCDateTime)
    went_on: str = ""


class PlanReviewRow(NumberedRow, table=True):
    """One a version of a plan that had warnings to answer.

    `answered`: the warnings that the reason is for, as {"id", "days_out", "value"}; the same figure
    is not asked about twice for one event.
    """

    __tablename__ = "plan_review"

    plan_id: int = Field(foreign_key="plan.id", unique=True)
    event_id: int = Field(foreign_key="event.id", index=True)
    answered: list[dict[str, Any]] = Field(sa_type=JSON)
    reason: str
    by_id: int = Field(foreign_key="person.id", index=True)
    at: datetime = Field(sa_type=UTCDateTime)


class DebriefRow(NumberedRow, table=True):
    """One an event. `sent_at`: when it was brought to coach and athlete by itself."""

    __tablename__ = "debrief"

    event_id: int = Field(foreign_key="event.id", unique=True)
    athlete_id: int = Field(foreign_key="person.id", index=True)
    athlete_said: str = ""
    coach_note: str = ""
    placing: str = Field(default="", sa_column_kwargs={"server_default": ""})
    sent_at: datetime | None = Field(default=None, sa_type=UTCDateTime)


class PastImportRow(NumberedRow, table=True):
    """One sheet. `rows`: the ids that it made, by table name; emptied when it is taken back."""

    __tablename__ = "past_import"

    athlete_id: int = Field(foreign_key="person.id", index=True)
    by_id: int = Field(foreign_key="person.id", index=True)
    at: datetime = Field(sa_type=UTCDateTime)
    rows: dict[str, list[int]] = Field(sa_type=JSON)
    days: list[Any] = Field(sa_type=JSON)  # of the events, ISO
    taken_back_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
