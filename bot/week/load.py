"""From rows to the engine's values: the athlete's current event, plan, limits and history."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import asdict, dataclass, replace
from datetime import date, time, timedelta
from functools import lru_cache
from typing import Any, NamedTuple

from sqlalchemy import bindparam, exists, func
from sqlalchemy.orm import aliased
from sqlmodel import Session, SQLModel, col, or_, select

from bot.core.turn import Turn
from bot.store.base import id_of
from bot.store.driver import from_text, to_text
from bot.store.remembering import made_of, remember, remember_ahead, remembered, remembered_row
from bot.store.tables.coach import CoachLookRow
from bot.store.tables.people import AthleteProfile
from bot.store.tables.setting import PRIORS, SettingRow
from bot.store.tables.week import (
    AlertRow,
    CheckInRow,
    DaySetRow,
    EventRow,
    LimitsRow,
    PlanRow,
    SymptomReport,
)
from engine.values.athlete import Athlete, Baseline, Event, EventKind, Sex, WeighIn
from engine.values.checkin import TargetLook
from engine.values.limits import GuardRails, Limits
from engine.values.plan import DayTarget, PeakPlan

HISTORY_DAYS = 28  # how far back check-ins are handed to the engine


@dataclass(frozen=True, slots=True)
class Week:
    """A peak week that can be decided on: everything the coach has to set is there."""

    profile: AthleteProfile
    event: EventRow
    plan: PeakPlan
    limits: Limits

    def days_out(self, day: date) -> int:
        return (self.event.day - day).days

    def date_of(self, days_out: int) -> date:
        return self.event.day - timedelta(days=days_out)


def athlete_of(profile: AthleteProfile) -> Athlete:
    """The engine's athlete; raises ValueError while onboarding is not complete."""
    if (
        profile.sex is None
        or profile.birth_year is None
        or profile.height_cm is None
        or profile.body_mass_kg is None
    ):
        raise ValueError("onboarding is not complete")
    return Athlete(
        sex=Sex(profile.sex),
        birth_year=profile.birth_year,
        height_cm=profile.height_cm,
        body_mass_kg=profile.body_mass_kg,
        body_fat_percent=profile.body_fat_percent,
    )


def baseline_of(profile: AthleteProfile) -> Baseline:
    return Baseline(**profile.baseline)


# Built once: building a statement costs more than asking it.
_SELDOM: tuple[type[SQLModel], ...] = (EventRow, CoachLookRow, SymptomReport, AlertRow)
_EARLIER, _A_PLAN, _BOUNDS = aliased(EventRow), aliased(PlanRow), aliased(LimitsRow)
#: The event that counts with its newest plan and limits, and whether there is any of what most
#: mornings have none of.
_WEEK: Any = (
    select(  # type: ignore[call-overload]
        EventRow,
        PlanRow,
        LimitsRow,
        exists().where(
            col(_EARLIER.athlete_id) == EventRow.athlete_id, col(_EARLIER.active).is_(False)
        ),
        exists().where(col(CoachLookRow.athlete_id) == EventRow.athlete_id),
        exists().where(col(SymptomReport.athlete_id) == EventRow.athlete_id),
        exists().where(col(AlertRow.athlete_id) == EventRow.athlete_id),
        select(SettingRow.value).where(SettingRow.name == PRIORS).scalar_subquery(),
    )
    .select_from(EventRow)
    .outerjoin(
        PlanRow,
        col(PlanRow.id)
        == select(func.max(_A_PLAN.id)).where(_A_PLAN.event_id == EventRow.id).scalar_subquery(),
    )
    .outerjoin(
        LimitsRow,
        col(LimitsRow.id)
        == select(func.max(_BOUNDS.id)).where(_BOUNDS.event_id == EventRow.id).scalar_subquery(),
    )
    .where(EventRow.athlete_id == bindparam("athlete"), col(EventRow.active).is_(True))
    .order_by(col(EventRow.id).desc())
    .limit(1)
)
_AHEAD = select(EventRow).where(
    EventRow.athlete_id == bindparam("athlete"),
    or_(col(EventRow.active).is_(True), col(EventRow.waits).is_(True)),
)
_NEWEST_PLAN = (
    select(PlanRow)
    .where(PlanRow.event_id == bindparam("event"))
    .order_by(col(PlanRow.id).desc())
    .limit(1)
)
_NEWEST_LIMITS = (
    select(LimitsRow)
    .where(LimitsRow.event_id == bindparam("event"))
    .order_by(col(LimitsRow.id).desc())
    .limit(1)
)


