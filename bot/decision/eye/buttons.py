"""Eye: its buttons and what they carry."""

from __future__ import annotations

from datetime import date
from typing import NamedTuple

from bot.core.chat.buttons import CardRoute
from engine.values.checkin import CoachLook


class Morning(NamedTuple):
    """A morning; without it today's."""

    day: date | None = None


class Looked(NamedTuple):
    day: date
    look: CoachLook


class Sharp(NamedTuple):
    day: date
    score: int


EYE = CardRoute("eye", Morning)
EYE_LOOK = CardRoute("eye-look", Looked)
EYE_SHARPNESS = CardRoute("eye-sharp", Sharp)
EYE_BACK = CardRoute("eye-back", Morning)
