"""How fast water was drunk, as told in a note: "2 litres in an hour", "2 Liter in einer Stunde"."""

from __future__ import annotations

import re

from engine.written.late import Late
from engine.written.units import ParseError, VolumeUnit, parse_volume
from engine.written.units.reading import plain
from engine.written.units.volume import VOLUME_WORDS

_COUNTS = {
    "one and a half": 1.5, "a couple of": 2, "half an": 0.5, "half a": 0.5, "half": 0.5, "an": 1,
    "a": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6,
    "anderthalb": 1.5, "eineinhalb": 1.5, "einen halben": 0.5, "einem halben": 0.5,
    "einer halben": 0.5, "halben": 0.5, "halbe": 0.5, "einen": 1, "einer": 1, "eine": 1, "ein": 1,
    "zwei": 2, "drei": 3, "vier": 4, "fünf": 5, "fuenf": 5, "sechs": 6,
}  # fmt: skip
_COUNT_WORDS = "|".join(sorted(_COUNTS, key=len, reverse=True))
_NUMBER = r"\d{1,5}(?:[.,]\d{1,3})?"  # of bounded length, for the search to stay linear
_LONGEST_H = 6.0  # past this it is a day's drinking, not a bout
_FAST = Late(
    rf"(?<![\w.,])(?P<amount>{_NUMBER}|{_COUNT_WORDS}) ?(?P<unit>{VOLUME_WORDS})\b(?: [a-z]+){{0,3}}? "
    r"(?:(?:in|within|over|inside|during)(?: about| around| under| less than| only| just)?"
    r"(?: the(?: last| past| first| space of)?)? ?"
    rf"(?P<time>{_NUMBER}|{_COUNT_WORDS})? ?(?P<span>hours?|hrs?|h|minutes?|mins?)\b"
    r"|(?P<rate>(?:an|per|every) hour(?! later| ago| after| before)|/ ?h(?:our|r)?)\b"
    r"|(?P<once>in one (?:go|sitting|gulp)|at once|in one))"
)
_AMOUNT = rf"(?P<amount>{_NUMBER}|{_COUNT_WORDS}) ?(?P<unit>{VOLUME_WORDS})\b"
_WITHIN_GERMAN = (
    r"(?:in|binnen|innerhalb|während)(?: von)?"
    r"(?: (?:nur|etwa|ca|ungefähr|knapp|weniger als|der letzten|den letzten))* ?"
    rf"(?P<time>{_NUMBER}|{_COUNT_WORDS})? ?(?P<span>stunden?|std|h|minuten?|min)\b"
)
_GAP_GERMAN = r"(?: (?!und\b|dann\b)[a-zäöüß]+){0,4}? "
_FAST_GERMAN = (
    Late(
        rf"(?<![\w.,]){_AMOUNT}{_GAP_GERMAN}(?:{_WITHIN_GERMAN}"
        r"|(?P<rate>(?:pro|je|die|jede) stunde)\b"
        r"|(?P<once>auf einmal|auf ex|in einem zug|am stück))"
    ),
    Late(rf"\b{_WITHIN_GERMAN}{_GAP_GERMAN}{_AMOUNT}"),
)


def fastest_drinking_l_per_h(text: str) -> float | None:
    """The highest rate told of in litres an hour, or None. Drunk "in one go" counts as an hour's.

    An ounce that may be US or imperial is taken for the larger, the US one: the safe side here.
    """
    told = " ".join(plain(text).split())
    rates = [
        rate
        for pattern in (_FAST, *_FAST_GERMAN)
        for match in pattern.finditer(told)
        if (rate := _rate(match)) is not None
    ]
    return max(rates, default=None)


def _rate(match: re.Match[str]) -> float | None:
    amount = match["amount"]
    try:
        number = str(_COUNTS[amount]) if amount in _COUNTS else amount
        litres = parse_volume(f"{number} {match['unit']}", unit=VolumeUnit.FLOZ_US).litres
    except ParseError:
        return None
    hours = 1.0 if match["span"] is None else _hours(match["time"], match["span"])
    if hours is None or not 0 < hours <= _LONGEST_H:
        return None
    # within less than an hour, all of it was drunk within an hour
    return litres / max(1.0, hours)


def _hours(time: str | None, span: str) -> float | None:
    if time is None:
        count = 1.0
    elif time in _COUNTS:
        count = float(_COUNTS[time])
    else:
        try:
            count = float(time.replace(",", "."))
        except ValueError:
            return None
    return count / 60 if span.startswith("m") else count
