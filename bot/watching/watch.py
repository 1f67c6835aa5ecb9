"""How far behind the queues are; where prompts or alerts are, whoever runs the bot is told.

The word goes straight to Telegram, past the outbox, since the outbox may be what stands still. It
holds counts and minutes, nothing about anybody.
"""

from __future__ import annotations

import asyncio
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

import structlog
from sqlalchemy import Engine, func
from sqlalchemy.exc import SQLAlchemyError
from sqlmodel import Session, col, select
from telegram.error import TelegramError

from bot.core.logs import error_name
from bot.core.timing.clock import Clock
from bot.store.db import looking
from bot.store.tables.traffic import AgendaRow, InboxRow, OutboxRow, Urgency
from bot.telegram.transport import Transport

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


LOOK_EVERY_S = 30.0
SAY_AGAIN_AFTER_S = 3600.0
#: How long something may wait before it is trouble, by queue. What is urgent may not wait at all.
LONGEST = {
    "inbox": timedelta(minutes=3),
    "outbox": timedelta(minutes=10),
    "urgent": timedelta(minutes=1),
    "agenda": timedelta(minutes=5),
}
SPOKEN = {
    "inbox": "messages from athletes and coaches wait to be read",
    "outbox": "messages wait to be sent",
    "urgent": "urgent messages, alerts among them, wait to be sent",
    "agenda": "timed duties (prompts, reminders, deadlines) are overdue",
}

_log = structlog.get_logger(__name__)


def late(found: Backlog) -> list[Queue]:
    """The queues in which something has waited for too long."""
    return [queue for queue in found.queues if queue.count and queue.oldest > LONGEST[queue.name]]


def troubles(found: Backlog) -> list[str]:
    """What is wrong, a line each; empty where all is well."""
    lines = [_told(queue) for queue in late(found)]
    if found.set_aside:
        lines.append(f"{found.set_aside} messages could not be handled and were set aside")
    return lines


def _told(queue: Queue) -> str:
    return f"{queue.count} {SPOKEN[queue.name]}, the oldest for {minutes(queue.oldest)}"


def minutes(span: timedelta) -> str:
    whole = round(span.total_seconds() / 60)
    return f"{whole} minute{'' if whole == 1 else 's'}"


class Watch:
    """Looks now and then, and tells the operator's chat: at once, each hour again, and when it ends."""

    def __init__(
        self, engine: Engine, clock: Clock, transport: Transport, operator_chat: int | None
    ) -> None:
        self._engine = engine
        self._clock = clock
        self._transport = transport
        self._chat = operator_chat
        self._told: frozenset[str] = frozenset()
        self._told_at: float | None = None
        self._set_aside = 0

    async def look(self) -> None:
        """Look once, after a while; fails only where the logs are told why."""
        await self._clock.sleep(LOOK_EVERY_S)
        kinds, lines = await asyncio.to_thread(self._found)
        if kinds:
            _log.error("the bot is behind", kind=",".join(sorted(kinds)), count=len(lines))
        if self._chat is None:
            return
        ran = self._clock.monotonic()
        again = self._told_at is None or ran - self._told_at >= SAY_AGAIN_AFTER_S
        if kinds - self._told or (kinds and again):
            await self._say(
                "Brimline is behind:\n" + "\n".join(f"- {line}" for line in lines), kinds
            )
        elif self._told and not kinds:
            await self._say("Brimline has caught up: nothing is overdue any more.", kinds)

    def _found(self) -> tuple[frozenset[str], list[str]]:
        try:
            with looking(self._engine) as session:
                found = backlog(session, self._clock.now())
        except SQLAlchemyError as error:
            _log.error("the database does not answer", error=error_name(error))
            return frozenset({"database"}), ["the database does not answer; nothing can be stored"]
        queues = late(found)
        kinds = frozenset(queue.name for queue in queues)
        more_aside = found.set_aside > self._set_aside
        self._set_aside = found.set_aside
        if more_aside:
            return kinds | {"set-aside"}, troubles(found)
        return kinds, [_told(queue) for queue in queues]

    async def _say(self, text: str, kinds: frozenset[str]) -> None:
        try:
            await self._transport.call("sendMessage", {"chat_id": self._chat, "text": text})
        except TelegramError as error:
            _log.error("the operator could not be told", error=error_name(error))
            return  # tried again at the next look
        self._told, self._told_at = kinds, self._clock.monotonic()
