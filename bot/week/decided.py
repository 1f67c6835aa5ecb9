"""Stored decisions as Decision objects, and those that stood for an event."""

from __future__ import annotations

from collections.abc import Iterable

from sqlalchemy import inspect
from sqlmodel import Session, col, select

from bot.store.tables.week import DecisionRow, DecisionStatus, EventRow
from engine.decision.decide import Decision
from engine.decision.kept import decision_from_dict

_MADE = "decision"


def decision_of(row: DecisionRow) -> Decision:
    """The row's decision, read at most once while the row is loaded: what is stored never changes."""
    made: dict[str, Decision] = inspect(row).info
    if _MADE not in made:
        made[_MADE] = decision_from_dict(row.decision)
    return made[_MADE]


def keep_made(row: DecisionRow, made: Decision) -> None:
    """What the row has been written from, so that it isn't read back."""
    inspect(row).info[_MADE] = made


def stood(session: Session, event: EventRow) -> Iterable[DecisionRow]:
    """The decisions for the event's days that were not replaced, by day, later ones last."""
    query = select(DecisionRow).where(
        DecisionRow.event_id == event.id, DecisionRow.status != DecisionStatus.REPLACED
    )
    return session.exec(query.order_by(col(DecisionRow.sets_date), col(DecisionRow.id)))
