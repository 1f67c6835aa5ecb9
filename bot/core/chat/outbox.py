"""Writing to the outbox: the only way anything reaches a chat.

Rows are written in the caller's transaction, so a message exists exactly when what it speaks of does.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import asdict, dataclass, fields
from datetime import date
from typing import Any

from sqlalchemy import ColumnElement, Exists, bindparam, exists
from sqlalchemy.orm.attributes import instance_state
from sqlmodel import Session, col, select

from bot.core.chat.buttons import CALLBACK_DATA_LIMIT_BYTES, NO_DATA, CallbackData
from bot.core.turn import Turn
from bot.store.remembering import remember, remembered, remembered_row
from bot.store.tables.people import Person
from bot.store.tables.traffic import OutboxRow, TopicKind, Urgency
from bot.words.figures import END, START
from bot.words.languages import language


@dataclass(frozen=True, slots=True)
class Topic:
    """What a message is on: of several on one topic that have not been sent yet, only the latest is.

    `about` is the id of what the kind names; `beside` and `day` set apart what it says so of.
    """

    kind: TopicKind
    about: int
    beside: int | None = None
    day: date | None = None

    @classmethod
    def of(cls, row: OutboxRow) -> Topic | None:
        if row.topic is None or row.topic_about is None:
            return None
        return cls(TopicKind(row.topic), row.topic_about, row.topic_beside, row.topic_day)

    def mark(self, row: OutboxRow) -> None:
        """Put a message on this topic."""
        row.topic, row.topic_about = self.kind, self.about
        row.topic_beside, row.topic_day = self.beside, self.day


def on(topic: Topic) -> tuple[ColumnElement[bool], ...]:
    """The conditions under which a row of the outbox is on this topic."""
    return _on(**asdict(topic))


def _on(*, kind: Any, about: Any, beside: Any, day: Any) -> tuple[ColumnElement[bool], ...]:
    return (
        col(OutboxRow.topic) == kind,
        col(OutboxRow.topic_about) == about,
        col(OutboxRow.topic_beside).is_not_distinct_from(beside),
        col(OutboxRow.topic_day).is_not_distinct_from(day),
    )


#: The same for a statement that is built once: the topic's fields are its values.
ON_TOPIC = _on(**{one.name: bindparam(one.name) for one in fields(Topic)})


TEXT_LIMIT = 4096
CAPTION_LIMIT = 1024
MOST_IN_AN_ALBUM = 10
WRITTEN = "written"  # where a session remembers which rows were written in it
#: States of a row whose message has reached its chat, or may have.
ARRIVED = ("sending", "sent")


_WAITING = select(OutboxRow).where(*ON_TOPIC, OutboxRow.status == "waiting")
_SAID = select(OutboxRow).where(OutboxRow.dedupe == bindparam("dedupe"))


@dataclass(frozen=True, slots=True)
class Button:
    """A button under a message: what it says, and what comes back when it is tapped (a `Route`)."""

    label: str
    data: CallbackData = NO_DATA
    url: str = ""

    def __post_init__(self) -> None:
        if len(self.data.encode()) > CALLBACK_DATA_LIMIT_BYTES:
            raise ValueError("a button's data may hold 64 bytes at most")
        if bool(self.data) == bool(self.url):
            raise ValueError("a button has either data or an address")

    def as_dict(self) -> dict[str, str]:
        return {"text": self.label} | (
            {"callback_data": self.data} if self.data else {"url": self.url}
        )


Buttons = Sequence[Sequence[Button]]


def _keyboard(buttons: Buttons) -> dict[str, Any]:
    return {"inline_keyboard": [[button.as_dict() for button in row] for row in buttons if row]}


@dataclass(frozen=True, slots=True, kw_only=True)
class Delivery:
    """How a message goes out.

    `silent`: without a sound. `topic`: it takes the place of those on it that have not been sent yet.
    `dedupe`: what is said under this name is said once. `decision_id`: the decision that it tells of.
    An urgent one overtakes what else waits, in this chat and in all others. What is neither urgent nor
    anything else is as urgent as what it answers.
    """

    silent: bool = False
    topic: Topic | None = None
    dedupe: str | None = None
    decision_id: int | None = None
    urgency: Urgency = Urgency.ORDINARY

    def quiet(self) -> dict[str, Any]:
        """What Telegram is told of it."""
        return {"disable_notification": True} if self.silent else {}


AS_EVER, SILENTLY = Delivery(), Delivery(silent=True)


@dataclass(frozen=True, slots=True)
class Shown:
    """A message that stands in a chat: by its Telegram id, or by the outbox row that sent it.

    Edits of it on one `topic` take the place of each other until they are sent.
    """

    chat_id: int
    message_id: int | None = None
    outbox_id: int | None = None
    topic: Topic | None = None

    def __post_init__(self) -> None:
        if (self.message_id is None) == (self.outbox_id is None):
            raise ValueError("name the message by exactly one of message_id and outbox_id")


def say(
    turn: Turn, *, chat_id: int, text: str, buttons: Buttons = (), how: Delivery = AS_EVER
) -> OutboxRow:
    """A new message."""
    payload = _text(text)
    if buttons:
        payload["reply_markup"] = _keyboard(buttons)
    return _put(turn, how, chat_id=chat_id, method="sendMessage", payload=payload | how.quiet())


def edit(turn: Turn, message: Shown, *, text: str, buttons: Buttons = ()) -> OutboxRow:
    """Rewrite a message that was sent."""
    payload = {**_text(text), "reply_markup": _keyboard(buttons)}
    if message.message_id is not None:
        payload["message_id"] = message.message_id
    number = message.outbox_id
    edited = turn.session.get(OutboxRow, number) if number is not None else None
    urgency = Urgency(edited.urgency) if edited is not None else Urgency.ORDINARY
    return _put(
        turn, Delivery(topic=message.topic, urgency=urgency), chat_id=message.chat_id,
        method="editMessageText", payload=payload, edits_outbox_id=number,
    )  # fmt: skip


def send_document(
    turn: Turn,
    *,
    chat_id: int,
    document: dict[str, Any],
    caption: str = "",
    how: Delivery = AS_EVER,
) -> OutboxRow:
    """A file, named by what it is made of (`bot.files`) and made when it is sent."""
    return _put(
        turn, how, chat_id=chat_id, method="sendDocument", payload=_captioned(caption) | how.quiet(),
        attached={"document": _in_this_language(document)},
    )  # fmt: skip


def send_pictures(
    turn: Turn,
    *,
    chat_id: int,
    pictures: Sequence[dict[str, Any]],
    caption: str = "",
    how: Delivery = AS_EVER,
) -> OutboxRow:
    """One to ten pictures as one message with one caption; named as in `send_document`."""
    if not 1 <= len(pictures) <= MOST_IN_AN_ALBUM:
        raise ValueError("a message holds one to ten pictures")
    words = _captioned(caption)
    named = [_in_this_language(picture) for picture in pictures]
    if len(named) == 1:
        return _put(
            turn, how, chat_id=chat_id, method="sendPhoto", payload=words | how.quiet(),
            attached={"photo": named[0]},
        )  # fmt: skip
    attached = {f"picture{number}": picture for number, picture in enumerate(named)}
    media: list[dict[str, Any]] = [
        {"type": "photo", "media": f"attach://{name}"} for name in attached
    ]
    media[0] |= words
    return _put(
        turn, how, chat_id=chat_id, method="sendMediaGroup", payload={"media": media} | how.quiet(),
        attached=attached,
    )  # fmt: skip


def answer_tap(turn: Turn, *, chat_id: int, tap_id: str, text: str = "") -> OutboxRow:
    """Stop the button's spinner, with a few words where they help (200 characters at most); words that
    a use case has for it only later go along.
    """
    payload = {"callback_query_id": tap_id} | ({"text": text[:200]} if text else {})
    once = Delivery(dedupe=f"tap:{tap_id}")
    row = _put(turn, once, chat_id=chat_id, method="answerCallbackQuery", payload=payload)
    if text and row in said_in(turn.session):
        row.payload = payload
    return row


def set_menu(turn: Turn, *, chat_id: int, commands: Sequence[tuple[str, str]]) -> OutboxRow:
    """The command menu of this one chat: (command, what it does), in order."""
    payload: dict[str, Any] = {
        "commands": [{"command": name, "description": text} for name, text in commands],
        "scope": {"type": "chat", "chat_id": chat_id},
    }
    remember(turn.session, (Person, _menu_of(chat_id), payload))
    topic = Topic(TopicKind.MENU, chat_id)
    return _put(
        turn, Delivery(topic=topic), chat_id=chat_id, method="setMyCommands", payload=payload
    )


#: The last menu of a chat, as a statement of its own or as a part of another. Built once: building a
#: statement costs as much as asking it.
LAST_MENU = (
    select(OutboxRow.payload)
    .where(OutboxRow.topic == TopicKind.MENU, OutboxRow.topic_about == bindparam("chat"))
    .order_by(col(OutboxRow.id).desc())
    .limit(1)
)


def menu_shown(session: Session, chat_id: int) -> list[tuple[str, str]]:
    """The command menu that this chat was given last, as for `set_menu`."""
    last = remembered_row(session, Person, _menu_of(chat_id), LAST_MENU, chat=chat_id)
    return [(c["command"], c["description"]) for c in last["commands"]] if last else []


def menu_was_read(session: Session, chat_id: int, payload: dict[str, Any] | None) -> None:
    """What `LAST_MENU` brought along with something else."""
    remember(session, (Person, _menu_of(chat_id), payload))


def _menu_of(chat_id: int) -> tuple[object, ...]:
    return "menu", chat_id


def drop_waiting(session: Session, topic: Topic) -> None:
    """Drop what waits on this topic: what it said no longer holds."""
    if not remembered(session, OutboxRow, _waits(topic.kind, topic.about), lambda: True):
        return
    for row in session.exec(_WAITING, params=asdict(topic)).all():
        row.status = "dropped"


def some_wait(kind: TopicKind, about: Any) -> Exists:
    """Whether messages of this kind about it have not been sent yet, as a part of a statement that
    reads something else; what it found is told by `were_found_to_wait`.
    """
    return exists().where(
        col(OutboxRow.topic) == kind,
        col(OutboxRow.topic_about) == about,
        col(OutboxRow.status) == "waiting",
    )


def were_found_to_wait(session: Session, kind: TopicKind, about: int, *, some: bool) -> None:
    remember(session, (OutboxRow, _waits(kind, about), some))


def _waits(kind: TopicKind, about: int) -> tuple[object, ...]:
    return "waits", kind, about


def _put(turn: Turn, how: Delivery, **columns: Any) -> OutboxRow:
    """A row with these columns, unless that was said before."""
    session = turn.session
    if how.dedupe is not None:
        said = _said(session, how.dedupe)
        if said is not None:
            return said
    if how.topic is not None:
        drop_waiting(session, how.topic)
    row = OutboxRow(
        **columns,
        dedupe=how.dedupe,
        decision_id=how.decision_id,
        urgency=how.urgency or turn.context.urgency,
        not_before=turn.now,
        created_at=turn.now,
    )
    if how.topic is not None:
        how.topic.mark(row)
    session.add(row)
    session.info.setdefault(WRITTEN, []).append(row)
    return row


def _said(session: Session, dedupe: str) -> OutboxRow | None:
    """What was said under this name before, be it in this transaction."""
    for row in said_in(session):
        if row.dedupe == dedupe:
            return row
    with session.no_autoflush:  # nothing has to be written in order to look for it
        return session.exec(_SAID, params={"dedupe": dedupe}).first()


_SAID_SINCE = select(OutboxRow.id).where(
    OutboxRow.chat_id == bindparam("chat"),
    OutboxRow.method == "sendMessage",
    col(OutboxRow.status) != "dropped",
    col(OutboxRow.id) > bindparam("since"),
)


def said_since(session: Session, chat_id: int, outbox_id: int | None) -> bool:
    """Whether anything was said in this chat after that message."""
    asked = {"chat": chat_id, "since": outbox_id or 0}
    return session.exec(_SAID_SINCE, params=asked).first() is not None


def numbers_of(rows: Sequence[OutboxRow]) -> list[int]:
    """Of rows that were committed, which the log tells of a use case; those of somebody whose data went
    with it may be gone, and are told of all the same.
    """
    return [key[0] for row in rows if (key := instance_state(row).identity)]


def said_in(session: Session) -> Sequence[OutboxRow]:
    """What has been said in this transaction so far, in order."""
    return tuple(session.info.get(WRITTEN, ()))


def _in_this_language(named: dict[str, Any]) -> dict[str, Any]:
    """What a file is made of, and the language that its words are to be in."""
    return named | {"language": language()}


def _captioned(caption: str) -> dict[str, Any]:
    return {"caption": _fitting(caption, CAPTION_LIMIT)} if caption else {}


def _text(text: str) -> dict[str, Any]:
    """The text as a payload, with what is a table in it (`bot.words.figures`) in type of one width."""
    plain, entities = "", []
    for number, part in enumerate(_TABLE.split(_fitting(text))):
        if number % 2 and part:
            entities.append({"type": "pre", "offset": units(plain), "length": units(part)})
        plain += part
    return {"text": plain} | ({"entities": entities} if entities else {})


_TABLE = re.compile(f"[{START}{END}]")


def units(text: str) -> int:
    """As Telegram counts: UTF-16 units, of which an emoji takes two."""
    return len(text.encode("utf-16-le")) // 2


def _fitting(text: str, limit: int = TEXT_LIMIT) -> str:
    encoded = text.encode("utf-16-le")
    if len(encoded) <= 2 * limit:
        return text
    return encoded[: 2 * (limit - 1)].decode("utf-16-le", "ignore") + "…"
