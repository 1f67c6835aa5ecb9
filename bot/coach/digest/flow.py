"""When a coach's digest comes, where they are, and when notes are to wait."""

from __future__ import annotations

from dataclasses import replace
from datetime import time

from bot.coach.digest import words
from bot.dialogue.flow import Answers, Flow, InvalidAnswer, Step, buttons
from bot.membership.onboarding.flow import ONBOARDING
from engine.written.units import parse_clock


def _place_steps(*, when_known: bool) -> tuple[Step, ...]:
    """Where the coach is; passed over where that is known, unless it is what is to change."""

    def unknown(answers: Answers) -> bool:
        return when_known or answers.get("_zone") is None

    place, which = ONBOARDING.step("place"), ONBOARDING.step("which_place")
    assert place is not None
    assert which is not None
    return (replace(place, ask=words.ask_place, when=unknown), replace(which, when=unknown))


def _clock(text: str) -> str:
    return parse_clock(text).strftime("%H:%M")


def _quiet_to(text: str, answers: Answers) -> str:
    ends = _clock(text)
    if ends == answers["quiet_from"]:
        raise InvalidAnswer(words.quiet_is_empty())
    return ends


#: Context for all three: "_zone", the coach's zone or None.
DIGEST = Flow(
    id="coach-digest",
    steps=(
        *_place_steps(when_known=False),
        Step(
            key="digest_at",
            ask=words.ask_digest_at,
            read=_clock,
            choices=buttons(
                (("6:00", "06:00"), ("7:00", "07:00"), ("8:00", "08:00")),
                (("9:00", "09:00"), ("12:00", "12:00"), ("20:00", "20:00")),
            ),
        ),
    ),
)
ZONE = Flow(
    id="coach-zone", steps=tuple(replace(step, when=None) for step in _place_steps(when_known=True))
)
QUIET = Flow(
    id="coach-quiet",
    steps=(
        *_place_steps(when_known=False),
        Step(
            key="quiet_from",
            ask=words.ask_quiet_from,
            read=_clock,
            choices=buttons((("20:00", "20:00"), ("21:00", "21:00"), ("22:00", "22:00"))),
        ),
        Step(
            key="quiet_to",
            ask=lambda answers: words.ask_quiet_to(time.fromisoformat(answers["quiet_from"])),
            read_with=_quiet_to,
            choices=buttons((("6:00", "06:00"), ("7:00", "07:00"), ("8:00", "08:00"))),
        ),
    ),
)
