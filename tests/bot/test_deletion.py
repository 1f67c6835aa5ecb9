"""An athlete has everything deleted, and what that leaves."""

from __future__ import annotations

import os
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Engine, insert
from sqlmodel import Session, func, select

from bot.core.turn import SentFile
from bot.dispatcher import USE_CASES
from bot.membership.my_data.owned import Me, as_athlete, owned
from bot.store import traces
from bot.store.db import transaction
from bot.store.prune import prune_traffic
from bot.store.tables import metadata
from bot.store.tables.people import Person
from bot.store.tables.setting import kept
from bot.store.tables.traffic import FetchRow, OutboxRow
from bot.store.tables.week import AlertRow
from tests.support.files import sends_file
from tests.support.pictures import picture
from tests.support.weeks import Team, in_peak_week
from tests.support.world import Someone, text_of

NOTES = "a very private note"


@pytest.fixture
def team(team_at: Callable[[datetime], Team], tmp_path: Path) -> Team:
    """Three days out, a morning with numbers, a note and a picture behind her."""
    made = team_at(datetime(2027, 5, 6, 5, 31, tzinfo=UTC))
    made.world.photo_dir = tmp_path / "photos"
    lived_through(made)
    return made


def lived_through(team: Team) -> None:
    team.athlete.writes(f"61.1 2 3.5 4 on target {NOTES}")
    sends_file(team.athlete, picture(), as_photo=True)
    team.athlete.writes("/why")
    team.coach.presses(f"c:message:{team.athlete_id}")
    team.coach.writes("well done")
    team.athlete.hears()
    team.coach.hears()


def deletes(team: Team) -> str:
    team.athlete.writes("/delete_my_data")
    return text_of(team.athlete.taps("Yes, delete it all"))


def rows_about(session: Session, athlete_id: int, chat_id: int) -> dict[str, int]:
    """How many rows of each table still name the athlete, by any column that names a person."""
    found = {}
    for table in metadata.sorted_tables:
        named = [
            column
            for column in table.c
            for key in column.foreign_keys
            if key.target_fullname == "person.id"
        ]
        named += [table.c.id] if table.name == "person" else []
        for column in named:
            rows = session.connection().execute(table.select().where(column == athlete_id)).all()
            if rows:
                found[f"{table.name}.{column.name}"] = len(rows)
        if table.name in ("inbox", "outbox"):
            rows = session.connection().execute(
                table.select().where(table.c.chat_id == chat_id)
            ).all()  # fmt: skip
            found[table.name] = len(rows)
    return found


def test_nothing_is_deleted_before_a_second_look_that_says_what_goes(team: Team) -> None:
    said = text_of(team.athlete.writes("/delete_my_data"))
    assert "can't be undone" in said and "photos" in said
    assert "I tell Ravi only that you did it" in said
    assert "OK, nothing was deleted" in text_of(team.athlete.taps("Keep it"))
    assert "61.1 kg" in text_of(team.athlete.writes("/past"))


def test_no_row_names_the_athlete_afterwards_and_no_file_is_left(team: Team) -> None:
    assert "Done. Everything" in deletes(team)
    with team.world.session() as session:
        assert rows_about(session, team.athlete_id, team.athlete.user_id) == {
            "inbox": 0,
            # the button's answer, the question rewritten, the last words, the menu taken away
            "outbox": 4,
        }
        left = session.exec(
            select(OutboxRow).where(OutboxRow.chat_id == team.athlete.user_id)
        ).all()  # fmt: skip
        assert not any(NOTES in str(row.payload) or "61.1" in str(row.payload) for row in left)
    team.world.later(minutes=1)
    assert team.world.photo_dir is not None and list(team.world.photo_dir.iterdir()) == []


def everything_kept(team: Team) -> dict[str, str]:
    """Every row of every table as text, by its table and key."""
    with team.world.session() as session:
        return {
            f"{table.name} {row[0]}": str(tuple(row))
            for table in metadata.sorted_tables
            for row in session.connection().execute(table.select())
        }


def in_the_coachs_chat(team: Team) -> list[str]:
    with team.world.session() as session:
        return [str(row.payload) for row in session.exec(select(OutboxRow)) if row.chat_id == 101]


