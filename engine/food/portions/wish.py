"""What is asked for and what there is to choose from."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum

from engine.evidence import eating as e
from engine.food.foods import Food

#: Whole steps of each food by its id.
Steps = Mapping[str, int]

NUTRIENTS = ("carb_g", "protein_g", "fat_g", "fibre_g", "sodium_mg")
#: How near counts as met (g).
TOLERANCE = {
    "carb_g": float(e.CARBS_MET_G),
    "protein_g": float(e.PROTEIN_MET_G),
    "fat_g": float(e.FAT_MET_G),
}


class Liking(StrEnum):
    """How a food sits with the athlete. One that never digests well is simply not a choice."""

    FAVOURITE = "favourite"
    WELL = "well"
    SO_SO = "so-so"


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """A food on the athlete's list. `usual_g`: how much of it on a usual day, where it was said.

    `most_g`: the most of it in a day; None for what the meals hold.
    """

    food: Food
    liking: Liking = Liking.WELL
    usual_g: float | None = None
    most_g: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Aim:
    """What a day is to bring in all. Fibre and sodium are None where they stay as always."""

    carb_g: float
    protein_g: float
    fat_g: float
    fibre_g: float | None = None
    sodium_mg: float | None = None

    def left_after(self, eaten: Totals) -> Aim:
        """What is still to come; never under nothing."""
        return Aim(**{n: _left(getattr(self, n), getattr(eaten, n)) for n in NUTRIENTS})  # type: ignore[arg-type]


def _left(aim: float | None, eaten: float) -> float | None:
    return None if aim is None else max(aim - eaten, 0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Wish:
    """What is left to eat. Fibre is a most; sodium a range; None where nothing was set."""

    carb_g: float
    protein_g: float
    fat_g: float
    fibre_most_g: float | None = None
    sodium_least_mg: float | None = None
    sodium_most_mg: float | None = None


@dataclass(frozen=True, slots=True)
class Totals:
    """What portions come to; carbohydrate without fibre."""

    carb_g: float = 0.0
    protein_g: float = 0.0
    fat_g: float = 0.0
    fibre_g: float = 0.0
    sodium_mg: float = 0.0
    kcal: float = 0.0

    def __add__(self, other: Totals) -> Totals:
        return Totals(*(getattr(self, n) + getattr(other, n) for n in (*NUTRIENTS, "kcal")))


@dataclass(frozen=True, slots=True)
class Miss:
    """By how much a target or bound is missed beyond its tolerance; under it where negative."""

    nutrient: str
    by: float


def totals_of(portions: Iterable[tuple[Food, float]]) -> Totals:
    """The sum of (food, grams)."""
    total = Totals()
    for food, grams in portions:
        share = grams / 100
        total += Totals(*(getattr(food, n) * share for n in (*NUTRIENTS, "kcal")))
    return total


def misses(totals: Totals, wish: Wish) -> tuple[Miss, ...]:
    """What is not met; empty where all is within its tolerance or bound."""
    found = []
    for nutrient, room in TOLERANCE.items():
        off = getattr(totals, nutrient) - getattr(wish, nutrient)
        if abs(off) > room + 1e-6:
            found.append(Miss(nutrient, math.copysign(abs(off) - room, off)))
    fibre, least, most = wish.fibre_most_g, wish.sodium_least_mg, wish.sodium_most_mg
    if fibre is not None and totals.fibre_g > fibre + 1e-6:
        found.append(Miss("fibre_g", totals.fibre_g - fibre))
    if most is not None and totals.sodium_mg > most + 1e-6:
        found.append(Miss("sodium_mg", totals.sodium_mg - most))
    if least is not None and totals.sodium_mg < least - 1e-6:
        found.append(Miss("sodium_mg", totals.sodium_mg - least))
    return tuple(found)


def most_steps(choice: Choice, meals: int) -> int:
    """The most whole steps of a food that so many meals may hold."""
    food = choice.food
    by_energy = 100 * float(e.MOST_KCAL_IN_A_MEAL) / food.kcal if food.kcal else math.inf
    a_meal = math.floor(min(float(e.MOST_IN_A_MEAL_G), by_energy) / food.step_g + 1e-9)
    day = a_meal * meals
    if choice.most_g is not None:
        day = min(day, math.floor(choice.most_g / food.step_g + 1e-9))
    return max(day, 0)


def comfortable_steps(choice: Choice, meals: int) -> float:
    """Steps of a food up to which a day of so many meals is an ordinary one; not a whole number."""
    food = choice.food
    helping = e.COMFORTABLE_SWEET_KCAL_IN_A_MEAL if sweet(food) else e.COMFORTABLE_KCAL_IN_A_MEAL
    by_energy = 100 * float(helping) / food.kcal if food.kcal else math.inf
    return meals * min(float(e.COMFORTABLE_IN_A_MEAL_G), by_energy) / food.step_g


def sweet(food: Food) -> bool:
    """Whether it is sugar and nearly nothing else: honey, jam, syrup, sweets."""
    return food.carb_g >= 60 and food.protein_g < 1 and food.fat_g < 1


def most_in_a_meal(food: Food) -> int:
    return most_steps(Choice(food=food), 1)
