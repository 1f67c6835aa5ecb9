"""What of a text sounds like a complaint, where the tables placed nothing."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from engine.symptoms.finding import Concern, Suspicion

from .model import Model, model
from .reading import pieces, sentences, words

#: The gravest concern with this share of all concern gives the suspicion its name.
_SHARE = 0.4


@dataclass(frozen=True, slots=True)
class _Sound:
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
        heard = [_sound(ear, piece) for piece in (pieces(sentence) if whole else rest)]
        if not heard:
            continue
        loudest = max(heard, key=lambda sound: sound.score)
        if loudest.score >= ear.threshold:
            typed = sentence if whole else ", ".join(rest)
            found.append(Suspicion(loudest.concern, typed, round(loudest.score, 4)))
    order = list(Concern)
    return tuple(sorted(found, key=lambda s: (order.index(s.concern), -s.score)))


def _sound(ear: Model, piece: str) -> _Sound:
    harmless, *graver = ear.chances(piece)
    score = 1.0 - harmless
    for concern, chance in zip(Concern, graver, strict=True):
        if chance >= _SHARE * score:
            return _Sound(score, concern)
    return _Sound(score, Concern.BODY)
