"""The weights of what was learnt, as small whole numbers: the same on every machine, and few bytes."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import exp
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
