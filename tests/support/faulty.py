"""Everything that can go wrong around a running bot, drawn from a seed: the same again with the same.

The bot's own parts run on one database against a Bot API server that is not to be relied upon, on a
clock that somebody sets, and the power goes at any statement to the database. What is dead does nothing
more; the next life begins on what was committed. Each kind of chance is a stream of its own and threads
take turns, so that a seed does the same again.
"""

from __future__ import annotations

import asyncio
import itertools
import random
import sqlite3
import threading
from collections import Counter
from collections.abc import Mapping
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any

import psycopg
from sqlalchemy import Engine, event
from sqlmodel import Session, col, select
from telegram.error import NetworkError, RetryAfter, TimedOut

from bot.app import App
from bot.core.timing.clock import DrivenClock
from bot.core.timing.clock_watch import ClockWatch
from bot.dispatcher import USE_CASES
from bot.settings import Settings
from bot.store.db import is_sqlite, make_engine
from bot.store.tables.traffic import AgendaRow, InboxRow, OutboxRow
from bot.telegram.intake import Poller
from tests.support.chats import TOKEN

ROUNDS_TO_REST = 400


class PowerCut(BaseException):
    """The process is gone: nothing catches this on the way out."""


@dataclass
class Chances:
    """How likely each fault is at each of its occasions."""

    power: float = 0.004  # a statement
    lost_answer: float = 0.05  # a call: taken in, and the answer never heard
    not_taken: float = 0.05
    slow_down: float = 0.03
    clock_set: float = 0.05  # a step

    @classmethod
    def none(cls) -> Chances:
        return cls(0, 0, 0, 0, 0)


@dataclass
class Server:
    """Telegram: updates until they are confirmed, and what came into each chat."""

    chance: random.Random
    chances: Chances
    pending: dict[int, dict[str, Any]] = field(default_factory=dict)
    chats: dict[int, list[str]] = field(default_factory=dict)
    faults: Counter[str] = field(default_factory=Counter)
    dead: bool = False
    _ids: Any = field(default_factory=lambda: itertools.count(1000))

    def says(self, chat_id: int, name: str, text: str) -> int:
        """Somebody writes; returns the update's id."""
        number = next(self._ids)
        person = {"id": chat_id, "is_bot": False, "first_name": name, "language_code": "en"}
        self.pending[number] = {
            "update_id": number,
            "message": {
                "message_id": number,
                "date": 1_780_000_000,
                "chat": {"id": chat_id, "type": "private", "first_name": name},
                "from": person,
                "text": text,
            },
        }
        return number

    async def call(
        self, method: str, payload: dict[str, Any], files: Mapping[str, Any] | None = None
    ) -> Any:
        if self.dead:
            raise PowerCut
        if method == "getUpdates":
            confirmed = payload.get("offset", 0)
            self.pending = {n: u for n, u in self.pending.items() if n >= confirmed}
            self._maybe("not_taken", NetworkError("Bad Gateway"))
            return list(self.pending.values())[:100]
        self._maybe("not_taken", NetworkError("Bad Gateway"))
        self._maybe("slow_down", RetryAfter(timedelta(seconds=2)))
        text = payload.get("text") or payload.get("caption") or f"<{method}>"
        chat_id = payload.get("chat_id")
        if chat_id is not None:
            self.chats.setdefault(int(chat_id), []).append(str(text))
        self._maybe("lost_answer", TimedOut())
        return {"message_id": payload.get("message_id") or next(self._ids), "chat": {"id": chat_id}}

    async def download(self, file_id: str, most_bytes: int) -> bytes:
        raise NetworkError("away")

    def _maybe(self, fault: str, error: Exception) -> None:
        if self.chance.random() < getattr(self.chances, fault):
            self.faults[fault] += 1
            raise error


class Life:
    """What one process has open. Once it is over, no thread left of it can do anything more."""

    def __init__(self) -> None:
        self.over = False
        self._handles: list[Any] = []
        self._lock = threading.Lock()

    def opened(self, handle: Any) -> None:
        with self._lock:
            if not self.over:
                self._handles.append(handle)
                return
        handle.close()
        raise PowerCut

    def ends(self) -> None:
        """The system closes the files of a process that is gone."""
        with self._lock:
            self.over = True
        while self._handles:
            handle = self._handles.pop()
            rolled_back(handle)
            handle.close()


def rolled_back(handle: Any, *_: Any) -> None:
    """To be done before a connection is closed: a cursor that some traceback still holds keeps a closed
    one alive, and with it the lock that its transaction has on the file, which no dead process does.
    """
    with suppress(sqlite3.ProgrammingError, psycopg.OperationalError):  # closed already
        handle.rollback()


