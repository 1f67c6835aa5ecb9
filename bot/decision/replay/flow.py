"""The question for another limit."""

from __future__ import annotations

from bot.decision.replay import words
from bot.dialogue.flow import Answers, Flow, Step
from engine.written.units import parse_grams


def _ask(answers: Answers) -> str:
    return words.which_value(answers["_key"], answers["_value"])


def _read(text: str) -> float:
    return parse_grams(text, high=10_000)


#: Context: "_event", "_key" of the limit and its "_value" then.
WHAT_IF_LIMIT = Flow(id="coach-what-if", steps=(Step(key="value", ask=_ask, read=_read),))
