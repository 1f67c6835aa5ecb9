"""What each figure of a line is likely to be: a weight, a fullness, a day's drink, or none of these."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from itertools import product
from math import prod

from engine.written.oneline.judge.traits import BUCKETS, Seen
from engine.written.oneline.report import CORE
from engine.written.whole_weights import WholeModel

#: What a figure is taken for, in the order of the weights' columns.
CLASSES = (*CORE, "other")
OTHER = len(CORE)
MOST_FIGURES = 8
_LEAST = 1e-9


class Model(WholeModel):
    __slots__ = ()
    ID, ROWS, NEXT_TO_NOTHING = "judge-1", BUCKETS, 3

    def chances(self, figure: Seen) -> tuple[float, ...]:
        """Of each of `CLASSES`, of this figure alone; they sum to 1."""
        return self.chances_by([(1.0, figure.traits)])


@dataclass(frozen=True, slots=True)
class Judged:
    """`figures[i][c]` is how likely figure i is of class c; `untold[k]` that answer k was not told."""

    figures: tuple[tuple[float, ...], ...]
    untold: tuple[float, ...]


def judged(figures: Sequence[Seen], by: Model) -> Judged | None:
    """What the figures of a line are together, each answer told once at most.

    None for a line without figures, or with so many that it is no check-in.
    """
    if not 0 < len(figures) <= MOST_FIGURES:
        return None
    chances = [by.chances(figure) for figure in figures]
    odds = [[one / max(_LEAST, own[OTHER]) for one in own] for own in chances]
    may_be = [
        [None, *(at for at, figure in enumerate(figures) if figure.values[key] is not None)]
        for key in range(len(CORE))
    ]
    told = [[0.0] * len(CLASSES) for _ in figures]
    untold, total = [0.0] * len(CORE), 0.0
    for way in product(*may_be):
        taken = [at for at in way if at is not None]
        if len(set(taken)) < len(taken):
            continue
        share = prod(odds[at][key] for key, at in enumerate(way) if at is not None)
        total += share
        for key, at in enumerate(way):
            if at is None:
                untold[key] += share
            else:
                told[at][key] += share
        for at in set(range(len(figures))).difference(taken):
            told[at][OTHER] += share
    return Judged(
        tuple(tuple(one / total for one in own) for own in told),
        tuple(one / total for one in untold),
    )


@cache
def model() -> Model:
    """The model that the package carries, read once, when first asked for."""
    return Model.unpacked((files(__package__ or "") / "weights.bin").read_bytes())
