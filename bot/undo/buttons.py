"""Undo: its buttons and what they carry."""

from __future__ import annotations

from typing import NamedTuple

from bot.core.chat.buttons import CardRoute, Nothing


class OfChange(NamedTuple):
    change: int | None = None


UNDO_YES = CardRoute("undo-yes", OfChange)
UNDO_NO = CardRoute("undo-no", Nothing)
