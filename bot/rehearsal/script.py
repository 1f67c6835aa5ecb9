"""Who plays, and a script as data: what people do, when, and what is to be read on whose screen."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
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


@dataclass(frozen=True, slots=True)
class Says:
    player: Player
    text: str


@dataclass(frozen=True, slots=True)
class Edits:
    """The player changes their last message to this."""

    player: Player
    text: str


@dataclass(frozen=True, slots=True)
class Presses:
    """A button by its label, or the beginning of it; of several, the one on the newest message."""

    player: Player
    label: str


@dataclass(frozen=True, slots=True)
class Joins:
    """The player takes up the newest invitation that `host` has got; None: `brimline invite`'s."""

    player: Player
    host: Player | None


@dataclass(frozen=True, slots=True)
class Until:
    """Time passes until a duty of this kind has fallen due, and all before it."""

    kind: str


@dataclass(frozen=True, slots=True)
class Waits:
    """Time passes."""

    span: timedelta


@dataclass(frozen=True, slots=True)
class Reads:
    """Since the last thing that anybody did, this has come up on the player's screen."""

    player: Player
    words: str
    silently: bool = False


@dataclass(frozen=True, slots=True)
class ReadsNothing:
    """Since the last thing that anybody did, nothing new has come to the player."""

    player: Player


Step = Says | Edits | Presses | Joins | Until | Waits | Reads | ReadsNothing


@dataclass(frozen=True, slots=True)
class Act:
    title: str
    steps: Sequence[Step]


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a day's row in the table is to hold at the end: the day as set (g) and what led there."""

    days_out: int
    carb_g: float
    happened: Sequence[str]
