"""A morning as the engine is asked about it: what was told and seen, what came before, and what a
coach's other athletes have taught.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import fields
from datetime import UTC, date, datetime, timedelta

from sqlalchemy import bindparam, inspect
from sqlmodel import Session, col, select

from bot.store.remembering import remembered, remembered_rows
from bot.store.tables import setting
from bot.store.tables.coach import CoachLookRow, TaughtRow
from bot.store.tables.people import AthleteProfile
from bot.store.tables.setting import SettingRow
from bot.store.tables.week import CheckInRow, DecisionRow, DecisionStatus, EventRow, SymptomReport
from bot.week.events import given_way
from bot.week.load import (
    HISTORY_DAYS,
    Week,
    athlete_of,
    baseline_of,
    checkin_row,
    checkins_before,
    current_plan,
    event_of,
    may_have,
    reaches_back_to,
    set_around,
    target_of,
)
from engine.decision.decide import Case, Decision, flags_of_case
from engine.decision.kept import decision_from_dict
from engine.decision.record import taught_from_dict
from engine.safety import Flag
from engine.values.body import Prior
from engine.values.case import ForecastUse, PastWeek
from engine.values.checkin import (
    CheckIn,
    CoachLook,
    DaySet,
    Gut,
    History,
    Look,
    Observed,
    TrainingDone,
)
from engine.values.plan import PLAN_DAYS

PAST_WEEKS = 4  # how many earlier peak weeks are


# Kept beside the symptoms of the day, as "...:VALUE": what was written of drinking fast, readings
# that were asked for, and what a doubtful word was said not to mean.
DRANK_IN_AN_HOUR = "water-within-one-hour:"


PULSE = "resting-pulse:"


URINE = "urine-colour:"


CLEARED = "cleared:"


READINGS = (DRANK_IN_AN_HOUR, PULSE, URINE, CLEARED)


# Built once: building a statement costs more than asking it.
_REPORTS = (
    select(SymptomReport)
    .where(
        SymptomReport.athlete_id == bindparam("athlete"),
        col(SymptomReport.date) >= bindparam("first"),
    )
    .order_by(col(SymptomReport.id))
)
_EVENTS_BEFORE = (
    select(EventRow)
    .where(
        EventRow.athlete_id == bindparam("athlete"),
        col(EventRow.active).is_(False),
        col(EventRow.day) < bindparam("day"),
    )
    .order_by(col(EventRow.day))
)
_LOOKS = (
    select(CoachLookRow)
    .where(
        CoachLookRow.athlete_id == bindparam("athlete"),
        col(CoachLookRow.date) >= bindparam("first"),
        col(CoachLookRow.date) <= bindparam("last"),
    )
    .order_by(col(CoachLookRow.date), col(CoachLookRow.by_id))
)

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
    return flags_of_case(build_case(session, week, row))


def reported_symptoms(session: Session, athlete_id: int, day: date) -> tuple[str, ...]:
    return tuple(row.symptom for row in _reports(session, athlete_id, day))


def words_told(session: Session, athlete_id: int, day: date) -> dict[str, str]:
    """What was written of each symptom that day, by its id; ticked ones are left out."""
    return {row.symptom: row.words for row in _reports(session, athlete_id, day) if row.words}


def _reports(session: Session, athlete_id: int, day: date) -> Sequence[SymptomReport]:
    """What was told of a day outside its check-in, in the order in which it was told."""
    if not may_have(session, SymptomReport, athlete_id):
        return ()
    first = reaches_back_to(day)
    around = remembered_rows(
        session, SymptomReport, (athlete_id, first), _REPORTS, athlete=athlete_id, first=first
    )
    return [row for row in around if row.date == day]


def history_before(session: Session, athlete_id: int, day: date) -> History:
    """Check-ins of the last four weeks before `day`, and every figure set for its days and later.

    What coaches saw of these mornings is there too, that of `day` itself included.
    """
    earliest = day - timedelta(days=HISTORY_DAYS)
    checkins = checkins_before(session, athlete_id, day)
    set_days = [
        row for row in set_around(session, athlete_id, day).values() if row.date >= earliest
    ]
    return History(
        checkins=tuple(
            checkin_of(row, reported_symptoms(session, athlete_id, row.date)) for row in checkins
        ),
        set_days=tuple(DaySet(row.date, row.carb_g) for row in set_days),
        observed=observed_between(session, athlete_id, earliest, day),
    )


def coach_overrides(session: Session, week: Week, day: date) -> dict[int, float]:
    """Figures the coach has put down by hand, by days out; `day` is one of the week's mornings."""
    first = week.date_of(7)
    rows = set_around(session, week.profile.person_id, day).values()
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
    if not may_have(session, EventRow, athlete_id):
        return ()
    events = session.exec(_EVENTS_BEFORE, params={"athlete": athlete_id, "day": day}).all()
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
        overrides=coach_overrides(session, week, row.date),
    )


