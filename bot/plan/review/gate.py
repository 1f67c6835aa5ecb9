"""The review that a plan passes before it goes live: what is told, and what has to be answered."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta
from typing import Any

from sqlmodel import Session, col, select

from bot.core.turn import Turn
from bot.dialogue import asking
from bot.people.people import local_date
from bot.plan.prep import Figure, Prep, Version, plan_id
from bot.plan.review.flow import PLAN_REVIEW, findings_text
from bot.store.tables.event import PlanReviewRow
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import CheckInRow, EventRow
from bot.week.load import athlete_of, baseline_of, plan_days, plan_row
from engine.planning.review import Finding, review_plan, to_answer
from engine.values.plan import PLAN_DAYS, PeakPlan


def look_over(
    turn: Turn, profile: AthleteProfile, event: EventRow, plan: PeakPlan
) -> tuple[Finding, ...]:
    """The findings on a plan for this athlete and event."""
    return review_plan(
        athlete_of(profile),
        baseline_of(profile),
        plan,
        rehearsed=None if event.kind == "trial" else _rehearsed(turn, profile, event),
    )


def new_findings(now: Sequence[Finding], before: Sequence[Finding]) -> tuple[Finding, ...]:
    """The findings that say something which those before did not say."""
    known = said_of(before)
    return tuple(f for f in now if any(said not in known for said in said_of([f])))


def ask_first(
    prep: Prep,
    version: Version,
    *,
    changed: Figure | None = None,
    bounds: dict[str, float] | None = None,
) -> bool:
    """Whether the plan has to wait: its warnings were put to the coach, who is asked for a reason.

    `changed` is the one figure that was, if it was one; `bounds` are limits that go live with the plan.
    """
    turn, profile, event = prep.turn, prep.profile, prep.event
    findings = to_answer(look_over(turn, profile, event, version.plan))
    known = answered(turn.session, event)
    warnings = [f for f in findings if any(said not in known for said in said_of([f]))]
    if not warnings:
        return False
    asking.open_question(turn, prep.coach, PLAN_REVIEW, profile.person_id, {
        "_warnings": findings_text(warnings, profile.volume_unit),
        "_answers": said_of(findings),
        "_event": event.id,
        "_base": plan_id(turn.session, event),
        "_days": plan_days(version.plan),
        "_shape": version.shape,
        "_field": changed.key if changed is not None else "",
        "_days_out": changed.days_out if changed is not None else 0,
        "_bounds": bounds,
    })  # fmt: skip
    return True


def keep_reason(prep: Prep, answered: list[dict[str, Any]], reason: str) -> None:
    """Keep why the coach went on, with the version of the plan that has just gone live."""
    turn, coach, event = prep.turn, prep.coach, prep.event
    row = plan_row(turn.session, event)
    assert row is not None and row.id is not None and event.id is not None and coach.id is not None
    turn.session.add(
        PlanReviewRow(
            plan_id=row.id, event_id=event.id, answered=answered, reason=reason,
            by_id=coach.id, at=turn.now,
        )
    )  # fmt: skip
    turn.session.flush()


def reasons(session: Session, event: EventRow) -> list[PlanReviewRow]:
    """Why the coach went on, oldest first."""
    query = select(PlanReviewRow).where(PlanReviewRow.event_id == event.id)
    return list(session.exec(query.order_by(col(PlanReviewRow.id))))


def answered(session: Session, event: EventRow) -> list[dict[str, Any]]:
    """What kept reasons have answered of this event's plan."""
    return [said for row in reasons(session, event) for said in row.answered]


def said_of(findings: Sequence[Finding]) -> list[dict[str, Any]]:
    """What the findings say, as a kept reason names it."""
    return [
        {"id": finding.id, "days_out": day.days_out, "value": day.value}
        for finding in findings
        for day in finding.days
    ]


def _rehearsed(turn: Turn, profile: AthleteProfile, event: EventRow) -> bool:
    """Whether a trial lies behind the athlete: one that was begun, and not only written down."""
    today = local_date(profile, turn.context)
    trials = turn.session.exec(
        select(EventRow).where(
            EventRow.athlete_id == profile.person_id,
            EventRow.kind == "trial",
            EventRow.day < min(event.day, today),
        )
    )
    first = timedelta(days=max(PLAN_DAYS))
    return any(
        turn.session.exec(
            select(CheckInRow.id).where(
                CheckInRow.athlete_id == profile.person_id,
                CheckInRow.date >= trial.day - first,
                CheckInRow.date <= trial.day,
            )
        ).first()
        is not None
        for trial in trials
    )
