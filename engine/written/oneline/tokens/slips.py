"""Slips of the thumb, set right before anything is read: "7O.2", "62,l", "58,,4", kisses as commas.

What stands in the place of an answer ("62.1 / - / 5") becomes one sign, which is read as "left out".
"""

from __future__ import annotations

import re

from engine.written.late import Late
from engine.written.oneline.report import Known
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.numbers import N, in_digits, instead, rewritten, spelt_at
from engine.written.units import WeightUnit
from engine.written.units.amounts import VOLUME_WORDS
from engine.written.units.reading import NUMBER

#: In the place of an answer that was left out.
LEFT_OUT = "∅"
LEFT_OUT_OF_LABEL = "⊘"  # right behind the word for the answer
_DOUBLED = Late(r"(?<![\d.,])\d{1,3}(?P<mark>[.,])[.,](?=\d{1,2}(?!\d|[.,]{2}|[.,]\d))")
_DOTS = Late(r"\.{2,}")
_NOUGHT = Late(
    r"(?<=\d)(?<!h2)o(?=[.,]?\d|[.,]o)|(?<=\d[.,])o(?![^\W_])|(?<=\d)(?<!h2)o(?![^\W_]|')"
)
_ONE = Late(r"(?<=\d\d[.,])[li](?![^\W_])|(?<=\d)[li](?=\d*[.,]\d)")
#: "77'2", and "77;2 ; 7 ; 4" where other marks part the answers.
_FOR_A_POINT = Late(r"(?<![\d.,;'/])\d{2,3}(?P<mark>[';])(?=\d(?![\d;']))")
_TIGHT_MARKS = Late(r"(?<=\d);(?=\d)")
_BEFORE_ITS_PLACE = Late(r"(?<=\d) (?P<mark>[,;])(?=\d{1,2}(?:[.,]\d)?(?: |$))")  # "80,9 ,8 ,5"
_IN_BRACKETS = Late(r"\((?P<inside>\d{1,3}(?:[.,]\d+)?)\)")
#: What is typed on one another: "80.9kgF8", "77.2kg7/10", "F7W4".
_GLUED = Late(
    r"(?<=\d)(?=(?:[fwvg]|h2o)[:=]?\d)|(?<=\d)(?:kgs?|lbs?|l)(?=[fwvgh][:=]?\d)"
    r"|(?<=[.,]\d)(?:kgs?|lbs?)(?=\d)|(?<=\d/10)(?=[^\W\d_])"
    r"|(?<=\d)(?=(?:fullness|full|voll|fülle|fuelle|water|wasser|weight|gewicht)(?:[:=]?\d|(?![^\W_])))"
)
#: "7f 4w": each letter behind its number.
_DASHED = Late(
    r"(?<![^\W_])(?:f|w|g|v|h|h2o|💧 {0,2}|full|fullness|voll|fülle|weight|gewicht|water|wasser)"
    r"(?P<dash>-)(?=\d)"
)  # "f-7 w-71.6"
_LETTER_BEHIND = Late(r"(?<![\w.,])(?P<number>\d{1,3}(?:[.,]\d)?)(?P<letter>[fwv])(?![\w'])")
_FILLERS = Late(r"(?<![^\W_])(?:um+|ehm|erm+)(?![^\W_]|')")  # "um" is a word of German
_H_OF_WATER = Late(
    r"(?<![^\W_])h(?!20)(?=[:=]?\d{1,3}(?:[.,]\d{1,2})?(?:l|gal|oz)?(?![^\W_]|[.,]?\d))"
)  # "F8 W77.5 H6"
_FORMULA = Late(r"(?<![^\W_])h2[o0](?=[:= ]*\d|(?![^\W_]))")  # "h2o 3.5"
_LABELLED = Late(
    r"(?P<word>(?:^|[,;\n|/.])\s*[^\W\d_]+) - (?=\d)"
)  # "Water - 4, Fullness - 6"; not "9 full - 3 l"
_ARROW = r"(?:-+>|=>|→|➡|>)"
_FROM_TO = Late(
    rf"(?<![\d.,])(?P<old>{NUMBER}) ?(?:(?:kgs?|lbs?|oz|ml|l) ?)?{_ARROW} ?"
    rf"(?=(?P<new>{NUMBER})(?! ?{_ARROW}))"
)
_MOST_MOVED = 0.35  # of the larger: what is farther apart are two answers
_BEHIND_LABEL = Late(
    r"(?:^|(?<=[,;|/\n])) *(?:full\w*|fülle|voll|water|wasser|weight|gewicht|f|w|h2o|look|"
    r"sharp\w*|schärfe|drank|getrunken|trinken)(?: *[:=] *| +)(?P<sign>-{1,2}|\?{1,2}|x|_+)"
    r"(?= *(?:[,;|/\n]|$))"
)
_STANDS_IN = r"(?:-{1,3}|x{1,2}|\?{1,3}|_+|\*|k\.? ?a\.?|n\.?/?a\.?|k/a)"
_IN_SLOT = Late(rf"(?:^|(?<=[/,;|\n])) *(?P<sign>{_STANDS_IN}) *(?=[/,;|\n]|$)")
_PLAIN_FIGURE = rf"{NUMBER} ?(?:kgs?|lbs?|{VOLUME_WORDS}|/10)?(?![^\s])"
_BARE_ROW = Late(rf"\s*{_PLAIN_FIGURE}(?: +(?:{_PLAIN_FIGURE}|[-x?]{{1,2}}(?!\S)))+\s*")
_SIGN_IN_ROW = Late(r"(?<= )(?:[x?]{1,2}(?!\S)|--?(?=\s*$|\s+--?\s*$))")
_FIGURE = Late(NUMBER)
_CROSS = Late(r"(?:(?<=\s)|^)x(?=\s|$)")
_PRODUCT = Late(rf"(?<![\d.,])(?P<many>\d{{1,2}}) x (?P<each>{NUMBER}) ?(?P<unit>{VOLUME_WORDS})?")
_COUNTED = Late(r" ?(?:\d|(?:half|halbe?[rsn]?|an?|one|ein\w*)(?![^\W_]))")
_MOST_DRUNK_L = 12.0
_LARGEST_BOTTLE_L = 3.0


