"""Replay: its buttons and what they carry."""

from __future__ import annotations

from typing import NamedTuple

from bot.core.chat.buttons import CardRoute
from bot.core.chat.cards import OfEvent
from engine.values.case import ForecastUse


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
