"""The database: its shape, its safety, and what happens when two write at once."""

from __future__ import annotations

import json
import re
import stat
import threading
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from urllib.parse import urlsplit

import pytest
from alembic import command
from sqlalchemy import Engine, text
from sqlalchemy.exc import IntegrityError, OperationalError, SQLAlchemyError
from sqlmodel import Session, col, func, select

from bot.core.chat.outbox import Topic
from bot.core.logs import error_name
from bot.store import db
from bot.store.db import (
    claiming,
    database_url,
    in_transaction,
    is_newest,
    looking,
    make_engine,
    newest,
    transaction,
)
from bot.store.migrate import _config, check_agreement, is_at_head, revision_of, upgrade_to_head
from bot.store.prune import prune_traffic
from bot.store.sole import LeaderLease
from bot.store.tables import setting
from bot.store.tables.traffic import InboxRow, OutboxRow, TopicKind
from tests.support.databases import Server

BOT = Path(__file__).parents[2] / "bot"
NOW = datetime(2027, 6, 1, 12, tzinfo=UTC)


def test_tables_and_migrations_agree(any_engine: Engine) -> None:
    check_agreement(any_engine)


def test_several_processes_may_migrate_a_new_database_at_once(
    postgres: Server, tmp_path: Path
) -> None:
    for url in (postgres.new_database(), f"sqlite:///{tmp_path / 'new.sqlite3'}"):
        engines = [make_engine(url) for _ in range(4)]
        with ThreadPoolExecutor(4) as pool:
            list(pool.map(upgrade_to_head, engines))
        assert all(is_at_head(engine) for engine in engines)
        for engine in engines:
            engine.dispose()


def test_the_newest_revision_is_known_without_what_could_apply_it(any_engine: Engine) -> None:
    """A start on a database in shape loads nothing of alembic, so the two must not part."""
    assert revision_of(any_engine) == newest()
    assert is_newest(any_engine)


def test_an_empty_database_is_not_in_shape(tmp_path: Path) -> None:
    engine = make_engine(f"sqlite:///{tmp_path / 'new.sqlite3'}")

    assert not is_at_head(engine)
    engine.dispose()


@pytest.mark.parametrize(
    ("pragma", "value"),
    [("journal_mode", "wal"), ("synchronous", 2), ("foreign_keys", 1), ("busy_timeout", 30_000)],
)
def test_sqlite_keeps_what_is_committed_and_heeds_foreign_keys(
    sqlite_url: str, pragma: str, value: object
) -> None:
    engine = make_engine(sqlite_url)
    with transaction(engine) as session:
        assert session.connection().execute(text(f"PRAGMA {pragma}")).scalar() == value
    engine.dispose()


def test_foreign_keys_are_heeded_again_after_a_migration(sqlite_engine: Engine) -> None:
    upgrade_to_head(sqlite_engine)

    with sqlite_engine.connect() as connection:
        assert connection.execute(text("PRAGMA foreign_keys")).scalar() == 1


def test_nobody_else_may_read_the_file_or_its_folder(tmp_path: Path) -> None:
    engine = make_engine(f"sqlite:///{tmp_path / 'made' / 'for' / 'it.sqlite3'}")
    upgrade_to_head(engine)
    engine.dispose()

    assert stat.S_IMODE((tmp_path / "made/for/it.sqlite3").stat().st_mode) == 0o600
    assert stat.S_IMODE((tmp_path / "made/for").stat().st_mode) == 0o700


@pytest.mark.parametrize(
    ("given", "driver"),
    [
        ("postgres://u:p@h/d", "postgresql+psycopg"),
        ("postgresql://u:p@h/d", "postgresql+psycopg"),
        ("postgresql+psycopg://u:p@h/d", "postgresql+psycopg"),
        ("sqlite:///here.sqlite3", "sqlite+pysqlite"),
    ],
)
def test_addresses_are_taken_as_hosting_providers_write_them(given: str, driver: str) -> None:
    assert database_url(given).drivername == driver


@pytest.mark.parametrize(
    "given", ["mysql://h/d", "sqlite://", "sqlite:///:memory:", "nonsense", ""]
)
def test_other_addresses_are_refused(given: str) -> None:
    with pytest.raises(ValueError, match=r"sqlite:///|file|address"):
        database_url(given)


