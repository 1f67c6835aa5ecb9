"""A back-up: one file with every row and every photo, taken while the bot runs, and put back.

It is a ZIP file: `manifest.json`, `rows/TABLE.jsonl`, `photos/NAME`. The same file goes back into
SQLite or PostgreSQL, whichever it came from. It holds health data and is as private as the database.

An installation also moves straight from one database to another: copied, counted, checked row by row.

The bot may go on running. Whoever would write to the old database waits until all is copied and
compared, and is refused from then on with the address of the new one (`bot.store.moved`): so nothing
falls between. A running bot stops when it reads that; what is sent to it meanwhile waits at Telegram.
"""

from __future__ import annotations

import hashlib
import json
import os
import tempfile
import time
import zipfile
import zlib
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path, PurePosixPath
from typing import Any, cast

from sqlalchemy import Connection, Engine, update
from sqlalchemy.exc import DBAPIError
from sqlmodel import col

from bot.operation.installation import shown
from bot.operation.rows import count_in, lines_of, put_lines, snapshot, tables_in
from bot.store.db import in_transaction, is_sqlite
from bot.store.migrate import revision_of, upgrade_to
from bot.store.moved import leave_mark, moved_to, nobody_writes, sentence
from bot.store.tables.traffic import OutboxRow

FORMAT = 1
MANIFEST, ROWS, PHOTOS = "manifest.json", "rows", "photos"
FROM_A_BACKUP = "restored from a back-up"


class BackupError(Exception):
    """What is wrong, and what to do, in a line."""


@dataclass(frozen=True, slots=True)
class Contents:
    """What a back-up holds, or what was moved: rows by table, and photos."""

    rows: dict[str, int]
    photos: int

    def told(self) -> str:
        return f"{sum(self.rows.values())} rows in {len(self.rows)} tables, {self.photos} photos"


def back_up(engine: Engine, photo_dir: Path | None, target: Path, now: datetime) -> Contents:
    """Write a back-up to `target`, whole or not at all. Raises BackupError where it exists."""
    if target.exists():
        raise BackupError(f"{target} exists already; name another file")
    target.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    handle, name = tempfile.mkstemp(prefix=f".{target.name}-", dir=target.parent)
    part = Path(name)  # readable by its owner alone, as mkstemp makes it
    try:
        with (
            os.fdopen(handle, "wb") as file,
            zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as to,
        ):
            contents = _write(engine, photo_dir, to, now)
        part.replace(target)
    except BaseException:
        part.unlink(missing_ok=True)
        raise
    return contents


def put_back(engine: Engine, photo_dir: Path | None, source: Path) -> Contents:
    """Fill an empty database and the photo folder from a back-up, all or nothing.

    What still waited to be sent when it was taken is not sent any more: yesterday's target would
    be taken for today's. Duties that have fallen due since are done as after a standstill, and open
    alerts repeat themselves. Raises BackupError, having changed nothing.
    """
    with _opened(source) as archive:
        manifest = _manifest_of(archive, source)
        _check_digests(archive, manifest)
        contents = Contents(manifest["rows"], len(manifest["photos"]))
        fill(engine, manifest["revision"], lambda table: _lines_in(archive, table), contents.rows)
        if photo_dir is not None:
            _put_photos(archive, manifest["photos"], photo_dir)
    in_transaction(engine, _let_old_messages_rest)
    return contents


