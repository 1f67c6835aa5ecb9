"""The one question that a sheet of past weeks leads to."""

from __future__ import annotations

from bot.dialogue.flow import Flow, Step, buttons, yes_or_no
from bot.sheets.past_weeks import words

#: Context: "_said" to show; "_weeks", as they are to be stored.
IMPORT = Flow(
    id="coach-past-weeks",
    can_cancel=False,
    steps=(
        Step(
            key="take",
            ask=lambda answers: words.ask_to_import(answers["_said"]),
            read=yes_or_no,
            choices=buttons(((words.import_button, "yes"), (words.leave_button, "no"))),
        ),
    ),
)
