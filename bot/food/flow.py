"""The questions around food: adding one, its label, how much was eaten, and when meals are."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Any

from bot.dialogue import flow as reading
from bot.dialogue.flow import (
    Answers,
    Choice,
    Choices,
    Flow,
    InvalidAnswer,
    Step,
    buttons,
    one_a_row,
    said,
)
from bot.food import words
from bot.food import words_day as day_words
from bot.food.words_names import find, food_name
from bot.words.common import none_of_these_button, skip_button
from engine.evidence.eating import KJ_PER_KCAL
from engine.food.foods import Food, Label, LabelConvention, LabelProblem, from_label, known_food
from engine.written.units import parse_clock, parse_grams, parse_number

NONE, SKIP = "none", "skip"
LIKINGS = ("favourite", "well", "so-so", "never")
LONGEST_NAME = 60
MOST_MEALS = 8
MOST_USUAL_G = 3000.0


def _read_query(text: str) -> str:
    if not find(text):
        raise InvalidAnswer(words.no_such_food())
    return text


def _found(answers: Answers) -> Choices:
    rows = [[Choice(food_name(food.name), food.id)] for food in find(answers["query"])]
    return [*rows, [Choice(none_of_these_button(), NONE)]]


def _read_food(text: str, answers: Answers) -> str | None:
    chosen = text.strip()
    if chosen == NONE:
        return None
    named = [f for f in find(answers["query"]) if chosen in (f.id, f.name, food_name(f.name))]
    if not named:
        raise InvalidAnswer(words.tap_one())
    return named[0].id


def _food_name(answers: Answers) -> str:
    if answers.get("name"):
        return str(answers["name"])
    food = known_food(answers.get("food") or "")
    return food_name(food.name) if food else ""


def _read_usual(text: str) -> float | None:
    if said(text, reading.SKIP) or said(text, reading.VARIES):
        return None
    return parse_grams(text, high=MOST_USUAL_G)


LIKING = Step(
    key="liking",
    ask=lambda answers: words.ask_liking(_food_name(answers)),
    choices=one_a_row({value: words.LIKINGS[value] for value in LIKINGS}),
)
USUAL = Step(
    key="usual_g",
    ask=lambda answers: words.ask_usual(_food_name(answers)),
    read=_read_usual,
    choices=buttons(((words.varies_button, SKIP),)),
    when=lambda answers: answers.get("liking") != "never",
)

ADD_FOOD = Flow(
    id="food-add",
    so_far=_food_name,
    steps=(
        Step(key="query", ask=words.ask_food, read=_read_query, names=True),
        Step(
            key="food", ask=words.which_food, read_with=_read_food, choices=_found, back_to="query"
        ),
        LIKING,
        USUAL,
    ),
)


# From a label


def _read_name(text: str) -> str:
    name = " ".join(text.split())
    if not name or len(name) > LONGEST_NAME:
        raise InvalidAnswer(words.name_length(LONGEST_NAME))
    return name


def _basis_g(answers: Answers) -> float:
    return 100.0 if answers["basis"] == "100" else float(answers["portion_g"])


def _grams_of(key: str) -> Callable[[str, Answers], float]:
    """A reader of one of the label's figures, held against those before it."""

    def read(text: str, answers: Answers) -> float:
        grams = parse_grams(text, high=_basis_g(answers) * 1.01)
        try:
            from_label("label", "label", label_of({**answers, key: grams}), 10)
        except LabelProblem as problem:
            raise InvalidAnswer(words.label_problem(problem.code, problem.facts)) from problem
        return round(grams, 2)

    return read


def _read_salt(text: str, answers: Answers) -> float:
    if answers["convention"] == LabelConvention.US:
        return parse_number(text.lower().removesuffix("mg"), low=0, high=40000)
    return parse_grams(text, high=_basis_g(answers))


def _read_kcal(text: str, answers: Answers) -> float | None:
    if said(text, reading.SKIP):
        return None
    kcal = _kcal(text.strip().lower(), high=9.5 * _basis_g(answers))
    try:
        from_label("label", "label", label_of({**answers, "kcal": kcal}), 10)
    except LabelProblem as problem:
        raise InvalidAnswer(words.label_problem(problem.code, problem.facts)) from problem
    return kcal


def _kcal(text: str, *, high: float) -> float:
    """Energy in kcal; EU labels give kJ first."""
    if not text.endswith("kj"):
        return parse_number(text.removesuffix("kcal"), low=0, high=high)
    kj = parse_number(text.removesuffix("kj"), low=0, high=high * float(KJ_PER_KCAL))
    return kj / float(KJ_PER_KCAL)