def fill(engine: Engine, revision: str, lines: Any, expected: dict[str, int]) -> None:
    """Bring an empty database to `revision`, put rows in, count them, and bring it up to date.

    `lines(table name)` gives the lines of a table. Raises BackupError on a database that is in use,
    on a revision that this version does not know, and on counts that differ.
    """
    if revision_of(engine) is not None and not _is_empty(engine):
        raise BackupError("the database to fill is not empty; name a new one")
    upgrade_to(engine, revision)
    with engine.begin() if not is_sqlite(engine) else _writing(engine) as connection:
        for table in tables_in(connection):
            if table.name not in expected:
                continue
            put = put_lines(connection, table, lines(table.name))
            if put != expected[table.name] or put != count_in(connection, table):
                raise BackupError(
                    f"table {table.name}: {put} rows instead of {expected[table.name]}"
                )
        strangers = set(expected) - {table.name for table in tables_in(connection)}
        if strangers:
            raise BackupError(f"unknown tables: {', '.join(sorted(strangers))}")
    upgrade_to(engine, "head")


@contextmanager
def _writing(engine: Engine) -> Iterator[Connection]:
    with engine.connect().execution_options(begin_immediate=True) as connection, connection.begin():
        yield connection


def _is_empty(engine: Engine) -> bool:
    with engine.connect() as connection:
        return all(count_in(connection, table) == 0 for table in tables_in(connection))


def _write(engine: Engine, photo_dir: Path | None, to: zipfile.ZipFile, now: datetime) -> Contents:
    rows: dict[str, int] = {}
    digests: dict[str, str] = {}
    revision = revision_of(engine)
    if revision is None:
        raise BackupError("the database is empty; there is nothing to back up")
    with snapshot(engine) as connection:
        for table in tables_in(connection):
            name = f"{ROWS}/{table.name}.jsonl"
            rows[table.name], digests[name] = _write_rows(to, name, connection, table)
    photos = _write_photos(to, photo_dir, digests)
    manifest = {
        "format": FORMAT,
        "made_at": now.isoformat(),
        "revision": revision,
        "rows": rows,
        "photos": photos,
        "sha256": digests,
    }
    to.writestr(MANIFEST, json.dumps(manifest, indent=1))
    return Contents(rows, len(photos))


def _write_rows(
    to: zipfile.ZipFile, name: str, connection: Connection, table: Any
) -> tuple[int, str]:
    digest, count = hashlib.sha256(), 0
    with to.open(name, "w", force_zip64=True) as member:
        for line in lines_of(connection, table):
            data = f"{line}\n".encode()
            digest.update(data)
            member.write(data)
            count += 1
    return count, digest.hexdigest()


def _write_photos(
    to: zipfile.ZipFile, photo_dir: Path | None, digests: dict[str, str]
) -> list[str]:
    names: list[str] = []
    if photo_dir is None or not photo_dir.is_dir():
        return names
    for file in sorted(photo_dir.iterdir()):
        try:
            content = file.read_bytes() if file.is_file() else None
        except FileNotFoundError:  # deleted meanwhile: its time was over
            content = None
        if content is not None:
            name = f"{PHOTOS}/{file.name}"
            digests[name] = hashlib.sha256(content).hexdigest()
            to.writestr(zipfile.ZipInfo(name), content)
            names.append(file.name)
    return names


def _opened(source: Path) -> zipfile.ZipFile:
    try:
        return zipfile.ZipFile(source)
    except (OSError, zipfile.BadZipFile):
        raise BackupError(f"{source} cannot be read as a back-up; is it the right file?") from None


def _manifest_of(archive: zipfile.ZipFile, source: Path) -> dict[str, Any]:
    try:
        manifest: dict[str, Any] = json.loads(archive.read(MANIFEST))
        given = manifest["format"]
    except (KeyError, ValueError, zipfile.BadZipFile, EOFError, zlib.error):
        raise BackupError(f"{source} is not a back-up of brimline, or is damaged") from None
    if given != FORMAT:
        raise BackupError(f"{source} was made by a newer version of brimline; update brimline")
    return manifest


def _check_digests(archive: zipfile.ZipFile, manifest: dict[str, Any]) -> None:
    for name, expected in manifest["sha256"].items():
        try:
            with archive.open(name) as member:
                digest = hashlib.file_digest(cast("zipfile.ZipExtFile", member), "sha256")
        except (KeyError, zipfile.BadZipFile, EOFError, zlib.error):
            raise BackupError(f"the back-up is damaged: {name} cannot be read") from None
        if digest.hexdigest() != expected:
            raise BackupError(f"the back-up is damaged: {name} is not as it was written")


