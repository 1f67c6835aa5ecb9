"""Event: its buttons and what they carry."""

from __future__ import annotations

from bot.core.chat.buttons import CardRoute
from bot.core.chat.cards import OfEvent

SEASON_OFF = CardRoute("season-off", OfEvent)
SEASON_OUT = CardRoute("season-out", OfEvent)
BRIDGE = CardRoute("bridge", OfEvent)
ASKS = CardRoute("asks", OfEvent)
ASKS_LOOK = CardRoute("asks-look", OfEvent)
ASKS_WEIGH_IN = CardRoute("asks-weigh", OfEvent)
