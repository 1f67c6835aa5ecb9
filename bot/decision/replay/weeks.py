"""Stored decisions of a week, as the engine made them, and what was then in force."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from sqlmodel import Session, col, select

from bot.store.tables.week import DecisionRow, DecisionStatus, EventRow
from bot.store.working_out import worked_out
from bot.week.cases import decision_of, stood, weeks_before
from bot.week.load import day_set
from engine.decision.decide import Case, Decision
from engine.decision.record import case_from_dict
from engine.decision.replay import Change, same_for_people, week_again
from engine.values.case import ForecastUse, PastWeek
from engine.values.plan import PLAN_DAYS


@dataclass(frozen=True, slots=True, kw_only=True)
class MorningAgain:
    """One morning: the figure that was in force in the end (g), and the decision it would have been.

    `as_then`: the same was decided then, so what became of it stands.
    """

    days_out: int
    set_g: float | None
    by_coach: bool
    as_then: bool
    case: Case
    decision: Decision

    @property
    def differs(self) -> bool:
        again = self.decision.carb_g
        if self.as_then or self.set_g is None or again is None:
            return False
        return abs(again - self.set_g) >= 0.5


def finished(session: Session, athlete_id: int, today: date) -> list[EventRow]:
    """Events whose day has been and on which anything was decided, the newest first."""
    decided = select(DecisionRow.event_id).where(DecisionRow.athlete_id == athlete_id).distinct()
    query = select(EventRow).where(
        EventRow.athlete_id == athlete_id, EventRow.day < today, col(EventRow.id).in_(decided)
    )
    return list(session.exec(query.order_by(col(EventRow.day).desc(), col(EventRow.id).desc())))


def stored(session: Session, event: EventRow) -> list[DecisionRow]:
    """The decision that stood for each day of the week, from the furthest out."""
    return list({row.sets_date: row for row in stood(session, event)}.values())


def week_under(session: Session, event: EventRow, change: Change) -> list[MorningAgain]:
    """The week decided again under a change. Raises ValueError for limits that cannot be."""
    rows = stored(session, event)
    cases = [case_from_dict(row.case) for row in rows]
    first = event.day - timedelta(days=max(PLAN_DAYS))
    trials = weeks_before(session, event.athlete_id, first) if change.forecast else ()
    then = [decision_of(row) for row in rows]
    made = worked_out(
        session, _again, cases, change.without, dict(change.limits), change.forecast, trials, then
    )
    found = []
    for row, was, (case, decision) in zip(rows, then, made, strict=True):
        standing = day_set(session, event.athlete_id, row.sets_date)
        found.append(
            MorningAgain(
                days_out=decision.days_out,
                set_g=standing.carb_g if standing is not None else row.carb_g,
                by_coach=standing is not None
                and standing.by == "coach"
                and row.status != DecisionStatus.APPROVED,
                as_then=same_for_people(decision, was),
                case=case,
                decision=decision,
            )
        )
    return found


def _again(
    cases: Sequence[Case],
    without: frozenset[str],
    limits: Mapping[str, float],
    forecast: ForecastUse | None,
    trials: tuple[PastWeek, ...],
    then: Sequence[Decision],
) -> list[tuple[Case, Decision]]:
    change = Change(without=without, limits=limits, forecast=forecast)
    return list(week_again(cases, change, trials, then))