def label_of(answers: Answers) -> Label:
    """The label that the answers describe; what has not been said yet counts as nothing."""
    us = answers["convention"] == LabelConvention.US
    salt = answers.get("salt") or 0.0

    def said(key: str) -> float:
        return float(answers.get(key) or 0.0)

    return Label(
        convention=LabelConvention(answers["convention"]),
        basis_g=_basis_g(answers),
        carb_g=said("carb_g"),
        fibre_g=said("fibre_g"),
        protein_g=said("protein_g"),
        fat_g=said("fat_g"),
        salt_g=0.0 if us else salt,
        sodium_mg=salt if us else 0.0,
        kcal=answers.get("kcal"),
    )


def labelled_food(answers: Answers) -> Food:
    """The food of a label whose every figure has been read and held against the others."""
    return from_label("label", answers["name"], label_of(answers), answers["step_g"])


def _ask_kcal(answers: Answers) -> str:
    asked = words.ask_kcal(_basis_g(answers))
    return asked if answers["convention"] == "us" else f"{asked} {words.kcal_from_kj_hint()}"


def _figure(key: str) -> Step:
    return Step(
        key=key,
        ask=lambda answers: words.ask_figure(key, _basis_g(answers), answers["convention"]),
        read_with=_grams_of(key),
    )


def _steps(answers: Answers) -> Choices:
    sizes = ["5", "10", "25"]
    if answers["basis"] != "100":
        sizes.append(f"{answers['portion_g']:g}")
    return (tuple(Choice(f"{size} g", size) for size in dict.fromkeys(sizes)),)


FOOD_LABEL = Flow(
    id="food-label",
    so_far=_food_name,
    steps=(
        Step(key="name", ask=words.ask_name, read=_read_name, free=True),
        Step(
            key="convention",
            ask=words.ask_convention,
            choices=buttons(((words.eu_button, "eu"),), ((words.us_button, "us"),)),
        ),
        Step(
            key="basis",
            ask=words.ask_basis,
            choices=buttons(((words.per_100_button, "100"), (words.per_portion_button, "portion"))),
        ),
        Step(
            key="portion_g",
            ask=words.ask_portion,
            read=lambda text: parse_grams(text, low=1, high=2000),
            when=lambda answers: answers.get("basis") == "portion",
        ),
        _figure("carb_g"),
        _figure("fibre_g"),
        _figure("protein_g"),
        _figure("fat_g"),
        Step(
            key="salt",
            ask=lambda answers: words.ask_salt(_basis_g(answers), answers["convention"]),
            read_with=_read_salt,
        ),
        Step(
            key="kcal", ask=_ask_kcal, read_with=_read_kcal, choices=buttons(((skip_button, SKIP),))
        ),
        Step(
            key="step_g",
            ask=words.ask_step,
            read=lambda text: parse_grams(text, low=1, high=500),
            choices=_steps,
        ),
        LIKING,
        USUAL,
    ),
)


# Something eaten, the usual amount, and when meals are


def _listed(answers: Answers) -> Choices:
    return [[Choice(name, id)] for id, name in answers["_foods"]]


def _read_listed(text: str, answers: Answers) -> str:
    given = " ".join(text.split())
    named = [
        id for id, name in answers["_foods"]
        if given == id or name.casefold().startswith(given.casefold())
    ]  # fmt: skip
    if given and not named:
        raise InvalidAnswer(words.not_on_the_list(given[:LONGEST_NAME]))
    if not given:
        raise InvalidAnswer(words.tap_one())
    return str(named[0])


def _name_of(answers: Answers) -> str:
    return next((name for id, name in answers["_foods"] if id == answers.get("food")), "")


#: Context: "_foods", the list as (id, name).
ATE = Flow(
    id="food-ate",
    so_far=_name_of,
    steps=(
        Step(
            key="food", ask=day_words.ask_ate, read_with=_read_listed, choices=_listed, names=True
        ),
        Step(
            key="grams",
            ask=lambda answers: day_words.ask_grams(_name_of(answers)),
            read=lambda text: parse_grams(text, low=1, high=MOST_USUAL_G),
        ),
    ),
)


def _read_times(text: str) -> list[str]:
    parts = [part for part in re.split(r"[;\s]+|,\s+", text.strip()) if part]
    if not 1 <= len(parts) <= MOST_MEALS:
        raise InvalidAnswer(words.how_many_meals(MOST_MEALS))
    times = sorted({parse_clock(part) for part in parts})
    return [f"{at:%H:%M}" for at in times]


#: Context: "_times" as they are.
MEAL_TIMES = Flow(
    id="food-times",
    steps=(
        Step(key="times", ask=lambda answers: words.ask_times(answers["_times"]), read=_read_times),
    ),
)


def figures_of(food: Food) -> dict[str, Any]:
    """What a row keeps of a food."""
    keys = ("kcal", "carb_g", "protein_g", "fat_g", "fibre_g", "sodium_mg")
    return {key: getattr(food, key) for key in keys}
