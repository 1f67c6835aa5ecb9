"""The prior that a coach's other athletes have taught, from rows to the engine's value."""

from __future__ import annotations

from sqlmodel import Session, col, select

from bot.store.tables import setting
from bot.store.tables.people import AthleteProfile
from bot.store.tables.taught import TaughtRow
from engine.decision.record import taught_from_dict
from engine.values.prior import Prior


def prior_used(session: Session, profile: AthleteProfile) -> Prior | None:
    """The prior of this athlete's decisions: what `prior_for` says where whoever runs the bot has
    switched that on, else None, the published one. It is off at first: on the bench it made odds
    better and corrections smaller.
    """
    return prior_for(session, profile) if priors_on(session) else None


def priors_on(session: Session) -> bool:
    return setting.kept(session, setting.PRIORS) == "on"


def prior_for(session: Session, profile: AthleteProfile) -> Prior | None:
    """What weeks of the same coach's other athletes say of this one; None where there are none.

    Of this athlete's own earlier weeks nothing is in it: those are the case's trials.
    """
    from engine.model.pooling import pooled  # noqa: PLC0415 - numpy, for whoever forecasts

    rows = session.exec(
        select(TaughtRow)
        .where(TaughtRow.coach_id == profile.coach_id, TaughtRow.athlete_id != profile.person_id)
        .order_by(col(TaughtRow.athlete_id))
    )
    return pooled([taught_from_dict(row.taught) for row in rows])
