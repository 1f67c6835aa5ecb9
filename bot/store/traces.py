"""On SQLite: what is deleted leaves no trace in the file or its log, and nobody waits for that.

Deleted text may stay between the rows of a page even where free pages are overwritten, so the file is
written anew where somebody's data went: at once while that takes a moment, and for a large file, in
which nobody could write for long, once for all who went since the last time. The log holds pages as
they were before, until it is brought into the file and emptied. Emptying it takes the right to write
and then waits for whoever reads: a back-up that runs for a minute would stop every answer for as
long. So it is tried without waiting.
"""

from __future__ import annotations

import sqlite3
import time
from pathlib import Path
from typing import Any

import structlog
from sqlalchemy import Engine
from sqlmodel import Session

from bot.store.tables.setting import keep

TRIES, PAUSE_S = 20, 0.02
#: A file of this size is written anew in about a second.
SOON_DONE_BYTES = 100_000_000

#: Where a session notes that nothing of what it deletes may be left in the file,
_NO_TRACE = "no trace"
#: and where the file says so of itself until it has been done.
DUE = "file_to_be_written_anew"

_log = structlog.get_logger(__name__)


def leave_no_trace(session: Session) -> None:
    """Somebody's data go with this transaction: the file is written anew after it."""
    if session.get_bind().dialect.name == "sqlite" and not is_to_leave_none(session):
        keep(session, DUE, "yes")
        session.info[_NO_TRACE] = True


def is_to_leave_none(session: Session) -> bool:
    return bool(session.info.get(_NO_TRACE))


def write_small_file_anew(engine: Engine) -> None:
    """After a deletion, by who holds this process's turn to write, outside of any transaction."""
    if _size(engine) <= SOON_DONE_BYTES:
        write_file_anew(engine)


def write_file_anew(engine: Engine) -> None:
    """Where that is due; to be called by who holds this process's turn to write, outside of any
    transaction. What cannot be done now stays due.
    """
    try:
        connection = engine.raw_connection()
        try:
            cursor = connection.cursor()
            due = cursor.execute("SELECT 1 FROM setting WHERE name = ?", (DUE,)).fetchone()
            if not due:
                return  # nobody's turn to write is kept for a log that is emptied without it
            cursor.execute("VACUUM")
            cursor.execute("DELETE FROM setting WHERE name = ?", (DUE,))
            connection.commit()
            cursor.close()
        finally:
            connection.close()
        forget_log(engine)
    except sqlite3.OperationalError:  # another process is at it just then, or the disk is full
        _log.warning("the database's file could not be written anew after a deletion")


def _size(engine: Engine) -> int:
    return Path(str(engine.url.database)).stat().st_size


def forget_log(engine: Engine) -> bool:
    """Bring the log into the file and empty it. Returns False where somebody reads or writes all the
    while: then it stays until the next time.
    """
    if engine.dialect.name != "sqlite":
        return True
    connection = engine.raw_connection()
    try:
        cursor = connection.cursor()
        cursor.execute("PRAGMA wal_checkpoint(PASSIVE)").fetchall()  # most of it, beside everybody
        (usual_ms,) = cursor.execute("PRAGMA busy_timeout").fetchone()
        cursor.execute("PRAGMA busy_timeout = 0")
        try:
            return any(_emptied(cursor) for _ in range(TRIES))
        finally:
            cursor.execute(f"PRAGMA busy_timeout = {usual_ms}")
            cursor.close()
    finally:
        connection.close()


def _emptied(cursor: Any) -> bool:
    ((busy, _pages, _moved),) = cursor.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchall()
    if busy:
        time.sleep(PAUSE_S)
    return not busy
