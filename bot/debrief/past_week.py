"""The row that keeps what was said of a week.

A week that is over, from rows to the engine's values.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from sqlmodel import Session, col, select

from bot.core.turn import Turn
from bot.people.people import local_date
from bot.store.base import id_of
from bot.store.tables.event import DebriefRow
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import DecisionRow, DecisionStatus, EventRow
from bot.week.cases import checkin_of, decision_of, observed_between
from bot.week.events import given_way
from bot.week.load import checkin_row, current_event, current_plan, day_set
from engine.decision.decide import Decision
from engine.decision.record import by_forecast
from engine.planning.behind.debrief import DayBehind, Debrief, debrief
from engine.values.checkin import Look, most_careful
from engine.values.plan import PLAN_DAYS, PeakPlan


def kept_of(session: Session, event: EventRow) -> DebriefRow | None:
    """What is kept of the week so far, for who reads only."""
    return session.exec(select(DebriefRow).where(DebriefRow.event_id == event.id)).first()


def debrief_row(session: Session, event: EventRow) -> DebriefRow:
    """The event's row, made where there is none yet."""
    row = kept_of(session, event)
    if row is None:
        row = DebriefRow(event_id=id_of(event), athlete_id=event.athlete_id)
        session.add(row)
        session.flush()
    return row


@dataclass(frozen=True, slots=True)
class EarlierWeek:
    """A week before that one: the load as set, a mean day in g, and the coach's verdict."""

    kind: str
    day: date
    load_g_a_day: float
    look: str | None


@dataclass(frozen=True, slots=True)
class BehindWeek:
    """`why`: by days out, the rule or hand that moved the day; `earlier`: newest first."""

    event: EventRow
    days: tuple[DayBehind, ...]
    why: dict[int, str]
    debrief: Debrief
    earlier: tuple[EarlierWeek, ...]


def newest_behind(turn: Turn, profile: AthleteProfile) -> BehindWeek | None:
    """The newest week of the athlete's whose day has been and on which there were mornings."""
    for event in _events_before(turn.session, profile, local_date(profile, turn.context)):
        found = week_behind(turn.session, profile, event)
        if found is not None:
            return found
    return None


def week_behind(session: Session, profile: AthleteProfile, event: EventRow) -> BehindWeek | None:
    """The week of this event; None where it had no plan, or nobody said anything in it."""
    days = _days(session, event)
    if not any(day.morning is not None for day in days):
        return None
    return BehindWeek(
        event=event,
        days=days,
        why=_why(session, event, days),
        debrief=debrief(days, Look(event.look) if event.look else None),
        earlier=_earlier(session, profile, event),
    )


def _days(session: Session, event: EventRow) -> tuple[DayBehind, ...]:
    found = []
    for target in current_plan(session, event) or ():
        day = event.day - timedelta(days=target.days_out)
        row, after = (
            checkin_row(session, event.athlete_id, day + timedelta(days=later)) for later in (0, 1)
        )
        set_row = day_set(session, event.athlete_id, day)
        found.append(
            DayBehind(
                target=target,
                set_g=set_row.carb_g if set_row is not None else target.carb_g,
                eaten_g=after.carb_eaten_g if after is not None else None,
                morning=checkin_of(row) if row is not None else None,
                seen=most_careful(observed_between(session, event.athlete_id, day, day)),
            )
        )
    return tuple(found)


def _why(session: Session, event: EventRow, days: tuple[DayBehind, ...]) -> dict[int, str]:
    """What moved each day that was set otherwise than planned."""
    found = {}
    for day in days:
        if abs(day.set_g - day.target.carb_g) < 0.5:
            continue
        on = event.day - timedelta(days=day.days_out)
        set_row = day_set(session, event.athlete_id, on)
        decided = session.exec(
            select(DecisionRow)
            .where(
                DecisionRow.athlete_id == event.athlete_id,
                DecisionRow.sets_date == on,
                DecisionRow.status != DecisionStatus.REPLACED,
            )
            .order_by(col(DecisionRow.id).desc())
        ).first()
        approved = decided is not None and decided.status == DecisionStatus.APPROVED
        if set_row is not None and set_row.by == "coach" and not approved:
            found[day.days_out] = "coach"
        elif decided is not None:
            found[day.days_out] = moved_by(decision_of(decided))
    return found


def moved_by(decision: Decision) -> str:
    """The rule, or "forecast" where no rule asked for it."""
    trace = decision.trace
    alone = by_forecast(trace.rule_g, trace.forecast_g, trace.asked_g)
    return "forecast" if alone else decision.rule


def _earlier(session: Session, profile: AthleteProfile, event: EventRow) -> tuple[EarlierWeek, ...]:
    found = []
    for before in _events_before(session, profile, event.day):
        days = _days(session, before)
        load_days = PeakPlan(tuple(day.target for day in days)).load_days
        load = [day.set_g for day in days if day.days_out in load_days]
        if load and any(day.morning is not None for day in days):
            found.append(EarlierWeek(before.kind, before.day, sum(load) / len(load), before.look))
    return tuple(found)


def _events_before(session: Session, profile: AthleteProfile, day: date) -> list[EventRow]:
    """Events whose day lies before, the newest first; of those on one day the last one set."""
    query = select(EventRow).where(
        EventRow.athlete_id == profile.person_id,
        col(EventRow.active).is_(False),
        EventRow.day < day,
    )
    by_day: dict[date, EventRow] = {}
    gone = given_way(session, [profile.person_id])
    for event in session.exec(query.order_by(col(EventRow.id))):
        if event.id not in gone:
            by_day[event.day] = event
    return [by_day[one] for one in sorted(by_day, reverse=True)]


def next_week_runs(turn: Turn, profile: AthleteProfile) -> bool:
    """Whether the next week has begun and asks its own questions."""
    event = current_event(turn.session, profile.person_id)
    if event is None:
        return False
    return 0 <= (event.day - local_date(profile, turn.context)).days <= max(PLAN_DAYS)