class Lives:
    """One bot after another on the same database. `step` lets it work until it rests or dies."""

    def __init__(self, url: str, start: datetime, seed: int) -> None:
        self.chance = random.Random(seed)
        self.chances = Chances()
        self.power = random.Random(seed + 2)
        self.server = Server(random.Random(seed + 3), self.chances)
        self.clock = DrivenClock(start)
        self.url = url
        self._settings = Settings.model_validate(
            {
                "bot_token": TOKEN, "database_url": url, "photo_dir": None,
                "worker_threads": 1,
            }
        )  # fmt: skip
        self._in_turn = False
        self._life = Life()
        self.engine = self._engine(self._life)
        self._begin()

    def reliable(self) -> None:
        """From here on nothing goes wrong any more."""
        self.chances = self.server.chances = Chances.none()

    def session(self) -> Session:
        return Session(self.engine, expire_on_commit=False)

    async def step(self) -> None:
        """Do what is open; begin anew after a power cut."""
        if not self._in_turn:
            asyncio.get_running_loop().set_default_executor(ThreadPoolExecutor(1))
            self._in_turn = True
        if self.chance.random() < self.chances.clock_set:
            self.server.faults["clock_set"] += 1
            jump = timedelta(minutes=self.chance.choice([-10, -1, 1, 10]))
            self.clock.set(self.clock.now() + jump)
            await self._surviving(self._look_at_the_clock())
        await self._surviving(self._round())
        self.clock.advance(timedelta(seconds=1))

    async def rest(self) -> None:
        """Until nothing is open; with faults off that has to come."""
        for _ in range(ROUNDS_TO_REST):
            await self.step()
            if not self.server.pending and not self._open():
                return
        raise AssertionError(f"no rest: {self._open()}")

    async def close(self) -> None:
        await self.app.worker.close()
        self.engine.dispose()

    async def _surviving(self, work: Any) -> None:
        with suppress(PowerCut):
            await work
        if self.server.dead:
            await self.app.worker.close()
            self.app.sender.let_go()  # a dead process's lock is free
            self.poller._right.release()
            self.engine.dispose()
            self._life.ends()
            self._life = Life()
            self.engine = self._engine(self._life)
            self.server.dead = False
            self._begin()

    async def _round(self) -> None:
        with suppress(NetworkError, RetryAfter):
            await self.poller.poll_once()
        await self.app.worker.step()
        await self.app.worker.drain()
        await self.app.duties.tick()
        await self.app.sender.step()
        await self.app.sender.drain()

    async def _look_at_the_clock(self) -> None:
        looking = asyncio.ensure_future(self.watch.look())
        await asyncio.sleep(0)
        self.clock.advance(timedelta(seconds=1))
        await looking

    def _begin(self) -> None:
        self.app = App(self._settings, self.engine, self.server, USE_CASES, self.clock)
        self.app.username = "brimline_test_bot"
        self.poller = Poller(
            self.engine, self.server, self.clock, lambda: None, USE_CASES.how_urgent
        )
        self.watch = ClockWatch(self.engine, self.clock, lambda: None)

    def _engine(self, life: Life) -> Engine:
        engine = make_engine(self.url)

        def statement(*_: Any) -> None:
            if life.over or self.server.dead:
                raise PowerCut
            if self.power.random() < self.chances.power:
                self.server.faults["power"] += 1
                self.server.dead = True
                raise PowerCut

        if is_sqlite(engine):
            event.listen(engine, "connect", _without_waiting_for_the_disk)
        event.listen(engine, "connect", lambda handle, _record: life.opened(handle))
        event.listen(engine, "close", rolled_back)
        event.listen(engine, "before_cursor_execute", statement)
        event.listen(engine, "commit", lambda _connection: statement())
        return engine

    def _open(self) -> list[Any]:
        now = self.clock.now()
        with Session(self.engine) as session:
            return [
                *session.exec(select(InboxRow.update_id).where(InboxRow.status == "new")),
                *session.exec(
                    select(OutboxRow.id).where(col(OutboxRow.status).in_(("waiting", "sending")))
                ),
                *session.exec(
                    select(AgendaRow.kind).where(
                        AgendaRow.status == "waiting", AgendaRow.due_at <= now
                    )
                ),
            ]


def _without_waiting_for_the_disk(connection: Any, _record: object) -> None:
    connection.execute("PRAGMA synchronous = OFF").close()
