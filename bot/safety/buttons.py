"""Safety: its buttons and what they carry."""

from __future__ import annotations

from bot.core.chat.buttons import CardRoute, Nothing

FREEZE = CardRoute("freeze", Nothing)
LIFT = CardRoute("lift", Nothing)
LIFT_YES = CardRoute("lift-yes", Nothing)
LIFT_NO = CardRoute("lift-no", Nothing)
