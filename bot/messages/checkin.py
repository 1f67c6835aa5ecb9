"""The words of the morning check-in."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from bot.messages.safety import symptom_name
from engine.units import VolumeUnit, WeightUnit, show_volume, show_weight

Answers = dict[str, Any]


def morning(name: str, days_out: int | None, kind: str) -> str:
    """The line above the first question of the morning."""
    if days_out is None:
        return f"Good morning, {name}."
    if days_out == 0:
        return f"Good morning, {name}. This is the day of your {kind}."
    unit = "day" if days_out == 1 else "days"
    return f"Good morning, {name}. {days_out} {unit} out."


def ask_weight(answers: Answers) -> str:
    unit = {"kg": "kg", "lb": "lb", "st": "st and lb"}[answers["_weight_unit"]]
    question = f"Your weight this morning, in {unit}?"
    greeting = answers.get("_greeting")
    if not greeting or answers.get("_again"):  # one answer is changed, or asked for once more
        return question
    line = (
        "weight, fullness, water and sharpness"
        if answers.get("_wants_sharpness")
        else "weight, fullness and water"
    )
    return f"{greeting}\n{question}\n(Or all in one line: {line}.)"


def ask_fullness(answers: Answers) -> str:
    return "Fullness, 1 to 10?\n1 is flat as ever, 10 can't get fuller."


def ask_water(answers: Answers) -> str:
    return "What did you drink yesterday, all drinks together? Tap or type."


def ask_sharpness(answers: Answers) -> str:
    return "Sharpness, 1 to 5?\n1 is blurred, 5 is crisp."


def ask_carbs(answers: Answers) -> str:
    if answers.get("_carb_set_g") is None:
        return "Yesterday's carbs, in grams?"
    return "Yesterday's carbs? Tap if they were on target, or type the grams you ate."


def on_target_button(grams: float) -> str:
    return f"On target ({grams:.0f} g)"


def ask_fine(answers: Answers) -> str:
    return "And otherwise?"


def all_fine_button() -> str:
    return "All fine"


def something_off_button() -> str:
    return "Something's off"


def ask_symptoms(answers: Answers) -> str:
    return "What is it? Tick all that fit, or write it in your own words."


def ask_gut(answers: Answers) -> str:
    return "And the gut?"


def ask_sleep(answers: Answers) -> str:
    return "Hours of sleep last night?"


def ask_note(answers: Answers) -> str:
    return "Anything to add for your coach? Write it, or skip."


def skip_button() -> str:
    return "Skip"


def so_far(answers: Answers) -> str:
    """The answers given, in one line, in the athlete's units."""
    return " · ".join(_parts(answers).values())


def _parts(answers: Answers) -> dict[str, str]:
    """Each given answer as a person would say it, by key."""
    weight_unit = WeightUnit(answers["_weight_unit"])
    volume_unit = VolumeUnit(answers["_volume_unit"])
    say: dict[str, Callable[[Any], str]] = {
        "weight_kg": lambda kg: show_weight(kg, weight_unit),
        "fullness": lambda score: f"fullness {score}",
        "water_l": lambda litres: f"water {show_volume(litres, volume_unit)}",
        "sharpness": lambda score: f"sharpness {score}",
        "carb_eaten_g": lambda grams: f"carbs {grams:.0f} g",
        "fine": lambda fine: "all fine" if fine == "fine" else "something off",
        "symptoms": lambda told: ", ".join(symptom_name(symptom) for symptom in told),
        "gut": lambda gut: f"gut {gut}",
        "sleep_h": lambda hours: f"sleep {hours:g} h",
    }
    return {
        key: words
        for key, put in say.items()
        if answers.get(key) is not None and (words := put(answers[key]))
    }


def change_which() -> str:
    return "Which answer shall we change?"


CHANGEABLE = {
    "weight_kg": "Weight",
    "fullness": "Fullness",
    "water_l": "Water",
    "sharpness": "Sharpness",
    "carb_eaten_g": "Carbs eaten",
    "fine": "How you feel",
}


def changed(old: Answers, new: Answers) -> str:
    """What is different now: "Changed: fullness 6 → fullness 5." """
    before, after = _parts(old), _parts(new)
    keys = [key for key in {**before, **after} if before.get(key) != after.get(key)]
    moves = [f"{before.get(key, 'nothing')} → {after.get(key, 'nothing')}" for key in keys]
    return f"Changed: {'; '.join(moves)}." if moves else "The note was changed."


def re_decided() -> str:
    return "With that, I have decided again:"


def decided_again_same() -> str:
    return "I have decided again with that, and the figure stays."


def too_late_to_change(day: str) -> str:
    return f"{day} has been decided and is past, so its answers stay as they are."


def no_longer_a_check_in() -> str:
    return (
        "I could not read the edited message as a check-in, so what it said before still holds. "
        "To change an answer, edit it again or use the button under the day's targets."
    )


def not_a_change() -> str:
    return "That message was already taken as it was. If it should change something, tell me anew."


def already_done() -> str:
    return "You have checked in this morning. To change something, pick it:"


def no_plan_yet(coach_name: str) -> str:
    return (
        f"Noted, thank you. {coach_name} has not set the day, the plan and the limits yet, so there "
        "is nothing to adjust. You'll hear from me when there is."
    )


def nothing_planned_today() -> str:
    return "Noted, thank you. Your plan runs from seven days out, so nothing is adjusted yet."


def beside_the_numbers(
    symptoms: Sequence[str], gut: str | None, sleep_h: float | None, note: str
) -> str:
    """What the athlete said beside the numbers, in a line; empty where there was nothing."""
    parts = [symptom_name(symptom) for symptom in symptoms]
    if gut in ("heavy", "bad"):
        parts.append(f"gut {gut}")
    if parts and sleep_h is not None:
        parts.append(f"{sleep_h:g} h of sleep")
    if note:
        parts.append(f'"{note}"')
    return ", ".join(parts)


def passed_on(name: str, told: str) -> str:
    return f"{name} adds to this morning's numbers: {told}"
