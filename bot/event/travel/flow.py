"""The questions for a journey: leaving by the clocks at home, arriving by those there."""

from __future__ import annotations

from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from bot.core.timing.instants import local_instant
from bot.dialogue.flow import Answers, Flow, InvalidAnswer, Step, day_in
from bot.event.travel import words
from engine.written.units import parse_clock

LONGEST = timedelta(days=3)


def _read_day(text: str, answers: Answers) -> str:
    now = datetime.fromisoformat(answers["_now"]).astimezone(ZoneInfo(answers["_home"]))
    day = day_in(text, now.date())
    if day < now.date():
        raise InvalidAnswer(words.day_is_past())
    if day > date.fromisoformat(answers["_event_day"]):
        raise InvalidAnswer(words.after_the_event())
    return day.isoformat()


def _read_clock(text: str) -> str:
    return f"{parse_clock(text):%H:%M}"


def _read_arrival(text: str, answers: Answers) -> str:
    clock = _read_clock(text)
    left, arrived = leaving({**answers}), arriving({**answers, "arrive": clock})
    if not timedelta(0) < arrived - left <= LONGEST:
        raise InvalidAnswer(words.arrival_impossible())
    return clock


def leaving(answers: Answers) -> datetime:
    """The instant of leaving."""
    return local_instant(
        date.fromisoformat(answers["leave_day"]),
        time.fromisoformat(answers["leave"]),
        answers["_home"],
    )


def arriving(answers: Answers) -> datetime:
    """The instant of arriving."""
    return local_instant(
        date.fromisoformat(answers["arrive_day"]),
        time.fromisoformat(answers["arrive"]),
        answers["_away"],
    )


#: Context: "_home", "_away" (zones), "_event_day" (ISO).
TRAVEL = Flow(
    id="travel",
    steps=(
        Step(
            key="leave_day",
            ask=lambda answers: words.ask_leave_day(answers["_away"]),
            read_with=_read_day,
        ),
        Step(key="leave", ask=lambda answers: words.ask_leave(answers["_home"]), read=_read_clock),
        Step(
            key="arrive_day",
            ask=lambda answers: words.ask_arrive_day(answers["_away"]),
            read_with=_read_day,
        ),
        Step(
            key="arrive",
            ask=lambda answers: words.ask_arrive(answers["_away"]),
            read_with=_read_arrival,
        ),
    ),
)
