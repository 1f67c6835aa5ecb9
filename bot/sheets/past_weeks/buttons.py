"""Past weeks: its buttons and what they carry."""

from __future__ import annotations

from typing import NamedTuple

from bot.core.chat.buttons import CardRoute


class OfImport(NamedTuple):
    row: int | None = None


BACK = CardRoute("past-back", OfImport)
BACK_YES = CardRoute("past-back-yes", OfImport)
BACK_NO = CardRoute("past-back-no", OfImport)
