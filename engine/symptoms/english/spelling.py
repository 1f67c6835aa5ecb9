"""Misspelt words put right, as far as our vocabulary goes."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable, Collection, Iterable, Iterator, Mapping
from importlib.resources import files
from typing import NamedTuple

from engine.written.late import word_set

_MOST_KEPT = 8192  # words; the most frequent ones come early
_DRAWN_OUT = re.compile(r"([a-z])\1{2,}")
_LONGEST_WORD = 18  # nothing in the vocabulary is longer by more than the slips allowed


class Habits(NamedTuple):
    """The words that slips are put right to, those that people misspell in ways of their own, whole or
    by how they begin, and sound ones (`left_alone`) that only look like a misspelt one.
    """

    vocabulary: Collection[str]
    variants: Mapping[str, str]
    beginnings: Mapping[str, str]
    left_alone: Collection[str]

    @classmethod
    def written(cls, package: str, fold: Callable[[str], str] = str) -> Habits:
        """What `spelling.toml` in the folder of a language says."""
        file = files(package) / "spelling.toml"
        told = tomllib.loads(file.read_text(encoding="utf-8"))
        variants, beginnings = (
            {form: meant for meant, forms in told[key].items() for form in forms.split()}
            for key in ("misspelt", "beginnings")
        )
        vocabulary, left_alone = (word_set(fold(told[key])) for key in ("vocabulary", "left_alone"))
        return cls(vocabulary, variants, beginnings, left_alone)


class Corrector:
    """Puts words within a slip or two of the vocabulary right: one up to nine letters, two from
    ten on. Of four letters, only one left out is thought of. The first letter is trusted, unless
    the first two have changed places.

    Looks words up by what is left when letters are taken out, so that a long message costs a
    lookup per letter and not a comparison per word known.
    """

    def __init__(
        self,
        habits: Habits,
        also: Iterable[str] = (),
        *,
        tried_as: Callable[[str], str] | None = None,
    ) -> None:
        """Words of `also` are meant only where none of the vocabulary is as near.

        What none of the `habits` knows is looked up once more as what `tried_as` makes of it.
        """
        self._tried_as = tried_as
        vocabulary, self._variants, self._beginnings, self._left_alone = habits
        self._corrected: dict[str, str] = {}
        self._first = frozenset(word for word in vocabulary if len(word) >= 5)
        self._words = self._first.union(also)
        self._by_remains: dict[str, list[str]] = {}
        for word in sorted(self._words):
            for rest in _remains(word, _slips(word)):
                self._by_remains.setdefault(rest, []).append(word)

    def corrected(self, words: Iterable[str]) -> dict[str, str]:
        """For each the word of the vocabulary that was meant, or itself; kept, up to a bound."""
        return {word: self._correct(word) for word in words}

    def _correct(self, word: str) -> str:
        known = self._corrected.get(word)
        if known is None:
            known = self._meant(word)
            again = self._tried_as(word) if known == word and self._tried_as else word
            if again != word:
                known = self._meant(again)
            if len(self._corrected) < _MOST_KEPT:
                self._corrected[word] = known
        return known

    def _meant(self, word: str) -> str:
        if (variant := self._variants.get(word)) is not None:
            return variant
        if len(word) < 4 or word in self._words or word in self._left_alone:
            return word
        if word.endswith("'s"):
            return self._correct(word[:-2]) + "'s"
        for beginning, meant in self._beginnings.items():
            if word.startswith(beginning):
                return meant
        if _DRAWN_OUT.search(word) is None:
            return self._nearest(word) or word
        for calm in (_DRAWN_OUT.sub(r"\1\1", word), _DRAWN_OUT.sub(r"\1", word)):
            if calm in self._words or calm in self._variants:
                return self._variants.get(calm, calm)
        return self._nearest(calm) or word

    def _nearest(self, word: str) -> str | None:
        if len(word) > _LONGEST_WORD:
            return None
        allowed = _slips(word)
        near = {
            (distance, known not in self._first, known)
            for rest in _remains(word, allowed)
            for known in self._by_remains.get(rest, ())
            if (known[0] == word[0] or known[:2] == word[1::-1])
            and (distance := _distance(word, known)) <= allowed
        }
        if not near:
            return None
        meant = min(near)[2]
        return None if len(word) == 4 and len(meant) != 5 else meant


def _slips(word: str) -> int:
    return 2 if len(word) >= 10 else 1


def _remains(word: str, slips: int) -> Iterator[str]:
    yield word
    for i in range(len(word)):
        once = word[:i] + word[i + 1 :]
        yield once
        if slips > 1:
            for j in range(i, len(once)):
                yield once[:j] + once[j + 1 :]


def _distance(a: str, b: str) -> int:
    """Letters added, dropped, changed or swapped with the next (optimal string alignment)."""
    before: list[int] = []
    last = list(range(len(b) + 1))
    for i, x in enumerate(a, start=1):
        row = [i]
        for j, y in enumerate(b, start=1):
            cost = min(last[j] + 1, row[j - 1] + 1, last[j - 1] + (x != y))
            if i > 1 and j > 1 and x == b[j - 2] and a[i - 2] == y:
                cost = min(cost, before[j - 2] + 1)
            row.append(cost)
        before, last = last, row
    return last[-1]
