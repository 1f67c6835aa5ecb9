"""From the inbox into the use cases: in order within a chat, chats side by side.

A row is handled and marked done in one transaction, so a crash leaves it as it was and the next
start takes it up. Nothing is leased: the transaction itself holds the row. A row that fails three
times, or cannot be read, is set aside as poison; its person is told, and nobody else waits for it.
"""

from __future__ import annotations

import asyncio
import random
from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from datetime import datetime, timedelta
from functools import partial
from typing import Any

import structlog
from sqlalchemy import BigInteger, bindparam, func, or_, true, update
from sqlalchemy.exc import InterfaceError, OperationalError
from sqlmodel import Session, col, select
from structlog.contextvars import bound_contextvars

from bot.core.chat.outbox import numbers_of, said_in
from bot.core.logs import error_name
from bot.core.timing.waiting import Underway, keep_going, retry_span, wait_for
from bot.core.turn import ChatTurn, Incoming, Turn
from bot.core.use_cases import Runtime
from bot.store.db import claiming, in_transaction, is_sqlite, looking, looking_ahead
from bot.store.remembering import looked_up
from bot.store.tables.traffic import VIEWS_WAIT, InboxRow, OutboxRow, Urgency, urgency_by
from bot.store.working_out import AtHand
from bot.telegram.beginnings import MOST, Beginnings
from bot.telegram.reading import Unreadable, read
from bot.telegram.reading import said_in as said_by

ATTEMPTS = 3
FIRST_RETRY, LONGEST_RETRY = timedelta(seconds=1), timedelta(seconds=30)
LOOK_AGAIN_S = 1.0
HEADS_AT_ONCE = 64
AHEAD = 2  # how many of them a slot takes before it looks again; what is urgent waits for these
ELSEWHERE_S = 0.25  # how long a chat that another process is at work on is left to it
REMEMBERED = 20_000  # of so many chats it is known that nothing is to be looked ahead for
MIXED = 64  # of the oldest so many any may be first

# Built once: building a statement costs more than asking it.
_CHATS = (
    select(func.min(InboxRow.update_id).label("first"), func.max(InboxRow.urgency).label("urgency"))
    .where(InboxRow.status == "new")
    .group_by(col(InboxRow.chat_id))
    .subquery()
)
_URGENCY = urgency_by(_CHATS.c.urgency, col(InboxRow.received_at))
_HEADS = (
    select(InboxRow.update_id, InboxRow.chat_id, _URGENCY.label("urgency"))
    .select_from(InboxRow)
    .join(_CHATS, col(InboxRow.update_id) == _CHATS.c.first)
    .where(or_(col(InboxRow.not_before).is_(None), col(InboxRow.not_before) <= bindparam("now")))
    .order_by(_URGENCY.desc(), col(InboxRow.update_id))
    .limit(HEADS_AT_ONCE)
)
_TAKEN = (
    update(InboxRow)
    .where(col(InboxRow.update_id) == bindparam("update"), col(InboxRow.status) == "new")
    .values(status="done", attempts=InboxRow.attempts - bindparam("noted"))
    .returning(col(InboxRow.raw), col(InboxRow.received_at), col(InboxRow.urgency))
)
# On PostgreSQL the row is taken along with its chat, whose lock ends with the transaction: where
# another process is at work on the chat nothing is taken, and a row that it has just finished is
# found done, since a row that has changed meanwhile is looked at as it is now.
_CHAT = select(
    func.pg_try_advisory_xact_lock(bindparam("chat", type_=BigInteger)).label("ours")
).cte("chat")
_FOUND = _TAKEN.where(select(_CHAT.c.ours).scalar_subquery()).cte("found")
_TAKEN_IN_CHAT = select(
    _CHAT.c.ours, _FOUND.c.raw, _FOUND.c.received_at, _FOUND.c.urgency
).select_from(_CHAT.outerjoin(_FOUND, true()))

_log = structlog.get_logger(__name__)


