"""What belongs to a template beside its plan: limits, when to ask, the spans of the stage day.

Everything is in shares and spans, so that nobody's own figures or times go along.
"""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlmodel import Session, select

from bot.store.tables.people import AthleteProfile
from bot.store.tables.stage import StageRow
from bot.store.tables.week import EventRow
from bot.week.load import athlete_of, baseline_of, current_limits
from engine.planning.template import relative_limits

Habits = dict[str, Any]


def limit_shares(session: Session, profile: AthleteProfile, event: EventRow) -> dict[str, Any]:
    """The limits in force as shares; nothing where none are."""
    athlete = athlete_of(profile)
    limits = current_limits(session, event, athlete)
    return relative_limits(limits, athlete, baseline_of(profile)) if limits is not None else {}


def habits_of(session: Session, profile: AthleteProfile, event: EventRow) -> Habits:
    """When the athlete is asked, which day a morning sets, and how the stage day is laid out."""
    found: Habits = {
        "kind": event.kind,
        "asked_at": f"{profile.prompt_time:%H:%M}",
        "always_tomorrow": profile.always_tomorrow,
    }
    row = session.exec(select(StageRow).where(StageRow.event_id == event.id)).first()
    return found | ({"stage": _spans(row.facts)} if row is not None else {})


def _spans(facts: dict[str, Any]) -> Habits:
    """Minutes: the way there, and how long before the first class each duty is."""
    first = datetime.fromisoformat(facts["stages"][0])

    def before(key: str) -> float | None:
        if not facts.get(key):
            return None
        return (first - datetime.fromisoformat(facts[key])).total_seconds() / 60

    return {
        "travel_min": facts["travel_min"],
        "registration_before_min": before("registration"),
        "tan_before_min": before("tan"),
        "look_before_min": facts.get("look_before_min"),
    }
