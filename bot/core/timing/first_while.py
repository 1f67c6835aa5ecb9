"""The first while of a process, in which it notes what it begins on, before it does."""

from __future__ import annotations

from bot.core.timing.clock import Clock

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
