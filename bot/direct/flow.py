"""A message from a coach to an athlete, and the reply."""

from __future__ import annotations

from bot.dialogue.flow import Flow, InvalidAnswer, Step
from bot.direct import words as direct_words
from bot.words import common, invalid_answers
from engine.symptoms import screen

LONGEST = 3000


def _read(text: str) -> str:
    said = text.strip()
    if not said:
        raise InvalidAnswer(common.message_empty())
    if len(said) > LONGEST:
        raise InvalidAnswer(common.message_too_long(len(said), LONGEST))
    return said


def _read_from_coach(text: str) -> str:
    said = _read(text)
    if screen(said).drug:
        raise InvalidAnswer(invalid_answers.message_names_drug())
    return said


#: Context: "_name", the athlete's.
TO_ATHLETE = Flow(
    id="coach-message",
    steps=(
        Step(
            key="text",
            ask=lambda answers: direct_words.ask_message(answers["_name"]),
            read=_read_from_coach,
            free=True,
        ),
    ),
)
#: Context: "_coach", the coach's name.
TO_COACH = Flow(
    id="reply-to-coach",
    steps=(
        Step(
            key="text",
            ask=lambda answers: direct_words.ask_reply(answers["_coach"]),
            read=_read,
            free=True,
        ),
    ),
)
