"""How much of each food over the day: an integer program, solved by HiGHS through scipy.

Where some day misses nothing, only such days count. Points are paid for what is missed, for what is
liked less, for leaving the usual day and for many foods; the cheapest day wins. A target that cannot
be met is therefore missed by as little as there is, and never refused.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import csr_array

from engine.portions.wish import (
    TOLERANCE,
    Choice,
    Liking,
    Steps,
    Wish,
    most_steps,
    totals_of,
)

# Points. A miss outweighs every taste: 1 g of carbs is more than all the liking of a day.
MISSED_PER_G = {"carb_g": 100.0, "protein_g": 100.0, "fat_g": 200.0}
FIBRE_OVER_PER_G = 60.0
SODIUM_OUT_PER_MG = 0.4
LIKING_PER_100_KCAL = {Liking.FAVOURITE: 0.0, Liking.WELL: 0.6, Liking.SO_SO: 3.0}
UNUSUAL_PER_100_KCAL = 1.0
A_FOOD = 0.4  # each food that is on the table at all
A_STEP = 0.001  # so that what costs nothing is not piled up
NEAR_PER_G = 0.02  # within the tolerance, nearer is better
NODES = 4000  # a bound on the search that does not depend on the machine's speed
GAP = 1e-3


def solve_day(
    choices: Sequence[Choice],
    wish: Wish,
    meals: int,
    *,
    locked: Steps | None = None,
    wanted: Collection[str] = (),
) -> dict[str, int]:
    """Whole steps of each food by its id, those of none left out.

    `locked` foods stay at their steps; of each of `wanted` there is at least one step.
    """
    if not choices or meals < 1:
        return {}
    program = _Program(choices, wish, meals, locked or {}, frozenset(wanted))
    return {id: steps for id, steps in program.solve().items() if steps > 0}


def can_be_met(
    choices: Sequence[Choice],
    wish: Wish,
    meals: int,
    *,
    locked: Steps | None = None,
    wanted: Collection[str] = (),
) -> bool:
    """Whether there is a day that misses none of its targets and bounds; far sooner told than made."""
    if not choices or meals < 1:
        return False
    return _Program(choices, wish, meals, locked or {}, frozenset(wanted)).can_be_met()


def points(choices: Sequence[Choice], wish: Wish, steps: Mapping[str, int]) -> float:
    """What a day costs, reckoned directly: the same sum that the program makes smallest.

    A day that misses something may have fewer points than one that does not, and yet is not chosen.
    """
    totals = totals_of((c.food, steps.get(c.food.id, 0) * c.food.step_g) for c in choices)
    cost = 0.0
    for nutrient, room in TOLERANCE.items():
        off = abs(getattr(totals, nutrient) - getattr(wish, nutrient))
        cost += MISSED_PER_G[nutrient] * max(off - room, 0) + NEAR_PER_G * off
    if wish.fibre_most_g is not None:
        cost += FIBRE_OVER_PER_G * max(totals.fibre_g - wish.fibre_most_g, 0)
    if wish.sodium_most_mg is not None:
        cost += SODIUM_OUT_PER_MG * max(totals.sodium_mg - wish.sodium_most_mg, 0)
    if wish.sodium_least_mg is not None:
        cost += SODIUM_OUT_PER_MG * max(wish.sodium_least_mg - totals.sodium_mg, 0)
    for choice in choices:
        count = steps.get(choice.food.id, 0)
        cost += _taste(choice) * count + (A_FOOD if count else 0)
        if choice.usual_g is not None:
            cost += _unusual(choice) * abs(count - choice.usual_g / choice.food.step_g)
    return cost


def _step_kcal(choice: Choice) -> float:
    return choice.food.kcal * choice.food.step_g / 100


def _taste(choice: Choice) -> float:
    return LIKING_PER_100_KCAL[choice.liking] * _step_kcal(choice) / 100 + A_STEP


def _unusual(choice: Choice) -> float:
    return UNUSUAL_PER_100_KCAL * _step_kcal(choice) / 100


class _Program:
    """Columns: steps of each food, whether it is there, its departure from usual; then, for each
    macro, how far over and under its target within what counts as met, and how far beyond that;
    last, how far fibre and sodium leave their bounds.

    One row a macro and columns with bounds, rather than a row for each of its prices: rows that
    hold every food are what costs time here.
    """

    def __init__(
        self,
        choices: Sequence[Choice],
        wish: Wish,
        meals: int,
        locked: Steps,
        wanted: frozenset[str],
    ) -> None:
        self._choices, self._wish = choices, wish
        self._foods = n = len(choices)
        self._slacks = 3 * n
        self._width = 3 * n + 4 * len(TOLERANCE) + 3
        self._missed: list[int] = []
        self._entries: list[tuple[int, int, float]] = []
        self._least: list[float] = []
        self._most: list[float] = []
        self._low, self._high = np.zeros(self._width), np.full(self._width, np.inf)
        self._cost = np.zeros(self._width)
        for i, choice in enumerate(choices):
            self._food(i, choice, most_steps(choice, meals), locked, wanted)
        for k, nutrient in enumerate(TOLERANCE):
            self._macro(k, nutrient)
        self._bounds()

    def solve(self) -> dict[str, int]:
        found = self._run(self._cost, self._nothing_missed()) if self.can_be_met() else None
        if found is None:
            found = self._run(self._cost, self._high)
        # Every day has a solution, since each miss has its slack; the node limit may come first.
        if found is None:
            raise ArithmeticError("no day was found within the bound on the search")
        return {c.food.id: round(found[i]) for i, c in enumerate(self._choices)}

    def can_be_met(self) -> bool:
        """Whether some day misses nothing. False as well where none was found in time."""
        return self._run(np.zeros(self._width), self._nothing_missed()) is not None

    def _nothing_missed(self) -> NDArray[np.float64]:
        high = self._high.copy()
        high[self._missed] = 0
        return high

    def _run(
        self, cost: NDArray[np.float64], high: NDArray[np.float64]
    ) -> NDArray[np.float64] | None:
        n = self._foods
        rows, columns, values = zip(*self._entries, strict=True)
        matrix = csr_array((values, (rows, columns)), shape=(len(self._least), self._width))
        found = milp(
            cost,
            integrality=np.concatenate([np.ones(2 * n), np.zeros(self._width - 2 * n)]),
            bounds=Bounds(self._low, high),
            constraints=LinearConstraint(matrix, self._least, self._most),
            options={"node_limit": NODES, "mip_rel_gap": GAP},
        )
        return None if found.x is None else np.asarray(found.x)

    def _food(
        self, i: int, choice: Choice, most: int, locked: Steps, wanted: frozenset[str]
    ) -> None:
        n, id = self._foods, choice.food.id
        most = max(most, locked.get(id, 0), 1 if id in wanted else 0)
        self._high[i], self._high[n + i] = most, 1
        if id in locked:
            self._low[i] = self._high[i] = locked[id]
        elif id in wanted:
            self._low[i] = 1
        self._cost[i], self._cost[n + i] = _taste(choice), A_FOOD
        self._row({i: 1.0, n + i: -float(max(most, 1))}, -np.inf, 0)
        if choice.usual_g is not None:
            usual = choice.usual_g / choice.food.step_g
            self._cost[2 * n + i] = _unusual(choice)
            self._row({i: 1.0, 2 * n + i: -1.0}, -np.inf, usual)
            self._row({i: 1.0, 2 * n + i: 1.0}, usual, np.inf)

    def _macro(self, k: int, nutrient: str) -> None:
        """What is eaten, less what is over and with what is under, is the target."""
        over, under, missed_over, missed_under = (self._slacks + 4 * k + j for j in range(4))
        target = getattr(self._wish, nutrient)
        self._high[[over, under]] = TOLERANCE[nutrient]
        self._cost[[over, under]] = NEAR_PER_G
        self._cost[[missed_over, missed_under]] = NEAR_PER_G + MISSED_PER_G[nutrient]
        self._missed += [missed_over, missed_under]
        apart = {over: -1.0, missed_over: -1.0, under: 1.0, missed_under: 1.0}
        self._row(self._sums(nutrient) | apart, target, target)

    def _bounds(self) -> None:
        fibre, salty, bland = (self._width - j for j in (3, 2, 1))
        self._missed += [fibre, salty, bland]
        self._cost[fibre] = FIBRE_OVER_PER_G
        # In grams here, so that the matrix keeps figures of one size.
        self._cost[salty] = self._cost[bland] = SODIUM_OUT_PER_MG * 1000
        sodium = {i: mg / 1000 for i, mg in self._sums("sodium_mg").items()}
        wish = self._wish
        if wish.fibre_most_g is not None:
            self._row(self._sums("fibre_g") | {fibre: -1.0}, -np.inf, wish.fibre_most_g)
        if wish.sodium_most_mg is not None:
            self._row(sodium | {salty: -1.0}, -np.inf, wish.sodium_most_mg / 1000)
        if wish.sodium_least_mg is not None:
            self._row(sodium | {bland: 1.0}, wish.sodium_least_mg / 1000, np.inf)

    def _sums(self, nutrient: str) -> dict[int, float]:
        return {
            i: getattr(c.food, nutrient) * c.food.step_g / 100 for i, c in enumerate(self._choices)
        }

    def _row(self, entries: Mapping[int, float], least: float, most: float) -> None:
        row = len(self._least)
        self._entries += [(row, column, value) for column, value in entries.items() if value]
        self._least.append(least)
        self._most.append(most)
