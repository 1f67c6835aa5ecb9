"""What takes long to work out is worked out while nobody waits for it: with no transaction open.

A use case runs in one writing transaction, and on SQLite nobody else writes meanwhile. What it has to
work out (a forecast, a menu, what a week has taught) hangs on values alone: so where `worked_out` is
come to and what it asks for is not at hand, the transaction is given up as if it had never begun, that
is worked out, and the use case begins anew (`bot.store.db.in_transaction`), as after two have got in
each other's way. What is at hand is found by the values it was worked out of, to the bit. So
whatever has changed meanwhile is seen: then other values are asked for, and those are worked out.

What can be guessed is worked out before the use case begins at all (`ahead`), which spares it
beginning twice.
"""

from __future__ import annotations

import io
import pickle
from collections.abc import Callable
from dataclasses import dataclass, field
from functools import partial
from typing import Any, ParamSpec, TypeVar

from sqlmodel import Session

_P = ParamSpec("_P")
_Found = TypeVar("_Found")
_AT_HAND = "at hand"
#: A use case that asks for still more works the rest out where it stands.
MOST_BEGINNINGS = 6


class NotWorkedOut(BaseException):
    """Ends a transaction in which something is needed that is not at hand."""

    def __init__(self, work: Callable[[], object]) -> None:
        super().__init__()
        self.work = work


@dataclass(slots=True)
class AtHand:
    """What has been worked out for one use case, by what it was worked out of."""

    found: dict[bytes, Callable[[], Any]] = field(default_factory=dict)
    beginnings: int = 0

    def begins(self, session: Session) -> None:
        """It begins, in this transaction."""
        self.beginnings += 1
        session.info[_AT_HAND] = self

    @property
    def may_begin_again(self) -> bool:
        return 0 < self.beginnings < MOST_BEGINNINGS

    def looks_ahead(self, session: Session) -> None:
        """What is worked out in this session, which locks nothing, is at hand when it begins."""
        session.info[_AT_HAND] = self

    def keep(self, key: bytes, work: Callable[[], object]) -> None:
        try:
            found = work()
        except Exception as error:
            self.found[key] = partial(_raises, error)
        else:
            self.found[key] = lambda: found


def _raises(error: Exception) -> None:
    raise error


def worked_out(
    session: Session, work: Callable[_P, _Found], *given: _P.args, **named: _P.kwargs
) -> _Found:
    """What `work` makes of these values, and of nothing else: worked out with no transaction open where
    the session is of a use case that can begin again, else here.

    `work` is a function of a module, pure, and the values are the engine's, no rows; what comes of them
    is not to be changed, since it is given again.
    """
    at_hand: AtHand | None = session.info.get(_AT_HAND)
    if at_hand is None:
        return work(*given, **named)
    key = _key((work, given, named))
    if key not in at_hand.found:
        doing = partial(at_hand.keep, key, partial(work, *given, **named))
        if at_hand.may_begin_again:
            raise NotWorkedOut(doing)
        doing()
    found: _Found = at_hand.found[key]()
    return found


def _key(values: object) -> bytes:
    """All of them, to the bit, whether or not two of them are one object."""
    written = io.BytesIO()
    pickler = pickle.Pickler(written, protocol=pickle.HIGHEST_PROTOCOL)
    pickler.fast = True
    pickler.dump(values)
    return written.getvalue()
