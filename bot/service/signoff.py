"""Changes that wait for the coach's word."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.store.people import AthleteProfile
from bot.store.week import DecisionRow


def ask_coach(
    session: Session, profile: AthleteProfile, decision_row: DecisionRow, *, context: Context
) -> None:
    """Put a proposal before the coach, with a deadline at which it lapses to the plan."""
    raise NotImplementedError


def replaced(session: Session, decision_row: DecisionRow, context: Context) -> None:
    """A changed answer took this proposal's place: no deadline, no buttons."""
    raise NotImplementedError