def test_what_fails_midway_leaves_nothing_behind(any_engine: Engine) -> None:
    with pytest.raises(ZeroDivisionError), transaction(any_engine) as session:
        setting.keep(session, "a", "1")
        raise ZeroDivisionError

    with transaction(any_engine) as session:
        assert setting.kept(session, "a") == ""


def test_two_use_cases_at_once_come_out_as_one_after_the_other(any_engine: Engine) -> None:
    """Each reads a figure and writes one more: no increment is lost."""
    with transaction(any_engine) as session:
        setting.keep(session, "count", "0")
    at_once = threading.Barrier(4)

    def one_more(session: Session) -> None:
        setting.keep(session, "count", str(int(setting.kept(session, "count")) + 1))

    def work(_number: int) -> None:
        at_once.wait()
        for _ in range(5):
            _until_it_goes_through(lambda: in_transaction(any_engine, one_more))

    with ThreadPoolExecutor(4) as pool:
        list(pool.map(work, range(4)))
    with transaction(any_engine) as session:
        assert setting.kept(session, "count") == "20"


def _until_it_goes_through(work: Callable[[], None]) -> None:
    """As the queues do: a use case that lost too often waits for its next turn."""
    for _ in range(100):
        try:
            work()
        except SQLAlchemyError:
            continue
        return
    raise AssertionError("it never went through")


def test_a_look_leaves_a_connection_what_it_has_prepared(postgres_engine: Engine) -> None:
    """psycopg drops it at each ROLLBACK, and every use case would have its statements planned anew."""
    prepared = select(func.count()).select_from(text("pg_prepared_statements"))

    def used_often() -> int:
        for _ in range(10):
            with claiming(postgres_engine) as session:
                session.exec(select(InboxRow.update_id)).all()
        with claiming(postgres_engine) as session:
            return session.exec(prepared).one()

    at_first = used_often()
    with looking(postgres_engine) as session:
        assert session.exec(select(InboxRow.update_id)).all() == []
    with claiming(postgres_engine) as session:
        assert session.exec(prepared).one() == at_first > 0


def test_whatever_runs_beside_the_answers_only_looks() -> None:
    """A plain session ends by ROLLBACK."""
    running = ("core", "telegram", "watching", "store/prune.py")
    files = [file for one in running for file in (BOT / one).rglob("*.py")] + [BOT / running[-1]]
    plain = [file.name for file in files if re.search(r"with Session\(", file.read_text())]
    assert plain == []
    assert len(files) > 20


