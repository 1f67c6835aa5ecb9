"""Back-ups and moving house: everything goes along, nothing old is said again, nothing is half done."""

from __future__ import annotations

import json
import shutil
import sqlite3
import stat
import zipfile
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from alembic import command
from sqlalchemy import Engine, text
from sqlmodel import Session, col, select

from bot.operation.backup import BackupError, back_up, put_back
from bot.operation.moving import move
from bot.operation.rows import lines_of, snapshot, tables_in
from bot.store.db import make_engine, transaction
from bot.store.migrate import _config, is_at_head
from bot.store.sole import LeaderLease
from bot.store.tables.people import Person
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import DaySetRow
from tests.support.databases import Server
from tests.support.weeks import Team, gone_on
from tests.support.world import Someone, World

THREE_DAYS_OUT = datetime(2027, 5, 6, 6, 0, tzinfo=UTC)


def every_row(engine: Engine) -> dict[str, list[str]]:
    with snapshot(engine) as connection:
        return {table.name: list(lines_of(connection, table)) for table in tables_in(connection)}


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """A week in which the third morning before the event has just been answered."""
    return gone_on(team_at(THREE_DAYS_OUT), answered)


def answered(team: Team) -> None:
    team.morning(3, hour=7)
    team.athlete.writes("60.4 5 3.5 fine")


@pytest.fixture
def photos(tmp_path: Path) -> Path:
    folder = tmp_path / "photos"
    folder.mkdir()
    (folder / "a1b2").write_bytes(b"\xff\xd8 a picture")
    return folder


def test_what_is_backed_up_comes_back_row_for_row_on_either_database(
    team: Team, photos: Path, postgres: Server, tmp_path: Path
) -> None:
    there = tmp_path / "kept" / "back-up.zip"
    made = back_up(team.world.engine, photos, there, team.world.now)
    before = every_row(team.world.engine)

    for number, url in enumerate(
        [f"sqlite:///{tmp_path / 'new.sqlite3'}", postgres.new_database()]
    ):
        engine = make_engine(url)
        folder = tmp_path / f"photos-{number}"

        assert put_back(engine, folder, there) == made

        after = every_row(engine)
        assert {name: rows for name, rows in after.items() if name != "outbox"} == {
            name: rows for name, rows in before.items() if name != "outbox"
        }
        assert len(after["outbox"]) == len(before["outbox"])
        assert (folder / "a1b2").read_bytes() == b"\xff\xd8 a picture"
        with transaction(engine) as session:  # ids go on where they were
            session.add(
                Person(telegram_user_id=9, chat_id=9, first_name="Odd", created_at=team.world.now)
            )
        engine.dispose()
    assert stat.S_IMODE(there.stat().st_mode) == 0o600


def test_what_waited_to_be_sent_when_it_was_taken_is_not_sent_days_later(
    team: Team, tmp_path: Path
) -> None:
    back_up(team.world.engine, None, tmp_path / "old.zip", team.world.now)
    engine = make_engine(f"sqlite:///{tmp_path / 'restored.sqlite3'}")
    put_back(engine, None, tmp_path / "old.zip")

    with Session(engine) as session:
        waiting = session.exec(
            select(OutboxRow).where(col(OutboxRow.status).in_(("waiting", "sending")))
        ).all()
        set_days = session.exec(select(DaySetRow)).all()
    assert waiting == []
    assert set_days  # what is in force stays so

    world = World(engine, team.world.now + timedelta(days=2, hours=1), team.world.updates)
    athlete, coach = Someone(world, 102, "Mira", 500), Someone(world, 101, "Ravi", 500)
    athlete.hears()
    coach.hears()
    world.until(world.now)
    said = [message.text for message in athlete.hears()]
    assert len(said) == 1
    assert "Good morning, Mira. 1 day out." in said[0]
    assert coach.hears() == []
    engine.dispose()


