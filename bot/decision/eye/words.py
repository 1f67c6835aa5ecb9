"""What coaches read around their own look at a morning, and athletes once it has moved a figure."""

from __future__ import annotations

from datetime import date

from bot.words import figures
from bot.words.languages import (
    Sentence,
    SentenceBy,
    SentenceCounted,
    SentenceOn,
    SentenceOnTwo,
    mark,
    tr,
)
from bot.words.names import seen, seen_look
from engine.planning.behind.ratings import Apart
from engine.values.checkin import CoachLook

#: Why a look does not move the figure of the day any more.
eye_button = Sentence("What I see")
sharpness_if_you_like = Sentence("Sharpness too, if you like: 1 is blurred, 5 is crisp.")
decided_nothing = Sentence("Decided again; no figure follows from it.")
taken_back = Sentence("Taken back.")
nothing_to_take_back = Sentence("There is no look of yours on that morning.")
no_such_morning = Sentence("That morning is still to come, or too long ago.")
not_on_yourself = Sentence(
    "That is for a second pair of eyes. Your own look goes into your check-in."
)


def look_button(look: CoachLook, *, chosen: bool) -> str:
    label = figures.sentence(seen_look(look)).rstrip(".")
    return f"✓ {label}" if chosen else label


def sharpness_button(score: int, *, chosen: bool) -> str:
    return f"✓ {score}" if chosen else str(score)


head = SentenceOnTwo("{name}, {day}: what do you see?")


def their_answers(name: str, line: str, expected: int | None) -> str:
    if expected is None:
        return tr("{name} says: {answers}", name=name, answers=line)
    return tr(
        "{name} says: {answers} (fullness {expected} expected)",
        name=name, answers=line, expected=expected,
    )  # fmt: skip


no_answers = SentenceOn("{name} hasn't answered that morning.")


def you_said(look: str, sharpness: int | None, at: str) -> str:
    return tr("You see: {look} · {at}", look=seen(look, sharpness), at=at)


def other_said(who: str, look: str, sharpness: int | None, at: str) -> str:
    return tr("{who} sees: {look} · {at}", who=who, look=seen(look, sharpness), at=at)


not_open = SentenceBy(
    {
        "no-answers": mark(
            "Nothing is decided for this morning yet; it counts once the answers are in."
        ),
        "past": mark("That day is set; it counts from the next decision on."),
        "by-hand": mark(
            "A coach has set that day's figure, so it stays; the look counts from the next decision."
        ),
        "frozen": mark("Adjusting is frozen; the look counts once you lift that."),
        "late": mark(
            "It is too late to change that day, so the figure stays; the look counts from the next "
            "decision. If it can't wait, set the day by hand."
        ),
        "no-plan": mark("There is no plan to decide on yet; the look is saved."),
    }
)


def moved(before_g: float, after_g: float, day: date) -> str:
    return tr(
        "Decided again for {day}: {before} → {after}.",
        day=figures.short_day(day), before=figures.grams(before_g), after=figures.grams(after_g),
    )  # fmt: skip


def stays(grams: float, day: date) -> str:
    return tr(
        "Decided again for {day}: {figure}, as before.",
        day=figures.short_day(day),
        figure=figures.grams(grams),
    )


def proposed(grams: float, default_carb_g: float, day: date) -> str:
    return tr(
        "Decided again for {day}: {figure} is proposed and waits for you; until then {stands} stands.",
        day=figures.short_day(day), figure=figures.grams(grams), stands=figures.grams(default_carb_g),
    )  # fmt: skip


under_photos = SentenceOnTwo("What do you see on {name}'s photos, {day}?")

under_photos_of = SentenceCounted(
    "Photos of {number} athlete came this morning. A name shows what to tap for what you see.",
    "Photos of {number} athletes came this morning. A name shows what to tap for what you see.",
)


def sees(who: str, look: str, sharpness: int | None) -> str:
    """A look on the card, inside a line."""
    return tr("{who} sees: {look}", who=who, look=seen(look, sharpness))


def fullness_compared(name: str, apart: Apart) -> str:
    """How the athlete's own fullness compares with the coach's eye; from a handful of mornings on."""
    rests = _rests_on(apart.mornings)
    if not apart.worth_a_word:
        return tr("{name} rates fullness about as you do ({rests}).", name=name, rests=rests)
    grades = figures.number(abs(apart.grades), 1)
    if apart.grades < 0:
        return tr(
            "{name} rates fullness {grades} grades flatter than you do ({rests}).",
            name=name, grades=grades, rests=rests,
        )  # fmt: skip
    return tr(
        "{name} rates fullness {grades} grades fuller than you do ({rests}).",
        name=name, grades=grades, rests=rests,
    )  # fmt: skip


def sharpness_compared(name: str, apart: Apart) -> str:
    rests = _rests_on(apart.mornings)
    if not apart.worth_a_word:
        return tr("{name} rates sharpness about as you do ({rests}).", name=name, rests=rests)
    grades = figures.number(abs(apart.grades), 1)
    if apart.grades < 0:
        return tr(
            "{name} rates sharpness {grades} grades softer than you do ({rests}).",
            name=name, grades=grades, rests=rests,
        )  # fmt: skip
    return tr(
        "{name} rates sharpness {grades} grades crisper than you do ({rests}).",
        name=name, grades=grades, rests=rests,
    )  # fmt: skip


_rests_on = SentenceCounted("{number} morning with both", "{number} mornings with both")

# Before the new target, for the athlete.
athlete_lead = SentenceOn("{coach} has looked at this morning. Today's target is now:")
