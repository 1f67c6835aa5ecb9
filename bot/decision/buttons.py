"""Decision: its buttons and what they carry."""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from bot.core.chat.buttons import CardRoute, Nothing, Route


class ChangeDo(StrEnum):
    CHANGE = "change"
    OFF = "off"
    ONE = "one"


class OnAnswers(NamedTuple):
    """What is to be done to the answers of a check-in; `key` is the one that is asked again."""

    do: ChangeDo
    checkin: int
    key: str | None = None


ON_ANSWERS = Route("k", OnAnswers)
HOLD = CardRoute("hold", Nothing)
HOLD_END = CardRoute("hold-end", Nothing)
