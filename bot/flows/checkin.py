"""The morning check-in: weight, fullness, water, sharpness from the load on, then two taps."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from bot.dialogue import Answers, Choice, Choices, Flow, Step
from bot.flows import reading
from bot.flows.reading import buttons, free_text, number_between, one_of, said, without
from bot.messages import checkin as words
from bot.messages.safety import SYMPTOM_BUTTONS, symptom_button
from engine.units import (
    Volume,
    VolumeUnit,
    WeightUnit,
    parse_grams,
    parse_score,
    parse_volume,
    parse_weight,
    show_volume,
)

ON_TARGET = "on"
ALL_FINE, SOMETHING_OFF = "fine", "off"
WATER_STEPS_L = (-1.0, -0.5, 0.0, 0.5)  # quick picks around the target


def _weight(text: str, answers: Answers) -> float:
    return parse_weight(text, unit=WeightUnit(answers["_weight_unit"])).kg


def _water(text: str, answers: Answers) -> float:
    return parse_volume(text, unit=VolumeUnit(answers["_volume_unit"])).litres


def _water_choices(answers: Answers) -> Choices:
    unit = VolumeUnit(answers["_volume_unit"])
    target = answers.get("_water_target_l")
    if target is None:
        return ()
    amounts = [target + step for step in WATER_STEPS_L if target + step > 0]
    # The value carries the unit that is shown, so that a tap is read exactly like the same words.
    shown = [show_volume(Volume(amount, unit).litres, unit) for amount in amounts]
    return [[Choice(text, text) for text in shown]]


def _scale(low: int, high: int) -> list[Choice]:
    return [Choice(str(n), str(n)) for n in range(low, high + 1)]


def _carbs(text: str, answers: Answers) -> float:
    on_target = text == ON_TARGET or said(text, reading.ON_TARGET)
    if answers.get("_carb_set_g") is not None and on_target:
        return float(answers["_carb_set_g"])
    return parse_grams(text)


def _carb_choices(answers: Answers) -> Choices:
    grams = answers.get("_carb_set_g")
    return () if grams is None else [[Choice(words.on_target_button(grams), ON_TARGET)]]


def _wants_sharpness(answers: Answers) -> bool:
    return bool(answers.get("_wants_sharpness"))


def _is_off(answers: Answers) -> bool:
    return answers.get("fine") == SOMETHING_OFF


def _symptom_choices(answers: Answers) -> Choices:
    labelled = [Choice(symptom_button(symptom), symptom) for symptom in SYMPTOM_BUTTONS]
    return [labelled[i : i + 2] for i in range(0, len(labelled), 2)]


def _optional(low: float, high: float) -> Callable[[str, Answers], float | None]:
    read = number_between(low, high)

    def optional(text: str, answers: Answers) -> float | None:
        return None if said(text, reading.SKIP) else read(without(text, reading.HOURS), answers)

    return optional


CHECK_IN = Flow(
    id="checkin",
    so_far=words.so_far,
    can_cancel=False,
    steps=(
        Step(key="weight_kg", ask=words.ask_weight, read=_weight),
        Step(
            key="fullness",
            ask=words.ask_fullness,
            read=lambda text, answers: parse_score(text, 1, 10),
            choices=lambda answers: [_scale(1, 5), _scale(6, 10)],
        ),
        Step(key="water_l", ask=words.ask_water, read=_water, choices=_water_choices),
        Step(
            key="sharpness",
            ask=words.ask_sharpness,
            read=lambda text, answers: parse_score(text, 1, 5),
            choices=lambda answers: [_scale(1, 5)],
            when=_wants_sharpness,
        ),
        Step(key="carb_eaten_g", ask=words.ask_carbs, read=_carbs, choices=_carb_choices),
        Step(
            key="fine",
            ask=words.ask_fine,
            read=one_of(ALL_FINE, SOMETHING_OFF),
            choices=buttons(
                ((words.all_fine_button, ALL_FINE), (words.something_off_button, SOMETHING_OFF))
            ),
        ),
        Step(
            key="symptoms",
            ask=words.ask_symptoms,
            read=free_text,
            choices=_symptom_choices,
            when=_is_off,
            many=True,
        ),
        Step(
            key="gut",
            ask=words.ask_gut,
            read=one_of("fine", "heavy", "bad"),
            choices=buttons(
                tuple((partial(words.gut_button, gut), gut) for gut in words.GUT_BUTTONS)
            ),
            when=_is_off,
        ),
        Step(
            key="sleep_h",
            ask=words.ask_sleep,
            read=_optional(0, 24),
            choices=buttons(
                (("4", "4"), ("5", "5"), ("6", "6"), ("7", "7"), ("8", "8")),
                ((words.skip_button, "skip"),),
            ),
            when=_is_off,
        ),
        Step(
            key="note",
            ask=words.ask_note,
            read=free_text,
            choices=buttons(((words.skip_button, "skip"),)),
            when=_is_off,
        ),
    ),
)

# What has to be there before a decision makes sense; the rest has sensible readings when missing.
CORE = ("weight_kg", "fullness", "water_l")
ANSWER_KEYS = tuple(step.key for step in CHECK_IN.steps)
