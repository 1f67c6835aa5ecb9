"""What a command, a button and a timed duty are to the doors: who may, and what runs."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from bot.core.turn import Act, OnAthlete, Turn
from bot.store.tables.traffic import AgendaRow

ATHLETE = frozenset({"athlete"})
COACH = frozenset({"coach"})
COACHING = frozenset({"coach", "second"})  # second coaches with full rights as well
TOLD_OF_ALERTS = frozenset({"coach", "second", "second-alerts", "contact"})
ANYONE_KNOWN = frozenset({"athlete", *TOLD_OF_ALERTS})
#: Somebody of whom something is kept and who is nothing here any more: they get at what is theirs.
FORMER = frozenset({"former"})


OnCard = Callable[[OnAthlete], None]


@dataclass(frozen=True, slots=True)
class Command:
    """`run` gets what was typed after the command. No menu text: it works but is not listed.

    With `takes_words` it makes something of that; else it lands as if it had been typed alone.
    """

    name: str
    roles: frozenset[str]
    run: Callable[[Act], None]
    menu: Callable[[], str] | None = None
    rank: int = 0  # where it stands in menus and help
    takes_words: bool = False


@dataclass(frozen=True, slots=True)
class Tap:
    """Buttons whose data begins with "prefix:"; `run` gets the rest, split at the colons.

    `run` has to answer the tap (`bot.core.outbox.answer_tap`), and to check whose athlete it speaks of.
    """

    prefix: str
    roles: frozenset[str]
    run: Callable[[Act], None]


@dataclass(frozen=True, slots=True)
class Duty:
    """An agenda row's kind, up to its first ":", and what is done when it falls due."""

    kind: str
    run: Callable[[Turn, AgendaRow], None]
