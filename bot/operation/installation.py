"""The database of these settings, opened and in shape, or the reason why not."""

from __future__ import annotations

import sqlite3
from pathlib import Path
from typing import TYPE_CHECKING

from bot.settings import PREFIX, Settings, SettingsError

if TYPE_CHECKING:
    from sqlalchemy import Engine

NEWER = "the database belongs to a newer version of brimline; update brimline"


class DatabaseAwayError(SettingsError):
    """The database cannot be reached or is busy just now."""


def migrated(settings: Settings) -> Engine:
    """An engine on a database in shape. Raises SettingsError where it cannot be had, and
    DatabaseAwayError, which is one, where that may pass.
    """
    return shaped(settings.database_url, f"{PREFIX}DATABASE_URL")


def shaped(url: str, name: str) -> Engine:
    """As `migrated`, for any address; `name` is what it is called in an error."""
    from alembic.util.exc import CommandError  # noqa: PLC0415
    from sqlalchemy.exc import OperationalError, SQLAlchemyError  # noqa: PLC0415

    from bot.core.logs import error_name  # noqa: PLC0415
    from bot.store.db import make_engine, may_pass  # noqa: PLC0415
    from bot.store.migrate import upgrade_to_head  # noqa: PLC0415

    try:
        engine = make_engine(url)
        upgrade_to_head(engine)
    except ValueError as error:
        raise SettingsError([f"{name}: {error}"]) from None
    except CommandError:
        raise SettingsError([f"{name}: {NEWER}"]) from None
    except (SQLAlchemyError, OSError) as error:
        message = f"{name}: the database cannot be opened or changed ({error_name(error)})"
        if isinstance(error, OperationalError) and may_pass(error):
            raise DatabaseAwayError([message]) from None
        raise SettingsError([message]) from None
    return engine


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
