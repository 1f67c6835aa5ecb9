"""Coach: its buttons and what they carry."""

from __future__ import annotations

from datetime import date
from enum import StrEnum
from typing import NamedTuple

from bot.core.chat.buttons import CardRoute, Nothing, Route
from bot.core.chat.cards import OfRow, OnProposal
from engine.values.case import ForecastUse


class CoachSetting(StrEnum):
    DIGEST = "digest"
    OFF = "off"
    QUIET = "quiet"
    QUIET_OFF = "quiet-off"
    ZONE = "zone"


class OnSettings(NamedTuple):
    setting: CoachSetting


class Alike(NamedTuple):
    """Proposals of one rule, all up or all down."""

    rule: str
    up: bool


class OfDay(NamedTuple):
    day: date | None = None


class OfDaysOut(NamedTuple):
    days_out: int | None = None


class ChosenUse(NamedTuple):
    use: ForecastUse | None = None


class OnPage(NamedTuple):
    """One of `pages.PAGES`."""

    page: str | None = None


SETTINGS = Route("desk", OnSettings)
GLANCE = Route("m", OnProposal)
TOGETHER = Route("m:several", Alike)

SIGN = CardRoute("sign", OnProposal)
ACKNOWLEDGE = CardRoute("ack", OfRow)
WHY = CardRoute("why", Nothing)
PAGE = CardRoute("page", OnPage)
ANSWERS = CardRoute("answers", Nothing)
BY_HAND = CardRoute("hand", OfDaysOut)
HISTORY = CardRoute("history", OfDay)
ANOTHER_DAY = CardRoute("history-day", Nothing)
TOMORROW = CardRoute("tomorrow", Nothing)
DOCTOR = CardRoute("doctor", Nothing)
DOCTOR_YES = CardRoute("doctor-yes", Nothing)
DOCTOR_NO = CardRoute("doctor-no", Nothing)
FORECAST = CardRoute("forecast", Nothing)
FORECAST_USE = CardRoute("forecast-use", ChosenUse)
