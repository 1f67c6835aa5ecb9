"""Time as the bot sees it: the machine's, or one that a test or a rehearsal drives."""

from __future__ import annotations

import asyncio
import heapq
import itertools
import time
from datetime import UTC, datetime, timedelta
from typing import Protocol


class Clock(Protocol):
    """Where the bot gets the time from, and how it waits."""

    def now(self) -> datetime:
        """The present instant, in UTC."""

    def monotonic(self) -> float:
        """Seconds that only ever grow, however the wall clock is set."""

    async def sleep(self, seconds: float) -> None:
        """Wait that long by this clock."""


class RealClock:
    """The machine's clock."""

    def now(self) -> datetime:
        return datetime.now(UTC)

    def monotonic(self) -> float:
        return time.monotonic()

    async def sleep(self, seconds: float) -> None:
        await asyncio.sleep(seconds)


_SAME_INSTANT_S = 1e-6  # sums of seconds differ in their last digits


class DrivenClock:
    """A clock that stands still until it is moved; sleepers wake when it passes their instant."""

    def __init__(self, start: datetime) -> None:
        if start.tzinfo is None:
            raise ValueError("a clock starts at an instant with a zone")
        self._now = start.astimezone(UTC)
        self._ran = 0.0
        self._order = itertools.count()
        self._sleepers: list[tuple[float, int, asyncio.Future[None]]] = []

    def now(self) -> datetime:
        return self._now

    def monotonic(self) -> float:
        return self._ran

    async def sleep(self, seconds: float) -> None:
        if seconds <= 0:
            await asyncio.sleep(0)
            return
        woken: asyncio.Future[None] = asyncio.get_running_loop().create_future()
        due = self._ran + seconds
        heapq.heappush(self._sleepers, (due, next(self._order), woken))
        await woken

    @property
    def sleepers(self) -> int:
        """How many wait for this clock."""
        return sum(not woken.done() for _, _, woken in self._sleepers)

    def move_to_next(self) -> float:
        """Move on to where the first sleeper wakes; returns the seconds that takes."""
        due = min(due for due, _, woken in self._sleepers if not woken.done())
        seconds = max(0.0, due - self._ran)
        self._run(seconds)
        return seconds

    def advance(self, span: timedelta) -> None:
        """Move on by this span, at least zero."""
        self.move_to(self._now + span)

    def move_to(self, instant: datetime) -> None:
        """Move on to this instant; time does not run backwards."""
        instant = instant.astimezone(UTC)
        if instant < self._now:
            raise ValueError("a driven clock does not run backwards")
        self._run((instant - self._now).total_seconds())
        self._now = instant

    def set(self, instant: datetime) -> None:
        """Set the wall clock, forward or back, as an administrator would; nobody's wait ends."""
        self._now = instant.astimezone(UTC)

    def _run(self, seconds: float) -> None:
        self._now += timedelta(seconds=seconds)
        self._ran += seconds
        while self._sleepers and self._sleepers[0][0] <= self._ran + _SAME_INSTANT_S:
            _, _, woken = heapq.heappop(self._sleepers)
            if not woken.done():
                woken.set_result(None)


#: Our own choice: what has waited longest is come to in the first seconds after a start.
FIRST_WHILE_S = 20.0


class FirstWhile:
    """Lasts for so many seconds from when it is asked about first."""

    def __init__(self, clock: Clock, for_s: float) -> None:
        self._clock = clock
        self._for_s = for_s
        self._until: float | None = None

    @property
    def lasts(self) -> bool:
        if self._until is None:
            self._until = self._clock.monotonic() + self._for_s
        return self._clock.monotonic() < self._until
