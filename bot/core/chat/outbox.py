"""Writing to the outbox: the only way anything reaches a chat.

Rows are written in the caller's transaction, so a message exists exactly when what it speaks of does.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import asdict, dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import Exists, bindparam, exists
from sqlalchemy.orm.attributes import instance_state
from sqlmodel import Session, col, select

from bot.core.chat.buttons import CALLBACK_DATA_LIMIT_BYTES, NO_DATA, CallbackData
from bot.core.chat.topics import ON_TOPIC, Topic
from bot.store.remembering import remember, remembered
from bot.store.tables.people import Person
from bot.store.tables.traffic import OutboxRow, TopicKind, Urgency
from bot.words.languages import language
from bot.words.tables import END, START

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


def say(
    session: Session,
    *,
    chat_id: int,
    text: str,
    now: datetime,
    buttons: Buttons = (),
    silent: bool = False,
    topic: Topic | None = None,
    dedupe: str | None = None,
    decision_id: int | None = None,
    urgency: Urgency = Urgency.ORDINARY,
) -> OutboxRow:
    """A new message. With `topic`, it takes the place of those on that topic not yet sent.

    An urgent one overtakes what else waits, in this chat and in all others.
    """
    payload = _text(text)
    if buttons:
        payload["reply_markup"] = _keyboard(buttons)
    if silent:
        payload["disable_notification"] = True
    return _put(
        session, chat_id, "sendMessage", payload, now=now, topic=topic, dedupe=dedupe,
        decision_id=decision_id, urgency=urgency,
    )  # fmt: skip


def edit(
    session: Session,
    *,
    chat_id: int,
    text: str,
    now: datetime,
    message_id: int | None = None,
    outbox_id: int | None = None,
    buttons: Buttons = (),
    topic: Topic | None = None,
) -> OutboxRow:
    """Rewrite a message that was sent: by its Telegram id, or by the outbox row that sent it.

    With `topic`, it takes the place of other edits on that topic not yet sent.
    """
    if (message_id is None) == (outbox_id is None):
        raise ValueError("name the message by exactly one of message_id and outbox_id")
    payload = {**_text(text), "reply_markup": _keyboard(buttons)}
    if message_id is not None:
        payload["message_id"] = message_id
    edited = session.get(OutboxRow, outbox_id) if outbox_id is not None else None
    return _put(
        session, chat_id, "editMessageText", payload, now=now, topic=topic,
        urgency=Urgency(edited.urgency) if edited is not None else Urgency.ORDINARY,
        edits=outbox_id,
    )  # fmt: skip


def send_document(
    session: Session,
    *,
    chat_id: int,
    document: dict[str, Any],
    now: datetime,
    caption: str = "",
    silent: bool = False,
    topic: Topic | None = None,
    dedupe: str | None = None,
) -> OutboxRow:
    """A file, named by what it is made of (`bot.documents`) and made when it is sent.

    With `topic`, it takes the place of those on that topic not yet sent.
    """
    words: dict[str, Any] = {"caption": _fitting(caption, CAPTION_LIMIT)} if caption else {}
    quiet: dict[str, Any] = {"disable_notification": True} if silent else {}
    return _put(
        session, chat_id, "sendDocument", words | quiet, now=now, topic=topic, dedupe=dedupe,
        attached={"document": _in_this_language(document)},
    )  # fmt: skip


def send_pictures(
    session: Session,
    *,
    chat_id: int,
    pictures: Sequence[dict[str, Any]],
    now: datetime,
    caption: str = "",
    silent: bool = False,
    dedupe: str | None = None,
) -> OutboxRow:
    """One to ten pictures as one message with one caption; named as in `send_document`."""
    if not 1 <= len(pictures) <= MOST_IN_AN_ALBUM:
        raise ValueError("a message holds one to ten pictures")
    words: dict[str, Any] = {"caption": _fitting(caption, CAPTION_LIMIT)} if caption else {}
    quiet: dict[str, Any] = {"disable_notification": True} if silent else {}
    named = [_in_this_language(picture) for picture in pictures]
    if len(named) == 1:
        return _put(
            session, chat_id, "sendPhoto", words | quiet, now=now, dedupe=dedupe,
            attached={"photo": named[0]},
        )  # fmt: skip
    attached = {f"picture{number}": picture for number, picture in enumerate(named)}
    media: list[dict[str, Any]] = [
        {"type": "photo", "media": f"attach://{name}"} for name in attached
    ]
    media[0] |= words
    return _put(
        session, chat_id, "sendMediaGroup", {"media": media} | quiet, now=now, dedupe=dedupe,
        attached=attached,
    )  # fmt: skip


def answer_tap(
    session: Session, *, chat_id: int, tap_id: str, now: datetime, text: str = ""
) -> OutboxRow:
    """Stop the button's spinner, with a few words where they help (200 characters at most)."""
    payload = {"callback_query_id": tap_id} | ({"text": text[:200]} if text else {})
    return _put(session, chat_id, "answerCallbackQuery", payload, now=now, dedupe=f"tap:{tap_id}")


