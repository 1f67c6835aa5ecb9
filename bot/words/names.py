"""What stored words and keys are called: kinds of event, a day's numbers, limits, flags, looks."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from typing import Any

from bot.words.languages import SentenceBy, mark, tr, translated
from engine.decision.reason import BY_RULE
from engine.planning.drafting.draft import SHAPES
from engine.safety import FlagId
from engine.safety.words import WORDED
from engine.values.checkin import CoachLook, TrainingDone

#: The numbers of a day inside a sentence.
FIELD_WORDS = {
    "carb_g": mark("carbs"),
    "protein_g": mark("protein"),
    "fat_g": mark("fat"),
    "fibre_g": mark("fibre"),
    "water_l": mark("water"),
    "sodium_mg": mark("sodium"),
    "training": mark("training"),
    "cardio_min": mark("cardio"),
    "steps": mark("steps"),
    "phase": mark("phase"),
}

#: The limits on a button.
LIMITS = {
    "carb_floor_g": mark("Carb floor"),
    "carb_ceiling_g": mark("Carb ceiling"),
    "step_g": mark("Step"),
    "change_per_day_g": mark("Largest change"),
    "load_total_g": mark("Load total"),
    "apply_without_asking_g": mark("Auto-approve up to"),
    "water_floor_l": mark("Water floor"),
    "water_ceiling_l": mark("Water ceiling"),
}
#: The same inside a sentence.
LIMIT_WORDS = {
    "carb_floor_g": mark("carb floor"),
    "carb_ceiling_g": mark("carb ceiling"),
    "step_g": mark("step"),
    "change_per_day_g": mark("largest change"),
    "load_total_g": mark("load total"),
    "apply_without_asking_g": mark("auto-approve up to"),
    "water_floor_l": mark("water floor"),
    "water_ceiling_l": mark("water ceiling"),
}

#: How the engine calls the shapes of a load, and what each means.
_SHAPES = {text for shape in SHAPES.values() for text in (shape.label, shape.meaning)}

#: Words that are kept, and how each reads inside a line.
WORDS = {
    # the gut
    "fine": mark("fine"),
    "heavy": mark("heavy"),
    "bad": mark("bad"),
    # the look
    "flat": mark("flat"),
    "full": mark("full"),
    "spilled over": mark("spilled over"),
    # levels
    "warning": mark("warning"),
    "caution": mark("caution"),
    "advisory": mark("info"),
    "alert": mark("alert"),
    # what a morning led to
    "held": mark("on plan"),
    "adjusted": mark("adjusted"),
    "escalated": mark("stopped"),
    # is a peak week worth it
    "run-it": mark("run it"),
    "keep-dieting": mark("keep dieting"),
    "doctor-first": mark("doctor first"),
    "under age": mark("under age"),
    "no consent": mark("no consent"),
    # kinds of event
    "show": mark("show"),
    "shoot": mark("shoot"),
    "trial": mark("trial"),
    # what a second coach may do
    "everything": mark("everything"),
    "alerts only": mark("alerts only"),
}


#: How the training of the day before went, inside a list of answers.
training_went: SentenceBy[str] = SentenceBy(
    {
        TrainingDone.AS_PLANNED: mark("training as planned"),
        TrainingDone.LESS: mark("less training than planned"),
        TrainingDone.MORE: mark("more training than planned"),
        TrainingDone.NONE: mark("no training"),
    }
)


def word(kept: object) -> str:
    """One of the words above in the language in force; any other as it stands."""
    return tr(WORDS[str(kept)]) if str(kept) in WORDS else str(kept)


def field_word(english: str) -> str:
    """A number of the day by its English name ("carbs"), for the middle of a sentence."""
    return tr(english) if english in FIELD_WORDS.values() else english


def shape_words(said: str) -> str:
    """A shape's label or meaning, likewise."""
    return tr(said) if said in _SHAPES else said


_HOW_SEEN = re.compile(
    r" \(from memory\)|[;,] from memory(?=\))| \(the framing was seen\)"
    r"|; the figure was seen, the two papers are cited from memory"
)


def cited(citation: str) -> str:
    """Where something comes from, as it is shown.

    What was stored with older decisions may still say how a source was seen: that is left out.
    """
    citation = _HOW_SEEN.sub("", citation)
    return translated(citation) if citation else ""


gut_button = SentenceBy({"fine": mark("Fine"), "heavy": mark("Heavy"), "bad": mark("Bad")})


def rule_name(rule: str) -> str:
    return tr(BY_RULE[rule].name) if rule in BY_RULE else rule.replace("-", " ")


#: Each look inside a sentence.
seen_look: SentenceBy[str] = SentenceBy(
    {
        CoachLook.FLAT: mark("flat"),
        CoachLook.ON_COURSE: mark("on course"),
        CoachLook.FULL: mark("full"),
        CoachLook.SOFTENING: mark("softening"),
        CoachLook.SPILLED: mark("spilled over"),
    }
)


def seen(look: str, sharpness: int | None) -> str:
    """ "softening, sharpness 3", inside a sentence."""
    if sharpness is None:
        return seen_look(look)
    return tr("{look}, sharpness {score}", look=seen_look(look), score=sharpness)


def seen_in(facts: Mapping[str, Any]) -> str:
    """The same from the facts of a stored decision; "" where no coach had looked."""
    if not facts.get("coach_saw"):
        return ""
    return seen(facts["coach_saw"], facts.get("coach_sharpness"))


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


#: The questions to a new athlete, and the first of them: whether they agree.
FIRST_QUESTIONS, CONSENT = "onboarding", "consent"
