"""A finished week is summed up for the prior of the coach's next athlete, and never for another's.

`brimline priors` tells how many finished weeks each coach's forecasts rest on, and makes them anew.
"""

from __future__ import annotations

from collections import defaultdict
from datetime import date

from sqlmodel import Session, col, select

from bot.core.timing import agenda
from bot.core.timing.agenda import Subject
from bot.core.turn import Turn
from bot.people.changes import Change
from bot.people.people import local_date, profile_of
from bot.store.tables.coach import TaughtRow
from bot.store.tables.people import AthleteProfile, AthleteStatus, HistoryRow
from bot.store.tables.traffic import AgendaRow
from bot.store.working_out import worked_out
from bot.week.cases import priors_on, weeks_before
from bot.week.load import athlete_of, baseline_of
from engine.decision.record import plain
from engine.values.body import Taught
from engine.values.case import PastWeek

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
    return True


def _taught(session: Session, profile: AthleteProfile, weeks: tuple[PastWeek, ...]) -> Taught:
    from engine.decision.beliefs import taught_by  # noqa: PLC0415 - numpy, for this alone

    key = f"{profile.sex}/{profile.birth_year}/{profile.height_cm}/{profile.body_mass_kg}"
    return worked_out(session, taught_by, athlete_of(profile), baseline_of(profile), weeks, key)


def finished_with(session: Session, profile: AthleteProfile, today: date) -> tuple[PastWeek, ...]:
    """The athlete's finished weeks since they came to this coach."""
    came = session.exec(
        select(HistoryRow)
        .where(HistoryRow.athlete_id == profile.person_id, HistoryRow.what == Change.COACH_CHANGED)
        .order_by(col(HistoryRow.id).desc())
    ).first()
    weeks = weeks_before(session, profile.person_id, today)
    return tuple(week for week in weeks if came is None or week.day > came.at.date())


def told(session: Session) -> list[str]:
    """A line a coach; numbers of people, never names."""
    from engine.model.particles import ALIKE, MODEL  # noqa: PLC0415 - numpy, for this command alone

    by_coach: dict[int, list[TaughtRow]] = defaultdict(list)
    for row in session.exec(select(TaughtRow).order_by(col(TaughtRow.coach_id))):
        by_coach[row.coach_id].append(row)
    lines = []
    for coach_id, rows in by_coach.items():
        counted = [row for row in rows if row.model in ALIKE]
        weeks = sum(row.weeks for row in counted)
        line = f"coach {coach_id}: {weeks} finished weeks of {len(counted)} athletes, model {MODEL}"
        older = len(rows) - len(counted)
        lines.append(f"{line}; {older} of an older model wait for --anew" if older else line)
    if not lines:
        return ["no finished weeks yet: every forecast begins from the published prior"]
    used = "used" if priors_on(session) else "not used (brimline priors --use on)"
    return [*lines, f"They are {used} for new decisions; each decision holds the prior it used."]


def anew(turn: Turn) -> int:
    """Sum up every athlete's finished weeks again, as after a new model; how many there were."""
    profiles = turn.session.exec(
        select(AthleteProfile)
        .where(col(AthleteProfile.status) != AthleteStatus.ENDED)
        .order_by(col(AthleteProfile.person_id))
    ).all()
    return sum(learn(turn, profile) for profile in profiles if profile.sex is not None)
