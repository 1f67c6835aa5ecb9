"""Decision: its buttons and what they carry."""

from __future__ import annotations

from datetime import date
from enum import StrEnum
from typing import NamedTuple

from bot.core.chat.buttons import CardRoute, Nothing, Route
from bot.core.chat.cards import OfEvent
from engine.values.case import ForecastUse
from engine.values.checkin import CoachLook


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


class Morning(NamedTuple):
    """A morning; without it today's."""

    day: date | None = None


class Looked(NamedTuple):
    day: date
    look: CoachLook


class Sharp(NamedTuple):
    day: date
    score: int


EYE = CardRoute("eye", Morning)
EYE_LOOK = CardRoute("eye-look", Looked)
EYE_SHARPNESS = CardRoute("eye-sharp", Sharp)
EYE_BACK = CardRoute("eye-back", Morning)


class WithUse(NamedTuple):
    event: int | None = None
    use: ForecastUse | None = None


class WithoutRule(NamedTuple):
    event: int | None = None
    rule: str | None = None


class WithLimit(NamedTuple):
    event: int | None = None
    key: str | None = None


WHAT_IF = CardRoute("whatif", OfEvent)
WHAT_IF_USE = CardRoute("whatif-use", WithUse)
WHAT_IF_LESS = CardRoute("whatif-less", WithoutRule)
ASK_LIMIT = CardRoute("whatif-limit", WithLimit)
