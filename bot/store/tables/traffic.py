"""What comes in, what goes out and what is due: the queues, as rows.

inbox   one row an update, written before Telegram is told that it arrived.
fetch   one row a file that somebody sent and that is wanted: downloaded outside any transaction.
outbox  one row a call to Telegram, written with the state that it speaks of.
agenda  one row a timed duty, unique on (subject, local date, kind).
"""

from __future__ import annotations

from datetime import date, datetime, timedelta
from enum import IntEnum, StrEnum
from typing import Any

from sqlalchemy import (
    JSON,
    BigInteger,
    ColumnElement,
    Index,
    SQLColumnExpression,
    UniqueConstraint,
    and_,
    bindparam,
    case,
)
from sqlmodel import Field

from bot.store.base import NumberedRow, Row
from bot.store.driver import UTCDateTime


class Urgency(IntEnum):
    """What goes first in both queues. Within a chat the order of arrival holds all the same, but that
    an urgent message overtakes what else waits to be sent there.
    """

    VIEW = -1  # what somebody wants to see again, and pictures
    ORDINARY = 0
    STAGE_DAY = 1  # of an athlete who is on stage today
    URGENT = 2  # it may be about somebody in danger


#: Our own choice: a view or a picture waits for so long behind mornings that came later.
VIEWS_WAIT = timedelta(seconds=30)


def urgency_by(
    urgency: SQLColumnExpression[int], came_at: SQLColumnExpression[datetime]
) -> ColumnElement[int]:
    """What a queue goes by, as an expression: what came before `:long_ago`, which is `VIEWS_WAIT` ago,
    takes its turn among the mornings, however long a rush lasts.
    """
    has_waited = and_(urgency < Urgency.ORDINARY, came_at <= bindparam("long_ago"))
    return case((has_waited, Urgency.ORDINARY.value), else_=urgency)


class InboxRow(Row, table=True):
    """status: new -> done | poison. `not_before` puts off a row that failed."""

    __tablename__ = "inbox"
    __table_args__ = (
        Index("ix_inbox_open", "status", "chat_id", "update_id"),
        Index("ix_inbox_chat", "chat_id"),
    )

    update_id: int = Field(sa_type=BigInteger, primary_key=True)
    chat_id: int | None = Field(default=None, sa_type=BigInteger)
    raw: dict[str, Any] = Field(sa_type=JSON)
    received_at: datetime = Field(sa_type=UTCDateTime)
    status: str = "new"
    urgency: int = Field(default=Urgency.ORDINARY, sa_column_kwargs={"server_default": "0"})
    attempts: int = 0
    not_before: datetime | None = Field(default=None, sa_type=UTCDateTime)
    problem: str = ""


class TopicKind(StrEnum):
    """What a message is on of which only the latest matters, and whom or what `topic_about` names."""

    TARGET = "target"  # an athlete's figures of `topic_day`
    ANSWER = "answer"  # an athlete: what is answered to a complaint
    ALERT = "alert"  # an alert, told to `topic_beside`
    STAGE_DAY = "stage-day"  # an athlete's day of the event, told to `topic_beside`
    LEARNT = "learnt"  # a coach, on the athlete `topic_beside`: what a load has taught
    LOOK_ASKED = "look-asked"  # a coach, on the athlete `topic_beside` and `topic_day`
    LOOKS_GATHERED = "looks-gathered"  # a coach: the message `topic_beside` that names several
    NOTES = "notes"  # the message in which notes were gathered
    ROSTER = "roster"  # a coach
    CALENDAR = "calendar"  # a calendar that was handed out
    CALENDAR_OF_ALL = "calendar-of"  # a coach
    MENU = "menu"  # a chat
    CODE_REFUSED = "code-refused"  # a chat


class OutboxRow(NumberedRow, table=True):
    """status: waiting -> sending -> sent | dropped | failed.

    `sending` left behind by a crash means "outcome unknown": it is sent again (at least once).
    `topic` and what is with it (`chat.outbox.Topic`) mark messages of which only the latest matters: a
    newer one drops those still waiting. `decision_id` is the decision of which the message puts the
    proposal to a coach.
    `edits_outbox_id` names the row whose sent message this one is to edit, once its id is known.
    `dedupe` makes a repeated use case harmless.
    `attached` names the files to upload by what they are made of, by field of the call; they are
    made when the row is sent, so that a row stays small and holds no picture.
    """

    __tablename__ = "outbox"
    __table_args__ = (
        Index("ix_outbox_open", "status", "chat_id", "id"),
        Index("ix_outbox_chat", "chat_id"),
        Index("ix_outbox_topic", "topic", "topic_about"),
    )

    chat_id: int = Field(sa_type=BigInteger)
    method: str
    payload: dict[str, Any] = Field(sa_type=JSON)
    topic: str | None = None  # a TopicKind
    topic_about: int | None = Field(default=None, sa_type=BigInteger)
    topic_beside: int | None = Field(default=None, sa_type=BigInteger)
    topic_day: date | None = None
    decision_id: int | None = Field(default=None, index=True)
    dedupe: str | None = Field(default=None, unique=True)
    attached: dict[str, Any] | None = Field(default=None, sa_type=JSON(none_as_null=True))
    edits_outbox_id: int | None = None
    status: str = "waiting"
    urgency: int = Field(default=Urgency.ORDINARY, sa_column_kwargs={"server_default": "0"})
    attempts: int = 0
    doubts: int = 0  # sends of which nobody knows whether they arrived
    not_before: datetime = Field(sa_type=UTCDateTime)
    created_at: datetime = Field(sa_type=UTCDateTime)
    sent_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
    message_id: int | None = Field(default=None, sa_type=BigInteger)
    problem: str = ""


class FetchRow(NumberedRow, table=True):
    """status: waiting -> done | failed. `kind` and `about` say what it is wanted for.

    Downloading happens outside any transaction, under a lease of seconds (`not_before`) that is renewed
    meanwhile; what follows from it in one.
    """

    __tablename__ = "fetch"
    __table_args__ = (UniqueConstraint("update_id"), Index("ix_fetch_open", "status", "not_before"))

    update_id: int = Field(sa_type=BigInteger)
    person_id: int = Field(foreign_key="person.id", index=True)
    kind: str
    file_id: str
    name: str = ""
    most_bytes: int
    about: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    status: str = "waiting"
    attempts: int = 0
    not_before: datetime = Field(sa_type=UTCDateTime)
    created_at: datetime = Field(sa_type=UTCDateTime)
    problem: str = ""


class AgendaRow(NumberedRow, table=True):
    """status: waiting -> done | cancelled. `subject`: whose duty it is (`core/timing/agenda.py`).
    `claimed_until` puts off a duty that failed.
    """

    __tablename__ = "agenda"
    __table_args__ = (
        UniqueConstraint("subject", "local_date", "kind"),
        Index("ix_agenda_open", "status", "due_at"),
        Index("ix_agenda_subject", "subject", "status"),
    )

    subject: str
    local_date: date
    kind: str
    due_at: datetime = Field(sa_type=UTCDateTime)
    # Which of several that fall due at the same instant is done first: the lower.
    rank: int = Field(default=0, sa_column_kwargs={"server_default": "0"})
    payload: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    status: str = "waiting"
    attempts: int = 0
    claimed_until: datetime | None = Field(default=None, sa_type=UTCDateTime)
