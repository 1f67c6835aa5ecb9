"""Events that never had their day: moved to another one, taken back, or taken out of the season."""

from __future__ import annotations

from collections.abc import Collection
from datetime import date, timedelta

from sqlmodel import Session, col, select

from bot.people.changes import Change
from bot.store.base import id_of
from bot.store.tables.people import HistoryRow
from bot.store.tables.week import EventRow


def given_way(session: Session, athletes: Collection[int]) -> set[int]:
    """Their ids: what was answered in those days belongs to the events that took their place."""
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
            event = int(row.detail["event"])
            earlier = (row.detail.get("before") or {}).get("event")
            moves[id_of(row)] = event, earlier
            gone.discard(event)
            if earlier is not None:
                gone.add(int(earlier))
        elif row.what == Change.EVENT_REMOVED:
            gone.add(int(row.detail["event"]))
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
