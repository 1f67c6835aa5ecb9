"""What an event asks for, its look and its weigh-in: the questions, and what is said of it."""

from __future__ import annotations

import re
from datetime import date, time
from functools import partial
from typing import Any

from bot.dialogue.flow import Answers, Flow, InvalidAnswer, Step, buttons, free_text, said
from bot.words import figures, invalid_answers
from bot.words.common import day_and_year, skip_button
from bot.words.languages import Sentence, SentenceOn, mark, tr
from engine.planning.weigh_in import Making, OnScale, Standing
from engine.values.athlete import HEAVIEST_KG, LIGHTEST_KG, WeighIn
from engine.values.checkin import TargetLook
from engine.written.units import WeightUnit, parse_clock, parse_number, parse_weight

USUAL = mark("Full and sharp (fullness 8-10, sharpness 4-5)")


asks_button = Sentence("Look and weigh-in")
look_button = Sentence("Target look")
weigh_in_button = Sentence("Weigh-in")

ask_look = Sentence(
    "Which look do the judges of this event want? Not every division wants it as full or as dry. "
    'Tap, or send two ranges, for example "full 7-9 sharp 3-4". Check-ins and forecast aim for '
    "that; nothing is ever dried out for it."
)
usual_button = Sentence("Full and sharp, as usual")
unread_look = Sentence(
    'I need a fullness from 1 to 10 and a sharpness from 1 to 5, for example "full 7-9 sharp 3-4".'
)
ask_words = Sentence(
    "And in your own words? For example: round shoulders, soft lines, no striations. Or skip."
)


def view(event: str, look: TargetLook | None, weigh_in: str) -> str:
    head = tr("What this event asks for: {event}", event=event)
    return "\n\n".join([head, look_line(look), weigh_in or tr("Weigh-in: none set")])


def look_line(look: TargetLook | None) -> str:
    if look is None:
        return tr("Target look: {look}", look=tr(USUAL))
    said = tr("Target look: fullness {full}, sharpness {sharp}", **_ranges(look))
    return f'{said}\n"{look.words}"' if look.words else said


def _ranges(look: TargetLook) -> dict[str, str]:
    return {
        "full": _range(look.fullness_low, look.fullness_high),
        "sharp": _range(look.sharpness_low, look.sharpness_high),
    }


def _range(low: int, high: int) -> str:
    return str(low) if low == high else f"{low}-{high}"


def range_button(look: TargetLook) -> str:
    return tr("Fullness {full}, sharpness {sharp}", **_ranges(look))


saved = SentenceOn("Saved. {asks}")

# The weigh-in


ask_cap = Sentence(
    "What may the scale show at most? Send the cap, for example 63.5 kg. For a class by height and "
    'weight, send "height +4": that is the height in cm less 100, plus 4 kg. Look it up in the '
    "rules of your federation."
)
no_weigh_in_button = Sentence("No weigh-in")
ask_when = Sentence("On which day is the weigh-in?")
ask_hour = Sentence("At what time, where the event is? For example 17:00.")
height_unknown = Sentence(
    "I don't know the height yet, so please send the cap itself, for example 63.5 kg."
)


no_such_cap = SentenceOn(
    "That comes to {cap} kg, which can't be a class. Please check it.", figures.plain
)


def weigh_in_line(weigh_in: WeighIn, day: date, unit: str) -> str:
    return tr(
        "Weigh-in: {day}, {time}, at most {cap}",
        day=day_and_year(day), time=figures.clock(weigh_in.at),
        cap=figures.weight(weigh_in.cap_kg, unit),
    )  # fmt: skip


#: What is likely, first of all.
STANDINGS = {
    Standing.LIKELY_MADE: mark("The cap is likely to be made."),
    Standing.IN_DOUBT: mark("The cap is in doubt."),
    Standing.LIKELY_MISSED: mark("The cap is likely to be missed."),
}


def forecast(scale: OnScale, unit: str) -> str:
    """The likely weight with its doubt, and what that means for the cap."""
    likely = tr(
        "On the scale then, if all goes as planned: about {expected} ({low} to {high} in eight cases "
        "of ten). Chance of being over: about {percent} %.",
        expected=figures.weight(scale.expected_kg, unit),
        low=figures.weight(scale.low_kg, unit),
        high=figures.weight(scale.high_kg, unit),
        percent=min(max(round(20 * scale.chance_over) * 5, 5), 95),  # never sure
    )
    return f"{tr(STANDINGS[scale.standing])} {likely}"


