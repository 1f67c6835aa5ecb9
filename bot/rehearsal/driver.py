"""The whole bot on a clock that is driven: everything real but Telegram and the time.

What people do goes into the inbox as raw updates, as the intake would put it there; the worker, the
duties and the sender of `bot.app` then take their turns until nothing is left to do.
"""

from __future__ import annotations

import asyncio
import sqlite3
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from sqlalchemy import bindparam, event, exists, func, or_
from sqlalchemy.exc import DBAPIError
from sqlmodel import Session, col, select

from bot.app import App
from bot.core.timing.clock import DrivenClock
from bot.core.turn import Turn
from bot.dispatcher import USE_CASES
from bot.membership.invitations import invite_coach_command
from bot.rehearsal.chats import Chats, Key, Message, Show
from bot.rehearsal.script import CURTAIN, Player
from bot.settings import Settings
from bot.store.db import make_engine, transaction
from bot.store.migrate import upgrade_to_head
from bot.store.shares import shares_of
from bot.store.tables import setting
from bot.store.tables.people import Person
from bot.store.tables.traffic import AgendaRow, InboxRow, OutboxRow
from bot.telegram.intake import Intake

REACTION = timedelta(seconds=4)  # what anything a person does takes, by the driven clock
LONGEST_STEP_S = 1.0
STUCK_S = 60  # by the real clock
MOST_ROUNDS = 2_000

CLOCK = "rehearsal_clock"

# Made once: they are asked at every step.
_QUEUES = (InboxRow, OutboxRow, AgendaRow)
_DUE = col(AgendaRow.due_at) <= bindparam("now")
_FREE = or_(
    col(AgendaRow.claimed_until).is_(None), col(AgendaRow.claimed_until) <= bindparam("now")
)
_WAITS = select(
    exists().where(col(InboxRow.status) == "new"),
    exists().where(col(OutboxRow.status).in_(("waiting", "sending"))),
    exists().where(col(AgendaRow.status) == "waiting", _DUE, _FREE),
)
_NEXT_DUE = (
    select(AgendaRow)
    .where(AgendaRow.status == "waiting")
    .order_by(col(AgendaRow.due_at), col(AgendaRow.rank), col(AgendaRow.id))
    .limit(1)
)


class NotARehearsal(Exception):  # noqa: N818 - it says what the file is
    """A database that a rehearsal must not touch, with the sentence that says so."""


class Stuck(Exception):  # noqa: N818 - it says what the machinery is
    """The machinery did not come to rest."""


@dataclass(frozen=True, slots=True)
class Due:
    """The next thing that the clock will bring."""

    at: datetime
    kind: str
    subject: str


