"""The question where a plan and its limits don't fit together; the draft is kept in it."""

from __future__ import annotations

from dataclasses import asdict, replace
from datetime import date
from typing import Any

from bot.dialogue.flow import Answers, Choice, Choices, Flow, InvalidAnswer, Step
from bot.plan import words as plan_words
from bot.plan.fit import words
from bot.plan.flow import PLAN_NUMBER
from bot.plan.flow_number import read_number
from bot.words.common import leave_it_button
from engine.values.plan import DayTarget, PeakPlan

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
        return words.fits_now(table)
    return words.draft_kept(answers["_problems"], answers["_raises"], answers["_past"])


def _choices(answers: Answers) -> Choices:
    if not answers["_problems"]:
        return ((Choice(plan_words.use_plan_button(), USE), Choice(leave_it_button(), LEAVE)),)
    raising = (Choice(words.raise_button(answers["_raises"]), RAISE),) if answers["_raises"] else ()
    return (
        *((raising,) if raising else ()),
        (Choice(words.cut_button(), CUT), Choice(leave_it_button(), LEAVE)),
    )


def _read(text: str, answers: Answers) -> Any:
    offered = {choice.value for row in _choices(answers) for choice in row}
    if text in offered:
        return text
    typed = read_number(text)
    if typed is None:
        raise InvalidAnswer(words.how_to_edit())
    if draft_of(answers).day(typed.days_out) is None:
        raise InvalidAnswer(words.no_such_day(typed.days_out))
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
