"""One thing a person did in a chat, free of Telegram's own shapes."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum


class Media(StrEnum):
    """What came that holds no text to be read, by what its sender would call it."""

    VOICE = "voice"
    VIDEO = "video"
    STICKER = "sticker"
    PLACE = "place"
    CONTACT = "contact"
    ELSE = "else"


class Kind(StrEnum):
    TEXT = "text"
    EDITED = "edited"  # an earlier message's text was changed
    TAP = "tap"  # a button was pressed; `text` holds its data
    FILE = "file"  # a photo or a document; `text` holds the caption
    OTHER = "other"  # a sticker, voice message, location, ...
    BLOCKED = "blocked"  # the person stopped the bot
    UNBLOCKED = "unblocked"
    MOVED = "moved"  # the chat got another id; `text` holds the new one


@dataclass(frozen=True, slots=True, kw_only=True)
class SentFile:
    """A file that waits at Telegram. Size in bytes, as Telegram says it; 0 where it does not."""

    file_id: str
    name: str = ""
    mime: str = ""
    size: int = 0
    as_photo: bool = False  # sent as a picture rather than as a file


@dataclass(frozen=True, slots=True, kw_only=True)
class Incoming:
    """`sent_at` is when it was sent by Telegram's clock (for a tap, when it was received).

    `media` says what a thing of kind OTHER is. `reply_to` is the id of the message that its sender
    answers by Telegram's own reply, and `quoted` the part of it that they picked out.
    """

    update_id: int
    chat_id: int
    private: bool
    user_id: int
    first_name: str
    language: str | None
    kind: Kind
    text: str
    message_id: int | None
    tap_id: str | None
    sent_at: datetime
    file: SentFile | None = None
    media: Media | None = None
    reply_to: int | None = None
    quoted: str = ""
    initial: str = ""  # of the family name, where Telegram gives one
