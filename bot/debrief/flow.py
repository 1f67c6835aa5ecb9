"""The word of each on a week that is over."""

from __future__ import annotations

from bot.debrief import words, words_deeper
from bot.dialogue import flow as reading
from bot.dialogue.flow import Answers, Flow, InvalidAnswer, Step, buttons
from bot.words import invalid_answers
from bot.words.common import skip_button, too_long_here
from engine.symptoms import screen

SKIP = "skip"
LONGEST = 600


def _read(text: str) -> str | None:
    said = text.strip()
    if reading.said(said, reading.SKIP):
        return None
    if not said:
        raise InvalidAnswer(words.word_empty())
    if len(said) > LONGEST:
        raise InvalidAnswer(too_long_here(len(said), LONGEST))
    return said


def _read_note(text: str) -> str:
    said = _read(text)
    if said is None:
        raise InvalidAnswer(words.word_empty())
    if screen(said).drug:
        raise InvalidAnswer(invalid_answers.message_names_drug())
    return said


def _ask_word(answers: Answers) -> str:
    said = words.short(answers["_kind"], answers["_mornings"], answers["_days"], answers["_eaten"])
    return words.ask_athlete(said, answers["_coach"])


#: Context: "_event", "_coach", and what the short debrief says: "_kind", "_mornings" of "_days",
#: "_eaten", the share of the load, or None.
OWN_WORD = Flow(
    id="debrief-word",
    can_cancel=False,
    patient=True,
    steps=(
        Step(
            key="text",
            ask=_ask_word,
            read=_read,
            free=True,
            choices=buttons(((skip_button, SKIP),)),
        ),
    ),
)
#: Context: "_event", "_name", the athlete's, and "_own".
COACH_NOTE = Flow(
    id="debrief-note",
    steps=(
        Step(
            key="text",
            ask=lambda answers: words.ask_note(answers["_name"], self_coached=answers["_own"]),
            read=_read_note,
            free=True,
        ),
    ),
)
#: The same context.
PLACING = Flow(
    id="debrief-placing",
    steps=(
        Step(
            key="text",
            ask=lambda answers: words_deeper.ask_placing(
                answers["_name"], self_coached=answers["_own"]
            ),
            read=_read_note,
            free=True,
        ),
    ),
)
