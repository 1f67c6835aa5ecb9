"""A share that was counted, with the range that goes with so few."""

from __future__ import annotations

import math
from dataclasses import dataclass

#: The standard normal deviate of a two-sided 95 % interval.
Z_95 = 1.959963984540054


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
