"""A day's steps of food spread over its meals: carbs and protein even, few foods on a plate.

How much is eaten over the day is settled already, so nothing here can miss a target. A good spread
is found by dealing and then moving food from plate to plate as long as that helps: an exact search
takes seconds, because every meal can stand for every other, and nobody tastes the difference.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum

from engine.evidence import eating as e
from engine.food.foods import Food

#: Points per unit that a plate lies off its even share; salt is spread as well as food.
UNEVEN = {"carb_g": 1.0, "protein_g": 1.0, "fat_g": 0.6, "sodium_mg": 0.015}
A_FOOD_ON_A_PLATE = 6.0
SWEEPS = 60  # far more than a day has been seen to need; each only ever makes it better


def spread(foods: Sequence[Food], steps: Steps, meals: int) -> tuple[dict[str, int], ...]:
    """Steps of each food for each meal; together they are `steps`, whatever is best."""
    there = [food for food in foods if steps.get(food.id, 0) > 0]
    if meals <= 1 or not there:
        first = {food.id: steps[food.id] for food in there}
        return (first, *({} for _ in range(meals - 1)))
    table = _Table(there, steps, meals)
    table.deal()
    for _ in range(SWEEPS):
        if not table.improve():
            break
    return tuple(
        {food.id: table.counts[i][m] for i, food in enumerate(there) if table.counts[i][m]}
        for m in range(meals)
    )


class _Table:
    """What lies on each plate, and what each plate comes to in grams."""

    def __init__(self, foods: Sequence[Food], steps: Steps, meals: int) -> None:
        self._meals = meals
        self._steps = [steps[food.id] for food in foods]
        self._prices = list(UNEVEN.values())
        self._each: list[list[float]] = [
            [getattr(food, name) * food.step_g / 100 for name in UNEVEN] for food in foods
        ]
        kinds = range(len(self._prices))
        self._share = [
            sum(each[k] * count for each, count in zip(self._each, self._steps, strict=True))
            / meals
            for k in kinds
        ]
        # What was locked by hand may be more than the meals would hold: then they hold it anyway.
        self._room = [
            max(most_in_a_meal(food), -(-count // meals))
            for food, count in zip(foods, self._steps, strict=True)
        ]
        self.counts = [[0] * meals for _ in foods]
        self._sums = [[0.0 for _ in kinds] for _ in range(meals)]

    def deal(self) -> None:
        """The weightiest food first, each helping to the plate that is furthest from its share."""
        order = sorted(
            range(len(self._steps)), key=lambda i: -sum(self._each[i][:3]) * self._steps[i]
        )
        for i in order:
            left = self._steps[i]
            while left:
                plate = max(
                    (m for m in range(self._meals) if self.counts[i][m] < self._room[i]),
                    key=lambda m: (self._wants(i, m), -m),
                )
                helping = min(left, self._room[i] - self.counts[i][plate], self._fair(i, plate))
                self._move(i, None, plate, helping)
                left -= helping

    def improve(self) -> bool:
        """Make every move that helps, once round; False when none did."""
        helped = False
        for i, a, b, count in self._moves():
            if self.counts[i][a] < count or self.counts[i][b] + count > self._room[i]:
                continue
            if self._change(i, a, b, count) < -1e-9:
                self._move(i, a, b, count)
                helped = True
        return helped

    def _moves(self) -> Iterator[tuple[int, int, int, int]]:
        for i in range(len(self._steps)):
            for a in range(self._meals):
                for b in range(self._meals):
                    if a != b:
                        for count in {1, self.counts[i][a] // 2, self.counts[i][a]} - {0}:
                            yield i, a, b, count

    def _wants(self, i: int, m: int) -> float:
        """How much the plate would gain by this food: its need of what the food is made of."""
        return sum(
            price * max(self._share[k] - self._sums[m][k], 0) * self._each[i][k]
            for k, price in enumerate(self._prices)
        )

    def _fair(self, i: int, m: int) -> int:
        """Steps that fill the plate's share of what the food has most of; at least one."""
        k = max(range(len(self._prices)), key=lambda k: self._each[i][k] * self._prices[k])
        if self._each[i][k] <= 0:
            return self._room[i]
        return max(round((self._share[k] - self._sums[m][k]) / self._each[i][k]), 1)

    def _change(self, i: int, a: int, b: int, count: int) -> float:
        """What the move would add to the table's cost."""
        cost = 0.0
        for k, price in enumerate(self._prices):
            grams, share = self._each[i][k] * count, self._share[k]
            before = abs(self._sums[a][k] - share) + abs(self._sums[b][k] - share)
            after = abs(self._sums[a][k] - grams - share) + abs(self._sums[b][k] + grams - share)
            cost += price * (after - before)
        cleared, laid = self.counts[i][a] == count, self.counts[i][b] == 0
        return cost + A_FOOD_ON_A_PLATE * (laid - cleared)

    def _move(self, i: int, a: int | None, b: int, count: int) -> None:
        for k, grams in enumerate(self._each[i]):
            if a is not None:
                self._sums[a][k] -= grams * count
            self._sums[b][k] += grams * count
        if a is not None:
            self.counts[i][a] -= count
        self.counts[i][b] += count


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
class NutrientTargets:
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


def misses(totals: Totals, wish: NutrientTargets) -> tuple[Miss, ...]:
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
