"""The entries of the day's timetable: in a few words, and as the reminder when each falls due."""

from __future__ import annotations

from datetime import datetime

from bot.words import figures
from bot.words.languages import Sentence, mark, tr
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
