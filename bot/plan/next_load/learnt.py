"""What the weeks behind have taught of an athlete's load, for whoever plans the next one."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta

from sqlalchemy import bindparam
from sqlmodel import Session, col, select

from bot.core.turn import Context, Turn
from bot.people.people import local_date
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import EventRow
from bot.store.working_out import worked_out
from bot.week.cases import weeks_before
from bot.week.load import (
    athlete_of,
    baseline_of,
    current_event,
    current_limits,
    current_plan,
    may_have,
    plan_row,
    target_of,
)
from engine.planning.behind.next_load import Ahead, ModelMisfit, NextLoad, NothingLearnt, next_load
from engine.values.athlete import Athlete, EventKind
from engine.values.case import PastWeek
from engine.values.limits import Limits
from engine.values.plan import LOAD_DAYS, PeakPlan


@dataclass(frozen=True, slots=True)
class Offer:
    """A suggested load, the plan it was made from, and where it would go (None: no event yet)."""

    found: NextLoad
    made_from: PeakPlan
    shape: str
    event: EventRow | None


def make_offer(turn: Turn, profile: AthleteProfile) -> Offer:
    """Made from the plan that the coach has set for the next event, or else from the last week's.

    Raises NothingLearnt or ModelMisfit.
    """
    weeks = weeks_before(turn.session, profile.person_id, local_date(profile, turn.context))
    if not weeks:
        raise NothingLearnt("no week behind")
    athlete, event = athlete_of(profile), event_ahead(turn, profile)
    plan = current_plan(turn.session, event) if event is not None else None
    last = _last_event(turn.session, profile, weeks[-1])
    standing = event if plan is not None else last
    row = plan_row(turn.session, standing) if standing is not None else None
    limits = _limits(turn.session, event, athlete) or _limits(turn.session, last, athlete)
    made_from = plan or weeks[-1].as_it_went
    return Offer(
        found=worked_out(
            turn.session,
            next_load,
            athlete,
            baseline_of(profile),
            made_from,
            weeks,
            _ahead(event, limits),
        ),
        made_from=made_from,
        shape=row.shape if row is not None else "",
        event=event,
    )


def _ahead(event: EventRow | None, limits: Limits | None) -> Ahead:
    """What the load is for; a show where nothing is set yet."""
    if event is None:
        return Ahead(limits)
    return Ahead(limits, target_of(event), EventKind(event.kind))


def learnt_g_per_kg(turn: Turn, profile: AthleteProfile) -> float | None:
    """The mean load day that is suggested (g/kg), for somebody who drafts; None where none is."""
    try:
        return make_offer(turn, profile).found.g_per_kg
    except (NothingLearnt, ModelMisfit):
        return None


def something_learnt(session: Session, profile: AthleteProfile) -> bool:
    """Whether a day lies behind on whose look there is a word."""
    if not may_have(session, EventRow, profile.person_id):
        return False
    return session.exec(_LOOKED_AT, params={"athlete": profile.person_id}).first() is not None


_LOOKED_AT = select(EventRow.id).where(
    EventRow.athlete_id == bindparam("athlete"),
    col(EventRow.active).is_(False),
    col(EventRow.look).is_not(None),
)


def _limits(session: Session, event: EventRow | None, athlete: Athlete) -> Limits | None:
    """The event's limits; None where there are none, or none that this body mass still allows."""
    try:
        return current_limits(session, event, athlete) if event is not None else None
    except ValueError:
        return None


def event_ahead(turn: Turn, profile: AthleteProfile) -> EventRow | None:
    """The event that is set, unless its day is over."""
    event = current_event(turn.session, profile.person_id)
    return event if event is not None and event.day >= local_date(profile, turn.context) else None


def _last_event(session: Session, profile: AthleteProfile, week: PastWeek) -> EventRow | None:
    query = (
        select(EventRow)
        .where(EventRow.athlete_id == profile.person_id, EventRow.day == week.day)
        .order_by(col(EventRow.id).desc())
    )
    return session.exec(query).first()


def load_begun(
    session: Session, profile: AthleteProfile, event: EventRow, context: Context
) -> bool:
    """Whether the first load day is here: from then on the mornings move single days."""
    plan = current_plan(session, event)
    first = plan.first_load_day if plan is not None else max(LOAD_DAYS)
    return local_date(profile, context) >= event.day - timedelta(days=first)
