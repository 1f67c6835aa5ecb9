"""The question where a plan and its limits don't fit together; the draft is kept in it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict, replace
from datetime import date
from typing import Any

from bot.dialogue.flow import Answers, Choice, Choices, Flow, InvalidAnswer, Step
from bot.plan import words as plan_words
from bot.plan.flow import PLAN_NUMBER
from bot.plan.flow_number import read_number
from bot.words import figures
from bot.words.common import leave_it_button
from bot.words.languages import Sentence, SentenceOn, tr
from bot.words.names import LIMIT_WORDS, cited
from engine.values.plan import DayTarget, PeakPlan


def limit_moves(moves: Sequence[tuple[str, float, float]], volume_unit: str) -> str:
    """ "carb ceiling 420 → 450 g": each as key, value now and value then."""
    return figures.all_of(
        [
            tr(
                "{limit} {was} → {becomes}",
                limit=tr(LIMIT_WORDS[key]),
                was=figures.limit(key, was, volume_unit),
                becomes=figures.limit(key, becomes, volume_unit),
            )
            for key, was, becomes in moves
        ]
    )


def draft_kept(problems: str, raises: str, past: str) -> str:
    """`raises`: what would move ("" where nothing may); `past`: what stands in the way of that."""
    parts = [
        tr("I changed nothing yet: plan and limits don't fit together:\n{lines}", lines=problems)
    ]
    if raises:
        parts.append(tr("With this change they would fit: {moves}.", moves=raises))
    if past:
        parts.append(past)
    parts.append(edit_hint())
    return "\n\n".join(parts)


def past_bound(limit: str, bound: str, citation: str) -> str:
    return tr(
        "No limit can allow it: the safety bound for the {limit} is {bound}. Source: {citation}.",
        limit=tr(LIMIT_WORDS[limit]),
        bound=bound,
        citation=cited(citation),
    )


edit_hint = Sentence(
    "Your draft is kept. To change a number in it, send for example: 2 days out carbs 380."
)
cut_button = Sentence("Cut the draft to fit")
how_to_edit = Sentence(
    "Tap a button, or send one number of the draft to change, for example: 2 days out carbs 380."
)
moved_on = Sentence(
    "Plan, limits or event have changed since I asked, so I changed nothing. Please look again."
)


fits_now = SentenceOn("It fits now:\n\n{table}\n\nUse this plan?")
raise_button = SentenceOn("Change the limit: {moves}")
no_such_day = SentenceOn("The draft has no {when}.", figures.days_out)


RAISE, CUT, USE, LEAVE = "raise", "cut", "use", "leave"


def draft_of(answers: Answers) -> PeakPlan:
    return PeakPlan(tuple(DayTarget(**day) for day in answers["_days"]))


def edited(answers: Answers) -> list[dict[str, Any]]:
    """The draft's days with the number that was sent in place of its own."""
    given = answers["do"]
    plan = draft_of(answers)
    target = plan.day(given["days_out"])
    assert target is not None
    return [asdict(day) for day in plan.with_day(replace(target, **{given["key"]: given["value"]}))]


def _ask(answers: Answers) -> str:
    if not answers["_problems"]:
        table = plan_words.plan_table(
            draft_of(answers), date.fromisoformat(answers["_event_day"]), answers["_volume_unit"]
        )
        return fits_now(table)
    return draft_kept(answers["_problems"], answers["_raises"], answers["_past"])


def _choices(answers: Answers) -> Choices:
    if not answers["_problems"]:
        return ((Choice(plan_words.use_plan_button(), USE), Choice(leave_it_button(), LEAVE)),)
    raising = (Choice(raise_button(answers["_raises"]), RAISE),) if answers["_raises"] else ()
    return (
        *((raising,) if raising else ()),
        (Choice(cut_button(), CUT), Choice(leave_it_button(), LEAVE)),
    )


def _read(text: str, answers: Answers) -> Any:
    offered = {choice.value for row in _choices(answers) for choice in row}
    if text in offered:
        return text
    typed = read_number(text)
    if typed is None:
        raise InvalidAnswer(how_to_edit())
    if draft_of(answers).day(typed.days_out) is None:
        raise InvalidAnswer(no_such_day(typed.days_out))
    about = {"_field": typed.key, "_value": None, "_volume_unit": answers["_volume_unit"]}
    value = PLAN_NUMBER.steps[0].answer(typed.value, answers | about)
    return {"days_out": typed.days_out, "key": typed.key, "value": value}


#: Context: "_event", "_event_day", "_base" and "_limits" (ids of the rows in force, 0 for none);
#: "_days", the draft; "_shape", "_reason" and "_how" as it was to be used; "_problems" ("" where it
#: fits by now), "_raises" and "_past" to show; "_bounds", the limits with room; "_volume_unit".
PLAN_FIT = Flow(
    id="coach-plan-fit",
    can_cancel=False,
    steps=(Step(key="do", ask=_ask, read_with=_read, choices=_choices),),
)
