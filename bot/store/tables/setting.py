"""Small facts that the bot keeps about itself, such as its own name at Telegram."""

from __future__ import annotations

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


def keep(session: Session, name: str, value: str) -> None:
    """Note the fact, in place of what was noted before."""
    session.merge(SettingRow(name=name, value=value))
    session.flush()


def kept(session: Session, name: str) -> str:
    """The fact, or nothing ("") where none was noted."""
    row = session.get(SettingRow, name)
    return row.value if row else ""