class Driver:
    """One rehearsal's world, in a file that is new or another rehearsal's; else NotARehearsal.

    To be closed at the end.
    """

    def __init__(self, file: Path, show: Show) -> None:
        self.chats = Chats(show)
        self._file = file
        settings = Settings.model_construct(
            database_url=f"sqlite:///{file}", worker_threads=1, photo_dir=None
        )
        is_new = not file.exists() or file.stat().st_size == 0
        try:
            self.engine = make_engine(settings.database_url)
        except OSError:
            raise NotARehearsal(f"{file} cannot be made there. Name another file.") from None
        event.listen(self.engine, "connect", _without_waiting_for_the_disk)
        self.clock = DrivenClock(self._take_up(is_new=is_new))
        self._app = App(settings, self.engine, self.chats, USE_CASES, self.clock)
        self._kept = self.clock.now()
        self._last_written: dict[int, int] = {}  # by chat: the message's id
        with Session(self.engine) as session:
            self.chats.restore(session)
            self._next_update = (session.exec(select(func.max(InboxRow.update_id))).one() or 0) + 1

    @property
    def is_new(self) -> bool:
        """Whether nobody is in it yet."""
        with Session(self.engine) as session:
            return session.exec(select(Person.id).limit(1)).first() is None

    def now(self, player: Player) -> datetime:
        """The time on this player's clocks."""
        return self.clock.now().astimezone(ZoneInfo(player.zone))

    def coach_invitation(self) -> str:
        """What `brimline invite coach` prints."""
        with transaction(self.engine) as session:
            return invite_coach_command(Turn(session, self._app.context()))

    async def says(self, player: Player, text: str) -> None:
        """A message typed into the player's chat."""
        message_id = self.chats.new_message_id()
        self._last_written[player.user_id] = message_id
        await self._comes_in(message=self._message(player, message_id, text))

    def has_written(self, player: Player) -> bool:
        """Whether there is a message of this player's to change."""
        return player.user_id in self._last_written

    async def edits(self, player: Player, text: str) -> None:
        """The player's last message changed to this. KeyError where they have written none."""
        message_id = self._last_written[player.user_id]
        changed = self._message(player, message_id, text) | {"edit_date": self._unix_time()}
        await self._comes_in(edited_message=changed)

    async def presses(self, player: Player, message: Message, key: Key) -> None:
        """A button under one of the bot's messages."""
        tap_id = f"press-{self._next_update}"
        self.chats.note_press(tap_id, player.user_id)
        await self._comes_in(
            callback_query={
                "id": tap_id,
                "from": _user(player),
                "chat_instance": str(player.user_id),
                "data": key.data,
                "message": {
                    "message_id": message.message_id,
                    "date": self._unix_time(),
                    "chat": _chat(player),
                    "text": message.text,
                },
            }
        )

    def next_due(self) -> Due | None:
        """What falls due next; None where nothing will."""
        with Session(self.engine) as session:
            row = session.exec(_NEXT_DUE).first()
        return Due(row.due_at, row.kind, row.subject) if row else None

    async def move_to(self, instant: datetime) -> None:
        """Let time pass until then, doing what falls due on the way at its own instant."""
        while (due := self.next_due()) is not None and due.at <= instant:
            before = due
            self.clock.move_to(max(due.at, self.clock.now()))
            await self.drain()
            if self.next_due() == before:
                raise Stuck(f"a timed duty ({before.kind}) fails again and again")
        self.clock.move_to(max(instant, self.clock.now()))
        await self.drain()

    async def drain(self) -> None:
        """Let worker, duties and sender take turns until all is said and done."""
        try:
            async with asyncio.timeout(STUCK_S):
                await self._drain()
        except TimeoutError:
            raise Stuck("the machinery did not come to rest") from None
        now = self.clock.now()
        if now != self._kept:
            with transaction(self.engine) as session:
                setting.keep(session, CLOCK, now.isoformat())
            self._kept = now

    async def close(self) -> None:
        """Give the file free."""
        await self._app.worker.close()
        await self._app.sender.close()
        self.engine.dispose()

    async def _drain(self) -> None:
        # Each has its turn only when there is something for it: a look is cheaper than a turn.
        app = self._app
        for _ in range(MOST_ROUNDS):
            open_work = self._open_work()
            if not open_work:
                return
            calls, wait = self.chats.calls, LONGEST_STEP_S
            if InboxRow in open_work:
                await app.worker.step()
                await app.worker.drain()
            if AgendaRow in open_work:
                await app.duties.tick()
            if OutboxRow in open_work:
                wait = await app.sender.step()
                await app.sender.drain()
            # Time passes where something waits for it: the pace of sending, a second attempt.
            if self.chats.calls == calls and self._open_work() == open_work and wait > 0:
                self.clock.advance(timedelta(seconds=min(wait, LONGEST_STEP_S)))
        raise Stuck("the machinery did not come to rest")

    def _open_work(self) -> set[type]:
        """The queues in which something waits to be done now."""
        with Session(self.engine) as session:
            waits = session.exec(_WAITS, params={"now": self.clock.now()}).one()
        return {queue for queue, there in zip(_QUEUES, waits, strict=True) if there}

    async def _comes_in(self, **update: Any) -> None:
        self.clock.advance(REACTION)
        raw = {"update_id": self._next_update, **update}
        self._next_update += 1
        Intake(self.engine, self.clock).store([raw])
        await self.drain()

    def _message(self, player: Player, message_id: int, text: str) -> dict[str, Any]:
        return {
            "message_id": message_id,
            "date": self._unix_time(),
            "chat": _chat(player),
            "from": _user(player),
            "text": text,
        }

    def _unix_time(self) -> int:
        return int(self.clock.now().timestamp())

    def _take_up(self, *, is_new: bool) -> datetime:
        """Bring the file into shape; returns the instant at which the rehearsal stands."""
        sending = shares_of(self.engine)
        if not sending.hold_alone():
            raise NotARehearsal(f"{self._file} is in use by another brimline; name another file.")
        sending.release()
        if not is_new:
            return self._kept_clock()
        upgrade_to_head(self.engine)
        with transaction(self.engine) as session:
            setting.keep(session, CLOCK, CURTAIN.isoformat())
        return CURTAIN

    def _kept_clock(self) -> datetime:
        try:
            with Session(self.engine) as session:
                kept = setting.kept(session, CLOCK)
        except DBAPIError:
            kept = ""
        if not kept:
            raise NotARehearsal(
                f"{self._file} is not a rehearsal's, so it is left alone. Name a file of its own."
            )
        upgrade_to_head(self.engine)
        return datetime.fromisoformat(kept)


def _without_waiting_for_the_disk(connection: sqlite3.Connection, _record: object) -> None:
    # A rehearsal need not outlive a power cut, and it is to be quick.
    connection.execute("PRAGMA synchronous = OFF").close()


def _user(player: Player) -> dict[str, Any]:
    return {"id": player.user_id, "is_bot": False, "first_name": player.name, "language_code": "en"}


def _chat(player: Player) -> dict[str, Any]:
    return {"id": player.user_id, "type": "private", "first_name": player.name}
