"""From what was typed to plain characters, and from those to one number: a bare one, a score, grams."""

from __future__ import annotations

import re
import unicodedata
from enum import StrEnum

from engine.written.late import Late


class ParseErrorCode(StrEnum):
    """Why an answer was not read, each with what is said of it by itself."""

    said: str

    def __new__(cls, value: str, said: str = "") -> ParseErrorCode:
        code = str.__new__(cls, value)
        code._value_, code.said = value, said
        return code

    EMPTY = "empty", "there was nothing in that answer"
    TOO_LONG = "too-long", "that is too long for one answer"
    NOT_A_NUMBER = "not-a-number", "no number could be read in that"
    NOT_A_WHOLE_NUMBER = "not-a-whole-number", "a whole number is wanted"
    TOO_MANY_NUMBERS = "too-many-numbers", "there is more than one number in that"
    NEGATIVE = "negative", "that number is below zero"
    AMBIGUOUS_SEPARATOR = (
        "ambiguous-separator",
        "the point or comma could mark thousands or decimals",
    )
    NO_UNIT = "no-unit", "the unit is missing"
    UNKNOWN_UNIT = "unknown-unit", "that unit or word is not known here"
    WHICH_FLUID_OUNCE = "which-fluid-ounce", "US and imperial measures differ: say which"
    AMBIGUOUS_STONE = "ambiguous-stone", "stones and pounds, or stones with decimals: say which"
    IMPLAUSIBLE = "implausible", "that is outside what can be believed"
    OUT_OF_RANGE = "out-of-range", "that is outside the range"
    NOT_A_TIME = "not-a-time", "no time of day could be read in that"
    NOT_A_DATE = "not-a-date", "no date could be read in that"
    AMBIGUOUS_DATE = "ambiguous-date", "day and month could be either way round"
    WRONG_WEEKDAY = "wrong-weekday", "that date falls on another weekday"
    NOT_A_CHECK_IN = "not-a-check-in", "that is not a check-in in one line"
    INCOMPLETE = "incomplete", "a check-in in one line needs weight, fullness and water"


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
    text = code.said
    if "low" in facts and "high" in facts:
        unit = f" {facts['unit']}" if facts.get("unit") else ""
        text += f" ({_figure(facts['low'])} to {_figure(facts['high'])}{unit})"
    if "hint" in facts:
        text += f"; did you mean {facts['hint']}?"
    return text


def _figure(value: str | float) -> str:
    return value if isinstance(value, str) else f"{value:g}"


LONGEST = 200  # characters of one answer; a number with its unit needs no more

NUMBER = r"(?:\d+(?:[.,]\d+)*|[.,]\d+)"
_NUMBER_RE = Late(rf"(?<![\d.,])[-+]?\s?{NUMBER}")
_SPELT = {
    "zero": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5,
    "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10,
}  # fmt: skip
_HALVES = {"½": "5", "¼": "25", "¾": "75"}
_PLAIN_CHARACTERS = str.maketrans(
    {
        "٫": ".", "٬": ",", "،": ",", "、": ",", "。": ".",
        "−": "-", "–": "-", "—": "-", "‐": "-", "‑": "-",
        "’": "'", "‘": "'", "`": "'", "´": "'", "′": "'",
        "“": '"', "”": '"', "„": '"', "«": '"', "»": '"', "″": '"', "⁄": "/",
    }
)  # fmt: skip


#: Of the characters of which nearly all that is read consists, as `_plain_character` has them.
_PLAIN_ASCII = {
    place: "\n"
    if char == "\n"
    else " "
    if char.isspace()
    else char.translate(_PLAIN_CHARACTERS).lower()
    for place, char in enumerate(map(chr, range(128)))
}


def plain(text: str) -> str:
    """Lower case, ASCII digits, one kind of space, quote and minus, nothing invisible."""
    return plain_with_places(text)[0].strip()


def in_one_line(text: str) -> str:
    """In small letters, with single blanks and one kind of apostrophe: as phrases are looked for."""
    return " ".join(text.lower().replace("’", "'").split())


def plain_with_places(text: str) -> tuple[str, list[int]]:
    """The plain characters, unstripped, and for each the place in `text` that it came from."""
    if text.isascii():
        return text.translate(_PLAIN_ASCII), list(range(len(text)))
    out: list[str] = []
    places: list[int] = []
    for place, char in enumerate(text):
        # "½7" is no number that anybody writes: the sign stays, so that nothing reads it as 0.57
        run_on = char in _HALVES and text[place + 1 : place + 2].isdecimal()
        for new in char if run_on else _plain_character(char, out):
            out.append(new)
            places.append(place)
    return "".join(out), places


