"""Who is on stage today."""

from __future__ import annotations

from collections.abc import Collection
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from sqlalchemy import bindparam
from sqlmodel import Session, col, select

from bot.store.tables.people import Person
from bot.store.tables.week import EventRow

_A_DAY = timedelta(days=1)
# Built once: building a statement costs more than asking it.
_EVENTS = (
    select(col(Person.chat_id), col(EventRow.day), col(EventRow.zone))
    .join(EventRow, col(EventRow.athlete_id) == col(Person.id))
    .where(
        col(Person.chat_id).in_(bindparam("chats", expanding=True)),
        EventRow.kind == "show",
        col(EventRow.active),
        col(EventRow.day).between(bindparam("first"), bindparam("last")),
    )
)


def chats_on_stage(session: Session, chats: Collection[int], now: datetime) -> set[int]:
    """Those of the chats whose athlete's show is on this day, where it takes place."""
    if not chats:
        return set()
    around = {"first": (now - _A_DAY).date(), "last": (now + _A_DAY).date()}
    found = session.exec(_EVENTS, params={"chats": sorted(chats), **around}).all()
    return {chat for chat, day, zone in found if now.astimezone(ZoneInfo(zone)).date() == day}
