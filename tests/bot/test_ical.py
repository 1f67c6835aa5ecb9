"""The calendar file as text, against RFC 5545, and as two independent parsers read it."""

from __future__ import annotations

import re
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
import vobject
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.calendar.ical import CalendarEntry, calendar_file
from tests.support.calendars import strictly_read

NOW = datetime(2027, 5, 2, 12, 0, tzinfo=UTC)


def entry(**changes: Any) -> CalendarEntry:
    figures: dict[str, Any] = {
        "uid": "a@b.invalid", "start": datetime(2027, 5, 9, 13, 0, tzinfo=UTC), "minutes": 20,
        "zone": "Europe/London", "summary": "Pump-up", "revised_at": NOW,
    } | changes  # fmt: skip
    return CalendarEntry(**figures)


def read(content: bytes) -> list[Any]:
    calendar = vobject.readOne(content.decode("utf-8"))
    calendar.validate(raiseException=True)
    return list(getattr(calendar, "vevent_list", []))


def test_special_characters_are_escaped_and_lines_end_as_the_standard_asks() -> None:
    text = "Pump-up; half effort, far from failure \\ ü\nsecond line"
    content = calendar_file("Mira", [entry(summary=text)])
    # RFC 5545, 3.1: CRLF; 3.3.11: backslash, semicolon, comma and newline are escaped
    assert b"\n" not in content.replace(b"\r\n", b"")
    assert b"\r" not in content.replace(b"\r\n", b"")
    unfolded = content.replace(b"\r\n ", b"").decode()
    assert "SUMMARY:Pump-up\\; half effort\\, far from failure \\\\ ü\\nsecond line\r\n" in unfolded
    (event,) = read(content)
    assert event.summary.value == text


@settings(max_examples=40)
@given(
    st.text(
        alphabet=st.sampled_from("abcXYZ 0123,;:\\\"'é漢字🍚ß−·\n"), min_size=1, max_size=200
    ).map(str.strip).filter(bool)
)  # fmt: skip
def test_any_text_folds_at_75_octets_between_characters_and_comes_back_whole(text: str) -> None:
    content = calendar_file("x", [entry(summary=text, description=text)])
    lines = content.split(b"\r\n")
    # RFC 5545, 3.1: "Lines of text SHOULD NOT be longer than 75 octets, excluding the line break."
    assert all(len(line) <= 75 for line in lines)
    for line in lines:
        line.decode("utf-8")  # no character is cut in two, though the standard would allow it
    (event,) = read(content)
    assert event.summary.value == text
    (other,) = strictly_read(content.decode("utf-8")).events
    assert other.description == text


@pytest.mark.parametrize(
    ("day", "zone", "offset_h"),
    [
        # the Sundays on which Europe's clocks change, before and after; New York's are others
        (datetime(2027, 3, 28, 0, 30, tzinfo=UTC), "Europe/Berlin", 1),
        (datetime(2027, 3, 28, 6, 0, tzinfo=UTC), "Europe/Berlin", 2),
        (datetime(2027, 10, 31, 0, 30, tzinfo=UTC), "Europe/Berlin", 2),
        (datetime(2027, 10, 31, 6, 0, tzinfo=UTC), "Europe/Berlin", 1),
        (datetime(2027, 11, 7, 12, 0, tzinfo=UTC), "America/New_York", -5),
        (datetime(2027, 5, 9, 12, 0, tzinfo=UTC), "Asia/Kolkata", 5.5),
    ],
)
def test_the_zone_goes_along_with_its_changes_of_clocks(
    day: datetime, zone: str, offset_h: float
) -> None:
    content = calendar_file("x", [entry(start=day, zone=zone)])
    assert f"DTSTART;TZID={zone}:".encode() in content
    # vobject works the offset out from the VTIMEZONE in the file
    (event,) = read(content)
    assert event.dtstart.value.utcoffset() == timedelta(hours=offset_h)
    assert event.dtstart.value.astimezone(UTC) == day


def test_a_zone_that_changes_its_clocks_says_when_and_only_for_the_years_about() -> None:
    content = calendar_file("x", [entry(zone="Europe/Berlin")]).decode()
    zone = content[content.index("BEGIN:VTIMEZONE") : content.index("END:VTIMEZONE")]
    # RFC 5545, 3.6.5: STANDARD and DAYLIGHT with the offsets before and after
    assert "TZOFFSETFROM:+0100" in zone
    assert "TZOFFSETTO:+0200" in zone
    assert "BEGIN:DAYLIGHT" in zone
    assert "BEGIN:STANDARD" in zone
    assert len(content) < 2500


def test_a_length_over_a_change_of_clocks_stays_the_length() -> None:
    start = datetime(2027, 10, 31, 0, 50, tzinfo=UTC)  # 02:50 in Berlin, ten minutes before
    (event,) = read(calendar_file("x", [entry(start=start, zone="Europe/Berlin", minutes=90)]))
    length = event.dtend.value.astimezone(UTC) - event.dtstart.value.astimezone(UTC)
    assert length == timedelta(minutes=90)


def test_what_the_standard_requires_of_a_calendar_is_there() -> None:
    content = calendar_file("x", [entry(), entry(uid="c@b.invalid", start=date(2027, 5, 9))])
    # RFC 5545, 3.6 and 3.6.1: VERSION and PRODID once; UID, DTSTAMP and DTSTART in each event
    assert content.startswith(b"BEGIN:VCALENDAR\r\n")
    assert content.endswith(b"END:VCALENDAR\r\n")
    for once in (b"VERSION:2.0\r\n", b"PRODID:"):
        assert content.count(once) == 1
    for each in (b"UID:", b"DTSTAMP:20270502T120000Z", b"SEQUENCE:0", b"STATUS:CONFIRMED"):
        assert content.count(each) == 2
    assert b"DTSTART;VALUE=DATE:20270509" in content
    assert b"DTEND;VALUE=DATE:20270510" in content  # 3.6.1: the end is not part of the event
    assert not re.search(rb"\r\n[ \t]*\r\n", content)


def test_a_cancelled_entry_says_so() -> None:
    content = calendar_file("x", [entry(cancelled=True, sequence=3)])
    assert b"STATUS:CANCELLED" in content
    assert b"SEQUENCE:3" in content
    (event,) = strictly_read(content.decode()).events
    assert event.status == "CANCELLED"
