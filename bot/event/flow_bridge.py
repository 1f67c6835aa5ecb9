"""The question whether a bridge between two events is to be used."""

from __future__ import annotations

from bot.dialogue.flow import Answers, Flow, Step, buttons, one_of
from bot.event.season import words
from bot.plan.words import use_plan_button
from bot.words.common import leave_it_button

USE, USUAL, LEAVE = "use", "usual", "leave"


def _ask(answers: Answers) -> str:
    return words.ask_bridge(
        answers["_said"], answers["_earlier"], answers["_table"], answers["_between"]
    )


#: Context: "_event", its "_said" and the "_earlier" one in words, "_between" (days), "_days" (the
#: plan), "_table" to show, and "_base", the plan row that it would replace (0: none).
BRIDGE_WEEK = Flow(
    id="coach-bridge",
    can_cancel=False,
    steps=(
        Step(
            key="do",
            ask=_ask,
            read=one_of(USE, USUAL, LEAVE),
            choices=buttons(
                ((use_plan_button, USE), (leave_it_button, LEAVE)),
                ((words.usual_draft_button, USUAL),),
            ),
        ),
    ),
)
