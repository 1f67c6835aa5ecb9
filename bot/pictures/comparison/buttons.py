"""Comparison: its buttons and what they carry."""

from __future__ import annotations

from typing import NamedTuple

from bot.core.chat.buttons import CardRoute, Route


class Weeks(NamedTuple):
    """A view (or "p" and days out: photos) of some weeks, their events joined by points."""

    view: str | None = None
    events: str | None = None


WEEKS = CardRoute("weeks", Weeks)
OWN_WEEKS = Route("wks", Weeks)
