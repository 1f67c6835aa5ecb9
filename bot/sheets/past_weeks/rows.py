"""The rows of a week that came from a sheet."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from typing import Any

from bot.core.timing import instants
from bot.core.turn import Turn
from bot.sheets.past_weeks import layout as at
from bot.sheets.past_weeks.reading import PastWeekRead, carbs_of
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import CheckInRow, DaySetRow, EventRow, PlanRow
from bot.week.load import baseline_of, plan_days
from engine.planning.drafting.template import named
from engine.values.plan import DayTarget, PeakPlan, Phase

#: The plan of such a week has no shape that was drafted.
SHAPE = "imported"


DAY = timedelta(days=1)


def days_with_rows(week: PastWeekRead) -> list[date]:
    return sorted({*(day.date for day in week.days), *_morning_figures(week)})


def rows_of(
    turn: Turn, coach: Person, profile: AthleteProfile, week: PastWeekRead
) -> Iterator[EventRow | PlanRow | DaySetRow | CheckInRow]:
    """Event, plan, figures set and mornings, each stored."""
    by, at = id_of(coach), turn.now
    event = EventRow(
        athlete_id=profile.person_id, kind=week.kind, day=week.day, zone=profile.zone or "UTC",
        active=False, look=week.look, set_by=by, set_at=at,
    )  # fmt: skip
    yield _stored(turn, event)
    plan = plan_of_week(profile, week)
    yield _stored(
        turn,
        PlanRow(event_id=id_of(event), shape=SHAPE, days=plan_days(plan), set_by=by, set_at=at),
    )
    for day in week.days:
        if "carb_set_g" in day.figures:
            yield _stored(
                turn,
                DaySetRow(
                    athlete_id=profile.person_id, date=day.date, by="coach", set_at=at,
                    carb_g=day.figures["carb_set_g"],
                ),
            )  # fmt: skip
    for date_, told in sorted(_morning_figures(week).items()):
        answered_at = instants.local_instant(date_, profile.prompt_time, profile.zone or "UTC")
        yield _stored(
            turn,
            CheckInRow(athlete_id=profile.person_id, date=date_, answered_at=answered_at, **told),
        )


def _stored(turn: Turn, row: Any) -> Any:
    turn.session.add(row)
    return row


def plan_of_week(profile: AthleteProfile, week: PastWeekRead) -> PeakPlan:
    """What was to be eaten, as far as it is known; protein, fat and water else as they always are."""
    usual = baseline_of(profile)
    days = []
    for day in week.days:
        carb_g = carbs_of(day)
        if carb_g is not None:
            days.append(
                DayTarget(
                    days_out=(week.day - day.date).days, carb_g=carb_g,
                    protein_g=day.figures.get("protein_g", usual.protein_g),
                    fat_g=day.figures.get("fat_g", usual.fat_g), water_l=usual.water_l,
                    training=day.figures.get(at.TRAINING, ""),
                    phase=Phase(day.figures[at.PHASE]) if at.PHASE in day.figures else None,
                )
            )  # fmt: skip
    return named(PeakPlan(tuple(sorted(days, key=lambda day: -day.days_out))), usual)


_OF_THE_MORNING = ("weight_kg", "fullness", "sharpness", "gut", "sleep_h", "note")


_OF_THE_DAY_BEFORE = ("carb_eaten_g", "water_l")


def _morning_figures(week: PastWeekRead) -> dict[date, dict[str, Any]]:
    """Answers by morning: what was eaten and drunk on a day is told on the next."""
    found: dict[date, dict[str, Any]] = {}
    for day in week.days:
        for keys, morning in ((_OF_THE_MORNING, day.date), (_OF_THE_DAY_BEFORE, day.date + DAY)):
            told = {key: day.figures[key] for key in keys if key in day.figures}
            if told:
                found.setdefault(morning, {}).update(told)
    return found


def mornings_of(week: PastWeekRead) -> int:
    return sum("weight_kg" in day.figures or "fullness" in day.figures for day in week.days)


def load_of(profile: AthleteProfile, week: PastWeekRead) -> tuple[tuple[int, ...], float]:
    """On which days out the load was, and how much it was in all, g, as set where that is known."""
    outs = plan_of_week(profile, week).load_days
    load = [day for day in week.days if (week.day - day.date).days in outs]
    return outs, sum(float(day.figures.get("carb_set_g", carbs_of(day) or 0.0)) for day in load)
