"""The questions for an event (what kind, which day, where) and whether a bridge before it is used."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, datetime, timedelta
from functools import partial
from typing import Any
from zoneinfo import ZoneInfo

from bot.dialogue.flow import (
    Answers,
    Choice,
    Choices,
    Flow,
    InvalidAnswer,
    Step,
    buttons,
    day_in,
    read_offered,
    zone_of,
)
from bot.event import words as event_words
from bot.membership.onboarding.flow import ONBOARDING
from bot.plan import words
from bot.plan.words import use_plan_button
from bot.words.common import leave_it_button
from bot.words.languages import tr

SAME = "same"
#: How a new event stands to those ahead: it replaces one of them, or is one more.
INSTEAD, ONE_MORE = "instead-", "more"
FURTHEST = timedelta(days=366)
_PLACE, _WHICH_PLACE = ONBOARDING.step("place"), ONBOARDING.step("which_place")
assert _PLACE is not None
assert _WHICH_PLACE is not None


def _read_day(text: str, answers: Answers) -> str:
    today = datetime.fromisoformat(answers["_now"]).astimezone(ZoneInfo(answers["_zone"])).date()
    day = day_in(text, today)
    if day < today:
        raise InvalidAnswer(words.day_is_past(day))
    if day - today > FURTHEST:
        raise InvalidAnswer(words.day_is_far(day))
    return day.isoformat()


def _read_place(text: str, answers: Answers) -> Any:
    if text.strip().lower() == SAME:
        return [{"name": "", "zone": answers["_zone"]}]
    assert _PLACE is not None
    return _PLACE.answer(text, answers)


def _is_elsewhere(answers: Answers) -> bool:
    return any(place["name"] for place in answers.get("place", []))


def _so_far(answers: Answers) -> str:
    day = answers.get("day")
    return words.event_so_far(answers.get("kind"), date.fromisoformat(day) if day else None)


def _others(answers: Answers) -> list[tuple[int, str, date]]:
    """The events ahead that the new one may replace: none where it is on the day of one of them."""
    rows = [(number, kind, date.fromisoformat(day)) for number, kind, day in answers["_ahead"]]
    return [] if answers["day"] in [day.isoformat() for _, _, day in rows] else rows


def _ask_stands(answers: Answers) -> str:
    new = event_words.short(answers["kind"], date.fromisoformat(answers["day"]))
    others = [event_words.short(kind, day) for _, kind, day in _others(answers)]
    return event_words.ask_stands(new, others, self_coached=answers["_own"], name=answers["_name"])


def _stands(answers: Answers) -> Choices:
    others, new = _others(answers), date.fromisoformat(answers["day"])
    return standing(others, first=new < min(day for _, _, day in others))


def standing(others: Sequence[tuple[int, str, date]], *, first: bool) -> Choices:
    """Whether a new event is one more, before or behind those ahead, or in the place of one of them."""
    return (
        (Choice(event_words.follows_button(first=first), ONE_MORE),),
        *(
            (
                Choice(
                    event_words.replaces_button(event_words.short(kind, day)), f"{INSTEAD}{number}"
                ),
            )
            for number, kind, day in others
        ),
    )


#: Context: "_name", "_own", "_zone", the athlete's own, and "_ahead": number, kind and day (ISO) of
#: each event that still has its day to come.
EVENT = Flow(
    id="coach-event",
    so_far=_so_far,
    steps=(
        Step(
            key="kind",
            ask=lambda answers: words.ask_kind(answers["_name"], self_coached=answers["_own"]),
            choices=buttons(
                tuple((partial(tr, label), kind) for kind, label in words.KINDS.items())
            ),
        ),
        Step(key="day", ask=words.ask_day, read_with=_read_day),
        Step(
            key="place",
            ask=lambda answers: words.ask_place(answers["_zone"], self_coached=answers["_own"]),
            read_with=_read_place,
            choices=buttons(((words.same_place_button, SAME),)),
        ),
        replace(_WHICH_PLACE, when=_is_elsewhere),
        Step(
            key="stands",
            ask=_ask_stands,
            read_with=read_offered(_stands),
            choices=_stands,
            when=lambda answers: (
                "day" in answers and bool(answers.get("_ahead") and _others(answers))
            ),
        ),
    ),
)


def event_zone(answers: Answers) -> str:
    """The zone of the event: that of the place named, else the athlete's own."""
    return zone_of(answers) if _is_elsewhere(answers) else str(answers["_zone"])


USE, USUAL, LEAVE = "use", "usual", "leave"


def _ask(answers: Answers) -> str:
    return event_words.ask_bridge(
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
            choices=buttons(
                ((use_plan_button, USE), (leave_it_button, LEAVE)),
                ((event_words.usual_draft_button, USUAL),),
            ),
        ),
    ),
)
