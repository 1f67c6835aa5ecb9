"""The database of these settings, opened and in shape, or in words why not and what to do about it."""

from __future__ import annotations

import errno
import sqlite3
from pathlib import Path
from typing import TYPE_CHECKING

from bot.settings import PREFIX, Settings, SettingsError

DATABASE_URL = "BRIMLINE_DATABASE_URL"

# By the beginning of SQLite's own name for it (https://sqlite.org/rescode.html).
_SQLITE = {
    "SQLITE_FULL": "the disk is full; make room on it",
    "SQLITE_IOERR": "the disk is full or does not work; make room on it, or have it looked at",
    "SQLITE_READONLY": "may be read but not written; file and folder have to belong to the user "
    "that runs the bot, on a disk that may be written",
    "SQLITE_CANTOPEN": f"there is no such file to be opened by this user; is {DATABASE_URL} right, "
    "and may this user write in its folder?",
    "SQLITE_NOTADB": f"the file is no database; is {DATABASE_URL} right?",
    "SQLITE_CORRUPT": "the file is damaged; stop the bot and restore the last back-up",
    "SQLITE_BUSY": "another program keeps the file locked; stop that, or wait",
    "SQLITE_LOCKED": "another program keeps the file locked; stop that, or wait",
}
# A failed connection has no SQLSTATE, only the words of the server or of libpq.
_POSTGRESQL = {
    "authentication failed": f"the server refuses user or password; see {DATABASE_URL}",
    "no password supplied": f"the server wants a password; add it to {DATABASE_URL}",
    "does not exist": f"the server has no such user or database; make them, or see {DATABASE_URL}",
    "no pg_hba.conf entry": "the server lets nobody in from here; its pg_hba.conf says who may",
    "too many clients": "the server has no connection left; raise its max_connections",
    "starting up": "the server is starting up; try again in a minute",
    "translate host name": f"there is no server of that name; is the host in {DATABASE_URL} right?",
    "resolve host": f"there is no server of that name; is the host in {DATABASE_URL} right?",
}
_SQLSTATE = {  # by the server's code (PostgreSQL documentation, appendix A)
    "25006": "the server may be read but not written (is it a standby?)",
    "53100": "the server's disk is full; make room on it",
    "53300": "the server has no connection left; raise its max_connections, or stop something",
}
_AWAY = f"the server does not answer; is it running? Are host and port in {DATABASE_URL} right?"
_FILES = {
    errno.ENOSPC: "the disk is full; make room on it",
    errno.EROFS: "the disk may be read but not written",
    errno.EACCES: "this user may not go there; is it the one that runs the bot?",
    errno.ENOENT: "there is no such file or folder",
}


def cause(error: Exception) -> str | None:
    """What it is and what to do, without anything that was stored; None for what is no such trouble."""
    if isinstance(error, OSError):
        what = _FILES.get(error.errno or 0) or error.strerror
        return f"{error.filename}: {what}" if error.filename and what else what
    raised = getattr(error, "orig", None)
    code = getattr(raised or error, "sqlite_errorname", None)
    if code is not None:
        return next((told for name, told in _SQLITE.items() if str(code).startswith(name)), None)
    if raised is None:
        return None
    state = getattr(raised, "sqlstate", None)
    if state is not None:
        return _SQLSTATE.get(state)
    said = str(raised).lower()
    return next((told for words, told in _POSTGRESQL.items() if words in said), _AWAY)


if TYPE_CHECKING:
    from sqlalchemy import Engine

NEWER = "the database belongs to a newer version of brimline; update brimline"


CANTOPEN = "SQLITE_CANTOPEN"
EARLIER = (
    "the database has the shape of an earlier version of brimline; make a back-up, stop the bot, "
    "then start this version or run `brimline migrate`"
)


class DatabaseAwayError(SettingsError):
    """The database cannot be reached or written just now; `kind` is the error as logs name it."""

    def __init__(self, line: str, kind: str) -> None:
        super().__init__([line])
        self.kind = kind


class DatabaseUnusableError(SettingsError):
    """No setting is wrong, but something has to be done: the database is of an earlier version, whose
    bot may still be running on it, or its file cannot be opened.
    """


