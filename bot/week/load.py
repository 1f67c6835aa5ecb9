"""From rows to the engine's values: the athlete's current event, plan, limits and history."""

from __future__ import annotations

from dataclasses import asdict, dataclass, fields, replace
from datetime import UTC, date, datetime, time, timedelta

from sqlalchemy import bindparam
from sqlmodel import Session, col, or_, select

from bot.core.turn import Turn
from bot.store.remembering import remembered
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import CheckInRow, DaySetRow, EventRow, LimitsRow, PlanRow, SymptomReport
from bot.week.given_way import given_way
from bot.week.observed import observed_between
from bot.week.priors import prior_used
from engine.decision.decide import Case
from engine.safety import Flag, safety_flags
from engine.values.athlete import Athlete, Baseline, Event, EventKind, Sex
from engine.values.case import ForecastUse, PastWeek
from engine.values.checkin import CheckIn, DaySet, Gut, History, TrainingDone
from engine.values.limits import GuardRails, Limits
from engine.values.look import Look, TargetLook
from engine.values.plan import PLAN_DAYS, DayTarget, PeakPlan
from engine.values.weigh_in import WeighIn

HISTORY_DAYS = 28  # how far back check-ins are handed to the engine
PAST_WEEKS = 4  # how many earlier peak weeks are


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


