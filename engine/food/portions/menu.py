"""The menu of a day, or of what is left of one; and where targets cannot be met, what would give."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from engine.food.foods import Food
from engine.food.portions.day import FREE, Fixed, can_be_met, solve_day
from engine.food.portions.meals import (
    TOLERANCE,
    Choice,
    Miss,
    NutrientTargets,
    Steps,
    Totals,
    misses,
    spread,
    totals_of,
)
from engine.values.athlete import energy_kcal

#: What can be let go of to meet the targets after all, in the order in which it is tried.
FIBRE, SODIUM, LOCKS, ONE_MEAL_MORE = "fibre", "sodium", "locks", "meal"
#: A food is a source of what at least so much of its energy comes from.
SOURCE_SHARE = 0.6


@dataclass(frozen=True, slots=True)
class Portion:
    food: Food
    steps: int

    @property
    def grams(self) -> float:
        return self.steps * self.food.step_g


@dataclass(frozen=True, slots=True)
class DayMenu:
    """Portions meal by meal, what they come to, and what is missed beyond its tolerance.

    `gives` names what, let go of by itself, would meet the targets; `lacking` the macros for which
    the list has no source.
    """

    meals: tuple[tuple[Portion, ...], ...]
    totals: Totals
    misses: tuple[Miss, ...]
    gives: tuple[str, ...] = ()
    lacking: tuple[str, ...] = ()

    @property
    def steps(self) -> dict[str, int]:
        """Whole steps of each food over all meals."""
        counts: dict[str, int] = {}
        for meal in self.meals:
            for portion in meal:
                counts[portion.food.id] = counts.get(portion.food.id, 0) + portion.steps
        return counts


def plan_menu(
    choices: Sequence[Choice], wish: NutrientTargets, meals: int, fixed: Fixed = FREE
) -> DayMenu:
    """The day's portions from the foods given and no others; empty where there is nothing to eat.

    Targets count as met within 5 g of carbs, 5 g of protein and 3 g of fat.
    """
    steps = solve_day(choices, wish, meals, fixed)
    foods = [choice.food for choice in choices]
    totals = _totals(foods, steps)
    missed = misses(totals, wish)
    by_id = {food.id: food for food in foods}
    plates = tuple(
        tuple(Portion(by_id[id], count) for id, count in plate.items())
        for plate in spread(foods, steps, meals)
    )
    menu = DayMenu(meals=plates, totals=totals, misses=missed)
    return explain_misses(menu, choices, wish, meals, fixed)


def explain_misses(
    menu: DayMenu, choices: Sequence[Choice], wish: NutrientTargets, meals: int, fixed: Fixed = FREE
) -> DayMenu:
    """The menu with what would give, and what the list lacks, where it misses something."""
    if not menu.misses or all(_only_unsalted(miss) for miss in menu.misses):
        return menu
    return replace(
        menu,
        gives=tuple(_what_gives(choices, wish, meals, fixed)),
        lacking=tuple(_lacking([choice.food for choice in choices], menu.misses)),
    )


def _only_unsalted(miss: Miss) -> bool:
    """Too little sodium: nothing has to give for it but the hand at the salt."""
    return miss.nutrient == "sodium_mg" and miss.by < 0


def _what_gives(
    choices: Sequence[Choice], wish: NutrientTargets, meals: int, fixed: Fixed
) -> list[str]:
    no_fibre = replace(wish, fibre_most_g=None)
    no_sodium = replace(wish, sodium_least_mg=None, sodium_most_mg=None)
    ways: dict[str, tuple[NutrientTargets, int, Fixed]] = {
        FIBRE: (no_fibre, meals, fixed),
        SODIUM: (no_sodium, meals, fixed),
        LOCKS: (wish, meals, fixed._replace(locked={})),
        ONE_MEAL_MORE: (wish, meals + 1, fixed),
    }
    if wish.fibre_most_g is None:
        del ways[FIBRE]
    if wish.sodium_least_mg is None and wish.sodium_most_mg is None:
        del ways[SODIUM]
    if not fixed.locked:
        del ways[LOCKS]
    return [
        name
        for name, (easier, plates, held) in ways.items()
        if can_be_met(choices, easier, plates, held)
    ]


def _lacking(foods: Sequence[Food], missed: Sequence[Miss]) -> list[str]:
    """The macros that are too low, and that no food on the list is mostly made of."""
    return [
        miss.nutrient
        for miss in missed
        if miss.nutrient in TOLERANCE
        and miss.by < 0
        and not any(_source_of(food, miss.nutrient) for food in foods)
    ]


def _source_of(food: Food, nutrient: str) -> bool:
    own = {name: getattr(food, name) if name == nutrient else 0.0 for name in TOLERANCE}
    whole = energy_kcal(food.carb_g, food.protein_g, food.fat_g, food.fibre_g)
    return whole > 0 and energy_kcal(**own) >= SOURCE_SHARE * whole


def _totals(foods: Sequence[Food], steps: Steps) -> Totals:
    return totals_of((food, steps.get(food.id, 0) * food.step_g) for food in foods)