def sent(team: Team, status: str, payload: dict[str, Any]) -> None:
    """A message to the coach, as it stands in the queue."""
    with transaction(team.world.engine) as session:
        row = {
            "chat_id": 101, "method": "sendMessage", "status": status, "payload": payload,
            "not_before": team.world.now, "created_at": team.world.now, "attempts": 1, "doubts": 0,
        }  # fmt: skip
        session.connection().execute(insert(OutboxRow).values(row))


def test_no_table_whichever_holds_a_row_that_is_the_athletes(team: Team) -> None:
    """Goes by the same declaration as what is handed out, so that a new table is in both or in none."""
    me = Me(team.athlete_id, team.athlete.user_id)
    deletes(team)
    with team.world.session() as session:
        for table in metadata.sorted_tables:
            mine = as_athlete(table, me) if not owned(table).nobodys else None
            if mine is not None:
                assert session.connection().execute(table.select().where(mine)).all() == []


def test_nothing_that_the_athlete_said_is_left_with_anybody_in_any_table(team: Team) -> None:
    said = (NOTES, "61.1", "well done")
    sent(team, "sent", {"text": "Mira, 3 days out: 61.1 kg"})
    before = everything_kept(team)
    assert all(any(one in text for text in before.values()) for one in said)
    assert any("61.1" in text for text in in_the_coachs_chat(team))
    deletes(team)
    left = {key: one for key, text in everything_kept(team).items() for one in said if one in text}
    assert not left
    named = {key for key, text in everything_kept(team).items() if "Mira" in text}
    with team.world.session() as session:
        last = session.exec(select(func.max(OutboxRow.id)).where(OutboxRow.chat_id == 101)).one()
    # The last word to the coach, and until it has looked once more, the duty that does so.
    assert {key for key in named if not key.startswith("agenda ")} == {f"outbox {last}"}
    team.world.later(hours=2)
    later = [text for text in everything_kept(team).values() if "Mira" in text]
    assert all("has deleted" in text for text in later)


def test_what_others_were_told_of_another_athlete_stays_as_it_was(team: Team) -> None:
    card = {"inline_keyboard": [[{"text": "Card", "callback_data": "c:card:22"}]]}
    sent(team, "sent", {"text": "Tess, 2 days out"})
    sent(team, "sent", {"text": "Orla", "reply_markup": card})
    deletes(team)
    texts = [said.text for said in team.coach.all_said()]
    assert "Tess, 2 days out" in texts and "Orla" in texts


def test_what_was_being_sent_at_that_moment_is_emptied_an_hour_later(team: Team) -> None:
    sent(team, "sending", {"text": "Mira: 61.1 kg"})
    deletes(team)
    assert any("Mira: 61.1 kg" in text for text in everything_kept(team).values())
    with transaction(team.world.engine) as session:
        for row in session.exec(select(OutboxRow).where(OutboxRow.status == "sending")):
            row.status = "sent"
            session.add(row)
    team.world.later(hours=2)
    assert not any("61.1" in text for text in everything_kept(team).values())


