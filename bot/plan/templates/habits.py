"""What belongs to a template beside its plan: limits, when to ask, the spans of the stage day.

Everything is in shares and spans, so that nobody's own figures or times go along.
"""

from __future__ import annotations

from datetime import datetime, time
from typing import Any

from sqlmodel import Session, select

from bot.food import by_template
from bot.store.tables.coach import TemplateRow
from bot.store.tables.event import StageRow
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import EventRow
from bot.week.load import athlete_of, baseline_of, current_limits
from engine.planning.drafting.template import relative_limits
from engine.values.weigh_in import WeighIn

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
        "asks": _asks(event),
        "meals": by_template.held(session, profile),
    }
    row = session.exec(select(StageRow).where(StageRow.event_id == event.id)).first()
    return found | ({"stage": _spans(row.facts)} if row is not None else {})


def _asks(event: EventRow) -> Habits:
    """The look, and a weigh-in by height: any other cap is a class, and so one athlete's."""
    look, weigh_in = event.asks.get("look"), event.asks.get("weigh_in")
    found: Habits = {"look": look} if look else {}
    if weigh_in and weigh_in.get("over_height_kg") is not None:
        found["weigh_in"] = {key: weigh_in[key] for key in ("days_out", "at", "over_height_kg")}
    return found


def asks_of(template: TemplateRow, profile: AthleteProfile) -> Habits:
    """What an event of this athlete asks for by the template, as a row keeps it."""
    held: Habits = dict(template.habits.get("asks", {}))
    weigh_in = held.pop("weigh_in", None)
    if weigh_in is not None and profile.height_cm is not None:
        try:
            made = WeighIn.by_height(
                days_out=weigh_in["days_out"], at=time.fromisoformat(weigh_in["at"]),
                height_cm=profile.height_cm, over_height_kg=weigh_in["over_height_kg"],
            )  # fmt: skip
        except ValueError:
            return held  # no class at that height
        held["weigh_in"] = {"cap_kg": made.cap_kg, **weigh_in}
    return held


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
