"""A wall clock in a file, that all processes of a run share and a test can set."""

from __future__ import annotations

import asyncio
import os
import struct
import time
from datetime import UTC, datetime, timedelta
from pathlib import Path

#: Ten seconds of the bot's in one of ours: what it waits for (its pace, growing pauses, leases of a
#: minute) would else take most of a run.
SPEED = 10
_FORM = struct.Struct("<ddd")


class Wall:
    """The bot's clock, as `bot.core.timing.clock.Clock` asks for one.

    The file holds the instant at which it began (Unix seconds), what the machine's growing clock said
    then, and by how many seconds it has been set since.
    """

    def __init__(self, file: Path) -> None:
        self._file = os.open(file, os.O_RDWR | os.O_CREAT, 0o600)

    @classmethod
    def begin(cls, file: Path, start: datetime) -> Wall:
        wall = cls(file)
        wall._write(start.timestamp(), time.monotonic(), 0.0)
        return wall

    def now(self) -> datetime:
        began, ran, was_set = self._read()
        return datetime.fromtimestamp(began + (time.monotonic() - ran) * SPEED + was_set, UTC)

    def monotonic(self) -> float:
        return time.monotonic() * SPEED

    async def sleep(self, seconds: float) -> None:
        await asyncio.sleep(seconds / SPEED)

    def was_set_by(self) -> float:
        """Seconds, forward or back, since the start."""
        return self._read()[2]

    def set_by(self, span: timedelta) -> None:
        """Set it forward or back, as an administrator would."""
        began, ran, was_set = self._read()
        self._write(began, ran, was_set + span.total_seconds())

    def close(self) -> None:
        os.close(self._file)

    def _read(self) -> tuple[float, float, float]:
        began, ran, was_set = _FORM.unpack(os.pread(self._file, _FORM.size, 0))
        return began, ran, was_set

    def _write(self, *figures: float) -> None:
        os.pwrite(self._file, _FORM.pack(*figures), 0)
