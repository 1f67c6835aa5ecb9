"""The complaints that can be told apart, by stable id."""

from __future__ import annotations

from enum import StrEnum


class Symptom(StrEnum):
    """Warnings first; their order is that in which a coach should read them."""

    CHEST_PAIN = "chest-pain"
    SEIZURE = "seizure"
    FAINTING = "fainting"
    BREATHLESSNESS = "breathlessness"
    PALPITATIONS = "palpitations"
    LIMB_WEAKNESS = "limb-weakness"
    CONFUSION = "confusion"
    REPEATED_VOMITING = "repeated-vomiting"
    SEVERE_HEADACHE = "severe-headache"
    SELF_HARM = "self-harm"

    SEVERE_GUT = "severe-gut"
    HEADACHE = "headache"
    NAUSEA = "nausea"
    VOMITING = "vomiting"
    SWOLLEN_HANDS = "swollen-hands"
    SWELLING = "swelling"
    DIZZY = "dizzy"
    BLURRED_VISION = "blurred-vision"
    SLEEPLESS = "sleepless"
    CRAMPS = "cramps"
    TINGLING = "tingling"
    SHAKY = "shaky"
    STOMACH_PAIN = "stomach-pain"
    DIARRHOEA = "diarrhoea"
    CONSTIPATION = "constipation"
    BLOATING = "bloating"
    URINE_DARK = "urine-dark"
    NO_URINE = "no-urine"
    FEVER = "fever"
    EXHAUSTION = "exhaustion"


WARNINGS = frozenset(
    {
        Symptom.CHEST_PAIN,
        Symptom.SEIZURE,
        Symptom.FAINTING,
        Symptom.BREATHLESSNESS,
        Symptom.PALPITATIONS,
        Symptom.LIMB_WEAKNESS,
        Symptom.CONFUSION,
        Symptom.REPEATED_VOMITING,
        Symptom.SEVERE_HEADACHE,
        Symptom.SELF_HARM,
    }
)
