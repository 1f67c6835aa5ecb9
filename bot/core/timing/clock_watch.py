"""Notices that somebody has set the machine's clock, and takes up what waits for the old time.

Waits run on a clock that only grows. What is put off in rows is put off until an instant of the
wall clock; where that is set back, such rows would lie still for as long, alerts among them. Where no
process lived through it, rows that were made later than now tell of it.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from datetime import datetime, timedelta

import structlog
from sqlalchemy import Engine, update
from sqlmodel import Session, col

from bot.core.timing.agenda import LONGEST_RETRY
from bot.core.timing.clock import Clock
from bot.store.db import claiming
from bot.store.tables.traffic import AgendaRow, FetchRow, InboxRow, OutboxRow

LOOK_EVERY_S = 1.0
NOTICED_FROM_S = 2.0  # smaller ones are the slow corrections of a time service
SEEK_EVERY_S = 60.0  # what was made later than now

OPEN = ("new", "waiting", "sending")
_MADE_AT = (
    (InboxRow, InboxRow.received_at),
    (OutboxRow, OutboxRow.created_at),
    (FetchRow, FetchRow.created_at),
)

_log = structlog.get_logger(__name__)


class ClockWatch:
    """Holds the wall clock against one that only grows. `was_set` is called after each jump."""

    def __init__(self, engine: Engine, clock: Clock, was_set: Callable[[], None]) -> None:
        self._engine = engine
        self._clock = clock
        self._was_set = was_set
        self._wall, self._ran = clock.now(), clock.monotonic()
        self._seek_at = self._ran

    async def look(self) -> None:
        """Look once, now and then; a jump is logged and made good."""
        await self._clock.sleep(LOOK_EVERY_S)
        wall, ran = self._clock.now(), self._clock.monotonic()
        jumped_s = (wall - self._wall).total_seconds() - (ran - self._ran)
        self._wall, self._ran = wall, ran
        if abs(jumped_s) >= NOTICED_FROM_S:
            _log.warning("the clock was set", seconds=round(jumped_s, 1))
            if jumped_s < 0:
                await asyncio.to_thread(self._take_up)
            self._was_set()
        elif ran >= self._seek_at:
            self._seek_at = ran + SEEK_EVERY_S
            # The clock was set back since such rows were made, while no process was there or just
            # before it ended.
            later = self._clock.now() + timedelta(seconds=NOTICED_FROM_S)
            await asyncio.to_thread(self._take_up, made_after=later)

    def _take_up(self, made_after: datetime | None = None) -> None:
        with claiming(self._engine) as session:
            take_up_what_waits(session, self._clock.now(), made_after)


def take_up_what_waits(session: Session, now: datetime, made_after: datetime | None = None) -> None:
    """Let every row that was put off beyond now be tried at once: early does no harm, late may.

    `made_after`: only rows that were made after that. Duties do not say when they were put off: those
    alone then that are put off for longer than any is.
    """
    for table, made_at in _MADE_AT:
        waiting = update(table).where(col(table.status).in_(OPEN), col(table.not_before) > now)
        if made_after is not None:
            waiting = waiting.where(col(made_at) > made_after)
        session.connection().execute(waiting.values(not_before=now))
    put_off_beyond = now if made_after is None else made_after + LONGEST_RETRY
    claimed = update(AgendaRow).where(
        col(AgendaRow.status) == "waiting", col(AgendaRow.claimed_until) > put_off_beyond
    )
    session.connection().execute(claimed.values(claimed_until=now))
