"""How much of each food over the day: an integer program, solved by HiGHS.

Where some day misses nothing, only such days count. Points are paid for what is missed, for what is
liked less, for leaving the usual day and for many foods; the cheapest day wins. A target that cannot
be met is therefore missed by as little as there is, and never refused.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from types import MappingProxyType
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from engine.evidence import eating as e
from engine.food.portions.meals import (
    TOLERANCE,
    Choice,
    Liking,
    NutrientTargets,
    Steps,
    comfortable_steps,
    most_steps,
    totals_of,
)

# Points. A miss outweighs every taste: 1 g of carbs is more than all the liking of a day.
MISSED_PER_G = {"carb_g": 100.0, "protein_g": 100.0, "fat_g": 200.0}
FIBRE_OVER_PER_G = 60.0
SODIUM_OUT_PER_MG = 0.4
UNSALTED_PER_MG = (
    0.002  # where nothing on the list salts: people salt by hand, not by what they eat
)
LIKING_PER_100_KCAL = {Liking.FAVOURITE: 0.0, Liking.WELL: 0.6, Liking.SO_SO: 3.0}
LESS_THAN_USUAL_PER_100_KCAL = 1.0
MORE_THAN_USUAL_PER_100_KCAL = 0.3  # more of what is eaten anyway comes before something else
NOW_AND_THEN_PER_100_KCAL = 0.7
MUCH_PER_100_KCAL = 1.0  # over what of one food is comfortable in a day
A_FOOD = 0.4  # each food that is on the table at all
A_STEP = 0.001  # so that what costs nothing is not piled up
NEAR_PER_G = 0.02  # within the tolerance, nearer is better
NODES = 4000  # a bound on the search that does not depend on the machine's speed
GAP = 1e-3
# One thread and one seed, so that the same question has the same answer wherever it is asked; more
# threads would also outlive the one that asks. Not a word on the standard output.
SEARCH = {
    "output_flag": False,
    "threads": 1,
    "random_seed": 0,
    "mip_max_nodes": NODES,
    "mip_rel_gap": GAP,
}


class Fixed(NamedTuple):
    """What a day's list is held to: `locked` foods stay at their steps, and of each of `wanted` there
    is at least one step.
    """

    locked: Steps = MappingProxyType({})
    wanted: Collection[str] = ()


FREE = Fixed()


def solve_day(
    choices: Sequence[Choice], wish: NutrientTargets, meals: int, fixed: Fixed = FREE
) -> dict[str, int]:
    """Whole steps of each food by its id, those of none left out."""
    if not choices or meals < 1:
        return {}
    program = _Program(choices, wish, meals, fixed)
    return {id: steps for id, steps in program.solve().items() if steps > 0}


def can_be_met(
    choices: Sequence[Choice], wish: NutrientTargets, meals: int, fixed: Fixed = FREE
) -> bool:
    """Whether there is a day that misses nothing; far sooner told than made.

    Too little sodium does not count where nothing on the list salts.
    """
    if not choices or meals < 1:
        return False
    return _Program(choices, wish, meals, fixed).can_be_met()


def points(
    choices: Sequence[Choice], wish: NutrientTargets, steps: Mapping[str, int], meals: int
) -> float:
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
        cost += _bland_per_mg(choices) * max(wish.sodium_least_mg - totals.sodium_mg, 0)
    for choice in choices:
        count = steps.get(choice.food.id, 0)
        cost += _taste(choice) * count + (A_FOOD if count else 0)
        cost += _much(choice) * max(count - comfortable_steps(choice, meals), 0)
        if choice.usual_g is not None:
            off = count - choice.usual_g / choice.food.step_g
            cost += _more(choice) * max(off, 0) + _less(choice) * max(-off, 0)
    return cost


def can_be_salted(choices: Sequence[Choice]) -> bool:
    """Whether something on the list is there to salt with: then sodium is held from below too."""
    return any(choice.food.sodium_mg >= float(e.SALTS_FROM_MG) for choice in choices)


def _bland_per_mg(choices: Sequence[Choice]) -> float:
    return SODIUM_OUT_PER_MG if can_be_salted(choices) else UNSALTED_PER_MG


def _step_kcal(choice: Choice) -> float:
    return choice.food.kcal * choice.food.step_g / 100


def _taste(choice: Choice) -> float:
    """A step's points by liking, and by whether it is eaten every day or only now and then."""
    per_100_kcal = LIKING_PER_100_KCAL[choice.liking]
    if choice.usual_g is None:
        per_100_kcal += NOW_AND_THEN_PER_100_KCAL
    return per_100_kcal * _step_kcal(choice) / 100 + A_STEP


def _more(choice: Choice) -> float:
    return MORE_THAN_USUAL_PER_100_KCAL * _step_kcal(choice) / 100


def _less(choice: Choice) -> float:
    return LESS_THAN_USUAL_PER_100_KCAL * _step_kcal(choice) / 100


def _much(choice: Choice) -> float:
    return MUCH_PER_100_KCAL * _step_kcal(choice) / 100


