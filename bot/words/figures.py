"""Numbers, days, clock times, lists and tables as they are written in the language in force.

Signs of numbers and names of days come from the CLDR (through Babel); the order of a date is a
sentence of the catalogue like any other. English is written as it always was: "1,240 g",
"Tue 10 Nov", "a, b and c".
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from datetime import date, datetime, time
from functools import cache
from zoneinfo import ZoneInfo

from babel import Locale, UnknownLocaleError
from babel.dates import format_date
from babel.numbers import get_decimal_symbol, get_group_symbol

from bot.words.languages import ENGLISH, SentenceBy, language, mark, tr, translated, trn
from engine.values.limits import LIMIT_KEYS
from engine.values.telling import Telling
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


weight_unit_name = SentenceBy(
    {"kg": mark("kilograms"), "lb": mark("pounds"), "st": mark("stones and pounds")}
)
volume_unit_name = SentenceBy(
    {
        "l": mark("litres"),
        "ml": mark("millilitres"),
        "us fl oz": mark("US fluid ounces"),
        "imp fl oz": mark("imperial fluid ounces"),
    }
)


def days_out(value: int) -> str:
    if value < 0:
        return tr("over")
    if value == 0:
        return tr("event day")
    return trn("{number} day out", "{number} days out", value)


def limit(key: str, value: float, volume_unit: str = "l") -> str:
    """A limit's value with its unit; water in the athlete's."""
    if LIMIT_KEYS[key].unit == "L":
        return volume(value, volume_unit)
    return grams(value)


def limit_label(key: str) -> str:
    """ "carb floor a day", for the middle of a sentence."""
    return tr(LIMIT_KEYS[key].label)


def sentence(text: str) -> str:
    """The text with a capital and a full stop."""
    text = text.strip()
    if not text:
        return ""
    return capital(text) + ("" if text[-1] in ".!?" else ".")


#: An instant on the clocks of a zone, in words; and the zones of a reader and of an athlete.
_OnClock = Callable[[datetime, str | None], str]
_Zones = tuple[str | None, str | None]


def both_clocks(instant: datetime, here: str | None, there: str | None, name: str) -> str:
    """ "11:00 your time (09:00 for Orla)": on the reader's clocks with the athlete's beside them.

    One reading where both clocks show the same; the athlete's alone where the reader's zone is not
    known. With the day where the two differ in that.
    """
    if here is not None and _local(instant, here).date() != _local(instant, there).date():
        return both_moments(instant, here, there, name)
    return _beside(clock_in, clock_in, instant, (here, there), name)


def both_moments(instant: datetime, here: str | None, there: str | None, name: str) -> str:
    """The same with the day: "Sun 2 May, 08:30 your time (06:30 for Orla)"."""
    beside = moment_in
    if here is not None and _local(instant, here).date() == _local(instant, there).date():
        beside = clock_in
    return _beside(moment_in, beside, instant, (here, there), name)


def _beside(say: _OnClock, beside: _OnClock, instant: datetime, zones: _Zones, name: str) -> str:
    here, there = zones
    if there is None:  # before somebody has told where they are, no clock is theirs
        return say(instant, here) if here is not None else f"{say(instant, None)} (UTC)"
    if here is None:
        return tr("{there} ({name}'s time)", there=say(instant, there), name=name)
    if say(instant, here) == say(instant, there):
        return say(instant, here)
    return tr(
        "{here} your time ({there} for {name})",
        here=say(instant, here), there=beside(instant, there), name=name,
    )  # fmt: skip


def _local(instant: datetime, zone: str | None) -> datetime:
    return instant.astimezone(ZoneInfo(zone or "UTC"))


def clock_with_zone(instant: datetime, zone: str | None) -> str:
    """ "07:05 (Europe/London)", on the reader's own clocks; UTC where they are not known."""
    return f"{clock_in(instant, zone)} ({zone or 'UTC'})"


class InChat(Telling):
    """Laid over a `Telling` of the engine, before it in the bases. Units are set by who lays it."""

    weight_unit: str
    volume_unit: str

    def translated(self, message: str, /) -> str:
        return translated(message)

    def weight(self, key: str) -> str:
        return weight(self.facts[key], self.weight_unit)

    def weight_at_most(self, key: str) -> str:
        return weight(self.facts[key], self.weight_unit, Towards.MOST)

    def weight_at_least(self, key: str) -> str:
        return weight(self.facts[key], self.weight_unit, Towards.LEAST)

    def water(self, key: str) -> str:
        return volume(self.facts[key], self.volume_unit)

    def each_and(self, parts: Sequence[str]) -> str:
        return each_and(list(parts))


#: What a table lies between in a text. Telegram takes such characters out of what people type, so
#: they stand nowhere else; the outbox turns what is between them into a block of one width.
START, END = "\x02", "\x03"
#: Characters that fit beside each other in such a block on a phone 360 points wide; measured on the
#: widths of Telegram's block type (common practice: about 8 points a character).
MOST_ACROSS = 32


def table(rows: Sequence[Sequence[str]]) -> str:
    """The rows as a block, the first column to the left and the others to the right."""
    widths = [max(len(row[n]) for row in rows) for n in range(len(rows[0]))]
    lines = [
        " ".join(
            cell.ljust(width) if n == 0 else cell.rjust(width)
            for n, (cell, width) in enumerate(zip(row, widths, strict=True))
        ).rstrip()
        for row in rows
    ]
    return f"{START}{chr(10).join(lines)}{END}"


def tables(names: Sequence[str], columns: Sequence[Sequence[str]]) -> str:
    """Columns beside a first one of names, in as many blocks one below the other as a phone needs."""
    first = max(len(name) for name in names)
    blocks: list[list[Sequence[str]]] = [[]]
    across = first
    for column in columns:
        wide = 1 + max(len(cell) for cell in column)
        if blocks[-1] and across + wide > MOST_ACROSS:
            blocks.append([])
            across = first
        blocks[-1].append(column)
        across += wide
    return "\n".join(table(list(zip(names, *block, strict=True))) for block in blocks)
