"""When Python looks for objects that hold each other: not while it can find none.

Reference counts free nearly everything. The search for the rest goes through all that is alive, again
and again while a file of ten thousand rows is made of parts that are all still needed.
"""

from __future__ import annotations

import gc
import threading
from collections.abc import Iterator
from contextlib import contextmanager

_lock = threading.Lock()
_pauses = 0


@contextmanager
def unsearched() -> Iterator[None]:
    """No search until the last of those who asked for it is done."""
    global _pauses  # noqa: PLW0603 - the switch is the process's own, too
    with _lock:
        _pauses += 1
        gc.disable()
    try:
        yield
    finally:
        with _lock:
            _pauses -= 1
            if not _pauses:
                gc.enable()


def leave_out_what_is_loaded() -> None:
    """What is there now stays for good: it is never searched again."""
    gc.collect()
    gc.freeze()