def without_doubled(line: str, places: list[int]) -> str:
    """The line with one mark in "58,,4"; `places` loses the other with it."""
    # dots in a row part answers where they stand between more than two figures
    found = [slip.end() - 1 for slip in _DOUBLED.finditer(line)]
    if len(_DOTS.compiled.findall(line)) != sum(line[at - 1 : at + 1] == ".." for at in found):
        found = [at for at in found if line[at - 1 : at + 1] != ".."]
    for at in reversed(found):
        del places[at]
        line = line[:at] + line[at + 1 :]
    return line


def parted(line: str, places: list[int]) -> str:
    """The line with a space where labels are typed on one another; `places` gets one, too."""
    for glued in reversed(list(_GLUED.finditer(line))):
        at = glued.end()
        places.insert(at, places[at])
        line = f"{line[:at]} {line[at:]}"
    return line


def mended(line: str, language: str, most: int) -> str:
    """The line with such slips set right, each in its place; `most` answers may be told."""
    line = _FORMULA.sub("💧  ", line)
    line = _H_OF_WATER.sub("💧", _ONE.sub("1", _NOUGHT.sub("0", line)))
    line = _with_marks_set_right(line)
    line = _FROM_TO.sub(_moved, line)
    if len(_LABELLED.compiled.findall(line)) > 1:
        line = _LABELLED.sub(lambda label: f"{label['word']} : ", line)
    if language != "de":
        line = _FILLERS.sub(lambda filler: " " * len(filler[0]), line)
    return _with_crosses_read(_with_places_held(line, most))


