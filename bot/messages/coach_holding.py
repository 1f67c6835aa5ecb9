"""Holding an athlete at one figure for some days, and ending that."""

from __future__ import annotations

from datetime import date

from bot.languages import tr, trn
from bot.messages import coach_figures as figures


def hold_button() -> str:
    return tr("Hold")


def ask_days(name: str, last: date, *, own: bool) -> str:
    if own:
        return tr(
            "For how many days shall I hold you at one figure, today counted? The week ends on "
            "{last}. Send a number or tap one.",
            last=figures.day(last),
        )
    return tr(
        "For how many days shall I hold {name} at one figure, today counted? The week ends on "
        "{last}. Send a number or tap one.",
        name=name,
        last=figures.day(last),
    )


def days_button(days: int) -> str:
    return tr("Today") if days == 1 else trn("{number} day", "{number} days", days)


def to_the_end_button(days: int) -> str:
    return tr("To the day itself ({days})", days=days)


def days_range(most: int) -> str:
    return tr("Please send a number of days between 1 and {most}.", most=most)


def ask_carbs(days: int, last: date, stands_g: float) -> str:
    if days == 1:
        return tr(
            "At how many grams of carbs, today? {stands} stands for today. What you set "
            "stays, whatever the check-ins say.",
            stands=figures.grams(stands_g),
        )
    return tr(
        "At how many grams of carbs, until {last}? {stands} stands for today. What you "
        "set stays, whatever the check-ins say.",
        last=figures.day(last),
        stands=figures.grams(stands_g),
    )


def as_now_button(stands_g: float) -> str:
    return tr("As now, {stands}", stands=figures.grams(stands_g))


def held(name: str, carb_g: float, last: date, *, own: bool) -> str:
    if own:
        return tr(
            "You are held at {carb} until {last}.",
            carb=figures.grams(carb_g),
            last=figures.day(last),
        )
    return tr(
        "{name} is held at {carb} until {last}.",
        name=name,
        carb=figures.grams(carb_g),
        last=figures.day(last),
    )


def running(name: str, carb_g: float, last: date, because: str, *, own: bool) -> str:
    why = "\n" + tr("Why: {because}", because=because) if because else ""
    then = tr("End it, and the plan's figures hold again.")
    return f"{held(name, carb_g, last, own=own)}{why}\n{then}"


def end_button() -> str:
    return tr("End the hold")


def ended(name: str, *, own: bool) -> str:
    if own:
        return tr(
            "The hold is ended. Your days follow the plan again, and the check-ins adjust them.",
        )
    return tr(
        "The hold is ended. {name}'s days follow the plan again, and the check-ins adjust them.",
        name=name,
    )


def nothing_held() -> str:
    return tr("Nothing is held.")


def athlete_told_held(coach: str, carb_g: float, last: date) -> str:
    return tr(
        "{coach} holds you at {carb} of carbs until {last}. Please check in each morning as usual.",
        coach=coach,
        carb=figures.grams(carb_g),
        last=figures.day(last),
    )


def athlete_told_ended(coach: str) -> str:
    return tr(
        "{coach} has ended the hold: your days follow the plan and your check-ins again.",
        coach=coach,
    )
