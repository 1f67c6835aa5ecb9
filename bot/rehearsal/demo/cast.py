"""Who plays: an invented athlete, coach and second contact, and the evening it all begins on."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from zoneinfo import ZoneInfo


@dataclass(frozen=True, slots=True)
class Player:
    """Somebody with a chat of their own. `user_id` is that of the chat as well, as in Telegram."""

    name: str
    role: str
    city: str
    zone: str
    user_id: int


ATHLETE = Player("Orla", "athlete", "Galway", "Europe/Dublin", 7_001_001)
COACH = Player("Aino", "coach", "Helsinki", "Europe/Helsinki", 7_001_002)
CONTACT = Player("Eero", "contact", "Helsinki", "Europe/Helsinki", 7_001_003)
PLAYERS = (ATHLETE, COACH, CONTACT)

# The clocks go back in the night after the first morning, in both places.
EVENT_DAY = date(2026, 10, 31)
CURTAIN = datetime(2026, 10, 23, 18, 0, tzinfo=ZoneInfo(ATHLETE.zone))


def player_of(chat_id: int) -> Player:
    """Whose chat this is."""
    return next(player for player in PLAYERS if player.user_id == chat_id)