def _since(table: type[CheckInRow] | type[DaySetRow]) -> Any:
    theirs = table.athlete_id == bindparam("athlete")
    found = select(table).where(theirs, col(table.date) >= bindparam("first"))
    return aliased(table, found.subquery(f"{table.__tablename__}_since"))


_ANSWERED, _SET = _since(CheckInRow), _since(DaySetRow)
#: Of each date its check-in and the figure in force, where there is either.
_DAYS: Any = (
    select(_ANSWERED, _SET)
    .select_from(_ANSWERED)
    .join(_SET, _SET.date == _ANSWERED.date, full=True)
    .order_by(func.coalesce(_ANSWERED.date, _SET.date))
)


def current_event(session: Session, athlete_id: int) -> EventRow | None:
    return remembered(
        session, EventRow, ("active", athlete_id), lambda: _read_week(session, athlete_id)
    )


def _read_week(session: Session, athlete_id: int) -> EventRow | None:
    found = session.exec(_WEEK, params={"athlete": athlete_id}).first()
    if found is None:
        return None
    event, plan, limits, *there_is, priors = found
    any_of = (
        (table, ("any", athlete_id), any_at_all)
        for table, any_at_all in zip(_SELDOM, there_is, strict=True)
    )
    remember(
        session,
        (PlanRow, ("newest", event.id), plan),
        (LimitsRow, ("newest", event.id), limits),
        (SettingRow, (PRIORS,), priors or ""),
        *any_of,
    )
    return event  # type: ignore[no-any-return]


def may_have(session: Session, table: type[SQLModel], athlete_id: int) -> bool:
    """Whether an athlete may have rows in one of the tables in which many have none: earlier events,
    looks of their coach's, reports of symptoms, alerts. No, where their week was read with none.
    """
    assert table in _SELDOM
    return remembered(session, table, ("any", athlete_id), lambda: True)


def events_ahead(session: Session, athlete_id: int) -> list[EventRow]:
    """The season: the event that counts and those that wait, by day."""
    counts = current_event(session, athlete_id)
    found = session.exec(_AHEAD, params={"athlete": athlete_id})
    rows = [row for row in found if row.waits or row is counts]
    return sorted(rows, key=lambda row: (row.day, id_of(row)))


def event_ahead(session: Session, athlete_id: int, number: int) -> EventRow | None:
    """One of them by its number; None for any other."""
    return next((row for row in events_ahead(session, athlete_id) if row.id == number), None)


def event_of(row: EventRow) -> Event:
    """The engine's event, with the look that it asks for."""
    return Event(kind=EventKind(row.kind), day=row.day, zone=row.zone, target=target_of(row))


def target_of(row: EventRow) -> TargetLook | None:
    """The look that the event asks for; None where nobody has said."""
    look = row.asks.get("look")
    return TargetLook(**look) if look else None


def weigh_in_row(row: EventRow) -> WeighIn | None:
    """The event's weigh-in, if there is one."""
    kept = row.asks.get("weigh_in")
    return WeighIn(**{**kept, "at": time.fromisoformat(kept["at"])}) if kept else None


def plan_row(session: Session, event: EventRow) -> PlanRow | None:
    return remembered_row(session, PlanRow, ("newest", event.id), _NEWEST_PLAN, event=event.id)


def current_plan(session: Session, event: EventRow) -> PeakPlan | None:
    row = plan_row(session, event)
    return plan_of(row) if row else None


def plan_of(row: PlanRow) -> PeakPlan:
    """The plan that a row keeps; made once while the row is loaded."""
    return made_of(row, "plan", row.days, lambda: _plan(to_text(row.days)))


@lru_cache(maxsize=512)
def _plan(days: str) -> PeakPlan:
    """A plan is looked at again and again: by its athlete's turns, and on a roster with all others."""
    return plan_from(from_text(days))


def plan_from(days: Iterable[Mapping[str, Any]]) -> PeakPlan:
    """The plan that `plan_days` made these of, or a question has kept. Raises ValueError."""
    return PeakPlan(tuple(DayTarget(**day) for day in days))


def plan_days(plan: PeakPlan) -> list[dict[str, object]]:
    """The plan as the JSON that a plan row keeps."""
    return [asdict(day) for day in plan]


def limits_row(session: Session, event: EventRow) -> LimitsRow | None:
    return remembered_row(session, LimitsRow, ("newest", event.id), _NEWEST_LIMITS, event=event.id)


