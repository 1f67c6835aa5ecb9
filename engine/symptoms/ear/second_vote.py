"""A second vote on what the tables found: is it a complaint of the writer's at all?

The tables know the words of a complaint, the ear how it sounds as a whole; what a sentence speaks of
besides (a film, a horse, the tan, years ago) tips the scale. Where this vote is clearly against it, a
find is let pass; how clearly, goes by how grave it would be.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from math import exp, log
from typing import NamedTuple

from engine.level import Level
from engine.symptoms.finding import Hit
from engine.symptoms.words import word_set

from .model import model
from .reading import kinds_of, pieces, sentences, subject, words

#: Below this a find is let pass. Chosen on sentences unseen in training, so that it cost no complaint
#: of three invented tables; a warning has most to lose by it.
LET_PASS: Mapping[Level, float] = {Level.WARNING: 0.1, Level.CAUTION: 0.3, Level.ADVISORY: 0.3}
#: The kinds of words that tell what a sentence speaks of, not those that tell of complaints.
_SETTING = word_set("""
    me you other animal fiction thing work weather training food past if ask rule not good thanks
    keeps now money over still wear pose look meta fun travel worth as_child rise help wrong bad
    like
""")
_MOST = 0.999  # a chance is taken for no surer than this
_CHATTY = 12  # words, from which on a sentence is also judged by its parts
_LONG = 20  # words, from which on a sentence counts as long


class Find(NamedTuple):
    """What the tables found in a sentence, as far as the vote goes."""

    symptom: str
    level: Level
    sure: bool


def passed_over(text: str, hits: Sequence[Hit]) -> tuple[str, ...]:
    """The sentences of `text` in which the vote lets pass all that was found."""
    passed = []
    parts = sentences(text)
    for sentence in parts:
        here = [hit for hit in hits if hit.words in sentence or len(parts) == 1]
        if here and _likeliest(sentence, here) < LET_PASS[_gravest(map(_find, here)).level]:
            passed.append(sentence)
    return tuple(passed)


def _likeliest(sentence: str, hits: Sequence[Hit]) -> float:
    """In a long sentence, the chatter around a complaint must not talk it down."""
    told = [sentence]
    if len(words(sentence)) > _CHATTY:
        told += [piece for piece in pieces(sentence) if any(hit.words in piece for hit in hits)]
    return max(vote(piece, hits) for piece in told)


def vote(sentence: str, hits: Sequence[Hit]) -> float:
    """How likely it is, from 0 to 1, that what was found in the sentence is a complaint."""
    ear = model()
    complaint = 1.0 - ear.chances(sentence)[0]
    told = features(sentence, [_find(hit) for hit in hits], complaint)
    total = ear.vote[""] + sum(ear.vote.get(name, 0.0) * much for name, much in told.items())
    return 1.0 / (1.0 + exp(-total))


def features(sentence: str, finds: Sequence[Find], complaint: float) -> dict[str, float]:
    """What the vote rests on, by name; `complaint` is the ear's chance for the whole sentence."""
    chance = min(max(complaint, 1 - _MOST), _MOST)
    heard = log(chance / (1 - chance))
    gravest = _gravest(finds)
    level = gravest.level.value
    certain = "sure" if any(find.sure for find in finds) else "doubt"
    kinds = [kinds_of(word) for word in words(sentence)]
    about = subject(kinds)
    told = {
        "heard": heard,
        f"heard {certain}": heard,
        level: 1.0,
        certain: 1.0,
        f"{level} {certain}": 1.0,
        "finds": float(min(3, len(finds))),
        f"about {about}": 1.0,
        f"about {about} {level}": 1.0,
        "asked": float("?" in sentence),
        "length": min(len(kinds), _LONG) / 10,
    }
    told.update({find.symptom: 1.0 for find in finds})
    for kind in sorted({kind for each in kinds for kind in each} & _SETTING):
        told[f"with {kind}"] = 1.0
        told[f"with {kind} {level}"] = 0.5
    return told


def _find(hit: Hit) -> Find:
    return Find(hit.symptom.value, hit.symptom.level, hit.sure)


def _gravest(finds: Iterable[Find]) -> Find:
    return max(finds, key=lambda find: (find.level.rank, find.sure))
