"""A right that one process holds at a time: to poll Telegram; on SQLite, to send from the outbox.

Several processes may share a database, but Telegram gives updates to one poller only. The right is
tied to an open connection, so it is free the moment its holder dies.
"""

from __future__ import annotations

import sqlite3
import zlib
from contextlib import suppress
from pathlib import Path

from sqlalchemy import Connection, Engine, text
from sqlalchemy.exc import DBAPIError

from bot.store.db import is_sqlite

#: Our own choice: whoever polls asks after its right more often, but where Telegram bids it wait.
IDLE_S = 120
# A server older than the setting has none to set.
_IDLE = text(
    "SELECT set_config(name, CAST(:limit_ms AS TEXT), false) FROM pg_settings"
    " WHERE name = 'idle_session_timeout'"
)


def let_go_when_idle(connection: Connection, seconds: float) -> None:
    """Have the server end this connection, and with it whatever right it holds, once nothing has come
    over it for so long: a process that is frozen or hangs is there, as far as its machine is concerned.
    To be said of a connection that is never given back to the pool.
    """
    connection.execute(_IDLE, {"limit_ms": round(1000 * seconds)})


class LeaderLease:
    """Taken with `hold`, and asked again and again, because a lost connection loses it."""

    def __init__(self, engine: Engine, name: str) -> None:
        self._engine = engine
        self._name = name
        self._on_file: sqlite3.Connection | None = None
        self._on_server: Connection | None = None

    @property
    def _key(self) -> int:
        return zlib.crc32(f"brimline:{self._name}".encode())

    def hold(self) -> bool:
        """Whether this process has the right now; takes it where it is free."""
        return self._hold_file() if is_sqlite(self._engine) else self._hold_on_server()

    def release(self) -> None:
        """Give it back; harmless where it is not held."""
        if self._on_file is not None:
            self._on_file.close()
            self._on_file = None
        if self._on_server is not None:
            held, self._on_server = self._on_server, None
            # The lock belongs to the server's session, which the pool would keep alive; and the server
            # may notice the end of that only later, so the right is given back in so many words.
            if not held.invalidated:
                with suppress(DBAPIError):
                    held.execute(text("SELECT pg_advisory_unlock(:key)"), {"key": self._key})
            held.invalidate()
            held.close()

    def _hold_file(self) -> bool:
        if self._on_file is not None:
            return True
        database = self._engine.url.database
        assert database is not None
        connection = sqlite3.connect(
            Path(f"{database}-{self._name}.lock"), timeout=0, check_same_thread=False
        )
        try:
            connection.execute("BEGIN EXCLUSIVE").close()
        except sqlite3.OperationalError:
            connection.close()
            return False
        self._on_file = connection
        return True

    def _hold_on_server(self) -> bool:
        if self._on_server is not None:
            try:
                self._on_server.execute(text("SELECT 1"))
            except DBAPIError:
                self.release()
            else:
                return True
        connection = self._engine.connect().execution_options(isolation_level="AUTOCOMMIT")
        asked = {"key": self._key}
        if connection.execute(text("SELECT pg_try_advisory_lock(:key)"), asked).scalar():
            let_go_when_idle(connection, IDLE_S)
            self._on_server = connection
            return True
        connection.close()
        return False
