"""The question whether another coach shall take over."""

from __future__ import annotations

from bot.dialogue.flow import Answers, Choice, Choices, Flow, Step, yes_or_no
from bot.membership.invitations import words


def _ask(answers: Answers) -> str:
    return words.change_coach(answers["_old"], answers["_new"])


def _choices(answers: Answers) -> Choices:
    return (
        (Choice(words.change_button(answers["_new"]), "yes"),),
        (Choice(words.stay_button(), "no"),),
    )


#: Context: "_old" and "_new" as names, "_invite" the id of the invitation or None.
CHANGE_COACH = Flow(
    id="change-coach",
    steps=(Step(key="change", ask=_ask, read=yes_or_no, choices=_choices),),
    can_cancel=False,
)
