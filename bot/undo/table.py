"""Undo: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import view
from bot.dialogue.feature import Feature
from bot.undo import buttons, undo

FEATURE = Feature(
    on_card=(
        view(cards.UNDO, undo.ask_undo),
        view(buttons.UNDO_YES, undo.undo),
        view(buttons.UNDO_NO, undo.keep),
    )
)
