"""An installation moves from one database to another: copied, counted, and checked row by row.

The bot may go on running. Whoever would write to the old database waits until all is copied and
compared, and is refused from then on with the address of the new one (`bot.store.moved`): so nothing
falls between. A running bot stops when it reads that; what is sent to it meanwhile waits at Telegram.
"""

from __future__ import annotations

import hashlib
import time
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager

from sqlalchemy import Connection, Engine
from sqlalchemy.exc import DBAPIError

from bot.operation.backup import BackupError, Contents, fill
from bot.operation.installation import shown
from bot.operation.rows import count_in, lines_of, snapshot, tables_in
from bot.store.migrate import revision_of
from bot.store.moved import leave_mark, moved_to, nobody_writes, sentence

#: Messages on their way would be sent again from the new place: so often, for so long it is waited for
#: a moment at which none is.
LOOKS, BETWEEN_LOOKS_S = 20, 0.25


def move(source: Engine, target: Engine) -> Contents:
    """Copy everything into an empty database, which then has this version's shape, and close the old.

    Queues go along: what waits to be sent is sent from the new place. Raises BackupError where the old
    one has moved before, where it cannot be had to itself, where the new one is in use, and where the
    two differ afterwards; then the old one is as it was.
    """
    revision = revision_of(source)
    if revision is None:
        raise BackupError("the database to move is empty")
    if address := moved_to(source):
        raise BackupError(sentence(address))
    with _to_itself(source) as connection:
        tables = {table.name: table for table in tables_in(connection)}
        counts = {name: count_in(connection, table) for name, table in tables.items()}
        fill(target, revision, lambda name: lines_of(connection, tables[name]), counts)
        _compare(connection, target)
        leave_mark(connection, shown(target))
    return Contents(counts, 0)


@contextmanager
def _to_itself(source: Engine) -> Iterator[Connection]:
    """The old database while nobody writes, if possible at a moment at which nothing is on its way."""
    with ExitStack() as held:
        for looks_left in reversed(range(LOOKS)):
            try:
                if (connection := _taken(source, held, at_rest=bool(looks_left))) is not None:
                    break
            except DBAPIError as error:
                if not looks_left:
                    raise BackupError("the old database could not be had to itself") from error
            time.sleep(BETWEEN_LOOKS_S)
        assert connection is not None
        yield connection


def _taken(source: Engine, held: ExitStack, *, at_rest: bool) -> Connection | None:
    with ExitStack() as trying:
        connection = trying.enter_context(nobody_writes(source))
        under_way = "SELECT count(*) FROM outbox WHERE status = 'sending'"
        if at_rest and connection.exec_driver_sql(under_way).scalar():
            return None
        held.enter_context(trying.pop_all())
        return connection


def _compare(source: Connection, target: Engine) -> None:
    if revision_of(source.engine) != revision_of(target):
        return  # the new one has a newer shape: what was counted is all that can be compared
    with snapshot(target) as connection:
        here, there = _digests(source), _digests(connection)
    for name, digest in here.items():
        if there[name] != digest:
            raise BackupError(f"table {name} differs after the move; the old database is unchanged")


def _digests(connection: Connection) -> dict[str, str]:
    found = {}
    for table in tables_in(connection):
        digest = hashlib.sha256()
        for line in lines_of(connection, table):
            digest.update(line.encode())
        found[table.name] = digest.hexdigest()
    return found
