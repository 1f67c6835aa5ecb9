"""A line with its numbers in digits, each place as before: "between a five and a six" has 5 and 6.

What joins numbers of a line (a correction, a range, a sum) is looked for there, and written into
the line.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import lru_cache

from engine.written.late import Late
from engine.written.oneline.report import Known
from engine.written.oneline.tokens.numbers import goes_on, spelt_at

_NUMBER_OR_WORD = Late(r"(?<![\d.,])\d+(?:[.,]\d+)?(?![\d]|[.,]\d)|(?<![^\W_])[^\W\d_]{3,}")
#: A number as it stands there.
N = r"(?<![\d.,])\d+(?:[.,]\d+)?(?![.,]?\d)"

Edit = Callable[[re.Match[str]], str | None]


@lru_cache(maxsize=32)  # many patterns are looked for in one line
def in_digits(line: str, language: str) -> str:
    """The line, as long as before, with digits and blanks where a number is written out."""
    out, at = line, 0
    while match := _NUMBER_OR_WORD.search(line, at):
        start, at = match.span()
        found = (
            goes_on(line, match[0], at, language)
            if match[0][0].isdecimal()
            else spelt_at(line, start, language)
        )
        if found is None:
            continue
        number, at = found
        if len(number) <= at - start:
            out = f"{out[:start]}{number.ljust(at - start)}{out[at:]}"
    return out


def rewritten(line: str, known: Known, *edits: tuple[Late, Edit]) -> tuple[str, list[str]]:
    """The line with what each edit makes of each match of its pattern in the line's digits, one pattern
    after the other; and the words that stood there.

    What is longer than the words were can't be written in their place, and is left as it stood.
    """
    said: list[str] = []
    for pattern, edit in edits:
        at = 0
        while match := pattern.search(in_digits(line, known.language), at):
            start, end = match.span()
            at = max(end, start + 1)
            text = edit(match)
            if text is None or len(text) > end - start:
                continue
            said.append(line[start:end].strip(" ,;.:"))
            line = f"{line[:start]}{text.ljust(end - start)}{line[end:]}"
    return line, said
