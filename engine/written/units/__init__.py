"""Typed quantities and how people write them.

Every `parse_` function returns the quantity or raises `ParseError`; none ever guesses.
"""

from engine.written.units.amounts import (
    Towards,
    Volume,
    VolumeUnit,
    Weight,
    WeightUnit,
    parse_height,
    parse_volume,
    parse_weight,
    show_volume,
    show_weight,
)
from engine.written.units.reading import (
    ParseError,
    ParseErrorCode,
    parse_grams,
    parse_number,
    parse_score,
)
from engine.written.units.when import ENGLISH_CALENDAR, CalendarWords, parse_clock, parse_day

__all__ = [
    "ENGLISH_CALENDAR",
    "CalendarWords",
    "ParseError",
    "ParseErrorCode",
    "Towards",
    "Volume",
    "VolumeUnit",
    "Weight",
    "WeightUnit",
    "parse_clock",
    "parse_day",
    "parse_grams",
    "parse_height",
    "parse_number",
    "parse_score",
    "parse_volume",
    "parse_weight",
    "show_volume",
    "show_weight",
]
