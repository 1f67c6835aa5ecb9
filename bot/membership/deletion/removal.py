"""The row of somebody who goes: deleted, or an empty place where what others keep hangs on it.

An athlete's plans and history name whoever set them. Those stay the athlete's; the name does not.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, datetime
from typing import Any

from sqlalchemy import String, Table, cast, delete, or_, update
from sqlalchemy import select as pick
from sqlmodel import Session, col, select

from bot.membership.deletion.told_others import NO_NAME, without_name
from bot.store.base import batches, id_of
from bot.store.tables import metadata
from bot.store.tables.people import HistoryRow, OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow, FetchRow, InboxRow, OutboxRow
from bot.store.traces import leave_no_trace

#: No chat and no user of Telegram has such a number.
NOWHERE = -(10**15)
LONG_AGO = datetime(1970, 1, 1, tzinfo=UTC)


def remove_person(session: Session, person: Person) -> None:
    """Nothing is left of the person but, where rows of others need it, a place without a name."""
    number = id_of(person)
    leave_no_trace(session)
    session.flush()
    person_table = metadata.tables["person"]
    others = update(person_table).where(person_table.c.second_contact_id == number)
    session.connection().execute(others.values(second_contact_id=None))
    if _is_needed(session, number):
        person.telegram_user_id, person.chat_id = NOWHERE - number, NOWHERE - number
        person.first_name, person.language, person.chosen_language = NO_NAME, None, None
        person.reachable, person.is_coach, person.second_contact_id = False, False, None
        person.created_at = LONG_AGO
        session.flush()
        return
    for table, column in references():
        if table.c[column].nullable:
            cleared = update(table).where(table.c[column] == number).values({column: None})
            session.connection().execute(cleared)
    session.expunge(person)
    session.connection().execute(delete(Person).where(col(Person.id) == number))


def delete_traffic(
    session: Session, person_id: int, chat_id: int, subjects: Sequence[str], *, but: int
) -> None:
    """What was said in a chat and what was due of these subjects; the update that asks for it stays,
    and so does a message that is being sent at this moment.
    """
    waiting = col(OutboxRow.status) != "sending"
    not_an_answer = col(OutboxRow.method) != "answerCallbackQuery"
    session.flush()
    for some in batches(subjects):
        session.connection().execute(delete(AgendaRow).where(col(AgendaRow.subject).in_(some)))
    for statement in (
        delete(FetchRow).where(col(FetchRow.person_id) == person_id),
        delete(InboxRow).where(col(InboxRow.chat_id) == chat_id, col(InboxRow.update_id) != but),
        delete(OutboxRow).where(col(OutboxRow.chat_id) == chat_id, waiting, not_an_answer),
    ):
        session.connection().execute(statement)


def references() -> list[tuple[Table, str]]:
    """Every column that names a person."""
    return [
        (table, column.name)
        for table in metadata.sorted_tables
        for column in table.c
        for key in column.foreign_keys
        if key.target_fullname == "person.id"
    ]


def athletes_naming(session: Session, person_id: int) -> set[int]:
    """The athletes in whose rows this person stands, now or earlier."""
    found: set[int] = set()
    for table, column in references():
        whose = "athlete_id" if "athlete_id" in table.c else "person_id"
        if table.name == "person" or whose not in table.c or column == whose:
            continue
        rows = pick(table.c[whose]).where(table.c[column] == person_id).distinct()
        found |= {number for number in session.scalars(rows) if number is not None}
    return found - {person_id}


def take_name_out_of_records(session: Session, athletes: set[int], name: str) -> None:
    """The name of somebody who is gone, out of what is kept of these athletes."""
    if not name:
        return
    for some in batches(sorted(athletes)):
        for kind, whose, table, field in (
            (HistoryRow, HistoryRow.athlete_id, "history", "detail"),
            (OpenQuestion, OpenQuestion.person_id, "open_question", "answers"),
        ):
            # JSON writes other letters than ASCII as numbers, in some databases: those are read.
            like = cast(metadata.tables[table].c[field], String)
            named = or_(like.contains(name, autoescape=True), like.contains("\\u", autoescape=True))
            for row in session.exec(select(kind).where(col(whose).in_(some), named)):
                _rewrite(row, field, name)
    session.flush()


def _rewrite(row: Any, field: str, name: str) -> None:
    before = getattr(row, field)
    after = {key: _within(value, name) for key, value in before.items()}
    if after != before:
        setattr(row, field, after)


def _within(value: Any, name: str) -> Any:
    if isinstance(value, str):
        return without_name(value, name)
    if isinstance(value, list):
        return [_within(one, name) for one in value]
    if isinstance(value, dict):
        return {key: _within(one, name) for key, one in value.items()}
    return value


def _is_needed(session: Session, person_id: int) -> bool:
    """Whether a row that stays cannot do without this person."""
    return any(
        session.connection().execute(pick(1).where(table.c[column] == person_id)).first()
        for table, column in references()
        if not table.c[column].nullable
    )
