"""The questions where a phrase may or may not have meant that something is wrong."""

from __future__ import annotations

from functools import partial

from bot.alerts import words_athlete as words
from bot.dialogue import flow as reading
from bot.dialogue.flow import (
    Answers,
    Flow,
    InvalidAnswer,
    Step,
    buttons,
    free_text,
    said,
    two_a_row,
    yes_or_no,
)
from bot.words import common
from bot.words.languages import mark
from engine.safety import FlagId
from engine.symptoms import WARNINGS, Symptom, screen
from engine.symptoms.asked_whether import means_it, says_all_is_well
from engine.written.questions import asks_something
from engine.written.units import parse_number

FINE, UNWELL, EMERGENCY = "fine", "unwell", FlagId.EMERGENCY.value
SKIP = "skip"

# What is typed in place of the buttons.
FINE_WORDS = mark(
    "i'm fine, im fine, i am fine, fine, all fine, all good, i'm ok, im ok, i'm okay, ok, okay, "
    "good, no, nope, nothing, no nothing, nothing is wrong, none of that, none of these, nothing like "
    "that, no i'm fine, no im fine, no all good, just joking, joking, false alarm"
)
UNWELL_WORDS = mark(
    "i feel unwell, unwell, not well, not good, i feel bad, bad, i feel sick, i'm not fine, "
    "im not fine, yes, yeah, yep, something is wrong, not really, not so good"
)
EMERGENCY_WORDS = mark(
    "it's an emergency, its an emergency, emergency, help, i need help, call an ambulance, ambulance"
)


def _sure(text: str, answers: Answers) -> bool:
    """A yes or a no, or what is as good as one: "no headache at all, just tired"."""
    try:
        return yes_or_no(text.strip().rstrip(".! "))
    except InvalidAnswer:
        meant = means_it(text, Symptom(answers["_symptom"]))
        if meant is None:
            raise
        return meant


SYMPTOM_CHECK = Flow(
    id="symptom-check",
    concurrent=True,
    can_cancel=False,
    steps=(
        Step(
            key="sure",
            ask=lambda answers: _once_more(
                answers, words.doubtful(answers["_symptom"], answers["_words"])
            ),
            read_with=_sure,
            choices=buttons(((common.yes, "yes"), (common.no, "no"))),
            stays=True,
        ),
    ),
)


def _once_more(answers: Answers, question: str) -> str:
    anew = answers.get("_once_more") and not answers.get("_again")
    return words.asked_once_more(question) if anew else question


def _how(text: str) -> str:
    """A tap, the words of one, or a complaint in words, which is as good as "I feel unwell"."""
    plain = text.strip().rstrip(".!").replace("\u2019", "'")
    for value, listed in (
        (FINE, FINE_WORDS), (UNWELL, UNWELL_WORDS), (EMERGENCY, EMERGENCY_WORDS),
    ):  # fmt: skip
        if plain == value or said(plain, listed):
            return value
    if says_all_is_well(text):
        return FINE
    found = screen(text)
    if found.hits or (found.suspicions and not asks_something(text)):
        return UNWELL
    raise InvalidAnswer(words.tap_how_you_are())


SOMETHING_WRONG = Flow(
    id="something-wrong",
    concurrent=True,
    can_cancel=False,
    steps=(
        Step(
            key="how",
            ask=lambda answers: _once_more(
                answers, words.is_something_wrong(answers["_concern"], answers["_words"])
            ),
            read=_how,
            choices=buttons(
                ((words.fine_button, FINE),),
                ((words.unwell_button, UNWELL),),
                ((words.emergency_button, EMERGENCY),),
            ),
            stays=True,
        ),
    ),
)


def _no_warning(answers: Answers) -> bool:
    """Whether there is time to ask on: not where what was told is an emergency."""
    told = answers.get("symptoms") or []
    hits = {hit.symptom for text in told for hit in screen(text).hits}
    return not ({*hits, *(Symptom(s) for s in told if s in set(Symptom))} & WARNINGS)


def _pulse(text: str) -> float | None:
    return (
        None if text == SKIP or said(text, reading.SKIP) else parse_number(text, low=25, high=250)
    )


def _urine(text: str) -> int | None:
    if text == SKIP or said(text, reading.SKIP):
        return None
    if text.strip() in {str(colour) for colour in words.URINE_COLOURS}:
        return int(text)
    raise InvalidAnswer(words.tap_urine())


#: Context: "_words", what was written before.
UNWELL_HOW = Flow(
    id="unwell",
    can_cancel=False,
    steps=(
        Step(
            key="symptoms",
            ask=lambda answers: _once_more(answers, words.ask_what_is_wrong()),
            read=free_text,
            free=True,
            choices=two_a_row((partial(words.symptom_button, s), s) for s in words.SYMPTOM_BUTTONS),
            many=True,
        ),
        Step(
            key="pulse",
            ask=words.ask_pulse,
            read=_pulse,
            choices=buttons(((common.cannot_say_button, SKIP),)),
            when=_no_warning,
        ),
        Step(
            key="urine",
            ask=words.ask_urine,
            read=_urine,
            choices=buttons(
                *(((partial(words.urine_button, c), str(c)),) for c in words.URINE_COLOURS),
                ((common.cannot_say_button, SKIP),),
            ),
            when=_no_warning,
        ),
    ),
)


#: The flows of all these; a check-in in one line is taken whichever of them is open.
ASKED_ABOUT_SIGNS = frozenset({SYMPTOM_CHECK.id, SOMETHING_WRONG.id, UNWELL_HOW.id})
