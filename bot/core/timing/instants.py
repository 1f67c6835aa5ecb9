"""Wall-clock times in a zone as instants."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo


def local_instant(day: date, at: time, zone: ZoneInfo | str) -> datetime:
    """The one UTC instant of this wall-clock time on this day.

    A time that the clocks skip becomes the first instant after the gap; a time that they show twice
    is taken the first time round.
    """
    zone = ZoneInfo(zone) if isinstance(zone, str) else zone
    wall = datetime.combine(day, at.replace(tzinfo=None, fold=0))
    instant = wall.replace(tzinfo=zone).astimezone(UTC)
    if instant.astimezone(zone).replace(tzinfo=None) == wall:
        return instant
    # In a gap, PEP 495 reads fold=1 with the offset after it, which lands before the change of
    # clocks, and fold=0 with the offset before it, which lands after: the change lies between.
    return _change_of_clocks(wall.replace(tzinfo=zone, fold=1).astimezone(UTC), instant, zone)


def _change_of_clocks(before: datetime, after: datetime, zone: ZoneInfo) -> datetime:
    old_offset = before.astimezone(zone).utcoffset()
    while after - before > timedelta(seconds=1):
        middle = before + timedelta(seconds=(after - before) // timedelta(seconds=1) // 2)
        if middle.astimezone(zone).utcoffset() == old_offset:
            before = middle
        else:
            after = middle
    return after
