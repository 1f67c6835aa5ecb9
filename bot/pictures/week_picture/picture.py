"""The week as a picture: for the coach from the athlete's card, for the athlete by a command."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import fields
from datetime import date, timedelta
from typing import Any

from sqlmodel import Session, col, select

from bot.core.turn import Act, Document, OnAthlete, Turn
from bot.decision.words_forecast import odds_in_force
from bot.people.people import get_profile, local_date, name_of
from bot.people.telling import answer, say_to
from bot.pictures.drawn_later import DrawnLater
from bot.pictures.week_picture import words
from bot.pictures.week_picture.values import Before, BeforeDay, ChartDay, ChartOdds, ChartWeek
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import DecisionRow
from bot.week.cases import decision_of
from bot.week.load import day_set
from bot.week.weeks_of import DayRow, WeekRows, weeks_of_one
from bot.words.chances import in_ten
from engine.values.case import ForecastUse

PICTURE = DrawnLater("week-picture", "week", ChartWeek)


def show_picture(turn: OnAthlete) -> None:
    """The card's button."""
    answer(turn)
    _send(turn, turn.person, turn.profile)


def own_picture(turn: Act) -> None:
    """The athlete's own week."""
    profile = get_profile(turn.session, turn.person.id)
    _send(turn, turn.person, profile)


def make_picture(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The PNG; None for somebody who may not see this athlete any more."""
    week = PICTURE.values_in(turn, named)
    if week is None:
        return None
    # Matplotlib takes a second to load: whoever never asks for a picture never waits for it.
    from bot.pictures.week_picture.week import week_png  # noqa: PLC0415

    return Document(f"week-{week.event_day.isoformat()}.png", week_png(week))


def week_values(session: Session, profile: AthleteProfile, today: date) -> ChartWeek | None:
    """The newest week that has a plan, as far as it has come; None before there is one.

    A week that is over stays the newest until the next one is planned, and has come to its turn.
    """
    weeks = weeks_of_one(session, profile.person_id)
    come = [week for week in weeks if not week.waits]
    if not come:
        return None
    # Not by its number: weeks that came in from a sheet are newer rows of older days.
    rows = max(come, key=lambda week: (week.active, week.day))
    return ChartWeek(
        name=name_of(session, profile.person_id),
        kind=rows.kind,
        event_day=rows.day,
        today=today,
        weight_unit=profile.weight_unit,
        volume_unit=profile.volume_unit,
        baseline_kg=profile.body_mass_kg,
        days=tuple(chart_day(day) for day in rows.days),
        odds=_odds(session, profile, rows, today),
        before=_before(weeks, rows),
    )


def _send(turn: Turn, reader: Person, profile: AthleteProfile) -> None:
    own = reader.id == profile.person_id
    week = week_values(turn.session, profile, local_date(profile, turn.context))
    if week is None:
        text = words.no_week_to_show(name_of(turn.session, profile.person_id), self_coached=own)
        say_to(turn, reader, text)
        return
    PICTURE.send(turn, reader, profile, week, words.caption(week, own=own))


def _before(weeks: Sequence[WeekRows], rows: WeekRows) -> Before | None:
    """The last trial that was over before this week's event, with what was answered in it."""
    trials = [
        week for week in weeks if week.kind == "trial" and week.day < rows.day and week.mornings
    ]
    if not trials:
        return None
    last = trials[-1]
    first = next((day.weight_kg for day in last.days if day.weight_kg is not None), None)
    return Before(
        event_day=last.day,
        days=tuple(
            BeforeDay(
                days_out=day.days_out,
                moved_kg=(
                    day.weight_kg - first
                    if day.weight_kg is not None and first is not None
                    else None
                ),
                carb_g=day.carb_g,
                fullness=day.fullness,
                sharpness=day.sharpness,
            )
            for day in last.days
        ),
    )


def _odds(
    session: Session, profile: AthleteProfile, week: WeekRows, today: date
) -> ChartOdds | None:
    """What the newest morning said of the day, while that is still ahead."""
    if profile.forecast != ForecastUse.PROPOSES or today > week.day:
        return None
    newest = session.exec(
        select(DecisionRow)
        .where(DecisionRow.event_id == week.event_id)
        .order_by(col(DecisionRow.id).desc())
    ).first()
    # A morning before yesterday's says too little of a day that has come nearer since.
    if newest is None:
        return None
    decision = decision_of(newest)
    if decision.date < today - timedelta(days=1):
        return None
    set_g = day_set(session, profile.person_id, newest.sets_date)
    odds = odds_in_force(decision, set_g.carb_g if set_g is not None else None)
    if odds is None:
        return None
    tenths = in_ten(odds)
    return ChartOdds(
        morning=decision.date,
        sets_date=newest.sets_date,
        carb_g=odds.carb_g,
        full=tenths["full"],
        flat=tenths["flat"],
        spilled=tenths["spilled"],
    )


#: What is drawn of a day as it stands in its row.
_AS_IN_ROW = {one.name for one in fields(ChartDay)} & {one.name for one in fields(DayRow)}


def chart_day(row: DayRow) -> ChartDay:
    """A day of a week as it is drawn."""
    planned = row.planned
    return ChartDay(
        **{name: getattr(row, name) for name in _AS_IN_ROW},
        phase=planned.phase if planned is not None else None,
        planned_carb_g=planned.carb_g if planned is not None else None,
        planned_water_l=planned.water_l if planned is not None else None,
    )
