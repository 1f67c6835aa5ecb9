"""Numbers told in a way of their own, written plainly in their place.

"63 Kilo 90" is 63.90 kg, "1 7 4 . 6 pounds" 174.6, "siebenundfünfzig neunzig" 57.90, "between a five and a
six" 5-6, "3 and 3 quarters" 3.75.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re

from engine.written.late import Late
from engine.written.oneline.report import Known
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.in_digits import N, in_digits, rewritten
from engine.written.oneline.tokens.numbers import spelt_at
from engine.written.units import WeightUnit

_OVER = r"(?![^\W_]|')"
_KILO = r"(?:kg|kilos?|kilogramm)"
_DEKA = Late(
    rf"(?P<kg>\d{{2,3}}) *{_KILO} *(?:und |and )?(?P<more>\d{{1,2}}) *(?:deka(?:gramm)?|dag|dkg){_OVER}"
)
_KILO_CENTS = Late(
    rf"(?P<kg>\d{{2,3}}) *{_KILO} *(?:und |and )?(?P<more>[1-9]\d)(?<!10)(?= *(?:[,;!?\n]|\.(?!\d)|$))"
)
_SPACED = Late(
    r"(?<![\d.,/])(?P<digits>\d(?: \d){1,2}) ?[.,] ?(?P<tenth>\d)(?= *(?:pounds?|lbs?|kgs?|kilos?)(?![^\W_]))"
)
_STONE_WORDS = Late(
    r"(?P<st>\d{1,2}) *stones? *(?:and |und )?(?P<lb>\d{1,2})(?= *(?:[,;!?\n/]|\.(?!\d)|$| \())"
)
_QUARTERS = Late(r"(?P<whole>\d) *(?:and|und) *3 *quarters?(?![^\W_])")
_BETWEEN = Late(
    rf"\b(?:between|btw|zwischen|zwischn|zwischa|zwüsche) +(?:an? |ner |einer |eine |ne |a )?(?P<one>{N}) *(?:and|und|un|&|-|to|bis) *(?:an? |ner |einer |eine |ne |a )?(?P<other>{N})(?! *(?:uhr|o'clock|[ap]m)(?![^\W_]))"
)
_MINUS = Late(
    rf"(?P<whole>{N}) *(?P<unit>kgs?|kilos?|lbs?|pounds?)? *(?:minus|less) *(?:(?P<half>(?:an? |ein(?:e|en)? )?hal(?:f|be?[nrs]?)(?: an?)?)|(?P<less>{N})) *(?:kgs?|kilos?|lbs?|pounds?)?(?![^\W_])"
)
_MOST_LESS = 3.0
_WORDS = Late(r"(?<![^\W_])[^\W\d_]{3,}")
_CENTS = frozenset({"20", "25", "30", "40", "50", "60", "70", "75", "80", "90"})
_LEAST_SPELT, _MOST_LITRES = 30, 9
_MOST_OF_STONE = 13
_AFTER = 2  # numbers behind it: then a fullness and a drink are told elsewhere


def told_plainly(line: str, known: Known) -> tuple[str, str]:
    """The line, as long as before, with such numbers as digits; the words of a weight worked out."""
    line, _ = rewritten(
        line,
        known,
        (_DEKA, _with_cents),
        (_KILO_CENTS, _with_cents),
        (_SPACED, _without_spaces),
        (_QUARTERS, lambda match: f"{match['whole']}.75"),
    )
    line, subtracted = rewritten(line, known, (_MINUS, _less))
    line, _ = rewritten(
        line,
        known,
        (_BETWEEN, lambda match: f"{match['one']}-{match['other']}"),
        *([(_STONE_WORDS, _in_stones)] if known.language == "de" else []),
    )
    if known.weight_unit is not WeightUnit.ST:
        line = _with_decimals_said(line, known)
    return line, " / ".join(subtracted)


def _with_cents(match: re.Match[str]) -> str:
    return f"{match['kg']}.{match['more'].zfill(2)}kg"


def _less(match: re.Match[str]) -> str | None:
    """ "131 minus half"."""
    whole, less = rough(match["whole"]), 0.5 if match["half"] else rough(match["less"])
    if whole < _LEAST_SPELT or less > _MOST_LESS:
        return None
    return f"{whole - less:.2f}".rstrip("0").rstrip(".") + (match["unit"] or "")


def _without_spaces(match: re.Match[str]) -> str:
    return f"{match['digits'].replace(' ', '')}.{match['tenth']}"


def _in_stones(match: re.Match[str]) -> str | None:
    return f"{match['st']}st {match['lb']}lb" if int(match["lb"]) <= _MOST_OF_STONE else None


def _with_decimals_said(line: str, known: Known) -> str:
    """ "siebenundfünfzig neunzig", "drei fünfzig"; "ninety three seven, seven, seven"."""
    for word in _WORDS.finditer(line):
        first = spelt_at(line, word.start(), known.language)
        if first is None or not first[0].isdecimal() or line[first[1] : first[1] + 1] != " ":
            continue
        second = spelt_at(line, first[1] + 1, known.language)
        if second is None or not second[0].isdecimal():
            continue
        following = line[second[1] : second[1] + 1]
        if following.strip() not in ("", ",", ".", ";", "\n", "!") or following == " ":
            continue
        whole = int(first[0])
        cents = second[0] in _CENTS and known.language == "de"
        rest = re.findall(N, in_digits(line[second[1] :], known.language))
        tenth = whole >= _LEAST_SPELT and len(second[0]) == 1 and len(rest) >= _AFTER
        drink = cents and 0 < whole <= _MOST_LITRES
        weight = (cents and whole >= _LEAST_SPELT) or tenth
        text = f"{whole}.{second[0]}"
        last = known.weight_kg or known.on_file_kg
        if weight and last is not None and abs(rough(text) - last) > 0.05 * last:
            continue
        if weight or drink:
            length = second[1] - word.start()
            line = f"{line[: word.start()]}{text.ljust(length)}{line[second[1] :]}"
    return line
