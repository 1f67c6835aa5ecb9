"""Whether something between an athlete and their coach still waits for a word."""

from __future__ import annotations

from sqlmodel import Session, col, select

from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import AlertRow, DecisionRow, DecisionStatus


def has_pending_items(session: Session, profile: AthleteProfile) -> bool:
    """An alert that nobody has acknowledged, or a change that nobody has signed off."""
    alert = select(AlertRow.id).where(
        AlertRow.athlete_id == profile.person_id, col(AlertRow.acknowledged_at).is_(None)
    )
    waiting = select(DecisionRow.id).where(
        DecisionRow.athlete_id == profile.person_id, DecisionRow.status == DecisionStatus.WAITING
    )
    return session.exec(alert).first() is not None or session.exec(waiting).first() is not None
