"""What a use case may know of the world around it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from bot.store.tables.traffic import Urgency


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
