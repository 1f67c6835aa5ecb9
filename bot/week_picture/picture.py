"""The week as a picture: for the coach from the athlete's card, for the athlete by a command."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import Any

from pydantic import TypeAdapter
from sqlmodel import Session, col, select

from bot.core.callbacks import answer
from bot.core.context import Document
from bot.core.outbox import send_pictures
from bot.core.turn import Act, OnAthlete, Turn
from bot.decision.words_outlook import odds_in_force
from bot.people.people import get_person, local_date, own_athlete, profile_of
from bot.people.telling import say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import CheckInRow, DaySetRow, DecisionRow, EventRow
from bot.week.load import current_plan, day_set
from bot.week.observed import observed_between
from bot.week_picture import words
from bot.week_picture.chart.values import ChartDay, ChartOdds, ChartWeek
from bot.words.chances import in_ten
from engine.values.case import ForecastUse
from engine.values.observed import Observed, most_careful
from engine.values.plan import PLAN_DAYS, PeakPlan

MAKE = "week-picture"

_values = TypeAdapter(ChartWeek)


def show_picture(turn: OnAthlete) -> None:
    """The card's button."""
    answer(turn)
    _send(turn, turn.person, turn.profile)


def own_picture(turn: Act) -> None:
    """The athlete's own week."""
    profile = profile_of(turn.session, turn.person.id)
    assert profile is not None
    _send(turn, turn.person, profile)


def make_picture(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The PNG; None for somebody who may not see this athlete any more."""
    reader, profile = (
        turn.session.get(Person, named["reader"]),
        profile_of(turn.session, named["athlete"]),
    )
    if reader is None or profile is None or not _may_see(turn.session, reader, profile):
        return None
    # Matplotlib takes a second to load: whoever never asks for a picture never waits for it.
    from bot.week_picture.chart.week import week_png  # noqa: PLC0415

    week = _values.validate_python(named["week"])
    return Document(f"week-{week.event_day.isoformat()}.png", week_png(week))


def week_values(session: Session, profile: AthleteProfile, today: date) -> ChartWeek | None:
    """The newest week that has a plan, as far as it has come; None before there is one.

    A week that is over stays the newest until the next one is planned.
    """
    events = session.exec(
        select(EventRow)
        .where(EventRow.athlete_id == profile.person_id)
        .order_by(col(EventRow.id).desc())
    )
    for event in events:
        plan = current_plan(session, event)
        if plan is not None:
            return ChartWeek(
                name=get_person(session, profile.person_id).first_name,
                kind=event.kind,
                event_day=event.day,
                today=today,
                weight_unit=profile.weight_unit,
                days=_days(session, profile.person_id, event, plan),
                odds=_odds(session, profile, event, today),
            )
    return None


def _send(turn: Turn, reader: Person, profile: AthleteProfile) -> None:
    own = reader.id == profile.person_id
    week = week_values(turn.session, profile, local_date(profile, turn.context))
    if week is None:
        text = words.no_week_to_show(
            get_person(turn.session, profile.person_id).first_name, own=own
        )
        say_to(turn, reader, text)
        return
    # The values go along, so that picture and words agree however late they are sent.
    send_pictures(
        turn.session, chat_id=reader.chat_id, now=turn.now, caption=words.caption(week, own=own),
        pictures=[
            {
                "make": MAKE, "reader": reader.id, "athlete": profile.person_id,
                "week": _values.dump_python(week, mode="json"),
            }
        ],
    )  # fmt: skip


def _may_see(session: Session, reader: Person, profile: AthleteProfile) -> bool:
    own = reader.id == profile.person_id
    return own or own_athlete(session, reader, profile.person_id) is not None


def _days(
    session: Session, athlete_id: int, event: EventRow, plan: PeakPlan
) -> tuple[ChartDay, ...]:
    dates = [event.day - timedelta(days=days_out) for days_out in PLAN_DAYS]
    mornings = {
        row.date: row
        for row in session.exec(
            select(CheckInRow).where(
                CheckInRow.athlete_id == athlete_id, col(CheckInRow.date).in_(dates)
            )
        )
    }
    set_g = {
        row.date: row.carb_g
        for row in session.exec(
            select(DaySetRow).where(
                DaySetRow.athlete_id == athlete_id, col(DaySetRow.date).in_(dates)
            )
        )
    }
    decided = _decided(session, mornings)
    seen = observed_between(session, athlete_id, dates[0], dates[-1])
    return tuple(
        _seen(
            _day(day, (event.day - day).days, plan, mornings.get(day), decided, set_g.get(day)),
            most_careful([one for one in seen if one.date == day]),
        )
        for day in dates
    )


def _seen(day: ChartDay, by_coach: Observed | None) -> ChartDay:
    """The day with what the coach saw of its morning."""
    if by_coach is None:
        return day
    return replace(day, coach_look=by_coach.look.value, coach_sharpness=by_coach.sharpness)


def _odds(
    session: Session, profile: AthleteProfile, event: EventRow, today: date
) -> ChartOdds | None:
    """What the newest morning said of the day, while that is still ahead."""
    if profile.forecast != ForecastUse.PROPOSES or today > event.day:
        return None
    newest = session.exec(
        select(DecisionRow)
        .where(DecisionRow.event_id == event.id)
        .order_by(col(DecisionRow.id).desc())
    ).first()
    # A morning before yesterday's says too little of a day that has come nearer since.
    if newest is None or newest.decision["date"] < (today - timedelta(days=1)).isoformat():
        return None
    set_g = day_set(session, profile.person_id, newest.sets_date)
    odds = odds_in_force(newest.decision, set_g.carb_g if set_g is not None else None)
    if odds is None:
        return None
    tenths = in_ten(odds)
    return ChartOdds(
        morning=date.fromisoformat(newest.decision["date"]),
        sets_date=newest.sets_date,
        carb_g=odds["carb_g"],
        full=tenths["full"],
        flat=tenths["flat"],
        spilled=tenths["spilled"],
    )


def _decided(session: Session, mornings: dict[date, CheckInRow]) -> dict[int, dict[str, Any]]:
    """The newest decision on each of these mornings, by its check-in."""
    query = (
        select(DecisionRow.checkin_id, col(DecisionRow.decision))
        .where(col(DecisionRow.checkin_id).in_([row.id for row in mornings.values()]))
        .order_by(col(DecisionRow.id))
    )
    return {checkin_id: dict(decision) for checkin_id, decision in session.exec(query)}


def _day(
    day: date,
    days_out: int,
    plan: PeakPlan,
    morning: CheckInRow | None,
    decided: dict[int, dict[str, Any]],
    set_g: float | None,
) -> ChartDay:
    planned = plan.day(days_out)
    decision = decided.get(id_of(morning), {}) if morning is not None else {}
    band = decision.get("band") or {}
    return ChartDay(
        date=day,
        days_out=days_out,
        planned_carb_g=planned.carb_g if planned is not None else None,
        set_carb_g=set_g,
        answered=morning is not None,
        weight_kg=morning.weight_kg if morning is not None else None,
        band_low_kg=band.get("low_kg"),
        band_high_kg=band.get("high_kg"),
        fullness=morning.fullness if morning is not None else None,
        expected_fullness=decision.get("expected_fullness"),
        sharpness=morning.sharpness if morning is not None else None,
    )
