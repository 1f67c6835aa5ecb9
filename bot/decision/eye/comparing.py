"""How an athlete's own ratings compare with what a coach sees, over all mornings that have both."""

from __future__ import annotations

from sqlmodel import Session, col, select

from bot.decision.eye import words
from bot.people.people import name_of
from bot.store.base import id_of
from bot.store.tables.coach_eye import CoachLookRow
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import CheckInRow, DecisionRow
from engine.decision.kept import decision_from_dict
from engine.planning.behind.ratings import BothSaid, fullness_apart, sharpness_apart
from engine.values.observed import CoachLook


def both_said(session: Session, athlete_id: int, coach_id: int) -> list[BothSaid]:
    """The athlete's mornings that this coach has looked at too, oldest first."""
    query = (
        select(CheckInRow, CoachLookRow)
        .where(
            CheckInRow.athlete_id == athlete_id,
            CoachLookRow.athlete_id == athlete_id,
            CoachLookRow.by_id == coach_id,
            col(CoachLookRow.date) == col(CheckInRow.date),
        )
        .order_by(col(CheckInRow.date))
    )
    pairs = session.exec(query).all()
    expected = expected_fullness(session, [row.id for row, _ in pairs])
    return [
        BothSaid(
            fullness=row.fullness,
            expected=expected.get(row.id),
            sharpness=row.sharpness,
            look=CoachLook(seen.look),
            seen_sharpness=seen.sharpness,
        )
        for row, seen in pairs
    ]


def lines(session: Session, profile: AthleteProfile, coach: Person) -> list[str]:
    """What can be said of it, a line each; nothing before a handful of mornings."""
    said = both_said(session, profile.person_id, id_of(coach))
    name = name_of(session, profile.person_id)
    full, sharp = fullness_apart(said), sharpness_apart(said)
    found = [words.fullness_compared(name, full)] if full is not None else []
    return [*found, *([words.sharpness_compared(name, sharp)] if sharp is not None else [])]


def expected_fullness(session: Session, checkins: list[int | None]) -> dict[int | None, int | None]:
    """The fullness that the newest decision on each check-in expected."""
    query = (
        select(DecisionRow.checkin_id, col(DecisionRow.decision))
        .where(col(DecisionRow.checkin_id).in_(checkins))
        .order_by(col(DecisionRow.id))
    )
    return {
        number: decision_from_dict(decision).expected_fullness
        for number, decision in session.exec(query)
    }
