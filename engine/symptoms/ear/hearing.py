"""What of a text sounds like a complaint, where the tables placed nothing."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from engine.symptoms.ear.model import Model, model
from engine.symptoms.ear.reading import pieces, sentences, words
from engine.symptoms.finding import Concern, Suspicion

#: The gravest concern with this share of all concern gives the suspicion its name.
_SHARE = 0.3
#: A clause torn from its sentence must sound so many times likelier.
#: Chosen on sentences unseen in training.
_TORN = 4.5
#: A word by itself says little but for the letters in it: it must sound so surely, or go unheard.
_ALONE = 0.9


@dataclass(frozen=True, slots=True)
class Sound:
    """How one piece sounds: the chance of any complaint, and of what."""

    score: float
    concern: Concern


def suspicions(text: str, unplaced: Sequence[str]) -> tuple[Suspicion, ...]:
    """One suspicion at most for each sentence, the gravest first; `unplaced` are clauses of `text`.

    A sentence of which the tables placed, denied or excused a part is listened to only in the rest,
    so that "my dog fainted" is not heard again; one that they know nothing of, whole and in parts.
    """
    found: list[Suspicion] = []
    ear = model()
    for sentence in sentences(text):
        rest = [clause for clause in unplaced if clause in sentence]
        whole = any(sentence in clause for clause in unplaced)
        if not rest and not whole:
            continue
        left = len(words(sentence)) - sum(len(words(clause)) for clause in rest)
        whole = whole or left <= len(rest)  # but for an "and" or "but" between them
        if whole:
            heard = [sound(ear, piece, piece != sentence) for piece in pieces(sentence)]
        else:
            heard = [sound(ear, piece, False) for piece in rest]
        least = _ALONE if len(words(sentence)) == 1 else 0.0
        over = [each for each in heard if each.score >= max(least, ear.thresholds[each.concern])]
        if over:
            loudest = max(over, key=lambda each: each.score)
            typed = sentence if whole else ", ".join(rest)
            found.append(Suspicion(loudest.concern, typed, round(loudest.score, 4)))
    order = list(Concern)
    return tuple(sorted(found, key=lambda s: (order.index(s.concern), -s.score)))


def sound(ear: Model, piece: str, torn: bool) -> Sound:
    """`torn` is a piece that is less than its sentence."""
    harmless, *graver = ear.chances(piece)
    complaint = 1.0 - harmless
    score = complaint / (complaint + harmless * _TORN) if torn else complaint
    for concern, chance in zip(Concern, graver, strict=True):
        if chance >= _SHARE * complaint:
            return Sound(score, concern)
    return Sound(score, Concern.BODY)
