"""What a new athlete reads, and what their coach is told of the answers."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import time
from typing import Any

from engine.units import VolumeUnit, WeightUnit, show_volume, show_weight


def cautions(coach_name: str) -> str:
    return (
        f"Hello. {coach_name} has invited you to check in here through your peak week.\n\n"
        "Before anything else, please read this:\n"
        "• I am not a doctor, a dietitian or a medical device. I do sums with what you tell me, "
        "inside limits that your coach sets. A doctor's or dietitian's word goes before mine.\n"
        "• Very low food, big swings of water or salt, and eating a great deal very fast after long "
        "dieting have put people in hospital. I never cut your water or salt.\n"
        "• I say nothing about drugs, diuretics or laxatives. Ask a doctor.\n"
        "• Fainting, chest pain, palpitations, weakness in the limbs, confusion, a fit, trouble "
        "breathing, repeated vomiting or a severe headache: stop, and call your local emergency "
        "number. Don't wait for me.\n\n"
        "What you tell me (weights, symptoms, how you feel) is kept so that your coach can see it, "
        "and goes to nobody else but the second contact your coach has named, and that one only gets "
        "alerts. You can stop at any time with /pause.\n\n"
        "Do you understand this, and agree that your coach sees your answers?"
    )


def agree_button() -> str:
    return "I understand and agree"


def disagree_button() -> str:
    return "No"


def ask_birth_year() -> str:
    return "Which year were you born? (four digits)"


def ask_eighteen() -> str:
    return "Have you had your 18th birthday?"


def ask_sex() -> str:
    return (
        "Are you female or male? The published figures for water and carbohydrate differ, "
        "that is all it is used for."
    )


SCREENING = {
    "diabetes": "Do you have diabetes, or trouble with blood sugar?",
    "kidney": "Have you ever been told that something is wrong with your kidneys?",
    "heart": (
        "Have you ever been told that something is wrong with your heart, rhythm or blood pressure?"
    ),
    "eating": "Do you have, or have you had, an eating disorder?",
    "pregnant": "Are you pregnant, might you be, or are you breastfeeding?",
    "medicines": (
        "Do you take any medicine that shifts fluid or salts (for blood pressure, heart, kidneys, "
        "hormones, mood), or are you unsure whether yours does?"
    ),
}
SCREENING_SHORT = {
    "diabetes": "diabetes or blood sugar",
    "kidney": "kidneys",
    "heart": "heart, rhythm or blood pressure",
    "eating": "eating disorder, now or earlier",
    "pregnant": "pregnant, perhaps pregnant or breastfeeding",
    "medicines": "medicine that may shift fluid or salts",
}


ASSUMED_SHORT = {"fibre_g": "fibre", "sodium_mg": "sodium"}


def ask_screening(key: str) -> str:
    return SCREENING[key]


def ask_weight_unit() -> str:
    return "Which unit does your scale show?"


def ask_volume_unit() -> str:
    return "And how do you measure what you drink?"


WEIGHT_UNITS = {"kg": "kilograms", "lb": "pounds", "st": "stones and pounds"}
VOLUME_UNITS = {
    "l": "litres",
    "ml": "millilitres",
    "us fl oz": "US fluid ounces",
    "imp fl oz": "imperial fluid ounces",
}


def ask_place() -> str:
    return (
        "Where are you? I ask by your own clock. Send a city, "
        "or tell me what time it is where you are, such as 14:35."
    )


def ask_which_place() -> str:
    return "Is it this one? Tap it, so that I have the right clock."


def somewhere_else_button() -> str:
    return "Somewhere else"


def ask_prompt_time() -> str:
    return (
        "When shall I ask for your morning numbers? Best is right after getting up, after the toilet "
        "and before food or drink. Pick a time or type one."
    )


def prompt_time_range(earliest: time, latest: time) -> str:
    return (
        f"It has to be between {earliest:%H:%M} and {latest:%H:%M}: a weight is only comparable before "
        "breakfast, and the day's carbs are settled in the morning."
    )


def ask_height() -> str:
    return "How tall are you? Such as 165 cm or 5 ft 5."


def ask_body_mass(unit: str) -> str:
    return f"What did you weigh this morning, or on your last ordinary morning? (in {unit})"


def ask_body_fat() -> str:
    return "Your body fat in percent, if it was measured lately? Otherwise skip."


def skip_button() -> str:
    return "Skip"


def not_sure_button() -> str:
    return "Not sure"


BASELINE = {
    "carb_g": "Now what you ordinarily eat a day, lately. Carbohydrate, in grams?",
    "protein_g": "Protein a day, in grams?",
    "fat_g": "Fat a day, in grams?",
    "fibre_g": "Fibre a day, in grams? If you don't count it, say so with the button.",
    "water_l": "What do you ordinarily drink a day, all drinks together?",
    "sodium_mg": (
        "Sodium a day, in milligrams? (Salt times 0.4: 5 g of salt is 2,000 mg.) "
        "If you don't count it, say so with the button."
    ),
}


def ask_baseline(key: str) -> str:
    return BASELINE[key]


def under_age() -> str:
    return (
        "Thank you for being straight with me. A peak week is for adults: under 18, your body is "
        "still building itself, and I won't take part in it. Your coach knows. Train, eat well, and "
        "if food or weight ever worries you, talk to a parent, a doctor or someone you trust. "
        "Nothing you told me is kept except this answer."
    )


def no_consent() -> str:
    return (
        "That is fine. I keep nothing and won't write to you. If you change your mind, ask your "
        "coach for a new invitation."
    )


def doctor_first() -> str:
    return (
        "Thank you. Because of what you answered, a doctor has to have a word first, and only a "
        "doctor can. Please show a doctor what you and your coach are planning. Your coach can see "
        "which answers it is about, and starts the check-ins once you have a doctor's word."
    )


def all_set(prompt_time: str, coach_name: str) -> str:
    return (
        f"All set. I'll ask at {prompt_time} each morning of your peak week, as soon as {coach_name} "
        "has set the day, the plan and the limits.\n\n"
        "It takes a few taps, or one line: weight, fullness (1 to 10), water, such as\n61.2 7 3.5\n\n"
        "/today shows the day's targets, /week the whole week, /help the rest."
    )


def coach_told_all_set(name: str, lines: str) -> str:
    return (
        f"{name} is through the first questions:\n\n{lines}\n\nNext: the day, the plan, the limits."
    )


def coach_told_doctor_first(name: str, lines: str) -> str:
    return (
        f"{name} is through the first questions, and a doctor's word is needed first. Please don't "
        f"start before {name} has it.\n\n{lines}"
    )


def coach_told_under_age(name: str) -> str:
    return f"{name} is under 18. There is no peak week for minors here, so I have closed it kindly."


def coach_told_no_consent(name: str) -> str:
    return f"{name} did not agree to the cautions, so nothing was started and nothing is kept."


def answers_lines(answers: Mapping[str, Any]) -> str:
    """What was answered at onboarding, a line each, in the athlete's own units."""
    weight_unit, volume_unit = (
        WeightUnit(answers["weight_unit"]),
        VolumeUnit(answers["volume_unit"]),
    )
    said_yes = [SCREENING_SHORT[key] for key in SCREENING if answers.get(key)]
    fat = answers.get("body_fat_percent")
    lines = [
        f"{answers['sex']}, born {answers['birth_year']}, {answers['height_cm']:.0f} cm, "
        f"{show_weight(answers['body_mass_kg'], weight_unit)}"
        + (f", {fat:.0f} % body fat" if fat else ", body fat not known"),
        f"Ordinary day: carbs {answers['carb_g']:.0f} g, protein {answers['protein_g']:.0f} g, "
        f"fat {answers['fat_g']:.0f} g, fibre {answers['fibre_g']:.0f} g, "
        f"water {show_volume(answers['water_l'], volume_unit)}, "
        f"sodium {answers['sodium_mg']:,.0f} mg",
        f"Zone {answers['zone']}, asked at {answers['prompt_time']}",
        "Health questions: "
        + ("; ".join(f"yes to {what}" for what in said_yes) if said_yes else "no to all"),
    ]
    if answers.get("assumed"):
        lines.append(
            f"Not counted, so an ordinary figure stands in: {', '.join(answers['assumed'])}"
        )
    return "\n".join(lines)
