"""At whom a coach's words are put: at several by name, at everybody, or only of somebody."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence

from bot.direct import words_passing_on as words
from bot.words.languages import listed

_TO = r"(?:(?:to|for|an|für|tell|sag|sage)\s+)?"
_THEN = r"(?:\s*[,:;!–-]\s*|,?\s+(?:that|dass)\s+)"
_JOINT = r"\s*(?:,|&|\+|and|und)\s*(?:and\s+|und\s+)?"


def together(names: Sequence[str], text: str) -> tuple[list[str], str]:
    """Those at whom a text is put together ("Mia and Dora, …", "an alle: …"), and the text without
    that; else nobody.
    """
    said = text.strip()
    if not names:
        return [], said
    for everybody in (True, False):
        one_of = _either(listed(words.EVERYBODY) if everybody else names)
        begin = rf"{_TO}{one_of}(?!\w){_THEN}" if everybody else (
            rf"@?{one_of}(?:{_JOINT}@?{one_of})+(?!\w)[\s,:;–-]*"
        )  # fmt: skip
        match = re.match(begin, said, re.IGNORECASE)
        if match is not None and said[match.end() :]:
            named = re.findall(rf"(?<!\w){one_of}(?!\w)", match[0], re.IGNORECASE)
            meant = {name.casefold() for name in named}
            found = [name for name in names if everybody or name.casefold() in meant]
            return found, said[match.end() :]
    return [], said


def is_of_them(said: str, rest: str) -> bool:
    """Whether the name that a text begins with is its subject, and no call: "Mia has to sleep"."""
    called = re.search(r"[,:;–-]\s*$", said[: len(said) - len(rest)])
    first = rest.split(maxsplit=1)[0].casefold() if rest else ""
    return called is None and first in listed(words.OF_THEM)


def _either(said: Iterable[str]) -> str:
    return f"(?:{'|'.join(sorted(map(re.escape, said), key=len, reverse=True))})"
