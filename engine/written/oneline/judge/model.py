"""What each figure of a line is likely to be: a weight, a fullness, a day's drink, or none of these."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from itertools import product
from math import prod

import numpy as np
import numpy.typing as npt

from engine.written.oneline.judge.traits import BUCKETS, Seen
from engine.written.oneline.report import CORE
from engine.written.whole_weights import chances_of, rounded, rows_packed, rows_unpacked

#: A new number for other traits or classes.
MODEL_ID = "judge-1"
#: What a figure is taken for, in the order of the weights' columns.
CLASSES = (*CORE, "other")
OTHER = len(CORE)
#: In steps of the scale, of which the largest weight has 127.
_NEXT_TO_NOTHING = 3
MOST_FIGURES = 8
_LEAST = 1e-9


@dataclass(frozen=True, slots=True)
class Model:
    """`weights`: (BUCKETS, classes) of int8, each times `scale`; `corpus` names what it learnt from."""

    weights: npt.NDArray[np.int8]
    scale: float
    bias: tuple[float, ...]
    corpus: str

    @classmethod
    def of(
        cls, weights: npt.NDArray[np.float64], bias: npt.NDArray[np.float64], corpus: str
    ) -> Model:
        """Rounded to whole numbers."""
        return cls(*rounded(weights, bias, _NEXT_TO_NOTHING), corpus)

    def chances(self, figure: Seen) -> tuple[float, ...]:
        """Of each of `CLASSES`, of this figure alone; they sum to 1."""
        return chances_of(self.weights, self.scale, self.bias, [(1.0, figure.traits)])


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


def pack(model: Model) -> bytes:
    """A line of JSON, then the rows that have weights."""
    head = {
        "model": MODEL_ID, "corpus": model.corpus, "scale": model.scale, "bias": model.bias,
    }  # fmt: skip
    return json.dumps(head).encode() + b"\n" + rows_packed(model.weights)


def unpack(packed: bytes) -> Model:
    """What `pack` packed; raises `ValueError` for weights that this code's traits don't fit."""
    line, _, rest = packed.partition(b"\n")
    head = json.loads(line)
    if head["model"] != MODEL_ID:
        raise ValueError(f"weights are of {head['model']}, the code is {MODEL_ID}")
    weights = rows_unpacked(rest, (BUCKETS, len(head["bias"])))
    return Model(weights, head["scale"], tuple(head["bias"]), head["corpus"])


@cache
def model() -> Model:
    """The model that the package carries, read once, when first asked for."""
    return unpack((files(__package__ or "") / "weights.bin").read_bytes())
