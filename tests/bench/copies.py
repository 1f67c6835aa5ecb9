"""Many more people who have lived through the same days as those who are there."""

from __future__ import annotations

from typing import Any

from sqlalchemy import BigInteger, Engine, Integer, Table

from bot.store.db import is_sqlite
from bot.store.tables import metadata

#: More than the rows of any table in one unit, so that each unit has numbers of its own.
STRIDE = 2_000
#: Columns that name a row or a chat without a key that says so.
NUMBERED = {
    "telegram_user_id", "chat_id", "outbox_id", "roster_outbox_id", "notes_outbox_id", "subject_id",
    "edits_outbox_id", "message_id", "topic_about", "topic_beside",
}  # fmt: skip
#: Whom a duty is about is written as "KIND:NUMBER".
_NUMBER = "substr(subject, instr(subject, ':') + 1)"
ON_SQLITE = (
    f"CASE WHEN {_NUMBER} GLOB '[0-9]*' THEN substr(subject, 1, instr(subject, ':')) || "
    f"({_NUMBER} + {STRIDE} * n) ELSE subject END"
)
ON_POSTGRESQL = (
    "CASE WHEN split_part(subject, ':', 2) ~ '^[0-9]+$' THEN split_part(subject, ':', 1) || ':' || "
    f"(split_part(subject, ':', 2)::bigint + {STRIDE} * n) ELSE subject END"
)


def copies(engine: Engine, units: int) -> None:
    """All rows once for each further unit, made by the database itself."""
    if not is_sqlite(engine):
        with engine.begin() as connection:
            connection.exec_driver_sql("SET LOCAL session_replication_role = replica")
            for table in _copied():
                connection.exec_driver_sql(
                    f"INSERT INTO {_columns(table)} SELECT {_moved_on(table, ON_POSTGRESQL)}"
                    f' FROM "{table.name}", generate_series(1, {units}) AS unit(n)'
                )
        return
    with engine.connect() as connection:
        raw = connection.connection.driver_connection
        assert raw is not None
        for setting in ("foreign_keys = OFF", "synchronous = OFF", "cache_size = -200000"):
            raw.execute(f"PRAGMA {setting}")
        raw.execute("BEGIN")
        raw.execute("CREATE TEMP TABLE unit AS WITH RECURSIVE one(n) AS (SELECT 1 UNION ALL "
                    f"SELECT n + 1 FROM one WHERE n < {units}) SELECT n FROM one")  # fmt: skip
        for table in _copied():
            raw.execute(f'CREATE TEMP TABLE original AS SELECT * FROM "{table.name}"')
            raw.execute(f"INSERT INTO {_columns(table)} SELECT {_moved_on(table, ON_SQLITE)} "
                        "FROM unit CROSS JOIN original")  # fmt: skip
            raw.execute("DROP TABLE original")
        raw.execute("COMMIT")
        for setting in ("synchronous = FULL", "cache_size = -2000", "foreign_keys = ON"):
            raw.execute(f"PRAGMA {setting}")
        raw.execute("DROP TABLE unit")


def _copied() -> list[Table]:
    return [table for table in metadata.sorted_tables if table.name != "setting"]


def _columns(table: Table) -> str:
    names = ", ".join(f'"{column.name}"' for column in table.c)
    return f'"{table.name}" ({names})'


def _moved_on(table: Table, subject: str) -> str:
    return ", ".join(_moved(column, subject) for column in table.c)


def _moved(column: Any, subject: str) -> str:
    """The column as it is in another unit: other people, other numbers, all else the same."""
    name = f'"{column.name}"'
    is_a_number = isinstance(column.type, (Integer, BigInteger))
    if is_a_number and (column.foreign_keys or column.primary_key or column.name in NUMBERED):
        return f"{name} + {STRIDE} * n"
    if column.name == "subject":
        return subject
    return f"{name} || '~' || n" if column.name in ("dedupe", "token_hash") else name
