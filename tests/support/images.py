"""What a database holds, to be put into another one: what was played once need not be played again."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from sqlalchemy import Engine, insert, text
from sqlmodel import select

from bot.store.db import is_sqlite
from bot.store.moved import MARK, REFUSES
from bot.store.tables import metadata

#: An SQLite file, or the rows of each table of a PostgreSQL database.
Image = bytes | dict[str, list[dict[str, Any]]]
#: What is another one after every write.
Written = tuple[tuple[int, int], ...] | int

#: Triggers are off meanwhile, so that rows may go before those that name them. Most tables of most
#: tests are empty, and to truncate one costs as much as a whole test. One that has moved is back.
EMPTY = f"""
SET LOCAL lock_timeout = '10s';
SET LOCAL session_replication_role = replica;
DROP FUNCTION IF EXISTS {REFUSES}() CASCADE;
DROP TABLE IF EXISTS {MARK};
DO $$
DECLARE
    one text;
    there boolean;
BEGIN
    FOREACH one IN ARRAY ARRAY[{", ".join(f"'{table}'" for table in metadata.tables)}] LOOP
        EXECUTE format('LOCK TABLE %I IN ACCESS EXCLUSIVE MODE', one);
        EXECUTE format('SELECT EXISTS (SELECT FROM %I)', one) INTO there;
        IF there THEN
            EXECUTE format('DELETE FROM %I', one);
        END IF;
    END LOOP;
    PERFORM setval(seqrelid, 1, false) FROM pg_sequence;
END $$;
"""


def image_of(engine: Engine) -> Image:
    """Everything that was committed in a database."""
    if not is_sqlite(engine):
        with engine.connect() as connection:
            return {
                table.name: [dict(row) for row in connection.execute(select(table)).mappings()]
                for table in metadata.sorted_tables
            }
    engine.pool.dispose()  # the last connection to close brings the log into the file
    return _file_of(engine).read_bytes()


def fill(engine: Engine, image: Image) -> None:
    """Put an image in the place of what a database in shape holds."""
    if not isinstance(image, bytes):
        with engine.begin() as connection:
            connection.exec_driver_sql(EMPTY.replace("%", "%%"))
            for table in metadata.sorted_tables:
                if rows := image[table.name]:
                    connection.execute(insert(table), rows)
                    if "id" in table.c:
                        sequence = f"pg_get_serial_sequence('\"{table.name}\"', 'id')"
                        connection.execute(
                            text(f'SELECT setval({sequence}, max(id)) FROM "{table.name}"')
                        )
        return
    engine.pool.dispose()
    for leftover in ("-wal", "-shm"):
        Path(f"{_file_of(engine)}{leftover}").unlink(missing_ok=True)
    _file_of(engine).write_bytes(image)


def as_written(engine: Engine) -> Written:
    """When an SQLite file and the log beside it were last written, and their sizes, where not empty;
    of a PostgreSQL server of the test's own the number that who writes next will have.
    """
    if not is_sqlite(engine):
        with engine.connect() as connection:
            next_one = text("SELECT pg_snapshot_xmax(pg_current_snapshot())::text::bigint")
            return int(connection.execute(next_one).scalar_one())
    file = _file_of(engine)
    found = [one.stat() for one in (file, Path(f"{file}-wal")) if one.exists()]
    return tuple((one.st_mtime_ns, one.st_size) for one in found if one.st_size)


def _file_of(engine: Engine) -> Path:
    return Path(str(engine.url.database))
