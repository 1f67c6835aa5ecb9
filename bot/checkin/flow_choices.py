"""The buttons under the questions of a check-in."""

from __future__ import annotations

from bot.alerts.words_athlete import SYMPTOM_BUTTONS, symptom_button
from bot.checkin import words
from bot.dialogue.flow import Answers, Choice, Choices
from bot.words import figures
from engine.written.units import Volume, VolumeUnit, show_volume

ON_TARGET = "on"
SKIPPED = "skip"
WATER_STEPS_L = (-1.0, -0.5, 0.0, 0.5)  # quick picks around the target


def water_choices(answers: Answers) -> Choices:
    skip = [Choice(words.do_not_know_button(), SKIPPED)]
    unit = VolumeUnit(answers["_volume_unit"])
    target = answers.get("_water_target_l")
    if target is None:
        return [skip]
    amounts = [target + step for step in WATER_STEPS_L if target + step > 0]
    # The value carries the unit that is shown, so that a tap is read exactly like the same words.
    shown = [show_volume(Volume(amount, unit).litres, unit) for amount in amounts]
    return [[Choice(figures.in_digits(text), text) for text in shown], skip]


def scale(low: int, high: int) -> list[Choice]:
    return [Choice(str(n), str(n)) for n in range(low, high + 1)]


def carb_choices(answers: Answers) -> Choices:
    grams = answers.get("_carb_set_g")
    skip = [Choice(words.do_not_know_button(), SKIPPED)]
    if grams is None:
        return [skip]
    return [[Choice(words.on_target_button(grams), ON_TARGET)], skip]


def symptom_choices(answers: Answers) -> Choices:
    labelled = [Choice(symptom_button(symptom), symptom) for symptom in SYMPTOM_BUTTONS]
    return [labelled[i : i + 2] for i in range(0, len(labelled), 2)]
