"""What a use case has read is not read again until something of that kind is written.

Half of a check-in's statements asked once more for what an earlier one had brought: its event, its
plan, its coach's helpers. `remembered` keeps the answer with the session, under a key, until the
session writes to one of the tables it came from. Nobody else writes to them meanwhile: SQLite has one
writer, and on PostgreSQL whoever is concerned is locked (`bot.people.locks`).
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any, TypeVar

from sqlalchemy import Executable, bindparam, event, inspect
from sqlalchemy.orm import UOWTransaction
from sqlalchemy.orm.attributes import instance_state
from sqlmodel import Session, SQLModel, select
from sqlmodel.sql.expression import SelectOfScalar

from bot.store.writing import WritesPlainly

_Answer = TypeVar("_Answer")


class RemembersReads(WritesPlainly):
    """A session that can keep what was read; any statement that is not one of the mapper's own, and may
    write whatever, makes it forget everything.
    """

    def __init__(self, *given: Any, **more: Any) -> None:
        super().__init__(*given, **more)
        self.answers: dict[type[SQLModel], dict[tuple[object, ...], Any]] = {}
        self._ahead: dict[type[SQLModel], _Ahead] = {}

    def connection(self, *given: Any, **more: Any) -> Any:
        self._ahead.clear()
        self.answers.clear()
        return super().connection(*given, **more)

    def get(self, entity: Any, ident: Any, **more: Any) -> Any:
        """As ever, with a statement that is built once for a table where the row has to be read."""
        if more or type(ident) not in (int, str):
            return super().get(entity, ident, **more)
        known = self.identity_map.get((entity, (ident,), None))
        if known is None:
            return self.exec(_by_key(entity), params={"key": ident}).first()
        return super().get(entity, ident) if instance_state(known).expired else known

    def expire_all(self) -> None:
        self._ahead.clear()
        self.answers.clear()
        super().expire_all()

    def after_writing(self, rows: list[Any]) -> None:
        for table in set(map(type, rows)):
            self.answers.pop(table, None)
            ahead = self._ahead.pop(table, None)
            if ahead is not None and ahead.rows == {
                instance_state(row) for row in rows if type(row) is table
            }:
                self.answers[table] = {ahead.key: ahead.answer}

    def know_ahead(self, table: type[SQLModel], key: tuple[object, ...], answer: object) -> None:
        self._ahead[table] = _Ahead(self._pending(table), key, answer)

    def known_ahead(self, table: type[SQLModel], key: tuple[object, ...]) -> Any:
        """What was told ahead, where no other row of the table has come to be pending; else `_NOT`."""
        ahead = self._ahead.get(table)
        if ahead is None or ahead.key != key or ahead.rows != self._pending(table):
            return _NOT
        return ahead.answer

    def forget(self, table: type[SQLModel]) -> None:
        self._ahead.pop(table, None)
        self.answers.pop(table, None)

    def some_are_pending(self, table: type[SQLModel]) -> bool:
        for states in (self._new, self.identity_map._modified, self._deleted):
            for state in states:
                if state.class_ is table:
                    return True
        return False

    def _pending(self, table: type[SQLModel]) -> frozenset[Any]:
        states = (*self._new, *self.identity_map._modified, *self._deleted)
        return frozenset(state for state in states if state.class_ is table)


@dataclass(frozen=True, slots=True)
class _Ahead:
    """The answer that holds once these rows, which are pending, are written."""

    rows: frozenset[Any]
    key: tuple[object, ...]
    answer: object


_NOT = object()


@cache
def _by_key(table: type[SQLModel]) -> Any:
    (key,) = inspect(table).primary_key
    return select(table).where(key == bindparam("key"))


@event.listens_for(RemembersReads, "after_flush")
def _forget_what_was_written(session: RemembersReads, _context: UOWTransaction) -> None:
    for rows in (session.new, session.dirty, session.deleted):
        for row in rows:
            session.forget(type(row))


def remembered(
    session: Session,
    table: type[SQLModel],
    key: tuple[object, ...],
    read: Callable[[], _Answer],
    *,
    flushes: bool = True,
) -> _Answer:
    """The answer to this question about the table, read at most once between two writes to it.

    `key` names the question and what it is about; it is the same only where `read` is. `flushes`:
    what is written so far counts, as for any query; not where `read` looks a row up by its key.
    """
    if not isinstance(session, RemembersReads):
        return read()
    if (ahead := session.known_ahead(table, key)) is not _NOT:
        return ahead  # type: ignore[no-any-return]
    if flushes and session.some_are_pending(table):
        session.flush()
    kept = session.answers.setdefault(table, {})
    found: _Answer = kept.get(key, _NOT)
    if found is _NOT:
        found = kept[key] = read()
    return found


def remembered_rows(
    session: Session,
    table: type[SQLModel],
    key: tuple[object, ...],
    found_by: SelectOfScalar[_Answer],
    **given: object,
) -> Sequence[_Answer]:
    """What a statement finds, given these, as `remembered`."""
    return remembered(session, table, key, lambda: session.exec(found_by, params=given).all())


def remembered_row(
    session: Session,
    table: type[SQLModel],
    key: tuple[object, ...],
    found_by: SelectOfScalar[_Answer],
    **given: object,
) -> _Answer | None:
    """The first that it finds; None where there is nothing."""
    return remembered(session, table, key, lambda: session.exec(found_by, params=given).first())


def remember(session: Session, *read: tuple[type[SQLModel], tuple[object, ...], object]) -> None:
    """What was read along with something else, each with its table and key, so that whoever asks
    `remembered` for it finds it.
    """
    if isinstance(session, RemembersReads):
        for table, key, answer in read:
            session.answers.setdefault(table, {})[key] = answer


def remember_ahead(
    session: Session, table: type[SQLModel], key: tuple[object, ...], answer: object
) -> None:
    """What `remembered` finds with the rows of this table that are pending, which need not be written
    for it; nor is it read anew once they are, unless others of the table are written with them.
    """
    if isinstance(session, RemembersReads):
        session.know_ahead(table, key, answer)


def made_of(row: SQLModel, name: Hashable, source: object, make: Callable[[], _Answer]) -> _Answer:
    """What is made of a column of a row, made once while the row is loaded and the column stands."""
    made: dict[Any, tuple[object, _Answer]] = inspect(row).info
    kept = made.get(name)
    if kept is None or kept[0] is not source:
        kept = made[name] = (source, make())
    return kept[1]


def forget(session: Session, *tables: type[SQLModel]) -> None:
    """What was read of these tables is read anew: another may have written to them."""
    if isinstance(session, RemembersReads):
        for table in tables:
            session.forget(table)


def looked_up(
    session: Session, statement: Executable, values: Mapping[str, Any]
) -> Sequence[Sequence[Any]]:
    """What a statement finds that is none of the mapper's and writes nothing that was read, so
    that what was read before is remembered still.
    """
    if isinstance(session, RemembersReads):
        session.flush()
        return session.straight().found(statement, values)
    return session.connection().execute(statement, values).all()
