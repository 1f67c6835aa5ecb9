"""A coach's side: how they want to be told, notes, holds, second coaches, looks, what weeks taught."""

from __future__ import annotations

import datetime as dt
from datetime import datetime, time
from enum import StrEnum
from typing import Any

from sqlalchemy import JSON, BigInteger, UniqueConstraint
from sqlmodel import Field

from bot.store.base import NumberedRow, Row
from bot.store.driver import UTCDateTime


class CoachSettings(Row, table=True):
    """A coach's own settings, and the messages of theirs that are kept up to date in place."""

    __tablename__ = "coach_desk"

    person_id: int = Field(primary_key=True, foreign_key="person.id")
    zone: str | None = None
    digest_at: time | None = None  # None: no digest
    digest_sent_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
    # Between these two times of the coach's day advisories wait; both None: no quiet hours.
    quiet_from: time | None = None
    quiet_to: time | None = None
    # The roster message on show: sent by this row of the outbox, or known by Telegram's id.
    roster_outbox_id: int | None = None
    roster_message_id: int | None = None
    roster_page: int = 0
    roster_filter: str = ""
    # The message that gathers notes just now.
    notes_outbox_id: int | None = None
    # Whose card was opened last, and when: whom a sentence without a name is taken to be for.
    card_athlete_id: int | None = Field(default=None, foreign_key="person.id", index=True)
    card_at: datetime | None = Field(default=None, sa_type=UTCDateTime)


class CoachNote(NumberedRow, table=True):
    """Something for a coach to read in their own time. `outbox_id`: told; None: held so far.

    `said` is what the athlete wrote, in their own words, where it is that, and `message_id` the
    message in which they wrote it.
    """

    __tablename__ = "coach_note"

    coach_id: int = Field(foreign_key="person.id", index=True)
    athlete_id: int = Field(foreign_key="person.id", index=True)
    at: datetime = Field(sa_type=UTCDateTime)
    text: str
    outbox_id: int | None = Field(default=None, index=True)
    said: str = ""
    message_id: int | None = Field(default=None, sa_type=BigInteger)


class HoldRow(NumberedRow, table=True):
    """An athlete held at one figure from `first` to `last`, whatever the check-ins say."""

    __tablename__ = "hold"

    athlete_id: int = Field(foreign_key="person.id", index=True)
    first: dt.date
    last: dt.date
    carb_g: float
    because: str = ""
    set_by: int = Field(foreign_key="person.id", index=True)
    set_at: datetime = Field(sa_type=UTCDateTime)
    ended_at: datetime | None = Field(default=None, sa_type=UTCDateTime)


class Rights(StrEnum):
    FULL = "full"  # reads and does what the coach does, but for the relation itself
    ALERTS = "alerts"  # is told of alerts and can acknowledge them


class SecondCoach(NumberedRow, table=True):
    """Another coach beside the first one until a time. `athlete_id` None: all the coach's athletes."""

    __tablename__ = "second_coach"

    coach_id: int = Field(foreign_key="person.id", index=True)
    person_id: int = Field(foreign_key="person.id", index=True)
    athlete_id: int | None = Field(default=None, foreign_key="person.id", index=True)
    rights: str
    given_at: datetime = Field(sa_type=UTCDateTime)
    until_day: dt.date  # the last one
    until_at: datetime = Field(sa_type=UTCDateTime)
    ended_at: datetime | None = Field(default=None, sa_type=UTCDateTime)


class TemplateRow(NumberedRow, table=True):
    """`days`: one record a day, in shares of an athlete's body mass and habits; so are `limits`.

    `habits`: what belongs to it beside the figures: asked_at, always_tomorrow and the stage day's
    spans in minutes. Both are empty in a template that was saved before there was more than the plan.
    """

    __tablename__ = "plan_template"
    __table_args__ = (UniqueConstraint("coach_id", "name"),)

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


class TaughtRow(NumberedRow, table=True):
    """One a coach and athlete, made anew with each finished week. `taught`: `engine.values.body`.

    `model` is the number of the model that learnt it; rows of another one wait to be made anew.
    """

    __tablename__ = "taught"
    __table_args__ = (UniqueConstraint("coach_id", "athlete_id"),)

    coach_id: int = Field(foreign_key="person.id", index=True)
    athlete_id: int = Field(foreign_key="person.id", index=True)
    weeks: int
    model: int
    taught: dict[str, Any] = Field(sa_type=JSON)
    at: datetime = Field(sa_type=UTCDateTime)


class CoachLookRow(NumberedRow, table=True):
    """One a local date and coach; `look` is a `CoachLook`. Taken back, the row goes."""

    __tablename__ = "coach_look"
    __table_args__ = (UniqueConstraint("athlete_id", "date", "by_id"),)

    athlete_id: int = Field(foreign_key="person.id", index=True)
    date: dt.date
    by_id: int = Field(foreign_key="person.id", index=True)
    look: str
    sharpness: int | None = None
    at: datetime = Field(sa_type=UTCDateTime)
