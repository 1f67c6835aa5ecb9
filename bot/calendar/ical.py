"""An athlete's week as an iCalendar file (RFC 5545) that phones open.

An entry keeps its UID for as long as it means the same thing, and its SEQUENCE grows with each
revision, so that a file opened later replaces what an earlier one put into the calendar.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

from icalendar import Calendar, Event


@dataclass(frozen=True, slots=True, kw_only=True)
class CalendarEntry:
    """One event. `start` is a date for a whole day, or an aware instant shown in `zone`.

    `sequence` counts the revisions; `revised_at` is when what it says was last changed.
    """

    uid: str
    start: date | datetime
    minutes: int
    zone: str
    summary: str
    description: str = ""
    sequence: int = 0
    revised_at: datetime
    cancelled: bool = False


def calendar_file(name: str, entries: Sequence[CalendarEntry]) -> bytes:
    """The file, zones included, lines folded and text escaped as the standard asks.

    It names no METHOD: it is a snapshot to open, and nobody is invited (RFC 5545, 3.7.2).
    """
    calendar = Calendar()
    calendar.add("prodid", "-//Brimline//Peak week//EN")
    calendar.add("version", "2.0")
    calendar.add("x-wr-calname", name)
    for entry in entries:
        calendar.add_component(_event(entry))
    _with_zones(calendar, entries)
    return bytes(calendar.to_ical())


def _event(entry: CalendarEntry) -> Event:
    event = Event()
    event.add("uid", entry.uid)
    # Without a METHOD, DTSTAMP is when the entry was last revised (RFC 5545, 3.8.7.2).
    event.add("dtstamp", entry.revised_at.astimezone(UTC))
    event.add("sequence", entry.sequence)
    event.add("summary", entry.summary)
    if entry.description:
        event.add("description", entry.description)
    if isinstance(entry.start, datetime):
        zone = ZoneInfo(entry.zone)
        event.add("dtstart", entry.start.astimezone(zone))
        # Counted on the instant: a length is a length, whatever the clocks do meanwhile.
        end = entry.start.astimezone(UTC) + timedelta(minutes=entry.minutes)
        event.add("dtend", end.astimezone(zone))
    else:
        event.add("dtstart", entry.start)
        event.add("dtend", entry.start + timedelta(days=1))
        event.add("transp", "TRANSPARENT")
    event.add("status", "CANCELLED" if entry.cancelled else "CONFIRMED")
    return event


def _with_zones(calendar: Calendar, entries: Sequence[CalendarEntry]) -> None:
    """The zones that are named, for the years about: a century of changes helps no phone."""
    years = [entry.start.year for entry in entries]
    if years:
        calendar.add_missing_timezones(
            first_date=date(min(years) - 1, 1, 1), last_date=date(max(years) + 2, 1, 1)
        )
