"""Coach numbers: its buttons and what they carry."""

from __future__ import annotations

from typing import NamedTuple

from bot.core.chat.buttons import Route


class Numbers(NamedTuple):
    format: str


NUMBERS = Route("nb", Numbers)
