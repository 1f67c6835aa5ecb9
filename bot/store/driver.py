"""How statements and values go to the driver, and come back: prepared ones straight, instants as UTC,
JSON as text.

Before SQLAlchemy hands a statement to sqlite3 or psycopg it looks up again how it is written down, sets
up its parameters by name and makes a result that can be asked in many ways: several times what the
database takes to answer it. A statement that is put again and again has all this worked out once
(`prepared`): its words, how each value goes in and how each column comes out, by the very types of its
columns. Transactions and connections stay the session's, listeners hear of it, and what the driver
raises is raised as SQLAlchemy would (`tests/bot/test_plain_rows.py`).
"""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import UTC, datetime
from functools import cache
from typing import Any
from weakref import WeakKeyDictionary

import orjson
from sqlalchemy import Connection, DateTime, Dialect
from sqlalchemy.exc import DBAPIError
from sqlalchemy.sql.compiler import SQLCompiler
from sqlalchemy.types import TypeDecorator

Processor = Callable[[Any], Any]
PSYCOPG = "psycopg"
#: As the standard library has it: days and dataclasses are no JSON, keys may be numbers.
_OPTIONS = (
    orjson.OPT_PASSTHROUGH_DATACLASS | orjson.OPT_PASSTHROUGH_DATETIME | orjson.OPT_NON_STR_KEYS
)


class UTCDateTime(TypeDecorator[datetime]):
    """An aware instant, stored as UTC; SQLite keeps no zone, so it is put back on the way out."""

    impl = DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> Any:
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError("an instant without a zone cannot be stored")
        value = value.astimezone(UTC)
        return value.replace(tzinfo=None) if dialect.name == "sqlite" else value

    def process_result_value(  # the base class calls it with the dialect
        self,
        value: Any,
        dialect: Dialect,  # noqa: ARG002
    ) -> datetime | None:
        if value is None:
            return None
        assert isinstance(value, datetime)
        return value.replace(tzinfo=UTC) if value.tzinfo is None else value.astimezone(UTC)


def to_text(value: Any) -> str:
    """Raises TypeError for what JSON has no way of writing."""
    try:
        return orjson.dumps(value, option=_OPTIONS).decode()
    except TypeError:
        # Half a sign, as a broken client sends it, and integers of more than 64 bits.
        return json.dumps(value)


def from_text(text: str | bytes) -> Any:
    """An integer of more than 64 bits comes back as a float. Raises ValueError for what is no JSON."""
    try:
        return orjson.loads(text)
    except ValueError:
        # The standard library writes half a sign as it came, and numbers beyond the finite by name.
        return json.loads(text)


@dataclass(slots=True)
class Prepared:
    """A statement as a driver takes it.

    `given`: the parameters in their order, each with its name, what it is where nothing is said, and
    what makes of a value what the driver takes. `columns`: the types that are asked for; what makes
    values of them (`coming_out`) is known once the driver has said what it gives.
    """

    words: str
    given: tuple[tuple[str, str, Any, Processor | None], ...]
    by_name: bool
    columns: tuple[Any, ...]
    coming_out: tuple[tuple[int, Processor], ...] | None = field(default=None)

    def parameters(self, values: Mapping[str, Any]) -> Any:
        made = [
            (place, values.get(name, default) if into is None else into(values.get(name, default)))
            for place, name, default, into in self.given
        ]
        return dict(made) if self.by_name else tuple([value for _, value in made])


_prepared: dict[str, WeakKeyDictionary[Any, Prepared | None]] = {}


def prepared(
    statement: Any, dialect: Dialect, columns: Sequence[str] | None = None
) -> Prepared | None:
    """It as this driver takes it, worked out once; `columns`: those that an insert gives.

    None where it is written anew for its values (a list of them, above all).
    """
    kept = _prepared.setdefault(dialect.name, WeakKeyDictionary())
    if statement not in kept:
        kept[statement] = _work_out(statement, dialect, columns)
    return kept[statement]


def _work_out(statement: Any, dialect: Dialect, columns: Sequence[str] | None) -> Prepared | None:
    compiled = statement.compile(dialect=_written_for(dialect), column_keys=columns)
    assert isinstance(compiled, SQLCompiler)
    if compiled.literal_execute_params or compiled.post_compile_params:
        return None
    if compiled.insert_prefetch or compiled.update_prefetch or compiled.escaped_bind_names:
        return None
    places = compiled.positiontup if compiled.positional else list(compiled.binds)
    given = []
    for place in places or ():
        bind = compiled.binds[place]
        into = bind.type.dialect_impl(dialect).bind_processor(dialect)
        given.append((place, bind.key, bind.effective_value, into))
    asked = getattr(statement, "exported_columns", ())
    return Prepared(
        compiled.string, tuple(given), not compiled.positional, tuple(one.type for one in asked)
    )