def _with_marks_set_right(line: str) -> str:
    """Another mark for a decimal point, one before its place, brackets and letters around a number."""
    tight = len(_TIGHT_MARKS.compiled.findall(line))
    for slip in list(_FOR_A_POINT.finditer(line)):
        if slip["mark"] == "'" or (tight == 1 and len(_FIGURE.compiled.findall(line)) > 2):
            at = slip.start("mark")
            line = f"{line[:at]}.{line[at + 1 :]}"
    if len(_BEFORE_ITS_PLACE.compiled.findall(line)) > 1:
        line = _BEFORE_ITS_PLACE.sub(lambda slip: f"{slip['mark']} ", line)
    if len(_IN_BRACKETS.compiled.findall(line)) > 1:
        line = _IN_BRACKETS.sub(lambda slip: f" {slip['inside']} ", line)
    dashes = [slip.start("dash") for slip in _DASHED.finditer(line)]
    for at in dashes if len(dashes) > 1 else ():
        line = f"{line[:at]}:{line[at + 1 :]}"
    letters = {slip["letter"] for slip in _LETTER_BEHIND.finditer(line)}
    if len(letters) > 1:
        line = _LETTER_BEHIND.sub(lambda slip: f"{slip['letter']}{slip['number']}", line)
    return line


def _moved(arrow: re.Match[str]) -> str:
    """ "60.4 -> 60.1" is 60.1; of "60.2 → 5 → 3.5" each is an answer."""
    try:
        old, new = (float(arrow[end].replace(",", ".")) for end in ("old", "new"))
    except ValueError:
        return arrow[0]
    chained = re.search(r"[>→➡]\s*$", arrow.string[: arrow.start()])
    near = abs(new - old) <= _MOST_MOVED * max(old, new)
    return " " * len(arrow[0]) if near and not chained else arrow[0]


def _with_places_held(line: str, most: int) -> str:
    figures = len(_FIGURE.compiled.findall(line))
    for slot in list(_BEHIND_LABEL.finditer(line)) if figures else ():
        start, end = slot.span("sign")
        line = instead(line, start, end, LEFT_OUT_OF_LABEL)
    signs = [slot.span("sign") for slot in _IN_SLOT.finditer(line)]
    if not signs and _BARE_ROW.fullmatch(line):
        signs = [sign.span() for sign in _SIGN_IN_ROW.finditer(line)]
    if not signs or not figures or figures + len(signs) > most:
        return line
    for start, end in signs:
        line = instead(line, start, end, LEFT_OUT)
    return line


def _with_crosses_read(line: str) -> str:
    """Crosses that part answers, as kisses do, read as such: "54.7 x 6 x 4l x"; "3 x 1.5l" counts."""
    crosses = [cross.start() for cross in _CROSS.finditer(line)]
    if not crosses:
        return line
    counting: set[int] = set()
    for product in _PRODUCT.finditer(line):
        each = float(product["each"].replace(",", ".")) if product["each"].count(",") < 2 else 99.0
        litres = each / 1000 if (product["unit"] or "").startswith("m") else each
        drunk = product["unit"] or (each % 1 and each < _LARGEST_BOTTLE_L)
        chained = line[: product.start()].rstrip().endswith("x")
        if drunk and not chained and int(product["many"]) * litres <= _MOST_DRUNK_L:
            counting.add(product.end("many") + 1)
        if drunk and (product["unit"] or "").startswith(("o", "f")):
            counting.add(product.end("many") + 1)
    between = [at for at in crosses if at not in counting]
    parts = len(between) > 1 or any(not _COUNTED.match(line, at + 1) for at in between)
    for at in between if parts else []:
        line = line[:at] + "|" + line[at + 1 :]
    return line


# ruff: noqa: E501 - a pattern stays on one line


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
            line = instead(line, word.start(), second[1], text)
    return line
