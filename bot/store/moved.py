"""The mark that an installation leaves when it moves to another database: the old one refuses whatever
would be written to it, whoever would do it, and names the new one.

It is made of triggers and a table that belong to no schema of ours, so that no version of the bot can
overlook it, and no back-up holds it.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from sqlalchemy import Connection, Engine, inspect, text

from bot.store.db import is_sqlite
from bot.store.tables import metadata

MARK = "moved_to"
REFUSES = "brimline_has_moved"


def sentence(address: str) -> str:
    return f"this installation has moved to {address}"


@contextmanager
def nobody_writes(engine: Engine) -> Iterator[Connection]:
    """Whoever would write waits; what is read is one moment. Committed at the end."""
    with engine.connect() as connection:
        if is_sqlite(engine):
            connection.execution_options(begin_immediate=True)
        with connection.begin():
            if not is_sqlite(engine):
                # While it is copied nothing is said on this line.
                connection.exec_driver_sql("SET LOCAL idle_in_transaction_session_timeout = 0")
                there = set(inspect(connection).get_table_names()) & set(metadata.tables)
                names = ", ".join(f'"{name}"' for name in sorted(there))
                connection.exec_driver_sql(f"LOCK TABLE {names} IN EXCLUSIVE MODE")
            yield connection


def leave_mark(connection: Connection, address: str) -> None:
    """From here on the database refuses whatever would be written."""
    tables = sorted(set(inspect(connection).get_table_names()) & set(metadata.tables))
    said = _quoted(sentence(address))
    run = connection.exec_driver_sql
    run(f"CREATE TABLE {MARK} (address VARCHAR NOT NULL)")
    connection.execute(text(f"INSERT INTO {MARK} VALUES (:address)"), {"address": address})
    if connection.dialect.name == "sqlite":
        for table in tables:
            for act in ("INSERT", "UPDATE", "DELETE"):
                run(
                    f'CREATE TRIGGER "{REFUSES}_{table}_{act.lower()}" BEFORE {act} ON "{table}" '
                    f"BEGIN SELECT RAISE(ABORT, {said}); END"
                )
        return
    # As if the server were away, so that nothing that waits counts as at fault.
    refusing = (
        f"CREATE FUNCTION {REFUSES}() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN "
        f"RAISE EXCEPTION USING MESSAGE = {said}, ERRCODE = 'cannot_connect_now'; END $$"
    )
    run(refusing.replace("%", "%%"))  # which the driver takes for parameters
    for table in tables:
        run(
            f'CREATE TRIGGER {REFUSES} BEFORE INSERT OR UPDATE OR DELETE ON "{table}" '
            f"FOR EACH STATEMENT EXECUTE FUNCTION {REFUSES}()"
        )


def _quoted(words: str) -> str:
    doubled = words.replace("'", "''")
    return f"'{doubled}'"


def moved_to(engine: Engine) -> str:
    """Where it has moved; "" where it is still here."""
    with engine.connect() as connection:
        if not inspect(connection).has_table(MARK):
            return ""
        return str(connection.exec_driver_sql(f"SELECT address FROM {MARK}").scalar() or "")
