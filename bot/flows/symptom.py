"""One question, where a phrase may or may not have meant a serious symptom."""

from __future__ import annotations

from bot.dialogue import Flow, Step
from bot.flows.reading import buttons, yes_or_no
from bot.messages import common
from bot.messages import safety as words

SYMPTOM_CHECK = Flow(
    id="symptom-check",
    can_cancel=False,
    steps=(
        Step(
            key="sure",
            ask=lambda answers: words.doubtful(answers["_symptom"], answers["_words"]),
            read=yes_or_no,
            choices=buttons(((common.yes, "yes"), (common.no, "no"))),
            stays=True,
        ),
    ),
)
