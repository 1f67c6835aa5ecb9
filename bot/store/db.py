"""The database: an embedded SQLite file, or PostgreSQL, behind one way to open a transaction.

SQLite runs in WAL with a busy timeout; every writing transaction begins IMMEDIATE (a deferred one
that reads and then writes fails with "database is locked" however long the timeout is), and the
writers of one process take turns at a lock instead of polling the file. `synchronous` is FULL: an
update is confirmed to Telegram once it is committed, so a commit has to outlive a power cut.

On PostgreSQL use cases lock the people they concern first (`bot.people.locks`) and then run READ
COMMITTED (`locked`): two about the same people come out as one after the other, as on SQLite. What
locks nobody runs SERIALIZABLE, to the same end. Whoever loses is run again (`in_transaction`). Claims
of queue rows lock single rows and run READ COMMITTED, because SKIP LOCKED is made for it.
"""

from __future__ import annotations

import random
import sqlite3
import threading
import time
import weakref
from collections import Counter
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from functools import partial
from importlib import resources
from pathlib import Path
from typing import Any, TypeVar

import structlog
from sqlalchemy import Connection, Dialect, Engine, create_engine, event, inspect, make_url, text
from sqlalchemy.dialects import registry
from sqlalchemy.dialects.sqlite.pysqlite import SQLiteDialect_pysqlite
from sqlalchemy.engine import URL
from sqlalchemy.exc import ArgumentError, DBAPIError, DisconnectionError, OperationalError
from sqlalchemy.pool import ConnectionPoolEntry, PoolProxiedConnection
from sqlmodel import Session

from bot.store import traces
from bot.store.driver import from_text, to_text
from bot.store.reading import ReadsPlainly
from bot.store.remembering import RemembersReads
from bot.store.working_out import AtHand, NotWorkedOut

BUSY_TIMEOUT_S = 30
CONNECT_TIMEOUT_S = 10
KEEPALIVES = {"keepalives_idle": 30, "keepalives_interval": 10, "keepalives_count": 3}
# A process that vanished with its machine must not hold rights and row locks for TCP's two hours: the
# server asks after it, and counts it as gone after eleven seconds. On one machine it is told at once.
OPTIONS = {
    "idle_in_transaction_session_timeout": 60_000,
    "tcp_keepalives_idle": 5, "tcp_keepalives_interval": 2, "tcp_keepalives_count": 3,
}  # fmt: skip
BELIEVED_FOR_S = 5.0
# A check-in, a card and the roster together put more than psycopg's 100; what it drops is planned anew.
STATEMENTS_PREPARED = 300

# Class 40 of the SQLSTATE codes: the transaction was rolled back and may simply be run again.
SERIALIZATION_FAILURE, DEADLOCK = "40001", "40P01"
ATTEMPTS_AT_A_TRANSACTION = 10
# On SQLite each attempt has waited for as long as BUSY_TIMEOUT_S already.
ATTEMPTS_AT_A_FILE = 3
HELD_LONG_S = 5.0
_PASSES_ON_A_FILE = ("BUSY", "LOCKED", "FULL", "IOERR", "READONLY", "PROTOCOL")
_NEVER_PASSES = ("authentication failed", "does not exist", "no pg_hba.conf entry")
PAUSE_S = 0.004

_Result = TypeVar("_Result")
_log = structlog.get_logger(__name__)
_run_again: Counter[str] = Counter()
_writing: weakref.WeakKeyDictionary[Any, threading.RLock] = weakref.WeakKeyDictionary()


def database_url(text: str) -> URL:
    """The address with the driver named; ValueError where it is neither SQLite nor PostgreSQL."""
    try:
        url = make_url(text)
    except ArgumentError:
        raise ValueError("is not a database address (sqlite:///file or postgresql://...)") from None
    backend = url.drivername.split("+")[0]
    if backend == "sqlite":
        if not url.database or url.database == ":memory:":
            raise ValueError("names no file; what is kept in memory is lost at the first stop")
        return url.set(drivername="sqlite+pysqlite")
    if backend in ("postgres", "postgresql"):
        return url.set(drivername="postgresql+psycopg")
    raise ValueError("must begin with sqlite:/// or postgresql://")


