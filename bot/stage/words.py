"""What athlete and coach read about the day itself."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from typing import Any
from zoneinfo import ZoneInfo

from bot.stage.words_entries import clock, line
from bot.words import figures
from bot.words.languages import mark, tr
from bot.words.names import word
from engine.stage_day.stage_day import Entry


def menu() -> str:
    return tr("The day itself: timetable and delays")


def late_menu() -> str:
    return tr("The day runs late: /late 45")


# Asking


def ask_stage(day: date, zone: str) -> str:
    return tr(
        "{day}: at what time on stage? By the clocks of {zone}; times before 04:00 count as "
        "the night after. Or tap if only the order of classes is known.",
        day=figures.long_day(day),
        zone=zone,
    )


def order_button() -> str:
    return tr("Only the class order")


def ask_show_start() -> str:
    return tr("When does the first class go on?")


def ask_class_number() -> str:
    return tr("Which number in the order is the class? (1 goes first)")


def ask_each() -> str:
    return tr("About how many minutes does a class take?")


def ask_second() -> str:
    return tr("A second class? If so, at what time?")


def no_second_button() -> str:
    return tr("One class only")


def second_not_later() -> str:
    return tr("The second class has to come after the first. Please check the times.")


def duty_not_before() -> str:
    return tr(
        "That is not before the stage time. If it is on the day before, tap None; it "
        "does not shape this day."
    )


def ask_travel() -> str:
    return tr("How long is the way there on the day, in minutes?")


def ask_registration() -> str:
    return tr("Registration or athletes' meeting on the day: at what time?")


def ask_tan() -> str:
    return tr("Tan on the day: at what time?")


def none_button() -> str:
    return tr("None")


def so_far(answers: Mapping[str, Any]) -> str:
    parts = [
        tr("On stage: by class order")
        if answers["stage"] == "order"
        else tr("On stage: {time}", time=answers["stage"])
    ]
    if answers.get("show_start"):
        parts.append(tr("first class {time}", time=answers["show_start"]))
    if answers.get("number"):
        parts.append(tr("number {number}", number=answers["number"]))
    if answers.get("second"):
        parts.append(tr("second class {time}", time=answers["second"]))
    if "travel_min" in answers:
        parts.append(tr("way {minutes} min", minutes=figures.plain(answers["travel_min"])))
    if answers.get("registration"):
        parts.append(tr("registration {time}", time=answers["registration"]))
    if answers.get("tan"):
        parts.append(tr("tan {time}", time=answers["tan"]))
    return ", ".join(parts)


# The timetable


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
    head = (
        tr("Your day, backwards from the stage.")
        if own
        else tr("{name}'s day, backwards from the stage.", name=name)
    )
    if home_zone not in (None, zone):
        head += " " + tr("Clocks of {zone}.", zone=zone)
    days = {entry.at.astimezone(ZoneInfo(zone)).date() for entry, _ in entries}
    lines = []
    shown: date | None = None
    for entry, done in entries:
        local = entry.at.astimezone(ZoneInfo(zone)).date()
        if len(days) > 1 and local != shown:
            lines.append(f"{figures.long_day(local)}:")
            shown = local
        lines.append(f"{'✓ ' if done else ''}{clock(entry.at, zone)}  {line(entry, classes)}")
    return f"{head}\n\n" + "\n".join(lines)


def habits() -> str:
    return tr(
        "Times are common practice, not science; food is what sat well before. Water is "
        "not cut: there is something to drink every hour, and thirst comes first."
    )


def moved(minutes: int, by: str, own: bool) -> str:
    values = {"minutes": abs(minutes), "by": by}
    if own:
        if minutes > 0:
            return tr("Moved {minutes} min later. The rest of the day now:", **values)
        return tr("Moved {minutes} min earlier. The rest of the day now:", **values)
    if minutes > 0:
        return tr("Moved {minutes} min later ({by} said so). The rest of the day now:", **values)
    return tr("Moved {minutes} min earlier ({by} said so). The rest of the day now:", **values)


def times_taken_back(by: str, *, own: bool) -> str:
    if own:
        return tr("You have taken back the last change of the day's times. They are again:")
    return tr(
        "A correction: {name} has taken back the last change of the day's times. They are again:",
        name=by,
    )


def set_by_coach(coach: str) -> str:
    return tr("{coach} has set the times of your day.", coach=coach)


def set_by_athlete(name: str) -> str:
    return tr("{name} has set the times of the day.", name=name)


def no_event(own: bool) -> str:
    return (
        tr("Your coach sets the event first; then the day can be laid out.")
        if own
        else tr("Set the event first: the day is laid out from it.")
    )


def which_athlete() -> str:
    return tr("Which athlete's day?")


def nobody() -> str:
    return tr("None of your athletes has an event ahead.")


def not_set() -> str:
    return tr("The times of the day are not set yet.")


def set_button() -> str:
    return tr("Set the times")


def change_button() -> str:
    return tr("Change the times")


def late_button(minutes: int) -> str:
    return tr("{minutes} min late", minutes=minutes)


def early_button(minutes: int) -> str:
    return tr("{minutes} min early", minutes=minutes)


def cancel_button() -> str:
    return tr("Cancelled")


def ask_cancel() -> str:
    return tr("Is the stage really off for the day? Then no more reminders come.")


def cancel_yes_button() -> str:
    return tr("Yes, it is off")


def cancel_no_button() -> str:
    return tr("No, it stands")


def is_cancelled() -> str:
    return tr(
        "The stage is off, so the timetable and its reminders are off too. Eat and drink "
        "as usual; the targets of the day stand until the plan is changed."
    )


def coach_told_cancelled(name: str) -> str:
    return tr("{name}'s stage is off, as just told. No more reminders go out.", name=name)


def how_late() -> str:
    return tr("By how many minutes? Such as: late 45, or: early 20.")


def day_not_here() -> str:
    return tr("There is no timetable running that this could move. /stage shows the day.")


def day_over() -> str:
    return tr("The last class is over, so nothing is left to move.")


# The look


def ask_fullness() -> str:
    return tr("Look check. How full? 1 = completely flat, 10 = as full as you can get")


def ask_sharpness() -> str:
    return tr("How sharp are the lines? 1 = blurred, 5 = crisp")


def ask_gut() -> str:
    return tr("And the gut?")


LOOKS = {
    "gut-unsettled": mark("No top-up: with an unsettled gut more food can only make it worse."),
    "blurred": mark("No top-up: lines that have softened only soften more."),
    "full": mark("No extra carbs. You're full; leave it."),
    "good-enough": mark("No top-up: this is good. Leave it."),
    "flat-no-room": mark("No top-up: the limits leave no room for one."),
}


def look_result(rule: str, grams: float) -> str:
    if rule in LOOKS:
        return tr(LOOKS[rule])
    return tr(
        "A small top-up: {grams} g of quick carbs with the last meal, of what you know. "
        "(Flat and sharp: common practice.)",
        grams=figures.plain(grams),
    )


def look_waits(coach: str) -> str:
    return tr(
        "I've asked {coach} about a small top-up. Without word from them, leave it.", coach=coach
    )


def coach_look(name: str, fullness: int, sharpness: int, gut: str, said: str) -> str:
    return tr(
        "{name}'s look check: fullness {fullness}, sharpness {sharpness}, stomach {gut}. {said}",
        name=name,
        fullness=fullness,
        sharpness=sharpness,
        gut=word(gut),
        said=said,
    )


def coach_asked(grams: float) -> str:
    return tr(
        "The rules would top up {grams} g of quick carbs, which is more than you let go "
        "out without asking. Shall they?",
        grams=figures.plain(grams),
    )


def top_up_button(grams: float) -> str:
    return tr("Top up {grams} g", grams=figures.plain(grams))


def no_top_up_button() -> str:
    return tr("No top-up")


def approved(coach: str, grams: float) -> str:
    return tr(
        "{coach} says yes: {grams} g of quick carbs with the last meal, of what you know.",
        coach=coach,
        grams=figures.plain(grams),
    )


def declined(coach: str) -> str:
    return tr("{coach} says: no top-up.", coach=coach)


def top_up_told() -> str:
    return tr("I've told them.")


def too_late_to_top_up() -> str:
    return tr("It is too close to the stage for that now.")


def settled() -> str:
    return tr("That is settled already.")


def settled_by(name: str) -> str:
    return tr("{name} has answered this.", name=name)
