"""A day's steps of food spread over its meals: carbs and protein even, few foods on a plate.

How much is eaten over the day is settled already, so nothing here can miss a target. A good spread
is found by dealing and then moving food from plate to plate as long as that helps: an exact search
takes seconds, because every meal can stand for every other, and nobody tastes the difference.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from engine.food.foods import Food
from engine.food.portions.wish import Steps, most_in_a_meal

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
