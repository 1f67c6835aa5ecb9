"""A finished week is summed up for the prior of the coach's next athlete, and never for another's."""

from __future__ import annotations

from datetime import date

from sqlmodel import Session, col, select

from bot.core.timing import agenda
from bot.core.timing.agenda import Subject
from bot.core.turn import Turn
from bot.people.changes import Change
from bot.people.people import local_date, profile_of
from bot.store.tables.people import AthleteProfile, AthleteStatus, HistoryRow
from bot.store.tables.taught import TaughtRow
from bot.store.tables.traffic import AgendaRow
from bot.store.working_out import worked_out
from bot.week.cases import weeks_before
from bot.week.load import athlete_of, baseline_of
from engine.decision.record import plain
from engine.values.case import PastWeek
from engine.values.prior import Taught

LEARN = "taught"
#: What says that a week is over and has been looked at, or will not be; or that past ones came or went.
OVER = (Change.LOOK, Change.DEBRIEF, Change.WEEKS_IMPORTED, Change.IMPORT_TAKEN_BACK)


def look_at_ended(turn: Turn, ended: list[HistoryRow]) -> None:
    """Where a week was looked back on in a use case, it is summed up soon, by itself."""
    for athlete_id in dict.fromkeys(row.athlete_id for row in ended):
        agenda.put(
            turn.session, agenda.Named(Subject.ATHLETE(athlete_id), turn.now.date(), LEARN),
            due_at=turn.now, again=True,
        )  # fmt: skip


def due(turn: Turn, duty: AgendaRow) -> None:
    """Sum up what this athlete's finished weeks with this coach have taught."""
    profile = profile_of(turn.session, Subject.ATHLETE.of(duty))
    if profile is not None and profile.status != AthleteStatus.ENDED:
        learn(turn, profile)


def learn(turn: Turn, profile: AthleteProfile) -> bool:
    """Make the athlete's row anew; whether there was a finished week to learn from."""
    weeks = finished_with(turn.session, profile, local_date(profile, turn.context))
    row = turn.session.exec(
        select(TaughtRow).where(
            TaughtRow.coach_id == profile.coach_id, TaughtRow.athlete_id == profile.person_id
        )
    ).first()
    found = _taught(turn.session, profile, weeks) if weeks and profile.baseline else None
    if found is None or not found.weeks:
        if row is not None:
            turn.session.delete(row)  # its weeks were taken back
        return False
    row = row or TaughtRow(
        coach_id=profile.coach_id, athlete_id=profile.person_id, weeks=0, model=0, taught={},
        at=turn.now,
    )  # fmt: skip
    row.weeks, row.model, row.taught, row.at = found.weeks, found.model, plain(found), turn.now
    turn.session.add(row)
    turn.session.flush()
    return True


def _taught(session: Session, profile: AthleteProfile, weeks: tuple[PastWeek, ...]) -> Taught:
    from engine.decision.beliefs import taught_by  # noqa: PLC0415 - numpy, for this alone

    key = f"{profile.sex}/{profile.birth_year}/{profile.height_cm}/{profile.body_mass_kg}"
    return worked_out(session, taught_by, athlete_of(profile), baseline_of(profile), weeks, key)


def finished_with(session: Session, profile: AthleteProfile, today: date) -> tuple[PastWeek, ...]:
    """The athlete's finished weeks since they came to this coach."""
    came = session.exec(
        select(HistoryRow)
        .where(
            HistoryRow.athlete_id == profile.person_id,
            HistoryRow.what == Change.COACH_CHANGED.value,
        )
        .order_by(col(HistoryRow.id).desc())
    ).first()
    weeks = weeks_before(session, profile.person_id, today)
    return tuple(week for week in weeks if came is None or week.day > came.at.date())
