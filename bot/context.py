"""What a use case may know of the world around it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlmodel import Session

from bot.incoming import Incoming
from bot.store.traffic import AgendaRow, FetchRow, OutboxRow


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
    helpline: str = ""  # whom somebody in despair can call, as whoever runs the bot has put it


@dataclass(frozen=True, slots=True)
class Document:
    """A file to upload."""

    name: str
    content: bytes


def _nothing_more(*_about: object) -> None:
    """For a door that a deployment has no use for."""


@dataclass(frozen=True, slots=True)
class UseCases:
    """The doors from the queues into the services; each runs inside one open transaction."""

    incoming: Callable[[Session, Incoming, Context], None]
    due: Callable[[Session, AgendaRow, Context], None]
    undeliverable: Callable[[Session, OutboxRow, Context], None]
    # A chat got another id: (old, new).
    moved: Callable[[Session, int, int, Context], None] = _nothing_more
    # An update from this chat failed again and again, or could not be read: (chat id).
    poisoned: Callable[[Session, int, Context], None] = _nothing_more
    # Whether what somebody typed or tapped may be about danger, so that it goes first: (its text).
    may_be_urgent: Callable[[str], bool] = lambda _text: False
    # What is made of a downloaded file, outside any transaction: (row, content).
    unpack: Callable[[FetchRow, bytes, Context], object] = _nothing_more
    # What follows from it, in one; None for a file that could not be had.
    fetched: Callable[[Session, FetchRow, object, Context], None] = _nothing_more
    # The file that an outbox row names; None where what it was made of is gone.
    document: Callable[[Session, dict[str, Any], Context], Document | None] = _nothing_more