def migrated(settings: Settings) -> Engine:
    """An engine on a database in shape. Raises SettingsError where it cannot be had, and
    DatabaseAwayError, which is one, where that may pass.
    """
    return shaped(settings.database_url, f"{PREFIX}DATABASE_URL")


def shaped(url: str, name: str) -> Engine:
    """As `migrated`, for any address; `name` is what it is called in an error."""
    from sqlalchemy.exc import SQLAlchemyError  # noqa: PLC0415

    from bot.store.db import is_newest, make_engine  # noqa: PLC0415

    try:
        engine = make_engine(url)
        refuse_moved(engine, name)
        if not is_newest(engine):
            _upgrade(engine, name)
    except ValueError as error:
        raise SettingsError([f"{name}: {error}"]) from None
    except (SQLAlchemyError, OSError) as error:
        raise unusable(name, error) from None
    return engine


def refuse_moved(engine: Engine, name: str) -> None:
    """Raises SettingsError where the installation has moved to another database."""
    from bot.store.moved import moved_to, sentence  # noqa: PLC0415

    if address := moved_to(engine):
        engine.dispose()
        raise SettingsError([f"{name}: {sentence(address)}; put that here and start again"])


def _upgrade(engine: Engine, name: str) -> None:
    from alembic.util.exc import CommandError  # noqa: PLC0415

    from bot.store.migrate import upgrade_to_head  # noqa: PLC0415

    try:
        upgrade_to_head(engine)
    except CommandError:
        raise SettingsError([f"{name}: {NEWER}"]) from None


def opened(settings: Settings, *, of_any_version: bool = False) -> Engine:
    """As `migrated`, for who looks in beside the bot: what an earlier version made is left as it is.

    Raises DatabaseUnusableError for it, or hands it out `of_any_version`.
    """
    from sqlalchemy.exc import SQLAlchemyError  # noqa: PLC0415

    from bot.store.db import is_newest, make_engine  # noqa: PLC0415

    name = f"{PREFIX}DATABASE_URL"
    try:
        engine = make_engine(settings.database_url)
        if not of_any_version:
            refuse_moved(engine, name)
        if is_newest(engine):
            return engine
        earlier = _is_of_an_earlier_version(engine)
    except (SQLAlchemyError, OSError) as error:
        raise unusable(name, error) from None
    if not earlier:
        engine.dispose()
        return migrated(settings)
    if not of_any_version:
        raise DatabaseUnusableError([f"{name}: {EARLIER}"])
    return engine


def _is_of_an_earlier_version(engine: Engine) -> bool:
    from bot.store.migrate import knows, revision_of  # noqa: PLC0415

    revision = revision_of(engine)
    return revision is not None and knows(engine, revision)


def unusable(name: str, error: Exception) -> SettingsError:
    """The error to raise about a database that cannot be used; `name` is what its address is called."""
    from sqlalchemy.exc import OperationalError  # noqa: PLC0415

    from bot.core.logs import error_name  # noqa: PLC0415
    from bot.store.db import may_pass  # noqa: PLC0415

    kind = error_name(error)
    line = f"{name}: {cause(error) or f'the database cannot be opened or changed ({kind})'}"
    if isinstance(error, OperationalError) and may_pass(error):
        return DatabaseAwayError(line, kind)
    if isinstance(error, OSError) or CANTOPEN in kind:
        return DatabaseUnusableError([line])
    return SettingsError([line])


def shown(engine: Engine) -> str:
    """The database as it may be printed: without a password."""
    if engine.dialect.name == "sqlite":
        return str(Path(str(engine.url.database)).resolve())
    return engine.url.set(drivername="postgresql").render_as_string(hide_password=True)


def is_sound(engine: Engine) -> bool:
    """Whether an SQLite file is whole; a server looks after its own."""
    if engine.dialect.name != "sqlite":
        return True
    try:
        with sqlite3.connect(str(engine.url.database)) as connection:
            return bool(connection.execute("PRAGMA quick_check").fetchone() == ("ok",))
    except sqlite3.DatabaseError:
        return False