def current_limits(session: Session, event: EventRow, athlete: Athlete) -> Limits | None:
    row = limits_row(session, event)
    if row is None:
        return None
    return made_of(
        row, ("limits", athlete), row.bounds,
        lambda: Limits(guard_rails=GuardRails.of(athlete), **row.bounds),
    )  # fmt: skip


def current_week(session: Session, profile: AthleteProfile) -> Week | None:
    """The athlete's week, or None while event, plan or limits are still to be set."""
    event = current_event(session, profile.person_id)
    if event is None:
        return None
    plan = current_plan(session, event)
    limits = current_limits(session, event, athlete_of(profile))
    if plan is None or limits is None:
        return None
    return Week(profile, event, plan, limits)


def day_set(session: Session, athlete_id: int, day: date) -> DaySetRow | None:
    return set_around(session, athlete_id, day).get(day)


def set_around(session: Session, athlete_id: int, day: date) -> dict[date, DaySetRow]:
    """The figures of every date from four weeks before this day's month on, in order of dates."""
    first = reaches_back_to(day)
    return remembered(
        session, DaySetRow, (athlete_id, first), lambda: _read_days(session, athlete_id, first)[1]
    )


def _read_days(
    session: Session, athlete_id: int, first: date
) -> tuple[dict[date, CheckInRow], dict[date, DaySetRow]]:
    """Check-ins and figures from that date on: whoever asks for one of them comes to ask for both."""
    days = session.exec(_DAYS, params={"athlete": athlete_id, "first": first}).all()
    checkins = {row.date: row for row, _ in days if row is not None}
    figures = {row.date: row for _, row in days if row is not None}
    key = (athlete_id, first)
    remember(session, (CheckInRow, key, checkins), (DaySetRow, key, figures))
    return checkins, figures


def _keep_around(
    session: Session,
    table: type[SQLModel],
    athlete_id: int,
    day: date,
    around: Mapping[date, object],
) -> None:
    """What was added is known along with what had been read, before it is written."""
    key = (athlete_id, reaches_back_to(day))
    remember_ahead(session, table, key, dict(sorted(around.items())))


def reaches_back_to(day: date) -> date:
    """Four weeks before this day's month: what a use case asks of single days, of the weeks before
    them and of those ahead is one question then.
    """
    return day.replace(day=1) - timedelta(days=HISTORY_DAYS)


class Figure(NamedTuple):
    """Carbohydrate for a date (g), and who puts it in force: decision | coach | plan."""

    carb_g: float
    by: str
    decision_id: int | None = None


def set_day(turn: Turn, athlete_id: int, day: date, figure: Figure) -> None:
    """Put a figure in force for a date, in place of the one before."""
    around = set_around(turn.session, athlete_id, day)
    row = around.get(day) or DaySetRow(
        athlete_id=athlete_id, date=day, carb_g=figure.carb_g, by=figure.by, set_at=turn.now
    )
    row.carb_g, row.by, row.decision_id = figure
    row.set_at = turn.now
    turn.session.add(row)
    _keep_around(turn.session, DaySetRow, athlete_id, day, around | {day: row})


def target_in_force(session: Session, week: Week, day: date) -> DayTarget | None:
    """The day's target as it holds now: the plan's, with the carbohydrate set for it if any was."""
    planned = week.plan.day(week.days_out(day))
    if planned is None:
        return None
    row = day_set(session, week.profile.person_id, day)
    return replace(planned, carb_g=row.carb_g) if row else planned


def checkin_row(session: Session, athlete_id: int, day: date) -> CheckInRow | None:
    return checkins_around(session, athlete_id, day).get(day)


def keep_checkin(session: Session, row: CheckInRow) -> None:
    """Write a check-in, new or changed."""
    around = checkins_around(session, row.athlete_id, row.date)
    session.add(row)
    _keep_around(session, CheckInRow, row.athlete_id, row.date, around | {row.date: row})


def checkins_before(session: Session, athlete_id: int, day: date) -> list[CheckInRow]:
    """The check-ins of the last four weeks before that day, the oldest first."""
    earliest = day - timedelta(days=HISTORY_DAYS)
    around = checkins_around(session, athlete_id, day)
    return [row for row in around.values() if earliest <= row.date < day]


def checkins_around(session: Session, athlete_id: int, day: date) -> dict[date, CheckInRow]:
    """Every check-in from four weeks before this day's month on, in order of dates."""
    first = reaches_back_to(day)
    return remembered(
        session, CheckInRow, (athlete_id, first), lambda: _read_days(session, athlete_id, first)[0]
    )
