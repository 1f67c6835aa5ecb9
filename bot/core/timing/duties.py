"""Doing what is due: each duty in a transaction of its own, which is all that holds it.

So of several processes each does what no other is at work on, and what one was doing when it was killed
is undone, and there for the others.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Sequence

import structlog
from sqlmodel import Session
from structlog.contextvars import bound_contextvars

from bot.core.chat.outbox import numbers_of, said_in
from bot.core.timing import agenda
from bot.core.timing.clock import FirstWhile
from bot.core.timing.waiting import Underway
from bot.core.turn import Turn
from bot.core.use_cases import Runtime
from bot.store.base import id_of
from bot.store.db import claiming, in_transaction, looking
from bot.store.tables.traffic import AgendaRow, OutboxRow

AT_ONCE = 20

_log = structlog.get_logger(__name__)


class Duties:
    """Called at every tick; does all that is due by then.

    `noted_for_s`: for how long after its first tick it notes each duty before it does it, so that one
    that takes its process along is put off at last, and holds up nothing for ever.
    """

    def __init__(
        self, runtime: Runtime, done: Callable[[], None] = lambda: None, *, noted_for_s: float = 0.0
    ) -> None:
        self._engine, self._use_cases, self._clock, self._context = runtime
        self._first_while = FirstWhile(self._clock, noted_for_s)
        self._done = done
        self.underway = Underway()
        self._at_it = asyncio.Lock()
        self._closing = False

    async def tick(self) -> None:
        """Do what is due; a failure is logged and waits for a later tick."""
        async with self._at_it:
            try:
                while await asyncio.to_thread(self.do_due):
                    self._done()
            except Exception:
                _log.exception("a tick failed")

    async def close(self) -> None:
        """Finish the duty that was begun; the others are there for whoever comes next."""
        self._closing = True
        async with self._at_it:
            return

    def do_due(self) -> int:
        """Do a handful of what is due, one by one. Returns how many are not due any more: those that
        another process is at work on are left to it.
        """
        with looking(self._engine) as session:
            found = agenda.due(session, self._clock.now(), AT_ONCE)
        return sum(self._underway(row) for row in found if not self._closing)

    def _underway(self, found: AgendaRow) -> bool:
        with self.underway.doing():
            return self._do(found)

    def _do(self, found: AgendaRow) -> bool:
        """Do this one, or put it off where it fails; whether it is no other process's."""
        row_id, kind, subject = id_of(found), found.kind, found.subject
        begun = self._first_while.lasts
        if begun:
            with claiming(self._engine) as session:
                if not agenda.is_ours(session, subject):
                    return False
                if not agenda.note_beginning(session, row_id, self._clock.now()):
                    return True

        def work(session: Session) -> Sequence[OutboxRow] | None:
            if not agenda.is_ours(session, subject):
                return None
            self._use_cases.hold_duty(session, found)
            context = self._context()
            row = agenda.take(session, row_id, context.now, begun=begun)
            if row is not None:
                self._use_cases.due(Turn(session, context), row)
            return said_in(session)

        with bound_contextvars(agenda_id=row_id, kind=kind):
            return self._try(row_id, work, begun=begun)

    def _try(
        self, row_id: int, work: Callable[[Session], Sequence[OutboxRow] | None], *, begun: bool
    ) -> bool:
        try:
            written = in_transaction(self._engine, work, locked=self._use_cases.hold_their_people)
        except Exception:
            _log.exception("a duty failed and is put off")
            with claiming(self._engine) as session:
                agenda.retry(session, row_id, self._clock.now(), begun=begun)
            return True
        if written is None:
            return False
        _log.info("a duty was done", outbox_ids=numbers_of(written))
        return True
