"""Calendar files as a library of others reads them."""

from __future__ import annotations

from typing import Any


def strictly_read(text: str) -> Any:
    """The calendar, held against that library's own model of RFC 5545. Raises where it does not fit."""
    from ical.calendar_stream import IcsCalendarStream  # noqa: PLC0415 - two files of tests need it

    return IcsCalendarStream.calendar_from_ics(text)
