"""The complaints that can be told apart, by stable id, and how much each of them weighs."""

from __future__ import annotations

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
