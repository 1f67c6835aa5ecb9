"""Words for days and months as people type them, in the language in force."""

from __future__ import annotations

from functools import cache

from babel.dates import get_day_names, get_month_names

from bot.words.figures import locale_of
from bot.words.languages import ENGLISH, language, mark, speaking, tr
from engine.written.units import ENGLISH_CALENDAR, CalendarWords

# With commas between them; a translation may have other ones, and as many as it likes.
TODAY = mark("today")
TOMORROW = mark("tomorrow")
DAYS = mark("days, day")
WEEKS = mark("weeks, week")


def calendar_words() -> CalendarWords:
    """English, and the words of the language in force beside it."""
    return _words(language())


@cache
def _words(code: str) -> CalendarWords:
    if code == ENGLISH:
        return ENGLISH_CALENDAR
    locale = locale_of(code)
    months = [get_month_names(width, "format", locale) for width in ("wide", "abbreviated")]
    days = [get_day_names(width, "format", locale) for width in ("wide", "abbreviated", "short")]
    with speaking(code):
        own = CalendarWords(
            today=_listed(tr(TODAY)),
            tomorrow=_listed(tr(TOMORROW)),
            days=_listed(tr(DAYS)),
            weeks=_listed(tr(WEEKS)),
            months=tuple(tuple(_plain(names[n]) for names in months) for n in range(1, 13)),
            weekdays=tuple(tuple(_plain(names[n]) for names in days) for n in range(7)),
            day_first=not code.startswith("en"),
        )
    return ENGLISH_CALENDAR.beside(own)


def _listed(words: str) -> tuple[str, ...]:
    return tuple(_plain(word) for word in words.split(","))


def _plain(name: str) -> str:
    return name.strip().rstrip(".").lower()
