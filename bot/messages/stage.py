"""What athlete and coach read about the day itself."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, datetime
from typing import Any
from zoneinfo import ZoneInfo

from bot.messages.athlete import day_name
from engine.evidence import staging as e
from engine.stage_day import Entry, Kind


def menu() -> str:
    return "The day itself: timetable and delays"


def late_menu() -> str:
    return "The day runs late: /late 45"


def clock(at: datetime, zone: str) -> str:
    return f"{at.astimezone(ZoneInfo(zone)):%H:%M}"


# Asking


def ask_stage(day: date, zone: str) -> str:
    return (
        f"{day_name(day)}: at what time on stage? By the clocks of {zone}; times before 04:00 count as "
        "the night after. Or tap if only the order of classes is known."
    )


def order_button() -> str:
    return "Only the class order"


def ask_show_start() -> str:
    return "When does the first class go on?"


def ask_class_number() -> str:
    return "Which number in the order is the class? (1 goes first)"


def ask_each() -> str:
    return "About how many minutes does a class take?"


def ask_second() -> str:
    return "A second class? If so, at what time?"


def no_second_button() -> str:
    return "One class only"


def second_not_later() -> str:
    return "The second class has to come after the first. Please check the times."


def duty_not_before() -> str:
    return (
        "That is not before the stage time. If it is on the day before, tap None; it does not shape "
        "this day."
    )


def ask_travel() -> str:
    return "How long is the way there on the day, in minutes?"


def ask_registration() -> str:
    return "Registration or athletes' meeting on the day: at what time?"


def ask_tan() -> str:
    return "A coat of tan on the day: at what time?"


def none_button() -> str:
    return "None"


def so_far(answers: Mapping[str, Any]) -> str:
    stage = "by class order" if answers["stage"] == "order" else answers["stage"]
    parts = [f"On stage: {stage}"]
    if answers.get("show_start"):
        parts.append(f"first class {answers['show_start']}")
    if answers.get("number"):
        parts.append(f"number {answers['number']}")
    if answers.get("second"):
        parts.append(f"second class {answers['second']}")
    if "travel_min" in answers:
        parts.append(f"way {answers['travel_min']:g} min")
    if answers.get("registration"):
        parts.append(f"registration {answers['registration']}")
    if answers.get("tan"):
        parts.append(f"tan {answers['tan']}")
    return ", ".join(parts)


# The timetable


def line(entry: Entry, classes: int) -> str:
    """What an entry is, in a few words."""
    number = f", class {entry.class_number}" if classes > 1 and entry.class_number else ""
    again = " again" if "+" in entry.key else ""
    return {
        Kind.WAKE: "up; drink as usual",
        Kind.LEAVE: "leave",
        Kind.REGISTRATION: "registration",
        Kind.TAN: "tan",
        Kind.MEAL: "meal, familiar food",
        Kind.LAST_MEAL: "last meal before the stage, small and familiar",
        Kind.SIPS: f"from here sips, about {float(e.SIPS_L):g} L up to the stage",
        Kind.LOOK: f"look check{number}",
        Kind.SUGAR: f"quick sugar{again}{number}",
        Kind.PUMP: f"pump-up{again}, about {float(e.PUMP_LENGTH_MIN):g} min at half effort{number}",
        Kind.STAGE: f"on stage{number}",
        Kind.AFTER: "eat, drink to thirst",
    }[entry.kind]


def timetable(
    name: str,
    entries: Sequence[tuple[Entry, bool]],
    zone: str,
    classes: int,
    *,
    own: bool,
    home_zone: str | None = None,
) -> str:
    """`entries`: each with whether it is done."""
    whose = "Your day" if own else f"{name}'s day"
    days = {entry.at.astimezone(ZoneInfo(zone)).date() for entry, _ in entries}
    lines = []
    shown: date | None = None
    for entry, done in entries:
        local = entry.at.astimezone(ZoneInfo(zone)).date()
        if len(days) > 1 and local != shown:
            lines.append(f"{day_name(local)}:")
            shown = local
        lines.append(f"{'✓ ' if done else ''}{clock(entry.at, zone)}  {line(entry, classes)}")
    note = f" Clocks of {zone}." if home_zone not in (None, zone) else ""
    return f"{whose}, backwards from the stage.{note}\n\n" + "\n".join(lines)


def habits() -> str:
    return (
        "Times are common practice, not science; food is what sat well before. Water is not cut: as "
        "usual until the sips."
    )


def moved(minutes: int, by: str, own: bool) -> str:
    way = f"{abs(minutes)} min {'later' if minutes > 0 else 'earlier'}"
    who = "" if own else f" ({by} said so)"
    return f"Moved {way}{who}. The rest of the day anew:"


def set_by_coach(coach: str) -> str:
    return f"{coach} has set the times of your day."


def set_by_athlete(name: str) -> str:
    return f"{name} has set the times of the day."


def no_event(own: bool) -> str:
    return (
        "Your coach sets the event first; then the day can be laid out."
        if own
        else "Set the event first: the day is laid out from it."
    )


def which_athlete() -> str:
    return "Whose day?"


def nobody() -> str:
    return "None of your athletes has an event ahead."


def not_set() -> str:
    return "The times of the day are not set yet."


def set_button() -> str:
    return "Set the times"


def change_button() -> str:
    return "Change the times"


def late_button(minutes: int) -> str:
    return f"{minutes} min late"


def early_button(minutes: int) -> str:
    return f"{minutes} min early"


def cancel_button() -> str:
    return "Cancelled"


def ask_cancel() -> str:
    return "Is the stage really off for the day? Then no more reminders come."


def cancel_yes_button() -> str:
    return "Yes, it is off"


def cancel_no_button() -> str:
    return "No, it stands"


def is_cancelled() -> str:
    return (
        "The stage is off, so the timetable and its reminders are off too. Eat and drink as usual; the "
        "targets of the day stand until your coach changes them."
    )


def coach_told_cancelled(name: str) -> str:
    return f"{name}'s stage is off, as just told. No more reminders go out."


def how_late() -> str:
    return "By how many minutes? Such as: late 45, or: early 20."


def day_not_here() -> str:
    return "There is no timetable running that this could move. /stage shows the day."


def day_over() -> str:
    return "The last class is over, so nothing is left to move."


def stage_button(name: str) -> str:
    return name


# Reminders


def reminder(entry: Entry, classes: int, zone: str, food: str) -> str:
    number = f" (class {entry.class_number})" if classes > 1 and entry.class_number else ""
    return {
        Kind.WAKE: "Good morning. It is the day. Drink as you usually do; the first meal comes soon.",
        Kind.LEAVE: "Time to leave. Food, water and salt as planned with you?",
        Kind.REGISTRATION: "Registration now.",
        Kind.TAN: "Tan now.",
        Kind.MEAL: f"A meal now, of what you know.{food}",
        Kind.LAST_MEAL: f"The last meal before the stage: small, and only what you know.{food}",
        Kind.SIPS: (
            f"From here sips: about {float(e.SIPS_L):g} L up to the stage. If you are thirsty, drink."
        ),
        Kind.LOOK: "",
        Kind.SUGAR: f"Quick sugar now, if you have practised it: a mouthful or two{number}.",
        Kind.PUMP: (
            f"Pump-up now{number}: about {float(e.PUMP_LENGTH_MIN):g} min, half effort, far from "
            "failure. Dizzy or unwell: stop, sit down, tell somebody."
        ),
        Kind.STAGE: f"On stage now{number}. Go well.",
        Kind.AFTER: after(),
    }[entry.kind]


def food_hint(portions: str) -> str:
    return f" On today's menu: {portions}."


def after() -> str:
    return (
        "Done. Eat something ordinary, drink to thirst and not by the litre. Not a feast yet: much "
        "food at once after long restriction has put people in hospital. Weak or heavy limbs, "
        "palpitations, swelling, confusion, fainting: call the local emergency number."
    )


# The look


def ask_fullness() -> str:
    return "Look check. How full, 1 (flat) to 10 (can't get fuller)?"


def ask_sharpness() -> str:
    return "How sharp, 1 (blurred) to 5 (crisp)?"


def ask_gut() -> str:
    return "And the gut?"


LOOKS = {
    "gut-unsettled": "No top-up: with an unsettled gut more food can only make it worse.",
    "blurred": "No top-up: lines that have softened only soften more.",
    "full": "No top-up: full is full. Don't chase.",
    "good-enough": "No top-up: this is good. Leave it.",
    "flat-no-room": "No top-up: your coach has left no room for one.",
}


def look_result(rule: str, grams: float) -> str:
    if rule in LOOKS:
        return LOOKS[rule]
    return (
        f"A small top-up: {grams:g} g of quick carbs with the last meal, of what you know. (Flat and "
        "sharp: common practice.)"
    )


def look_waits(coach: str) -> str:
    return f"I've asked {coach} about a small top-up. Without word from them, leave it."


def coach_look(name: str, fullness: int, sharpness: int, gut: str, said: str) -> str:
    return f"{name}'s look check: fullness {fullness}, sharpness {sharpness}, gut {gut}. {said}"


def coach_asked(grams: float) -> str:
    return (
        f"The rules would top up {grams:g} g of quick carbs, which is more than you let go out without "
        "asking. Shall they?"
    )


def top_up_button(grams: float) -> str:
    return f"Top up {grams:g} g"


def no_top_up_button() -> str:
    return "No top-up"


def approved(coach: str, grams: float) -> str:
    return f"{coach} says yes: {grams:g} g of quick carbs with the last meal, of what you know."


def declined(coach: str) -> str:
    return f"{coach} says: no top-up."


def top_up_told() -> str:
    return "Passed on."


def too_late_to_top_up() -> str:
    return "It is too close to the stage for that now."


def settled() -> str:
    return "That is settled already."
