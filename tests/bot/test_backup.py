"""Back-ups and moving house: everything goes along, nothing old is said again, nothing is half done."""

from __future__ import annotations

import json
import shutil
import sqlite3
import stat
import threading
import zipfile
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from alembic import command
from sqlalchemy import Engine, text
from sqlalchemy.exc import DBAPIError
from sqlmodel import Session, col, select

from bot.operation.backup import BackupError, back_up, move, put_back
from bot.operation.installation import shaped, shown
from bot.operation.rows import lines_of, snapshot, tables_in
from bot.settings import SettingsError
from bot.store.db import make_engine, transaction
from bot.store.migrate import _config, is_at_head, upgrade_to_head
from bot.store.moved import moved_to
from bot.store.tables.people import Person
from bot.store.tables.setting import SettingRow
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


@pytest.mark.parametrize("to_the_server", [True, False])
def test_what_is_written_while_it_moves_is_there_or_refused_with_the_new_address(
    postgres: Server, sqlite_url: str, tmp_path: Path, to_the_server: bool
) -> None:
    """A running bot goes on until it is kept from writing: nothing that was kept is lost."""
    old = make_engine(sqlite_url)
    new = make_engine(postgres.new_database())
    if not to_the_server:
        new, old = make_engine(f"sqlite:///{tmp_path / 'new.sqlite3'}"), new
        upgrade_to_head(old)
    kept, refused, begun = list[int](), list[str](), threading.Event()

    def goes_on() -> None:
        for number in range(1, 100_000):
            try:
                with transaction(old, locked=True) as session:
                    session.add(SettingRow(name=str(number), value=""))
            except DBAPIError as error:
                refused.append(str(error.orig))
                return
            kept.append(number)
            begun.set()

    running = threading.Thread(target=goes_on)
    running.start()
    begun.wait()
    moved = move(old, new)
    running.join()

    assert moved.rows["setting"] == len(kept) > 0
    with Session(new) as session:
        assert {int(name) for name in session.exec(select(SettingRow.name))} == set(kept)
    address = shown(new)
    assert f"this installation has moved to {address}" in refused[0]
    assert moved_to(old) == address
    with pytest.raises(BackupError, match="has moved to"):
        move(old, new)
    with pytest.raises(SettingsError, match="has moved to"):
        shaped(old.url.render_as_string(hide_password=False), "DATABASE_URL")
    for act in ("UPDATE setting SET value = ''", "DELETE FROM setting"):
        with pytest.raises(DBAPIError, match="has moved to"), old.begin() as connection:
            connection.exec_driver_sql(act)
    old.dispose()
    new.dispose()


def test_where_a_move_fails_the_old_database_is_as_it_was(team: Team, tmp_path: Path) -> None:
    used = make_engine(f"sqlite:///{tmp_path / 'used.sqlite3'}")
    upgrade_to_head(used)
    with transaction(used) as session:
        session.add(SettingRow(name="somebody", value="else's"))

    with pytest.raises(BackupError):
        move(team.world.engine, used)

    assert moved_to(team.world.engine) == ""
    team.athlete.writes("/today")
    used.dispose()


def test_a_back_up_of_a_database_that_has_moved_is_one_of_an_installation_as_any(
    team: Team, photos: Path, tmp_path: Path
) -> None:
    """The way back, before the new one has taken anything in."""
    before = every_row(team.world.engine)
    new = make_engine(f"sqlite:///{tmp_path / 'new.sqlite3'}")
    move(team.world.engine, new)
    kept = tmp_path / "kept.zip"
    back_up(team.world.engine, photos, kept, team.world.now)
    again = make_engine(f"sqlite:///{tmp_path / 'again.sqlite3'}")
    put_back(again, tmp_path / "photos again", kept)

    assert moved_to(again) == ""
    assert every_row(new) == before
    with transaction(again) as session:
        session.add(SettingRow(name="goes", value="on"))
    new.dispose()
    again.dispose()


def tables_of(file: Path) -> list[str]:
    if not file.exists():
        return []
    copied = shutil.copy(file, file.with_suffix(".copy"))
    with sqlite3.connect(copied) as connection:
        return [name for (name,) in connection.execute("SELECT name FROM sqlite_master")]
