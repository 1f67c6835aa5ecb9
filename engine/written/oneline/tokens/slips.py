"""Slips of the thumb, set right before anything is read: "7O.2", "62,l", "58,,4", kisses as commas.

What stands in the place of an answer ("62.1 / - / 5") becomes one sign, which is read as "left out".
"""

from __future__ import annotations

import re

from engine.written.late import Late
from engine.written.units.reading import NUMBER
from engine.written.units.volume import VOLUME_WORDS

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
        line = line[:start] + LEFT_OUT_OF_LABEL + " " * (end - start - 1) + line[end:]
    signs = [slot.span("sign") for slot in _IN_SLOT.finditer(line)]
    if not signs and _BARE_ROW.fullmatch(line):
        signs = [sign.span() for sign in _SIGN_IN_ROW.finditer(line)]
    if not signs or not figures or figures + len(signs) > most:
        return line
    for start, end in signs:
        line = line[:start] + LEFT_OUT + " " * (end - start - 1) + line[end:]
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
