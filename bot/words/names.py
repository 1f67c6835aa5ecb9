"""What stored words and keys are called: kinds of event, a day's numbers, limits, flags, looks."""

from __future__ import annotations

import re

from bot.words.languages import mark, tr, translated
from engine.decision.reason import BY_RULE
from engine.values.checkin import TrainingDone

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
SHAPES = (
    mark("front-load"),
    mark(
        "most of the carbs 5 days out, less each day, and from 2 days out down to the event: full "
        "early, time to see and correct a spill"
    ),
    mark("taper"),
    mark("3 to 1 days out, most on the first of them and less each day"),
    mark("even"),
    mark("the same carbs on each load day"),
    mark("back-load"),
    mark("more each day, most the day before: full late, little time to correct"),
    mark("fat first, then carbs"),
    mark("more fat instead of carbs until 4 days out, then an even carb load"),
)
#: The engine's ratings of how lean somebody is.
CONDITIONS = {
    1: mark("soft: no lines at rest"),
    2: mark("fit: upper abs show, the rest is soft"),
    3: mark("lean: abs clear, legs and lower back not yet"),
    4: mark("very lean: separation all over, lower back and hips tight"),
    5: mark("stage lean: fine lines everywhere, nothing left to lose"),
}
#: Where a fold of skin is measured.
FOLDS = (mark("chest"), mark("abdomen"), mark("thigh"), mark("triceps"), mark("hip (suprailiac)"))

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


#: How the training of the day before went, beside the plan.
_TRAINING_WENT = {
    TrainingDone.AS_PLANNED: mark("training as planned"),
    TrainingDone.LESS: mark("less training than planned"),
    TrainingDone.MORE: mark("more training than planned"),
    TrainingDone.NONE: mark("no training"),
}


def training_went(way: str) -> str:
    """How the training went, inside a list of answers."""
    return tr(_TRAINING_WENT[TrainingDone(way)])


def word(kept: object) -> str:
    """One of the words above in the language in force; any other as it stands."""
    return tr(WORDS[str(kept)]) if str(kept) in WORDS else str(kept)


def field_word(english: str) -> str:
    """A number of the day by its English name ("carbs"), for the middle of a sentence."""
    return tr(english) if english in FIELD_WORDS.values() else english


def shape_words(said: str) -> str:
    """A shape's label or meaning, likewise."""
    return tr(said) if said in SHAPES else said


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


GUT_BUTTONS = {"fine": mark("Fine"), "heavy": mark("Heavy"), "bad": mark("Bad")}


def gut_button(gut: str) -> str:
    return tr(GUT_BUTTONS[gut])


def rule_name(rule: str) -> str:
    return tr(BY_RULE[rule].name) if rule in BY_RULE else rule.replace("-", " ")
