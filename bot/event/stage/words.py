"""What athlete and coach read about the day itself, and the entries of its timetable."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, datetime
from typing import Any
from zoneinfo import ZoneInfo

from bot.words import figures
from bot.words.languages import Sentence, SentenceOn, SentenceOnTwo, mark, tr
from bot.words.names import word
from engine.evidence import staging as e
from engine.stage_day.stage_day import Entry, Kind


def clock(at: datetime, zone: str) -> str:
    return figures.clock_in(at, zone)


ENTRIES = {
    Kind.WAKE: mark("up; drink as usual"),
    Kind.LEAVE: mark("leave"),
    Kind.REGISTRATION: mark("registration"),
    Kind.TAN: mark("tan"),
    Kind.MEAL: mark("meal, familiar food, and a drink"),
    Kind.LAST_MEAL: mark("last meal before the stage, small and familiar, and a drink"),
    Kind.BITE: mark("a bite you know, and a drink"),
    Kind.DRINK: mark("drink a glass"),
    Kind.SIP: mark("a few sips of water"),
    Kind.SIPS: mark("from here sips, about {litres} up to the stage; thirsty: drink"),
    Kind.LOOK: mark("look check"),
    Kind.SUGAR: mark("quick sugar and a sip of water"),
    Kind.PUMP: mark("pump-up, about {minutes} min at half effort"),
    Kind.STAGE: mark("on stage"),
    Kind.AFTER: mark("eat, drink to thirst"),
}
#: What is done once more when the stage moves back.
ENTRIES_AGAIN = {
    Kind.SUGAR: mark("quick sugar again and a sip of water"),
    Kind.PUMP: mark("pump-up again, about {minutes} min at half effort"),
}
OF_A_CLASS = (Kind.LOOK, Kind.SIPS, Kind.SUGAR, Kind.PUMP, Kind.STAGE)


def line(entry: Entry, classes: int) -> str:
    """What an entry is, in a few words."""
    message = ENTRIES[entry.kind]
    if "+" in entry.key:
        message = ENTRIES_AGAIN.get(entry.kind, message)
    said = tr(message, litres=_sips(), minutes=_pump_minutes())
    if classes > 1 and entry.class_number and entry.kind is Kind.SIPS:
        return tr(
            "from here sips for class {number}, about {litres} up to the stage; thirsty: drink",
            number=entry.class_number, litres=_sips(),
        )  # fmt: skip
    if classes > 1 and entry.class_number and entry.kind in OF_A_CLASS:
        return tr("{what}, class {number}", what=said, number=entry.class_number)
    return said


def _sips() -> str:
    return f"{figures.plain(float(e.SIPS_L))} L"


def _glass() -> str:
    return f"{figures.plain(float(e.DRINK_L))} L"


def _pump_minutes() -> str:
    return figures.plain(float(e.PUMP_LENGTH_MIN))


REMINDERS = {
    Kind.WAKE: mark("It is the day. Drink as you usually do; the first meal comes soon."),
    Kind.LEAVE: mark("Time to leave. Food, water and salt as planned with you?"),
    Kind.REGISTRATION: mark("Registration now."),
    Kind.TAN: mark("Tan now."),
    Kind.MEAL: mark("A meal now, of what you know, and a drink with it."),
    Kind.LAST_MEAL: mark(
        "The last meal before the stage: small, only what you know, and drink with it."
    ),
    Kind.BITE: mark("Between your classes: eat a bite of what you know and drink a glass."),
    Kind.DRINK: mark("Drink a glass of water, about {glass}."),
    Kind.SIP: mark("Take a few sips of water. If you are thirsty, drink."),
    Kind.SIPS: mark(
        "From here sips: about {litres} up to the stage{of_class}. If you are thirsty, drink."
    ),
    Kind.SUGAR: mark(
        "Quick sugar now, if you have practised it: a mouthful or two{of_class}, and a sip of water."
    ),
    Kind.PUMP: mark(
        "Pump-up now{of_class}: about {minutes} min, half effort, far from failure. Dizzy or "
        "unwell: stop, sit down, tell somebody."
    ),
    Kind.STAGE: mark("On stage now{of_class}. Go well."),
}


def reminder(entry: Entry, classes: int, food: str) -> str:
    if entry.kind is Kind.LOOK:
        return ""
    if entry.kind is Kind.AFTER:
        return after()
    of_class = ""
    if classes > 1 and entry.class_number:
        of_class = " " + tr("(class {number})", number=entry.class_number)
    said = tr(
        REMINDERS[entry.kind], litres=_sips(), glass=_glass(), minutes=_pump_minutes(),
        of_class=of_class,
    )  # fmt: skip
    return said + food if entry.kind in (Kind.MEAL, Kind.LAST_MEAL) else said


def food_hint(portions: str) -> str:
    """After a sentence, with its space."""
    return " " + tr("On today's menu: {portions}.", portions=portions)


after = Sentence(
    "Done. Eat something ordinary, drink to thirst and not by the litre. Not a feast "
    "yet: much food at once after long restriction has put people in hospital. Weak "
    "or heavy limbs, palpitations, swelling, confusion, fainting: call the local "
    "emergency number."
)
menu = Sentence("The day itself: timetable and delays")
late_menu = Sentence("The day runs late: /late 45")

# Asking

ask_stage = SentenceOnTwo(
    "{day}: at what time on stage? By the clocks of {zone}; times before 04:00 count as "
    "the night after. Or tap if only the order of classes is known.",
    figures.long_day,
    str,
)
order_button = Sentence("Only the class order")
ask_show_start = Sentence("When does the first class go on?")
ask_class_number = Sentence("Which number in the order is the class? (1 goes first)")
ask_each = Sentence("About how many minutes does a class take?")
ask_second = Sentence("More classes? If so, at what time each? Such as 16:30, or 16:30 and 19:00.")
no_second_button = Sentence("One class only")
second_not_later = Sentence("Each class has to come after the one before. Please check the times.")
duty_not_before = Sentence(
    "That is not before the stage time. If it is on the day before, tap None; it "
    "does not shape this day."
)
ask_travel = Sentence("How long is the way there on the day, in minutes?")
ask_registration = Sentence("Registration or athletes' meeting on the day: at what time?")
ask_tan = Sentence("Tan on the day: at what time?")


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
        parts += [
            tr("class {number} {time}", number=number, time=time)
            for number, time in enumerate(answers["second"].split(), start=2)
        ]
    if "travel_min" in answers:
        parts.append(tr("way {minutes} min", minutes=figures.plain(answers["travel_min"])))
    if answers.get("registration"):
        parts.append(tr("registration {time}", time=answers["registration"]))
    if answers.get("tan"):
        parts.append(tr("tan {time}", time=answers["tan"]))
    return ", ".join(parts)


# The timetable


def timetable_head(name: str, zone: str, *, own: bool, home_zone: str | None) -> str:
    head = (
        tr("Your day, backwards from the stage.")
        if own
        else tr("{name}'s day, backwards from the stage.", name=name)
    )
    if home_zone not in (None, zone):
        head += " " + tr("Clocks of {zone}.", zone=zone)
    return head


def timetable(entries: Sequence[tuple[Entry, bool]], zone: str, classes: int) -> str:
    """`entries`: each with whether it is done."""
    days = {entry.at.astimezone(ZoneInfo(zone)).date() for entry, _ in entries}
    lines = []
    shown: date | None = None
    for entry, done in entries:
        local = entry.at.astimezone(ZoneInfo(zone)).date()
        if len(days) > 1 and local != shown:
            lines.append(f"{figures.long_day(local)}:")
            shown = local
        lines.append(f"{'✓ ' if done else ''}{clock(entry.at, zone)}  {line(entry, classes)}")
    return "\n".join(lines)


habits = Sentence(
    "Times are common practice, not science; food is what sat well before. Water is "
    "not cut: there is something to drink every hour, and thirst comes first."
)
which_athlete = Sentence("Which athlete's day?")
not_set = Sentence("The times of the day are not set yet.")
set_button = Sentence("Set the times")
change_button = Sentence("Change the times")
cancel_button = Sentence("Cancelled")
ask_cancel = Sentence("Is the stage really off for the day? Then no more reminders come.")
cancel_yes_button = Sentence("Yes, it is off")
cancel_no_button = Sentence("No, it stands")
is_cancelled = Sentence(
    "The stage is off, so the timetable and its reminders are off too. Eat and drink "
    "as usual; the targets of the day stand until the plan is changed."
)
how_late = Sentence("By how many minutes? Such as: late 45, or: early 20.")
day_not_here = Sentence(
    "There is no timetable running that could be moved later or earlier. /stage shows the day."
)
late_unset = Sentence(
    "The times of the day are not set, so a delay moves nothing yet. Set them by when your class is "
    "now expected, and I say when to eat and drink."
)
day_over = Sentence("The last class is over, so nothing is left to move.")


def moved(minutes: int, by: str, own: bool) -> str:
    values = {"minutes": abs(minutes), "by": by}
    if own:
        if minutes > 0:
            return tr("Moved {minutes} min later. The rest of the day now:", **values)
        return tr("Moved {minutes} min earlier. The rest of the day now:", **values)
    if minutes > 0:
        return tr("Moved {minutes} min later ({by} said so). The rest of the day now:", **values)
    return tr("Moved {minutes} min earlier ({by} said so). The rest of the day now:", **values)


times_are_now = Sentence("The times are changed. The day now:")
times_changed_by = SentenceOn("{by} has changed the times. The day now:")


def times_taken_back(by: str, *, own: bool) -> str:
    if own:
        return tr("You have taken back the last change of the day's times. They are again:")
    return tr(
        "A correction: {name} has taken back the last change of the day's times. They are again:",
        name=by,
    )


set_by_coach = SentenceOn("{coach} has set the times of your day.")
set_by_athlete = SentenceOn("{name} has set the times of the day.")


def no_event(own: bool) -> str:
    return (
        tr("Your coach sets the event first; then the day can be laid out.")
        if own
        else tr("Set the event first: the day is laid out from it.")
    )


late_button = SentenceOn("{minutes} min late")
early_button = SentenceOn("{minutes} min early")
on_stage_button = SentenceOn("On stage {times}", ", ".join)
perhaps_times = Sentence("Is that when you are on? Nothing is set by it yet.")
perhaps_times_of = SentenceOn("Is that when {name} is on? Nothing is set by it yet.")
perhaps_late = Sentence("Does that move the day? Nothing is moved yet.")
perhaps_late_of = SentenceOn("Does that move {name}'s day? Nothing is moved yet.")
coach_told_cancelled = SentenceOn("{name}'s stage is off, as just told. No more reminders go out.")

# The look

ask_fullness = Sentence("Look check. How full? 1 = completely flat, 10 = as full as you can get")
ask_sharpness = Sentence("How sharp are the lines? 1 = blurred, 5 = crisp")
ask_gut = Sentence("How is your stomach?")
no_top_up_button = Sentence("No top-up")
too_late_to_top_up = Sentence("It is too close to the stage for that now.")

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


look_waits = SentenceOn("I've asked {coach} about a small top-up. Until {coach} answers, leave it.")


def coach_look(name: str, fullness: int, sharpness: int, gut: str, said: str) -> str:
    return tr(
        "{name}'s look check: fullness {fullness}, sharpness {sharpness}, stomach {gut}. {said}",
        name=name,
        fullness=fullness,
        sharpness=sharpness,
        gut=word(gut),
        said=said,
    )


coach_asked = SentenceOn(
    "The rules would top up {grams} g of quick carbs, which is more than you auto-approve. "
    "Approve it?",
    figures.plain,
)


def top_up_told(name: str, grams: float) -> str:
    if grams:
        return tr(
            "I've told {name}: {grams} g of quick carbs.", name=name, grams=figures.plain(grams)
        )
    return tr("I've told {name}: no top-up.", name=name)


top_up_button = SentenceOn("Top up {grams} g", figures.plain)
approved = SentenceOnTwo(
    "{coach} says yes: {grams} g of quick carbs with the last meal, of what you know.",
    str,
    figures.plain,
)
declined = SentenceOn("{coach} says: no top-up.")
settled_by = SentenceOn("{name} has answered this.")
