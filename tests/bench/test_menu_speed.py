"""How long a day's menu takes: `pytest tests/bench -s`.

Sixty foods and six meals, beside ten foods and three meals in the same run, since machines differ.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Sequence
from dataclasses import replace
from statistics import median
from time import perf_counter

from engine.food.foods import Food, known_foods
from engine.food.portions import Choice, Liking, NutrientTargets, plan_menu

WISH = NutrientTargets(
    carb_g=520, protein_g=140, fat_g=35, fibre_most_g=20, sodium_least_mg=1700, sodium_most_mg=2900
)


def lists_of(number: int) -> list[list[Choice]]:
    """Ten lists of that many foods, liked by chance."""
    foods: Sequence[Food] = known_foods()
    more = [replace(one, id=f"{one.id}-own", carb_g=one.carb_g * 0.97) for one in foods]
    dice = random.Random(3)
    return [
        [Choice(food=one, liking=dice.choice(list(Liking))) for one in [*foods, *more][:number]]
        for _ in range(10)
    ]


def seconds(lists: list[list[Choice]], work: Callable[[list[Choice]], object]) -> float:
    spent = []
    for choices in lists:
        begin = perf_counter()
        work(choices)
        spent.append(perf_counter() - begin)
    return median(spent)


def test_sixty_foods_and_six_meals_take_less_than_a_second() -> None:
    large = seconds(lists_of(60), lambda choices: plan_menu(choices, WISH, 6))
    small = seconds(lists_of(10), lambda choices: plan_menu(choices, WISH, 3))
    print(  # noqa: T201
        f"\na menu of 60 foods in 6 meals: {1000 * large:.0f} ms; "
        f"of 10 in 3: {1000 * small:.0f} ms; ratio {large / small:.1f}"
    )
    assert large < 1