def _lines_in(archive: zipfile.ZipFile, table: str) -> Iterator[str]:
    with archive.open(f"{ROWS}/{table}.jsonl") as member:
        for line in member:  # split at line feeds alone: JSON may hold other separators
            yield line.decode().rstrip("\n")


def _put_photos(archive: zipfile.ZipFile, names: list[str], photo_dir: Path) -> None:
    photo_dir.mkdir(mode=0o700, parents=True, exist_ok=True)
    for name in names:
        if PurePosixPath(name).name != name or name in ("", ".", ".."):
            raise BackupError("the back-up is damaged: a photo's name leads elsewhere")
        file = photo_dir / name
        file.touch(mode=0o600)
        file.write_bytes(archive.read(f"{PHOTOS}/{name}"))


def _let_old_messages_rest(session: Any) -> None:
    open_ones = update(OutboxRow).where(col(OutboxRow.status).in_(("waiting", "sending")))
    session.connection().execute(open_ones.values(status="dropped", problem=FROM_A_BACKUP))


#: Messages on their way would be sent again from the new place: so often, for so long it is waited for
#: a moment at which none is.
LOOKS, BETWEEN_LOOKS_S = 20, 0.25


def move(source: Engine, target: Engine) -> Contents:
    """Copy everything into an empty database, which then has this version's shape, and close the old.

    Queues go along: what waits to be sent is sent from the new place. Raises BackupError where the old
    one has moved before, where it cannot be had to itself, where the new one is in use, and where the
    two differ afterwards; then the old one is as it was.
    """
    revision = revision_of(source)
    if revision is None:
        raise BackupError("the database to move is empty")
    if address := moved_to(source):
        raise BackupError(sentence(address))
    with _to_itself(source) as connection:
        tables = {table.name: table for table in tables_in(connection)}
        counts = {name: count_in(connection, table) for name, table in tables.items()}
        fill(target, revision, lambda name: lines_of(connection, tables[name]), counts)
        _compare(connection, target)
        leave_mark(connection, shown(target))
    return Contents(counts, 0)


@contextmanager
def _to_itself(source: Engine) -> Iterator[Connection]:
    """The old database while nobody writes, if possible at a moment at which nothing is on its way."""
    with ExitStack() as held:
        for looks_left in reversed(range(LOOKS)):
            try:
                if (connection := _taken(source, held, at_rest=bool(looks_left))) is not None:
                    break
            except DBAPIError as error:
                if not looks_left:
                    raise BackupError("the old database could not be had to itself") from error
            time.sleep(BETWEEN_LOOKS_S)
        assert connection is not None
        yield connection


def _taken(source: Engine, held: ExitStack, *, at_rest: bool) -> Connection | None:
    with ExitStack() as trying:
        connection = trying.enter_context(nobody_writes(source))
        under_way = "SELECT count(*) FROM outbox WHERE status = 'sending'"
        if at_rest and connection.exec_driver_sql(under_way).scalar():
            return None
        held.enter_context(trying.pop_all())
        return connection


def _compare(source: Connection, target: Engine) -> None:
    if revision_of(source.engine) != revision_of(target):
        return  # the new one has a newer shape: what was counted is all that can be compared
    with snapshot(target) as connection:
        here, there = _digests(source), _digests(connection)
    for name, digest in here.items():
        if there[name] != digest:
            raise BackupError(f"table {name} differs after the move; the old database is unchanged")


def _digests(connection: Connection) -> dict[str, str]:
    found = {}
    for table in tables_in(connection):
        digest = hashlib.sha256()
        for line in lines_of(connection, table):
            digest.update(line.encode())
        found[table.name] = digest.hexdigest()
    return found
