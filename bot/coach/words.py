"""What a coach reads of their athletes: the roster, one athlete's card and its pages, messages."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from bot.words import figures
from bot.words.languages import (
    Sentence,
    SentenceAbout,
    SentenceBy,
    SentenceOn,
    SentenceOnTwo,
    mark,
    tr,
    trn,
)
from bot.words.names import LIMIT_WORDS, flag_name, word

LONGEST_NOTE = 200  # characters of an earlier note on a card

roster_menu = Sentence("Your athletes, who needs you first")


# The card


def card(name: str, lines: Sequence[str]) -> str:
    return "\n".join([name, *lines])


no_event = Sentence("No event yet")
plan_button = Sentence("Plan")
why_button = Sentence("Why")
answers_button = Sentence("First answers")
hand_button = Sentence("Set a day by hand")
freeze_button = Sentence("Freeze")
doctor_button = Sentence("Doctor's clearance received")
roster_button = Sentence("Roster")
which_day = Sentence(
    "Which day? What you set by hand stays, whatever the check-in says, until you change "
    "it or change that day in the plan."
)
doctor_yes_button = Sentence("Yes, a doctor has")
doctor_not_waiting = Sentence("No doctor's clearance is needed right now.")


def card_today(day: date, carb_g: float, water: str, phase: str) -> str:
    """`phase`: what the plan has the day for; "" where that needs no word."""
    line = tr(
        "Today, {day}: {carb} carbs, water {water}",
        day=figures.short_day(day),
        carb=figures.grams(carb_g),
        water=water,
    )
    return f"{line} ({phase})" if phase else line


card_morning = SentenceOn("This morning: {numbers}")


def card_also_told(
    symptoms: Sequence[str], gut: str | None, sleep_h: float | None, note: str
) -> str:
    """What came beside the morning's numbers; "" where there was nothing."""
    parts = [
        ", ".join(symptoms),
        tr("gut {gut}", gut=word(gut)) if gut not in (None, "fine") else "",
        tr("slept {hours} h", hours=figures.plain(sleep_h)) if sleep_h is not None else "",
        f'"{note}"' if note else "",
    ]
    told = "; ".join(part for part in parts if part)
    return tr("Also reported today: {told}", told=told) if told else ""


def card_asked(at: str, zone: str, *, always_tomorrow: bool) -> str:
    if always_tomorrow:
        return tr("Check-in {at} ({zone}), sets tomorrow's carbs", at=at, zone=zone)
    return tr("Check-in {at} ({zone}), sets today's carbs", at=at, zone=zone)


def card_alert(level: str, flag: str, since: str) -> str:
    return tr(
        "Open since {when}: {level} ({what})", when=since, level=word(level), what=flag_name(flag)
    )


def card_waiting(carb_g: float, day: date, until: str, *, self_coached: bool) -> str:
    said = {"clock": until, "grams": figures.grams(carb_g), "day": figures.short_day(day)}
    if self_coached:
        return tr("Waits for your approval until {clock}: {grams} for {day}", **said)
    return tr("Waits for approval until {clock}: {grams} for {day}", **said)


card_frozen = SentenceOn("Frozen since {when}")


def card_limit(key: str, value: float, volume_unit: str) -> str:
    """ "carb floor 135 g"."""
    return f"{tr(LIMIT_WORDS[key])} {figures.limit(key, value, volume_unit)}"


card_limits = SentenceOn("Limits: {limits}")


def card_note(day: date, note: str) -> str:
    said = note if len(note) <= LONGEST_NOTE else f"{note[: LONGEST_NOTE - 1]}…"
    return tr('Last note, {day}: "{note}"', day=figures.short_day(day), note=said)


def card_pictures(day: date, mornings: int) -> str:
    return trn(
        "Last photos: {day} ({number} morning in all)",
        "Last photos: {day} ({number} mornings in all)",
        mornings,
        day=figures.short_day(day),
    )


def card_contacts(coach: str, beside: str, contact: str) -> str:
    """`beside` and `contact` are "" where there is nobody."""
    told = contact or tr("nobody yet")
    if beside:
        return tr(
            "Coach: {coach}. Second coach: {names}. Second contact: {contact}",
            coach=coach, names=beside, contact=told,
        )  # fmt: skip
    return tr("Coach: {coach}. Second contact: {contact}", coach=coach, contact=told)


def card_acknowledge_button(level: str, flag: str) -> str:
    return tr("Acknowledge: {level} ({what})", level=word(level), what=flag_name(flag))


message_button = SentenceOn("Write to {name}")


def tomorrow_button(*, always_tomorrow: bool) -> str:
    return tr("Use check-in for today") if always_tomorrow else tr("Use check-in for tomorrow")


nothing_decided_yet = SentenceAbout(
    "Nothing has been decided for you yet.", "Nothing is decided for {name} yet."
)


def why_as_seen(name: str, text: str, *, self_coached: bool) -> str:
    return (
        text
        if self_coached
        else tr("As {name} sees it under /why:\n\n{text}", name=name, text=text)
    )


answers_as_given = SentenceOnTwo("{name}'s first answers:\n\n{lines}")


def always_tomorrow_changed(*, always_tomorrow: bool) -> str:
    return (
        tr("From the next check-in on, each check-in sets the next day's carbs.")
        if always_tomorrow
        else tr("From the next check-in on, each check-in sets the same day's carbs.")
    )


doctor_sure = SentenceAbout(
    "Has a doctor who knows the plan said that you may do this peak week? I save that "
    "you said so, and when.",
    "Has a doctor who knows the plan said that {name} may do this peak week? I save that "
    "you said so, and when.",
)
doctor_noted = SentenceAbout("Saved. Check-ins can begin.", "Saved. {name}'s check-ins can begin.")
athlete_told_doctor = SentenceOn(
    "{coach} told me that a doctor has cleared you for this peak week, so check-ins can "
    "begin. If that is not true, don't start, and tell your coach."
)

# Messages from one to the other

# Somebody who cannot be reached

athlete_unreachable = SentenceOn(
    "I can't reach {name} any more: they have stopped the bot or left, so they get no "
    "questions or targets. Please call them. To come back, they open this chat and tap "
    "Start."
)
contact_unreachable = SentenceOn(
    "I can't reach {name}, your second contact, any more. If you miss an alert, nobody "
    "else is told. Use /contact to invite somebody else."
)
coach_unreachable = SentenceOn(
    "I can't reach {coach} here any more. Until {coach} is back, alerts about their "
    "athletes come to you at once. Please tell them."
)

PAGES = {"plan": mark("Plan …"), "event": mark("Event …"), "person": mark("Person …")}
_WHAT = {
    "plan": mark("{name}: plan, limits, and how the figures come about."),
    "event": mark("{name}: events, the event day, and what came of it."),
    "person": mark("{name}: answers, earlier weeks, and who coaches."),
}
_OWN = {
    "plan": mark("Your plan and limits, and how the figures come about."),
    "event": mark("Your events, the event day, and what came of it."),
    "person": mark("Your answers, earlier weeks, and who coaches."),
}

page_button = SentenceBy(PAGES)


def head(name: str, key: str, *, self_coached: bool) -> str:
    return tr(_OWN[key]) if self_coached else tr(_WHAT[key], name=figures.capital(name))
