"""The bot's own parts against a Bot API server, on a clock that stands still until it is moved.

The parts of `bot.app` (polling, worker, duties, fetcher, sender) take turns until nothing is left to
do; only what waits for the pace of sending moves the clock meanwhile. So every timed duty is done at
its own instant, however busy the machine is, and a week takes as long as its messages do.
"""

from __future__ import annotations

import asyncio
import sqlite3
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

from sqlalchemy import bindparam, event, or_
from sqlmodel import Session, col, select
from telegram.error import Forbidden

from bot.app import App
from bot.core.timing.clock import DrivenClock
from bot.dispatcher import USE_CASES
from bot.settings import Settings
from bot.store.db import is_sqlite, make_engine
from bot.store.migrate import upgrade_to_head
from bot.store.tables.traffic import AgendaRow, FetchRow, InboxRow, OutboxRow
from bot.telegram.intake import Poller
from bot.telegram.pace import OVERALL_AHEAD, OVERALL_PER_SECOND
from bot.telegram.transport import TelegramTransport
from tests.support.chats import TOKEN, Telegram

# Made once, since they are asked at every step.
_DUE = select(AgendaRow.id, AgendaRow.attempts).where(
    AgendaRow.status == "waiting",
    col(AgendaRow.due_at) <= bindparam("now"),
    or_(col(AgendaRow.claimed_until).is_(None), col(AgendaRow.claimed_until) <= bindparam("now")),
)
_OPEN: tuple[Any, ...] = (
    select(InboxRow.update_id, InboxRow.attempts).where(InboxRow.status == "new"),
    select(OutboxRow.id, OutboxRow.attempts).where(
        col(OutboxRow.status).in_(("waiting", "sending"))
    ),
    select(FetchRow.id, FetchRow.attempts).where(FetchRow.status == "waiting"),
    _DUE,
)
_NEXT_DUE = (
    select(AgendaRow)
    .where(AgendaRow.status == "waiting")
    .order_by(col(AgendaRow.due_at), col(AgendaRow.rank), col(AgendaRow.id))
    .limit(1)
)

MOST_ROUNDS = 500
#: In the shortest, as many messages come up to be sent as may be sent at once.
SHORTEST_STEP_S, LONGEST_STEP_S = OVERALL_AHEAD / OVERALL_PER_SECOND, 1.0


@dataclass(frozen=True, slots=True)
class Call:
    """One call that Telegram took in: when by the bot's clock, and what it answered."""

    at: datetime
    method: str
    fields: Mapping[str, Any]
    result: Any


class Recorded(TelegramTransport):
    """The line to the server, with a record of what went over it."""

    def __init__(self, url: str, clock: DrivenClock) -> None:
        super().__init__(TOKEN, url)
        self._clock = clock
        self.calls: list[Call] = []
        self.turned_away: list[Call] = []

    async def call(
        self,
        method: str,
        payload: dict[str, Any],
        files: Mapping[str, tuple[str, bytes]] | None = None,
    ) -> Any:
        at = self._clock.now()
        try:
            result = await super().call(method, payload, files)
        except Forbidden as refusal:
            self.turned_away.append(Call(at, method, payload, refusal))
            raise
        if method not in ("getUpdates", "getFile"):
            self.calls.append(Call(at, method, payload, result))
        return result


class DrivenBot:
    """The bot on a database of its own. `await bot.until(...)` lets time pass."""

    def __init__(
        self, telegram: Telegram, database_url: str, start: datetime, photo_dir: Path
    ) -> None:
        self.clock = DrivenClock(start)
        self.line = Recorded(telegram.url, self.clock)
        self.engine = make_engine(database_url)
        if is_sqlite(self.engine):
            event.listen(self.engine, "connect", _without_waiting_for_the_disk)
        settings = Settings.model_validate(
            {
                "bot_token": TOKEN, "database_url": database_url, "api_base_url": telegram.url,
                "photo_dir": photo_dir,
            }
        )  # fmt: skip
        self._app = App(settings, self.engine, self.line, USE_CASES, self.clock)
        self._poller = Poller(self.engine, self.line, self.clock, lambda: None)
        self._telegram = telegram

    async def __aenter__(self) -> DrivenBot:
        await asyncio.to_thread(upgrade_to_head, self.engine)
        self._app.username = (await self.line.call("getMe", {}))["username"]
        return self

    async def __aexit__(self, *_: object) -> None:
        await self._app.worker.close()
        await self._app.sender.close()
        await self.line.close()
        self.engine.dispose()

    @property
    def now(self) -> datetime:
        return self.clock.now()

    def session(self) -> Session:
        return Session(self.engine, expire_on_commit=False)

    async def until(self, moment: datetime) -> None:
        """Let time pass to then, each duty done at the instant at which it falls due."""
        await self.drain()
        while (due := self._next_due()) is not None and due.due_at <= moment:
            self.clock.move_to(max(due.due_at, self.now))
            await self.drain()
            again = self._next_due()
            assert again is None or (again.id, again.due_at) != (due.id, due.due_at), (
                f"the duty {due.kind} fails again and again"
            )
        self.clock.move_to(max(moment, self.now))
        await self.drain()

    async def later(self, **span: float) -> None:
        await self.until(self.now + timedelta(**span))

    async def drain(self) -> None:
        """Until all that people did is answered and all that is due by now is done and sent."""
        for _ in range(MOST_ROUNDS):
            await self._take_in()
            work = self._open_work()
            if not work:
                return
            sent = len(self.line.calls) + len(self.line.turned_away)
            await self._app.worker.step()
            await asyncio.gather(
                self._app.worker.drain(), self._app.duties.tick(), self._app.fetcher.step()
            )
            wait = await self._app.sender.step()
            await self._app.sender.drain()
            moved = len(self.line.calls) + len(self.line.turned_away) != sent
            if not moved and wait > 0 and self._open_work() == work:
                wait = min(max(wait, SHORTEST_STEP_S), LONGEST_STEP_S)
                self.clock.advance(timedelta(seconds=wait))
        waits = self._open_work()[:5]
        raise AssertionError(f"the bot did not come to rest at {self.now}; there waits {waits}")

    async def _take_in(self) -> None:
        while not self._has_come_in(self._telegram.last_update):
            if self._telegram.last_update == 0:
                return
            await self._poller.poll_once()

    def _open_work(self) -> list[Any]:
        """What waits to be done now, by row and attempt."""
        now = self.now
        with self.session() as session:
            return [
                (number, *row)
                for number, query in enumerate(_OPEN)
                for row in session.exec(query, params={"now": now} if query is _DUE else None)
            ]

    def _has_come_in(self, update: int) -> bool:
        with self.session() as session:
            return session.get(InboxRow, update) is not None

    def _next_due(self) -> AgendaRow | None:
        with self.session() as session:
            return session.exec(_NEXT_DUE).first()


def _without_waiting_for_the_disk(connection: sqlite3.Connection, _record: object) -> None:
    connection.execute("PRAGMA synchronous = OFF").close()
