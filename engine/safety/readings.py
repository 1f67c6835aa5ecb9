"""Whether a reading can be believed, and comparisons that are exact at their threshold."""

from __future__ import annotations

import math

from engine.evidence import safety as evidence
from engine.evidence.units import LEAST_BODY_MASS, MOST_BODY_MASS, MOST_WATER
from engine.values.checkin import CheckIn, History

_TOLERANCE = 1e-9  # of the threshold; far below what any scale shows, above what floats lose


def finite(value: float | None) -> float | None:
    """The value as a finite float, or None."""
    if value is None:
        return None
    try:
        number = float(value)
    except (OverflowError, TypeError, ValueError):
        return None
    return number if math.isfinite(number) else None


def within(value: float | None, low: float, high: float) -> float | None:
    """The value where it lies between the bounds, else None."""
    number = finite(value)
    return number if number is not None and low <= number <= high else None


def believed_weight(kg: float | None) -> float | None:
    return within(kg, float(LEAST_BODY_MASS), float(MOST_BODY_MASS))


def believed_water(litres: float | None) -> float | None:
    return within(litres, 0, float(MOST_WATER))


def plausible_weight(kg: float | None) -> bool:
    """Whether this can be the body mass of an adult, in kg."""
    return believed_weight(kg) is not None


def plausible_water(litres: float | None) -> bool:
    """Whether this can be a day's drinking, in L."""
    return believed_water(litres) is not None


def at_least(value: float, threshold: float) -> bool:
    """value >= threshold, where 60.0 -> 58.2 kg is a drop of 3 % in spite of binary fractions."""
    return value >= threshold - _TOLERANCE * max(1.0, abs(threshold))


def above(value: float, threshold: float) -> bool:
    """value > threshold, equal within float error being not above."""
    return value > threshold + _TOLERANCE * max(1.0, abs(threshold))


def below(value: float, threshold: float) -> bool:
    """value < threshold, equal within float error being not below."""
    return value < threshold - _TOLERANCE * max(1.0, abs(threshold))


def last_morning(history: History, checkin: CheckIn) -> float | None:
    """The latest believable weight of the mornings just before, in kg."""
    reach = float(evidence.LAST_MORNING_WITHIN)
    for earlier in reversed(history.checkins):
        days = (checkin.date - earlier.date).days
        if 1 <= days <= reach and (weight := believed_weight(earlier.weight_kg)) is not None:
            return weight
    return None
