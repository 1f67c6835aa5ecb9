"""What is being done now, and since when, by the machine's own time, which no clock holds up."""

from __future__ import annotations

import time
from collections.abc import Iterator
from contextlib import contextmanager


class Underway:
    """Told by those who do something, and asked by whoever sees to it that they come to an end."""

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