def mixed(heads: Sequence[tuple[int, int | None, int]]) -> list[tuple[int, int | None, int]]:
    """In another order in each process, or all would reach for the same chats: urgent ones first
    still, and the oldest before those that have waited for less.
    """
    places = [(-urgency, n // MIXED, random.random()) for n, (_, _, urgency) in enumerate(heads)]
    return [head for _, head in sorted(zip(places, heads, strict=True), key=lambda pair: pair[0])]


class TookItsProcessAlong(Exception):  # noqa: N818 - it is what was found, and raised nowhere
    """Each process that began on a row ended with it."""


class Worker:
    """Hands inbox rows to the use cases on a few threads.

    `noted_for_s`: for how long after its start it notes what it begins on (`bot.telegram.beginnings`).
    """

    def __init__(
        self,
        runtime: Runtime,
        *,
        threads: int,
        handled: Callable[[], None],
        noted_for_s: float = 0.0,
    ) -> None:
        self.wake = asyncio.Event()
        self.underway = Underway()
        self._engine, self._use_cases, self._clock, self._context = runtime
        self._handled = handled
        self._threads = threads
        self._beginnings = Beginnings(self._engine, self._clock, noted_for_s)
        self._pool = ThreadPoolExecutor(threads, thread_name_prefix="worker")
        self._busy: dict[int | None, asyncio.Task[None]] = {}
        self._elsewhere: dict[int | None, float] = {}
        self._nothing_until: dict[int, datetime] = {}  # when a chat is looked ahead for again
        self._seen: list[tuple[int, int | None, int]] = []

    async def run(self) -> None:
        """Work until cancelled."""
        await keep_going("worker", self._clock, self._step_and_wait)

    async def step(self) -> None:
        """Begin on the first open row of every chat that is not being served, as slots allow."""
        self._begin()
        if len(self._busy) >= self.slots:
            return
        loop = asyncio.get_running_loop()
        heads = await loop.run_in_executor(None, self._next_per_chat)
        free = [head for head in heads if head[1] not in self._busy]
        self._seen = (free if is_sqlite(self._engine) else mixed(free))[: AHEAD * self.slots]
        self._begin()

    def _begin(self) -> None:
        """Begin on what was seen at the last look. That is a few more than there are slots, so that
        in a burst not each answer is followed by a look; what is urgent waits for no more than these.
        """
        while self._seen and len(self._busy) < self.slots:
            update_id, chat_id, _urgency = self._seen.pop(0)
            if chat_id not in self._busy and not self._is_elsewhere(chat_id):
                self._busy[chat_id] = asyncio.create_task(self._serve(update_id, chat_id))

    @property
    def slots(self) -> int:
        """How many chats it serves at once."""
        return 1 if self._beginnings.are_noted else self._threads

    @property
    def busy(self) -> int:
        """How many chats are being served."""
        return len(self._busy)

    async def drain(self) -> None:
        """Wait for the rows that are being handled."""
        while self._busy:
            await asyncio.gather(*self._busy.values(), return_exceptions=True)

    async def close(self) -> None:
        """Finish what was begun; what is not begun stays in the inbox."""
        await self.drain()
        self._pool.shutdown(wait=True)

    async def _step_and_wait(self) -> None:
        await self.step()
        await wait_for(self.wake, self._clock, LOOK_AGAIN_S)

    async def _serve(self, update_id: int, chat_id: int | None) -> None:
        loop = asyncio.get_running_loop()
        try:
            if not await loop.run_in_executor(self._pool, self.handle, update_id, chat_id):
                self._elsewhere[chat_id] = self._clock.monotonic() + ELSEWHERE_S
        except Exception:
            _log.exception("an update was left for later", update_id=update_id)
            await self._clock.sleep(FIRST_RETRY.total_seconds())
        finally:
            del self._busy[chat_id]
            self.wake.set()
        self._handled()

    def _next_per_chat(self) -> Sequence[tuple[int, int | None, int]]:
        """The first open row of each chat, where it is not put off, and how urgent the chat is.

        Chats in which something urgent waits come first: what stands before it there is in its way.
        """
        with looking(self._engine) as session:
            now = self._clock.now()
            found: Sequence[tuple[int, int | None, int]] = session.exec(
                _HEADS, params={"now": now, "long_ago": now - VIEWS_WAIT}
            ).all()
        return found

    def _is_elsewhere(self, chat_id: int | None) -> bool:
        """Whether another process was at work on this chat a moment ago: looking again at once, as
        both take the oldest rows first, would be all that this one does.
        """
        until = self._elsewhere.get(chat_id)
        if until is None:
            return False
        if until > self._clock.monotonic():
            return True
        del self._elsewhere[chat_id]
        return False

    def handle(self, update_id: int, chat_id: int | None) -> bool:
        """Handle one row, in one transaction; where that fails, note the failure in another.

        Returns False, having done nothing, where another process is at work on this chat.
        """
        with bound_contextvars(update_id=update_id), self.underway.doing():
            return self._handle_one(update_id, chat_id)

    def _handle_one(self, update_id: int, chat_id: int | None) -> bool:
        began = self._clock.monotonic()
        if self._beginnings.are_noted:
            # What is killed while it loads for seconds was not taken along by any update.
            self._use_cases.load()
            times = self._beginnings.note(update_id, chat_id)
            if times is None:
                return False
            if times > MOST:
                # Where telling its person took a process along, too, less is tried the next time.
                self._give_up(update_id, TookItsProcessAlong(), tried=times - MOST - 1)
                return True
        try:
            at_hand = self._foreseen(update_id, chat_id)
            done, written = in_transaction(
                self._engine,
                lambda session: self._handle(session, update_id, chat_id),
                locked=self._use_cases.hold_their_people,
                at_hand=at_hand,
            )
            if at_hand.beginnings > 1 and chat_id is not None:
                self._nothing_until.pop(chat_id, None)  # something was needed, or may be, after all
        except (OperationalError, InterfaceError):
            raise  # the database is to blame, not the row
        except Exception as error:
            _log.exception("an update could not be handled", update_id=update_id)
            self._failed(update_id, error)
            return True
        if done:
            self._beginnings.came_back(update_id)
            spent = round(1000 * (self._clock.monotonic() - began))
            _log.info("an update was handled", outbox_ids=numbers_of(written), duration_ms=spent)
        return done

    def _foreseen(self, update_id: int, chat_id: int | None) -> AtHand:
        """What the answer will need and takes long, worked out with nothing locked."""
        at_hand = AtHand()
        if chat_id is None or self._foresees_nothing(chat_id):
            return at_hand
        with looking_ahead(self._engine, at_hand) as session:

            def came() -> Incoming | None:
                row = session.get(InboxRow, update_id)
                if row is None or row.status != "new":
                    return None
                try:
                    return read(row.raw, row.received_at)
                except Unreadable:
                    return None

            try:
                until = self._use_cases.foresee(session, self._context(), chat_id, came)
            except (OperationalError, InterfaceError):
                raise
            except Exception:
                _log.exception("what an update will need was not worked out ahead")
            else:
                if until is not None:
                    if len(self._nothing_until) >= REMEMBERED:
                        self._nothing_until.clear()
                    self._nothing_until[chat_id] = until
        return at_hand

    def _foresees_nothing(self, chat_id: int) -> bool:
        """Whether the last look ahead in this chat said that there is nothing to look for yet."""
        until = self._nothing_until.get(chat_id)
        return until is not None and self._clock.now() < until

    def _handle(
        self, session: Session, update_id: int, chat_id: int | None
    ) -> tuple[bool, Sequence[OutboxRow]]:
        """Whether it is done with, and which messages were written for it."""
        # That it was begun on is no failure once it is done.
        asked = {"update": update_id, "noted": int(self._beginnings.is_noted(update_id))}
        if is_sqlite(self._engine):
            found = [(True, *row) for row in looked_up(session, _TAKEN, asked)]
        else:
            asked["chat"] = chat_id or 0
            found = [tuple(row) for row in looked_up(session, _TAKEN_IN_CHAT, asked)]
        for ours, raw, received_at, urgency in found:
            if not ours:
                return False, ()
            if raw is not None:
                self._take(session, update_id, raw, received_at, Urgency(urgency))
        return True, said_in(session)

    def _take(
        self,
        session: Session,
        update_id: int,
        raw: dict[str, Any],
        received_at: datetime,
        urgency: Urgency,
    ) -> None:
        try:
            incoming = read(raw, received_at)
        except Unreadable as error:
            _log.error("an update cannot be read", update_id=update_id, error=error_name(error))
            self._set_aside(session, session.get_one(InboxRow, update_id), error)
            return
        if incoming is not None:
            # Whether the answer to what may be urgent is, too, the use case finds out.
            of_it = urgency if urgency < Urgency.URGENT else Urgency.ORDINARY
            context = replace(self._context(), urgency=of_it)
            self._use_cases.incoming(ChatTurn(session, context, incoming))

    def _failed(self, update_id: int, error: Exception) -> None:
        with claiming(self._engine) as session:
            row = session.get(InboxRow, update_id, with_for_update=True)
            if row is None or row.status != "new":
                return
            row.attempts += not self._beginnings.came_back(update_id)
            row.problem = error_name(error)
            row.not_before = self._clock.now() + retry_span(
                row.attempts, FIRST_RETRY, LONGEST_RETRY
            )
            session.add(row)
            if row.attempts < ATTEMPTS:
                return
        self._give_up(update_id, error)

    def _give_up(self, update_id: int, error: Exception, tried: int = 0) -> None:
        """Set a row aside and tell of it; where that fails, in fewer words, and at last without.
        `tried`: how many of these ways are known to fail.
        """
        _log.error("an update is set aside", update_id=update_id, attempts=ATTEMPTS)
        for few in (False, True)[tried:]:
            try:
                in_transaction(
                    self._engine,
                    partial(self._give_up_in, update_id=update_id, error=error, in_few_words=few),
                    locked=self._use_cases.hold_their_people,
                )
            except Exception:
                _log.exception("a person could not be told", update_id=update_id)
            else:
                return
        # Telling the person failed as well; the row must go all the same.
        with claiming(self._engine) as session:
            row = session.get_one(InboxRow, update_id)
            row.status, row.problem = "poison", error_name(error)
            session.add(row)

    def _give_up_in(
        self, session: Session, *, update_id: int, error: Exception, in_few_words: bool
    ) -> None:
        row = session.get(InboxRow, update_id, with_for_update=True)
        if row is not None and row.status == "new":
            self._set_aside(session, row, error, in_few_words=in_few_words)

    def _set_aside(
        self, session: Session, row: InboxRow, error: Exception, *, in_few_words: bool = False
    ) -> None:
        row.status, row.problem = "poison", error_name(error)
        session.add(row)
        if row.chat_id is not None:
            urgent = row.urgency >= Urgency.URGENT and not in_few_words
            words = said_by(row.raw) if urgent else ""
            self._use_cases.poisoned(Turn(session, self._context()), row.chat_id, words)
