"""What coaches saw of an athlete, from rows to the engine's values."""

from __future__ import annotations

from datetime import date

from sqlmodel import Session, col, select

from bot.store.tables.coach_eye import CoachLookRow
from engine.values.observed import CoachLook, Observed


def observed_between(
    session: Session, athlete_id: int, first: date, last: date
) -> tuple[Observed, ...]:
    """What coaches saw on the mornings from `first` to `last`, oldest first, one a date and coach."""
    return tuple(observed_of(row) for row in look_rows(session, athlete_id, first, last))


def look_rows(session: Session, athlete_id: int, first: date, last: date) -> list[CoachLookRow]:
    """The rows of the same, with who said it (`by_id`) and when (`at`)."""
    query = (
        select(CoachLookRow)
        .where(
            CoachLookRow.athlete_id == athlete_id,
            CoachLookRow.date >= first,
            CoachLookRow.date <= last,
        )
        .order_by(col(CoachLookRow.date), col(CoachLookRow.by_id))
    )
    return list(session.exec(query))


def look_row(session: Session, athlete_id: int, day: date, by_id: int) -> CoachLookRow | None:
    """What this coach said of that morning."""
    query = select(CoachLookRow).where(
        CoachLookRow.athlete_id == athlete_id,
        CoachLookRow.date == day,
        CoachLookRow.by_id == by_id,
    )
    return session.exec(query).first()


def observed_of(row: CoachLookRow) -> Observed:
    return Observed(
        date=row.date, look=CoachLook(row.look), sharpness=row.sharpness, by=row.by_id, at=row.at
    )