def ways(made: Making, unit: str) -> str:
    """What food may take off, what it may not, and what there is to do instead."""
    if made.over_kg <= 0:
        return ""
    lines = [tr("Expected over the cap: {over}.", over=figures.weight(made.over_kg, unit))]
    if "load-after" in made.ways:
        least, most = made.ways["load-after"]
        lines.append(
            tr(
                "- Load days after the weigh-in instead of before it: {least} to {most} less (glycogen "
                "and its water). The load may go on between weigh-in and stage.",
                least=figures.weight(least, unit), most=figures.weight(most, unit),
            )
        )  # fmt: skip
    if "fibre" in made.ways:
        lines.append(
            tr(
                "- Low fibre from four days before: about {most} less, but people differ a lot.",
                most=figures.weight(made.ways["fibre"][1], unit),
            )
        )
    if made.safely:
        lines.append(tr("That is food alone. Water and salt stay as always."))
    else:
        lines.append(
            tr(
                "The other {left} ({percent} % of body mass) can't be made safely: within days it "
                "would have to be water. Don't cut water or salt, don't sweat it off. Enter the next "
                "class up, or ask the federation what it offers.",
                left=figures.weight(made.left_kg, unit), percent=figures.number(made.left_percent, 1),
            )
        )  # fmt: skip
    return "\n".join(lines)


def early(name: str, line: str, said: str) -> str:
    """The note to the coach, days ahead."""
    return f"{figures.capital(name)}. {line}.\n{said}"


AS_USUAL, NONE = "usual", "none"
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
    if text.strip().casefold() == AS_USUAL:
        return AS_USUAL
    found = [
        (int(one[0] or one[2]), int(one[1] or one[2])) for one in _RANGE.findall(text.casefold())
    ]
    if len(found) != 2:
        raise InvalidAnswer(unread_look())
    (full, fullest), (sharp, sharpest) = found
    try:
        TargetLook(
            fullness_low=full, fullness_high=fullest, sharpness_low=sharp, sharpness_high=sharpest
        )
    except ValueError:
        raise InvalidAnswer(unread_look()) from None
    return {
        "fullness_low": full, "fullness_high": fullest,
        "sharpness_low": sharp, "sharpness_high": sharpest,
    }  # fmt: skip


TARGET_LOOK = Flow(
    id="coach-target-look",
    steps=(
        Step(
            key="look",
            ask=ask_look,
            read=read_look,
            choices=buttons(
                ((usual_button, AS_USUAL),),
                *(((partial(range_button, look), _short(look)),) for look in OFTEN),
            ),
        ),
        Step(
            key="words",
            ask=ask_words,
            read=free_text,
            free=True,
            choices=buttons(((skip_button, "skip"),)),
            when=lambda answers: answers.get("look") != AS_USUAL,
        ),
    ),
)


def read_cap(text: str, weight_unit: str, height_cm: float | None) -> dict[str, float] | str:
    """A cap (kg, or by height), or `NONE`. Raises InvalidAnswer; ParseError for what is no weight."""
    if text.strip().casefold() == NONE or said(text, NO_WEIGH_IN):
        return NONE
    by_height = _BY_HEIGHT.fullmatch(" ".join(text.casefold().split()))
    if by_height is None:
        unit = WeightUnit(weight_unit)
        cap_kg = round(parse_weight(text, unit=unit).kg, 2)
        if not LIGHTEST_KG <= cap_kg <= HEAVIEST_KG:
            raise InvalidAnswer(no_such_cap(cap_kg))
        return {"cap_kg": cap_kg}
    if height_cm is None:
        raise InvalidAnswer(height_unknown())
    number = by_height[1].replace(" ", "")
    over = parse_number(number.lstrip("+-")) * (-1 if number.startswith("-") else 1)
    try:
        made = WeighIn.by_height(days_out=0, at=time(8), height_cm=height_cm, over_height_kg=over)
    except ValueError:
        raise InvalidAnswer(no_such_cap(height_cm - 100 + over)) from None
    return {"cap_kg": made.cap_kg, "over_height_kg": over}


def _day(out: int) -> str:
    return figures.capital(figures.days_out(out))


def _read_days(text: str) -> int:
    found = re.search(r"\d+", text)
    if found is None or int(found[0]) > 7:
        raise InvalidAnswer(invalid_answers.use_buttons())
    return int(found[0])


def _some(answers: Answers) -> bool:
    return answers.get("cap") != NONE


#: Context: "_weight_unit" and "_height_cm" of the athlete.
WEIGH_IN = Flow(
    id="coach-weigh-in",
    steps=(
        Step(
            key="cap",
            ask=ask_cap,
            read_with=lambda text, answers: read_cap(
                text, answers["_weight_unit"], answers.get("_height_cm")
            ),
            choices=buttons(((no_weigh_in_button, NONE),)),
        ),
        Step(
            key="days_out",
            ask=ask_when,
            read=_read_days,
            choices=buttons(tuple((partial(_day, out), str(out)) for out in DAYS)),
            when=_some,
        ),
        Step(
            key="at",
            ask=ask_hour,
            read=lambda text: parse_clock(text).isoformat("minutes"),
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
