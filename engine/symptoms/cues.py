"""Of which words a pattern may be found at all: most of the tables need not be tried on a clause.

To try every figure of speech on every clause took two fifths of the reading of a message.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import cached_property

from engine.written.late import Late

_SHORTEST = 3
_MOST_WORDS = 8192


class CueIndex:
    """Of several lists of cues, those of which one stands in a word: looked for by each part of the
    word, which is kept, up to a bound, so that most of a text costs a lookup a word.
    """

    def __init__(self, lists: Iterable[Iterable[str]]) -> None:
        found: dict[str, set[int]] = {}
        for index, cues in enumerate(lists):
            for cue in cues:
                found.setdefault(cue, set()).add(index)
        self._of_cue = found
        self._lengths = sorted({len(cue) for cue in found})
        self._of_word: dict[str, tuple[int, ...]] = {}

    def of(self, clause: str) -> set[int]:
        """The places of those lists that have a cue in one of the clause's words."""
        found: set[int] = set()
        for word in clause.split(" "):
            known = self._of_word.get(word)
            found.update(self._looked_up(word) if known is None else known)
        return found

    def _looked_up(self, word: str) -> tuple[int, ...]:
        found: set[int] = set()
        for length in self._lengths:
            for start in range(len(word) - length + 1):
                found.update(self._of_cue.get(word[start : start + length], ()))
        known = tuple(sorted(found))
        if len(self._of_word) < _MOST_WORDS:
            self._of_word[word] = known
        return known


class Cued:
    """Patterns over a clause of plain words, in order, each tried only where it may be found."""

    def __init__(self, patterns: Iterable[Late]) -> None:
        self._patterns = tuple(patterns)

    def all(self) -> Sequence[Late]:
        return self._patterns

    def worth_trying(self, clause: str) -> Iterator[Late]:
        """Those that one of the words in the clause may belong to."""
        for index in sorted(self._index.of(clause) | self._always):
            yield self._patterns[index]

    @cached_property
    def _cues(self) -> list[frozenset[str]]:
        return [cues_of(pattern.written) for pattern in self._patterns]

    @cached_property
    def _index(self) -> CueIndex:
        return CueIndex(self._cues)

    @cached_property
    def _always(self) -> set[int]:
        return {index for index, cues in enumerate(self._cues) if not cues}


def cues_of(pattern: str) -> frozenset[str]:
    """Parts of words, one of which is in every text that this regular expression is found in.

    Empty where that cannot be told, or where one would be so short that it stands in most texts.
    """
    found: set[str] = set()
    for way in ways(pattern):
        cues = max(_needed(way), key=_worth, default=frozenset[str]())
        if _worth(cues)[0] < _SHORTEST:
            return frozenset()
        found |= cues
    return frozenset(found)


def _worth(cues: frozenset[str]) -> tuple[int, int]:
    """The longer the shortest of them the better, and then the fewer."""
    return min(map(len, cues), default=0), -len(cues)


def ways(pattern: str) -> list[str]:
    """The alternatives of a pattern, as far as they stand in no bracket."""
    found, depth, start = [], 0, 0
    for at, char in enumerate(pattern):
        depth += (char == "(") - (char == ")")
        if char == "|" and depth == 0:
            found.append(pattern[start:at])
            start = at + 1
    return [*found, pattern[start:]]


def _needed(way: str) -> Iterator[frozenset[str]]:
    """Of what has to stand in a text for this way of a pattern, the cues of each part."""
    run, at = "", 0
    while at < len(way):
        end = _end_of(way, at)
        least, after = _least(way, end)
        letter = way[at] if end == at + 1 and way[at] not in ".^$" else ""
        if letter and least:
            run += letter
        if not letter or after > end:
            yield from _of_letters(run)
            run = ""
        if way.startswith("(?:", at) and least:
            yield cues_of(way[at + 3 : end - 1])
        at = after
    yield from _of_letters(run)


def _of_letters(run: str) -> Iterator[frozenset[str]]:
    longest = max(run.split(" "), key=len)
    if longest:
        yield frozenset({longest})


def _end_of(way: str, at: int) -> int:
    """Where the letter, class, escape or bracket that begins there ends."""
    if way[at] == "\\":
        return at + 2
    if way[at] == "[":
        return way.index("]", at + 2) + 1
    if way[at] != "(":
        return at + 1
    depth = 0
    for end in range(at, len(way)):
        depth += (way[end] == "(") - (way[end] == ")")
        if depth == 0:
            return end + 1
    raise ValueError(f"a bracket is not closed: {way}")


def _least(way: str, at: int) -> tuple[int, int]:
    """How often at least what ends there has to stand (0 or 1), and where what says so ends."""
    least, end = 1, at
    if way[at : at + 1] in set("?*+"):
        least, end = int(way[at] == "+"), at + 1
    elif way[at : at + 1] == "{":
        end = way.index("}", at) + 1
        least = int(way[at + 1] not in "0,")
    if end > at and way[end : end + 1] == "?":
        end += 1
    return least, end
