"""The second ear's weights: small whole numbers, the same on every machine."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from math import exp
from zlib import compress, decompress

import numpy as np
import numpy.typing as npt

from engine.symptoms.ear.reading import BUCKETS, FAMILIES, features
from engine.symptoms.finding import Concern

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


def rounded(
    weights: npt.NDArray[np.float64], bias: npt.NDArray[np.float64], next_to_nothing: int
) -> tuple[npt.NDArray[np.int8], float, tuple[float, ...]]:
    """Weights as whole numbers with their scale, and the bias to four digits; the few largest weights
    are cut to keep the rest fine, and features that weigh next to nothing are forgotten.
    """
    largest = float(np.quantile(np.abs(weights[weights != 0.0]), 0.9995))
    scale = float(f"{largest / 127:.6g}")
    whole = np.clip(np.rint(weights / scale), -127, 127).astype(np.int8)
    whole[np.abs(whole).max(axis=1) <= next_to_nothing] = 0
    return whole, scale, tuple(round(float(b), 4) for b in bias)


def chances_of(
    weights: npt.NDArray[np.int8],
    scale: float,
    bias: Sequence[float],
    found: Iterable[tuple[float, list[int]]],
) -> tuple[float, ...]:
    """How likely each class is by the features that were `found`, each family with what it counts."""
    sums = list(bias)
    for weight, family in found:
        if family:
            share = weight * scale / len(family) ** 0.5
            # Whole numbers sum to the same whatever the order: the same bits everywhere.
            total = weights[family].sum(axis=0, dtype=np.int64)
            sums = [a + share * int(b) for a, b in zip(sums, total, strict=True)]
    most = max(sums)
    shares = [exp(each - most) for each in sums]
    return tuple(each / sum(shares) for each in shares)


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


def rows_packed(weights: npt.NDArray[np.int8]) -> bytes:
    """A bit for each row, set where it has weights, then those rows by columns, of like numbers."""
    weighted = weights.any(axis=1)
    return np.packbits(weighted).tobytes() + compress(weights[weighted].T.tobytes(), 9)


def rows_unpacked(packed: bytes, shape: tuple[int, int]) -> npt.NDArray[np.int8]:
    """What `rows_packed` packed of weights of that shape."""
    bits = shape[0] // 8
    weighted = np.unpackbits(np.frombuffer(packed, dtype=np.uint8, count=bits)).astype(bool)
    weights = np.zeros(shape, dtype=np.int8)
    columns = np.frombuffer(decompress(packed[bits:]), dtype=np.int8)
    weights[weighted] = columns.reshape(shape[1], -1).T
    return weights


@cache
def model() -> Model:
    """The model that the package carries, read once, when first asked for."""
    return unpack((files(__package__ or "") / "weights.bin").read_bytes())
