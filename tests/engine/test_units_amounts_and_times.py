"""Grams, scores, heights, times of day and dates as people write them."""

from __future__ import annotations

from contextlib import suppress
from datetime import date, time

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import constants

from engine.written.units import (
    ParseError,
    parse_clock,
    parse_day,
    parse_grams,
    parse_height,
    parse_number,
    parse_score,
)
from tests.support.any_text import any_text

TODAY = date(2026, 11, 25)


def code_of(parse: object, *args: object, **kwargs: object) -> str:
    with pytest.raises(ParseError) as caught:
        parse(*args, **kwargs)  # type: ignore[operator]
    return str(caught.value.code)


@pytest.mark.parametrize(
    "text", ["310", "310g", "310 g", "310 grams", "carbs 310", "310 g carbs", "310.0", "310 g."]
)
def test_grams_are_read(text: str) -> None:
    assert parse_grams(text) == 310


def test_grams_out_of_their_range_or_shape_are_refused() -> None:
    assert code_of(parse_grams, "1501") == "out-of-range"
    assert code_of(parse_grams, "90", low=100, high=500) == "out-of-range"
    assert code_of(parse_grams, "1,250") == "ambiguous-separator"
    assert code_of(parse_grams, "1.250 g") == "ambiguous-separator"
    assert code_of(parse_grams, "310 kcal") == "unknown-unit"
    assert code_of(parse_grams, "-5") == "negative"
    assert code_of(parse_grams, "150 or 160") == "too-many-numbers"


@pytest.mark.parametrize("text", ["7", "7/10", "7 of 10", "7 out of 10", "seven", "7.0", "7️⃣"])
def test_a_score_is_read(text: str) -> None:
    assert parse_score(text, 1, 10) == 7


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("7.5", "not-a-whole-number"),
        ("0", "out-of-range"),
        ("11", "out-of-range"),
        ("7/5", "out-of-range"),
        ("6-7", "too-many-numbers"),
        ("-1", "negative"),
        ("😀", "not-a-number"),
        ("", "empty"),
        ("7 ish", "unknown-unit"),
    ],
)
def test_a_score_that_is_none_is_refused(text: str, code: str) -> None:
    assert code_of(parse_score, text, 1, 10) == code


def test_a_bare_number_is_read_within_its_bounds() -> None:
    assert parse_number("12,5", low=0, high=20) == 12.5
    assert code_of(parse_number, "25", low=0, high=20) == "out-of-range"


@pytest.mark.parametrize(
    ("text", "cm"),
    [
        ("172", 172),
        ("172 cm", 172),
        ("172,5cm", 172.5),
        ("1.72 m", 172),
        ("1,72m", 172),
        ("1m72", 172),
        ("1.72", 172),
        # scipy.constants has the exact international foot and inch
        ("5ft 8", (5 * constants.foot + 8 * constants.inch) * 100),
        ("5'8\"", (5 * constants.foot + 8 * constants.inch) * 100),
        ("5’8”", (5 * constants.foot + 8 * constants.inch) * 100),
        ("5 foot 8 inches", (5 * constants.foot + 8 * constants.inch) * 100),
        ("6ft", 6 * constants.foot * 100),
        ("68 in", 68 * constants.inch * 100),
    ],
)
def test_a_height_is_read_in_cm(text: str, cm: float) -> None:
    assert parse_height(text) == pytest.approx(cm, abs=0.05)


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("5.8", "no-unit"),
        ("5", "no-unit"),
        ("68", "no-unit"),
        ("5ft 13", "out-of-range"),
        ("300", "implausible"),
        ("17.2 m", "implausible"),
        ("-172", "negative"),
        ("tall", "not-a-number"),
    ],
)
def test_a_height_that_could_be_feet_or_cannot_be_is_refused(text: str, code: str) -> None:
    assert code_of(parse_height, text) == code


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("6:30", time(6, 30)),
        ("06:30", time(6, 30)),
        ("0630", time(6, 30)),
        ("630", time(6, 30)),
        ("6.30", time(6, 30)),
        ("6h30", time(6, 30)),
        ("6 30", time(6, 30)),
        ("6:30 am", time(6, 30)),
        ("6:30 PM", time(18, 30)),
        ("7pm", time(19)),
        ("7 p.m.", time(19)),
        ("12am", time(0)),
        ("12 pm", time(12)),
        ("at 6", time(6)),
        ("18", time(18)),
        ("noon", time(12)),
        ("midnight", time(0)),
        ("half past six", time(6, 30)),
        ("7 o'clock", time(7)),
        ("halb sieben", time(6, 30)),
        ("viertel vor 7", time(6, 45)),
        ("dreiviertel sieben", time(6, 45)),
        ("um sieben", time(7)),
    ],
)
def test_a_time_of_day_is_read(text: str, expected: time) -> None:
    assert parse_clock(text) == expected


@pytest.mark.parametrize("text", ["24:00", "6:60", "25", "13 pm", "0 am", "early", "☀️", "6:3"])
def test_a_time_that_is_none_is_refused(text: str) -> None:
    assert code_of(parse_clock, text) == "not-a-time"


@pytest.mark.parametrize(
    "text",
    [
        "2027-05-14",
        "2027/5/14",
        "14 May 2027",
        "14th of May 2027",
        "May 14, 2027",
        "14 May",
        "14.5.2027",
        "14/5/27",
        "5/14/2027",
        "Fri 14 May",
        "Friday, 14 May 2027",
    ],
)
def test_a_date_is_read(text: str) -> None:
    assert parse_day(text, today=TODAY) == date(2027, 5, 14)


def test_a_date_without_a_year_is_the_next_such_day() -> None:
    assert parse_day("25 Nov", today=TODAY) == TODAY
    assert parse_day("24 Nov", today=TODAY) == date(2027, 11, 24)
    assert parse_day("29 Feb", today=TODAY) == date(2028, 2, 29)
    assert parse_day("in 12 days", today=TODAY) == date(2026, 12, 7)
    assert parse_day("2 weeks", today=TODAY) == date(2026, 12, 9)
    assert parse_day("tomorrow", today=TODAY) == date(2026, 11, 26)


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("5/6/2027", "ambiguous-date"),
        ("5.6.2027", "ambiguous-date"),
        ("5.6", "ambiguous-date"),
        ("31.2.2027", "not-a-date"),
        ("30 Feb", "not-a-date"),
        ("Sat 14 May 2027", "wrong-weekday"),
        ("soon", "not-a-date"),
        ("14", "not-a-date"),
        ("🏆", "not-a-date"),
        ("", "empty"),
        ("in 999 days", "out-of-range"),
    ],
)
def test_a_date_that_could_be_another_is_refused(text: str, code: str) -> None:
    assert code_of(parse_day, text, today=TODAY) == code


@given(st.dates(date(2026, 1, 1), date(2099, 12, 31)))
def test_every_date_reads_back_from_its_own_spelling(day: date) -> None:
    assert parse_day(day.isoformat(), today=TODAY) == day
    assert parse_day(f"{day:%A} {day.day} {day:%B} {day.year}", today=TODAY) == day
    assert parse_day(f"{day:%b} {day.day}, {day.year}", today=TODAY) == day


@given(any_text(60))
def test_any_text_gives_a_value_or_a_refusal(text: str) -> None:
    for parse in (parse_grams, parse_height, parse_number, parse_clock):
        with suppress(ParseError):
            parse(text)  # type: ignore[operator]
    for read in (lambda: parse_score(text, 1, 10), lambda: parse_day(text, today=TODAY)):
        with suppress(ParseError):
            read()
