"""A small world for tests of the use cases: people who write, a clock that is driven, a real database.

What people do goes through the dispatcher as it would from the inbox; what the bot says is read
from the outbox. Nothing of the project is replaced.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

import sqlalchemy
from sqlalchemy import Engine, Row, Select, bindparam, func
from sqlmodel import Session, col, select

from bot.core.timing import agenda
from bot.core.turn import ChatTurn, Context, Incoming, Kind, SentFile, Turn
from bot.dispatcher import USE_CASES
from bot.store.db import transaction
from bot.store.tables.traffic import AgendaRow, OutboxRow
from bot.words.common import Media
from bot.words.languages import ENGLISH
from tests.support.foreign import FOREIGN


@dataclass(frozen=True)
class Said:
    """One message of the bot, as its reader sees it."""

    outbox_id: int
    method: str
    text: str
    buttons: dict[str, str]  # label -> data
    silent: bool
    payload: dict[str, Any]


@dataclass
class World:
    """Everything that happens, in order, at a time that only the test moves."""

    engine: Engine
    now: datetime
    updates: int = 1000
    read_up_to: dict[int, int] = field(default_factory=dict)
    photo_dir: Path | None = None
    waited: timedelta = timedelta(0)  # how long ago what comes in was sent

    @property
    def context(self) -> Context:
        return Context(now=self.now, bot_username="brimline_test_bot", photo_dir=self.photo_dir)

    def session(self) -> Session:
        return Session(self.engine, expire_on_commit=False)

    def happen(self, incoming: Incoming) -> None:
        with transaction(self.engine) as session:
            USE_CASES.incoming(ChatTurn(session, self.context, incoming))

    def until(self, moment: datetime) -> None:
        """Let time pass: every duty is done at the instant at which it falls due."""
        while True:
            due = self.read(_NEXT_DUE, moment=moment)
            if not due:
                break
            number, due_at = due[0]
            self.now = max(self.now, due_at)
            with transaction(self.engine) as session:
                taken = agenda.take(session, number, self.now)
                assert taken is not None
                USE_CASES.due(Turn(session, self.context), taken)
        self.now = max(self.now, moment)

    def later(self, **span: float) -> None:
        self.until(self.now + timedelta(**span))

    def read(self, query: Select[Any], **params: object) -> Sequence[Row[Any]]:
        """Columns as they are: what every act of a test asks, without the cost of mapped rows."""
        with self.engine.connect() as connection:
            return connection.execute(query, params).all()


_NEXT_DUE = (
    sqlalchemy.select(col(AgendaRow.id), col(AgendaRow.due_at))
    .where(AgendaRow.status == "waiting", col(AgendaRow.due_at) <= bindparam("moment"))
    .order_by(col(AgendaRow.due_at), col(AgendaRow.rank), col(AgendaRow.id))
    .limit(1)
)
_TO_A_PERSON = (
    OutboxRow.chat_id == bindparam("chat"),
    col(OutboxRow.method).in_(["sendMessage", "editMessageText"]),
    col(OutboxRow.status) != "dropped",
)
_TOLD_LAST = sqlalchemy.select(func.max(OutboxRow.id)).where(*_TO_A_PERSON)
_TOLD = (
    sqlalchemy.select(col(OutboxRow.id), col(OutboxRow.method), col(OutboxRow.payload))
    .where(*_TO_A_PERSON, col(OutboxRow.id) > bindparam("since"))
    .order_by(col(OutboxRow.id))
)


@dataclass
class Someone:
    """A person with a private chat."""

    world: World
    user_id: int
    name: str
    message_ids: int = 0
    language: str = ""  # as their Telegram is set

    def __post_init__(self) -> None:
        # Two languages in every test, so that what is written for the wrong reader is noticed.
        self.language = self.language or (FOREIGN if self.user_id % 2 else ENGLISH)

    def writes(
        self,
        text: str,
        kind: Kind = Kind.TEXT,
        message_id: int | None = None,
        *,
        media: Media | str | None = None,
        reply_to: int | None = None,
    ) -> list[Said]:
        """Send a text (or a sticker, or an edit); returns what the bot says to this person then."""
        if message_id is None:
            self.message_ids += 1
            message_id = self.message_ids
        return self._do(
            kind, text, message_id, None, media=Media(media) if media else None,
            reply_to=reply_to,
        )  # fmt: skip

    def taps(self, label: str, said: Said | None = None) -> list[Said]:
        """Press the button with this label under `said`, or under the newest message that has it."""
        message = said or next(m for m in reversed(self.all_said()) if label in m.buttons)
        return self.presses(message.buttons[label], message.outbox_id)

    def presses(self, data: str, message_id: int = 1) -> list[Said]:
        return self._do(Kind.TAP, data, message_id, f"tap-{self.world.updates}")

    def sends(self, file: SentFile, caption: str = "") -> list[Said]:
        """Send a file, which then waits to be fetched (`tests.support.files`)."""
        self.message_ids += 1
        return self._do(Kind.FILE, caption, self.message_ids, None, file)

    def _do(
        self,
        kind: Kind,
        text: str,
        message_id: int | None,
        tap: str | None,
        file: SentFile | None = None,
        **more: Any,
    ) -> list[Said]:
        self._has_heard_everything()
        self.world.updates += 1
        self.world.happen(
            Incoming(
                update_id=self.world.updates,
                chat_id=self.user_id,
                private=True,
                user_id=self.user_id,
                first_name=self.name,
                language=self.language,
                kind=kind,
                text=text,
                message_id=message_id,
                tap_id=tap,
                sent_at=self.world.now - self.world.waited,
                file=file,
                **more,
            )
        )
        return self.hears()

    def hears(self) -> list[Said]:
        """What the bot has said to this person since the last look (answers to taps left out)."""
        new = self.all_said(since=self.world.read_up_to.get(self.user_id, 0))
        if new:
            self.world.read_up_to[self.user_id] = new[-1].outbox_id
        return new

    def _has_heard_everything(self) -> None:
        ((last,),) = self.world.read(_TOLD_LAST, chat=self.user_id)
        if last is not None:
            self.world.read_up_to[self.user_id] = last

    def all_said(self, *, since: int = 0) -> list[Said]:
        """Every message to this person that was not dropped, oldest first; those after `since`."""
        return [_said(*row) for row in self.world.read(_TOLD, chat=self.user_id, since=since)]

    def answers_to_taps(self) -> list[str]:
        query = select(OutboxRow).where(
            OutboxRow.chat_id == self.user_id, OutboxRow.method == "answerCallbackQuery"
        )
        with self.world.session() as session:
            rows = session.exec(query.order_by(col(OutboxRow.id)))
            return [row.payload.get("text", "") for row in rows]


def _said(number: int, method: str, payload: dict[str, Any]) -> Said:
    keyboard = payload.get("reply_markup", {}).get("inline_keyboard", [])
    buttons = {
        b["text"]: b.get("callback_data", b.get("url", "")) for line in keyboard for b in line
    }
    return Said(
        outbox_id=number,
        method=method,
        text=payload.get("text", ""),
        buttons=buttons,
        silent=bool(payload.get("disable_notification")),
        payload=payload,
    )


def text_of(messages: list[Said]) -> str:
    return "\n---\n".join(m.text for m in messages)
