"""Grams, scores, height and bare numbers."""

from __future__ import annotations

from engine.evidence.units import CM_PER_INCH, LEAST_HEIGHT, MOST_HEIGHT
from engine.written.late import Late
from engine.written.units.reading import (
    NUMBER,
    ParseError,
    ParseErrorCode,
    decimal,
    number_typed,
    spelt_out,
    why_not_read,
)

_GRAMS = Late(
    rf"(?:carbs? ?[:=]? ?)?\+?({NUMBER}) ?(?:grammes?|gramm|grams?|gr|g)?"
    r"(?: (?:of )?(?:carbs?|carbohydrates?|kh|kohlenhydrate))?"
)
_SCORE = Late(rf"\+?({NUMBER})(?: ?(?:/|of|out of|von) ?({NUMBER}))?")
_BARE = Late(rf"\+?({NUMBER})")
_METRES = Late(rf"({NUMBER}) ?(?:met(?:re|er)s?|m)")
_METRES_AND = Late(r"(\d) ?m ?(\d\d)")
_CENTIMETRES = Late(rf"({NUMBER}) ?(?:centimet(?:re|er)s?|cms?)")
_FEET = Late(rf"(\d+) ?(?:feet|foot|ft|')\.?(?: ?,? ?({NUMBER}) ?(?:inch(?:es)?|ins?|\"|'')?\.?)?")
_INCHES = Late(rf"({NUMBER}) ?(?:inch(?:es)?|ins?|\"|'')")


def parse_grams(text: str, *, low: float = 0, high: float = 1500) -> float:
    """Read a mass of food in grams between `low` and `high`."""
    answer = number_typed(text)
    match = _GRAMS.fullmatch(answer)
    if match is None:
        raise why_not_read(answer, "g")
    return _within(decimal(match[1]), low, high, "g")


def parse_number(text: str, *, low: float | None = None, high: float | None = None) -> float:
    """Read a number without a unit, between `low` and `high` where given."""
    answer = number_typed(text)
    match = _BARE.fullmatch(answer)
    if match is None:
        raise why_not_read(answer)
    return _within(decimal(match[1]), low, high)


def parse_score(text: str, low: int, high: int) -> int:
    """Read a whole number on a scale: "7", "7/10", "7 of 10", "seven"."""
    answer = number_typed(text)
    if (word := spelt_out(answer)) is not None:
        return int(_within(word, low, high))
    match = _SCORE.fullmatch(answer)
    if match is None:
        raise why_not_read(answer)
    value = decimal(match[1])
    if not value.is_integer():
        raise ParseError(ParseErrorCode.NOT_A_WHOLE_NUMBER, given=value, low=low, high=high)
    if match[2] and decimal(match[2]) != high:
        raise ParseError(ParseErrorCode.OUT_OF_RANGE, given=answer, low=low, high=high)
    return int(_within(value, low, high))


def parse_height(text: str) -> float:
    """Read an adult's height; returns cm. "5.8" could be feet or metres gone wrong: refused."""
    answer = number_typed(text)
    return _believable_height(_centimetres(answer))


def _centimetres(answer: str) -> float:
    inch = float(CM_PER_INCH)
    if match := _CENTIMETRES.fullmatch(answer):
        return decimal(match[1])
    if match := _METRES_AND.fullmatch(answer):
        return float(match[1]) * 100 + float(match[2])
    if match := _METRES.fullmatch(answer):
        return decimal(match[1]) * 100
    if match := _FEET.fullmatch(answer):
        inches = decimal(match[2]) if match[2] else 0.0
        if inches >= 12:
            raise ParseError(ParseErrorCode.OUT_OF_RANGE, given=inches, unit="in", low=0, high=11.9)
        return (float(match[1]) * 12 + inches) * inch
    if match := _INCHES.fullmatch(answer):
        return decimal(match[1]) * inch
    if match := _BARE.fullmatch(answer):
        return _bare_height(decimal(match[1]))
    raise why_not_read(answer, "cm, m, ft and in")


def _bare_height(value: float) -> float:
    """A bare number is cm, or metres where nothing else can be meant; feet are never guessed."""
    low, high = float(LEAST_HEIGHT), float(MOST_HEIGHT)
    if low / 100 <= value <= high / 100:
        return value * 100
    feet = 3 <= value < 8
    inches = low <= value * float(CM_PER_INCH) <= high and value < low
    if feet or inches:
        raise ParseError(ParseErrorCode.NO_UNIT, given=value)
    return value


def _believable_height(cm: float) -> float:
    low, high = float(LEAST_HEIGHT), float(MOST_HEIGHT)
    if not low <= cm <= high:
        raise ParseError(ParseErrorCode.IMPLAUSIBLE, given=cm, unit="cm", low=low, high=high)
    return round(cm, 1)


def _within(value: float, low: float | None, high: float | None, unit: str = "") -> float:
    if (low is not None and value < low) or (high is not None and value > high):
        facts: dict[str, str | float] = {"given": value}
        facts |= {k: v for k, v in (("low", low), ("high", high)) if v is not None}
        if unit:
            facts["unit"] = unit
        raise ParseError(ParseErrorCode.OUT_OF_RANGE, **facts)
    return value
