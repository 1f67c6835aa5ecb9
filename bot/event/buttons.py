"""Event and the day on stage: their buttons and what they carry."""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from bot.core.chat.buttons import CardRoute, Route
from bot.core.chat.cards import OfEvent

SEASON_OFF = CardRoute("season-off", OfEvent)
SEASON_OUT = CardRoute("season-out", OfEvent)
BRIDGE = CardRoute("bridge", OfEvent)
ASKS = CardRoute("asks", OfEvent)
ASKS_LOOK = CardRoute("asks-look", OfEvent)
ASKS_WEIGH_IN = CardRoute("asks-weigh", OfEvent)


class StageView(StrEnum):
    DAY = "day"
    SET = "set"
    OFF = "off"
    OFF_YES = "off-yes"


class OnStage(NamedTuple):
    view: StageView
    athlete: int


class Late(NamedTuple):
    """`minutes`: how much later the day runs; earlier where negative."""

    athlete: int
    minutes: int


class Told(NamedTuple):
    """When the classes are on, as was said in passing: `which` as in `StageWord`, `clocks` such as
    "1500-1930".
    """

    athlete: int
    which: int
    clocks: str


class TopUp(NamedTuple):
    """The coach's answer to a look: 0 g is none."""

    athlete: int
    question: int
    grams: float


ON_STAGE = Route("st", OnStage)
LATE = Route("st:late", Late)
TOLD = Route("st:told", Told)
TOP_UP = Route("st:top", TopUp)
