"""The words of the morning check-in."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from bot import figures
from bot.languages import mark, tr, trn
from bot.messages.common import kind_word
from bot.messages.safety import symptom_name

Answers = dict[str, Any]


def morning(name: str, days_out: int | None, kind: str) -> str:
    """The line above the first question of the morning."""
    if days_out is None:
        return tr("Good morning, {name}.", name=name)
    if days_out == 0:
        return tr(
            "Good morning, {name}. This is the day of your {kind}.", name=name, kind=kind_word(kind)
        )
    return trn(
        "Good morning, {name}. {number} day out.",
        "Good morning, {name}. {number} days out.",
        days_out,
        name=name,
    )


def ask_weight(answers: Answers) -> str:
    unit = {"kg": "kg", "lb": "lb", "st": tr("st and lb")}[answers["_weight_unit"]]
    question = tr("Your weight this morning, in {unit}?", unit=unit)
    greeting = answers.get("_greeting")
    if not greeting or answers.get("_again"):  # one answer is changed, or asked for once more
        return question
    how = (
        tr("(Or all in one line: weight, fullness, water and sharpness.)")
        if answers.get("_wants_sharpness")
        else tr("(Or all in one line: weight, fullness and water.)")
    )
    return f"{greeting}\n{question}\n{how}"


def ask_fullness(answers: Answers) -> str:
    return tr("Fullness, 1 to 10?\n1 is flat as ever, 10 can't get fuller.")


def ask_water(answers: Answers) -> str:
    return tr("What did you drink yesterday, all drinks together? Tap or type.")


def ask_sharpness(answers: Answers) -> str:
    return tr("Sharpness, 1 to 5?\n1 is blurred, 5 is crisp.")


def ask_carbs(answers: Answers) -> str:
    if answers.get("_carb_set_g") is None:
        return tr("Yesterday's carbs, in grams?")
    return tr("Yesterday's carbs? Tap if they were on target, or type the grams you ate.")


def on_target_button(grams: float) -> str:
    return tr("On target ({grams:.0f} g)", grams=grams)


def ask_fine(answers: Answers) -> str:
    return tr("And otherwise?")


def all_fine_button() -> str:
    return tr("All fine")


def something_off_button() -> str:
    return tr("Something's off")


def ask_symptoms(answers: Answers) -> str:
    return tr("What is it? Tick all that fit, or write it in your own words.")


def ask_gut(answers: Answers) -> str:
    return tr("And the gut?")


def ask_sleep(answers: Answers) -> str:
    return tr("Hours of sleep last night?")


def ask_note(answers: Answers) -> str:
    return tr("Anything to add? Write it, or skip.")


def skip_button() -> str:
    return tr("Skip")


def so_far(answers: Answers) -> str:
    """The answers given, in one line, in the athlete's units."""
    return " · ".join(_parts(answers).values())


def _parts(answers: Answers) -> dict[str, str]:
    """Each given answer as a person would say it, by key."""
    weight_unit, volume_unit = answers["_weight_unit"], answers["_volume_unit"]
    say: dict[str, Callable[[Any], str]] = {
        "weight_kg": lambda kg: figures.weight(kg, weight_unit),
        "fullness": lambda score: tr("fullness {score}", score=score),
        "water_l": lambda litres: tr("water {water}", water=figures.volume(litres, volume_unit)),
        "sharpness": lambda score: tr("sharpness {score}", score=score),
        "carb_eaten_g": lambda grams: tr("carbs {grams:.0f} g", grams=grams),
        "fine": lambda fine: tr("all fine") if fine == "fine" else tr("something off"),
        "symptoms": lambda told: ", ".join(symptom_name(symptom) for symptom in told),
        "gut": gut_felt,
        "sleep_h": lambda hours: tr("sleep {hours} h", hours=figures.plain(hours)),
    }
    return {
        key: words
        for key, put in say.items()
        if answers.get(key) is not None and (words := put(answers[key]))
    }


GUT = {"fine": mark("gut fine"), "heavy": mark("gut heavy"), "bad": mark("gut bad")}
GUT_BUTTONS = {"fine": mark("Fine"), "heavy": mark("Heavy"), "bad": mark("Bad")}


def gut_felt(gut: str) -> str:
    """How the gut felt, inside a sentence."""
    return tr(GUT[gut])


def gut_button(gut: str) -> str:
    return tr(GUT_BUTTONS[gut])


def change_which() -> str:
    return tr("Which answer shall we change?")


CHANGEABLE = {
    "weight_kg": mark("Weight"),
    "fullness": mark("Fullness"),
    "water_l": mark("Water"),
    "sharpness": mark("Sharpness"),
    "carb_eaten_g": mark("Carbs eaten"),
    "fine": mark("How you feel"),
}


def changeable(key: str) -> str:
    return tr(CHANGEABLE[key])


def changed(old: Answers, new: Answers) -> str:
    """What is different now: "Changed: fullness 6 → fullness 5." """
    before, after = _parts(old), _parts(new)
    keys = [key for key in {**before, **after} if before.get(key) != after.get(key)]
    nothing = tr("nothing")
    moves = [f"{before.get(key, nothing)} → {after.get(key, nothing)}" for key in keys]
    return tr("Changed: {moves}.", moves="; ".join(moves)) if moves else tr("The note was changed.")


def re_decided() -> str:
    return tr("With that, I have decided again:")


def decided_again_same() -> str:
    return tr("I have decided again with that, and the figure stays.")


def too_late_to_change(day: str) -> str:
    return tr("{day} has been decided and is past, so its answers stay as they are.", day=day)


def no_longer_a_check_in() -> str:
    return tr(
        "I could not read the edited message as a check-in, so what it said before still holds. "
        "To change an answer, edit it again or use the button under the day's targets."
    )


def already_done() -> str:
    return tr("You have checked in this morning. To change something, pick it:")


def no_plan_yet(coach_name: str) -> str:
    return tr(
        "Noted, thank you. {coach_name} has not set the day, the plan and the limits yet, so there "
        "is nothing to adjust. You'll hear from me when there is.",
        coach_name=coach_name,
    )


def nothing_planned_today() -> str:
    return tr("Noted, thank you. Your plan runs from seven days out, so nothing is adjusted yet.")


def beside_the_numbers(
    symptoms: Sequence[str], gut: str | None, sleep_h: float | None, note: str
) -> str:
    """What the athlete said beside the numbers, in a line; empty where there was nothing."""
    parts = [symptom_name(symptom) for symptom in symptoms]
    if gut in ("heavy", "bad"):
        parts.append(gut_felt(gut))
    if parts and sleep_h is not None:
        parts.append(tr("{hours} h of sleep", hours=figures.plain(sleep_h)))
    if note:
        parts.append(tr('"{words}"', words=note))
    return ", ".join(parts)


def passed_on(name: str, told: str) -> str:
    return tr("{name} adds to this morning's numbers: {told}", name=name, told=told)
