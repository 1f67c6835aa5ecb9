"""The words of a check-in by language: what each says, and what a misspelt one may have meant.

What they say is text: `english.toml`, and a file for each language that people write beside it.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from functools import cache
from importlib.resources import files

from engine.written.late import Late
from engine.written.oneline.tokens.pieces import Meaning, Means

_DAY_BEFORE = ("yesterday", "gestern")
_ENGLISH, _BESIDE_ENGLISH = "english", {"de": "german"}
_LONG = 5  # letters: a shorter label is one letter away from too many other words
_FIGURE_AFTER = Late(r" ?[:=]? ?[~]?\d")
_FIGURE_BEFORE = Late(r"\d ?$")
_SLIPPED = frozenset({"weight_kg", "fullness", "water_l"})


@cache
def phrases(language: str) -> dict[tuple[str, ...], tuple[Meaning, ...]]:
    """What each phrase (as its words) may mean: English, and this language (ISO 639-1) beside it."""
    found: dict[tuple[str, ...], tuple[Meaning, ...]] = {}
    other = _BESIDE_ENGLISH.get(language)
    for table in (other, _ENGLISH) if other else (_ENGLISH,):
        for meaning, words in _told(table):
            said = [words]
            if meaning.means is Means.TRAINING:  # the session that is told of is always that day's
                said += [way for day in _DAY_BEFORE for way in ((day, *words), (*words, day))]
            for way in said:
                found[way] = (*found.get(way, ()), meaning)
    return found


def _told(table: str) -> Iterator[tuple[Meaning, tuple[str, ...]]]:
    """Each phrase of a table, as its words, with what it means."""
    file = files(__package__ or "") / f"{table}.toml"
    for key, phrases in tomllib.loads(file.read_text(encoding="utf-8")).items():
        means, about, value = [*key.split(" "), "", ""][:3]
        meaning = Meaning(Means(means), about, int(value) if value else None)
        for phrase in phrases.split(","):
            yield meaning, tuple(phrase.split())


@cache
def longest_phrase(language: str) -> int:
    return max(len(words) for words in phrases(language))


def label_meant(line: str, start: int, end: int, language: str) -> Meaning | None:
    """The label that a word beside a figure is a slip away from; None where it is none, or two."""
    word = line[start:end]
    beside = _FIGURE_AFTER.match(line, end) or _FIGURE_BEFORE.search(line[:start])
    if beside is None or len(word) < 3:
        return None
    meant = {
        meaning.about: meaning
        for label, meaning in _labels(language).items()
        if _one_slip(word, label)
    }
    return next(iter(meant.values())) if len(meant) == 1 else None


@cache
def _labels(language: str) -> dict[str, Meaning]:
    return {
        words[0]: meaning
        for words, meanings in phrases(language).items()
        for meaning in meanings
        if len(words) == 1 and len(words[0]) >= 4
        if meaning.means is Means.LABEL and meaning.about in _SLIPPED
    }


def _one_slip(word: str, label: str) -> bool:
    """Whether one letter is left out, doubled, added, wrong or swapped with the next.

    The first letter is right: "height" and "toll" are words of their own. In a short label only a
    double letter counts, left single or typed once more.
    """
    if word[0] != label[0] or abs(len(word) - len(label)) > 1:
        return False
    at = next((i for i, (a, b) in enumerate(zip(word, label, strict=False)) if a != b), None)
    if at is None:
        at = min(len(word), len(label))
    left_out = word[at:] == label[at + 1 :]
    added = word[at + 1 :] == label[at:]
    if len(label) < _LONG:
        longer = label if left_out else word
        return (left_out or added) and longer[at : at + 1] == longer[at - 1 : at]
    swapped = word[at : at + 2] == label[at : at + 2][::-1] and word[at + 2 :] == label[at + 2 :]
    return left_out or added or swapped or word[at + 1 :] == label[at + 1 :]