def observed_between(
    session: Session, athlete_id: int, first: date, last: date
) -> tuple[Observed, ...]:
    """What coaches saw on the mornings from `first` to `last`, oldest first, one a date and coach."""
    return tuple(observed_of(row) for row in look_rows(session, athlete_id, first, last))


def look_rows(session: Session, athlete_id: int, first: date, last: date) -> list[CoachLookRow]:
    """The rows of the same, with who said it (`by_id`) and when (`at`)."""
    if not may_have(session, CoachLookRow, athlete_id):
        return []
    asked = {"athlete": athlete_id, "first": first, "last": last}
    return list(session.exec(_LOOKS, params=asked))


def look_row(session: Session, athlete_id: int, day: date, by_id: int) -> CoachLookRow | None:
    """What this coach said of that morning."""
    query = select(CoachLookRow).where(
        CoachLookRow.athlete_id == athlete_id, CoachLookRow.date == day, CoachLookRow.by_id == by_id
    )
    return session.exec(query).first()


def observed_of(row: CoachLookRow) -> Observed:
    return Observed(
        date=row.date, look=CoachLook(row.look), sharpness=row.sharpness, by=row.by_id, at=row.at
    )


def prior_used(session: Session, profile: AthleteProfile) -> Prior | None:
    """The prior of this athlete's decisions: what `prior_for` says where whoever runs the bot has
    switched that on, else None, the published one. It is off at first: on the bench it made odds
    better and corrections smaller.
    """
    return prior_for(session, profile) if priors_on(session) else None


def priors_on(session: Session) -> bool:
    name = setting.PRIORS
    kept = remembered(session, SettingRow, (name,), lambda: setting.kept(session, name))
    return kept == "on"


def prior_for(session: Session, profile: AthleteProfile) -> Prior | None:
    """What weeks of the same coach's other athletes say of this one; None where there are none.

    Of this athlete's own earlier weeks nothing is in it: those are the case's trials.
    """
    from engine.model.pooling import pooled  # noqa: PLC0415 - numpy, for whoever forecasts

    rows = session.exec(
        select(TaughtRow)
        .where(TaughtRow.coach_id == profile.coach_id, TaughtRow.athlete_id != profile.person_id)
        .order_by(col(TaughtRow.athlete_id))
    )
    return pooled([taught_from_dict(row.taught) for row in rows])


_MADE = "decision"


def decision_of(row: DecisionRow) -> Decision:
    """The row's decision, read at most once while the row is loaded: what is stored never changes."""
    made: dict[str, Decision] = inspect(row).info
    if _MADE not in made:
        made[_MADE] = decision_from_dict(row.decision)
    return made[_MADE]


def keep_made(row: DecisionRow, made: Decision) -> None:
    """What the row has been written from, so that it isn't read back."""
    inspect(row).info[_MADE] = made


def default_carb_g(row: DecisionRow) -> float:
    """The figure that holds if the coach says nothing (g)."""
    lapse = decision_of(row).lapse_g
    figure = lapse if lapse is not None else row.planned_carb_g
    assert figure is not None
    return figure


def plan_g(row: DecisionRow) -> float:
    """The plan's own figure for the day, as far as the limits still leave it (g)."""
    assert row.planned_carb_g is not None
    window = decision_of(row).trace.window
    if window is None:
        return row.planned_carb_g
    return float(min(max(row.planned_carb_g, window.low), window.high))


def is_small_step(row: DecisionRow) -> bool:
    """Whether something other than the plan stands while nobody has answered."""
    return abs(default_carb_g(row) - plan_g(row)) > 1e-6


def stands_g(row: DecisionRow) -> float | None:
    """The change (g) that stands as a small step while a larger one waits, or after it lapsed; None
    where what was decided is in force.
    """
    if row.status not in (DecisionStatus.WAITING, DecisionStatus.LAPSED) or not is_small_step(row):
        return None
    assert row.planned_carb_g is not None
    return default_carb_g(row) - row.planned_carb_g


def stood(session: Session, event: EventRow) -> Iterable[DecisionRow]:
    """The decisions for the event's days that were not replaced, by day, later ones last."""
    query = select(DecisionRow).where(
        DecisionRow.event_id == event.id, DecisionRow.status != DecisionStatus.REPLACED
    )
    return session.exec(query.order_by(col(DecisionRow.sets_date), col(DecisionRow.id)))
