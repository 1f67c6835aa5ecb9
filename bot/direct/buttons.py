"""Direct: its buttons and what they carry."""

from __future__ import annotations

from typing import NamedTuple

from bot.core.chat.buttons import Route


class To(NamedTuple):
    person: int


REPLY = Route("reply", To)
