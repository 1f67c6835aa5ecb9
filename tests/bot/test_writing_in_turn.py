"""One file, one writer: who has to wait is served in the end, nobody waits for house-keeping, and who
kept the others waiting is found in the log.
"""

from __future__ import annotations

import sqlite3
import time
from datetime import UTC, datetime
from pathlib import Path

import pytest
from sqlalchemy import Engine, event
from sqlmodel import Session
from structlog.testing import capture_logs

from bot.operation.rows import snapshot
from bot.store import db
from bot.store.db import in_transaction, times_run_again, transaction
from bot.store.prune import prune_traffic
from bot.store.tables import setting
from bot.store.traces import forget_log

NOW = datetime(2027, 5, 6, 6, 0, tzinfo=UTC)


def log_of(engine: Engine) -> Path:
    return Path(f"{engine.url.database}-wal")


def test_the_log_is_not_emptied_while_a_backup_reads_and_nobody_waits_for_that(
    sqlite_engine: Engine,
) -> None:
    """To empty it SQLite takes the right to write and waits, for up to half a minute, for readers."""
    with snapshot(sqlite_engine) as reading:
        reading.exec_driver_sql("SELECT count(*) FROM person").fetchall()
        with transaction(sqlite_engine) as session:
            setting.keep(session, "a", "1")
        began = time.monotonic()
        assert not forget_log(sqlite_engine)
        prune_traffic(sqlite_engine, NOW)
        assert time.monotonic() - began < db.BUSY_TIMEOUT_S / 2
        with transaction(sqlite_engine) as session:  # and writing goes on
            setting.keep(session, "a", "2")
    assert forget_log(sqlite_engine)
    assert log_of(sqlite_engine).stat().st_size == 0


def test_what_was_to_be_deleted_leaves_the_log_at_the_next_clearing_out(
    sqlite_engine: Engine,
) -> None:
    with snapshot(sqlite_engine) as reading:
        reading.exec_driver_sql("SELECT count(*) FROM person").fetchall()
        with transaction(sqlite_engine) as session:
            setting.keep(session, "a", "whatever it was")
    assert b"whatever it was" in log_of(sqlite_engine).read_bytes()
    assert prune_traffic(sqlite_engine, NOW) == 0
    assert log_of(sqlite_engine).stat().st_size == 0


@pytest.fixture
def impatient(sqlite_engine: Engine) -> Engine:
    """It waits for a hundredth of a second where others wait for half a minute."""
    event.listen(
        sqlite_engine, "checkout", lambda handle, *_: handle.execute("PRAGMA busy_timeout = 10")
    )
    return sqlite_engine


def test_who_waited_in_vain_for_another_process_is_run_again_whole(impatient: Engine) -> None:
    other = sqlite3.connect(str(impatient.url.database), isolation_level=None)
    other.execute("BEGIN IMMEDIATE")

    def let_go(_context: object) -> None:
        other.execute("ROLLBACK")

    event.listen(impatient, "handle_error", let_go, once=True)
    before = times_run_again().get("SQLITE_BUSY", 0)

    in_transaction(impatient, lambda session: setting.keep(session, "a", "1"))

    assert times_run_again()["SQLITE_BUSY"] == before + 1
    with transaction(impatient) as session:
        assert setting.kept(session, "a") == "1"
    other.close()


def test_whoever_keeps_others_from_writing_for_long_is_named(
    sqlite_engine: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(db, "HELD_LONG_S", 0.0)

    def work(_session: Session) -> None:
        return None

    with capture_logs() as lines:
        in_transaction(sqlite_engine, work)
    assert "a transaction kept others from writing" in [line["event"] for line in lines]
