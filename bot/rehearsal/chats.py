"""The chats as they stand on people's screens, in place of a Bot API server."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from typing import Any

from sqlmodel import Session, col, select
from telegram.error import BadRequest

from bot.core.chat.outbox import TEXT_LIMIT
from bot.store.tables.traffic import InboxRow, OutboxRow
from bot.telegram.transport import Files

FIRST_MESSAGE_ID = 1


@dataclass(frozen=True, slots=True)
class Key:
    """A button as it stands under a message."""

    label: str
    data: str


@dataclass(frozen=True, slots=True)
class Message:
    """A message of the bot's in one chat, as it reads now. `keys` are rows of buttons."""

    chat_id: int
    message_id: int
    text: str
    keys: tuple[tuple[Key, ...], ...] = ()
    silent: bool = False


class Happening(StrEnum):
    ARRIVED = "arrived"
    CHANGED = "changed"
    POPPED_UP = "popped-up"  # a few words over the screen after a button was pressed


Show = Callable[[Happening, Message, Message | None], None]  # what, as it reads now, and before


class Chats:
    """Takes the calls that a Bot API server would take, and refuses what that would refuse."""

    def __init__(self, show: Show) -> None:
        self.show = show
        self.calls = 0
        self.menus: dict[int, list[tuple[str, str]]] = {}
        self._messages: dict[int, dict[int, Message]] = {}
        self._next_id = FIRST_MESSAGE_ID
        self._pressed_in: dict[str, int] = {}

    async def call(self, method: str, payload: dict[str, Any], files: Files | None = None) -> Any:
        """One Bot API call; its result, or BadRequest where Telegram would refuse it."""
        self.calls += 1
        if files:
            return self._sent(_in_words(payload, files))
        match method:
            case "sendMessage":
                return self._sent(payload)
            case "editMessageText":
                return self._edited(payload)
            case "answerCallbackQuery":
                return self._popped_up(payload)
            case "setMyCommands":
                self.menus[payload["scope"]["chat_id"]] = [
                    (command["command"], command["description"]) for command in payload["commands"]
                ]
                return True
        raise BadRequest(f"a rehearsal knows no method {method}")

    async def download(self, file_id: str, most_bytes: int) -> bytes:
        """Nobody sends files in a terminal."""
        del file_id, most_bytes
        raise BadRequest("a rehearsal has no files")

    def new_message_id(self) -> int:
        """The id of the next message, whoever writes it."""
        taken, self._next_id = self._next_id, self._next_id + 1
        return taken

    def note_press(self, tap_id: str, chat_id: int) -> None:
        """Remember in which chat a button was pressed: the answer names the press only."""
        self._pressed_in[tap_id] = chat_id

    def messages(self, chat_id: int) -> Sequence[Message]:
        """The bot's messages in this chat, the oldest first."""
        return list(self._messages.get(chat_id, {}).values())

    def with_keys(self, chat_id: int) -> list[Message]:
        """The messages that have buttons, the newest first."""
        return [message for message in reversed(self.messages(chat_id)) if message.keys]

    def restore(self, session: Session) -> None:
        """Put the messages of an earlier sitting back on the screens, without showing them."""
        show, self.show = self.show, _show_nothing
        try:
            sent = select(OutboxRow).where(OutboxRow.status == "sent").order_by(col(OutboxRow.id))
            for row in session.exec(sent):
                self._restore(row)
        finally:
            self.show = show
        inbox_ids = [
            row.raw.get("message", {}).get("message_id", 0)
            for row in session.exec(select(InboxRow))
        ]
        shown_ids = [id_ for chat in self._messages.values() for id_ in chat]
        self._next_id = max([FIRST_MESSAGE_ID - 1, *inbox_ids, *shown_ids]) + 1

    def _restore(self, row: OutboxRow) -> None:
        if row.method == "setMyCommands":
            self.menus[row.chat_id] = [
                (command["command"], command["description"]) for command in row.payload["commands"]
            ]
        if row.message_id is not None:
            self._messages.setdefault(row.chat_id, {})[row.message_id] = _as_message(
                row.payload, row.chat_id, row.message_id
            )

    def _sent(self, payload: dict[str, Any]) -> dict[str, Any]:
        message = _as_message(payload, payload["chat_id"], self.new_message_id())
        self._messages.setdefault(message.chat_id, {})[message.message_id] = message
        self.show(Happening.ARRIVED, message, None)
        return {"message_id": message.message_id, "chat": {"id": message.chat_id}}

    def _edited(self, payload: dict[str, Any]) -> dict[str, Any]:
        chat_id, message_id = payload["chat_id"], payload["message_id"]
        before = self._messages.get(chat_id, {}).get(message_id)
        if before is None:
            raise BadRequest("Message to edit not found")
        after = replace(_as_message(payload, chat_id, message_id), silent=before.silent)
        if after == before:
            raise BadRequest("Message is not modified")
        self._messages[chat_id][message_id] = after
        self.show(Happening.CHANGED, after, before)
        return {"message_id": message_id, "chat": {"id": chat_id}}

    def _popped_up(self, payload: dict[str, Any]) -> bool:
        chat_id = self._pressed_in.pop(payload["callback_query_id"], None)
        if chat_id is None:
            raise BadRequest("Query is too old and response timeout expired or query ID is invalid")
        if payload.get("text"):
            self.show(Happening.POPPED_UP, Message(chat_id, 0, payload["text"]), None)
        return True


def _in_words(payload: dict[str, Any], files: Files) -> dict[str, Any]:
    """A message with files, for a terminal: their names, and the words under them."""
    first = next(iter(payload.get("media", [])), payload)
    names = ", ".join(name for name, _ in files.values())
    text = f"[{names}] {first.get('caption', '')}".strip()
    return {key: value for key, value in payload.items() if key != "media"} | {"text": text}


def _as_message(payload: dict[str, Any], chat_id: int, message_id: int) -> Message:
    text = payload["text"]
    if not text.strip():
        raise BadRequest("Message text is empty")
    if len(text) > TEXT_LIMIT:
        raise BadRequest("Message is too long")
    rows = payload.get("reply_markup", {}).get("inline_keyboard", [])
    keys = tuple(
        tuple(Key(key["text"], key.get("callback_data", "")) for key in row) for row in rows
    )
    return Message(chat_id, message_id, text, keys, bool(payload.get("disable_notification")))


def _show_nothing(_what: Happening, _now: Message, _before: Message | None) -> None:
    """For what has been shown already."""
