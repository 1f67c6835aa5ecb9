"""The database of these settings, opened and in shape, or the reason why not."""

from __future__ import annotations

import sqlite3
from pathlib import Path
from typing import TYPE_CHECKING

from bot.operation.causes import cause
from bot.settings import PREFIX, Settings, SettingsError

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