def test_a_connection_that_died_lying_idle_is_replaced_unnoticed_and_one_just_used_once_noticed(
    postgres_engine: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    def ended() -> None:
        with claiming(postgres_engine) as session:
            number = session.exec(select(func.pg_backend_pid())).one()
        with postgres_engine.connect(), postgres_engine.connect() as other:
            other.execute(text("SELECT pg_terminate_backend(:number, 5000)"), {"number": number})

    monkeypatch.setattr(db, "BELIEVED_FOR_S", 0.0)
    ended()
    with claiming(postgres_engine) as session:
        assert session.exec(select(InboxRow)).all() == []

    monkeypatch.setattr(db, "BELIEVED_FOR_S", 60.0)
    ended()
    with pytest.raises(OperationalError), claiming(postgres_engine) as session:
        session.exec(select(InboxRow)).all()
    with claiming(postgres_engine) as session:
        assert session.exec(select(InboxRow)).all() == []


def test_the_text_of_a_database_error_does_not_show_what_was_to_be_stored(
    any_engine: Engine,
) -> None:
    row = {"update_id": 1, "raw": {"text": "61.2"}, "received_at": NOW}
    with transaction(any_engine) as session:
        session.add(InboxRow(**row))
    with pytest.raises(IntegrityError) as caught, transaction(any_engine) as session:
        session.add(InboxRow(**row))

    # PostgreSQL's own message names the key that was there already, never the rest of the row.
    assert "61.2" not in str(caught.value)
    assert error_name(caught.value).startswith("IntegrityError")


def test_an_instant_without_a_zone_is_refused(own_engine: Engine) -> None:
    with pytest.raises(SQLAlchemyError), transaction(own_engine) as session:
        session.add(InboxRow(update_id=1, raw={}, received_at=NOW.replace(tzinfo=None)))


def test_an_instant_comes_back_as_the_same_instant(any_engine: Engine) -> None:
    east = NOW.astimezone(tz=datetime.fromisoformat("2027-01-01T00:00+09:00").tzinfo)
    with transaction(any_engine) as session:
        session.add(InboxRow(update_id=1, raw={}, received_at=east))
    with transaction(any_engine) as session:
        found = session.exec(select(InboxRow)).one().received_at
    assert (found, found.utcoffset()) == (NOW, timedelta(0))


def test_a_right_is_one_holders_until_it_is_given_back(any_url: str) -> None:
    first_engine, second_engine = make_engine(any_url), make_engine(any_url)
    first, second = LeaderLease(first_engine, "send"), LeaderLease(second_engine, "send")
    other = LeaderLease(second_engine, "poll")

    assert first.hold()
    assert first.hold()
    assert not second.hold()
    assert other.hold()
    first.release()
    assert second.hold()
    for right in (first, second, other):
        right.release()
    first_engine.dispose()
    second_engine.dispose()


def test_a_right_is_lost_with_the_connection_that_held_it(
    postgres: Server, postgres_url: str
) -> None:
    first_engine, second_engine = make_engine(postgres_url), make_engine(postgres_url)
    first, second = LeaderLease(first_engine, "send"), LeaderLease(second_engine, "send")
    assert first.hold()
    name = urlsplit(postgres_url).path[1:]
    postgres.execute(
        f"SELECT pg_terminate_backend(pid, 5000) FROM pg_stat_activity WHERE datname = '{name}'"
    )

    assert second.hold()
    assert not first.hold()
    second.release()
    first_engine.dispose()
    second_engine.dispose()


def test_old_messages_are_cleared_out_and_open_ones_stay(own_engine: Engine) -> None:
    old, recent = NOW - timedelta(days=31), NOW - timedelta(days=1)
    with transaction(own_engine) as session:
        for number, (status, at) in enumerate(
            [("done", old), ("poison", old), ("new", old), ("done", recent)], start=1
        ):
            session.add(InboxRow(update_id=number, raw={}, received_at=at, status=status))
        for status, at in [("sent", old), ("waiting", old), ("sent", recent)]:
            session.add(
                OutboxRow(
                    chat_id=1,
                    method="sendMessage",
                    payload={},
                    status=status,
                    not_before=at,
                    created_at=at,
                )
            )
    assert prune_traffic(own_engine, NOW - timedelta(days=30), at_once=1) == 3
    with transaction(own_engine) as session:
        inbox = {(row.status, row.received_at) for row in session.exec(select(InboxRow))}
        outbox = {(row.status, row.created_at) for row in session.exec(select(OutboxRow))}
    assert inbox == {("new", old), ("done", recent)}
    assert outbox == {("waiting", old), ("sent", recent)}


def test_who_had_the_forecast_switched_off_by_hand_stays_with_the_rules_and_nobody_else_does(
    postgres: Server, tmp_path: Path
) -> None:
    for url in (postgres.new_database(), f"sqlite:///{tmp_path / 'older.sqlite3'}"):
        engine = make_engine(url)
        with engine.connect() as connection:
            command.upgrade(_config(connection), "0038")
            connection.commit()
        # 1 was never asked, 2 has it on, 3 was switched on and off again, 4 off and on again.
        switched = [(3, True), (4, False), (3, False), (4, True)]
        with engine.begin() as connection:
            for number in (1, 2, 3, 4):
                connection.execute(
                    text(
                        "INSERT INTO person (id, telegram_user_id, chat_id, first_name, reachable,"
                        " is_coach, created_at) VALUES (:n, :n, :n, 'A', :yes, :yes, :now)"
                    ),
                    {"n": number, "yes": True, "now": NOW.replace(tzinfo=None)},
                )
                connection.execute(
                    text(
                        "INSERT INTO athlete_profile (person_id, coach_id, status, screening,"
                        " baseline, weight_unit, volume_unit, prompt_time, always_tomorrow,"
                        " foresight, frozen_because, created_at) VALUES (:n, :n, 'active', '{}',"
                        " '{}', 'kg', 'l', '07:00:00', :no, :on, '', :now)"
                    ),
                    {
                        "n": number, "no": False, "on": number in (2, 4),
                        "now": NOW.replace(tzinfo=None),
                    },
                )  # fmt: skip
            for number, on in switched:
                connection.execute(
                    text(
                        "INSERT INTO history (athlete_id, at, what, detail)"
                        " VALUES (:n, :now, 'forecast', :detail)"
                    ),
                    {
                        "n": number, "now": NOW.replace(tzinfo=None),
                        "detail": json.dumps({"on": on}),
                    },
                )  # fmt: skip
        upgrade_to_head(engine)
        with engine.connect() as connection:
            found = connection.execute(
                text("SELECT person_id, forecast FROM athlete_profile ORDER BY person_id")
            ).all()
        assert [tuple(row) for row in found] == [
            (1, "proposes"), (2, "proposes"), (3, "rules-only"), (4, "proposes"),
        ]  # fmt: skip
        engine.dispose()


#: An outbox row's topic and dedupe as they were written before, and what is read in them.
MARKED_BEFORE: list[tuple[str | None, str | None, tuple[object, ...]]] = [
    ("target:7:2027-05-08", None, ("target", 7, None, date(2027, 5, 8), None)),
    ("answer:7", None, ("answer", 7, None, None, None)),
    ("alert:3:1", "alert:3:1:2027-05-08T06:00:00+00:00", ("alert", 3, 1, None, None)),
    ("stage-day:7:1", None, ("stage-day", 7, 1, None, None)),
    ("learnt:1:7", None, ("learnt", 1, 7, None, None)),
    ("eye:1:55", None, ("looks-gathered", 1, 55, None, None)),
    (None, "eye:1:7:2027-05-08", ("look-asked", 1, 7, date(2027, 5, 8), None)),
    ("notes:55", None, ("notes", 55, None, None, None)),
    ("roster:1", None, ("roster", 1, None, None, None)),
    ("calendar:4", None, ("calendar", 4, None, None, None)),
    ("calendar-of:1", None, ("calendar-of", 1, None, None, None)),
    ("menu:-1009999999999", None, ("menu", -1009999999999, None, None, None)),
    ("code-refused:9999999999", None, ("code-refused", 9999999999, None, None, None)),
    (None, "sign-off:12:1", (None, None, None, None, 12)),
    (None, "sign-off:12:1:2027-05-08T06:00:00", (None, None, None, None, 12)),
    (None, "tap:4", (None, None, None, None, None)),
    ("long gone", None, (None, None, None, None, None)),
]


def test_what_a_message_is_on_is_read_out_of_the_text_that_said_so_before(
    postgres: Server, tmp_path: Path
) -> None:
    for url in (postgres.new_database(), f"sqlite:///{tmp_path / 'older.sqlite3'}"):
        engine = make_engine(url)
        with engine.connect() as connection:
            command.upgrade(_config(connection), "0048")
            connection.commit()
        with engine.begin() as connection:
            for number, (topic, dedupe, _) in enumerate(MARKED_BEFORE, 1):
                connection.execute(
                    text(
                        "INSERT INTO outbox (id, chat_id, method, payload, topic, dedupe, status,"
                        " urgency, attempts, doubts, not_before, created_at, problem) VALUES"
                        " (:n, 1, 'sendMessage', '{}', :t, :d, 'sent', 0, 0, 0, :now, :now, '')"
                    ),
                    {"n": number, "t": topic, "d": dedupe, "now": NOW.replace(tzinfo=None)},
                )
        upgrade_to_head(engine)
        with Session(engine) as session:
            rows = session.exec(select(OutboxRow).order_by(col(OutboxRow.id))).all()
            read = [
                (row.topic, row.topic_about, row.topic_beside, row.topic_day, row.decision_id)
                for row in rows
            ]
            assert read == [wanted for *_, wanted in MARKED_BEFORE]
            kinds = {topic.kind for row in rows if (topic := Topic.of(row)) is not None}
            assert kinds == set(TopicKind)
        engine.dispose()
