"""Debrief: its buttons and what they carry."""

from __future__ import annotations

from bot.core.chat.buttons import CardRoute, Nothing

DEBRIEF = CardRoute("debrief", Nothing)
NOTE = CardRoute("debrief-note", Nothing)
CLOSER = CardRoute("closer", Nothing)
ASK_PLACING = CardRoute("placing", Nothing)