# Built once: building a statement costs as much as asking it.
_ACTIVE = (
    select(EventRow)
    .where(EventRow.athlete_id == bindparam("athlete"), col(EventRow.active).is_(True))
    .order_by(col(EventRow.id).desc())
    .limit(1)
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
_DAYS_SET = (
    select(DaySetRow)
    .where(DaySetRow.athlete_id == bindparam("athlete"), col(DaySetRow.date) >= bindparam("first"))
    .order_by(col(DaySetRow.date))
)
_CHECKIN = select(CheckInRow).where(
    CheckInRow.athlete_id == bindparam("athlete"), CheckInRow.date == bindparam("day")
)


def current_event(session: Session, athlete_id: int) -> EventRow | None:
    return remembered(
        session, EventRow, ("active", athlete_id),
        lambda: session.exec(_ACTIVE, params={"athlete": athlete_id}).first(),
    )  # fmt: skip


def events_ahead(session: Session, athlete_id: int) -> list[EventRow]:
    """The season: the event that counts and those that wait, by day."""
    query = select(EventRow).where(
        EventRow.athlete_id == athlete_id,
        or_(col(EventRow.active).is_(True), col(EventRow.waits).is_(True)),
    )
    counts = current_event(session, athlete_id)
    rows = [row for row in session.exec(query) if row.waits or row is counts]
    return sorted(rows, key=lambda row: (row.day, row.id or 0))


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
    return remembered(
        session, PlanRow, ("newest", event.id),
        lambda: session.exec(_NEWEST_PLAN, params={"event": event.id}).first(),
    )  # fmt: skip


def current_plan(session: Session, event: EventRow) -> PeakPlan | None:
    row = plan_row(session, event)
    return plan_of(row) if row else None


def plan_of(row: PlanRow) -> PeakPlan:
    """The plan that a row keeps."""
    return PeakPlan(tuple(DayTarget(**day) for day in row.days))


def plan_days(plan: PeakPlan) -> list[dict[str, object]]:
    """The plan as the JSON that a plan row keeps."""
    return [asdict(day) for day in plan]


def limits_row(session: Session, event: EventRow) -> LimitsRow | None:
    return remembered(
        session, LimitsRow, ("newest", event.id),
        lambda: session.exec(_NEWEST_LIMITS, params={"event": event.id}).first(),
    )  # fmt: skip


def current_limits(session: Session, event: EventRow, athlete: Athlete) -> Limits | None:
    row = limits_row(session, event)
    return Limits(guard_rails=GuardRails.of(athlete), **row.bounds) if row else None


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
    return _set_around(session, athlete_id, day).get(day)


def _set_around(session: Session, athlete_id: int, day: date) -> dict[date, DaySetRow]:
    """The figures of every date from four weeks before this day's month on, in order of dates.

    A use case asks of single days, of the weeks before and of those ahead: it is one question.
    """
    month = day.replace(day=1)
    return remembered(
        session, DaySetRow, (athlete_id, month),
        lambda: {
            row.date: row
            for row in session.exec(
                _DAYS_SET,
                params={"athlete": athlete_id, "first": month - timedelta(days=HISTORY_DAYS)},
            )
        },
    )  # fmt: skip


def set_day(
    turn: Turn,
    athlete_id: int,
    day: date,
    carb_g: float,
    *,
    by: str,
    decision_id: int | None = None,
) -> None:
    """Put a figure in force for a date, in place of the one before. by: decision | coach | plan."""
    row = day_set(turn.session, athlete_id, day) or DaySetRow(
        athlete_id=athlete_id, date=day, carb_g=carb_g, by=by, set_at=turn.now
    )
    row.carb_g, row.by, row.decision_id, row.set_at = carb_g, by, decision_id, turn.now
    turn.session.add(row)
    turn.session.flush()


def target_in_force(session: Session, week: Week, day: date) -> DayTarget | None:
    """The day's target as it holds now: the plan's, with the carbohydrate set for it if any was."""
    planned = week.plan.day(week.days_out(day))
    if planned is None:
        return None
    row = day_set(session, week.profile.person_id, day)
    return replace(planned, carb_g=row.carb_g) if row else planned


def checkin_row(session: Session, athlete_id: int, day: date) -> CheckInRow | None:
    return remembered(
        session, CheckInRow, (athlete_id, day),
        lambda: session.exec(_CHECKIN, params={"athlete": athlete_id, "day": day}).first(),
    )  # fmt: skip


# Kept beside the symptoms of the day, as "...:VALUE": what was written of drinking fast, readings
# that were asked for, and what a doubtful word was said not to mean.
DRANK_IN_AN_HOUR = "water-within-one-hour:"
PULSE = "resting-pulse:"
URINE = "urine-colour:"
CLEARED = "cleared:"
READINGS = (DRANK_IN_AN_HOUR, PULSE, URINE, CLEARED)
#: The answers that the engine has under the names of their columns.
_AS_TOLD = tuple(one.name for one in fields(CheckIn) if one.name in CheckInRow.model_fields)


def checkin_of(row: CheckInRow, reported: tuple[str, ...] = ()) -> CheckIn:
    """The engine's check-in, with what was told elsewhere that day joined in."""
    rates = [float(told) for told in _values(reported, DRANK_IN_AN_HOUR)]
    if row.water_within_one_hour_l is not None:
        rates.append(row.water_within_one_hour_l)
    pulses = [float(told) for told in _values(reported, PULSE)]
    colours = [int(told) for told in _values(reported, URINE)]
    complaints = [told for told in reported if not told.startswith(READINGS)]
    as_told = {name: getattr(row, name) for name in _AS_TOLD}
    return CheckIn(**as_told | {
        "gut": Gut(row.gut) if row.gut else None,
        "symptoms": tuple(dict.fromkeys([*row.symptoms, *complaints])),
        "urine_colour": colours[-1] if colours else row.urine_colour,
        "resting_pulse": pulses[-1] if pulses else row.resting_pulse,
        "water_within_one_hour_l": max(rates, default=None),
        "training_done": TrainingDone(row.training_done) if row.training_done else None,
        "cleared": tuple(_values(reported, CLEARED)),
    })  # fmt: skip


def _values(reported: tuple[str, ...], key: str) -> list[str]:
    return [told.removeprefix(key) for told in reported if told.startswith(key)]


def told_today(session: Session, athlete_id: int, day: date) -> CheckIn:
    """What is known of this day so far, whether or not there was a check-in."""
    row = checkin_row(session, athlete_id, day)
    if row is None:  # not added: only its empty answers are wanted
        row = CheckInRow(
            athlete_id=athlete_id, date=day, answered_at=datetime.min.replace(tzinfo=UTC)
        )
    return checkin_of(row, reported_symptoms(session, athlete_id, day))


def flags_of(session: Session, week: Week, row: CheckInRow) -> tuple[Flag, ...]:
    """The safety flags of a check-in as it stands now."""
    case = build_case(session, week, row)
    return safety_flags(
        athlete=case.athlete,
        baseline=case.baseline,
        plan=case.plan,
        event=case.event,
        history=case.history,
        checkin=case.checkin,
        water_ceiling_l=case.limits.water_ceiling_l,
    )


def reported_symptoms(session: Session, athlete_id: int, day: date) -> tuple[str, ...]:
    query = (
        select(SymptomReport.symptom)
        .where(SymptomReport.athlete_id == athlete_id, SymptomReport.date == day)
        .order_by(col(SymptomReport.id))
    )
    return tuple(session.exec(query))


def words_told(session: Session, athlete_id: int, day: date) -> dict[str, str]:
    """What was written of each symptom that day, by its id; ticked ones are left out."""
    query = (
        select(SymptomReport)
        .where(SymptomReport.athlete_id == athlete_id, SymptomReport.date == day)
        .order_by(col(SymptomReport.id))
    )
    return {row.symptom: row.words for row in session.exec(query) if row.words}


def history_before(session: Session, athlete_id: int, day: date) -> History:
    """Check-ins of the last four weeks before `day`, and every figure set for its days and later.

    What coaches saw of these mornings is there too, that of `day` itself included.
    """
    earliest = day - timedelta(days=HISTORY_DAYS)
    checkins = session.exec(
        select(CheckInRow)
        .where(
            CheckInRow.athlete_id == athlete_id,
            CheckInRow.date >= earliest,
            CheckInRow.date < day,
        )
        .order_by(col(CheckInRow.date))
    )
    set_days = [
        row for row in _set_around(session, athlete_id, day).values() if row.date >= earliest
    ]
    return History(
        checkins=tuple(
            checkin_of(row, reported_symptoms(session, athlete_id, row.date)) for row in checkins
        ),
        set_days=tuple(DaySet(row.date, row.carb_g) for row in set_days),
        observed=observed_between(session, athlete_id, earliest, day),
    )


def coach_overrides(session: Session, week: Week) -> dict[int, float]:
    """Figures the coach has put down by hand, by days out."""
    first = week.date_of(7)
    rows = _set_around(session, week.profile.person_id, first).values()
    return {
        week.days_out(row.date): row.carb_g
        for row in rows
        if row.by == "coach" and first <= row.date <= week.event.day
    }


def past_weeks(session: Session, week: Week) -> tuple[PastWeek, ...]:
    """Earlier peak weeks of the athlete, oldest first: what the forecast begins from."""
    first = max((day.days_out for day in week.plan), default=max(PLAN_DAYS))
    return weeks_before(session, week.profile.person_id, week.date_of(first))


def weeks_before(session: Session, athlete_id: int, day: date) -> tuple[PastWeek, ...]:
    """The last peak weeks whose day was before that date and in which there were check-ins."""
    events = session.exec(
        select(EventRow)
        .where(
            EventRow.athlete_id == athlete_id,
            col(EventRow.active).is_(False),
            EventRow.day < day,
        )
        .order_by(col(EventRow.day))
    ).all()
    gone = given_way(session, [athlete_id]) if events else set()
    found = []
    for event in (event for event in events if event.id not in gone):
        plan = current_plan(session, event)
        history = history_before(session, athlete_id, event.day + timedelta(days=1))
        first = event.day - timedelta(days=max(PLAN_DAYS))
        checkins = tuple(c for c in history.checkins if c.date >= first)
        if plan is not None and checkins:
            set_days = tuple(d for d in history.set_days if first <= d.date <= event.day)
            looked = Look(event.look) if event.look else None
            seen = tuple(one for one in history.observed if first <= one.date <= event.day)
            past = History(checkins=checkins, set_days=set_days, observed=seen)
            found.append(
                PastWeek(
                    day=event.day, plan=plan, history=past, look=looked, target=target_of(event)
                )
            )
    return tuple(found[-PAST_WEEKS:])


def build_case(session: Session, week: Week, row: CheckInRow) -> Case:
    """Everything that the decision on this check-in may know."""
    profile = week.profile
    use = ForecastUse(profile.forecast)
    return Case(
        athlete=athlete_of(profile),
        baseline=baseline_of(profile),
        event=event_of(week.event),
        # The cut-off is by the clock where the athlete is, wherever the stage may be.
        zone=profile.zone or week.event.zone,
        plan=week.plan,
        limits=week.limits,
        history=history_before(session, profile.person_id, row.date),
        checkin=checkin_of(row, reported_symptoms(session, profile.person_id, row.date)),
        now=row.answered_at,
        always_tomorrow=profile.always_tomorrow,
        trials=past_weeks(session, week),
        prior=prior_used(session, profile) if use is not ForecastUse.RULES_ONLY else None,
        forecast=use,
        frozen=profile.frozen_at is not None,
        overrides=coach_overrides(session, week),
    )
