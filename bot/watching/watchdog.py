"""Ends the process where it hangs, so that whoever keeps it running starts it again.

A loop that stands still, a lock that is never given back, a library that never returns: such a process
is there for its service manager, its database and Telegram, and does nothing. So it says every few
seconds that it lives; where it has not for a minute, a thread of the interpreter's own, which waits
for nothing of it, writes to standard error where each thread stands and ends it. What it was doing
is undone or unknown then, as after any crash. The traces name functions and lines, and no values.
"""

from __future__ import annotations

import asyncio
import faulthandler

import structlog

from bot.core.timing.waiting import Underway

#: Our own choice: no pause of a busy machine lasts a minute, nor any wait for a database five.
STANDS_STILL_S, LONGEST_S = 60.0, 300.0
SAYS_EVERY_S = 5.0

_log = structlog.get_logger(__name__)


async def watched(
    *at_work: Underway, still_s: float = STANDS_STILL_S, longest_s: float = LONGEST_S
) -> None:
    """Say that this process lives until cancelled; no longer once one of these has been at one thing
    for so long.
    """
    try:
        while True:
            if all(one.longest_s() < longest_s for one in at_work):
                faulthandler.dump_traceback_later(still_s, exit=True)
            else:
                _log.error("something has been underway for too long", seconds=longest_s)
            await asyncio.sleep(min(SAYS_EVERY_S, still_s / 4))
    finally:
        faulthandler.cancel_dump_traceback_later()
