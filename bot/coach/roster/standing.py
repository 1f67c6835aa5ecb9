"""How athletes stand just now, for the roster and the card: read in a few queries for all at once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any

from sqlalchemy import bindparam
from sqlmodel import Session, and_, col, func, or_, select

from bot.alerts.alerts import CORRECTED
from bot.coach.roster import words
from bot.core.timing.instants import local_instant
from bot.core.turn import Context, Turn
from bot.people.changes import Change
from bot.people.people import local_date
from bot.safety.flow_symptom import ASKED_ABOUT_SIGNS
from bot.store.tables.coach import HoldRow
from bot.store.tables.people import AthleteProfile, AthleteStatus, HistoryRow, OpenQuestion, Person
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
from bot.week.prompts import asked_that_day, counts_as_missed
from bot.words import figures
from bot.words.names import rule_name
from engine.decision.decide import Outcome
from engine.safety import FlagId, Level
from engine.values.plan import PLAN_DAYS
from engine.written.chatter import is_chatter

NEEDS_THE_COACH = 8  # ranks up to this one
MISSED = 3
WROTE_SHOWN_FOR = timedelta(days=1)  # our own choice; what is older is in the history
ASKED = 9  # this morning's check-in is waited for


@dataclass(frozen=True, slots=True)
class Priority:
    """How an athlete stands; a lower `rank` needs the coach sooner, then a lower `order`."""

    rank: int
    state: str
    order: float = 0.0
    in_order: bool = False  # nothing to say but that


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


def standing(seen: RosterRow, context: Context, here: str | None) -> Priority:
    """What about this athlete needs the coach most; a hold is said beside it.

    `here` is the zone of whoever reads it, None where it is not known.
    """
    found = _standing(seen, context, here)
    if seen.hold is None:
        return found
    held = words.state_held(seen.hold.carb_g, seen.hold.last)
    if found.in_order:
        return Priority(found.rank, held, found.order)
    return Priority(found.rank, f"{found.state} {held}", found.order)


def decided_line(seen: RosterRow) -> str | None:
    """What this morning's numbers led to, with the figure that stands now."""
    decided = seen.decided
    if seen.morning is None or decided is None:
        return None
    waiting = decided.status == DecisionStatus.WAITING
    stands = decided.carb_g if decided.carb_g is not None else decided.planned_carb_g
    carb_g = stands if waiting or seen.set_g is None else seen.set_g
    return words.decided(
        outcome_now(decided.outcome, decided.status), carb_g, decided.planned_carb_g,
        decided.sets_date,
    )  # fmt: skip


def outcome_now(outcome: str, status: str) -> str:
    """What a decision led to, or what has become of it where it was to be approved."""
    return {DecisionStatus.WAITING: "proposed", DecisionStatus.LAPSED: "lapsed"}.get(
        DecisionStatus(status), outcome
    )


def _standing(seen: RosterRow, context: Context, here: str | None) -> Priority:
    profile = seen.profile
    if seen.alert is not None:
        rank = 0 if seen.alert.level == Level.WARNING else 1
        opened = seen.alert.opened_at.timestamp()
        if seen.alert.flag == FlagId.DOUBT:
            return Priority(rank, words.state_unanswered(str(seen.alert.facts["words"])), opened)
        return Priority(rank, words.state_alert(seen.alert.level), opened)
    if seen.waiting is not None and seen.waiting.sign_off_due_at is not None:
        due = seen.waiting.sign_off_due_at
        until = _clock(seen, due, here)
        return Priority(2, words.state_waiting(until), due.timestamp())
    days_out = float(seen.days_out) if seen.days_out is not None else 1000.0
    if profile.frozen_at is not None:
        return Priority(4, words.state_frozen(profile.frozen_because), days_out)
    if not seen.person.reachable:
        return Priority(5, words.state_unreachable(), days_out)
    by_status = {
        AthleteStatus.DOCTOR_FIRST: (6, words.state_doctor()),
        AthleteStatus.ONBOARDING: (10, words.state_onboarding()),
        AthleteStatus.PAUSED: (11, words.state_paused()),
    }
    if profile.status in by_status:
        return Priority(*by_status[AthleteStatus(profile.status)], days_out)
    of_week = _standing_of_week(seen, context, here)
    if of_week is None:
        return Priority(12, words.state_fine(), days_out, in_order=True)
    return Priority(*of_week, days_out)


def _standing_of_week(
    seen: RosterRow, context: Context, here: str | None
) -> tuple[int, str] | None:
    """Where the week is; None where there is nothing to say of this morning."""
    if seen.event is None:
        return 8, words.state_to_set("event")
    if seen.plan_since is None or seen.limits_since is None:
        return 7, words.state_to_set("plan" if seen.plan_since is None else "limits")
    days_out = (seen.event.day - seen.today).days
    if days_out < 0:
        return 14, words.state_over()
    if days_out > max(PLAN_DAYS):
        return 13, words.state_ahead()
    if seen.morning is None:
        asked = asked_at(seen)
        set_up = max(seen.plan_since, seen.limits_since)
        if set_up < asked and counts_as_missed(seen.profile, context):
            return MISSED, words.state_missed()
        if context.now >= asked and asked_that_day(seen.profile, seen.today, set_up):
            return ASKED, words.state_missing()
        return 12, words.state_asked_at(_clock(seen, asked, here))
    if seen.asked_about:
        return 11, words.state_asked_about(seen.asked_about)
    if seen.complaints:
        return 11, words.state_complaints(seen.complaints)
    if seen.seen_to is not None:
        return 11, words.state_seen_to(seen.seen_to.level, seen.seen_to.flag)
    if seen.decided is not None and seen.decided.to_look_at:
        return 11, words.state_to_look_at(seen.decided.to_look_at)
    return None


def asked_at(seen: RosterRow) -> datetime:
    """When this morning's check-in is asked for."""
    return local_instant(seen.today, seen.profile.prompt_time, seen.profile.zone or "UTC")


def _clock(seen: RosterRow, instant: datetime, here: str | None) -> str:
    return figures.both_clocks(instant, here, seen.profile.zone, seen.person.first_name)


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
    for row in sorted(_alerts(session, seen), key=_gravity):  # the worst comes last
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


def _gravity(row: AlertRow) -> tuple[int, datetime]:
    return Level(row.level).rank, row.opened_at


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
