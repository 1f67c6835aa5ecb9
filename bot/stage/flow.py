"""The questions for the day itself, and the look check before the stage."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, datetime, time, timedelta
from functools import partial
from typing import Any

from bot.core.instants import local_instant
from bot.dialogue import readers as reading
from bot.dialogue.flow import Answers, Choice, Choices, Flow, InvalidAnswer, Step
from bot.dialogue.readers import MINUTES, Label, buttons, one_of, said, without
from bot.stage import words
from bot.words import common
from bot.words.names import GUT_BUTTONS, gut_button
from engine.stage_day.stage_day import StageDay, estimated_stage
from engine.written.units import parse_clock, parse_number, parse_score

NONE, ORDER = "none", "order"
#: Clock times before this belong to the night after the event's day.
NIGHT_UNTIL = time(4, 0)
MOST_CLASSES = 200


def _read_stage(text: str, answers: Answers) -> str:
    return ORDER if text.strip().lower() == ORDER else _read_clock(text, answers)


def _read_clock(text: str, answers: Answers) -> str:
    return f"{parse_clock(text):%H:%M}"


def _read_clock_or_none(text: str, answers: Answers) -> str | None:
    if text == NONE or said(text, reading.NONE):
        return None
    return _read_clock(text, answers)


def _read_second(text: str, answers: Answers) -> str | None:
    second = _read_clock_or_none(text, answers)
    if second is not None and _instant(answers, second) <= first_stage(answers):
        raise InvalidAnswer(words.second_not_later())
    return second


def _read_duty(text: str, answers: Answers) -> str | None:
    at = _read_clock_or_none(text, answers)
    if at is not None and _instant(answers, at) >= first_stage(answers):
        raise InvalidAnswer(words.duty_not_before())
    return at


def _instant(answers: Answers, clock: str) -> datetime:
    """A clock time of the day, or of the night after it, as an instant."""
    day, at = date.fromisoformat(answers["_day"]), time.fromisoformat(clock)
    if at < NIGHT_UNTIL:
        day += timedelta(days=1)
    return local_instant(day, at, answers["_zone"])


def first_stage(answers: Answers) -> datetime:
    if answers["stage"] != ORDER:
        return _instant(answers, answers["stage"])
    return estimated_stage(
        _instant(answers, answers["show_start"]), answers["number"], answers["each"]
    )


def stage_day_of(answers: Answers) -> StageDay:
    """The day that the answers describe."""
    first = first_stage(answers)
    second = answers.get("second")
    wake = local_instant(
        date.fromisoformat(answers["_day"]), time.fromisoformat(answers["_wake"]), answers["_zone"]
    )

    def at(key: str) -> datetime | None:
        return _instant(answers, answers[key]) if answers.get(key) else None

    return StageDay(
        stages=(first, _instant(answers, second)) if second else (first,),
        usual_wake=wake,
        travel_min=answers["travel_min"],
        registration=at("registration"),
        tan=at("tan"),
        look_before_min=answers.get("_look_before_min"),
    )


def _one(*pairs: tuple[Label, str]) -> Callable[[Answers], Choices]:
    return buttons(pairs)


def _by_order(answers: Answers) -> bool:
    return answers.get("stage") == ORDER


#: Context: "_day" (ISO), "_zone", "_wake" (HH:MM), "_look_before_min" as it was set before.
STAGE = Flow(
    id="stage",
    so_far=lambda answers: words.so_far(answers) if "stage" in answers else "",
    steps=(
        Step(
            key="stage",
            ask=lambda answers: words.ask_stage(
                date.fromisoformat(answers["_day"]), answers["_zone"]
            ),
            read=_read_stage,
            choices=_one((words.order_button, ORDER)),
        ),
        Step(
            key="show_start",
            ask=lambda answers: words.ask_show_start(),
            read=_read_clock,
            when=_by_order,
        ),
        Step(
            key="number",
            ask=lambda answers: words.ask_class_number(),
            read=lambda text, answers: parse_score(text, 1, MOST_CLASSES),
            when=_by_order,
        ),
        Step(
            key="each",
            ask=lambda answers: words.ask_each(),
            read=lambda text, answers: parse_number(without(text, MINUTES), low=1, high=120),
            choices=_one(*((partial(common.minutes, n), str(n)) for n in (10, 15, 20))),
            when=_by_order,
        ),
        Step(
            key="second",
            ask=lambda answers: words.ask_second(),
            read=_read_second,
            choices=_one((words.no_second_button, NONE)),
        ),
        Step(
            key="travel_min",
            ask=lambda answers: words.ask_travel(),
            read=lambda text, answers: parse_number(without(text, MINUTES), low=0, high=600),
            choices=_one(
                (common.none, "0"), *((partial(common.minutes, n), str(n)) for n in (15, 30, 60))
            ),
        ),
        Step(
            key="registration",
            ask=lambda answers: words.ask_registration(),
            read=_read_duty,
            choices=_one((common.none, NONE)),
        ),
        Step(
            key="tan",
            ask=lambda answers: words.ask_tan(),
            read=_read_duty,
            choices=_one((common.none, NONE)),
        ),
    ),
)


def _scores(most: int) -> Any:
    def choices(answers: Answers) -> Choices:
        row = [Choice(str(n), str(n)) for n in range(1, most + 1)]
        return [row[:5], row[5:]] if most > 5 else [row]

    return choices


#: Context: none; the subject is the athlete.
LOOK = Flow(
    id="stage-look",
    can_cancel=False,
    steps=(
        Step(
            key="fullness",
            ask=lambda answers: words.ask_fullness(),
            read=lambda text, answers: parse_score(text, 1, 10),
            choices=_scores(10),
        ),
        Step(
            key="sharpness",
            ask=lambda answers: words.ask_sharpness(),
            read=lambda text, answers: parse_score(text, 1, 5),
            choices=_scores(5),
        ),
        Step(
            key="gut",
            ask=lambda answers: words.ask_gut(),
            read=one_of("fine", "heavy", "bad"),
            choices=_one(*((partial(gut_button, gut), gut) for gut in GUT_BUTTONS)),
        ),
    ),
)
