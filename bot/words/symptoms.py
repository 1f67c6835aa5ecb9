"""Symptoms and findings by the names that people read."""

from __future__ import annotations

from collections.abc import Iterable

from bot.words.languages import mark, tr
from engine.safety import FlagId
from engine.safety.words import WORDED

# How a symptom is called inside a sentence.
SYMPTOM_NAMES = {
    "chest-pain": mark("chest pain"),
    "fainting": mark("fainting"),
    "palpitations": mark("palpitations"),
    "confusion": mark("confusion"),
    "headache": mark("headache"),
    "nausea": mark("nausea"),
    "vomiting": mark("vomiting"),
    "swelling": mark("swelling"),
    "blurred-vision": mark("blurred vision"),
    "cramps": mark("cramps"),
    "tingling": mark("tingling"),
    "stomach-pain": mark("stomach pain"),
    "diarrhoea": mark("diarrhoea"),
    "constipation": mark("constipation"),
    "bloating": mark("bloating"),
    "fever": mark("fever"),
    "exhaustion": mark("exhaustion"),
    "seizure": mark("a fit (seizure)"),
    "limb-weakness": mark("weak or heavy limbs"),
    "breathlessness": mark("shortness of breath"),
    "severe-headache": mark("a severe headache"),
    "repeated-vomiting": mark("vomiting again and again"),
    "severe-gut": mark("severe gut trouble"),
    "dizzy": mark("dizziness"),
    "sleepless": mark("hardly any sleep"),
    "shaky": mark("feeling shaky"),
    "swollen-hands": mark("swollen hands"),
    "urine-dark": mark("dark urine"),
    "no-urine": mark("no urine"),
    "self-harm": mark("thoughts of self-harm"),
    "stroke-signs": mark("signs of a stroke"),
    "heavy-bleeding": mark("heavy bleeding"),
    "danger-signs": mark("signs of an emergency"),
    "double-vision": mark("double vision"),
    "muscle-breakdown": mark("dark urine with muscle pain"),
    "fall": mark("a fall"),
    "fast-heart": mark("a fast heart at rest"),
    "bleeding": mark("bleeding"),
    "drying-out": mark("drying out (sauna, no drinking)"),
    "purging": mark("vomiting or laxatives on purpose"),
    "bingeing": mark("a binge"),
    "starving": mark("not eating"),
    "body-hate": mark("hating the body"),
    "low-mood": mark("feeling very low"),
    "unwell": mark("feeling unwell"),
}


#: Found in what was said together, or said outright: what the emergency is called.
FINDING_NAMES = {
    "emergency": mark("an emergency"),
    "low-sodium-pattern": mark("signs of too much water in the blood"),
    "no-urine-with-swelling": mark("no urine, and swelling"),
}


def symptom_name(symptom: str) -> str:
    """The symptom in words, for a sentence."""
    name = SYMPTOM_NAMES.get(symptom) or FINDING_NAMES.get(symptom)
    return tr(name) if name else symptom  # in the person's own words


#: What is said already by the more particular one behind it.
_SAID_BY = {
    "swelling": "swollen-hands",
    "headache": "severe-headache",
    "vomiting": "repeated-vomiting",
    "fast-heart": "palpitations",
}


def symptom_names(symptoms: Iterable[str]) -> str:
    """Several in a row, each once: swollen hands are not called swelling, too."""
    told = dict.fromkeys(symptoms)
    return ", ".join(symptom_name(one) for one in told if _SAID_BY.get(one) not in told)


def flag_name(flag: str) -> str:
    """ "low sodium pattern", "dark urine", for a line of the history."""
    return tr(WORDED[FlagId(flag)].name) if flag in set(FlagId) else symptom_name(flag)
