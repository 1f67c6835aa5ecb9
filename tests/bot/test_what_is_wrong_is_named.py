"""Whoever runs the bot is told what is wrong and what to do: by each command, without a traceback."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from alembic import command
from sqlalchemy.exc import OperationalError

from bot.cli import main
from bot.operation.doctor import clock
from bot.operation.installation import cause
from bot.store.db import make_engine, may_pass
from bot.store.migrate import _config, revision_of, upgrade_to_head

Said = Callable[..., tuple[int, str]]


@pytest.fixture
def said(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> Said:
    """What a command says, and its exit code: `said(database, "status")`."""

    def run(database: Path, *arguments: str) -> tuple[int, str]:
        monkeypatch.setenv("BRIMLINE_DATABASE_URL", f"sqlite:///{database}")
        code = main(arguments)
        shown = capsys.readouterr()
        return code, shown.out + shown.err

    return run


def of_an_earlier_version(file: Path) -> str:
    """A database one revision back; returns that revision."""
    engine = make_engine(f"sqlite:///{file}")
    upgrade_to_head(engine)
    with engine.begin() as connection:
        command.downgrade(_config(connection), "-1")
    found = revision_of(engine)
    engine.dispose()
    assert found is not None
    return found


def test_what_an_earlier_version_made_is_backed_up_and_else_left_alone(
    tmp_path: Path, said: Said
) -> None:
    database = tmp_path / "earlier.sqlite3"
    earlier = of_an_earlier_version(database)

    for name in ("status", "coaches", "check"):
        code, text = said(database, name)
        assert code == 1, name
        assert "earlier version" in text, name
        assert "brimline migrate" in text, name
    code, text = said(database, "backup", str(tmp_path / "kept.zip"))
    assert code == 0, text

    engine = make_engine(f"sqlite:///{database}")
    assert revision_of(engine) == earlier  # its bot may still be running on it
    engine.dispose()
    assert said(database, "migrate")[0] == 0
    assert said(database, "status")[0] == 0


def test_a_file_that_is_no_database_and_a_folder_that_is_not_there_are_named(
    tmp_path: Path, said: Said
) -> None:
    letter = tmp_path / "letter.txt"
    letter.write_text("Dear reader, this is no database.\n" * 200)
    (tmp_path / "file").touch()

    for database, what in ((letter, "is no database"), (tmp_path / "file" / "x.db", "file")):
        for words in (["status"], ["check"], ["backup"], ["restore", "none.zip"]):
            code, text = said(database, *words)
            assert code in (1, 2)
            if words[0] != "restore":
                assert "BRIMLINE_DATABASE_URL" in text, words
                assert what in text, words


def test_a_back_up_that_cannot_be_written_is_named_by_its_place(tmp_path: Path, said: Said) -> None:
    database = tmp_path / "one.sqlite3"
    said(database, "migrate")
    (tmp_path / "file").touch()

    code, text = said(database, "backup", str(tmp_path / "file" / "kept.zip"))

    assert code == 1
    assert str(tmp_path / "file") in text


def trouble(of: sqlite3.Connection, statement: str) -> OperationalError:
    with pytest.raises(sqlite3.OperationalError) as raised:
        of.execute(statement)
    return OperationalError("", {}, raised.value)


def test_a_full_or_read_only_disk_is_waited_for_and_told_as_such(tmp_path: Path) -> None:
    """Real errors of SQLite; a service that ended with "wrong setting" would stay down for good."""
    file = tmp_path / "small.sqlite3"
    full = sqlite3.connect(file)
    full.execute("CREATE TABLE t (x)")
    full.execute("PRAGMA max_page_count = 1")
    read_only = sqlite3.connect(f"file:{file}?mode=ro", uri=True)
    found = {
        "the disk is full": trouble(full, "INSERT INTO t VALUES (zeroblob(100000))"),
        "may be read but not written": trouble(read_only, "INSERT INTO t VALUES (1)"),
    }
    full.close()
    read_only.close()

    for words, error in found.items():
        assert may_pass(error), words
        assert words in (cause(error) or "")


@pytest.mark.parametrize(
    ("words", "what"),
    [
        ('connection to server at "h" failed: Connection refused', "is it running?"),
        ('FATAL: password authentication failed for user "u"', "refuses user or password"),
        ('FATAL: database "b" does not exist', "no such user or database"),
    ],
)
def test_a_server_that_does_not_let_one_in_says_why_and_names_the_setting(
    words: str, what: str
) -> None:
    """The words are those of libpq and PostgreSQL 17, which give failed connections no code."""
    told = cause(OperationalError("", {}, Exception(words))) or ""

    assert what in told
    assert "BRIMLINE_DATABASE_URL" in told


def test_a_clock_that_is_off_is_told_with_how_far_and_which_way() -> None:
    now = datetime(2027, 5, 9, 8, 0, tzinfo=UTC)
    date = "Sun, 09 May 2027 08:00:00 GMT"  # as RFC 9110 has servers write it

    assert clock(date, now + timedelta(seconds=20)).ok
    ahead, behind = clock(date, now + timedelta(minutes=12)), clock(date, now - timedelta(hours=2))
    assert not ahead.ok
    assert "12 minutes ahead of" in ahead.text
    assert "120 minutes behind" in behind.text
