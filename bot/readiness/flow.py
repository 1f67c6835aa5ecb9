"""Whether a peak week is worth it: judgement asked of the coach, health of the athlete."""

from __future__ import annotations

import re
from functools import partial

from bot.dialogue import flow as reading
from bot.dialogue.flow import (
    HOURS,
    WEEKS,
    Answers,
    Choice,
    Flow,
    InvalidAnswer,
    Step,
    When,
    both,
    buttons,
    one_a_row,
    one_of,
    reason,
    without,
)
from bot.readiness import words
from engine.evidence.units import KG_PER_LB
from engine.planning.readiness import CONDITIONS
from engine.values.athlete import Sex
from engine.values.body import SITES_3, body_fat_from_skinfolds
from engine.written.units import WeightUnit, parse_number

SKIP, FOLDS = "skip", "folds"
MOST_WEEKS = 104
MOST_LOST_KG = 60


def _read_body_fat(text: str) -> float | str | None:
    said = text.strip().lower()
    if said == SKIP:
        return None
    if said == FOLDS:
        return FOLDS
    return parse_number(said.replace("%", ""), low=3, high=60)


def _read_folds(text: str, answers: Answers) -> float:
    """Body fat in % from what three (or seven) folds come to."""
    said = [part for part in re.split(r"[;\s]+|,\s+", text.strip().lower()) if part != "mm"]
    if len(said) not in (3, 7):
        raise InvalidAnswer(words.how_many_folds())
    folds = [parse_number(part.removesuffix("mm"), low=2, high=80) for part in said]
    return round(body_fat_from_skinfolds(Sex(answers["_sex"]), answers["_years"], folds), 1)


def _read_loss(text: str, answers: Answers) -> float | None:
    """Kilograms that have gone, typed in kg or lb; a gain is 0."""
    said = text.strip().lower()
    if said == SKIP:
        return None
    if reading.said(text, reading.NONE):
        return 0.0
    pounds = said.endswith(("lb", "lbs")) or (
        answers["_weight_unit"] != WeightUnit.KG and not said.endswith("kg")
    )
    number = said.removesuffix("kg").removesuffix("lbs").removesuffix("lb")
    size = float(KG_PER_LB) if pounds else 1.0
    return round(parse_number(number, low=0, high=MOST_LOST_KG / size) * size, 2)


def _read_weeks(text: str) -> float | None:
    if text.strip().lower() == SKIP:
        return None
    return parse_number(without(text, WEEKS), low=0, high=MOST_WEEKS)


def _read_sleep(text: str) -> float | None:
    if text.strip().lower() == SKIP:
        return None
    return parse_number(without(text, HOURS), low=0, high=14)


_SKIP = buttons(((words.not_known_button, SKIP),))

_JUDGEMENT = (
    Step(
        key="condition",
        ask=lambda answers: words.ask_condition(answers["_name"], self_coached=answers["_own"]),
        read=lambda text: int(one_of("1", "2", "3", "4", "5")(text)),
        choices=tuple((Choice(partial(words.condition_button, n), str(n)),) for n in CONDITIONS),
    ),
    Step(
        key="body_fat",
        ask=words.ask_body_fat,
        read=_read_body_fat,
        choices=buttons(((words.skinfolds_button, FOLDS),), ((words.not_known_button, SKIP),)),
    ),
    Step(
        key="folds_fat",
        ask=lambda answers: words.ask_folds(SITES_3[Sex(answers["_sex"])]),
        read_with=_read_folds,
        when=lambda answers: answers.get("body_fat") == FOLDS,
    ),
    Step(
        key="loss_kg",
        ask=lambda answers: words.ask_loss(answers["_weight_unit"]),
        read_with=_read_loss,
        choices=_SKIP,
    ),
    Step(
        key="lost_kg",
        ask=lambda answers: words.ask_lost(answers["_weight_unit"]),
        read_with=_read_loss,
        choices=_SKIP,
    ),
    Step(key="weeks", ask=words.ask_weeks, read=_read_weeks, choices=_SKIP),
)


def _health(asked: When | None = None) -> tuple[Step, ...]:
    return (
        Step(
            key="periods",
            ask=words.ask_periods,
            choices=one_a_row(words.PERIODS),
            when=both(asked, lambda answers: answers["_sex"] == Sex.FEMALE),
        ),
        Step(
            key="energy",
            ask=words.ask_energy,
            choices=one_a_row(words.ENERGY),
            when=asked,
        ),
        Step(
            key="sleep_h", ask=words.ask_sleep, read=_read_sleep, choices=_SKIP,
            when=asked,
        ),
        Step(
            key="injury",
            ask=words.ask_injury,
            choices=one_a_row(words.INJURIES),
            when=asked,
        ),
    )  # fmt: skip


#: Context: "_name", "_own", "_sex", "_years", "_weight_unit". Who coaches themselves answers all.
READY = Flow(
    id="coach-ready",
    so_far=words.so_far,
    steps=(*_JUDGEMENT, *_health(lambda answers: bool(answers["_own"]))),
)
#: Context: "_sex".
READY_HEALTH = Flow(id="ready-health", steps=_health())


#: Context: "_readiness", the row it is about.
READY_ANYWAY = Flow(
    id="coach-ready-anyway",
    steps=(Step(key="reason", ask=words.ask_reason, read=reason, free=True),),
)
