"""What a command, a button and a timed duty are to the dispatcher: who may, and what runs."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, ParamSpec, TypeVar, overload

from bot.core.chat.buttons import CardRoute, Nothing, Route
from bot.core.turn import Act, OnAthlete, Turn
from bot.store.tables.traffic import AgendaRow

ATHLETE = frozenset({"athlete"})
COACH = frozenset({"coach"})
COACHING = frozenset({"coach", "second"})  # second coaches with full rights as well
TOLD_OF_ALERTS = frozenset({"coach", "second", "second-alerts", "contact"})
ANYONE_KNOWN = frozenset({"athlete", *TOLD_OF_ALERTS})
#: Somebody of whom something is kept and who is nothing here any more: they get at what is theirs.
FORMER = frozenset({"former"})

P = ParamSpec("P")
F = TypeVar("F")


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
    can_wait: bool = False  # it shows what is there: in a rush everybody's morning goes before it


@dataclass(frozen=True, slots=True)
class CallbackRoute:
    """A declared button, who may press it, and what runs with its fields (`tap` makes one).

    `run` has to check whose athlete it speaks of; it may answer the tap with a few words
    (`telling.answer`), which is answered in any case. Where the data cannot be read, that is done
    with `unreadable` instead.
    """

    prefix: str
    roles: frozenset[str]
    read: Callable[[str], Any]
    run: Callable[[Act, Any], None]
    unreadable: Callable[[], str] | None = None


@dataclass(frozen=True, slots=True)
class View:
    """A declared view of an athlete's card and what runs with its fields (`view` makes one).

    Where the fields cannot be read, it is answered with `unreadable`. The athlete is the coach's own,
    or one that they stand in for with full rights.
    """

    name: str
    read: Callable[[list[str]], Any]
    run: Callable[[OnAthlete, Any], None]
    unreadable: Callable[[], str] | None = None
    first_coach_only: bool = False  # no stand-in may do it


@overload
def tap(
    route: Route[[], Nothing],
    roles: frozenset[str],
    run: Callable[[Act], None],
    unreadable: Callable[[], str] | None = None,
) -> CallbackRoute: ...


@overload
def tap(
    route: Route[P, F],
    roles: frozenset[str],
    run: Callable[[Act, F], None],
    unreadable: Callable[[], str] | None = None,
) -> CallbackRoute: ...


def tap(
    route: Route[..., Any],
    roles: frozenset[str],
    run: Callable[..., None],
    unreadable: Callable[[], str] | None = None,
) -> CallbackRoute:
    """Bind a button to those who may press it and to what it does."""
    return CallbackRoute(route.prefix, roles, route.read, _with_fields(run, route.bare), unreadable)


@overload
def view(
    route: CardRoute[[], Nothing],
    run: Callable[[OnAthlete], None],
    unreadable: Callable[[], str] | None = None,
    *,
    first_coach_only: bool = False,
) -> View: ...


@overload
def view(
    route: CardRoute[P, F],
    run: Callable[[OnAthlete, F], None],
    unreadable: Callable[[], str] | None = None,
    *,
    first_coach_only: bool = False,
) -> View: ...


def view(
    route: CardRoute[..., Any],
    run: Callable[..., None],
    unreadable: Callable[[], str] | None = None,
    *,
    first_coach_only: bool = False,
) -> View:
    """Bind a view of a card to what it does."""
    run = _with_fields(run, route.bare)
    return View(route.view, route.of, run, unreadable, first_coach_only)


def _with_fields(run: Callable[..., None], bare: bool) -> Callable[[Any, Any], None]:
    return (lambda turn, _: run(turn)) if bare else run


@dataclass(frozen=True, slots=True)
class Duty:
    """A kind of agenda row (`timing.agenda`), what is done when it falls due, and what that is
    in a few words, for whoever plays the rehearsal.
    """

    kind: str
    run: Callable[[Turn, AgendaRow], None]
    what: str
