"""Waiting for work: woken at once in this process, and looking again after a while regardless."""

from __future__ import annotations

import asyncio
import time
from collections.abc import Awaitable, Callable, Iterator
from contextlib import contextmanager
from datetime import timedelta

import structlog

from bot.core.timing.clock import Clock

FIRST_PAUSE_S, LONGEST_PAUSE_S = 1.0, 30.0

_log = structlog.get_logger(__name__)


async def wait_for(wake: asyncio.Event, clock: Clock, seconds: float) -> None:
    """Until somebody wakes us, or that long by the clock; takes the call for granted either way."""
    waits = [asyncio.ensure_future(wake.wait()), asyncio.ensure_future(clock.sleep(seconds))]
    try:
        await asyncio.wait(waits, return_when=asyncio.FIRST_COMPLETED)
    finally:
        for wait in waits:
            wait.cancel()
        await asyncio.gather(*waits, return_exceptions=True)
    wake.clear()


def growing_pause(failures: int) -> float:
    """Seconds to wait after so many failures in a row: 1, 2, 4, ... up to 30."""
    return float(min(FIRST_PAUSE_S * 2 ** min(failures - 1, 10), LONGEST_PAUSE_S))


def retry_span(attempts: int, first: timedelta, longest: timedelta) -> timedelta:
    """How long a row that failed so often is put off: doubling from `first` up to `longest`."""
    return min(first * (1 << min(attempts - 1, 20)), longest)


async def keep_going(name: str, clock: Clock, step: Callable[[], Awaitable[None]]) -> None:
    """Repeat a step for ever; one that fails is logged and repeated after a growing pause."""
    failures = 0
    while True:
        try:
            await step()
            failures = 0
        except Exception:
            failures += 1
            _log.exception("a step failed", name=name, count=failures)
            await clock.sleep(growing_pause(failures))


class Underway:
    """What is being done now, and since when, by the machine's own time, which no clock holds up.

    Told by those who do something, and asked by whoever sees to it that they come to an end."""

    def __init__(self) -> None:
        self._since: dict[object, float] = {}

    @contextmanager
    def doing(self) -> Iterator[None]:
        what = object()
        self._since[what] = time.monotonic()
        try:
            yield
        finally:
            del self._since[what]

    def longest_s(self) -> float:
        """For how many seconds something has been at the longest of what it is at."""
        began = min(self._since.copy().values(), default=None)
        return 0.0 if began is None else time.monotonic() - began
