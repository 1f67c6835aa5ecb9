"""Plan: its buttons and what they carry."""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from bot.core.chat.buttons import CardRoute, Nothing, Route
from bot.core.chat.cards import OfEvent


class Do(StrEnum):
    DELETE = "del"
    DELETE_YES = "del-yes"
    KEEP = "keep"


class OnTemplate(NamedTuple):
    do: Do
    template: int


class OfDay(NamedTuple):
    days_out: int | None = None
    event: int | None = None


class OfNumber(NamedTuple):
    """A number of the plan: the day, and which of its fields."""

    days_out: int | None = None
    field: str | None = None
    event: int | None = None


class SetNumber(NamedTuple):
    days_out: int | None = None
    field: str | None = None
    value: str | None = None


class OfLimit(NamedTuple):
    """One of `LIMIT_KEYS`."""

    key: str | None = None
    event: int | None = None


TEMPLATE = Route("tpl", OnTemplate)

DAY = CardRoute("day", OfDay)
NUMBER = CardRoute("num", OfNumber)
SET_NUMBER = CardRoute("set", SetNumber)
TEMPLATE_SAVE = CardRoute("tpl-save", OfEvent)
LEARNT_NO = CardRoute("learnt-no", Nothing)
REVIEW = CardRoute("review", OfEvent)
TOTAL = CardRoute("kcal", OfDay)
LIMITS_USE = CardRoute("limits-use", OfEvent)
ONE_LIMIT = CardRoute("lim", OfLimit)
