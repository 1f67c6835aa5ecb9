"""On SQLite: what is deleted leaves no trace in the file or its log, and nobody waits for that.

Deleted text may stay between the rows of a page even where free pages are overwritten, so the file is
written anew where somebody's data went. The log holds pages as they were before, until it is brought
into the file and emptied. Emptying it takes the right to write and then waits for whoever reads: a
back-up that runs for a minute would stop every answer for as long. So it is tried without waiting.
"""

from __future__ import annotations

import sqlite3
import time
from typing import Any

import structlog
from sqlalchemy import Engine
from sqlmodel import Session

TRIES, PAUSE_S = 20, 0.02

#: Where a session notes that nothing of what it deletes may be left in the file.
_NO_TRACE = "no trace"

_log = structlog.get_logger(__name__)


def leave_no_trace(session: Session) -> None:
    """Somebody's data go with this transaction: the file is written anew after it."""
    session.info[_NO_TRACE] = True


def is_to_leave_none(session: Session) -> bool:
    return bool(session.info.get(_NO_TRACE))


def write_file_anew(engine: Engine) -> None:
    """To be called by who holds this process's turn to write, outside of any transaction."""
    try:
        connection = engine.raw_connection()
        try:
            connection.cursor().execute("VACUUM").close()
        finally:
            connection.close()
        forget_log(engine)
    except sqlite3.OperationalError:  # another process is at it just then, or the disk is full
        _log.warning("the database's file could not be written anew after a deletion")


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
