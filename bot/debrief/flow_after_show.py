"""The lighter check-in of the mornings after: how it feels, and the weight for whoever steps on."""

from __future__ import annotations

from contextlib import suppress
from functools import partial

from bot.debrief import words_after_show as words
from bot.dialogue.flow import Answers, Flow, Step
from bot.dialogue.readers import buttons, free_text, one_of, said, two_a_row
from bot.safety.flow_symptom import FINE_WORDS, UNWELL_WORDS
from engine.written.units import ParseError, WeightUnit, parse_weight

FINE, OFF, SKIP = "fine", "off", "skip"


def _read_feels(text: str, answers: Answers) -> Answers:
    """How it is; a weight that comes before it is kept, and how it is asked once more."""
    plain = text.strip().rstrip(" .!").casefold()
    if said(plain, FINE_WORDS):
        return {"feels": FINE}
    if said(plain, UNWELL_WORDS):
        return {"feels": OFF}
    with suppress(ParseError):
        return {"weight_kg": _read_weight(text, answers)}
    return {"feels": one_of(FINE, OFF)(text)}


def _read_weight(text: str, answers: Answers) -> float | None:
    if text.strip().lower() == SKIP:
        return None
    return parse_weight(text, unit=WeightUnit(answers["_weight_unit"])).kg


#: Context: "_day" (1 to 3), "_name", "_weight_unit".
AFTER_SHOW = Flow(
    id="after-show",
    can_cancel=False,
    steps=(
        Step(
            key="feels",
            ask=lambda answers: words.ask(answers["_name"], answers["_day"]),
            read_with=_read_feels,
            spreads=True,
            choices=buttons(((words.fine_button, FINE), (words.off_button, OFF))),
        ),
        Step(
            key="symptoms",
            ask=words.ask_what,
            read=free_text,
            free=True,
            choices=two_a_row((partial(words.symptom_button, s), s) for s in words.SYMPTOMS),
            when=lambda answers: answers.get("feels") == OFF,
            many=True,
        ),
        Step(
            key="weight_kg",
            ask=words.ask_weight,
            read_with=_read_weight,
            choices=buttons(((words.skip_button, SKIP),)),
        ),
    ),
)
