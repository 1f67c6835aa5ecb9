"""Many athletes of one coach in the middle of their weeks, written straight into the database."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from sqlmodel import Session

from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.week import (
    CheckInRow,
    DaySetRow,
    DecisionRow,
    DecisionStatus,
    EventRow,
    LimitsRow,
    PlanRow,
)
from bot.week.load import athlete_of, baseline_of, plan_days
from engine.planning.drafting.draft import Asked, draft_plan
from engine.values.limits import Limits
from tests.support.decided import stored

ZONES = (
    "Europe/London", "America/New_York", "Asia/Tokyo", "Australia/Sydney", "America/Los_Angeles",
)  # fmt: skip
BASELINE = {
    "carb_g": 310.0, "protein_g": 140.0, "fat_g": 55.0, "fibre_g": 25.0, "water_l": 3.5,
    "sodium_mg": 2300.0,
}  # fmt: skip
FIRST_CHAT = 5000


@dataclass(frozen=True)
class Alike:
    """What many athletes have in common: fewer days out than `within_days`; where they have `answered`,
    a morning is decided.
    """

    answered: bool = True
    zones: tuple[str, ...] = ZONES
    name: str = "Athlete"
    first_chat: int = FIRST_CHAT
    within_days: int = 10


def many_athletes(
    session: Session, coach_id: int, count: int, now: datetime, alike: Alike = Alike()
) -> list[int]:
    """Athletes with event, plan and limits."""
    ids = []
    for number in range(count):
        zone = alike.zones[number % len(alike.zones)]
        person = _person(alike.first_chat + number, f"{alike.name} {number}", now)
        profile = _profile(session, coach_id, person, zone)
        event_day = now.date() + timedelta(days=number % alike.within_days)
        event_id = _week(session, profile, coach_id, event_day, now - timedelta(days=10))
        if alike.answered:
            _morning(session, profile, event_id, event_day, now)
        ids.append(profile.person_id)
    return ids


def not_set_up(
    session: Session,
    coach_id: int,
    names: tuple[str, ...],
    now: datetime,
    alike: Alike = Alike(first_chat=7000),
) -> list[int]:
    """Athletes who have answered the first questions, and have no event yet."""
    people = [
        _person(alike.first_chat + 2 * number, name, now) for number, name in enumerate(names)
    ]
    return [_profile(session, coach_id, one, alike.zones[0]).person_id for one in people]


def _person(chat: int, name: str, now: datetime) -> Person:
    return Person(telegram_user_id=chat, chat_id=chat, first_name=name, created_at=now)


def _profile(session: Session, coach_id: int, person: Person, zone: str) -> AthleteProfile:
    session.add(person)
    session.flush()
    profile = AthleteProfile(
        person_id=person.id or 0, coach_id=coach_id, status=AthleteStatus.ACTIVE, sex="female",
        birth_year=1996, height_cm=165, body_mass_kg=61.2, body_fat_percent=14,
        baseline=BASELINE, zone=zone, prompt_time=time(6, 30), created_at=person.created_at,
    )  # fmt: skip
    session.add(profile)
    session.flush()
    return profile


def _week(
    session: Session, profile: AthleteProfile, coach_id: int, day: date, set_at: datetime
) -> int:
    event = EventRow(
        athlete_id=profile.person_id, kind="show", day=day, zone=profile.zone or "UTC",
        set_by=coach_id, set_at=set_at,
    )  # fmt: skip
    session.add(event)
    session.flush()
    assert event.id is not None
    plan = draft_plan(athlete_of(profile), baseline_of(profile), Asked(shape="even"))
    limits = Limits.suggested(athlete_of(profile), plan, baseline_of(profile))
    session.add(
        PlanRow(event_id=event.id, shape="even", days=plan_days(plan), set_by=coach_id,
                set_at=set_at)
    )  # fmt: skip
    session.add(
        LimitsRow(event_id=event.id, bounds=limits.by_key,
                  set_by=coach_id, set_at=set_at)
    )  # fmt: skip
    session.flush()
    return event.id


def _morning(
    session: Session, profile: AthleteProfile, event_id: int, event_day: date, now: datetime
) -> None:
    today = now.date()
    checkin = CheckInRow(
        athlete_id=profile.person_id, date=today, weight_kg=61.0, fullness=4, sharpness=5,
        water_l=3.5, answered_at=now,
    )  # fmt: skip
    session.add(checkin)
    session.flush()
    decision = DecisionRow(
        athlete_id=profile.person_id, event_id=event_id, checkin_id=checkin.id or 0, revision=1,
        sets_date=today, outcome="adjusted", status=DecisionStatus.IN_FORCE, carb_g=525.0,
        planned_carb_g=500.0, case={}, made_at=now,
        decision=stored(days_out=(event_day - today).days, rule="", carb_g=525.0),
    )  # fmt: skip
    session.add(decision)
    session.add(
        DaySetRow(athlete_id=profile.person_id, date=today, carb_g=525.0, by="decision",
                  decision_id=decision.id, set_at=now)
    )  # fmt: skip
    session.flush()
