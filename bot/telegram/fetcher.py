"""Files that people sent, fetched outside any transaction and handed to the use cases in one.

A row is taken under a lease of seconds that is renewed while its file is on its way, so that several
processes do not fetch the same, and one that a killed process was at is taken again soon. Should two
fetch one after all, the first hands it over. What cannot be had after a few attempts, or is larger
than it may be, is told to the person; the row never hangs.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from datetime import timedelta

import structlog
from sqlalchemy import update
from sqlmodel import Session, col, select
from telegram.error import BadRequest, Forbidden, TelegramError

from bot.core.logs import error_name
from bot.core.timing.waiting import keep_going, retry_span, wait_for
from bot.core.turn import Turn
from bot.core.use_cases import Runtime
from bot.store.base import id_of
from bot.store.db import claiming, in_transaction
from bot.store.tables.traffic import FetchRow
from bot.telegram.transport import Transport

AT_ONCE = 4
ATTEMPTS, MOST_ATTEMPTS = 5, 10
LEASE, RENEWED_EVERY_S = timedelta(seconds=5), 2.0
FIRST_RETRY, LONGEST_RETRY = timedelta(seconds=2), timedelta(minutes=1)
LOOK_AGAIN_S = 1.0

_log = structlog.get_logger(__name__)


class Fetcher:
    """Downloads what waits, a few files at once."""

    def __init__(
        self, runtime: Runtime, transport: Transport, done: Callable[[], None] = lambda: None
    ) -> None:
        self.wake = asyncio.Event()
        self._engine, self._use_cases, self._clock, self._context = runtime
        self._transport = transport
        self._done = done

    async def run(self) -> None:
        """Fetch until cancelled."""
        await keep_going("fetcher", self._clock, self._step_and_wait)

    async def step(self) -> int:
        """Fetch a handful of what waits, and hand it over. Returns how many rows were taken."""
        rows = await asyncio.to_thread(self._claim)
        if rows:
            underway = {id_of(row) for row in rows}
            renewing = asyncio.create_task(self._keep(underway))
            try:
                await asyncio.gather(*(self._fetch(row, underway) for row in rows))
            finally:
                renewing.cancel()
        return len(rows)

    async def _step_and_wait(self) -> None:
        if not await self.step():
            await wait_for(self.wake, self._clock, LOOK_AGAIN_S)

    async def _keep(self, underway: set[int]) -> None:
        """Renew the lease of what is underway, until that is over; tried again where it fails."""
        while True:
            await self._clock.sleep(RENEWED_EVERY_S)
            try:
                await asyncio.to_thread(self._renew, frozenset(underway))
            except Exception as error:
                _log.warning("a lease could not be renewed", error=error_name(error))

    def _renew(self, rows: frozenset[int]) -> None:
        mine = update(FetchRow).where(col(FetchRow.id).in_(rows), col(FetchRow.status) == "waiting")
        with claiming(self._engine) as session:
            session.connection().execute(mine.values(not_before=self._clock.now() + LEASE))

    async def _fetch(self, row: FetchRow, underway: set[int]) -> None:
        outcome: object = None
        try:
            if row.attempts <= MOST_ATTEMPTS:  # with each of so many it has taken its process along
                outcome = await self._content_of(row)
        except (BadRequest, Forbidden) as error:  # too large, or no longer there
            _log.warning("a file cannot be had", kind=row.kind, error=error_name(error))
        except (TelegramError, OSError) as error:
            if row.attempts < ATTEMPTS:
                await asyncio.to_thread(self._later, row, error)
                return
            _log.error("a file could not be fetched", kind=row.kind, error=error_name(error))
        except Exception as error:
            _log.exception("a file could not be unpacked", kind=row.kind)
            if row.attempts < ATTEMPTS:
                await asyncio.to_thread(self._later, row, error)
                return
        finally:
            underway.discard(id_of(row))
        await self._hand_over(row, outcome)

    async def _content_of(self, row: FetchRow) -> object:
        content = await self._transport.download(row.file_id, row.most_bytes)
        return await asyncio.to_thread(self._use_cases.unpack, row, content, self._context())

    async def _hand_over(self, row: FetchRow, outcome: object) -> None:
        def work(session: Session) -> None:
            open_row = session.get(FetchRow, row.id, with_for_update=True)
            if open_row is None or open_row.status != "waiting":
                return
            open_row.status = "done" if outcome is not None else "failed"
            session.add(open_row)
            self._use_cases.fetched(Turn(session, self._context()), open_row, outcome)

        try:
            locked = self._use_cases.hold_their_people
            await asyncio.to_thread(in_transaction, self._engine, work, locked=locked)
        except Exception as error:
            _log.exception("a fetched file could not be taken", kind=row.kind)
            await asyncio.to_thread(self._later, row, error)
        self._done()

    def _claim(self) -> list[FetchRow]:
        """Take rows that are due, for the length of the lease."""
        now = self._clock.now()
        due = (
            select(FetchRow.id)
            .where(FetchRow.status == "waiting", col(FetchRow.not_before) <= now)
            .order_by(col(FetchRow.id))
            .limit(AT_ONCE)
            .with_for_update(skip_locked=True)
        )
        with claiming(self._engine) as session:
            claimed = session.scalars(
                update(FetchRow)
                .where(col(FetchRow.id).in_(due))
                .values(not_before=now + LEASE, attempts=FetchRow.attempts + 1)
                .returning(FetchRow)
                .execution_options(synchronize_session=False, populate_existing=True)
            )
            return sorted(claimed, key=id_of)

    def _later(self, row: FetchRow, error: Exception) -> None:
        with claiming(self._engine) as session:
            open_row = session.get(FetchRow, row.id, with_for_update=True)
            if open_row is None or open_row.status != "waiting":
                return
            open_row.problem = error_name(error)
            if open_row.attempts > MOST_ATTEMPTS:  # the use case itself fails again and again
                open_row.status = "failed"
            open_row.not_before = self._clock.now() + retry_span(
                open_row.attempts, FIRST_RETRY, LONGEST_RETRY
            )
            session.add(open_row)
