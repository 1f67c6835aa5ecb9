"""A share that was counted, and a mean, with the range that goes with so few."""

from __future__ import annotations

import math
from dataclasses import dataclass

#: The standard normal deviate of a two-sided 95 % interval.
Z_95 = 1.959963984540054
HALVINGS = 60  # of a right angle: to the last digit of a float


def student_95(freedom: int) -> float:
    """Student's deviate of a two-sided 95 % interval, for so many degrees of freedom.

    M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964, 26.7.3 and 26.7.4: the
    chance within it, of the angle whose tangent is t by the root of the degrees of freedom. Raises
    ValueError below one degree.
    """
    if freedom < 1:
        raise ValueError(f"{freedom} degrees of freedom are none")
    low, high = 0.0, math.pi / 2
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        low, high = (middle, high) if _within(middle, freedom) < 0.95 else (low, middle)
    return math.sqrt(freedom) * math.tan(low)


def _within(angle: float, freedom: int) -> float:
    odd = freedom % 2
    term = math.cos(angle) if odd else 1.0
    series = 0.0
    for power in range(odd, freedom - 1, 2):
        series += term
        term *= math.cos(angle) ** 2 * (power + 1) / (power + 2)
    series *= math.sin(angle)
    return (angle + series) * 2 / math.pi if odd else series


@dataclass(frozen=True, slots=True)
class Share:
    """`count` of `total`, with the 95 % interval of Wilson: E. B. Wilson, J Am Stat Assoc 1927;22:209.

    `share`, `low` and `high` are of 1; without any (total 0) the interval is the whole of it.
    Raises ValueError for more than all.
    """

    count: int
    total: int

    def __post_init__(self) -> None:
        if not 0 <= self.count <= self.total:
            raise ValueError(f"{self.count} of {self.total} is no share")

    @property
    def share(self) -> float:
        return self.count / self.total if self.total else math.nan

    @property
    def low(self) -> float:
        return self._bounds()[0]

    @property
    def high(self) -> float:
        return self._bounds()[1]

    def _bounds(self) -> tuple[float, float]:
        if not self.total:
            return 0.0, 1.0
        n, p, zz = self.total, self.share, Z_95**2
        middle = (p + zz / (2 * n)) / (1 + zz / n)
        reach = Z_95 / (1 + zz / n) * math.sqrt(p * (1 - p) / n + zz / (4 * n * n))
        # At none and at all the bound is exact; rounding would leave it a hair outside.
        low = 0.0 if self.count == 0 else middle - reach
        high = 1.0 if self.count == self.total else middle + reach
        return low, high
