"""Two bot processes on one database, started, stopped, frozen and killed."""

from __future__ import annotations

import asyncio
import os
import signal
import subprocess
import sys
from collections import Counter
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path
from typing import Any

from tests.support.chats import ROOT, TOKEN
from tests.support.shaken.line import Line
from tests.support.shaken.process import CLOCK
from tests.support.started import Started

MODULE = "tests.support.shaken.process"
#: One start in so many begins from nothing. The others are forked off a process that has loaded the
#: modules and tables and has nothing open: no database, event loop, socket or thread (`started.py`
#: sees to that). All that a crash can tear begins after that point (connections, locks, transactions,
#: what is on its way), and SIGKILL takes it from a forked process as from any; what a forked start does
#: not do is read the program from the disk. It costs a fifth of a fresh one, so there are five times
#: as many kills.
FRESH_EVERY = 25
AGAIN_AFTER_S = 0.1  # what ended by itself is started again, as the service unit does
LOOK_EVERY_S = 0.02
TIME_TO_STOP_S = 15.0


class Bots:
    """Processes 0 and 1. `ended`: the exit codes of those that ended without being told to."""

    def __init__(self, line: Line, url: str, clock: Path, log: Path) -> None:
        self.ended: Counter[int] = Counter()
        self.starts: Counter[str] = Counter()
        self.cpu_s = 0.0  # spent by those that were told to end
        self._line = line
        self._url = url
        self._clock = clock
        self._log = log
        self._running: dict[int, subprocess.Popen[Any]] = {}
        self._told: set[int] = set()  # process ids that are to end
        self._gone: list[subprocess.Popen[Any]] = []
        self._tending: asyncio.Task[None] | None = None

    def begin(self) -> None:
        self._tending = asyncio.create_task(self._tend())

    async def end(self) -> None:
        """Kill what is there, and hear that all are gone."""
        for number in tuple(self._running):
            self.kill(number)
        if self._tending is not None:
            self._tending.cancel()
        for process in self._gone:
            await asyncio.to_thread(process.wait, TIME_TO_STOP_S)

    @property
    def running(self) -> list[int]:
        return sorted(self._running)

    def is_up(self, number: int) -> bool:
        """Whether it has called Telegram since it was started."""
        return number in self._running and self._line.called[number].is_set()

    async def start(self, number: int, *, fresh: bool | None = None) -> None:
        if number in self._running:
            return
        if fresh is None:
            fresh = sum(self.starts.values()) % FRESH_EVERY == FRESH_EVERY - 1
        self.starts["fresh" if fresh else "forked"] += 1
        self._line.called[number].clear()
        with self._log.open("a") as log:
            how: dict[str, Any] = {"cwd": ROOT, "env": self._environment(number), "stderr": log}
            if fresh:
                process = subprocess.Popen([sys.executable, "-m", MODULE], **how)
            else:
                process = Started("-m", MODULE, **how)
        self._running[number] = process

    def kill(self, number: int) -> bool:
        """SIGKILL, where it runs."""
        return self._send(number, signal.SIGKILL)

    async def stop(self, number: int) -> bool:
        """SIGTERM, and some time to finish what was begun."""
        process = self._running.get(number)
        if process is None or not self._send(number, signal.SIGTERM):
            return False
        asyncio.get_running_loop().call_later(TIME_TO_STOP_S, _kill_if_there, process)
        return True

    async def freeze(self, number: int, seconds: float) -> bool:
        """As a machine does that is put aside for a moment."""
        process = self._running.get(number)
        if process is None:
            return False
        with suppress(ProcessLookupError):
            os.kill(process.pid, signal.SIGSTOP)
            await asyncio.sleep(seconds)
            os.kill(process.pid, signal.SIGCONT)
        return True

    def _send(self, number: int, what: signal.Signals) -> bool:
        process = self._running.pop(number, None)
        if process is None or process.poll() is not None:
            return False
        with suppress(ProcessLookupError):
            self.cpu_s += _cpu_s(process.pid)
            os.kill(process.pid, what)
        self._gone.append(process)
        return True

    async def _tend(self) -> None:
        """Start again what ended by itself; let go of what is gone."""
        while True:
            await asyncio.sleep(LOOK_EVERY_S)
            self._gone = [one for one in self._gone if one.poll() is None]
            for number, process in tuple(self._running.items()):
                code = process.poll()
                if code is not None and self._running.get(number) is process:
                    del self._running[number]
                    self.ended[code] += 1
                    await asyncio.sleep(AGAIN_AFTER_S)
                    await self.start(number)

    def _environment(self, number: int) -> Mapping[str, str]:
        own = {key: value for key, value in os.environ.items() if not key.startswith("BRIMLINE_")}
        return own | {
            "BRIMLINE_BOT_TOKEN": TOKEN,
            "BRIMLINE_API_BASE_URL": self._line.url(number),
            "BRIMLINE_DATABASE_URL": self._url,
            "BRIMLINE_PHOTO_DIR": str(self._log.parent / "photos"),
            "BRIMLINE_TICK_SECONDS": "0.2",
            CLOCK: str(self._clock),
        }


def _kill_if_there(process: subprocess.Popen[Any]) -> None:
    if process.poll() is None:
        process.kill()


def _cpu_s(pid: int) -> float:
    """What a process has spent so far; 0 where the system has no such files."""
    with suppress(OSError):
        figures = Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()
        return (int(figures[11]) + int(figures[12])) / os.sysconf("SC_CLK_TCK")
    return 0.0
