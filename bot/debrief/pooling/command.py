"""`brimline priors`: how many finished weeks each coach's forecasts rest on, and those made anew."""

from __future__ import annotations

from collections import defaultdict

from sqlmodel import Session, col, select

from bot.core.turn import Turn
from bot.debrief.pooling.weeks import learn
from bot.store.tables.people import AthleteProfile, AthleteStatus
from bot.store.tables.taught import TaughtRow
from bot.week.cases import priors_on


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