def make_engine(url: str) -> Engine:
    """An engine for this address; opens no connection yet.

    Raises ValueError on a bad address, OSError where an SQLite file cannot be made.
    """
    address = database_url(url)
    if address.drivername.startswith("postgresql"):
        engine = create_engine(
            address,
            hide_parameters=True,
            json_serializer=to_text,
            json_deserializer=from_text,
            pool_size=10,
            pool_use_lifo=True,  # a few connections that have everything prepared, not ten by turns
            max_overflow=10,
            connect_args={
                "connect_timeout": CONNECT_TIMEOUT_S,
                "options": " ".join(f"-c {name}={value}" for name, value in OPTIONS.items()),
                **KEEPALIVES,
            },
        )
        event.listen(engine, "connect", _set_up_postgresql)
        event.listen(engine, "checkin", _note_its_use)
        event.listen(engine, "checkout", partial(_ask_whether_it_lives, engine.dialect))
        return engine
    assert address.database is not None
    file = Path(address.database).expanduser()
    _make_private(file)
    engine = create_engine(
        address.set(drivername=_AS_TOLD, database=str(file)),
        hide_parameters=True,
        json_serializer=to_text,
        json_deserializer=from_text,
        connect_args={"timeout": BUSY_TIMEOUT_S, "check_same_thread": False},
    )
    event.listen(engine, "connect", _set_up_sqlite)
    _writing[engine.pool] = threading.RLock()
    return engine


def _make_private(file: Path) -> None:
    """It will hold health data: nobody but its owner may read it."""
    file.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    if not file.exists():
        file.touch(mode=0o600)


def is_sqlite(engine: Engine) -> bool:
    return engine.dialect.name == "sqlite"


class _UseCaseSession(RemembersReads):
    """A session of a use case."""

    def __init__(self, bind: Engine | Connection) -> None:
        super().__init__(bind, expire_on_commit=False)


@contextmanager
def transaction(engine: Engine, *, locked: bool = False) -> Iterator[Session]:
    """One writing transaction of a use case: committed at the end, rolled back on an exception.

    `locked`: it takes explicit locks on whatever it reads in order to write.
    """
    level = "READ COMMITTED" if locked else "SERIALIZABLE"
    with _session(engine, postgresql_level=level) as session:
        yield session


@contextmanager
def looking(engine: Engine) -> Iterator[Session]:
    """For whoever only reads: each read stands for itself, and nothing that is written is kept.

    On PostgreSQL without a transaction, which would end by ROLLBACK: at each of these psycopg drops
    whatever the connection has prepared, and the next use case has all its statements planned anew.
    """
    with ReadsPlainly(engine, expire_on_commit=False) as session:
        if not is_sqlite(engine):
            session.connection(execution_options={"isolation_level": "AUTOCOMMIT"})
        yield session


@contextmanager
def claiming(engine: Engine) -> Iterator[Session]:
    """One short transaction that takes rows off a queue or notes what became of them."""
    with _session(engine, postgresql_level="READ COMMITTED") as session:
        yield session


@contextmanager
def claiming_on(connection: Connection) -> Iterator[Session]:
    """The same on a connection that is somebody's own, which is READ COMMITTED (PostgreSQL)."""
    with _UseCaseSession(connection) as session, session.begin():
        yield session


@contextmanager
def looking_ahead(engine: Engine, at_hand: AtHand) -> Iterator[Session]:
    """`looking`, for whoever works out what a use case will need before it begins."""
    with _UseCaseSession(engine) as session, session.no_autoflush:
        if not is_sqlite(engine):
            session.connection(execution_options={"isolation_level": "AUTOCOMMIT"})
        at_hand.looks_ahead(session)
        yield session


def in_transaction(
    engine: Engine,
    work: Callable[[Session], _Result],
    *,
    locked: bool = False,
    at_hand: AtHand | None = None,
) -> _Result:
    """Run a use case in a transaction; run it again where another one got in its way, or once what it
    turned out to need has been worked out. `at_hand`: what has been already.
    """
    at_hand, attempt = at_hand or AtHand(), 1
    while True:
        try:
            with transaction(engine, locked=locked) as session:
                at_hand.begins(session)
                return work(session)
        except NotWorkedOut as needed:
            doing = needed.work
        except DBAPIError as error:
            if attempt >= _most_attempts(error):
                raise
            _run_again[code_of(error)] += 1
            doing = partial(time.sleep, random.uniform(0, PAUSE_S * attempt))  # out of step
            attempt += 1
        doing()


def times_run_again() -> dict[str, int]:
    """How many transactions this process has run again since its start, by SQLSTATE."""
    return dict(_run_again)


@contextmanager
def _session(engine: Engine, *, postgresql_level: str) -> Iterator[Session]:
    # Said of the connection: an engine with options of its own, made for each transaction, costs more.
    if not is_sqlite(engine):
        with _UseCaseSession(engine) as session, session.begin():
            session.connection(execution_options={"isolation_level": postgresql_level})
            yield session
        return
    with _writing[engine.pool]:
        turn = _Turn()
        try:
            with _UseCaseSession(engine) as session, session.begin():
                # The session begins lazily; the lock on the file is wanted from the first line on.
                session.connection(execution_options={"begin_immediate": True})
                turn.came()
                yield session
        finally:
            turn.ends()
        if traces.is_to_leave_none(session):
            traces.write_small_file_anew(engine)