@cache
def _numbered() -> Dialect:
    from sqlalchemy.dialects.postgresql.psycopg import PGDialect_psycopg  # noqa: PLC0415

    return PGDialect_psycopg(paramstyle="numeric_dollar")  # type: ignore[no-untyped-call]


def _written_for(dialect: Dialect) -> Dialect:
    """What a statement is written down for: for psycopg as the server takes it, so that the driver has
    no names of parameters to look for, which it does anew at every long statement.
    """
    return _numbered() if dialect.driver == PSYCOPG else dialect


def _cursor_of(connection: Connection) -> Any:
    if connection.dialect.driver != PSYCOPG:
        return connection.connection.cursor()
    return connection.dialect.loaded_dbapi.RawCursor(connection.connection.dbapi_connection)


class Straight:
    """The way from a connection's transaction to its driver."""

    def __init__(self, connection: Connection) -> None:
        self.connection = connection
        self.dialect = connection.dialect
        self._cursor = _cursor_of(connection)

    def put(
        self, statement: Any, *values: Mapping[str, Any], columns: Sequence[str] | None = None
    ) -> int:
        """Put a statement that returns nothing with these values, or with each of several; how many
        rows it concerned. `columns`: those that an insert gives. Raises what SQLAlchemy would.
        """
        ready = prepared(statement, self.dialect, columns)
        assert ready is not None  # it has no list of values
        concerned: int = self._put(ready, *values).rowcount
        return concerned

    def _put(self, statement: Prepared, *values: Mapping[str, Any]) -> Any:
        cursor = self._cursor
        try:
            given = [statement.parameters(one) for one in values]
        except Exception as error:
            raise self._said(statement, error) from error
        many = len(given) > 1
        parameters = given if many else given[0]
        if heard := self.connection.dispatch.before_cursor_execute:
            heard(self.connection, cursor, statement.words, parameters, None, many)
        try:
            (cursor.executemany if many else cursor.execute)(statement.words, parameters)
        except self.dialect.loaded_dbapi.Error as error:
            raise self._said(statement, error, parameters) from error
        return cursor

    def close(self) -> None:
        """No more is put; a line that is gone has closed it already."""
        with suppress(self.dialect.loaded_dbapi.Error):
            self._cursor.close()

    def found(
        self, statement: Any, values: Mapping[str, Any], columns: Sequence[str] | None = None
    ) -> Sequence[Sequence[Any]]:
        """The values of the rows that a statement finds, or returns, given these."""
        ready = prepared(statement, self.dialect, columns)
        if ready is None:
            return self.connection.execute(statement, values).all()
        cursor = self._put(ready, values)
        found: Sequence[Sequence[Any]] = cursor.fetchall()
        out = ready.coming_out
        if out is None:
            out = ready.coming_out = _coming_out(ready, cursor.description, self.dialect)
        return [_values_of(row, out) for row in found] if out else found

    def _said(self, statement: Prepared, error: Any, parameters: Any = None) -> Any:
        gone = self.dialect.is_disconnect(error, self.connection.connection, self._cursor)
        if gone:
            self.connection.invalidate(error)
        return DBAPIError.instance(
            statement.words, parameters, error, self.dialect.loaded_dbapi.Error,
            hide_parameters=self.connection.engine.hide_parameters, connection_invalidated=gone,
            dialect=self.dialect,
        )  # fmt: skip


def _coming_out(
    statement: Prepared, description: Sequence[Sequence[Any]], dialect: Dialect
) -> tuple[tuple[int, Processor], ...]:
    made = (
        (place, kind.dialect_impl(dialect).result_processor(dialect, told[1]))
        for place, (kind, told) in enumerate(zip(statement.columns, description, strict=False))
    )
    return tuple((place, out) for place, out in made if out is not None)


def _values_of(row: Sequence[Any], coming_out: Sequence[tuple[int, Processor]]) -> list[Any]:
    values = list(row)
    for place, out in coming_out:
        values[place] = out(values[place])
    return values
