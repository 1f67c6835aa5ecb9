"""The one question that a filled-in sheet leads to, of a plan or of past weeks."""

from __future__ import annotations

from bot.dialogue.flow import Answers, Flow, Step, buttons, yes_or_no
from bot.plan.templates.flow import leave_button
from bot.sheets import words
from bot.sheets.past_weeks import words as past_words


def _ask(answers: Answers) -> str:
    asked = words.ask_to_take(
        answers["_name"], answers["_lines"], answers["_hidden"], self_coached=answers["_own"]
    )
    said = (answers.get("_for", ""), answers.get("_totals", ""), asked)
    return "\n\n".join(part for part in said if part)


#: Context: "_name", "_own", "_lines", "_hidden" and "_totals" (what there is to say of stated kcal)
#: to show; "_plan" and "_limits", the ids of the rows that the sheet was made from; "_days" and
#: "_bounds" (or None) as they would become.
SHEET = Flow(
    id="coach-sheet",
    can_cancel=False,
    steps=(
        Step(
            key="take",
            ask=_ask,
            read=yes_or_no,
            choices=buttons(((words.take_button, "yes"), (leave_button, "no"))),
        ),
    ),
)


#: Context: "_said" to show; "_weeks", as they are to be stored.
IMPORT = Flow(
    id="coach-past-weeks",
    can_cancel=False,
    steps=(
        Step(
            key="take",
            ask=lambda answers: past_words.ask_to_import(answers["_said"]),
            read=yes_or_no,
            choices=buttons(((past_words.import_button, "yes"), (past_words.leave_button, "no"))),
        ),
    ),
)
