"""Targets turned into portions: against exhaustive search, within what counts as met, in time."""

from __future__ import annotations

import ctypes
import random
from collections import Counter
from collections.abc import Mapping
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace

import numpy as np
import pytest

from engine.food.foods import Food, known_food, known_foods
from engine.food.portions import (
    Choice,
    Liking,
    NutrientTargets,
    can_be_met,
    can_be_salted,
    misses,
    most_steps,
    plan_menu,
    points,
    solve_day,
    spread,
    totals_of,
)
from engine.food.portions.day import (
    FIBRE_OVER_PER_G,
    MISSED_PER_G,
    NEAR_PER_G,
    SODIUM_OUT_PER_MG,
    UNSALTED_PER_MG,
    Fixed,
)
from engine.food.portions.meals import NUTRIENTS, TOLERANCE


def food(number: str, **changes: object) -> Food:
    found = known_food(f"usda-{number}")
    assert found is not None
    return replace(found, **changes)  # type: ignore[arg-type]


RICE, CHICKEN, OIL, OATS, HONEY, SALT = (
    food(number) for number in ("20045", "05064", "04053", "08120", "19296", "02047")
)
PLAIN = [Choice(food=one) for one in (RICE, CHICKEN, OIL)]


def cheapest(choices: list[Choice], wish: NutrientTargets, meals: int) -> tuple[bool, float]:
    """The best of every day there is: whether it misses something, and its points."""
    ranges = [np.arange(most_steps(choice, meals) + 1) for choice in choices]
    days = np.stack(np.meshgrid(*ranges, indexing="ij"), axis=-1).reshape(-1, len(choices))
    cost, misses_some = points_of_all(choices, wish, days, meals)
    for at in random.Random(len(days)).sample(range(len(days)), min(40, len(days))):
        day = {c.food.id: int(steps) for c, steps in zip(choices, days[at], strict=True)}
        assert cost[at] == pytest.approx(points(choices, wish, day, meals), rel=1e-9, abs=1e-9)
        assert misses_some[at] == missed(choices, wish, day)
    best = np.lexsort((cost, misses_some))[0]
    return bool(misses_some[best]), float(cost[best])


def points_of_all(
    choices: list[Choice], wish: NutrientTargets, days: np.ndarray, meals: int
) -> tuple[np.ndarray, np.ndarray]:
    """`points` and `missed` of many days at once, a row of steps each: tens of thousands are asked."""
    totals = {
        nutrient: days
        @ np.array([getattr(c.food, nutrient) * c.food.step_g / 100 for c in choices])
        for nutrient in NUTRIENTS
    }
    cost, misses_some = np.zeros(len(days)), np.zeros(len(days), dtype=bool)
    for number, choice in enumerate(choices):
        alone = [points_alone(choice, steps, meals) for steps in range(days[:, number].max() + 1)]
        cost += np.array(alone)[days[:, number]]
    for nutrient, room in TOLERANCE.items():
        off = np.abs(totals[nutrient] - getattr(wish, nutrient))
        cost += MISSED_PER_G[nutrient] * np.maximum(off - room, 0) + NEAR_PER_G * off
        misses_some |= off > room + 1e-6
    salted = can_be_salted(choices)
    bland_per_mg = SODIUM_OUT_PER_MG if salted else UNSALTED_PER_MG
    for most, nutrient, each in (
        (wish.fibre_most_g, "fibre_g", FIBRE_OVER_PER_G),
        (wish.sodium_most_mg, "sodium_mg", SODIUM_OUT_PER_MG),
    ):
        if most is not None:
            cost += each * np.maximum(totals[nutrient] - most, 0)
            misses_some |= totals[nutrient] > most + 1e-6
    if wish.sodium_least_mg is not None:
        cost += bland_per_mg * np.maximum(wish.sodium_least_mg - totals["sodium_mg"], 0)
        misses_some |= salted & (totals["sodium_mg"] < wish.sodium_least_mg - 1e-6)
    return cost, misses_some


def points_alone(choice: Choice, steps: int, meals: int) -> float:
    """What so much of a food costs where it is exactly what was asked for."""
    eaten = totals_of([(choice.food, steps * choice.food.step_g)])
    wish = NutrientTargets(carb_g=eaten.carb_g, protein_g=eaten.protein_g, fat_g=eaten.fat_g)
    return points([choice], wish, {choice.food.id: steps}, meals)


def missed(choices: list[Choice], wish: NutrientTargets, steps: Mapping[str, int]) -> bool:
    """Whether it misses something; too little sodium counts only where something is there to salt."""
    if not can_be_salted(choices):
        wish = replace(wish, sodium_least_mg=None)
    eaten = totals_of((c.food, steps.get(c.food.id, 0) * c.food.step_g) for c in choices)
    return bool(misses(eaten, wish))