def set_menu(
    session: Session, *, chat_id: int, commands: Sequence[tuple[str, str]], now: datetime
) -> OutboxRow:
    """The command menu of this one chat: (command, what it does), in order."""
    payload: dict[str, Any] = {
        "commands": [{"command": name, "description": text} for name, text in commands],
        "scope": {"type": "chat", "chat_id": chat_id},
    }
    remember(session, Person, _menu_of(chat_id), payload)
    return _put(
        session, chat_id, "setMyCommands", payload, now=now, topic=Topic(TopicKind.MENU, chat_id)
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
    last = remembered(
        session, Person, _menu_of(chat_id),
        lambda: session.exec(LAST_MENU, params={"chat": chat_id}).first(),
    )  # fmt: skip
    return [(c["command"], c["description"]) for c in last["commands"]] if last else []


def menu_was_read(session: Session, chat_id: int, payload: dict[str, Any] | None) -> None:
    """What `LAST_MENU` brought along with something else."""
    remember(session, Person, _menu_of(chat_id), payload)


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
    remember(session, OutboxRow, _waits(kind, about), some)


def _waits(kind: TopicKind, about: int) -> tuple[object, ...]:
    return "waits", kind, about


def _put(
    session: Session,
    chat_id: int,
    method: str,
    payload: dict[str, Any],
    *,
    now: datetime,
    topic: Topic | None = None,
    dedupe: str | None = None,
    decision_id: int | None = None,
    attached: dict[str, Any] | None = None,
    urgency: Urgency = Urgency.ORDINARY,
    edits: int | None = None,
) -> OutboxRow:
    if dedupe is not None:
        said = session.exec(_SAID, params={"dedupe": dedupe}).first()
        if said is not None:
            return said
    if topic is not None:
        drop_waiting(session, topic)
    row = OutboxRow(
        chat_id=chat_id,
        method=method,
        payload=payload,
        dedupe=dedupe,
        decision_id=decision_id,
        attached=attached,
        urgency=urgency,
        edits_outbox_id=edits,
        not_before=now,
        created_at=now,
    )
    if topic is not None:
        topic.mark(row)
    session.add(row)
    session.info.setdefault(WRITTEN, []).append(row)
    return row


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


def _text(text: str) -> dict[str, Any]:
    """The text as a payload, with what is a table in it (`bot.words.tables`) in type of one width."""
    plain, entities = "", []
    for number, part in enumerate(_TABLE.split(_fitting(text))):
        if number % 2 and part:
            entities.append({"type": "pre", "offset": _units(plain), "length": _units(part)})
        plain += part
    return {"text": plain} | ({"entities": entities} if entities else {})


_TABLE = re.compile(f"[{START}{END}]")


def _units(text: str) -> int:
    """As Telegram counts: UTF-16 units, of which an emoji takes two."""
    return len(text.encode("utf-16-le")) // 2


def _fitting(text: str, limit: int = TEXT_LIMIT) -> str:
    units = text.encode("utf-16-le")
    if len(units) <= 2 * limit:
        return text
    return units[: 2 * (limit - 1)].decode("utf-16-le", "ignore") + "…"
