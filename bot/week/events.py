"""Events by their day: those that never had it, which one a day leads to, who is on stage today."""

from __future__ import annotations

from collections.abc import Collection
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from sqlalchemy import bindparam
from sqlmodel import Session, col, select

from bot.people.changes import Change
from bot.store.base import id_of
from bot.store.tables.people import HistoryRow, Person
from bot.store.tables.week import EventRow


def given_way(session: Session, athletes: Collection[int]) -> set[int]:
    """The ids of events that never had their day: moved to another one, taken back, or taken out of the
    season. What was answered in those days belongs to the events that took their place.
    """
    query = (
        select(HistoryRow)
        .where(
            col(HistoryRow.athlete_id).in_(athletes),
            col(HistoryRow.what).in_([Change.EVENT_SET, Change.EVENT_REMOVED, Change.TAKEN_BACK]),
        )
        .order_by(col(HistoryRow.id))
    )
    gone: set[int] = set()
    moves: dict[int, tuple[int, int | None]] = {}
    for row in session.exec(query):
        if row.what == Change.EVENT_SET:
            detail = Change.EVENT_SET.of(row)
            event, earlier = detail["event"], (detail.get("before") or {}).get("event")
            moves[id_of(row)] = event, earlier
            gone.discard(event)
            if earlier is not None:
                gone.add(earlier)
        elif row.what == Change.EVENT_REMOVED:
            gone.add(Change.EVENT_REMOVED.of(row)["event"])
        elif row.detail.get("of") in moves:
            event, earlier = moves[row.detail["of"]]
            gone.add(event)
            gone.discard(earlier or 0)
    return gone


def event_of_day(
    session: Session, athlete_id: int, day: date, within: timedelta
) -> EventRow | None:
    """The event that a day leads to: the nearest from it on that had, or still has, its day."""
    query = select(EventRow).where(
        EventRow.athlete_id == athlete_id, EventRow.day >= day, EventRow.day <= day + within
    )
    rows = list(session.exec(query.order_by(col(EventRow.day), col(EventRow.id).desc())))
    if len(rows) > 1:
        gone = given_way(session, [athlete_id])
        rows = [row for row in rows if row.active or row.id not in gone]
    return rows[0] if rows else None


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
