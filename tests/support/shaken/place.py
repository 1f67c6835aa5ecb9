"""Where the database of a run lies, and what can become of it there."""

from __future__ import annotations

import asyncio
import itertools
import json
import os
import shutil
import sqlite3
import subprocess
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Protocol

import psycopg
from sqlalchemy import Engine

from bot.store.db import make_engine
from bot.store.migrate import upgrade_to_head
from tests.support.databases import Server, postgres_server
from tests.support.images import image_of
from tests.support.shaken.schedule import Fault

SMALL_BYTES = {"sqlite": 64_000_000, "postgresql": 400_000_000}
PREPARED = "prepared"


class Disk:
    """A small disk of its own. `small` is whether it could be had: else it is a folder like others."""

    def __init__(self, folder: Path, *, small: bool) -> None:
        self.folder = folder
        self.small = small
        self._ballast = folder / "ballast"

    def fill(self, spare_bytes: int) -> None:
        """Leave that much room on it."""
        found = os.statvfs(self.folder)
        wanted = found.f_bavail * found.f_frsize - spare_bytes
        if wanted > 0:
            with self._ballast.open("ab") as ballast:
                size = ballast.tell()
                try:
                    os.posix_fallocate(ballast.fileno(), size, wanted)
                except OSError:  # somebody wrote meanwhile
                    os.truncate(self._ballast, size)

    def clear(self) -> None:
        self._ballast.unlink(missing_ok=True)


@contextmanager
def small_disk(size_bytes: int) -> Iterator[Disk]:
    """A disk in memory, where this user may mount one."""
    folder = Path(tempfile.mkdtemp(prefix="brimline-disk-"))
    mounted = os.getuid() == 0 and not subprocess.call(
        ["mount", "-t", "tmpfs", "-o", f"size={size_bytes},mode=755", "none", str(folder)],
        stderr=subprocess.DEVNULL,
    )
    try:
        yield Disk(folder, small=mounted)
    finally:
        if mounted:
            subprocess.call(["umount", "-l", str(folder)])
        shutil.rmtree(folder, ignore_errors=True)


class Place(Protocol):
    """Databases alike, and what only such a one meets."""

    disk: Disk
    faults: frozenset[Fault]

    def new(self) -> str:
        """The address of one more database, filled as all of them are; the one before is gone."""

    async def suffer(self, fault: Fault, seconds: float) -> None:
        """One of `faults`, for so long."""

    async def recover(self) -> None:
        """Bring back what does not come back by itself."""

    def keep(self, folder: Path) -> None:
        """Copy the database as it stands."""


class OnFile:
    """SQLite."""

    def __init__(self, disk: Disk, fill: Callable[[Engine], None]) -> None:
        self.disk = disk
        self.faults = frozenset({Fault.LOCKED})
        self._numbers = itertools.count(1)
        self._folder = disk.folder
        self._prepared = Path(tempfile.mkdtemp(prefix="brimline-prepared-"))
        engine = make_engine(f"sqlite:///{self._prepared / PREPARED}")
        upgrade_to_head(engine)
        fill(engine)
        engine.dispose()

    def new(self) -> str:
        if self._folder != self.disk.folder:
            shutil.rmtree(self._folder)
        self._folder = self.disk.folder / str(next(self._numbers))
        self._folder.mkdir()
        self._file = self._folder / "brimline.sqlite3"
        shutil.copy(self._prepared / PREPARED, self._file)
        return f"sqlite:///{self._file}"

    async def suffer(self, fault: Fault, seconds: float) -> None:
        """Somebody else, a back-up say, keeps the file to themselves."""
        other = sqlite3.connect(self._file, timeout=0, isolation_level=None)
        try:
            for _ in range(500):
                try:
                    other.execute("BEGIN EXCLUSIVE").close()
                    break
                except sqlite3.OperationalError:
                    await asyncio.sleep(0.002)
            await asyncio.sleep(seconds)
        finally:
            other.close()

    async def recover(self) -> None:
        """Nothing is needed."""

    def keep(self, folder: Path) -> None:
        shutil.copytree(self._folder, folder / "database")

    def close(self) -> None:
        shutil.rmtree(self._prepared)


class OnServer:
    """PostgreSQL, a server of the run's own."""

    def __init__(self, disk: Disk, server: Server, fill: Callable[[Engine], None]) -> None:
        self.disk = disk
        self.faults = frozenset({Fault.RESTART, Fault.LINES_CUT})
        self._server = server
        self._numbers = itertools.count(1)
        self._name = ""
        server.execute(f"CREATE DATABASE {PREPARED}")
        engine = make_engine(server.url(PREPARED))
        upgrade_to_head(engine)
        fill(engine)
        engine.dispose()

    def new(self) -> str:
        if self._name:
            self._server.execute(f"DROP DATABASE {self._name} WITH (FORCE)")
        self._restarting = asyncio.Lock()  # each chapter has an event loop of its own
        self._name = f"run_{next(self._numbers)}"
        self._server.execute(f"CREATE DATABASE {self._name} TEMPLATE {PREPARED}")
        # A copied sequence believes that its next 32 numbers are in the log already; of the copy they
        # are not, and after a crash they would be given out again. From a checkpoint on it logs anew.
        self._server.execute("CHECKPOINT")
        return self._server.url(self._name)

    async def suffer(self, fault: Fault, seconds: float) -> None:
        if fault is Fault.RESTART:
            async with self._restarting:
                self.disk.clear()  # it would not come up again
                await asyncio.to_thread(self._server.restart)
            return
        with suppress(psycopg.OperationalError):  # it is away anyhow
            await asyncio.to_thread(
                self._server.execute,
                "SELECT pg_terminate_backend(pid) FROM pg_stat_activity "
                f"WHERE datname = '{self._name}' AND pid <> pg_backend_pid()",
            )

    async def recover(self) -> None:
        """A server that came upon a full disk as it was to come up again does not try once more."""
        async with self._restarting:
            for _ in range(30):
                with suppress(psycopg.OperationalError):
                    await asyncio.to_thread(self._server.execute, "SELECT 1")
                    return
                await asyncio.sleep(0.1)  # it may be about to
            await asyncio.to_thread(self._server.restart)

    def keep(self, folder: Path) -> None:
        shutil.copy(self._server.folder / "log", folder / "server.log")
        engine = make_engine(self._server.url(self._name))
        rows = image_of(engine)
        engine.dispose()
        (folder / "database.json").write_text(json.dumps(rows, default=str))

    def close(self) -> None:
        """The server is somebody else's."""


@contextmanager
def place(kind: str, fill: Callable[[Engine], None]) -> Iterator[Place]:
    """For databases of that kind ("sqlite", "postgresql"), each of them filled by `fill`."""
    with small_disk(SMALL_BYTES[kind]) as disk:
        if kind == "sqlite":
            on_file = OnFile(disk, fill)
            yield on_file
            on_file.close()
        else:
            with postgres_server("-c max_wal_size=64MB", disk.folder) as server:
                yield OnServer(disk, server, fill)
