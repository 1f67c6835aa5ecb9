"""A coach's side: how a coach wants to be told, notes kept for them, holds, and second coaches."""

from __future__ import annotations

import datetime as dt
from datetime import datetime, time
from enum import StrEnum

from sqlalchemy import BigInteger
from sqlmodel import Field

from bot.store.base import Row
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


class CoachNote(Row, table=True):
    """Something for a coach to read in their own time. `outbox_id`: told; None: held so far.

    `said` is what the athlete wrote, in their own words, where it is that, and `message_id` the
    message in which they wrote it.
    """

    __tablename__ = "coach_note"

    id: int | None = Field(default=None, primary_key=True)
    coach_id: int = Field(foreign_key="person.id", index=True)
    athlete_id: int = Field(foreign_key="person.id", index=True)
    at: datetime = Field(sa_type=UTCDateTime)
    text: str
    outbox_id: int | None = Field(default=None, index=True)
    said: str = ""
    message_id: int | None = Field(default=None, sa_type=BigInteger)


class HoldRow(Row, table=True):
    """An athlete held at one figure from `first` to `last`, whatever the check-ins say."""

    __tablename__ = "hold"

    id: int | None = Field(default=None, primary_key=True)
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


class SecondCoach(Row, table=True):
    """Another coach beside the first one until a time. `athlete_id` None: all the coach's athletes."""

    __tablename__ = "second_coach"

    id: int | None = Field(default=None, primary_key=True)
    coach_id: int = Field(foreign_key="person.id", index=True)
    person_id: int = Field(foreign_key="person.id", index=True)
    athlete_id: int | None = Field(default=None, foreign_key="person.id", index=True)
    rights: str
    given_at: datetime = Field(sa_type=UTCDateTime)
    until_day: dt.date  # the last one
    until_at: datetime = Field(sa_type=UTCDateTime)
    ended_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
