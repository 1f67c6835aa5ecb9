"""Small facts that the bot keeps about itself, such as its own name at Telegram."""

from __future__ import annotations

from typing import Any

from sqlalchemy.dialects import postgresql, sqlite
from sqlmodel import Field, Session

from bot.store.base import Row

BOT_USERNAME = "bot_username"
#: Whether finished weeks of a coach's athletes move the prior of the next one: "on", else they do not.
PRIORS = "priors"


class SettingRow(Row, table=True):
    """One fact, by name."""

    __tablename__ = "setting"

    name: str = Field(primary_key=True)
    value: str


# In either's words, of which the library has them alike.
_INSERTS: dict[str, Any] = {"sqlite": sqlite.insert, "postgresql": postgresql.insert}


def keep(session: Session, name: str, value: str) -> None:
    """Note the fact, in place of what was noted before or is being noted by another process."""
    insert = _INSERTS[session.get_bind().dialect.name](SettingRow).values(name=name, value=value)
    noted = insert.on_conflict_do_update(index_elements=["name"], set_={"value": value})
    session.scalars(
        noted.returning(SettingRow), execution_options={"populate_existing": True}
    ).one()


def kept(session: Session, name: str) -> str:
    """The fact, or nothing ("") where none was noted."""
    row = session.get(SettingRow, name)
    return row.value if row else ""
