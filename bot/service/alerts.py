"""Flags brought to the coach: told at once, repeated until acknowledged, then the second contact."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from sqlmodel import Session

from bot.context import Context
from bot.store.people import AthleteProfile
from engine.safety import Flag


def raise_flags(
    session: Session,
    profile: AthleteProfile,
    flags: Sequence[Flag],
    *,
    day: date,
    context: Context,
    told_anew: bool = True,
) -> None:
    """Bring flags to the coach; the same cause while its alert is open pings once."""
    raise NotImplementedError
