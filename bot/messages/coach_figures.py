"""Figures, days and clock times as coaches read them."""

from __future__ import annotations

from datetime import date, datetime
from zoneinfo import ZoneInfo

from engine.limits import LIMIT_KEYS
from engine.units import VolumeUnit, WeightUnit, show_volume, show_weight


def day(value: date) -> str:
    """ "Tue 10 Nov"."""
    return f"{value:%a} {value.day} {value:%b}"


def clock(instant: datetime, zone: str | None) -> str:
    """ "07:05", on the athlete's clocks."""
    return f"{instant.astimezone(ZoneInfo(zone or 'UTC')):%H:%M}"


def moment(instant: datetime, zone: str | None) -> str:
    """ "Tue 10 Nov, 07:05", on the athlete's clocks."""
    local = instant.astimezone(ZoneInfo(zone or "UTC"))
    return f"{day(local.date())}, {local:%H:%M}"


def grams(value: float) -> str:
    return f"{value:,.0f} g"


def change(value: float) -> str:
    """ "+40 g", "−25 g"; a sign always."""
    return f"{'+' if value > 0 else '−' if value < 0 else '±'}{abs(value):,.0f} g"


def litres(value: float, unit: str) -> str:
    return show_volume(value, VolumeUnit(unit))


def weight(value: float, unit: str) -> str:
    return show_weight(value, WeightUnit(unit))


def days_out(value: int) -> str:
    if value < 0:
        return "over"
    return {0: "the day itself", 1: "1 day out"}.get(value, f"{value} days out")


def limit(key: str, value: float, volume_unit: str = "l") -> str:
    """A limit's value with its unit; water in the athlete's."""
    if LIMIT_KEYS[key].unit == "L":
        return litres(value, volume_unit)
    return grams(value)


def sentence(text: str) -> str:
    """The text with a capital and a full stop."""
    text = text.strip()
    if not text:
        return ""
    return text[0].upper() + text[1:] + ("" if text[-1] in ".!?" else ".")


def clock_with_zone(instant: datetime, zone: str | None) -> str:
    """ "07:05 (Europe/London)", on the reader's own clocks; UTC where they are not known."""
    return f"{clock(instant, zone)} ({zone or 'UTC'})"
