"""Holding an athlete at one figure for some days, and ending that."""

from __future__ import annotations

from datetime import date

from bot.messages import coach_figures as figures


def hold_button() -> str:
    return "Hold"


def ask_days(name: str, last: date, *, own: bool) -> str:
    whom = "yourself" if own else name
    return (
        f"For how many days shall I hold {whom} at one figure, today counted? The week ends on "
        f"{figures.day(last)}. Send a number or tap one."
    )


def days_button(days: int) -> str:
    return "Today" if days == 1 else f"{days} days"


def to_the_end_button(days: int) -> str:
    return f"To the day itself ({days})"


def days_range(most: int) -> str:
    return f"Please send a number of days between 1 and {most}."


def ask_carbs(days: int, last: date, stands_g: float) -> str:
    span = "today" if days == 1 else f"until {figures.day(last)}"
    return (
        f"At how many grams of carbs, {span}? {figures.grams(stands_g)} stands for today. "
        "What you set stays, whatever the check-ins say."
    )


def as_now_button(stands_g: float) -> str:
    return f"As now, {figures.grams(stands_g)}"


def held(name: str, carb_g: float, last: date, *, own: bool) -> str:
    who = "You are" if own else f"{name} is"
    return f"{who} held at {figures.grams(carb_g)} until {figures.day(last)}."


def running(name: str, carb_g: float, last: date, because: str, *, own: bool) -> str:
    why = f"\nWhy: {because}" if because else ""
    return f"{held(name, carb_g, last, own=own)}{why}\nEnd it, and the plan's figures hold again."


def end_button() -> str:
    return "End the hold"


def ended(name: str, *, own: bool) -> str:
    whose = "Your" if own else f"{name}'s"
    return f"The hold is ended. {whose} days follow the plan again, and the check-ins adjust them."


def nothing_held() -> str:
    return "Nothing is held."


def athlete_told_held(coach: str, carb_g: float, last: date) -> str:
    return (
        f"{coach} holds you at {figures.grams(carb_g)} of carbs until {figures.day(last)}. "
        "Please check in each morning as usual."
    )


def athlete_told_ended(coach: str) -> str:
    return f"{coach} has ended the hold: your days follow the plan and your check-ins again."
