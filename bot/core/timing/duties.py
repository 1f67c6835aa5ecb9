"""Doing what is due: agenda rows are claimed, and each is done in a transaction of its own."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Sequence

import structlog
from sqlalchemy import Engine
from sqlmodel import Session
from structlog.contextvars import bound_contextvars

from bot.core.chat.outbox import numbers_of, said_in
from bot.core.timing import agenda
from bot.core.timing.clock import Clock
from bot.core.turn import Context, Turn
from bot.core.use_cases import UseCases
from bot.store.base import id_of
from bot.store.db import claiming, in_transaction
from bot.store.tables.traffic import AgendaRow, OutboxRow

AT_ONCE = 20

_log = structlog.get_logger(__name__)


class Duties:
    """Called at every tick; does all that is due by then."""

    def __init__(
        self,
        engine: Engine,
        use_cases: UseCases,
        clock: Clock,
        context: Callable[[], Context],
        done: Callable[[], None] = lambda: None,
    ) -> None:
        self._engine = engine
        self._use_cases = use_cases
        self._clock = clock
        self._context = context
        self._done = done

    async def tick(self) -> None:
        """Do what is due; a failure is logged and waits for a later tick."""
        try:
            while await asyncio.to_thread(self.do_due):
                self._done()
        except Exception:
            _log.exception("a tick failed")

    def do_due(self) -> int:
        """Claim a handful of due rows and do them one by one. Returns how many were claimed."""
        with claiming(self._engine) as session:
            claimed = agenda.claim_due(session, self._clock.now(), AT_ONCE)
        for row in claimed:
            self._do(row)
        return len(claimed)

    def _do(self, claimed: AgendaRow) -> None:
        row_id, kind = id_of(claimed), claimed.kind

        def work(session: Session) -> Sequence[OutboxRow]:
            self._use_cases.hold_duty(session, claimed)
            context = self._context()
            row = agenda.take(session, row_id, context.now)
            if row is not None:
                self._use_cases.due(Turn(session, context), row)
            return said_in(session)

        with bound_contextvars(agenda_id=row_id, kind=kind):
            self._try(row_id, work)

    def _try(self, row_id: int, work: Callable[[Session], Sequence[OutboxRow]]) -> None:
        try:
            written = in_transaction(self._engine, work, locked=self._use_cases.hold_their_people)
        except Exception:
            _log.exception("a duty failed and is put off")
            with claiming(self._engine) as session:
                agenda.retry(session, row_id, self._clock.now())
        else:
            _log.info("a duty was done", outbox_ids=numbers_of(written))
