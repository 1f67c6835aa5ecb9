"""The words of a check-in by language: what each of them says."""

from __future__ import annotations

from functools import cache

from engine.written.oneline.meanings import Meaning, Means
from engine.written.oneline.words_english import ENGLISH
from engine.written.oneline.words_german import GERMAN

_DAY_BEFORE = ("yesterday", "gestern")
_BESIDE_ENGLISH = {"de": GERMAN}


@cache
def phrases(language: str) -> dict[tuple[str, ...], tuple[Meaning, ...]]:
    """What each phrase (as its words) may mean: English, and this language (ISO 639-1) beside it."""
    found: dict[tuple[str, ...], tuple[Meaning, ...]] = {}
    other = _BESIDE_ENGLISH.get(language, {})
    for table in (other, ENGLISH):
        for (means, about, value), written in table.items():
            for phrase in written.split(", "):
                words = tuple(phrase.split())
                said = [words]
                if means is Means.TRAINING:  # the session that is told of is always that day's
                    said += [way for day in _DAY_BEFORE for way in ((day, *words), (*words, day))]
                for way in said:
                    found[way] = (*found.get(way, ()), Meaning(means, about, value))
    return found


@cache
def longest_phrase(language: str) -> int:
    return max(len(words) for words in phrases(language))
