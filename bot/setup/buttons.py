"""Setup: its buttons and what they carry."""

from __future__ import annotations

from typing import NamedTuple

from bot.core.chat.buttons import Route


class One(NamedTuple):
    athlete: int


class Sheet(NamedTuple):
    format: str | None = None


SETUP_ONE = Route("su:one", One)
SETUP_SHEET = Route("su:sheet", Sheet)
