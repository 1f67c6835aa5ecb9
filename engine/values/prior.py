"""What finished weeks of other athletes teach of the next one: a prior, as it is stored with a case.

`None` in its place is the published prior. Nothing here names an athlete.
"""

from __future__ import annotations

import math
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Spread:
    """A parameter of the model: where it lies and how far it scatters (its SD)."""

    name: str
    mean: float
    spread: float

    def __post_init__(self) -> None:
        if not (math.isfinite(self.mean) and math.isfinite(self.spread) and self.spread > 0):
            raise ValueError(f"{self.name}: {self.mean} with spread {self.spread} is no prior")


@dataclass(frozen=True, slots=True)
class KindShares:
    """How likely each kind of a trait of bodies is held to be; the shares add up to 1."""

    name: str
    shares: tuple[float, ...]

    def __post_init__(self) -> None:
        if any(not 0 <= share <= 1 for share in self.shares) or abs(sum(self.shares) - 1) > 1e-6:
            raise ValueError(f"{self.name}: {self.shares} are no shares of one")


@dataclass(frozen=True, slots=True, kw_only=True)
class Taught:
    """What finished weeks have taught of one athlete: the belief after them, summed up."""

    weeks: int
    model: int
    parameters: tuple[Spread, ...]
    kinds: tuple[KindShares, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Prior:
    """The prior for the next athlete of a coach, with what it rests on.

    `model` is the number of the model whose parameters these are.
    """

    weeks: int
    athletes: int
    model: int
    parameters: tuple[Spread, ...]
    kinds: tuple[KindShares, ...]
