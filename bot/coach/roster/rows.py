"""What the roster and the card show of athletes just now: read in a few queries for all at once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any

from sqlalchemy import bindparam
from sqlmodel import Session, and_, col, func, or_, select

from bot.alerts.alerts import CORRECTED
from bot.core.turn import Turn
from bot.people.changes import Change
from bot.people.people import local_date
from bot.safety.flow_symptom import ASKED_ABOUT_SIGNS
from bot.store.tables.coach import HoldRow
from bot.store.tables.people import AthleteProfile, HistoryRow, OpenQuestion, Person
from bot.store.tables.week import (
    AlertRow,
    CheckInRow,
    DaySetRow,
    DecisionRow,
    DecisionStatus,
    EventRow,
    LimitsRow,
    PlanRow,
    SymptomReport,
)
from bot.week.load import plan_of
from bot.words.names import rule_name
from engine.decision.decide import Outcome
from engine.safety import FlagId, Level
from engine.values.plan import PLAN_DAYS
from engine.written.chatter import is_chatter

WROTE_SHOWN_FOR = timedelta(days=1)  # our own choice; what is older is in the history


@dataclass(frozen=True, slots=True)
class Decided:
    """What was decided on a morning, without the case that it was decided on."""

    id: int
    athlete_id: int
    checkin_id: int
    sets_date: date
    outcome: str
    status: str
    carb_g: float | None
    planned_carb_g: float | None
    sign_off_due_at: datetime | None
    tell_coach: bool | None  # a rule wants the coach to look
    rule: str | None

    @property
    def to_look_at(self) -> str:
        """What the coach is to look at, by the rule that says so; "" for nothing."""
        told = self.tell_coach and self.outcome != Outcome.ESCALATED
        return rule_name(self.rule) if told and self.rule else ""


@dataclass(slots=True)
class RosterRow:
    """One athlete as the roster sees them."""

    profile: AthleteProfile
    person: Person
    today: date
    event: EventRow | None = None
    plan_since: datetime | None = None
    load_days: tuple[int, ...] = ()
    limits_since: datetime | None = None
    morning: CheckInRow | None = None
    decided: Decided | None = None  # on this morning
    waiting: Decided | None = None
    set_g: float | None = None  # what is in force for the day that this morning sets
    alert: AlertRow | None = None  # the worst that is open, advisories left out
    seen_to: AlertRow | None = None  # the worst of today that somebody has acknowledged
    hold: HoldRow | None = None
    complaints: tuple[str, ...] = ()  # told today, in a check-in or beside it
    asked_about: str = ""  # what was written and asked about, while there is no answer
    wrote: str = ""  # the last that they wrote to those who coach them, if nobody has answered it

    @property
    def days_out(self) -> int | None:
        return (self.event.day - self.today).days if self.event is not None else None

    @property
    def in_week(self) -> bool:
        return self.days_out is not None and 0 <= self.days_out <= max(PLAN_DAYS)


def load_roster_rows(turn: Turn, profiles: Sequence[AthleteProfile]) -> list[RosterRow]:
    """Everything that the roster shows of these athletes, in as many queries for 200 as for one."""
    ids = [profile.person_id for profile in profiles]
    people = turn.session.exec(_PEOPLE, params={"athletes": ids})
    person_of = {person.id: person for person in people}
    seen = {
        profile.person_id: RosterRow(
            profile, person_of[profile.person_id], local_date(profile, turn.context)
        )
        for profile in profiles
    }
    _weeks(turn.session, seen)
    _mornings(turn.session, seen)
    _open_matters(turn.session, seen)
    _complaints(turn.session, seen)
    _unanswered_words(turn, seen)
    return list(seen.values())


def _weeks(session: Session, seen: dict[int, RosterRow]) -> None:
    events = session.exec(_EVENTS, params={"athletes": list(seen)})
    for event in events:  # the newest comes last; one that is closed counts as long as it is over
        one = seen[event.athlete_id]
        if event.active:
            one.event = event
        elif not event.waits and (one.event is None or not one.event.active):
            one.event = event if event.day < one.today else None
    of_event = {one.event.id: one for one in seen.values() if one.event is not None}
    asked = {"events": list(of_event)}
    for event_id, since in session.exec(_PLANNED_SINCE, params=asked):
        of_event[event_id].plan_since = since
    for row in session.exec(_NEWEST_PLANS, params=asked):
        of_event[row.event_id].load_days = plan_of(row).load_days
    for event_id, since in session.exec(_LIMITED_SINCE, params=asked):
        of_event[event_id].limits_since = since


def _mornings(session: Session, seen: dict[int, RosterRow]) -> None:
    for row in session.exec(_CHECKINS, params=_of_today(seen)):
        if row.date == seen[row.athlete_id].today:
            seen[row.athlete_id].morning = row
    mornings = [one.morning.id for one in seen.values() if one.morning is not None]
    for decided in _decisions(session, _ON_CHECKINS, {"checkins": mornings}):
        if decided.status != DecisionStatus.REPLACED:
            seen[decided.athlete_id].decided = decided
    days = {one.decided.sets_date for one in seen.values() if one.decided is not None}
    asked: dict[str, list[Any]] = {"athletes": list(seen), "days": list(days)}
    for athlete_id, day, carb_g in session.exec(_FIGURES, params=asked):
        decided_on = seen[athlete_id].decided
        if decided_on is not None and decided_on.sets_date == day:
            seen[athlete_id].set_g = carb_g


def _open_matters(session: Session, seen: dict[int, RosterRow]) -> None:
    alerts = _alerts(session, seen)
    for row in sorted(alerts, key=lambda one: (Level(one.level).rank, one.opened_at)):  # worst last
        one = seen[row.athlete_id]
        if row.acknowledged_at is None:
            one.alert = row
        elif row.date == one.today and row.flag != FlagId.DOUBT and CORRECTED not in row.facts:
            one.seen_to = row
    asked = {"athletes": list(seen)}
    for decided in _decisions(session, _WAITING, asked):
        seen[decided.athlete_id].waiting = decided
    for hold in session.exec(_HOLDS, params=asked):
        if hold.last >= seen[hold.athlete_id].today:
            seen[hold.athlete_id].hold = hold


def _alerts(session: Session, seen: dict[int, RosterRow]) -> Sequence[AlertRow]:
    """What is open, and what somebody has acknowledged of the last day; advisories left out."""
    first = min(one.today for one in seen.values()) if seen else date.max
    return session.exec(_ALERTS, params={"athletes": list(seen), "first": first}).all()


def _complaints(session: Session, seen: dict[int, RosterRow]) -> None:
    told: dict[int, list[str]] = {
        one.profile.person_id: list(one.morning.symptoms) if one.morning is not None else []
        for one in seen.values()
    }
    for row in session.exec(_REPORTS, params=_of_today(seen)):
        if row.date == seen[row.athlete_id].today and ":" not in row.symptom:
            told[row.athlete_id].append(row.symptom)
    for athlete_id, complaints in told.items():
        seen[athlete_id].complaints = tuple(dict.fromkeys(complaints))
    for question in session.exec(_ASKED_ABOUT, params={"athletes": list(seen)}):
        seen[question.person_id].asked_about = str(question.answers["_words"])


def _unanswered_words(turn: Turn, seen: dict[int, RosterRow]) -> None:
    asked = {"athletes": list(seen), "since": turn.now - WROTE_SHOWN_FOR}
    for athlete_id, what, detail in turn.session.exec(_WRITTEN, params=asked):  # the newest last
        words = str(detail.get("text", "")) if what == "message to coach" else ""
        if not is_chatter(words):  # an "ok" waits for no answer, and whatever did still does
            seen[athlete_id].wrote = words


def _decisions(session: Session, statement: Any, asked: dict[str, list[Any]]) -> list[Decided]:
    return [Decided(*row) for row in session.exec(statement, params=asked)]


def _of_today(seen: dict[int, RosterRow]) -> dict[str, list[Any]]:
    return {"athletes": list(seen), "days": list({one.today for one in seen.values()})}


# Built once: building a statement costs several times what asking it does.
_ATHLETES: Any = bindparam("athletes", expanding=True)
_DAYS: Any = bindparam("days", expanding=True)
_OF_EVENTS: Any = bindparam("events", expanding=True)
_PEOPLE = select(Person).where(col(Person.id).in_(_ATHLETES))
_EVENTS = select(EventRow).where(col(EventRow.athlete_id).in_(_ATHLETES)).order_by(col(EventRow.id))
_PLANNED_SINCE = (
    select(PlanRow.event_id, func.min(PlanRow.set_at))
    .where(col(PlanRow.event_id).in_(_OF_EVENTS))
    .group_by(col(PlanRow.event_id))
)
_NEWEST_PLANS = select(PlanRow).where(
    col(PlanRow.id).in_(
        select(func.max(PlanRow.id))
        .where(col(PlanRow.event_id).in_(_OF_EVENTS))
        .group_by(col(PlanRow.event_id))
    )
)
_LIMITED_SINCE = (
    select(LimitsRow.event_id, func.min(LimitsRow.set_at))
    .where(col(LimitsRow.event_id).in_(_OF_EVENTS))
    .group_by(col(LimitsRow.event_id))
)
_CHECKINS = select(CheckInRow).where(
    col(CheckInRow.athlete_id).in_(_ATHLETES), col(CheckInRow.date).in_(_DAYS)
)
#: Decisions without the stored case and trace, which are long.
_DECIDED: Any = select(  # type: ignore[call-overload]
    DecisionRow.id,
    DecisionRow.athlete_id,
    DecisionRow.checkin_id,
    DecisionRow.sets_date,
    DecisionRow.outcome,
    DecisionRow.status,
    DecisionRow.carb_g,
    DecisionRow.planned_carb_g,
    DecisionRow.sign_off_due_at,
    col(DecisionRow.decision)["tell_coach"].as_boolean(),
    col(DecisionRow.decision)["rule"].as_string(),
)
_ON_CHECKINS = _DECIDED.where(
    col(DecisionRow.checkin_id).in_(bindparam("checkins", expanding=True))
)
_WAITING = _DECIDED.where(
    col(DecisionRow.athlete_id).in_(_ATHLETES),
    col(DecisionRow.status) == DecisionStatus.WAITING.value,
)
_FIGURES = select(col(DaySetRow.athlete_id), col(DaySetRow.date), col(DaySetRow.carb_g)).where(
    col(DaySetRow.athlete_id).in_(_ATHLETES), col(DaySetRow.date).in_(_DAYS)
)
_HOLDS = (
    select(HoldRow)
    .where(col(HoldRow.athlete_id).in_(_ATHLETES), col(HoldRow.ended_at).is_(None))
    .order_by(col(HoldRow.id))
)
_ALERTS = select(AlertRow).where(
    col(AlertRow.athlete_id).in_(_ATHLETES),
    or_(
        col(AlertRow.acknowledged_at).is_(None),
        and_(col(AlertRow.acknowledged_by).is_not(None), col(AlertRow.date) >= bindparam("first")),
    ),
    col(AlertRow.level) != Level.ADVISORY.value,
)
_REPORTS = (
    select(SymptomReport)
    .where(col(SymptomReport.athlete_id).in_(_ATHLETES), col(SymptomReport.date).in_(_DAYS))
    .order_by(col(SymptomReport.id))
)
_ASKED_ABOUT = select(OpenQuestion).where(
    col(OpenQuestion.person_id).in_(_ATHLETES),
    col(OpenQuestion.flow).in_(ASKED_ABOUT_SIGNS),
    col(OpenQuestion.closed_at).is_(None),
)
_WRITTEN = (
    select(col(HistoryRow.athlete_id), col(HistoryRow.what), col(HistoryRow.detail))
    .where(
        col(HistoryRow.athlete_id).in_(_ATHLETES),
        col(HistoryRow.what).in_((Change.MESSAGE_TO_COACH, Change.MESSAGE_TO_ATHLETE)),
        col(HistoryRow.at) > bindparam("since"),
    )
    .order_by(col(HistoryRow.id))
)