def _plain_character(char: str, before: list[str]) -> str:
    if char.isascii():
        return _PLAIN_ASCII[ord(char)]
    if (digit := unicodedata.decimal(char, None)) is not None:
        return str(digit)
    if char in _HALVES:
        return f".{_HALVES[char]}" if before and before[-1].isdigit() else f"0.{_HALVES[char]}"
    if "\uff01" <= char <= "\uff5e":  # full-width forms of the ASCII characters
        return chr(ord(char) - 0xFEE0).lower()
    if char.isspace():
        return "\n" if char == "\n" else " "
    if unicodedata.category(char) == "Cf" or char in "\ufe0f\u20e3":
        return ""  # direction marks, joiners, and the frame around a keycap digit
    return char.translate(_PLAIN_CHARACTERS).lower()


def one_answer(text: str) -> str:
    """The plain characters of a short answer, or the error of one empty or too long."""
    if len(text) > LONGEST:
        raise ParseError(ParseErrorCode.TOO_LONG, high=LONGEST, low=1, unit="characters")
    answer = " ".join(plain(text).split())
    # a full stop at the end is punctuation, a point at the start belongs to ".5"
    answer = answer.rstrip(" .,;:!?=~").lstrip(" ;:!?=~")
    if not answer:
        # "?!" is no more an answer than a blank, yet a person who typed something is told so
        raise ParseError(ParseErrorCode.NOT_A_NUMBER if text.strip() else ParseErrorCode.EMPTY)
    return answer


def number_typed(text: str) -> str:
    """The same of what has to be a number, and no negative one; a dash between two is no minus."""
    answer = one_answer(text)
    if re.match(rf"\D*?-\s?{NUMBER}", answer) and not re.match(r"[^-]*\d\s?-\s?\d", answer):
        raise ParseError(ParseErrorCode.NEGATIVE)
    return answer


def decimal(token: str, *, thousands: bool = False) -> float:
    """The number in `token`, with a decimal point or comma.

    A lone point or comma before exactly three digits could mark thousands or decimals, and two
    of them surely mean something else: both are refused. `thousands` says that decimals make no
    sense in this unit (millilitres), so that three digits after it can only be thousands.
    """
    marks = re.findall(r"[.,]", token)
    if len(marks) > 1:
        raise ParseError(ParseErrorCode.AMBIGUOUS_SEPARATOR, given=token)
    if marks:
        whole, digits = re.split(r"[.,]", token)
        if len(digits) == 3 and whole.strip("0"):
            if not thousands:
                raise ParseError(ParseErrorCode.AMBIGUOUS_SEPARATOR, given=token)
            return float(whole + digits)
        return float(f"{whole or '0'}.{digits}")
    return float(token)


def why_not_read(answer: str, unit_words: str = "") -> ParseError:
    """The error that says best why no pattern matched `answer`."""
    numbers = _NUMBER_RE.findall(answer)
    if not numbers:
        return ParseError(ParseErrorCode.NOT_A_NUMBER)
    if len(numbers) > 1:
        return ParseError(ParseErrorCode.TOO_MANY_NUMBERS)
    words = " ".join(re.sub(NUMBER, " ", answer).split())[:20]
    return ParseError(ParseErrorCode.UNKNOWN_UNIT, given=words, known=unit_words)


def spelt_out(answer: str) -> int | None:
    """The small whole number written as a word, if that is all there is."""
    return _SPELT.get(answer)


_GRAMS = Late(
    rf"(?:carbs? ?[:=]? ?)?\+?({NUMBER}) ?(?:grammes?|gramm|grams?|gr|g)?"
    r"(?: (?:of )?(?:carbs?|carbohydrates?|kh|kohlenhydrate))?"
)
_SCORE = Late(rf"\+?({NUMBER})(?: ?(?:/|of|out of|von) ?({NUMBER}))?")
BARE = Late(rf"\+?({NUMBER})")


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
    match = BARE.fullmatch(answer)
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


def _within(value: float, low: float | None, high: float | None, unit: str = "") -> float:
    if (low is not None and value < low) or (high is not None and value > high):
        facts: dict[str, str | float] = {"given": value}
        facts |= {k: v for k, v in (("low", low), ("high", high)) if v is not None}
        if unit:
            facts["unit"] = unit
        raise ParseError(ParseErrorCode.OUT_OF_RANGE, **facts)
    return value