def write_file_anew(engine: Engine) -> None:
    """On SQLite, where somebody's data went from a file too large for it to be done at once."""
    if is_sqlite(engine):
        with _writing[engine.pool]:
            traces.write_file_anew(engine)


class _Turn:
    """A turn to write, timed: who keeps others waiting is found in the log, by its update or duty."""

    def __init__(self) -> None:
        self._has_come, self._since = False, time.monotonic()

    def came(self) -> None:
        self._tell()
        self._has_come, self._since = True, time.monotonic()

    def ends(self) -> None:
        self._tell()

    def _tell(self) -> None:
        spent = time.monotonic() - self._since
        if spent < HELD_LONG_S:
            return
        if self._has_come:
            _log.warning("a transaction kept others from writing", seconds=round(spent, 1))
        else:
            _log.warning("another process kept this one from writing", seconds=round(spent, 1))


def may_pass(error: OperationalError) -> bool:
    """Whether a database that cannot be opened may come back by itself, or be helped while the bot
    waits: away, starting or busy, on a full disk or one that may not be written just now.

    A wrong password or name does not; psycopg gives failed connections no SQLSTATE, only words.
    """
    if isinstance(error.orig, sqlite3.Error):
        return code_of(error).removeprefix("SQLITE_").startswith(_PASSES_ON_A_FILE)
    said = str(error.orig).lower()
    return not any(words in said for words in _NEVER_PASSES)


def code_of(error: DBAPIError) -> str:
    """The database's own code for what went wrong: an SQLSTATE, or SQLite's name."""
    named = getattr(error.orig, "sqlstate", None) or getattr(error.orig, "sqlite_errorname", None)
    return str(named or "")


def _most_attempts(error: DBAPIError) -> int:
    """How often what ended like this may be tried; it was rolled back whole."""
    code = code_of(error)
    if code in (SERIALIZATION_FAILURE, DEADLOCK):
        return ATTEMPTS_AT_A_TRANSACTION
    return ATTEMPTS_AT_A_FILE if code.startswith("SQLITE_BUSY") else 1


def _set_up_postgresql(connection: Any, _record: object) -> None:
    connection.prepared_max = STATEMENTS_PREPARED


def _note_its_use(_connection: object, record: ConnectionPoolEntry) -> None:
    record.info["used"] = time.monotonic()


def _ask_whether_it_lives(
    dialect: Dialect, connection: Any, record: ConnectionPoolEntry, _proxy: object
) -> None:
    """A connection that has lain idle may be gone, with its server or a firewall's patience; the pool
    opens another one then. One that was just in use is believed: the question is a round trip.
    """
    used = record.info.get("used")
    if used is None or time.monotonic() - used < BELIEVED_FOR_S:
        return
    try:
        dialect.do_ping(connection)
    except dialect.loaded_dbapi.Error as error:
        raise DisconnectionError from error


def _set_up_sqlite(connection: sqlite3.Connection, _record: object) -> None:
    connection.isolation_level = None  # the driver begins nothing by itself; _BeginsAsTold does
    for pragma in (
        "journal_mode = WAL",
        "synchronous = FULL",
        "foreign_keys = ON",
        "secure_delete = ON",  # what is deleted is overwritten, not left in free pages
        f"busy_timeout = {BUSY_TIMEOUT_S * 1000}",
    ):
        connection.execute(f"PRAGMA {pragma}").close()


class _BeginsAsTold(SQLiteDialect_pysqlite):
    """Begins a transaction in so many words, with the lock on the file at once where it will write
    (`execution_options(begin_immediate=True)` on a connection, for the transaction it begins next).

    A listener for "begin" would do the same, and have every statement of the engine look for listeners.
    """

    supports_statement_cache = True

    def set_connection_execution_options(
        self, connection: Connection, opts: Mapping[str, Any]
    ) -> None:
        super().set_connection_execution_options(connection, opts)
        if opts.get("begin_immediate"):
            connection.info["begin_immediate"] = True

    def do_begin(self, dbapi_connection: PoolProxiedConnection) -> None:
        immediate = dbapi_connection.info.pop("begin_immediate", False)
        dbapi_connection.cursor().execute("BEGIN IMMEDIATE" if immediate else "BEGIN")


_AS_TOLD = "sqlite+as_told"
registry.register(_AS_TOLD.replace("+", "."), __name__, _BeginsAsTold.__name__)


VERSIONS = "bot.store.migrations.versions"


def newest() -> str:
    """The revision that this version brings a database to: they are one chain of numbers."""
    names = (file.name for file in resources.files(VERSIONS).iterdir())
    return max(name.partition("_")[0] for name in names if name[:1].isdigit())


def is_newest(engine: Engine) -> bool:
    """Whether the database is at it."""
    with engine.connect() as connection:
        if not inspect(connection).has_table("alembic_version"):
            return False
        found = connection.execute(text("SELECT version_num FROM alembic_version")).scalars().all()
    return found == [newest()]
