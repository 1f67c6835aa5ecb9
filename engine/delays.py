"""Word that the day runs late or early, as people type it from a dressing room."""

from __future__ import annotations

import re

_NUMBER = r"(?P<n>\d{1,3}(?:[.,]5)?|an?|half an?|one|two|three|quarter of an?)"
_UNIT = r"(?P<unit>minutes?|mins?|m|hours?|hrs?|h)"
_AMOUNT = rf"{_NUMBER} ?{_UNIT}?(?P<half> and a half)?"
_LEAD = r"(?:(?:they(?:'re| are)?|we(?:'re| are)?|it(?:'s| is)?|i'm|show(?:'s| is)?|all) )?"
_GOING = r"(?:(?:running|going|now|about|about to be|roughly|around|some) )*"
_LATE = r"(?:late|later|behind|behind schedule|delayed|delay)"
_EARLY = r"(?:early|earlier|ahead|ahead of schedule)"
_PATTERNS = (
    re.compile(rf"{_LEAD}{_GOING}(?P<way>{_LATE}|{_EARLY}) (?:by )?{_GOING}{_AMOUNT}"),
    re.compile(rf"{_LEAD}{_GOING}{_AMOUNT} (?P<way>{_LATE}|{_EARLY})"),
)
_WORDS = {
    "a": 1.0, "an": 1.0, "one": 1.0, "two": 2.0, "three": 3.0, "half a": 0.5, "half an": 0.5,
    "quarter of a": 0.25, "quarter of an": 0.25,
}  # fmt: skip
MOST_MINUTES = 600


def parse_delay(text: str) -> int | None:
    """Minutes later (negative: earlier), or None where it is not plainly and wholly such word.

    A bare number is minutes. "late 45", "running an hour behind", "1.5 h late", "20 min early".
    """
    said = " ".join(text.lower().replace("’", "'").split()).rstrip(".!")
    for pattern in _PATTERNS:
        match = pattern.fullmatch(said)
        if match is None:
            continue
        number, unit = match["n"], match["unit"] or ""
        spelt = number in _WORDS
        if spelt and not unit:
            return None
        amount = _WORDS[number] if spelt else float(number.replace(",", "."))
        amount += 0.5 if match["half"] else 0
        minutes = round(amount * (60 if unit.startswith("h") else 1))
        if not 0 < minutes <= MOST_MINUTES:
            return None
        return minutes if re.fullmatch(_LATE, match["way"]) else -minutes
    return None
