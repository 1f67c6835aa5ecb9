"""The second ear's weights: small whole numbers, the same on every machine."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

import numpy as np
import numpy.typing as npt

from engine.symptoms.ear.reading import BUCKETS, FAMILIES, features
from engine.symptoms.finding import Concern
from engine.written.whole_weights import WholeModel, chances_of, rounded, rows_packed, rows_unpacked

#: What is asked for in words is weighed in the same way.
__all__ = ["CLASSES", "MODEL_ID", "Model", "WholeModel", "model", "pack", "unpack"]

#: Named in a decision's record if it ever rests on a suspicion; a new number for other features.
MODEL_ID = "ear-4"
#: In steps of the scale, of which the largest weight has 127.
_NEXT_TO_NOTHING = 10
#: What a piece is taken for, in the order of the weights' columns.
CLASSES = ("harmless", "emergency", "body", "mood")


@dataclass(frozen=True, slots=True)
class Model:
    """`weights` is (BUCKETS, 4) of int8, each times `scale`; `corpus` names what it was learnt from."""

    weights: npt.NDArray[np.int8]
    scale: float
    bias: tuple[float, ...]
    thresholds: Mapping[Concern, float]
    corpus: str

    @classmethod
    def of(
        cls,
        weights: npt.NDArray[np.float64],
        bias: npt.NDArray[np.float64],
        *,
        thresholds: Mapping[Concern, float],
        corpus: str,
    ) -> Model:
        """Rounded to whole numbers."""
        return cls(*rounded(weights, bias, _NEXT_TO_NOTHING), thresholds, corpus)

    def chances(self, piece: str) -> tuple[float, ...]:
        """How likely the piece is of each of `CLASSES`; they sum to 1."""
        found = zip(FAMILIES, features(piece), strict=True)
        return chances_of(self.weights, self.scale, self.bias, found)


def pack(model: Model) -> bytes:
    """A line of JSON, then the rows that have weights."""
    head = {
        "model": MODEL_ID,
        "corpus": model.corpus,
        "buckets": BUCKETS,
        "scale": model.scale,
        "bias": model.bias,
        "thresholds": model.thresholds,
    }
    return json.dumps(head).encode() + b"\n" + rows_packed(model.weights)


def unpack(packed: bytes) -> Model:
    """What `pack` packed; raises `ValueError` for weights that this code's features don't fit."""
    line, _, rest = packed.partition(b"\n")
    head = json.loads(line)
    if head["model"] != MODEL_ID or head["buckets"] != BUCKETS:
        raise ValueError(f"weights are of {head['model']}, the code is {MODEL_ID}")
    weights = rows_unpacked(rest, (BUCKETS, len(CLASSES)))
    thresholds = {concern: head["thresholds"][concern] for concern in Concern}
    return Model(weights, head["scale"], tuple(head["bias"]), thresholds, head["corpus"])


@cache
def model() -> Model:
    """The model that the package carries, read once, when first asked for."""
    return unpack((files(__package__ or "") / "weights.bin").read_bytes())
