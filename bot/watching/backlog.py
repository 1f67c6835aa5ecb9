"""How far behind the queues are: the figures that status, metrics and the watch go by."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import func
from sqlmodel import Session, col, select

from bot.store.tables.traffic import AgendaRow, InboxRow, OutboxRow, Urgency

NONE = timedelta(0)
NEWEST = 1000


@dataclass(frozen=True, slots=True)
class Queue:
    """How many rows of a queue wait now, and for how long the oldest has."""

    name: str
    count: int
    oldest: timedelta


@dataclass(frozen=True, slots=True)
class Backlog:
    """What waits, what was set aside, and when something was last sent."""

    at: datetime
    inbox: Queue
    outbox: Queue
    urgent: Queue
    agenda: Queue
    set_aside: int
    undelivered: int
    last_sent: datetime | None

    @property
    def queues(self) -> tuple[Queue, ...]:
        return self.inbox, self.outbox, self.urgent, self.agenda


def backlog(session: Session, now: datetime) -> Backlog:
    """The backlog at a moment. Every query goes by an index on what is open."""
    outbox_open = col(OutboxRow.status).in_(("waiting", "sending"))
    return Backlog(
        at=now,
        inbox=_queue(session, "inbox", InboxRow.received_at, now, InboxRow.status == "new"),
        outbox=_queue(session, "outbox", OutboxRow.created_at, now, outbox_open),
        urgent=_queue(
            session, "urgent", OutboxRow.created_at, now, outbox_open,
            OutboxRow.urgency >= Urgency.URGENT,
        ),
        agenda=_queue(
            session, "agenda", AgendaRow.due_at, now, AgendaRow.status == "waiting",
            AgendaRow.due_at <= now,
        ),
        set_aside=_count(session, InboxRow, "poison"),
        undelivered=_count(session, OutboxRow, "failed"),
        last_sent=_last_sent(session),
    )  # fmt: skip


def _queue(session: Session, name: str, since: Any, now: datetime, *where: Any) -> Queue:
    count, oldest = session.exec(select(func.count(), func.min(since)).where(*where)).one()
    return Queue(name, count, max(NONE, now - oldest) if oldest is not None else NONE)


def _last_sent(session: Session) -> datetime | None:
    """When the latest of the newest messages was sent; all of them would be a great many."""
    newest = session.exec(select(func.max(OutboxRow.id))).one() or 0
    return session.exec(
        select(func.max(OutboxRow.sent_at)).where(col(OutboxRow.id) > newest - NEWEST)
    ).one()


def _count(session: Session, table: type[InboxRow | OutboxRow], status: str) -> int:
    return session.exec(
        select(func.count()).select_from(table).where(col(table.status) == status)
    ).one()
