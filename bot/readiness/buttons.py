"""Readiness: its buttons and what they carry."""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from bot.core.chat.buttons import Route


class Do(StrEnum):
    ASK = "ask"
    AGAIN = "again"
    MINE = "mine"
    ME = "me"
    GO_ON = "on"
    AGREED = "ok"


class OnReadiness(NamedTuple):
    """`number` is an athlete's for the first three, a row's for the last two."""

    do: Do
    number: int | None = None


READINESS = Route("rd", OnReadiness)
