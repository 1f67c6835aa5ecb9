"""The questions for the day itself, and the look check before the stage."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import date, datetime, time, timedelta
from functools import partial

from bot.core.timing.instants import local_instant
from bot.dialogue import flow as reading
from bot.dialogue.flow import (
    MINUTES,
    Answers,
    Choice,
    Choices,
    Flow,
    InvalidAnswer,
    Step,
    buttons,
    one_of,
    said,
    without,
)
from bot.event.stage import words
from bot.words import common
from bot.words.languages import language
from bot.words.names import gut_button
from engine.stage_day.stage_day import StageDay, estimated_stage
from engine.written.stage_times import clocks_alone, parse_delay, parse_stage_word
from engine.written.units import parse_clock, parse_number, parse_score

NONE, ORDER = "none", "order"
#: Clock times before this belong to the night after the event's day.
NIGHT_UNTIL = time(4, 0)
MOST_CLASSES = 200


def _read_stage(text: str, answers: Answers) -> Answers:
    """When the first class is on, and those after it where they are told with it."""
    if text.strip().lower() == ORDER:
        return {"stage": ORDER}
    word = parse_stage_word(text, language())
    first, *later = word.clocks if word is not None and word.which in (0, 1) else clocks_alone(text)
    found: Answers = {"stage": f"{first:%H:%M}"}
    if later:
        clocks = " ".join(f"{clock:%H:%M}" for clock in later)
        found["second"] = _read_later(clocks, answers | found)
    return found


def _read_clock(text: str) -> str:
    return f"{parse_clock(text):%H:%M}"


def _read_clock_or_none(text: str) -> str | None:
    if text == NONE or said(text, reading.NONE) or said(text, reading.UNKNOWN):
        return None
    return _read_clock(text)


def _read_later(text: str, answers: Answers) -> str | None:
    """The times of all further classes, with spaces between; None where there is one class only."""
    if text == NONE or said(text, reading.NONE) or said(text, reading.UNKNOWN):
        return None
    clocks = [f"{clock:%H:%M}" for clock in clocks_alone(text)]
    every = [first_stage(answers), *(_instant(answers, clock) for clock in clocks)]
    if every != sorted(set(every)):
        raise InvalidAnswer(words.second_not_later())
    return " ".join(clocks)


def _read_minutes(text: str) -> float:
    """A figure, or a span as it is spoken: "half an hour"."""
    for late in ("late", "später"):
        spoken = parse_delay(f"{late} {reading.plainly(text)}", language())
        if spoken is not None and not text.strip().isdecimal():
            return float(spoken)
    return parse_number(without(text, MINUTES), low=0, high=600)


def _read_duty(text: str, answers: Answers) -> str | None:
    at = _read_clock_or_none(text)
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
    later = (answers.get("second") or "").split()
    wake = local_instant(
        date.fromisoformat(answers["_day"]), time.fromisoformat(answers["_wake"]), answers["_zone"]
    )

    def at(key: str) -> datetime | None:
        return _instant(answers, answers[key]) if answers.get(key) else None

    return StageDay(
        stages=(first, *(_instant(answers, clock) for clock in later)),
        usual_wake=wake,
        travel_min=answers["travel_min"],
        registration=at("registration"),
        tan=at("tan"),
        look_before_min=answers.get("_look_before_min"),
    )


def _one(*pairs: tuple[str | Callable[[], str], str]) -> Choices:
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
            read_with=_read_stage,
            spreads=True,
            choices=_one((words.order_button, ORDER)),
        ),
        Step(key="show_start", ask=words.ask_show_start, read=_read_clock, when=_by_order),
        Step(
            key="number",
            ask=words.ask_class_number,
            read=lambda text: parse_score(text, 1, MOST_CLASSES),
            when=_by_order,
        ),
        Step(
            key="each",
            ask=words.ask_each,
            read=lambda text: parse_number(without(text, MINUTES), low=1, high=120),
            choices=_one(*((partial(common.minutes, n), str(n)) for n in (10, 15, 20))),
            when=_by_order,
        ),
        Step(
            key="second",
            ask=words.ask_second,
            read_with=_read_later,
            choices=_one((words.no_second_button, NONE)),
        ),
        Step(
            key="travel_min",
            ask=words.ask_travel,
            read=_read_minutes,
            choices=_one(
                (common.none, "0"), *((partial(common.minutes, n), str(n)) for n in (15, 30, 60))
            ),
        ),
        Step(
            key="registration",
            ask=words.ask_registration,
            read_with=_read_duty,
            choices=_one((common.none, NONE)),
        ),
        Step(key="tan", ask=words.ask_tan, read_with=_read_duty, choices=_one((common.none, NONE))),
    ),
)


def _scores(most: int) -> Choices:
    row = [Choice(str(n), str(n)) for n in range(1, most + 1)]
    return [row[:5], row[5:]] if most > 5 else [row]


def _read_look(text: str) -> Answers:
    """How full, or the whole look in a line: "7 4 fine"."""
    parts = [part for part in re.split(r"[\s,;/]+", text.strip()) if part]
    if not 2 <= len(parts) <= 3:
        return {"fullness": parse_score(text, 1, 10)}
    found: Answers = {
        "fullness": parse_score(parts[0], 1, 10), "sharpness": parse_score(parts[1], 1, 5),
    }  # fmt: skip
    if len(parts) == 3:
        guts = {gut_button(gut).casefold(): gut for gut in gut_button.table}
        word = parts[2].casefold().rstrip(".!")
        found["gut"] = one_of(*gut_button.table)(guts.get(word, word))
    return found


#: Context: none; the subject is the athlete.
LOOK = Flow(
    id="stage-look",
    can_cancel=False,
    steps=(
        Step(
            key="fullness",
            ask=words.ask_fullness,
            read=_read_look,
            spreads=True,
            choices=_scores(10),
        ),
        Step(
            key="sharpness",
            ask=words.ask_sharpness,
            read=lambda text: parse_score(text, 1, 5),
            choices=_scores(5),
        ),
        Step(
            key="gut",
            ask=words.ask_gut,
            read=one_of("fine", "heavy", "bad"),
            choices=_one(*((partial(gut_button, gut), gut) for gut in gut_button.table)),
        ),
    ),
)
