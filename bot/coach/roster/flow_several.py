"""Several changes of one kind before the coach: seen together, and approved by one tap."""

from __future__ import annotations

from bot.coach.roster import words_morning as words
from bot.dialogue.flow import Answers, Choice, Choices, Flow, InvalidAnswer, Step

ALL, NONE = "all", "none"


def _read(text: str) -> str:
    """Only the buttons, and their words: a "yes" that is typed may be meant for something else."""
    if text in (ALL, NONE):
        return text
    raise InvalidAnswer(words.use_the_buttons())


def _choices(answers: Answers) -> Choices:
    return [
        [Choice(words.yes_several_button(len(answers["_ids"])), ALL)],
        [Choice(words.no_several_button(), NONE)],
    ]


#: Context: "_ids" of the decisions, and "_listed", what is shown of them.
SEVERAL = Flow(
    id="coach-several",
    steps=(
        Step(
            key="sure",
            ask=lambda answers: words.ask_several(len(answers["_ids"])),
            read=_read,
            choices=_choices,
        ),
    ),
    so_far=lambda answers: str(answers["_listed"]),
    can_cancel=False,
)
