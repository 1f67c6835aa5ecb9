"""Undo: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.dialogue.feature import Feature
from bot.undo import undo as undoing

FEATURE = Feature(
    id="undo",
    on_card={
        "undo": undoing.ask_undo,
        "undo-yes": undoing.undo,
        "undo-no": undoing.keep,
    },
)