def test_a_backup_of_an_earlier_version_is_put_back_and_brought_up_to_date(tmp_path: Path) -> None:
    old = make_engine(f"sqlite:///{tmp_path / 'old.sqlite3'}")
    with old.connect() as connection:
        command.upgrade(_config(connection), "0030")
        connection.execute(
            text(
                "INSERT INTO person (telegram_user_id, chat_id, first_name, reachable, is_coach, "
                "created_at) VALUES (7, 7, 'Ravi', 1, 1, '2027-05-01 08:00:00')"
            )
        )
        connection.commit()
    back_up(old, None, tmp_path / "old.zip", THREE_DAYS_OUT)
    engine = make_engine(f"sqlite:///{tmp_path / 'new.sqlite3'}")

    put_back(engine, None, tmp_path / "old.zip")

    assert is_at_head(engine)
    with Session(engine) as session:
        assert [person.first_name for person in session.exec(select(Person))] == ["Ravi"]
    old.dispose()
    engine.dispose()


def test_a_damaged_or_strange_file_and_a_database_in_use_change_nothing(
    team: Team, tmp_path: Path
) -> None:
    whole = tmp_path / "whole.zip"
    back_up(team.world.engine, None, whole, team.world.now)
    damaged = tmp_path / "damaged.zip"
    with zipfile.ZipFile(whole) as source, zipfile.ZipFile(damaged, "w") as target:
        for name in source.namelist():
            content = source.read(name)
            target.writestr(
                name, content.replace(b"Mira", b"Mara") if "person" in name else content
            )
    newer = tmp_path / "newer.zip"
    with zipfile.ZipFile(newer, "w") as target:
        target.writestr("manifest.json", json.dumps({"format": 99}))
    (tmp_path / "no.zip").write_text("no archive")
    empty = make_engine(f"sqlite:///{tmp_path / 'empty.sqlite3'}")

    for file, said in [
        (damaged, "damaged"), (newer, "newer version"), (tmp_path / "no.zip", "right file"),
        (tmp_path / "missing.zip", "right file"),
    ]:  # fmt: skip
        with pytest.raises(BackupError, match=said):
            put_back(empty, None, file)
    before = every_row(team.world.engine)
    with pytest.raises(BackupError, match="not empty"):
        put_back(team.world.engine, None, whole)
    assert every_row(team.world.engine) == before
    with pytest.raises(BackupError, match="exists already"):
        back_up(team.world.engine, None, whole, team.world.now)
    empty.dispose()


def test_a_photos_name_cannot_lead_out_of_the_folder(team: Team, tmp_path: Path) -> None:
    whole, evil = tmp_path / "whole.zip", tmp_path / "evil.zip"
    back_up(team.world.engine, None, whole, team.world.now)
    with zipfile.ZipFile(whole) as source, zipfile.ZipFile(evil, "w") as target:
        for name in source.namelist():
            if name != "manifest.json":
                target.writestr(name, source.read(name))
        manifest = json.loads(source.read("manifest.json")) | {"photos": ["../escaped"]}
        target.writestr("manifest.json", json.dumps(manifest))
        target.writestr("photos/../escaped", b"x")
    engine = make_engine(f"sqlite:///{tmp_path / 'new.sqlite3'}")

    with pytest.raises(BackupError, match="leads elsewhere"):
        put_back(engine, tmp_path / "photos", evil)

    assert not (tmp_path / "escaped").exists()
    engine.dispose()


def test_an_installation_moves_to_postgresql_with_its_queues_and_back_again(
    team: Team, postgres: Server, tmp_path: Path
) -> None:
    server = make_engine(postgres.new_database())
    home = make_engine(f"sqlite:///{tmp_path / 'home.sqlite3'}")

    there = move(team.world.engine, server)
    back = move(server, home)

    assert there == back
    assert every_row(team.world.engine) == every_row(server) == every_row(home)
    server.dispose()
    home.dispose()


def test_a_bot_that_still_runs_is_not_moved_under_its_feet(team: Team, tmp_path: Path) -> None:
    running = LeaderLease(team.world.engine, "poll")
    assert running.hold()
    target = make_engine(f"sqlite:///{tmp_path / 'new.sqlite3'}")
    try:
        with pytest.raises(BackupError, match="still runs"):
            move(team.world.engine, target)
    finally:
        running.release()
    assert not tables_of(tmp_path / "new.sqlite3")
    target.dispose()


def tables_of(file: Path) -> list[str]:
    if not file.exists():
        return []
    copied = shutil.copy(file, file.with_suffix(".copy"))
    with sqlite3.connect(copied) as connection:
        return [name for (name,) in connection.execute("SELECT name FROM sqlite_master")]
