"""The question for one limit, and what a coach reads while setting limits; and the question where a
plan and its limits don't fit together, in which the draft is kept.
"""

from __future__ import annotations

import math
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
from bot.words.languages import Sentence, SentenceBy, SentenceOn, mark, tr, tr_if
from bot.words.names import LIMIT_WORDS, LIMITS, cited
from engine.planning.room import Room
from engine.values.limits import LIMIT_KEYS
from engine.values.plan import DayTarget, PeakPlan
from engine.written.units import VolumeUnit, parse_grams, parse_volume


def limits_view(
    name: str, lines: Sequence[str], *, are_set: bool, self_coached: bool, cost: str = ""
) -> str:
    """`cost`: see `room_line`."""
    if are_set:
        head = (
            tr("Your limits. I never go past them:")
            if self_coached
            else tr("{name}'s limits. I never go past them:", name=figures.capital(name))
        )
    else:
        head = tr_if(
            self_coached,
            "Limits I suggest for your plan. They count once you have set them:",
            "Limits I suggest for {name}'s plan. They count once you have set them:",
            name=name,
        )
    parts = [head, "\n".join(lines), cost, tr("Tap one to change it.")]
    return "\n\n".join(part for part in parts if part)


#: Shares in words: from which on, and how it is said.
SHARES = (
    (0.9, mark("nearly all")),
    (0.7, mark("about three quarters")),
    (0.58, mark("about two thirds")),
    (0.42, mark("about half")),
    (0.29, mark("about a third")),
    (0.15, mark("about a quarter")),
    (0.0, mark("next to nothing")),
)


def room_line(room: Room | None, name: str, *, self_coached: bool) -> str:
    """What the limits cost: how far a load day may be corrected, beside what may be needed."""
    if room is None:
        return ""
    told = {
        "name": name,
        "up": figures.grams(math.floor(room.up_g)),
        "down": figures.grams(math.floor(room.down_g)),
        "share": tr(next(words for least, words in SHARES if room.share >= least)),
    }
    said = (
        tr(
            "With these limits an average load day of yours can be corrected by {up} up and {down} "
            "down at most: {share} of what may be needed.",
            **told,
        )
        if self_coached
        else tr(
            "With these limits {name}'s average load day can be corrected by {up} up and {down} "
            "down at most: {share} of what may be needed.",
            **told,
        )
    )
    note = tr(
        "What may be needed is worked out on virtual athletes, not measured on people. Anything over "
        "the auto-approve limit still waits for your approval."
    )
    return f"{said} {note}"


def limit_line(key: str, value: float, volume_unit: str) -> str:
    label = figures.capital(figures.limit_label(key))
    return f"{label}: {figures.limit(key, value, volume_unit)}"


limit_button = SentenceBy(LIMITS)
use_limits_button = Sentence("Set these limits")


def ask_limit(key: str, value: float, low: float, high: float, volume_unit: str) -> str:
    if LIMIT_KEYS[key].unit == "g":
        low, high = math.ceil(low), math.floor(high)  # what is offered has to be taken
    return tr(
        "{label}: {value} at present. Send the new number, from {low} to {high}.",
        label=figures.capital(figures.limit_label(key)),
        value=figures.limit(key, value, volume_unit),
        low=figures.limit(key, low, volume_unit),
        high=figures.limit(key, high, volume_unit),
    )


def outside_guard_rail(
    key: str, value: float, bound: float, citation: str, volume_unit: str
) -> str:
    return tr_if(
        value > bound,
        "{value} is over the safety bound: {bound} is the most for this body mass. Source: "
        "{citation}.",
        "{value} is under the safety bound: {bound} is the least for this body mass. Source: "
        "{citation}.",
        value=figures.limit(key, value, volume_unit),
        bound=figures.limit(key, bound, volume_unit),
        citation=cited(citation),
    )


def limits_contradict(key: str, volume_unit: str, floor: float, ceiling: float) -> str:
    if key.startswith("water"):
        return tr(
            "The water floor ({floor}) would then be above the water ceiling ({ceiling}), so I "
            "changed nothing.",
            floor=figures.limit("water_floor_l", floor, volume_unit),
            ceiling=figures.limit("water_floor_l", ceiling, volume_unit),
        )
    return tr(
        "The carb floor ({floor}) would then be above the carb ceiling ({ceiling}), so I "
        "changed nothing.",
        floor=figures.limit("carb_floor_g", floor, volume_unit),
        ceiling=figures.limit("carb_floor_g", ceiling, volume_unit),
    )


limits_set = Sentence("The limits are set.")


def limit_changed(line: str, cost: str = "") -> str:
    return "\n\n".join(part for part in (tr("Changed. {line}.", line=line), cost) if part)


def _ask(answers: Answers) -> str:
    return ask_limit(
        answers["_key"], answers["_value"], answers["_low"], answers["_high"],
        answers["_volume_unit"],
    )  # fmt: skip


def _read(text: str, answers: Answers) -> float:
    key, unit = answers["_key"], answers["_volume_unit"]
    if LIMIT_KEYS[key].unit == "L":
        value = parse_volume(text, unit=VolumeUnit(unit)).litres
    else:
        value = parse_grams(text, high=10_000)
    for bound, outside, citation in (
        (answers["_low"], value < answers["_low"], answers["_low_source"]),
        (answers["_high"], value > answers["_high"], answers["_high_source"]),
    ):
        if outside:
            raise InvalidAnswer(outside_guard_rail(key, value, bound, citation, unit))
    return value


#: Context: "_key" of the limit, "_value" as it is, "_low", "_high" and their sources' citations,
#: "_volume_unit".
LIMIT = Flow(id="coach-limit", steps=(Step(key="value", ask=_ask, read_with=_read),))


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


def _ask_way_out(answers: Answers) -> str:
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


def _read_way_out(text: str, answers: Answers) -> Any:
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
    steps=(Step(key="do", ask=_ask_way_out, read_with=_read_way_out, choices=_choices),),
)
