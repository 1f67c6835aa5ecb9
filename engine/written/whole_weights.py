"""The weights of what was learnt, as small whole numbers: the same on every machine, and few bytes."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import exp
from typing import Any, ClassVar, Self
from zlib import compress, decompress

import numpy as np
import numpy.typing as npt


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


@dataclass(frozen=True, slots=True)
class WholeModel:
    """A linear model: `weights`, (ROWS, classes) of int8, each times `scale`; `corpus` names what it
    learnt from.
    """

    #: Its name, with a new number for other features or classes, and of how many features it is.
    ID: ClassVar[str]
    ROWS: ClassVar[int]
    #: What weighs no more is forgotten, in steps of the scale, of which the largest weight has 127.
    NEXT_TO_NOTHING: ClassVar[int]
    #: What a class of its own holds besides, which goes along with the weights.
    MORE: ClassVar[tuple[str, ...]] = ()

    weights: npt.NDArray[np.int8]
    scale: float
    bias: tuple[float, ...]
    corpus: str

    @classmethod
    def of(
        cls,
        weights: npt.NDArray[np.float64],
        bias: npt.NDArray[np.float64],
        corpus: str,
        **more: Any,
    ) -> Self:
        """Rounded to whole numbers."""
        return cls(*rounded(weights, bias, cls.NEXT_TO_NOTHING), corpus, **more)

    def chances_by(self, found: Iterable[tuple[float, list[int]]]) -> tuple[float, ...]:
        """How likely each class is by the features that were `found`; they sum to 1."""
        return chances_of(self.weights, self.scale, self.bias, found)

    def packed(self) -> bytes:
        """A line of JSON, then the rows that have weights."""
        head = {"model": self.ID, "corpus": self.corpus, "scale": self.scale, "bias": self.bias}
        head |= {name: getattr(self, name) for name in self.MORE}
        return json.dumps(head).encode() + b"\n" + rows_packed(self.weights)

    @classmethod
    def unpacked(cls, packed: bytes) -> Self:
        """What `packed` made; raises `ValueError` for weights that this code's features don't fit."""
        line, _, rest = packed.partition(b"\n")
        head = json.loads(line)
        if head["model"] != cls.ID:
            raise ValueError(f"weights are of {head['model']}, the code is {cls.ID}")
        weights = rows_unpacked(rest, (cls.ROWS, len(head["bias"])))
        more = {name: head[name] for name in cls.MORE}
        return cls(weights, head["scale"], tuple(head["bias"]), head["corpus"], **more)
