"""The questions around plan templates: what to call one, and whether to use it."""

from __future__ import annotations

from bot.dialogue.flow import Answers, Flow, InvalidAnswer, Step, buttons, yes_or_no
from bot.plan.templates import words
from bot.plan.words import use_plan_button


def _read_name(text: str, answers: Answers) -> str:
    name = " ".join(text.split())
    if not name:
        raise InvalidAnswer(words.name_empty())
    if len(name) > words.LONGEST_NAME:
        raise InvalidAnswer(words.name_too_long(len(name)))
    if name.casefold() in answers["_names"]:
        raise InvalidAnswer(words.name_taken(name))
    return name


#: Context: "_names", those of the coach's templates in lower case.
TEMPLATE_NAME = Flow(
    id="coach-template-name",
    steps=(Step(key="name", ask=words.ask_name, read_with=_read_name, free=True),),
)


def _ask_use(answers: Answers) -> str:
    asked = words.ask_use(
        answers["_template"], answers["_table"], answers["_name"],
        self_coached=answers["_own"], days_over=answers["_days_over"],
    )  # fmt: skip
    return "\n\n".join(part for part in (answers.get("_for", ""), asked) if part)


#: Context: "_template" (its name), "_shape", "_name", "_own", "_table", "_days_over" and "_for" (which
#: event, where it is another than the one that counts) to show; "_event", its id;
#: "_days", the plan as it would become; "_plan", the id of the one it would replace (0: none).
TEMPLATE_USE = Flow(
    id="coach-template-use",
    can_cancel=False,
    steps=(
        Step(
            key="use",
            ask=_ask_use,
            read=yes_or_no,
            choices=buttons(((use_plan_button, "yes"), (words.leave_button, "no"))),
        ),
    ),
)
