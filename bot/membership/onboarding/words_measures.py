"""What is asked about height, weight and body fat."""

from __future__ import annotations

from bot.words import figures
from bot.words.languages import Sentence, SentenceOn, mark, tr

UNSURE = mark(
    "not sure, unsure, don't know, dont know, i don't know, no idea, not measured, unknown, dunno, "
    "idk, no clue, not a clue"
)
NO_SCALE = mark(
    "no scale, i have no scale, skip, not sure, unsure, don't know, dont know, i don't know, no idea"
)
WEIGHT_UNITS = {"kg": mark("kilograms"), "lb": mark("pounds"), "st": mark("stones and pounds")}


def weight_unit_name(unit: str) -> str:
    return tr(WEIGHT_UNITS[unit])


ask_height = Sentence("How tall are you? Such as 165 cm or 5 ft 5.")
height_with_unit = Sentence("I need your height with its unit.")
weight_is_needed = Sentence(
    "I need a weight this once, because the limits that keep you safe go by it. A scale at a gym "
    "or pharmacy will do, and so will your weight of the last weeks."
)
weight_button = Sentence("Another weight")
height_button = Sentence("Another height")
right_button = Sentence("Both are right")
still_doubted = Sentence(
    "That can hardly be right either. Send it with its unit, such as 70 kg or 154 lb."
)
ask_body_fat = Sentence("Your body fat in percent, if it was measured lately? Otherwise skip.")

fat_keep_button = Sentence("Yes, it was measured so")
fat_again_button = Sentence("Type it again")


def ask_body_mass(unit: str | None) -> str:
    """`unit`: the one that was chosen; None: the answer's own will be theirs."""
    if unit is None:
        return tr(
            "What did you weigh this morning, or on your last ordinary morning? Such as 61.2 kg, "
            "134.9 lb or 9 st 8.9 lb; I write it as you do."
        )
    return tr(
        "What did you weigh this morning, or on your last ordinary morning? (in {unit})",
        unit=weight_unit_name(unit),
    )


weight_with_unit = SentenceOn("{given} kg or {given} lb? Please send it with the unit.")


def ask_check(kg: float, unit: str, height_cm: float, meant: float | None) -> str:
    values = {
        "given": figures.weight(kg, unit),
        "kg": figures.weight(kg, "kg"),
        "height": tr("{height_cm:.0f} cm", height_cm=height_cm),
    }
    if unit == "kg":
        doubt = tr("{given} at {height} can hardly be right.", **values)
    else:
        doubt = tr("{given} is {kg}, and at {height} that can hardly be right.", **values)
    if meant is None:
        question = tr("Which one is it?")
    else:
        question = tr("Did you mean {meant}?", meant=meant_button(meant, unit))
    return f"{doubt} {question}"


def meant_button(kg: float, unit: str) -> str:
    """The number as it was typed, in the other unit."""
    if unit == "kg":
        return tr("{pounds} ({kg})", pounds=figures.weight(kg, "lb"), kg=figures.weight(kg, "kg"))
    return figures.weight(kg, "kg")


def ask_fat_check(percent: float, sex: str) -> str:
    shown = figures.plain(percent)
    if sex == "female":
        return tr("{percent} % is unusual for a woman. Is it right?", percent=shown)
    return tr("{percent} % is unusual for a man. Is it right?", percent=shown)
