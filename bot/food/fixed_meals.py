"""Whole meals that the coach has fixed, and the rest of a day planned around them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from sqlmodel import Session

from bot.food.list import food_of, rows_of
from bot.store.tables.food import MealTimesRow
from engine.food.portions import DayMenu, NutrientTargets, Portion, Totals, misses, totals_of

Meal = tuple[Portion, ...]
Meals = Mapping[str, Meal]


def fixed_meals(session: Session, athlete_id: int, times: Sequence[str]) -> Meals:
    """Those at these times, of what is on the list and digests well."""
    row = session.get(MealTimesRow, athlete_id)
    if row is None or not row.fixed:
        return {}
    foods = {
        str(one.id): food_of(one) for one in rows_of(session, athlete_id) if one.liking != "never"
    }
    found = {
        at: tuple(Portion(foods[id], steps) for id, steps in row.fixed[at].items() if id in foods)
        for at in times
        if at in row.fixed
    }
    return {at: meal for at, meal in found.items() if meal}


def totals(meals: Meals) -> Totals:
    return totals_of((one.food, one.grams) for meal in meals.values() for one in meal)


def less(locked: Mapping[str, int], meals: Meals) -> dict[str, int]:
    """What is locked for the whole day, less what the fixed meals have of it."""
    in_them: dict[str, int] = {}
    for meal in meals.values():
        for one in meal:
            in_them[one.food.id] = in_them.get(one.food.id, 0) + one.steps
    return {id: max(steps - in_them.get(id, 0), 0) for id, steps in locked.items()}


def free(meals: Meals, times: Sequence[str]) -> int:
    """How many meals are left to fill."""
    return sum(at not in meals for at in times)


def around(meals: Meals, times: Sequence[str], wish: NutrientTargets, filled: DayMenu) -> DayMenu:
    """The day: those meals as they are, all others as they are `filled`.

    What is missed is held against the `wish` of the whole day.
    """
    if not meals:
        return filled
    rest = filled if free(meals, times) else DayMenu(meals=(), totals=Totals(), misses=())
    plates = iter(rest.meals)
    whole = rest.totals + totals(meals)
    return replace(
        rest,
        meals=tuple(meals[at] if at in meals else next(plates, ()) for at in times),
        totals=whole,
        misses=misses(whole, wish),
    )
