"""A raw update -> what a person did, or nothing. Total: what cannot be read raises Unreadable."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from typing import Any

from telegram import (
    CallbackQuery,
    ChatMember,
    ChatMemberUpdated,
    MaybeInaccessibleMessage,
    Message,
    Update,
    User,
)
from telegram.ext import filters

from bot.core.turn import Incoming, Kind, SentFile
from bot.words.common import Media

ALLOWED_UPDATES = ["message", "edited_message", "callback_query", "my_chat_member"]

_GONE = (ChatMember.BANNED, ChatMember.LEFT)


class Unreadable(Exception):  # noqa: N818 - it says what the update is
    """An update that is not shaped as Telegram says."""


def update_id_of(raw: object) -> int | None:
    """The update's id, or None where there is none to be had."""
    return _id(raw.get("update_id")) if isinstance(raw, dict) else None


def chat_id_of(raw: dict[str, Any]) -> int | None:
    """The chat that an update came from, without reading the rest of it."""
    for name in ALLOWED_UPDATES:
        body = raw.get(name)
        if name == "callback_query" and isinstance(body, dict):
            body = body.get("message")
        chat = body.get("chat") if isinstance(body, dict) else None
        found = _id(chat.get("id")) if isinstance(chat, dict) else None
        if found is not None:
            return found
    return None


def said_in(raw: dict[str, Any]) -> str:
    """What was typed, or the data of a button that was tapped, without reading the rest of it."""
    for name in ("message", "edited_message", "callback_query"):
        body = raw.get(name)
        if isinstance(body, dict):
            said = body.get("text") or body.get("caption") or body.get("data")
            return said if isinstance(said, str) else ""
    return ""


def _id(found: object) -> int | None:
    """An id that a database can hold: Telegram's have 52 bits at most."""
    fits = isinstance(found, int) and not isinstance(found, bool) and abs(found) < 2**63
    return found if fits and isinstance(found, int) else None


def read(raw: dict[str, Any], received_at: datetime) -> Incoming | None:
    """What a person did; None for anything the bot has no business with. Raises Unreadable."""
    try:
        update = Update.de_json(raw, None)
        return _read(update, received_at)
    except Exception as error:
        # The library raises whatever it stumbles over: TypeError, KeyError, AttributeError, ...
        raise Unreadable(type(error).__name__) from error


def _read(update: Update, received_at: datetime) -> Incoming | None:
    if update.message is not None:
        return _message(update, update.message)
    if update.edited_message is not None:
        return _edited(update, update.edited_message)
    if update.callback_query is not None:
        return _tap(update, update.callback_query, received_at)
    if update.my_chat_member is not None:
        return _membership(update, update.my_chat_member)
    return None


def _message(update: Update, message: Message) -> Incoming | None:
    if message.migrate_to_chat_id is not None:
        new_id = str(message.migrate_to_chat_id)
        return _incoming(update, message, Kind.MOVED, new_id, message.date)
    if filters.StatusUpdate.ALL.check_update(update):
        return None
    text = message.text if message.text is not None else message.caption or ""
    file = _file(message)
    kind = Kind.TEXT if message.text is not None else Kind.OTHER if file is None else Kind.FILE
    came = _incoming(update, message, kind, text, message.date)
    if came is None:
        return None
    answered, quote = message.reply_to_message, message.quote
    return replace(
        came, file=file, media=_media(message) if kind is Kind.OTHER else None,
        reply_to=answered.message_id if answered is not None else None,
        quoted=_clean(quote.text) if quote is not None else "",
    )  # fmt: skip


def _media(message: Message) -> Media:
    """What a message without text and without a file that can be fetched is."""
    kinds = (
        (message.voice or message.audio, Media.VOICE),
        (message.video or message.video_note or message.animation, Media.VIDEO),
        (message.sticker, Media.STICKER),
        (message.location or message.venue, Media.PLACE),
        (message.contact, Media.CONTACT),
    )
    return next((kind for there, kind in kinds if there), Media.ELSE)


def _file(message: Message) -> SentFile | None:
    if message.photo:
        largest = max(message.photo, key=lambda size: size.width * size.height)
        return SentFile(file_id=largest.file_id, size=largest.file_size or 0, as_photo=True)
    document = message.document
    # What is sent as an animation has a document beside it, for old clients.
    if document is None or message.animation is not None:
        return None
    return SentFile(
        file_id=document.file_id,
        name=_clean(document.file_name or ""),
        mime=document.mime_type or "",
        size=document.file_size or 0,
    )


def _edited(update: Update, message: Message) -> Incoming | None:
    text = message.text if message.text is not None else message.caption or ""
    changed_at = message.edit_date or message.date
    return _incoming(update, message, Kind.EDITED, text, changed_at)


def _tap(update: Update, tap: CallbackQuery, received_at: datetime) -> Incoming | None:
    if tap.message is None or tap.data is None:
        return None
    came = _incoming(update, tap.message, Kind.TAP, tap.data, received_at)
    return replace(came, tap_id=tap.id) if came is not None else None


def _membership(update: Update, change: ChatMemberUpdated) -> Incoming | None:
    kind = Kind.BLOCKED if change.new_chat_member.status in _GONE else Kind.UNBLOCKED
    return _incoming(update, change, kind, "", change.date)


def _incoming(
    update: Update,
    source: Message | MaybeInaccessibleMessage | ChatMemberUpdated,
    kind: Kind,
    text: str,
    sent_at: datetime,
) -> Incoming | None:
    user: User | None = update.effective_user
    if user is None or (user.is_bot and kind is not Kind.MOVED):
        return None
    return Incoming(
        update_id=update.update_id,
        chat_id=source.chat.id,
        private=source.chat.type == "private",
        user_id=user.id,
        first_name=_clean(user.first_name),
        initial=_clean(user.last_name or "").strip()[:1].upper(),
        language=user.language_code,
        kind=kind,
        text=_clean(text),
        tap_id=None,
        message_id=None if isinstance(source, ChatMemberUpdated) else source.message_id,
        sent_at=sent_at,
    )


def _clean(text: str) -> str:
    """Without what a database refuses to store: zero characters and halves of surrogate pairs."""
    return text.replace("\x00", "").encode("utf-16", "surrogatepass").decode("utf-16", "replace")