@pytest.mark.parametrize("seed", range(12))
def test_no_day_is_better_than_the_one_chosen(seed: int) -> None:
    """Against exhaustive search over every combination of a small list."""
    dice = random.Random(seed)
    choices = [
        Choice(
            food=replace(one, step_g=one.step_g * dice.choice([2, 4])),
            liking=dice.choice(list(Liking)),
            usual_g=dice.choice([None, 0, 100, 150]),
            most_g=one.step_g * 32,
        )
        for one in dice.sample(known_foods(), 4)
    ]
    wish = NutrientTargets(
        carb_g=dice.uniform(0, 200), protein_g=dice.uniform(0, 80), fat_g=dice.uniform(0, 40),
        fibre_most_g=dice.choice([None, 10]), sodium_least_mg=300, sodium_most_mg=900,
    )  # fmt: skip
    misses_some, best = cheapest(choices, wish, 2)
    steps = solve_day(choices, wish, 2)
    chosen = points(choices, wish, steps, 2)
    assert missed(choices, wish, steps) == misses_some == (not can_be_met(choices, wish, 2))
    # HiGHS stops within a thousandth of the best.
    assert best - 1e-6 <= chosen <= best * 1.0011 + 1e-6


def test_a_bound_that_can_be_held_is_held_though_a_tiny_miss_would_taste_better() -> None:
    sweet = replace(HONEY, carb_g=95, protein_g=0, fat_g=0, fibre_g=1.001, sodium_mg=0, step_g=100)
    plain = replace(sweet, id="plain", fibre_g=0)
    choices = [Choice(food=sweet, liking=Liking.FAVOURITE), Choice(food=plain, liking=Liking.SO_SO)]
    wish = NutrientTargets(carb_g=95, protein_g=0, fat_g=0, fibre_most_g=1)
    sweetest, plainest = ({sweet.id: 1}, {"plain": 1})
    assert points(choices, wish, sweetest, 1) < points(choices, wish, plainest, 1)
    assert plan_menu(choices, wish, 1).steps == {"plain": 1}


def test_targets_are_met_within_five_five_and_three_grams_where_they_can_be() -> None:
    """Targets made out of real portions can be met, so they have to be."""
    dice = random.Random(5)
    foods = [f for f in known_foods() if f.kcal > 0]
    for _ in range(5):
        listed = dice.sample(foods, 12)
        eaten = [(one, one.step_g * dice.randint(1, 6)) for one in dice.sample(listed, 6)]
        sums = totals_of(eaten)
        wish = NutrientTargets(carb_g=sums.carb_g, protein_g=sums.protein_g, fat_g=sums.fat_g)
        menu = plan_menu([Choice(food=one) for one in listed], wish, 4)
        assert menu.misses == ()
        assert menu.totals.carb_g == pytest.approx(wish.carb_g, abs=5)
        assert menu.totals.protein_g == pytest.approx(wish.protein_g, abs=5)
        assert menu.totals.fat_g == pytest.approx(wish.fat_g, abs=3)


def test_only_listed_foods_in_whole_practical_portions_and_nothing_lost_between_meals() -> None:
    wish = NutrientTargets(carb_g=400, protein_g=120, fat_g=30)
    menu = plan_menu(PLAIN, wish, 5)
    listed = {choice.food.id for choice in PLAIN}
    per_day: Counter[str] = Counter()
    for meal in menu.meals:
        for portion in meal:
            assert portion.food.id in listed
            assert portion.grams % portion.food.step_g == 0
            per_day[portion.food.id] += portion.steps
    assert dict(per_day) == solve_day(PLAIN, wish, 5) == menu.steps
    carbs = [sum(p.grams * p.food.carb_g / 100 for p in meal) for meal in menu.meals]
    assert max(carbs) - min(carbs) < 30


def test_a_favourite_comes_first_and_what_sits_so_so_comes_last() -> None:
    rice = [replace(RICE, id=name) for name in ("so-so", "well", "favourite")]
    choices = [
        Choice(food=rice[0], liking=Liking.SO_SO),
        Choice(food=rice[1], liking=Liking.WELL),
        Choice(food=rice[2], liking=Liking.FAVOURITE),
        Choice(food=CHICKEN),
    ]
    steps = solve_day(choices, NutrientTargets(carb_g=150, protein_g=60, fat_g=6), 4)
    assert "favourite" in steps
    assert "so-so" not in steps
    assert "well" not in steps


