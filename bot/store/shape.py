"""Whether a database has the shape of this version, seen without what could change it.

Alembic takes ten megabytes, which a bot whose database is in shape, as at most starts, never needs.
"""

from __future__ import annotations

from importlib import resources

from sqlalchemy import Engine, inspect, text

VERSIONS = "bot.store.migrations.versions"


def newest() -> str:
    """The revision that this version brings a database to: they are one chain of numbers."""
    names = (file.name for file in resources.files(VERSIONS).iterdir())
    return max(name.partition("_")[0] for name in names if name[:1].isdigit())


def is_newest(engine: Engine) -> bool:
    """Whether the database is at it."""
    with engine.connect() as connection:
        if not inspect(connection).has_table("alembic_version"):
            return False
        found = connection.execute(text("SELECT version_num FROM alembic_version")).scalars().all()
    return found == [newest()]
