"""The question before a plan with warnings goes live: go on, and for what reason."""

from __future__ import annotations

from bot.dialogue.flow import Answers, Flow, Step, buttons, reason, yes_or_no
from bot.plan.review import words
from bot.words.common import cancelled
from engine.written.units import parse_number

MOST_KCAL = 12000


def _ask_sure(answers: Answers) -> str:
    return words.ask_sure(answers["_warnings"])


def _so_far(answers: Answers) -> str:
    if "sure" not in answers:
        return ""
    return words.going_on(answers["_warnings"]) if answers["sure"] else cancelled()


#: Context: "_warnings" (the text), "_answers" (what the reason will be for), "_event", "_base" (the
#: plan row this was to take the place of, 0 for none), "_days", "_shape", "_field", "_days_out".
PLAN_REVIEW = Flow(
    id="coach-plan-review",
    so_far=_so_far,
    can_cancel=False,
    steps=(
        Step(
            key="sure",
            ask=_ask_sure,
            read=yes_or_no,
            choices=buttons(((words.go_on_button, "yes"),), ((words.leave_button, "no"),)),
        ),
        Step(
            key="reason",
            ask=words.ask_reason,
            read=reason,
            free=True,
            when=lambda answers: answers.get("sure") is True,
        ),
    ),
)


def _read_total(text: str) -> float:
    return parse_number(text.lower().replace("kcal", ""), low=100, high=MOST_KCAL)


#: Context: "_days_out".
PLAN_TOTAL = Flow(
    id="coach-plan-total",
    steps=(
        Step(
            key="kcal", ask=lambda answers: words.ask_total(answers["_days_out"]), read=_read_total
        ),
    ),
)
