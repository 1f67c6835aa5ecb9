"""Timeline: its buttons and what they carry."""

from __future__ import annotations

from bot.core.chat.buttons import CardRoute, Nothing

TIMELINE = CardRoute("timeline", Nothing)
