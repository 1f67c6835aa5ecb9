"""What stands on a page to hand over."""

from __future__ import annotations

from bot.debrief.words import WHY
from bot.words import coach_figures as figures
from bot.words.languages import tr
from engine.planning.debrief import DayBehind


def caption(name: str) -> str:
    return tr(
        "{name}'s week on one page, without your own note. It holds health data: keep it safe.",
        name=name,
    )


def own_caption() -> str:
    return tr("Your week on one page. It holds health data: keep it safe.")


def under_title(name: str, coach: str) -> str:
    if name == coach:
        return tr("Athlete and coach: {name}", name=name)
    return tr("Athlete: {name}. Coach: {coach}.", name=name, coach=coach)


def days_heading() -> str:
    return tr("Day by day, carbs in g")


def in_sum_heading() -> str:
    return tr("Looking back")


def columns() -> tuple[str, ...]:
    return (
        tr("Day"),
        tr("Planned"),
        tr("Set"),
        tr("Eaten"),
        tr("Weight"),
        tr("Full"),
        tr("Sharp"),
        tr("Why changed"),
    )


def day_row(day: DayBehind, why: str, weight_unit: str) -> tuple[str, ...]:
    told = day.morning
    weight, full, sharp = (
        (None, None, None) if told is None else (told.weight_kg, told.fullness, told.sharpness)
    )
    return (
        figures.days_out(day.days_out),
        figures.number(day.target.carb_g),
        figures.number(day.set_g),
        _or_dash(None if day.eaten_g is None else figures.number(day.eaten_g)),
        _or_dash(None if weight is None else figures.weight(weight, weight_unit)),
        _or_dash(None if full is None else figures.plain(full)),
        _or_dash(None if sharp is None else figures.plain(sharp)),
        tr(WHY[why]) if why in WHY else why.replace("-", " "),
    )


def _or_dash(said: str | None) -> str:
    return "–" if said is None else said


def caution() -> str:
    return tr(
        "Carbs in g a day. Full of 10, sharp of 5, on that day's morning. This is a record, not "
        "medical advice; what a doctor or dietitian says comes first."
    )
