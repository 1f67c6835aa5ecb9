"""Who sends to which chats: every chat is of one of a few shares, and each share is one process's.

On PostgreSQL processes divide the shares evenly. Each has a connection of its own here, whose server
session holds a lock that says "this process is there" and one for each of its shares, so that all of
them are free the moment the process dies. Who is there stands in `pg_locks`, the same for everybody,
and says which share should be whose: the first of them has every n-th from the first on, and so on. A
share that should be another's is let go as soon as nothing of it is underway. **Messages are claimed
on that same connection: who commits a claim holds the share at that moment**, whatever becomes of the
process or the line; two can never claim in one chat.

On SQLite, where there is one writer, one process has all of them, by a lock on a file.
"""

from __future__ import annotations

import threading
from collections.abc import Collection, Iterator
from contextlib import AbstractContextManager, contextmanager, suppress
from typing import Protocol

from sqlalchemy import Connection, Engine, text
from sqlalchemy.exc import DBAPIError
from sqlmodel import Session

from bot.store.db import claiming, claiming_on, is_sqlite
from bot.store.sole import LeaderLease, let_go_when_idle

#: Our own choice: whoever sends looks after its shares each second.
IDLE_S = 60
#: More would not send more: a token's pace is divided by them, and must leave each a whole call ahead.
SHARES = 4
ALL = frozenset(range(SHARES))

#: Apart, by the first of its two numbers, from the locks of people, desks and subjects.
_KIND, _THERE = 4, 0
_COME = text(f"SELECT pg_try_advisory_lock_shared({_KIND}, {_THERE})")
_NOBODY_THERE = text(f"SELECT pg_try_advisory_lock({_KIND}, {_THERE})")
_WHO_IS_THERE = text(f"""
    SELECT pid = pg_backend_pid() FROM pg_locks
    WHERE locktype = 'advisory' AND granted AND objsubid = 2
        AND classid = {_KIND} AND objid = {_THERE}
        AND database = (SELECT oid FROM pg_database WHERE datname = current_database())
    ORDER BY pid
""")
_TAKE = text(f"SELECT pg_try_advisory_lock({_KIND}, 1 + :share)")
_LEAVE = text("SELECT pg_advisory_unlock_all()")
_LET_GO = text(f"SELECT pg_advisory_unlock({_KIND}, 1 + :share)")


class NotHeldError(Exception):
    """The connection that held the shares is lost."""


def share_of(chat_id: int) -> int:
    """The share of a chat: its last bits, which are as evenly spread in groups, below zero."""
    return chat_id & (SHARES - 1)


class Shares(Protocol):
    """What one process may send."""

    #: Whether another process sends beside this one, as seen at the last look.
    among_others: bool
    #: Seconds for which another process may still be about to note what it has sent, once a share of
    #: its has come to this one: one that lost its connection and lives.
    noting_s: float

    def hold(self, busy: Collection[int]) -> frozenset[int]:
        """The shares that are this process's from now on; it keeps those that are busy, however they
        should be divided. To be called again and again, about once a second.
        """

    def claiming(self) -> AbstractContextManager[Session]:
        """A short transaction that is only committed while the shares are held. Raises NotHeldError
        where they are not.
        """

    def hold_alone(self) -> bool:
        """Whether nobody sends; if so, nobody begins to until `release`."""

    def release(self) -> None:
        """Give all of them back; harmless where none is held."""


def shares_of(engine: Engine) -> Shares:
    return _OnFile(engine) if is_sqlite(engine) else _OnServer(engine)


class _OnFile:
    noting_s = 0.0  # only who is gone has let go of the file
    among_others = False

    def __init__(self, engine: Engine) -> None:
        self._engine = engine
        self._right = LeaderLease(engine, "send")

    def hold(self, _busy: Collection[int]) -> frozenset[int]:
        return ALL if self._right.hold() else frozenset()

    def claiming(self) -> AbstractContextManager[Session]:
        return claiming(self._engine)

    def hold_alone(self) -> bool:
        return self._right.hold()

    def release(self) -> None:
        self._right.release()


class _OnServer:
    noting_s = 2.0

    def __init__(self, engine: Engine) -> None:
        self.among_others = False
        self._engine = engine
        self._connection: Connection | None = None
        self._held: frozenset[int] = frozenset()
        self._in_turn = threading.RLock()  # a connection is for one thread at a time

    def hold(self, busy: Collection[int]) -> frozenset[int]:
        with self._in_turn:
            if self._connection is not None and self._connection.invalidated:
                self.release()
            try:
                if self._connection is None and not self._come(exclusively=False):
                    return frozenset()
                self._held = self._divide(busy)
            except DBAPIError:
                self.release()
                raise
            return self._held

    @contextmanager
    def claiming(self) -> Iterator[Session]:
        with self._in_turn:
            # One that was lost would open anew by itself, without any lock.
            if self._connection is None or self._connection.invalidated:
                raise NotHeldError
            with claiming_on(self._connection) as session:
                yield session

    def hold_alone(self) -> bool:
        with self._in_turn:
            return self._connection is not None or self._come(exclusively=True)

    def release(self) -> None:
        with self._in_turn:
            self._held = frozenset()
            self.among_others = False
            if self._connection is None:
                return
            with suppress(DBAPIError), self._connection.begin():
                self._connection.execute(_LEAVE)  # others need not wait for the line to be closed
            # What is left belongs to the server's session, which the pool would keep alive.
            self._connection.invalidate()
            self._connection.close()
            self._connection = None

    def _come(self, *, exclusively: bool) -> bool:
        connection = self._engine.connect().execution_options(isolation_level="READ COMMITTED")
        with connection.begin():
            come = connection.execute(_NOBODY_THERE if exclusively else _COME).scalar_one()
            if come and not exclusively:  # who holds all alone asks after nothing meanwhile
                let_go_when_idle(connection, IDLE_S)
        if come:
            self._connection = connection
        else:
            connection.close()
        return bool(come)

    def _divide(self, busy: Collection[int]) -> frozenset[int]:
        assert self._connection is not None
        with self._connection.begin():
            there = self._connection.execute(_WHO_IS_THERE).scalars().all()
            self.among_others = len(there) > 1
            ours = {share for share in ALL if there[share % len(there)]}
            for share in self._held - ours - set(busy):
                self._connection.execute(_LET_GO, {"share": share})
            held = self._held & (ours | set(busy))
            taken = {
                share
                for share in ours - held
                if self._connection.execute(_TAKE, {"share": share}).scalar_one()
            }
        return held | taken
