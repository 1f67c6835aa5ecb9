"""Whether a stretch of text tells of a complaint: what both ears made of it, weighed together.

The tables know words, the second ear how a piece sounds; either alone is unsure of much that both
together are not: "gran fainted at church, she's ok" has a warning in it, and as a whole is harmless.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from math import exp, log
from operator import attrgetter

from engine.symptoms.ear.hearing import has_words, listen, sound_of
from engine.symptoms.ear.reading import pieces, sentences, speaks_of_body_or_mood
from engine.symptoms.ear.shrugs import calls_themself_well, says_nothing
from engine.symptoms.finding import Hit, Screening, Suspicion
from engine.symptoms.names import WARNINGS, Symptom
from engine.values.level import Level
from engine.written.late import Late

#: What is weighed, each with its weight: a logistic regression on 1,860 lines of three tables and 420
#: of ordinary talk that neither ear had been taught with (`python -m tests.ear.weigh`).
WEIGHTS = {
    "text": 0.83,
    "piece": 0.14,
    "sentences": 1.16,
    "words": 0.62,
    "body": -0.32,
    "sure_warning": 0.45,
    "doubtful_warning": 0.28,
    "sure_milder": 1.41,
    "doubtful_milder": 0.55,
}
_BIAS = -3.31
#: Below these chances what is in doubt is let pass, a warning only where it is next to none.
_ASKED, _WARNING_ASKED = 0.08, 0.025
#: Below these what the tables took for sure is asked about first.
_SURE, _WARNING_SURE = 0.5, 0.15
#: What the tables find in so few words is no matter of tone: "chest pain", "knees no longer hold me".
_A_FEW_WORDS = 6
#: And in so few nothing is suspected that no piece had told of.
_TOO_FEW_WORDS = 4
#: So few are left as they were found: there is nothing around them to weigh.
_A_WORD_OR_TWO = 2
#: "no cravings, no hunger, but ...": what follows is told against what is not.
_SET_AGAINST = Late(
    r"\b(?:no|not|none|nothing|kein\w*|nicht|nix|nichts)\b.*\b(?:but|just|only|except|aber|nur|bloß|sondern)\b",
    re.IGNORECASE | re.DOTALL,
)
_LEAST = 1e-3
#: So many sentences of a long text are weighed together: among more of them a complaint is drowned.
_STRETCH = 3


@dataclass(frozen=True, slots=True)
class Weighed:
    """How likely a stretch tells of a complaint, and the log odds of it in its loudest piece alone."""

    stretch: str
    chance: float
    loudest: float


def weighed(text: str, screening: Screening) -> Screening:
    """The screening with what is hardly told taken out of it, and with what no ear alone had noticed.

    A sure warning is never taken out: one that hardly sounds like it is asked about. What is mild, and
    what is named of drugs, stays as it is.
    """
    words = len(text.split())
    if words <= _A_WORD_OR_TWO or (words <= _A_FEW_WORDS and screening.hits):
        return screening
    hits, suspected = screening.hits, screening.suspicions
    weights = [weigh(one, [h for h in hits if h.words in one] or hits) for one in stretches(text)]

    def about(words: str) -> Weighed:
        near = [weight for weight in weights if words in weight.stretch]
        return max(near or weights, key=attrgetter("chance"))

    denying = bool(screening.denied) or _SET_AGAINST.search(text) is not None
    judged = [_left_of(hit, about(hit.words), denying=denying) for hit in hits]
    kept = tuple(hit for hit in judged if hit is not None)
    still = tuple(one for one in suspected if about(one.words).chance >= _ASKED)
    enough = words > _TOO_FEW_WORDS and len(weights) == 1  # each few of many may sound like it
    if enough and not still and not kept and not calls_themself_well(text):
        most = about("")
        if most.chance >= _ASKED and not says_nothing(most.stretch):
            concern = sound_of(listen([most.stretch])[most.stretch], False).concern
            still = (Suspicion(concern, most.stretch, round(most.chance, 4)),)
    return replace(screening, hits=kept, suspicions=still)


def _left_of(hit: Hit, told: Weighed, *, denying: bool) -> Hit | None:
    """`denying` is a text that denies something else: what it sets against that is told plainly."""
    warning = hit.symptom in WARNINGS
    if hit.symptom.level is Level.ADVISORY or (warning and denying):
        return hit
    if hit.sure and hit.symptom is Symptom.DANGER_SIGNS:
        return hit  # its phrases are of poison and of heat, and what befell another is no less
    if hit.sure and told.chance >= (_WARNING_SURE if warning else _SURE):
        return hit
    # half a clause that is loud by itself may be what the rest of the stretch drowns
    asked = (
        told.chance >= _WARNING_ASKED or told.loudest > 0.0 if warning else told.chance >= _ASKED
    )
    return replace(hit, sure=False) if asked or (hit.sure and warning) else None


def stretches(text: str) -> Iterator[str]:
    """The text, or where it is long each few sentences that follow one another."""
    all_of_them = sentences(text)
    if len(all_of_them) <= _STRETCH:
        yield text
        return
    for at in range(len(all_of_them) - _STRETCH + 1):
        yield " ".join(all_of_them[at : at + _STRETCH])


def measures(stretch: str, hits: Sequence[Hit]) -> dict[str, float]:
    """What is weighed of a stretch, each by its name in `WEIGHTS`."""
    whole = [one for one in sentences(stretch) if has_words(one)] or [stretch]
    parts = [one for one in pieces(stretch) if has_words(one)] or [stretch]
    heard = listen([stretch, *parts])

    def complaint(piece: str) -> float:
        harmless = min(max(heard[piece][0], _LEAST), 1.0 - _LEAST)
        return log((1.0 - harmless) / harmless)

    def found(sure: bool, warning: bool) -> bool:
        return any(
            hit.sure is sure
            and (hit.symptom in WARNINGS) is warning
            and hit.symptom.level is not Level.ADVISORY
            for hit in hits
        )

    return {
        "text": complaint(stretch),
        "piece": max(map(complaint, parts)),
        "sentences": log(len(whole)),
        "words": log(len(stretch.split())),
        "body": speaks_of_body_or_mood(stretch),
        "sure_warning": found(True, True),
        "doubtful_warning": found(False, True),
        "sure_milder": found(True, False),
        "doubtful_milder": found(False, False),
    }


def weigh(stretch: str, hits: Sequence[Hit]) -> Weighed:
    """How likely the stretch tells of what a coach would want to know, by all that was heard."""
    found = measures(stretch, hits)
    total = _BIAS + sum(weight * found[name] for name, weight in WEIGHTS.items())
    return Weighed(stretch, 1.0 / (1.0 + exp(-total)), found["piece"])
