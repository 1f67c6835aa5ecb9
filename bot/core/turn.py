"""What is going on while a use case runs: the open transaction, the time, what came in, who acts."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime
from enum import StrEnum
from pathlib import Path

from sqlmodel import Session

from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.traffic import Urgency
from bot.words.common import Media


@dataclass(frozen=True, slots=True)
class Context:
    """Time as the use case is to see it, and the bot's own name for invitation links."""

    now: datetime
    bot_username: str = ""
    # Settings that use cases read; defaults are stated in bot.settings.
    invite_days: int = 7
    photo_dir: Path | None = None  # None: pictures are not kept
    keep_photos_days: int = 180
    keep_traffic_days: int = 30
    urgency: Urgency = (
        Urgency.ORDINARY
    )  # of what is being dealt with: so urgent is the answer to it
    helpline: str = ""  # whom somebody in despair can call, as whoever runs the bot has put it


@dataclass(frozen=True, slots=True)
class Document:
    """A file to upload."""

    name: str
    content: bytes


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


@dataclass(frozen=True, slots=True)
class Turn:
    """One use case at work: everything it reads and writes goes through `session`, at `now`."""

    session: Session
    context: Context
    now: datetime = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "now", self.context.now)


@dataclass(frozen=True, slots=True)
class ChatTurn(Turn):
    """One that somebody's message or tap has set going."""

    incoming: Incoming

    def by(self, person: Person, *, words: str = "") -> Act:
        """The same, once it is known who it was and what was typed after a command."""
        return Act(self.session, self.context, self.incoming, person=person, words=words)


@dataclass(frozen=True, slots=True, kw_only=True)
class Act(ChatTurn):
    """What a known person does with a command or a button; `words` were typed after a command."""

    person: Person
    words: str = ""

    def on(self, profile: AthleteProfile) -> OnAthlete:
        """The same on an athlete, who has been found to be this person's to coach."""
        return OnAthlete(
            self.session, self.context, self.incoming,
            person=self.person, words=self.words, profile=profile,
        )  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class OnAthlete(Act):
    """What somebody who coaches this athlete does on the athlete's card."""

    profile: AthleteProfile

    @property
    def self_coached(self) -> bool:
        """Whether they are the athlete themselves."""
        return self.person.id == self.profile.person_id
