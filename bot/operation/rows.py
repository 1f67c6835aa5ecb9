"""Rows of any database of ours as lines of text, and back: for back-ups and for moving house.

What is read is what the database has, by reflection, not what this version's tables say: so a
back-up of an earlier version can be put back. Instants are written in UTC with an offset, days and
times as in ISO 8601. JSON stays the text that it is, so that JSON's null is told from none at all.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from datetime import UTC, date, datetime, time
from typing import Any

from sqlalchemy import (
    Column,
    Connection,
    Engine,
    Integer,
    MetaData,
    Table,
    cast,
    func,
    select,
    text,
)
from sqlalchemy import types as kinds

from bot.store.base import AT_ONCE, batches
from bot.store.db import is_sqlite
from bot.store.moved import MARK

#: Where the revision of the schema stands: it comes with the shape, not with the rows.
VERSION_TABLE = "alembic_version"


@contextmanager
def snapshot(engine: Engine) -> Iterator[Connection]:
    """A connection that sees one moment of the database, while others go on writing."""
    level = "SERIALIZABLE" if is_sqlite(engine) else "REPEATABLE READ"
    with engine.connect() as plain:
        connection = plain if is_sqlite(engine) else plain.execution_options(isolation_level=level)
        with connection.begin():
            yield connection


def tables_in(connection: Connection) -> list[Table]:
    """The tables that hold rows of ours, parents before children."""
    found = MetaData()
    found.reflect(connection)
    for table in found.tables.values():
        for column in table.columns:
            if isinstance(column.type, kinds.JSON):
                column.type = kinds.JSON(none_as_null=True)
    return [table for table in found.sorted_tables if table.name not in (VERSION_TABLE, MARK)]


def lines_of(connection: Connection, table: Table) -> Iterator[str]:
    """Each row of a table as one line of JSON, in the order of its key."""
    columns = [
        cast(column, kinds.Text).label(column.name)
        if isinstance(column.type, kinds.JSON)
        else column
        for column in table.columns
    ]
    query = select(*columns).order_by(*table.primary_key.columns)
    for row in connection.execute(query, execution_options={"yield_per": AT_ONCE}).mappings():
        yield json.dumps(
            {name: _plain(value) for name, value in row.items()},
            ensure_ascii=False, separators=(",", ":"),
        )  # fmt: skip


def put_lines(connection: Connection, table: Table, lines: Iterable[str]) -> int:
    """Insert what `lines_of` gave. Returns how many rows.

    A column that names another row of the same table is filled in afterwards, since the row that it
    names may come later.
    """
    own = [key.parent for key in table.foreign_keys if key.column.table is table]
    later: list[dict[str, Any]] = []
    count = 0
    for batch in batches(lines):
        rows = [_typed(table, json.loads(line)) for line in batch]
        for row in rows:
            named = {column.name: row[column.name] for column in own}
            if any(value is not None for value in named.values()):
                later.append({"_key": row["id"], **named})
                row.update(dict.fromkeys(named))
        connection.execute(table.insert(), rows)
        count += len(rows)
    for row in later:
        key = row.pop("_key")
        connection.execute(table.update().where(table.c.id == key).values(row))
    _go_on_counting(connection, table)
    return count


def count_in(connection: Connection, table: Table) -> int:
    return int(connection.execute(select(func.count()).select_from(table)).scalar_one())


def _go_on_counting(connection: Connection, table: Table) -> None:
    """PostgreSQL counts ids by itself, and does not look at those that were given."""
    if connection.dialect.name == "sqlite":
        return
    for column in table.primary_key.columns:
        if not isinstance(column.type, Integer):
            continue
        counter = connection.execute(
            text("SELECT pg_get_serial_sequence(:table, :column)"),
            {"table": f'"{table.name}"', "column": column.name},
        ).scalar()
        if counter is not None:
            highest = connection.execute(select(func.max(column))).scalar()
            connection.execute(
                text("SELECT setval(:counter, :to, :used)"),
                {"counter": counter, "to": highest or 1, "used": highest is not None},
            )


def _plain(value: Any) -> Any:
    if isinstance(value, datetime):
        aware = value if value.tzinfo is not None else value.replace(tzinfo=UTC)
        return aware.astimezone(UTC).isoformat()
    if isinstance(value, date | time):
        return value.isoformat()
    return value


def _typed(table: Table, row: Mapping[str, Any]) -> dict[str, Any]:
    return {name: _as_kind(table.c[name], value) for name, value in row.items()}


def _as_kind(column: Column[Any], value: Any) -> Any:
    if value is None:
        return None
    if isinstance(column.type, kinds.DateTime):
        moment = datetime.fromisoformat(value)
        return moment if column.type.timezone else moment.astimezone(UTC).replace(tzinfo=None)
    if isinstance(column.type, kinds.Date):
        return date.fromisoformat(value)
    if isinstance(column.type, kinds.Time):
        return time.fromisoformat(value)
    if isinstance(column.type, kinds.JSON):
        content = json.loads(value)
        return kinds.JSON.NULL if content is None else content
    return value
