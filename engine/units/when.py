"""Times of day and dates as people write them."""

from __future__ import annotations

import re
from datetime import date, time, timedelta

from .reading import one_answer
from .refusal import Refusal, RefusalCode

_CLOCK = re.compile(
    r"(?:at )?(\d{1,2})(?: ?[:.,h] ?(\d\d)| (\d\d))? ?(?:o'?clock)? ?([ap])?(?:\.? ?m\.?)?"
)
_MILITARY = re.compile(r"(\d{1,2})(\d\d) ?(?:h|hrs|hours)?")
_MONTHS = (
    "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec",
)  # fmt: skip
_FULL_MONTHS = (
    "january", "february", "march", "april", "may", "june", "july",
    "august", "september", "october", "november", "december",
)  # fmt: skip
_WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
_ISO = re.compile(r"(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})")
_NUMERIC = re.compile(r"(\d{1,2}) ?[/.-] ?(\d{1,2})(?: ?[/.-] ?(\d{4}|\d\d))?")
_DAY_MONTH = re.compile(r"(\d{1,2})(?:st|nd|rd|th)?(?: of)? ?([a-z]+)\.?,? ?(\d{4}|\d\d)?")
_MONTH_DAY = re.compile(r"([a-z]+)\.? ?(\d{1,2})(?:st|nd|rd|th)?(?:,? (\d{4}))?")
_IN_DAYS = re.compile(r"(?:in )?(\d{1,3}) (days?|weeks?)(?: out)?")
_FURTHEST = timedelta(days=366)


def parse_clock(text: str) -> time:
    """Read a time of day: "6:30", "0630", "6.30 am", "7pm". A bare hour counts from midnight."""
    answer = _answer(text, RefusalCode.NOT_A_TIME)
    if answer in {"noon", "midday", "midnight"}:
        return time(0) if answer == "midnight" else time(12)
    if match := _CLOCK.fullmatch(answer):
        hour, minute, half = int(match[1]), int(match[2] or match[3] or 0), match[4]
        if half and not 1 <= hour <= 12:
            raise Refusal(RefusalCode.NOT_A_TIME)
        if half:
            hour = hour % 12 + (12 if half == "p" else 0)
        return _time(hour, minute)
    if match := _MILITARY.fullmatch(answer):
        return _time(int(match[1]), int(match[2]))
    raise Refusal(RefusalCode.NOT_A_TIME)


def _time(hour: int, minute: int) -> time:
    if hour > 23 or minute > 59:
        raise Refusal(RefusalCode.NOT_A_TIME)
    return time(hour, minute)


def parse_day(text: str, *, today: date) -> date:
    """Read a date; without a year it is the next such day from `today` on.

    Day and month as numbers are refused where either could be the other: a wrong stage day costs
    the whole week.
    """
    answer = _answer(text, RefusalCode.NOT_A_DATE)
    if answer in {"today", "tomorrow"}:
        return today + timedelta(days=answer == "tomorrow")
    if match := _IN_DAYS.fullmatch(answer):
        days = int(match[1]) * (7 if match[2].startswith("week") else 1)
        return _later(today, days)
    weekday, answer = _split_weekday(answer)
    found = _dated(answer, today)
    if weekday is not None and found.weekday() != weekday:
        raise Refusal(
            RefusalCode.WRONG_WEEKDAY,
            given=_WEEKDAYS[weekday].title(),
            day=found.isoformat(),
            hint=_WEEKDAYS[found.weekday()].title(),
        )
    return found


def _dated(answer: str, today: date) -> date:
    if match := _ISO.fullmatch(answer):
        return _date(int(match[1]), int(match[2]), int(match[3]))
    if match := _NUMERIC.fullmatch(answer):
        first, second = int(match[1]), int(match[2])
        if first <= 12 and second <= 12 and first != second:
            raise Refusal(RefusalCode.AMBIGUOUS_DATE, given=answer)
        day, month = (second, first) if second > 12 else (first, second)
        return _in_year(match[3], month, day, today)
    if match := _DAY_MONTH.fullmatch(answer):
        return _in_year(match[3], _month(match[2]), int(match[1]), today)
    if match := _MONTH_DAY.fullmatch(answer):
        return _in_year(match[3], _month(match[1]), int(match[2]), today)
    raise Refusal(RefusalCode.NOT_A_DATE)


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
    raise Refusal(RefusalCode.NOT_A_DATE)


def _date(year: int, month: int, day: int) -> date:
    try:
        return date(year, month, day)
    except ValueError as error:
        raise Refusal(RefusalCode.NOT_A_DATE) from error


def _later(today: date, days: int) -> date:
    if timedelta(days=days) > _FURTHEST:
        raise Refusal(RefusalCode.OUT_OF_RANGE, given=days, low=0, high=366, unit="days")
    return today + timedelta(days=days)


def _month(word: str) -> int:
    for number, (short, full) in enumerate(zip(_MONTHS, _FULL_MONTHS, strict=True), start=1):
        if word in {short, full} or (word == "sept" and short == "sep"):
            return number
    raise Refusal(RefusalCode.NOT_A_DATE)


def _split_weekday(answer: str) -> tuple[int | None, str]:
    match = re.fullmatch(r"([a-z]+)\.?,? (.+)", answer)
    if match and len(match[1]) >= 3:
        for number, name in enumerate(_WEEKDAYS):
            if name.startswith(match[1]):
                return number, match[2]
    return None, answer


def _answer(text: str, code: RefusalCode) -> str:
    try:
        return one_answer(text)
    except Refusal as refusal:
        if refusal.code is RefusalCode.NOT_A_NUMBER:
            raise Refusal(code) from None
        raise
