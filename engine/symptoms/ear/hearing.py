"""What of a text sounds like a complaint, where the tables placed nothing."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from math import exp, log
from operator import attrgetter

from engine.symptoms.ear.model import OF_CONCERN, meaning, mixed, model, namer
from engine.symptoms.ear.reading import pieces, sentences, speaks_of_body_or_mood, words
from engine.symptoms.ear.shrugs import calls_themself_well, says_nothing
from engine.symptoms.names import WARNINGS, Concern, Hit, Screening, Suspicion, Symptom
from engine.values.level import Level
from engine.written.late import Late

#: The gravest concern with this share of all concern gives the suspicion its name.
_SHARE = 0.3
#: A clause torn from its sentence must sound so many times likelier.
#: Chosen on sentences unseen in training.
_TORN = 4.5
#: A sentence without any word of body or mood must sound so likely: on 1,930 fresh lines of four tables
#: six of 35 missed warnings less than with a tenth more each, for ten more questions.
_WITHOUT_A_WORD = {Concern.EMERGENCY: 0.3, Concern.BODY: 0.5, Concern.MOOD: 0.5}
#: Where a word of body or mood stands, this chance of an emergency is enough to ask, whatever else it
#: may be: of 154 missed warnings in 4,400 fresh lines that is 22, and of 1,170 harmless ones 31.
_MAY_BE = 0.2
#: What is called for, or called out, in one word. Of other words by themselves there are only the
#: letters to go by, which say nothing ("soon" would be danger): the tables know those that matter.
_SAID_ALONE = {
    **dict.fromkeys(
        (
            "sos", "mayday", "emergency", "ambulance", "paramedic", "paramedics", "dying", "hilfe",
            "notfall", "notarzt", "notruf", "rettungswagen", "krankenwagen", "sanitäter", "sterbe",
        ),
        Concern.EMERGENCY,
    ),
    **dict.fromkeys(("sick", "ill", "krank", "elend"), Concern.BODY),
}  # fmt: skip


#: Two words are the name of a food or a greeting more often than a complaint, and must sound so surely.
_OF_TWO_WORDS = 0.85
#: What the tables take for less than a warning is asked about from this chance of an emergency on.
#: Raised from 0.6 with wider networks, which are surer of themselves; that was not counted by itself.
_GRAVER = 0.8
#: From this chance on it is asked about although the tables took it for denied, past or another's: on
#: the same lines three missed warnings less than from 0.5 on, for seven more questions.
_AGAINST_THE_TABLES = 0.35
#: Where the tables found nothing, since what they know of it was of another or long ago, and denied
#: nothing: on 1,300 fresh harmless lines 4 vain questions, on 2,200 complaints 14 that are not missed.
_AFTER_ALL = 0.8
#: With this chance of an emergency at least, of no complaint at most and of its name at least, a
#: warning is told as plainly as by a phrase. Between two sets that were tried on 1,860 lines with wider
#: networks: lower bars called more warnings by name, and more harmless lines.
_PLAINLY = 0.8
_NO_COMPLAINT = 0.1
_BY_NAME = 0.5
#: With this much of a complaint, at most so much of an emergency in it and its name at least, what is
#: no warning is told as plainly as by a phrase. With .15 of an emergency, of 675 such lines that the
#: ear was not taught with 90 more were called by name instead of asked about, of 548 harmless ones one;
#: it is less since a heart was called nausea. What is of eating or mood stops the plan until a coach
#: has looked, and has to be surer.
_MILD_PLAINLY = {Concern.BODY: 0.8, Concern.MOOD: 0.95}
_NO_EMERGENCY = 0.09
_MILD_BY_NAME = 0.45
#: Self-harm is told in the commonest words, so that other pictures come near it.
_BY_NAME_OF_SELF_HARM = 0.9
_A_FEW_WORDS = 3
#: So many pieces of a text are listened to, at most, about one find of the tables.
_MOST_PIECES = 12


@dataclass(frozen=True, slots=True)
class Plain:
    """A warning told so plainly that no phrase is needed for it, and the sentence that tells it."""

    symptom: Symptom
    words: str


@dataclass(slots=True)
class SecondOpinion:
    """How harmless the sentences of `text` sound in which the tables found something."""

    text: str
    _pieces: list[str] | None = None
    _sounds: dict[str, float] = field(default_factory=dict)

    def harmless(self, words: str, clause: str = "") -> float:
        """The least chance of no complaint among the sentence that the words stand in and its clauses.

        A clause torn from its sentence counts as `_TORN` says. The least, so that a complaint told
        beside something harmless is heard.
        """
        about = [piece for piece in self._all() if words in piece][:_MOST_PIECES] or [self.text]
        if clause and words in clause:
            about.append(clause)
        return min(map(self._sound, about))

    def _all(self) -> list[str]:
        if self._pieces is None:
            self._pieces = [piece for piece in pieces(self.text) if has_words(piece)]
            listen(self._pieces)  # together: each is asked about soon
        return self._pieces

    def emergency(self, words: str) -> Suspicion | None:
        """The sentence that the words stand in, where it sounds like an emergency after all."""
        return next(self._emergencies(words, _GRAVER), None)

    def contradicts(self, but: Sequence[str]) -> Suspicion | None:
        """A sentence that sounds like an emergency though the tables set aside what they found in it.

        One with any of the words of `but`, which they took as said, is left to `emergency`.
        """
        for one in self._emergencies("", _AGAINST_THE_TABLES):
            taken = any(words in one.words for words in but)
            if len(one.words.split()) > _A_FEW_WORDS and not taken:
                return one
        return None

    def after_all(self) -> Suspicion | None:
        """A sentence that sounds like some complaint although the tables found none."""
        for sentence in sentences(self.text)[:_MOST_PIECES]:
            if len(sentence.split()) <= _A_FEW_WORDS or says_nothing(sentence):
                continue
            heard = sound_of(_heard(sentence), False)
            if heard.score >= _AFTER_ALL:
                return Suspicion(heard.concern, sentence, round(heard.score, 4))
        return None

    def plain(self) -> Iterator[Plain]:
        """The warnings that are told beyond doubt, each with its sentence."""
        for suspicion in self._emergencies("", _PLAINLY):
            few = len(suspicion.words.split()) <= _A_FEW_WORDS
            if few and not speaks_of_body_or_mood(suspicion.words):
                continue  # "i won't"
            symptom, share = namer().name(suspicion.words)
            least = _BY_NAME_OF_SELF_HARM if symptom is Symptom.SELF_HARM else _BY_NAME
            if share >= least and _heard(suspicion.words)[0] <= _NO_COMPLAINT:
                yield Plain(symptom, suspicion.words)

    def _emergencies(self, words: str, least: float) -> Iterator[Suspicion]:
        self._all()
        about = [one for one in sentences(self.text) if words in one][:_MOST_PIECES]
        told = listen([sentence for sentence in about if not says_nothing(sentence)])
        for sentence, (_, emergency, *_) in told.items():
            if emergency >= least and len(sentence.split()) > 1:
                yield Suspicion(Concern.EMERGENCY, sentence, round(emergency, 4))

    def _sound(self, piece: str) -> float:
        if piece not in self._sounds:
            torn = piece not in sentences(self.text)
            self._sounds[piece] = 1.0 - sound_of(_heard(piece), torn).score
        return self._sounds[piece]


@dataclass(frozen=True, slots=True)
class Sound:
    """How one piece sounds: the chance of a complaint, of what, and of an emergency if it is whole."""

    score: float
    concern: Concern
    emergency: float = 0.0


def suspicions(text: str, unplaced: Sequence[str]) -> tuple[Suspicion, ...]:
    """One suspicion at most for each sentence, the gravest first; `unplaced` are clauses of `text`.

    A sentence of which the tables placed, denied or excused a part is listened to only in the rest,
    so that "my dog fainted" is not heard again; one that they know nothing of, whole and in parts.
    """
    found: list[Suspicion] = []
    thresholds = model().thresholds
    for sentence in sentences(text):
        rest = [clause for clause in unplaced if clause in sentence]
        whole = any(sentence in clause for clause in unplaced)
        if (not rest and not whole) or says_nothing(sentence):
            continue
        left = len(words(sentence)) - sum(len(words(clause)) for clause in rest)
        whole = whole or left <= len(rest)  # but for an "and" or "but" between them
        listened = listen([p for p in (pieces(sentence) if whole else rest) if has_words(p)])
        heard = [sound_of(told, whole and p != sentence) for p, told in listened.items()]
        spoken = [word for word in words(sentence) if word[0].isalnum()]
        alone = len(spoken) == 1
        if alone:
            if (concern := _SAID_ALONE.get(spoken[0])) is not None:
                found.append(Suspicion(concern, sentence, 1.0))
            continue
        few = len(spoken) == 2
        of_a_body = speaks_of_body_or_mood(sentence)
        least = thresholds if of_a_body else _WITHOUT_A_WORD
        over = [
            each
            for each in heard
            if (each.score >= least[each.concern] or (of_a_body and each.emergency >= _MAY_BE))
            and (each.score >= _OF_TWO_WORDS or not few or each.concern is Concern.EMERGENCY)
        ]
        if over:
            loudest = max(over, key=lambda each: each.score)
            typed = sentence if whole else ", ".join(rest)
            found.append(Suspicion(loudest.concern, typed, round(loudest.score, 4)))
    order = list(Concern)
    return tuple(sorted(found, key=lambda s: (order.index(s.concern), -s.score)))


def called(suspicion: Suspicion) -> Symptom | None:
    """What complaint of body or mood this is, where it is told beyond doubt and is no warning."""
    least = _MILD_PLAINLY.get(suspicion.concern)
    if least is None or suspicion.score < least:
        return None
    harmless, emergency, *_ = _heard(suspicion.words)
    if harmless > 1.0 - least or emergency > _NO_EMERGENCY:
        return None
    symptom, share = namer().name(suspicion.words, OF_CONCERN[suspicion.concern])
    named = share >= _MILD_BY_NAME and symptom not in WARNINGS and symptom is not Symptom.UNWELL
    return symptom if named else None


#: What was made of the last pieces: one reading asks several times about each.
_REMEMBERED: dict[str, tuple[float, ...]] = {}
_MOST_REMEMBERED = 256


def listen(pieces: Sequence[str]) -> dict[str, tuple[float, ...]]:
    """How likely each piece is of each of the ear's classes."""
    known = ((piece, _REMEMBERED.get(piece)) for piece in pieces)
    found = {piece: told for piece, told in known if told is not None}
    anew = mixed(model(), meaning(), [piece for piece in pieces if piece not in found])
    if anew:
        if len(_REMEMBERED) + len(anew) > _MOST_REMEMBERED:
            _REMEMBERED.clear()
        _REMEMBERED.update(anew)
    return found | anew


def _heard(piece: str) -> tuple[float, ...]:
    return listen([piece])[piece]


def has_words(piece: str) -> bool:
    """Whether it is more than figures and letters, which a check-in cut at its commas leaves."""
    return any(sum(map(str.isalpha, word)) > 1 for word in piece.split())


def sound_of(chances: Sequence[float], torn: bool) -> Sound:
    """`torn` is a piece that is less than its sentence."""
    harmless, *graver = chances
    complaint = 1.0 - harmless
    score = complaint / (complaint + harmless * _TORN) if torn else complaint
    for concern, chance in zip(Concern, graver, strict=True):
        if chance >= _SHARE * complaint:
            return Sound(score, concern, 0.0 if torn else graver[0])
    return Sound(score, Concern.BODY)


# Whether a stretch of text tells of a complaint: what both ears made of it, weighed together.
#
# The tables know words, the second ear how a piece sounds; either alone is unsure of much that both
# together are not: "gran fainted at church, she's ok" has a warning in it, and as a whole is harmless.

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
_FEW_WORDS = 6
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
    if words <= _A_WORD_OR_TWO or (words <= _FEW_WORDS and screening.hits):
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
