"""Holding an athlete at one figure for some days, and ending that."""

from __future__ import annotations

from datetime import date

from bot.words import figures
from bot.words.languages import Sentence, SentenceOn, tr, tr_if, trn

hold_button = Sentence("Hold")
end_button = Sentence("End the hold")
nothing_held = Sentence("There is no hold.")


def ask_days(name: str, last: date, *, self_coached: bool) -> str:
    return tr_if(
        self_coached,
        "Hold the same carbs for how many days, counting today? The week ends on {last}. "
        "Tap one or send a number.",
        "Hold {name} at the same carbs for how many days, counting today? The week ends on "
        "{last}. Tap one or send a number.",
        name=name,
        last=figures.short_day(last),
    )


def days_button(days: int) -> str:
    return tr("Today") if days == 1 else trn("{number} day", "{number} days", days)


to_the_end_button = SentenceOn("To event day ({days})")
days_range = SentenceOn("Please send a number of days between 1 and {most}.")


def ask_carbs(days: int, last: date, default_carb_g: float) -> str:
    if days == 1:
        return tr(
            "How many grams of carbs, today? Now {stands}. What you set stays, whatever the "
            "check-ins say.",
            stands=figures.grams(default_carb_g),
        )
    return tr(
        "How many grams of carbs a day, until {last}? Today's are {stands}. What you set "
        "stays, whatever the check-ins say.",
        last=figures.short_day(last),
        stands=figures.grams(default_carb_g),
    )


as_now_button = SentenceOn("As now, {stands}", figures.grams)


def held(name: str, carb_g: float, last: date, *, self_coached: bool) -> str:
    return tr_if(
        self_coached,
        "Hold: you stay at {carb} until {last}.",
        "Hold: {name} stays at {carb} until {last}.",
        name=name,
        carb=figures.grams(carb_g),
        last=figures.short_day(last),
    )


def running(name: str, carb_g: float, last: date, because: str, *, self_coached: bool) -> str:
    why = "\n" + tr("Why: {because}", because=because) if because else ""
    then = tr("End the hold to go back to the plan.")
    return f"{held(name, carb_g, last, self_coached=self_coached)}{why}\n{then}"


def ended(name: str, *, self_coached: bool) -> str:
    if self_coached:
        return tr("Hold ended. Your plan counts again, and check-ins adjust it.")
    return tr("Hold ended. {name}'s plan counts again, and check-ins adjust it.", name=name)


not_begun = SentenceOn("You can hold from {day}, when the week starts.", figures.short_day)


def athlete_told_held(coach: str, carb_g: float, last: date) -> str:
    return tr(
        "{coach} has set a hold: eat {carb} of carbs every day until {last}. Please check in "
        "each morning as usual.",
        coach=coach,
        carb=figures.grams(carb_g),
        last=figures.short_day(last),
    )


athlete_told_ended = SentenceOn(
    "{coach} has ended the hold. From now on your plan counts again, and check-ins adjust it."
)
