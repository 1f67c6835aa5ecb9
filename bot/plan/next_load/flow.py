"""The question whether the load that earlier weeks suggest is to be planned."""

from __future__ import annotations

from bot.dialogue.flow import Answers, Flow, Step, buttons, yes_or_no
from bot.plan.next_load import words
from bot.plan.words import use_plan_button
from bot.words.common import cancel_button


def _ask_use(answers: Answers) -> str:
    return words.ask_use(answers["_said"], answers["_table"], has_plan=bool(answers["_plan"]))


#: Context: "_said" and "_table" to show; "_days", the plan as it would become, and its "_shape";
#: "_plan", the id of the one it would replace (0: none); "_event"; "_g_per_kg" and
#: "_was_g_per_kg", the mean load day in it and before; "_load_total_g", the limit that moves along.
NEXT_LOAD = Flow(
    id="coach-next-load",
    can_cancel=False,
    steps=(
        Step(
            key="use",
            ask=_ask_use,
            read=yes_or_no,
            choices=buttons(((use_plan_button, "yes"), (cancel_button, "no"))),
        ),
    ),
)
