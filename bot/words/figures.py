"""Numbers, days, clock times and lists as they are written in the language in force.

Signs of numbers and names of days come from the CLDR (through Babel); the order of a date is a
sentence of the catalogue like any other. English is written as it always was: "1,240 g",
"Tue 10 Nov", "a, b and c".
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import date, datetime, time
from functools import cache
from zoneinfo import ZoneInfo

from babel import Locale, UnknownLocaleError
from babel.dates import format_date
from babel.numbers import get_decimal_symbol, get_group_symbol

from bot.words.languages import ENGLISH, language, mark, tr
from engine.written.units import Towards, VolumeUnit, WeightUnit, show_volume, show_weight

MINUS = "−"  # as wide as the plus


def number(value: float, places: int = 0) -> str:
    """ "1,240" or "61.2": rounded to so many places, thousands apart."""
    return in_digits(f"{value:,.{places}f}")


def plain(value: float) -> str:
    """ "7" or "7.5": no more places than it has, thousands not apart."""
    return in_digits(f"{value:g}")


def signed(value: float, places: int = 0) -> str:
    """ "+25", "−25"; nothing is "+0"."""
    return in_digits(f"{value:+,.{places}f}".replace("-", MINUS))


def change(value: float) -> str:
    """ "+40 g", "−25 g", "±0 g"; a sign always."""
    sign = "+" if value > 0 else MINUS if value < 0 else "±"
    return f"{sign}{grams(abs(value))}"


def grams(value: float) -> str:
    return f"{number(value)} g"


def milligrams(value: float) -> str:
    return f"{number(value)} mg"


def weight(kg: float, unit: str, towards: Towards = Towards.NEAREST) -> str:
    """ "61.2 kg", "134.9 lb", "9 st 8.9 lb"; of a most or a least the last tenth within it."""
    return in_digits(show_weight(kg, WeightUnit(unit), towards))


def weight_apart(kg: float, unit: str) -> str:
    """ "0.4 kg", "0.9 lb" (for stones too): between two weights, whichever is more."""
    return weight(abs(kg), "kg" if unit == "kg" else "lb")


def weight_change(kg: float, unit: str) -> str:
    """ "+0.4 kg", "−0.9 lb" (for stones too); "" where a scale would show no change."""
    shown = weight_apart(kg, unit)
    if shown == weight_apart(0.0, unit):
        return ""
    return f"{'+' if kg > 0 else MINUS}{shown}"


def volume(litres: float, unit: str) -> str:
    """ "3.5 L", "3500 ml", "118 US fl oz"."""
    return in_digits(show_volume(litres, VolumeUnit(unit)))


def in_digits(written: str) -> str:
    """A text with English figures in it ("1,240.5 kg"), with the signs of the language in force."""
    if language() == ENGLISH:
        return written
    signs = _signs(language())
    return _SIGN_IN_NUMBER.sub(lambda sign: signs[sign[0]], written)


def one_line(kg: float, weight_unit: str, litres: float, volume_unit: str) -> str:
    """ "61.2 7 3.5", "134.9 7 118": bare numbers in the units chosen, stones with theirs."""
    shown = weight(kg, weight_unit)
    water = volume(litres, volume_unit).split("\N{NO-BREAK SPACE}")[0].split(" ")[0]
    bare = shown if weight_unit == "st" else shown.split("\N{NO-BREAK SPACE}")[0].split(" ")[0]
    return f"{bare} 7 {water}"


def long_day(day: date) -> str:
    """ "Tuesday 10 November"."""
    return dated(day, tr("EEEE d MMMM"))


def short_day(day: date) -> str:
    """ "Tue 10 Nov"."""
    return dated(day, tr("EEE d MMM"))


def day_and_month(day: date) -> str:
    """ "10 Nov"."""
    return dated(day, tr("d MMM"))


def date_in_figures(day: date) -> str:
    """ "2026-11-10"."""
    return dated(day, tr("y-MM-dd"))


def weekday(day: date) -> str:
    """ "Tuesday"."""
    return dated(day, "EEEE")


def short_weekday(day: date) -> str:
    """ "Tue"."""
    return dated(day, tr("EEE"))


def clock(at: time | datetime) -> str:
    """ "07:05"."""
    return f"{at:%H:%M}"


def clock_in(instant: datetime, zone: str | None) -> str:
    """ "07:05" on the clocks of a zone; UTC where it is not known."""
    return clock(instant.astimezone(ZoneInfo(zone or "UTC")))


def moment_in(instant: datetime, zone: str | None) -> str:
    """ "Tue 10 Nov, 07:05" on the clocks of a zone; UTC where it is not known."""
    local = instant.astimezone(ZoneInfo(zone or "UTC"))
    return f"{short_day(local.date())}, {clock(local)}"


def all_of(items: Sequence[str]) -> str:
    """ "a", "a and b", "a, b and c"."""
    if len(items) < 2:
        return "".join(items)
    return tr("{items} and {last}", items=", ".join(items[:-1]), last=items[-1])


def each_and(items: Sequence[str]) -> str:
    """ "a and b and c": for clauses that have commas of their own."""
    so_far = "".join(items[:1])
    for last in items[1:]:
        so_far = tr("{items} and {last}", items=so_far, last=last)
    return so_far


def one_of(items: Sequence[str]) -> str:
    """ "a", "a or b", "a, b or c"."""
    if len(items) < 2:
        return "".join(items)
    return tr("{items} or {last}", items=", ".join(items[:-1]), last=items[-1])


def capital(text: str) -> str:
    """The text with its first letter large."""
    return text[:1].upper() + text[1:]


_SIGN_IN_NUMBER = re.compile(r"(?<=\d)[.,](?=\d)")


def dated(day: date, pattern: str) -> str:
    """A day in a pattern of the CLDR, its names in the language in force."""
    return format_date(day, pattern, locale=locale_of(language()))


@cache
def _signs(code: str) -> dict[str, str]:
    locale = locale_of(code)
    return {",": get_group_symbol(locale), ".": get_decimal_symbol(locale)}


@cache
def locale_of(code: str) -> Locale:
    """What the CLDR knows of a language; English where it is none."""
    try:
        return Locale.parse(code, sep="-")
    except (UnknownLocaleError, ValueError):
        return Locale(ENGLISH)


WEIGHT_UNITS = {"kg": mark("kilograms"), "lb": mark("pounds"), "st": mark("stones and pounds")}


VOLUME_UNITS = {
    "l": mark("litres"),
    "ml": mark("millilitres"),
    "us fl oz": mark("US fluid ounces"),
    "imp fl oz": mark("imperial fluid ounces"),
}


def weight_unit_name(unit: str) -> str:
    return tr(WEIGHT_UNITS[unit])


def volume_unit_name(unit: str) -> str:
    return tr(VOLUME_UNITS[unit])
