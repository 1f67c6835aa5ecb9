"""An installation moves from one database to another: copied, counted, and checked row by row."""

from __future__ import annotations

import hashlib

from sqlalchemy import Engine

from bot.operation.backup import BackupError, Contents, fill
from bot.operation.rows import count_in, lines_of, snapshot, tables_in
from bot.store.migrate import revision_of
from bot.store.shares import shares_of
from bot.store.sole import LeaderLease


def move(source: Engine, target: Engine) -> Contents:
    """Copy everything into an empty database, which then has this version's shape.

    Queues go along: what waits to be sent is sent from the new place. Raises BackupError where the
    bot still runs on the old one, where the new one is in use, and where the two differ afterwards.
    """
    revision = revision_of(source)
    if revision is None:
        raise BackupError("the database to move is empty")
    polling, sending = LeaderLease(source, "poll"), shares_of(source)
    try:
        if not (polling.hold() and sending.hold_alone()):
            raise BackupError("the bot still runs on the old database; stop it first")
        with snapshot(source) as connection:
            tables = {table.name: table for table in tables_in(connection)}
            counts = {name: count_in(connection, table) for name, table in tables.items()}
            fill(target, revision, lambda name: lines_of(connection, tables[name]), counts)
            _compare(source, target)
    finally:
        polling.release()
        sending.release()
    return Contents(counts, 0)


def _compare(source: Engine, target: Engine) -> None:
    if revision_of(source) != revision_of(target):
        return  # the new one has a newer shape: what was counted is all that can be compared
    here, there = _digests(source), _digests(target)
    for name, digest in here.items():
        if there[name] != digest:
            raise BackupError(f"table {name} differs after the move; the old database is unchanged")


def _digests(engine: Engine) -> dict[str, str]:
    found = {}
    with snapshot(engine) as connection:
        for table in tables_in(connection):
            digest = hashlib.sha256()
            for line in lines_of(connection, table):
                digest.update(line.encode())
            found[table.name] = digest.hexdigest()
    return found
