"""Stored decisions as Decision objects, what of one stands, and those that stood for an event."""

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


def default_carb_g(row: DecisionRow) -> float:
    """The figure that holds if the coach says nothing (g)."""
    lapse = decision_of(row).lapse_g
    figure = lapse if lapse is not None else row.planned_carb_g
    assert figure is not None
    return figure


def plan_g(row: DecisionRow) -> float:
    """The plan's own figure for the day, as far as the limits still leave it (g)."""
    assert row.planned_carb_g is not None
    window = decision_of(row).trace.window
    if window is None:
        return row.planned_carb_g
    return float(min(max(row.planned_carb_g, window.low), window.high))


def is_small_step(row: DecisionRow) -> bool:
    """Whether something other than the plan stands while nobody has answered."""
    return abs(default_carb_g(row) - plan_g(row)) > 1e-6


def stands_g(row: DecisionRow) -> float | None:
    """The change (g) that stands as a small step while a larger one waits, or after it lapsed; None
    where what was decided is in force.
    """
    if row.status not in (DecisionStatus.WAITING, DecisionStatus.LAPSED) or not is_small_step(row):
        return None
    assert row.planned_carb_g is not None
    return default_carb_g(row) - row.planned_carb_g


def stood(session: Session, event: EventRow) -> Iterable[DecisionRow]:
    """The decisions for the event's days that were not replaced, by day, later ones last."""
    query = select(DecisionRow).where(
        DecisionRow.event_id == event.id, DecisionRow.status != DecisionStatus.REPLACED
    )
    return session.exec(query.order_by(col(DecisionRow.sets_date), col(DecisionRow.id)))
