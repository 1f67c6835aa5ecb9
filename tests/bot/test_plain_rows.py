"""Rows are written and read plainly just as the mapper would write and read them, table by table."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, date, datetime, time
from typing import Any

import pytest
from sqlalchemy import Column, Engine, bindparam, delete, text
from sqlalchemy.exc import IntegrityError, OperationalError
from sqlalchemy.orm.exc import StaleDataError
from sqlalchemy.types import TypeDecorator
from sqlmodel import Session, SQLModel, select

from bot.store.base import id_of
from bot.store.db import code_of, is_sqlite, transaction
from bot.store.reading import shape_of
from bot.store.tables.people import AthleteProfile, HistoryRow, Person
from bot.store.tables.setting import SettingRow
from bot.store.tables.traffic import InboxRow, OutboxRow
from tests.bench.crew import NOW, counting

EVERY_KIND = sorted(
    (mapper.class_ for mapper in SQLModel._sa_registry.mappers), key=lambda kind: kind.__name__
)


@contextmanager
def by_the_mapper(engine: Engine) -> Iterator[Session]:
    with Session(engine, expire_on_commit=False) as session:
        yield session


def value(column: Column[Any], number: int) -> Any:
    """Something that the column can hold, another one for another number."""
    made: dict[type, Any] = {
        bool: bool(number % 2),
        int: number,
        float: number + 0.5,
        str: f"{column.name} {number}",
        datetime: datetime(2027, 5, number, 6, 30, tzinfo=UTC),
        date: date(2027, 5, number),
        time: time(number, 30),
        object: {"a": [number, None], "b": "ü"},  # JSON
    }
    plain = column.type.impl if isinstance(column.type, TypeDecorator) else column.type
    return made[getattr(plain, "python_type", str)]


def row_of(kind: type[SQLModel], number: int, *, sparse: bool) -> SQLModel:
    """A row with something in each column; `sparse`: only in those that have to be given."""
    shape = shape_of(kind)
    given = {
        name: value(column, number)
        for name, column in shape.columns
        if (kind.model_fields[name].is_required() or not sparse)
        and not (name in shape.keys and not kind.model_fields[name].is_required())
    }
    return kind(**given)


def kept(session: Session, kind: type[SQLModel]) -> list[tuple[Any, ...]]:
    """What is in the table, as the database has it."""
    table = shape_of(kind).table
    order = ", ".join(key.name for key in table.primary_key)
    return [
        tuple(row)
        for row in session.connection().execute(
            text(f'SELECT * FROM "{table.name}" ORDER BY {order}')
        )
    ]


def begin_alone(session: Session, kind: type[SQLModel]) -> None:
    """Rows may name others that are not there in this transaction, and are counted from one."""
    if session.get_bind().dialect.name == "sqlite":
        said = "PRAGMA defer_foreign_keys = ON"
    else:
        session.connection().execute(text("SET LOCAL session_replication_role = replica"))
        said = f'TRUNCATE "{shape_of(kind).table.name}" RESTART IDENTITY CASCADE'
    session.connection().execute(text(said))


def test_every_kind_of_row_is_inserted_and_changed_as_by_the_mapper(any_engine: Engine) -> None:
    different = []
    for kind in EVERY_KIND:
        outcomes = []
        for opened in (transaction, by_the_mapper):
            with pytest.raises(InterruptedError), opened(any_engine) as session:
                begin_alone(session, kind)
                full, sparse = (row_of(kind, 3 + n, sparse=bool(n)) for n in (0, 1))
                session.add(full)
                session.add(sparse)
                session.flush()
                inserted, first = kept(session, kind), dict(full)
                other = row_of(kind, 6, sparse=False)
                for name in set(shape_of(kind).names) - set(shape_of(kind).keys):
                    setattr(full, name, getattr(other, name))
                session.flush()
                outcomes.append((inserted, first, kept(session, kind), dict(full)))
                raise InterruptedError  # nothing of this is to stay
        if outcomes[0] != outcomes[1]:
            different.append((kind.__name__, *outcomes))
    assert different == []
    assert len(EVERY_KIND) > 25


def test_every_kind_of_row_is_read_as_by_the_mapper(any_engine: Engine) -> None:
    different = []
    for kind in EVERY_KIND:
        with pytest.raises(InterruptedError), transaction(any_engine) as session:
            begin_alone(session, kind)
            session.add(row_of(kind, 3, sparse=False))
            session.add(row_of(kind, 4, sparse=True))
            session.flush()
            statement = select(kind).order_by(*shape_of(kind).table.primary_key)
            found = []
            for _ in range(2):  # the second time it is read plainly
                session.expunge_all()
                found.append([dict(row) for row in session.exec(statement).all()])
            if found[0] != found[1] or len(found[0]) != 2:
                different.append((kind.__name__, *found))
            raise InterruptedError
    assert different == []


WITH_PROFILE: Any = select(Person, AthleteProfile, Person.first_name).outerjoin(  # type: ignore[call-overload]
    AthleteProfile, AthleteProfile.person_id == Person.id
)
SETTING = select(SettingRow).where(SettingRow.name == bindparam("name"))


def test_what_is_joined_to_nothing_is_none_and_what_is_known_is_the_same_row(
    own_engine: Engine,
) -> None:
    with transaction(own_engine) as session:
        session.add(Person(telegram_user_id=1, chat_id=1, first_name="Aino", created_at=NOW))
    for _ in range(2):
        with transaction(own_engine) as session:
            ((person, profile, name),) = session.exec(WITH_PROFILE)
            assert (profile, name) == (None, "Aino")
            person.first_name = "Ainu"
            ((again, _, name),) = session.exec(WITH_PROFILE)
            assert again is person
            assert name == "Ainu"  # it was written before it was asked for
            session.rollback()


def test_what_is_to_be_read_anew_is_and_what_was_set_since_stays(own_engine: Engine) -> None:
    for _ in range(2):
        with transaction(own_engine) as session:
            session.add(SettingRow(name="a", value="1"))
            session.flush()
            row = session.exec(SETTING, params={"name": "a"}).one()
            session.connection().execute(text("UPDATE setting SET value = '2'"))
            session.expire(row)
            with counting(own_engine) as said:
                assert session.exec(SETTING, params={"name": "a"}).one() is row
                assert row.value == "2"
            assert len(said) == 1
            session.delete(row)


def test_what_is_changed_while_all_of_it_is_to_be_read_anew_is_written(own_engine: Engine) -> None:
    with transaction(own_engine) as session:
        session.add(Person(telegram_user_id=1, chat_id=1, first_name="Aino", created_at=NOW))
    with transaction(own_engine) as session:
        person = session.exec(select(Person)).one()
        session.expire_all()
        person.first_name = "Ainu"
        assert (person.chat_id, person.first_name) == (1, "Ainu")
    with transaction(own_engine) as session:
        assert session.exec(select(Person.first_name)).one() == "Ainu"


def test_a_read_writes_what_is_pending_of_its_own_tables_only(own_engine: Engine) -> None:
    for _ in range(2):
        with transaction(own_engine) as session:
            assert session.exec(SETTING, params={"name": "a"}).first() is None
            inbox = InboxRow(update_id=1, raw={}, received_at=NOW)
            session.add(inbox)
            with counting(own_engine) as said:
                assert session.exec(SETTING, params={"name": "a"}).first() is None
            session.add(SettingRow(name="a", value="1"))
            assert session.exec(SETTING, params={"name": "a"}).one().value == "1"
            assert session.get(InboxRow, 1) is inbox
            session.rollback()
    assert [line.split()[0] for line in said] == ["SELECT"]


def test_whoever_goes_past_the_session_finds_everything_written(own_engine: Engine) -> None:
    with transaction(own_engine) as session:
        session.add(SettingRow(name="a", value="1"))
        count = session.connection().execute(text("SELECT count(*) FROM setting")).scalar()
    assert count == 1


def test_what_is_set_and_set_back_is_not_written(own_engine: Engine) -> None:
    with transaction(own_engine) as session:
        session.add(row := SettingRow(name="a", value="1"))
        session.flush()
        row.value = "2"
        row.value = "1"
        with counting(own_engine) as said:
            session.flush()
        assert said == []
        assert not session.dirty


def test_a_row_that_has_gone_meanwhile_is_not_changed_in_silence(own_engine: Engine) -> None:
    with pytest.raises(StaleDataError), transaction(own_engine) as session:
        session.add(row := SettingRow(name="a", value="1"))
        session.flush()
        session.connection().execute(delete(SettingRow))
        row.value = "2"


def test_rows_come_in_the_order_in_which_they_were_added(own_engine: Engine) -> None:
    with transaction(own_engine) as session:
        rows = [
            OutboxRow(chat_id=n, method="sendMessage", payload={}, not_before=NOW, created_at=NOW)
            for n in range(30)  # so many go the mapper's way
        ]
        for count in (3, 27):
            for row in rows[:count]:
                session.add(row)
            session.flush()
            del rows[:count]
        found = session.exec(select(OutboxRow.chat_id).order_by(OutboxRow.id)).all()
    assert list(found) == list(range(30))


def test_rows_of_several_tables_that_are_written_at_once_have_their_own_keys_in_order(
    any_engine: Engine,
) -> None:
    """On PostgreSQL they go in one statement."""
    with transaction(any_engine) as session:
        person = Person(telegram_user_id=1, chat_id=1, first_name="Aino", created_at=NOW)
        session.add(person)
        session.flush()
        for many in (1, 2, 4, 5):
            said = [
                OutboxRow(chat_id=n, method="x", payload={"n": n}, not_before=NOW, created_at=NOW)
                for n in range(many)
            ]
            changes = [
                HistoryRow(athlete_id=id_of(person), at=NOW, what=str(n), detail={"n": n})
                for n in range(2)
            ]
            for row in (*said[:1], *changes, SettingRow(name=str(many), value="1"), *said[1:]):
                session.add(row)
            with counting(any_engine) as put:
                session.flush()
            inserts = [one for one in put if "INSERT" in one]
            assert len(inserts) == (many + 3 if is_sqlite(any_engine) else 1)
            told = session.exec(select(OutboxRow.id, OutboxRow.payload).order_by(OutboxRow.id))
            assert told.all()[-many:] == [(row.id, row.payload) for row in said]
            changed = session.exec(select(HistoryRow.id, HistoryRow.what).order_by(HistoryRow.id))
            assert changed.all()[-2:] == [(row.id, row.what) for row in changes]


def test_numbers_are_given_in_the_order_of_being_added_and_kept(any_engine: Engine) -> None:
    different = []
    for kind in EVERY_KIND:
        if "id" not in shape_of(kind).keys or kind.model_fields["id"].is_required():
            continue
        with pytest.raises(InterruptedError), transaction(any_engine) as session:
            begin_alone(session, kind)
            rows = [row_of(kind, 3 + n, sparse=False) for n in range(4)]
            for row in rows[:3]:
                session.add(row)
            numbers = [id_of(rows[1]), id_of(rows[0]), id_of(rows[2])]  # type: ignore[arg-type]
            session.add(rows[3])
            session.flush()
            keys = [row.id for row in rows]  # type: ignore[attr-defined]
            if keys != sorted(set(keys)) or numbers != [keys[1], keys[0], keys[2]]:
                different.append((kind.__name__, numbers, keys))
            raise InterruptedError
    assert different == []


def test_what_names_a_new_row_is_written_whichever_was_there_first(any_engine: Engine) -> None:
    def somebody(number: int) -> Person:
        return Person(telegram_user_id=number, chat_id=number, first_name="A", created_at=NOW)

    with transaction(any_engine) as session:
        session.add_all([first := somebody(1), SettingRow(name="goes", value="1")])
        session.flush()
        session.add(second := somebody(2))
        first.second_contact_id = id_of(second)
        session.flush()
        session.add(third := somebody(3))
        second.second_contact_id = id_of(third)
        session.add(HistoryRow(athlete_id=id_of(third), at=NOW, what="came", detail={}))
        session.delete(session.get_one(SettingRow, "goes"))  # with which all go the mapper's way
    with transaction(any_engine) as session:
        contacts = session.exec(select(Person.second_contact_id).order_by(Person.id)).all()
        assert list(contacts) == [id_of(second), id_of(third), None]
        assert session.exec(select(HistoryRow.athlete_id)).one() == id_of(third)
        assert session.get(SettingRow, "goes") is None


def test_a_column_that_there_is_not_cannot_be_given() -> None:
    with pytest.raises(TypeError, match="valeu"):
        SettingRow(name="a", valeu="1")  # type: ignore[call-arg]


def test_what_the_driver_refuses_is_raised_as_by_the_mapper_without_what_was_written(
    any_engine: Engine,
) -> None:
    with transaction(any_engine) as session:
        session.add(SettingRow(name="a", value="1"))
    raised = []
    for opened in (transaction, by_the_mapper):
        with pytest.raises(IntegrityError) as caught, opened(any_engine) as session:
            session.add(SettingRow(name="a", value="written in confidence"))
            session.flush()
        error = caught.value
        raised.append((type(error.orig), code_of(error), error.connection_invalidated))
        assert "in confidence" not in str(error).partition("DETAIL")[0]
    assert raised[0] == raised[1]
    with transaction(any_engine) as session:  # the connection goes on
        assert session.exec(SETTING, params={"name": "a"}).one().value == "1"


def test_a_connection_that_is_gone_is_given_up_and_the_transaction_run_again(
    postgres_engine: Engine,
) -> None:
    with pytest.raises(OperationalError) as caught, transaction(postgres_engine) as session:
        session.add(SettingRow(name="b", value="1"))
        session.flush()
        number = session.connection().execute(text("SELECT pg_backend_pid()")).scalar_one()
        with postgres_engine.connect() as other:
            other.execute(text("SELECT pg_terminate_backend(:number, 5000)"), {"number": number})
        session.add(SettingRow(name="c", value="1"))
        session.flush()
    assert caught.value.connection_invalidated
    with transaction(postgres_engine) as session:
        assert session.exec(select(SettingRow)).all() == []
