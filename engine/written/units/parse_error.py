"""Why an answer could not be read: a named reason and the figures that a kind reply needs."""

from __future__ import annotations

from enum import StrEnum


class ParseErrorCode(StrEnum):
    EMPTY = "empty"
    TOO_LONG = "too-long"
    NOT_A_NUMBER = "not-a-number"
    NOT_A_WHOLE_NUMBER = "not-a-whole-number"
    TOO_MANY_NUMBERS = "too-many-numbers"
    NEGATIVE = "negative"
    AMBIGUOUS_SEPARATOR = "ambiguous-separator"
    NO_UNIT = "no-unit"
    UNKNOWN_UNIT = "unknown-unit"
    WHICH_FLUID_OUNCE = "which-fluid-ounce"
    AMBIGUOUS_STONE = "ambiguous-stone"
    IMPLAUSIBLE = "implausible"
    OUT_OF_RANGE = "out-of-range"
    NOT_A_TIME = "not-a-time"
    NOT_A_DATE = "not-a-date"
    AMBIGUOUS_DATE = "ambiguous-date"
    WRONG_WEEKDAY = "wrong-weekday"
    NOT_A_CHECK_IN = "not-a-check-in"
    INCOMPLETE = "incomplete"


_PLAIN = {
    ParseErrorCode.EMPTY: "there was nothing in that answer",
    ParseErrorCode.TOO_LONG: "that is too long for one answer",
    ParseErrorCode.NOT_A_NUMBER: "no number could be read in that",
    ParseErrorCode.NOT_A_WHOLE_NUMBER: "a whole number is wanted",
    ParseErrorCode.TOO_MANY_NUMBERS: "there is more than one number in that",
    ParseErrorCode.NEGATIVE: "that number is below zero",
    ParseErrorCode.AMBIGUOUS_SEPARATOR: "the point or comma could mark thousands or decimals",
    ParseErrorCode.NO_UNIT: "the unit is missing",
    ParseErrorCode.UNKNOWN_UNIT: "that unit or word is not known here",
    ParseErrorCode.WHICH_FLUID_OUNCE: "US and imperial measures differ: say which",
    ParseErrorCode.AMBIGUOUS_STONE: "stones and pounds, or stones with decimals: say which",
    ParseErrorCode.IMPLAUSIBLE: "that is outside what can be believed",
    ParseErrorCode.OUT_OF_RANGE: "that is outside the range",
    ParseErrorCode.NOT_A_TIME: "no time of day could be read in that",
    ParseErrorCode.NOT_A_DATE: "no date could be read in that",
    ParseErrorCode.AMBIGUOUS_DATE: "day and month could be either way round",
    ParseErrorCode.WRONG_WEEKDAY: "that date falls on another weekday",
    ParseErrorCode.NOT_A_CHECK_IN: "that is not a check-in in one line",
    ParseErrorCode.INCOMPLETE: "a check-in in one line needs weight, fullness and water",
}


class ParseError(ValueError):
    """An answer that was not understood, or cannot be believed. Nothing was guessed.

    `facts` may hold `given` (what was read), `unit`, `low`, `high`, `hint` (a reading that may have
    been meant, as text to offer), `field` (which answer of a line), `missing`.
    """

    def __init__(self, code: ParseErrorCode, **facts: str | float) -> None:
        self.code: ParseErrorCode = code
        self.facts: dict[str, str | float] = facts
        super().__init__(_plain(code, facts))


def _plain(code: ParseErrorCode, facts: dict[str, str | float]) -> str:
    text = _PLAIN[code]
    if "low" in facts and "high" in facts:
        unit = f" {facts['unit']}" if facts.get("unit") else ""
        text += f" ({_figure(facts['low'])} to {_figure(facts['high'])}{unit})"
    if "hint" in facts:
        text += f"; did you mean {facts['hint']}?"
    return text


def _figure(value: str | float) -> str:
    return value if isinstance(value, str) else f"{value:g}"
