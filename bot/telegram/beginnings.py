"""Which updates have been begun on: one that takes its process along is not begun on for ever.

A crash within a library, or memory that runs out, leaves the row as it was, and the next start takes
it up again: it would end there too, and everybody behind it wait. So for the first while after its
start a process notes of each update, in a transaction of its own, that it begins on it, and does one
at a time, so that none is noted that another has taken along. After that nothing is noted, and nothing
spent. What kills a process later on is noted from the next start on; until it is come to there, others
have been served for as long as that first while lasts.
"""

from __future__ import annotations

from sqlalchemy import BigInteger, Engine, bindparam, func, select
from sqlmodel import col
from sqlmodel import select as rows

from bot.core.timing.clock import Clock, FirstWhile
from bot.store.db import claiming, is_sqlite
from bot.store.remembering import looked_up
from bot.store.tables.traffic import InboxRow

#: Our own choice: so often a row is begun on by processes that end over it. Ten ends are a minute or
#: two in which nobody is served; fewer would blame a morning for what kills a starting process from
#: outside, since the first forecast of each takes it seconds.
MOST = 10

_OURS = select(func.pg_try_advisory_xact_lock(bindparam("chat", type_=BigInteger)))
_ROW = rows(InboxRow).where(col(InboxRow.update_id) == bindparam("update")).with_for_update()


class Beginnings:
    """What one process has begun on, noted for so long from its first look at the queue on."""

    def __init__(self, engine: Engine, clock: Clock, for_s: float) -> None:
        self._engine = engine
        self._first_while = FirstWhile(clock, for_s)
        self._noted: set[int] = set()

    @property
    def are_noted(self) -> bool:
        return self._first_while.lasts

    def note(self, update_id: int, chat_id: int | None) -> int | None:
        """Note that this process begins on it. Returns how often it has been begun on, 0 where there is
        nothing to note; None where another process is at work on the chat.
        """
        if update_id in self._noted:
            return 0  # begun on before in this life, and come back from
        with claiming(self._engine) as session:
            if not is_sqlite(self._engine):
                ((ours,),) = looked_up(session, _OURS, {"chat": chat_id or 0})
                if not ours:
                    return None
            row = session.exec(_ROW, params={"update": update_id}).first()
            if row is None or row.status != "new":
                return 0
            row.attempts += 1
            session.add(row)
            begun = row.attempts
        self._noted.add(update_id)
        return begun

    def is_noted(self, update_id: int) -> bool:
        return update_id in self._noted

    def came_back(self, update_id: int) -> bool:
        """It is over, whatever came of it; whether it was noted."""
        noted = update_id in self._noted
        self._noted.discard(update_id)
        return noted
