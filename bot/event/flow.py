"""The questions for an event: what kind, which day, where."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, timedelta
from functools import partial
from typing import Any
from zoneinfo import ZoneInfo

from bot.dialogue.flow import Answers, Choice, Choices, Flow, Step, Unread
from bot.dialogue.readers import buttons, day_in, one_of, zone_of
from bot.membership.onboarding.flow import ONBOARDING
from bot.plan import words
from bot.words.languages import tr
from engine.values.athlete import EventKind

SAME = "same"
FURTHEST = timedelta(days=366)
_PLACE, _WHICH_PLACE = ONBOARDING.step("place"), ONBOARDING.step("which_place")
assert _PLACE is not None
assert _WHICH_PLACE is not None


def _read_day(text: str, answers: Answers) -> str:
    today = datetime.fromisoformat(answers["_now"]).astimezone(ZoneInfo(answers["_zone"])).date()
    day = day_in(text, today)
    if day < today:
        raise Unread(words.day_is_past(day))
    if day - today > FURTHEST:
        raise Unread(words.day_is_far(day))
    return day.isoformat()


def _read_place(text: str, answers: Answers) -> Any:
    if text.strip().lower() == SAME:
        return [{"name": "", "zone": answers["_zone"]}]
    assert _PLACE is not None
    return _PLACE.read(text, answers)


def _is_elsewhere(answers: Answers) -> bool:
    return any(place["name"] for place in answers.get("place", []))


def _same(answers: Answers) -> Choices:
    return ((Choice(words.same_place_button(), SAME),),)


def _so_far(answers: Answers) -> str:
    day = answers.get("day")
    return words.event_so_far(answers.get("kind"), date.fromisoformat(day) if day else None)


#: Context: "_name", "_own", and "_zone", the athlete's own.
EVENT = Flow(
    id="coach-event",
    so_far=_so_far,
    steps=(
        Step(
            key="kind",
            ask=lambda answers: words.ask_kind(answers["_name"], own=answers["_own"]),
            read=one_of(*(kind.value for kind in EventKind)),
            choices=buttons(
                tuple((partial(tr, label), kind) for kind, label in words.KINDS.items())
            ),
        ),
        Step(key="day", ask=lambda answers: words.ask_day(), read=_read_day),
        Step(
            key="place",
            ask=lambda answers: words.ask_place(answers["_zone"], own=answers["_own"]),
            read=_read_place,
            choices=_same,
        ),
        replace(_WHICH_PLACE, when=_is_elsewhere),
    ),
)


def event_zone(answers: Answers) -> str:
    """The zone of the event: that of the place named, else the athlete's own."""
    return zone_of(answers) if _is_elsewhere(answers) else str(answers["_zone"])