class _Program:
    """Columns: steps of each food, whether it is there, and then one for each thing that costs points.

    One row a macro and columns with bounds, rather than a row for each of its prices: rows that
    hold every food are what costs time here.
    """

    def __init__(
        self, choices: Sequence[Choice], wish: NutrientTargets, meals: int, fixed: Fixed
    ) -> None:
        self._choices, self._wish, self._meals = choices, wish, meals
        self._cost: list[float] = []
        self._low: list[float] = []
        self._high: list[float] = []
        self._missed: list[int] = []
        self._entries: list[tuple[int, int, float]] = []
        self._least: list[float] = []
        self._most: list[float] = []
        self._whole = 2 * len(choices)
        for choice in choices:
            self._steps_of(choice, *fixed)
        for _ in choices:
            self._column(A_FOOD, 1)
        for i, choice in enumerate(choices):
            self._food(i, choice)
        for nutrient in TOLERANCE:
            self._macro(nutrient)
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
        return self._run([0.0] * len(self._cost), self._nothing_missed()) is not None

    def _nothing_missed(self) -> list[float]:
        missed = set(self._missed)
        return [0.0 if column in missed else most for column, most in enumerate(self._high)]

    def _run(self, cost: Sequence[float], high: Sequence[float]) -> NDArray[np.float64] | None:
        # Heavy: loaded at the first menu, not at the start.
        import highspy  # noqa: PLC0415

        lp = highspy.HighsLp()
        lp.num_col_, lp.num_row_ = len(cost), len(self._least)
        lp.col_cost_, lp.col_lower_, lp.col_upper_ = list(cost), self._low, list(high)
        lp.row_lower_, lp.row_upper_ = self._least, self._most
        whole, any_size = highspy.HighsVarType.kInteger, highspy.HighsVarType.kContinuous
        lp.integrality_ = [whole] * self._whole + [any_size] * (len(cost) - self._whole)
        rows, columns, values = zip(*self._entries, strict=True)
        lp.a_matrix_.format_ = highspy.MatrixFormat.kRowwise
        lp.a_matrix_.start_ = np.searchsorted(rows, np.arange(lp.num_row_ + 1))
        lp.a_matrix_.index_, lp.a_matrix_.value_ = list(columns), list(values)

        # The class that `highspy.Highs` adds callbacks to, and with them a line that each new one
        # prints before it can be told not to.
        search = highspy._Highs()  # type: ignore[attr-defined]
        for option, value in SEARCH.items():
            search.setOptionValue(option, value)
        search.passModel(lp)
        search.run()
        if search.getInfo().primal_solution_status != highspy.kSolutionStatusFeasible:
            return None
        return np.asarray(search.getSolution().col_value)

    def _steps_of(self, choice: Choice, locked: Steps, wanted: Collection[str]) -> None:
        id = choice.food.id
        most = max(most_steps(choice, self._meals), locked.get(id, 0), 1 if id in wanted else 0)
        column = self._column(_taste(choice), most)
        if id in locked:
            self._low[column] = self._high[column] = locked[id]
        elif id in wanted:
            self._low[column] = 1

    def _food(self, i: int, choice: Choice) -> None:
        most = self._high[i]
        self._row({i: 1.0, len(self._choices) + i: -max(most, 1.0)}, -np.inf, 0)
        comfortable = comfortable_steps(choice, self._meals)
        if most > comfortable:
            much = self._column(_much(choice))
            self._row({i: 1.0, much: -1.0}, -np.inf, comfortable)
        if choice.usual_g is not None:
            usual = choice.usual_g / choice.food.step_g
            more, less = self._column(_more(choice)), self._column(_less(choice))
            self._row({i: 1.0, more: -1.0, less: 1.0}, usual, usual)

    def _macro(self, nutrient: str) -> None:
        """What is eaten, less what is over and with what is under, is the target."""
        target, room = getattr(self._wish, nutrient), TOLERANCE[nutrient]
        over, under = self._column(NEAR_PER_G, room), self._column(NEAR_PER_G, room)
        missed = NEAR_PER_G + MISSED_PER_G[nutrient]
        far_over, far_under = self._column(missed), self._column(missed)
        self._missed += [far_over, far_under]
        apart = {over: -1.0, far_over: -1.0, under: 1.0, far_under: 1.0}
        self._row(self._sums(nutrient) | apart, target, target)

    def _bounds(self) -> None:
        # In grams here, so that the matrix keeps figures of one size.
        sodium = {i: mg / 1000 for i, mg in self._sums("sodium_mg").items()}
        wish = self._wish
        if wish.fibre_most_g is not None:
            fibre = self._column(FIBRE_OVER_PER_G)
            self._missed.append(fibre)
            self._row(self._sums("fibre_g") | {fibre: -1.0}, -np.inf, wish.fibre_most_g)
        if wish.sodium_most_mg is not None:
            salty = self._column(SODIUM_OUT_PER_MG * 1000)
            self._missed.append(salty)
            self._row(sodium | {salty: -1.0}, -np.inf, wish.sodium_most_mg / 1000)
        if wish.sodium_least_mg is not None:
            bland = self._column(_bland_per_mg(self._choices) * 1000)
            self._missed += [bland] if can_be_salted(self._choices) else []
            self._row(sodium | {bland: 1.0}, wish.sodium_least_mg / 1000, np.inf)

    def _sums(self, nutrient: str) -> dict[int, float]:
        return {
            i: getattr(c.food, nutrient) * c.food.step_g / 100 for i, c in enumerate(self._choices)
        }

    def _column(self, cost: float, high: float = np.inf) -> int:
        self._cost.append(cost)
        self._low.append(0.0)
        self._high.append(high)
        return len(self._cost) - 1

    def _row(self, entries: Mapping[int, float], least: float, most: float) -> None:
        row = len(self._least)
        self._entries += [(row, column, value) for column, value in entries.items() if value]
        self._least.append(least)
        self._most.append(most)