def test_the_same_day_is_found_in_any_thread_and_not_a_word_is_printed(
    capfd: pytest.CaptureFixture[str],
) -> None:
    """Threads come and go, several ask at once, and each has the answer that one alone has."""
    choices = [Choice(food=one) for one in random.Random(4).sample(known_foods(), 14)]
    wishes = [NutrientTargets(carb_g=carb_g, protein_g=90, fat_g=30) for carb_g in (150, 240, 330)]
    alone = [solve_day(choices, wish, 4) for wish in wishes]
    for _ in range(2):
        with ThreadPoolExecutor(3) as pool:
            assert list(pool.map(lambda wish: solve_day(choices, wish, 4), wishes)) == alone
    ctypes.CDLL(None).fflush(None)  # what a library in C has printed waits in a buffer of its own
    assert capfd.readouterr() == ("", "")


def test_the_usual_day_is_left_as_little_as_can_be() -> None:
    usual = [
        Choice(food=RICE, usual_g=300),
        Choice(food=CHICKEN, usual_g=200),
        Choice(food=OATS, usual_g=80),
        Choice(food=HONEY, usual_g=0),
    ]
    steps = {RICE.id: 12, CHICKEN.id: 8, OATS.id: 8}
    sums = totals_of((c.food, steps.get(c.food.id, 0) * c.food.step_g) for c in usual)
    wish = NutrientTargets(carb_g=sums.carb_g, protein_g=sums.protein_g, fat_g=sums.fat_g)
    assert solve_day(usual, wish, 4) == steps


def test_more_of_what_is_usually_eaten_comes_before_something_else() -> None:
    choices = [Choice(food=RICE, usual_g=300), *PLAIN[1:], Choice(food=HONEY)]
    menu = plan_menu(choices, NutrientTargets(carb_g=330, protein_g=120, fat_g=30), 5)
    assert menu.misses == ()
    assert menu.steps[RICE.id] * RICE.step_g > 1000
    assert HONEY.id not in menu.steps


def test_nobody_is_sent_half_a_kilogram_of_honey_where_there_is_something_beside_it() -> None:
    choices = [Choice(food=one) for one in (HONEY, RICE, food("19106"), CHICKEN, OIL)]
    menu = plan_menu(
        choices, NutrientTargets(carb_g=600, protein_g=110, fat_g=30, fibre_most_g=15), 5
    )
    assert menu.misses == ()
    # An ordinary helping is 350 kcal of one food a meal (common practice): 115 g of honey.
    assert all(
        steps * food_.step_g * food_.kcal / 100 <= 5 * 350 * 1.02
        for food_ in (HONEY, RICE)
        if (steps := menu.steps.get(food_.id, 0))
    )
    # What is all sugar goes beside the rice (common practice): 40 g of honey a meal.
    assert menu.steps.get(HONEY.id, 0) * HONEY.step_g <= 5 * 40


def test_a_list_without_salt_is_not_bent_to_reach_the_sodium() -> None:
    salty = food("19051")  # rice cakes with salt: 326 mg of sodium in 100 g (USDA SR26)
    choices = [
        Choice(food=RICE, liking=Liking.FAVOURITE), *PLAIN[1:],
        Choice(food=salty, liking=Liking.SO_SO),
    ]  # fmt: skip
    wish = NutrientTargets(
        carb_g=350, protein_g=120, fat_g=30, sodium_least_mg=1700, sodium_most_mg=2900
    )
    menu = plan_menu(choices, wish, 5)
    assert salty.id not in menu.steps
    assert [miss.nutrient for miss in menu.misses] == ["sodium_mg"]
    assert menu.gives == ()  # the hand at the salt is all that it takes
    salted = plan_menu([*choices, Choice(food=SALT)], wish, 5)
    assert salted.misses == ()
    assert salted.steps[SALT.id] > 0


def test_a_locked_food_stays_and_a_wanted_one_is_there() -> None:
    wish = NutrientTargets(carb_g=300, protein_g=120, fat_g=25)
    choices = [*PLAIN, Choice(food=HONEY)]
    steps = solve_day(choices, wish, 4, Fixed({RICE.id: 8}, [HONEY.id]))
    assert steps[RICE.id] == 8
    assert steps[HONEY.id] >= 1


def test_fibre_keeps_under_its_most_and_sodium_in_its_range() -> None:
    choices = [*PLAIN, Choice(food=OATS, liking=Liking.FAVOURITE), Choice(food=SALT)]
    wish = NutrientTargets(
        carb_g=300, protein_g=120, fat_g=25, fibre_most_g=10, sodium_least_mg=1700,
        sodium_most_mg=2900,
    )  # fmt: skip
    menu = plan_menu(choices, wish, 4)
    assert menu.misses == ()
    assert menu.totals.fibre_g <= 10
    assert 1700 <= menu.totals.sodium_mg <= 2900
    # Without the bound the favourite oats would bring more.
    free = plan_menu(choices, replace(wish, fibre_most_g=None), 4)
    assert free.totals.fibre_g > 10


