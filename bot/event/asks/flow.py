"""The questions for the look that an event asks for, and for its weigh-in."""

from __future__ import annotations

import re
from datetime import time
from functools import partial
from typing import Any

from bot.dialogue.flow import Answers, Flow, InvalidAnswer, Step, buttons, free_text, said
from bot.event.asks import words
from bot.words import figures, invalid_answers
from bot.words.common import skip_button
from bot.words.languages import mark
from engine.values.athlete import HEAVIEST_KG, LIGHTEST_KG, WeighIn
from engine.values.checkin import TargetLook
from engine.written.units import WeightUnit, parse_clock, parse_number, parse_weight

USUAL, NONE = "usual", "none"
NO_WEIGH_IN = mark("no weigh-in, none, no")
#: Ranges on buttons; every other can be typed.
OFTEN = (
    TargetLook(fullness_low=7, fullness_high=9, sharpness_low=3, sharpness_high=4),
    TargetLook(fullness_low=6, fullness_high=8, sharpness_low=2, sharpness_high=4),
    TargetLook(fullness_low=8, fullness_high=10, sharpness_low=5, sharpness_high=5),
)
DAYS = (0, 1, 2)
HOURS = ("08:00", "12:00", "17:00")
_RANGE = re.compile(r"(\d+)\s*(?:-|–|to|bis)\s*(\d+)|(\d+)")
_BY_HEIGHT = re.compile(
    r"(?:height|größe|groesse|grösse)\s*(?:-\s*100)?\s*([+-]?\s*\d+(?:[.,]\d+)?)\D*"
)


def _short(look: TargetLook) -> str:
    return f"{look.fullness_low}-{look.fullness_high} {look.sharpness_low}-{look.sharpness_high}"


def read_look(text: str) -> dict[str, int] | str:
    """Two ranges, fullness and sharpness, or `USUAL`. Raises InvalidAnswer."""
    if text.strip().casefold() == USUAL:
        return USUAL
    found = [
        (int(one[0] or one[2]), int(one[1] or one[2])) for one in _RANGE.findall(text.casefold())
    ]
    if len(found) != 2:
        raise InvalidAnswer(words.unread_look())
    (full, fullest), (sharp, sharpest) = found
    try:
        TargetLook(
            fullness_low=full, fullness_high=fullest, sharpness_low=sharp, sharpness_high=sharpest
        )
    except ValueError:
        raise InvalidAnswer(words.unread_look()) from None
    return {
        "fullness_low": full, "fullness_high": fullest,
        "sharpness_low": sharp, "sharpness_high": sharpest,
    }  # fmt: skip


TARGET_LOOK = Flow(
    id="coach-target-look",
    steps=(
        Step(
            key="look",
            ask=words.ask_look,
            read=read_look,
            choices=buttons(
                ((words.usual_button, USUAL),),
                *(((partial(words.range_button, look), _short(look)),) for look in OFTEN),
            ),
        ),
        Step(
            key="words",
            ask=words.ask_words,
            read=free_text,
            free=True,
            choices=buttons(((skip_button, "skip"),)),
            when=lambda answers: answers.get("look") != USUAL,
        ),
    ),
)


def _read_cap(text: str, answers: Answers) -> dict[str, float] | str:
    return read_cap(text, answers["_weight_unit"], answers.get("_height_cm"))


def read_cap(text: str, weight_unit: str, height_cm: float | None) -> dict[str, float] | str:
    """A cap (kg, or by height), or `NONE`. Raises InvalidAnswer; ParseError for what is no weight."""
    if text.strip().casefold() == NONE or said(text, NO_WEIGH_IN):
        return NONE
    by_height = _BY_HEIGHT.fullmatch(" ".join(text.casefold().split()))
    if by_height is None:
        unit = WeightUnit(weight_unit)
        cap_kg = round(parse_weight(text, unit=unit).kg, 2)
        if not LIGHTEST_KG <= cap_kg <= HEAVIEST_KG:
            raise InvalidAnswer(words.no_such_cap(cap_kg))
        return {"cap_kg": cap_kg}
    if height_cm is None:
        raise InvalidAnswer(words.height_unknown())
    number = by_height[1].replace(" ", "")
    over = parse_number(number.lstrip("+-")) * (-1 if number.startswith("-") else 1)
    try:
        made = WeighIn.by_height(days_out=0, at=time(8), height_cm=height_cm, over_height_kg=over)
    except ValueError:
        raise InvalidAnswer(words.no_such_cap(height_cm - 100 + over)) from None
    return {"cap_kg": made.cap_kg, "over_height_kg": over}


def _day(out: int) -> str:
    return figures.capital(figures.days_out(out))


def _read_days(text: str) -> int:
    found = re.search(r"\d+", text)
    if found is None or int(found[0]) > 7:
        raise InvalidAnswer(invalid_answers.use_buttons())
    return int(found[0])


def _read_hour(text: str) -> str:
    return parse_clock(text).isoformat("minutes")


def _some(answers: Answers) -> bool:
    return answers.get("cap") != NONE


#: Context: "_weight_unit" and "_height_cm" of the athlete.
WEIGH_IN = Flow(
    id="coach-weigh-in",
    steps=(
        Step(
            key="cap",
            ask=words.ask_cap,
            read_with=_read_cap,
            choices=buttons(((words.no_weigh_in_button, NONE),)),
        ),
        Step(
            key="days_out",
            ask=words.ask_when,
            read=_read_days,
            choices=buttons(tuple((partial(_day, out), str(out)) for out in DAYS)),
            when=_some,
        ),
        Step(
            key="at",
            ask=words.ask_hour,
            read=_read_hour,
            choices=buttons(tuple((hour, hour) for hour in HOURS)),
            when=_some,
        ),
    ),
)


def weigh_in_of(answers: Answers) -> dict[str, Any] | None:
    """What the answers set, as a row keeps it; None for no weigh-in."""
    if answers["cap"] == NONE:
        return None
    return {"days_out": answers["days_out"], "at": answers["at"], **answers["cap"]}