@pytest.mark.sqlite
def test_a_large_file_is_written_anew_when_old_messages_are_cleared_out(
    team: Team, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It takes a second for each 100 MB, in which nobody could be answered."""
    monkeypatch.setattr(traces, "SOON_DONE_BYTES", 0)
    engine = team.world.engine
    deletes(team)
    with team.world.session() as session:
        assert kept(session, traces.DUE)
    unused = "SELECT freelist_count FROM pragma_freelist_count"
    with engine.connect() as connection:
        assert connection.exec_driver_sql(unused).scalar_one() > 0

    prune_traffic(engine, team.world.now)

    with team.world.session() as session:
        assert not kept(session, traces.DUE)
    with engine.connect() as connection:
        assert connection.exec_driver_sql(unused).scalar_one() == 0
    assert NOTES.encode() not in Path(str(engine.url.database)).read_bytes()


@pytest.mark.sqlite
def test_the_file_of_the_database_holds_nothing_of_it_either(team: Team) -> None:
    """What is deleted is overwritten: https://www.sqlite.org/pragma.html#pragma_secure_delete"""
    file = Path(str(team.world.engine.url.database))
    team.world.engine.pool.dispose()  # the last connection to close brings the log into the file
    assert NOTES.encode() in file.read_bytes()
    deletes(team)
    team.world.later(hours=2)
    team.world.engine.pool.dispose()
    assert NOTES.encode() not in file.read_bytes()


def test_it_works_on_either_database(any_engine: Engine, tmp_path: Path) -> None:
    team = in_peak_week(any_engine)
    team.world.photo_dir = tmp_path / "photos"
    team.world.until(datetime(2027, 5, 6, 5, 31, tzinfo=UTC))
    lived_through(team)
    deletes(team)
    with team.world.session() as session:
        found = rows_about(session, team.athlete_id, team.athlete.user_id)
    assert set(found) == {"inbox", "outbox"}


def test_the_coach_is_told_that_it_was_done_and_nothing_else(team: Team) -> None:
    deletes(team)
    said = text_of(team.coach.hears())
    assert said == "Mira has deleted all data here. You get no more check-ins from Mira."
    assert "Mira" not in text_of(team.coach.writes("/roster"))
    team.coach.presses(f"c:card:{team.athlete_id}")
    assert "61.1" not in text_of(team.coach.hears())


def test_a_coach_with_an_open_alert_is_told_that_nobody_follows_it_up(team: Team) -> None:
    team.athlete.writes("I fainted this morning")
    team.coach.hears()
    deletes(team)
    assert "An alert about Mira was open" in text_of(team.coach.hears())
    team.world.later(minutes=30)
    assert "Not acknowledged" not in text_of(team.coach.hears())


def test_afterwards_nothing_comes_and_the_athlete_is_a_stranger(team: Team) -> None:
    deletes(team)
    team.world.until(datetime(2027, 5, 12, tzinfo=UTC))
    assert text_of(team.athlete.hears()) == ""
    assert "by invitation" in text_of(team.athlete.writes("61 7 3.5"))
    assert "by invitation" in text_of(team.athlete.presses("gone:yes"))


def test_a_button_of_the_deleted_never_comes_to_mean_somebody_else(team: Team) -> None:
    """SQLite gives the highest id again once its row is gone, unless told not to
    (https://www.sqlite.org/autoinc.html).
    """
    team.athlete.writes("I fainted this morning")
    with team.world.session() as session:
        alert_id = session.exec(select(AlertRow.id)).all()[-1]
    deletes(team)
    with transaction(team.world.engine) as session:
        other = Person(
            telegram_user_id=103, chat_id=103, first_name="Tess", created_at=team.world.now
        )
        session.add(other)
        session.flush()
        alert = AlertRow(
            athlete_id=other.id or 0, coach_id=1, flag="fainting", level="warning",
            date=team.world.now.date(), opened_at=team.world.now,
        )  # fmt: skip
        session.add(alert)
        session.flush()
        assert other.id is not None and other.id > team.athlete_id
        assert alert.id is not None and alert_id is not None and alert.id > alert_id


def test_a_coach_who_is_their_own_athlete_stays_a_coach(team: Team) -> None:
    team.coach.writes("/selfcoach")
    team.coach.taps("I understand and agree")
    team.coach.writes("/delete_my_data")
    said = text_of(team.coach.taps("Yes, delete it all"))
    assert "Done." in said
    assert "Mira" in text_of(team.coach.writes("/roster"))
    assert "61.1 kg" in text_of(team.athlete.writes("/past"))


def test_a_second_tap_and_a_strangers_tap_do_no_harm(team: Team) -> None:
    stranger = Someone(team.world, 999, "Nobody")
    assert "by invitation" in text_of(stranger.presses("gone:yes"))
    assert "Done." not in text_of(team.coach.presses("gone:yes"))
    assert "61.1 kg" in text_of(team.athlete.writes("/past"))


def test_a_picture_that_was_on_its_way_meanwhile_leaves_no_file_for_long(team: Team) -> None:
    team.athlete.sends(SentFile(file_id="late", as_photo=True, size=100))
    underway: list[FetchRow] = []
    with team.world.session() as session:
        underway += session.exec(select(FetchRow).where(FetchRow.file_id == "late"))
    deletes(team)
    USE_CASES.unpack(underway[0], picture(), team.world.context)  # what the download leads to
    assert team.world.photo_dir is not None
    for file in team.world.photo_dir.iterdir():
        os.utime(file, (0, 0))
    team.world.later(days=3)
    assert list(team.world.photo_dir.iterdir()) == []