def test_what_cannot_be_met_is_missed_by_as_little_as_can_be_and_says_what_would_give() -> None:
    oats_only = [Choice(food=OATS), Choice(food=CHICKEN)]
    wish = NutrientTargets(carb_g=200, protein_g=90, fat_g=30, fibre_most_g=15)
    menu = plan_menu(oats_only, wish, 4)
    assert {miss.nutrient for miss in menu.misses} <= {"carb_g", "fibre_g", "fat_g", "protein_g"}
    assert menu.misses
    assert menu.gives == ("fibre",)
    assert menu.lacking == ()


def test_a_list_without_a_source_of_something_is_told_so() -> None:
    menu = plan_menu([Choice(food=RICE)], NutrientTargets(carb_g=200, protein_g=100, fat_g=30), 4)
    assert set(menu.lacking) == {"protein_g", "fat_g"}
    assert menu.gives == ()


def test_locks_that_stand_in_the_way_are_named() -> None:
    wish = NutrientTargets(carb_g=100, protein_g=80, fat_g=12)
    menu = plan_menu(PLAIN, wish, 3, Fixed({RICE.id: 40}))
    over = next(miss for miss in menu.misses if miss.nutrient == "carb_g")
    # 1,000 g of rice hold 277.7 g of carbs without fibre: 172.7 g past what counts as met.
    assert over.by == pytest.approx(172.7, abs=0.1)
    assert menu.gives == ("locks",)


def test_too_much_for_the_meals_left_says_that_a_meal_more_would_do() -> None:
    # 400 g of rice in a meal hold 111 g of carbs: one meal cannot bring 200 g, two can.
    menu = plan_menu([Choice(food=RICE)], NutrientTargets(carb_g=200, protein_g=20, fat_g=2), 1)
    assert menu.gives == ("meal",)


def test_nothing_to_choose_from_and_no_meal_left_are_an_empty_menu_that_says_what_is_missing() -> (
    None
):
    assert plan_menu([], NutrientTargets(carb_g=50, protein_g=20, fat_g=5), 3).steps == {}
    assert plan_menu(PLAIN, NutrientTargets(carb_g=50, protein_g=20, fat_g=5), 0).steps == {}
    assert plan_menu([], NutrientTargets(carb_g=50, protein_g=20, fat_g=5), 3).misses
    assert plan_menu(PLAIN, NutrientTargets(carb_g=0, protein_g=0, fat_g=0), 3).steps == {}


def test_salt_is_spread_over_the_meals_like_food() -> None:
    choices = [*PLAIN, Choice(food=SALT)]
    wish = NutrientTargets(
        carb_g=400, protein_g=110, fat_g=30, sodium_least_mg=2000, sodium_most_mg=2600
    )
    menu = plan_menu(choices, wish, 5)
    sodium = [sum(p.grams * p.food.sodium_mg / 100 for p in meal) for meal in menu.meals]
    assert max(sodium) < 2 * sum(sodium) / 5


def test_a_menu_is_the_same_each_time() -> None:
    wish = NutrientTargets(carb_g=450, protein_g=130, fat_g=40, fibre_most_g=20)
    choices = [Choice(food=one) for one in random.Random(9).sample(known_foods(), 15)]
    assert plan_menu(choices, wish, 5) == plan_menu(list(choices), wish, 5)


def test_spreading_never_loses_a_step_whatever_is_on_the_table() -> None:
    dice = random.Random(11)
    for _ in range(200):
        foods = dice.sample(known_foods(), dice.randint(1, 12))
        steps = {one.id: dice.randint(0, 60) for one in foods}
        plates = spread(foods, steps, dice.randint(1, 7))
        summed = Counter[str]()
        for plate in plates:
            summed.update(plate)
        assert dict(summed) == {id: count for id, count in steps.items() if count}


def test_sixty_foods_and_six_meals_meet_every_target() -> None:
    dice = random.Random(3)
    foods = list(known_foods())
    foods += [replace(one, id=f"{one.id}-own", carb_g=one.carb_g * 0.97) for one in foods[:11]]
    choices = [Choice(food=one, liking=dice.choice(list(Liking))) for one in foods]
    wish = NutrientTargets(
        carb_g=520, protein_g=140, fat_g=35, fibre_most_g=20, sodium_least_mg=1700,
        sodium_most_mg=2900,
    )  # fmt: skip
    menu = plan_menu(choices, wish, 6)
    assert menu.misses == ()
    assert misses(menu.totals, wish) == ()
