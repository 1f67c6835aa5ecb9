"""A script as data: what people do, when, and what is to be read on whose screen because of it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta

from bot.rehearsal.demo.cast import Player


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
