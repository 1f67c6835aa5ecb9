"""Times of day and dates as people write them."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from datetime import date, time, timedelta

from engine.written.late import Late
from engine.written.units.reading import ParseError, ParseErrorCode, one_answer

_CLOCK = Late(
    r"(?:at )?(\d{1,2})(?: ?(?:[:.,h]|uhr) ?(\d\d)| (\d\d))? ?(?:o'?clock|uhr)? ?([ap])?(?:\.? ?m\.?)?"
)
_MILITARY = Late(r"(\d{1,2})(\d\d) ?(?:h|hrs|hours)?")
_FULL_MONTHS = (
    "january", "february", "march", "april", "may", "june", "july",
    "august", "september", "october", "november", "december",
)  # fmt: skip
_WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
_ISO = Late(r"(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})")
_NUMERIC = Late(r"(\d{1,2}) ?[/.-] ?(\d{1,2})(?: ?[/.-] ?(\d{4}|\d\d))?")
_DAY_MONTH = Late(r"(\d{1,2})(?:st|nd|rd|th|\.)?(?: of)? ?([^\W\d_]+)\.?,? ?(\d{4}|\d\d)?")
_MONTH_DAY = Late(r"([^\W\d_]+)\.? ?(\d{1,2})(?:st|nd|rd|th)?(?:,? (\d{4}))?")
_IN_DAYS = Late(r"(?:in )?(\d{1,3}) ([^\W\d_]+)(?: out)?")
_FURTHEST = timedelta(days=366)

_Names = tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class CalendarWords:
    """What days and months are called, in lower case; several names each, the full one first.

    `day_first` says that of two numbers with points between them the day is the first.
    """

    today: _Names
    tomorrow: _Names
    days: _Names
    weeks: _Names
    months: tuple[_Names, ...]
    weekdays: tuple[_Names, ...]
    day_first: bool = False

    def beside(self, other: CalendarWords) -> CalendarWords:
        """These words and those of another language beside them."""
        months = zip(self.months, other.months, strict=True)
        weekdays = zip(self.weekdays, other.weekdays, strict=True)
        return replace(
            self,
            today=self.today + other.today,
            tomorrow=self.tomorrow + other.tomorrow,
            days=self.days + other.days,
            weeks=self.weeks + other.weeks,
            months=tuple(own + names + (names[0][:3],) for own, names in months),
            weekdays=tuple(own + names for own, names in weekdays),
            day_first=other.day_first,
        )


ENGLISH_CALENDAR = CalendarWords(
    today=("today",),
    tomorrow=("tomorrow",),
    days=("days", "day"),
    weeks=("weeks", "week"),
    months=tuple(
        (full, full[:3], "sept") if full == "september" else (full, full[:3])
        for full in _FULL_MONTHS
    ),
    weekdays=tuple((full,) for full in _WEEKDAYS),
)


def parse_clock(text: str) -> time:
    """Read a time of day: "6:30", "0630", "6.30 am", "7pm". A bare hour counts from midnight."""
    answer = _answer(text, ParseErrorCode.NOT_A_TIME)
    if answer in {"noon", "midday", "midnight"}:
        return time(0) if answer == "midnight" else time(12)
    if match := _CLOCK.fullmatch(answer):
        hour, minute, half = int(match[1]), int(match[2] or match[3] or 0), match[4]
        if half and not 1 <= hour <= 12:
            raise ParseError(ParseErrorCode.NOT_A_TIME)
        if half:
            hour = hour % 12 + (12 if half == "p" else 0)
        return _time(hour, minute)
    if match := _MILITARY.fullmatch(answer):
        return _time(int(match[1]), int(match[2]))
    if (spoken := _spoken(answer)) is not None:
        return spoken
    raise ParseError(ParseErrorCode.NOT_A_TIME)


_HOURS = {
    word: hour
    for words in (
        "one two three four five six seven eight nine ten eleven twelve",
        "eins zwei drei vier fünf sechs sieben acht neun zehn elf zwölf",
    )
    for hour, word in enumerate(words.split(), start=1)
}
#: Minutes after the hour that is named; those of an hour not yet full count back from it.
_PARTS = {
    "half past": 30, "half": 30, "quarter past": 15, "quarter to": -15, "halb": -30, "viertel nach": 15,
    "viertel vor": -15, "dreiviertel": -15, "viertel": -45,
}  # fmt: skip
_SPOKEN = Late(
    r"(?:(?:at|around|about|um|gegen|so um) )?"
    rf"(?:(?P<part>{'|'.join(sorted(_PARTS, key=len, reverse=True))}) )?"
    rf"(?P<hour>{'|'.join(_HOURS)}|\d{{1,2}})"
    r"(?P<clock> (?:o'?clock|uhr|in the morning|morgens|in der früh|früh))*"
)


def _spoken(answer: str) -> time | None:
    """ "half past six", "halb sieben", "um sieben", "7 o'clock": by the clock of the morning."""
    match = _SPOKEN.fullmatch(answer)
    if match is None:
        return None
    hour = _HOURS.get(match["hour"]) or int(match["hour"])
    if match["part"] and not 1 <= hour <= 12:
        return None
    minutes = hour * 60 + _PARTS.get(match["part"] or "", 0)
    return _time(minutes // 60, minutes % 60)


def _time(hour: int, minute: int) -> time:
    if hour > 23 or minute > 59:
        raise ParseError(ParseErrorCode.NOT_A_TIME)
    return time(hour, minute)


def parse_day(text: str, *, today: date, words: CalendarWords = ENGLISH_CALENDAR) -> date:
    """Read a date; without a year it is the next such day from `today` on.

    Day and month as numbers are refused where either could be the other: a wrong stage day costs
    the whole week.
    """
    answer = _answer(text, ParseErrorCode.NOT_A_DATE)
    if answer in words.today + words.tomorrow:
        return today + timedelta(days=answer in words.tomorrow)
    if (match := _IN_DAYS.fullmatch(answer)) and match[2] in words.days + words.weeks:
        return _later(today, int(match[1]) * (7 if match[2] in words.weeks else 1))
    weekday, answer = _split_weekday(answer, words)
    found = _dated(answer, today, words)
    if weekday is not None and found.weekday() != weekday:
        raise ParseError(
            ParseErrorCode.WRONG_WEEKDAY,
            given=_WEEKDAYS[weekday].title(),
            day=found.isoformat(),
            hint=_WEEKDAYS[found.weekday()].title(),
        )
    return found


def _dated(answer: str, today: date, words: CalendarWords) -> date:
    if match := _ISO.fullmatch(answer):
        return _date(int(match[1]), int(match[2]), int(match[3]))
    if match := _NUMERIC.fullmatch(answer):
        first, second = int(match[1]), int(match[2])
        known = words.day_first and "." in answer
        if first <= 12 and second <= 12 and first != second and not known:
            raise ParseError(ParseErrorCode.AMBIGUOUS_DATE, given=answer)
        day, month = (second, first) if second > 12 else (first, second)
        return _in_year(match[3], month, day, today)
    if match := _DAY_MONTH.fullmatch(answer):
        return _in_year(match[3], _month(match[2], words), int(match[1]), today)
    if match := _MONTH_DAY.fullmatch(answer):
        return _in_year(match[3], _month(match[1], words), int(match[2]), today)
    raise ParseError(ParseErrorCode.NOT_A_DATE)


def _in_year(year: str | None, month: int, day: int, today: date) -> date:
    if year is not None:
        return _date(int(year) if len(year) == 4 else 2000 + int(year), month, day)
    for candidate in range(today.year, today.year + 9):  # 29 February is at most eight years off
        try:
            found = date(candidate, month, day)
        except ValueError:
            continue
        if found >= today:
            return found
    raise ParseError(ParseErrorCode.NOT_A_DATE)


def _date(year: int, month: int, day: int) -> date:
    try:
        return date(year, month, day)
    except ValueError as error:
        raise ParseError(ParseErrorCode.NOT_A_DATE) from error


def _later(today: date, days: int) -> date:
    if timedelta(days=days) > _FURTHEST:
        raise ParseError(ParseErrorCode.OUT_OF_RANGE, given=days, low=0, high=366, unit="days")
    return today + timedelta(days=days)


def _month(word: str, words: CalendarWords) -> int:
    for number, names in enumerate(words.months, start=1):
        if word in names:
            return number
    raise ParseError(ParseErrorCode.NOT_A_DATE)


def _split_weekday(answer: str, words: CalendarWords) -> tuple[int | None, str]:
    match = re.fullmatch(r"([^\W\d_]+)\.?,? (.+)", answer)
    if match is None:
        return None, answer
    for number, names in enumerate(words.weekdays):
        begins = len(match[1]) >= 3 and any(name.startswith(match[1]) for name in names)
        if begins or match[1] in names:
            return number, match[2]
    return None, answer


def _answer(text: str, code: ParseErrorCode) -> str:
    try:
        return one_answer(text)
    except ParseError as error:
        if error.code is ParseErrorCode.NOT_A_NUMBER:
            raise ParseError(code) from None
        raise
