"""The complaints that can be told apart, what each weighs, and what of them a text is found to hold."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from engine.values.level import Level

_WARNING, _CAUTION, _ADVISORY = Level.WARNING, Level.CAUTION, Level.ADVISORY
_OF_EATING_OR_MOOD = True


class Symptom(StrEnum):
    """Warnings first; their order is that in which a coach should read them."""

    level: Level
    """How much it weighs when nothing else is told with it."""
    of_eating_or_mood: bool
    """Whether it concerns eating, the body as it is seen, or the mood."""

    def __new__(
        cls, value: str, level: Level | None = None, of_eating_or_mood: bool = False
    ) -> Symptom:
        if level is None:  # has a default only so that `Symptom("fainting")` type-checks
            raise TypeError(f"{value} has no level")
        member = str.__new__(cls, value)
        member._value_ = value
        member.level = level
        member.of_eating_or_mood = of_eating_or_mood
        return member

    CHEST_PAIN = "chest-pain", _WARNING
    STROKE_SIGNS = "stroke-signs", _WARNING
    SEIZURE = "seizure", _WARNING
    FAINTING = "fainting", _WARNING
    BREATHLESSNESS = "breathlessness", _WARNING
    HEAVY_BLEEDING = "heavy-bleeding", _WARNING
    PALPITATIONS = "palpitations", _WARNING
    LIMB_WEAKNESS = "limb-weakness", _WARNING
    CONFUSION = "confusion", _WARNING
    REPEATED_VOMITING = "repeated-vomiting", _WARNING
    SEVERE_HEADACHE = "severe-headache", _WARNING
    DOUBLE_VISION = "double-vision", _WARNING
    MUSCLE_BREAKDOWN = "muscle-breakdown", _WARNING
    DANGER_SIGNS = "danger-signs", _WARNING
    """What emergency services ask for and no complaint above names: severe allergy, poisoning, ..."""
    SELF_HARM = "self-harm", _WARNING, _OF_EATING_OR_MOOD

    FALL = "fall", _CAUTION
    FAST_HEART = "fast-heart", _CAUTION
    BLEEDING = "bleeding", _CAUTION
    SEVERE_GUT = "severe-gut", _CAUTION
    VOMITING = "vomiting", _CAUTION
    BLURRED_VISION = "blurred-vision", _CAUTION
    URINE_DARK = "urine-dark", _CAUTION
    NO_URINE = "no-urine", _CAUTION
    DRYING_OUT = "drying-out", _CAUTION
    FEVER = "fever", _CAUTION
    PURGING = "purging", _CAUTION, _OF_EATING_OR_MOOD
    BINGEING = "bingeing", _CAUTION, _OF_EATING_OR_MOOD
    STARVING = "starving", _CAUTION, _OF_EATING_OR_MOOD
    BODY_HATE = "body-hate", _CAUTION, _OF_EATING_OR_MOOD
    LOW_MOOD = "low-mood", _CAUTION, _OF_EATING_OR_MOOD

    HEADACHE = "headache", _ADVISORY
    NAUSEA = "nausea", _ADVISORY
    SWOLLEN_HANDS = "swollen-hands", _ADVISORY
    SWELLING = "swelling", _ADVISORY
    DIZZY = "dizzy", _ADVISORY
    SLEEPLESS = "sleepless", _ADVISORY
    CRAMPS = "cramps", _ADVISORY
    TINGLING = "tingling", _ADVISORY
    SHAKY = "shaky", _ADVISORY
    STOMACH_PAIN = "stomach-pain", _ADVISORY
    DIARRHOEA = "diarrhoea", _ADVISORY
    CONSTIPATION = "constipation", _ADVISORY
    BLOATING = "bloating", _ADVISORY
    EXHAUSTION = "exhaustion", _ADVISORY
    UNWELL = "unwell", _ADVISORY


WARNINGS = frozenset(symptom for symptom in Symptom if symptom.level is Level.WARNING)
#: Adjusting rests until a coach lifts that.
EATING_AND_MOOD = frozenset(symptom for symptom in Symptom if symptom.of_eating_or_mood)


@dataclass(frozen=True, slots=True)
class Hit:
    """One complaint found. Where not `sure`, ask; until answered it counts."""

    symptom: Symptom
    sure: bool
    words: str


class Concern(StrEnum):
    """What a suspicion is about, the gravest first."""

    EMERGENCY = "emergency"
    BODY = "body"
    MOOD = "mood"


@dataclass(frozen=True, slots=True)
class Suspicion:
    """Words that no table placed and that sound like a complaint: to ask about, never a flag.

    `score` is the second ear's, from its threshold for asking up to 1: it orders suspicions and
    says nothing of how grave they are.
    """

    concern: Concern
    words: str
    score: float


@dataclass(frozen=True, slots=True)
class Screening:
    """What a text holds. `denied` lists complaints said not to be there.

    `unplaced` are the clauses, as they were typed, in which nothing was found, denied or named.
    """

    hits: tuple[Hit, ...] = ()
    denied: tuple[Symptom, ...] = ()
    drug_words: tuple[str, ...] = ()
    suspicions: tuple[Suspicion, ...] = ()
    unplaced: tuple[str, ...] = ()

    @property
    def drug(self) -> bool:
        return bool(self.drug_words)

    @property
    def symptoms(self) -> frozenset[Symptom]:
        return frozenset(hit.symptom for hit in self.hits)

    @property
    def warnings(self) -> tuple[Hit, ...]:
        return tuple(hit for hit in self.hits if hit.symptom in WARNINGS)

    @property
    def doubtful(self) -> tuple[Hit, ...]:
        return tuple(hit for hit in self.hits if not hit.sure)
