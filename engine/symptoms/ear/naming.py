"""Which complaint it is that sounds like one, so that what is plainly told has its name."""

from __future__ import annotations

import json
from collections.abc import Set
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from math import exp

import numpy as np
import numpy.typing as npt

from engine.symptoms.ear.reading import features
from engine.symptoms.finding import Concern
from engine.symptoms.names import EATING_AND_MOOD, WARNINGS, Symptom
from engine.written.whole_weights import rows_packed, rows_unpacked

NAMES_ID = "names-2"
#: How many features are told apart: few, since a name is only asked for where the alarm is certain.
BUCKETS = 1 << 15
#: What can be named, in the order of the weights' columns: signs of many kinds have no words in common.
NAMED = tuple(symptom for symptom in Symptom if symptom is not Symptom.DANGER_SIGNS)
#: What a concern may be; what is graver than it sounds is named too, so that it is seen.
OF_CONCERN = {
    Concern.EMERGENCY: WARNINGS,
    Concern.BODY: frozenset(NAMED) - EATING_AND_MOOD,
    Concern.MOOD: EATING_AND_MOOD,
}
#: Words, letters and kinds of words of a piece count; neighbours are too many for so few sentences.
_WORDS, _LETTERS, _KINDS = 0, 2, 3
#: In steps of the scale, of which the largest weight has 127.
_NEXT_TO_NOTHING = 6


def traits(piece: str) -> list[tuple[float, list[int]]]:
    """The piece's features by family, each family with what one of its features counts."""
    found = features(piece)
    families = [sorted({at % BUCKETS for at in found[f]}) for f in (_WORDS, _LETTERS, _KINDS)]
    return [(1.0 / max(1, len(family)) ** 0.5, family) for family in families]


@dataclass(frozen=True, slots=True)
class Namer:
    """`weights` is (BUCKETS, len(NAMED)) of int8, each times `scale`."""

    weights: npt.NDArray[np.int8]
    scale: float
    bias: tuple[float, ...]

    @classmethod
    def of(cls, weights: npt.NDArray[np.float64], bias: npt.NDArray[np.float64]) -> Namer:
        """Rounded to whole numbers."""
        scale = float(f"{float(np.abs(weights).max()) / 127:.6g}")
        whole = np.rint(weights / scale).astype(np.int8)
        whole[np.abs(whole).max(axis=1) <= _NEXT_TO_NOTHING] = 0
        return cls(whole, scale, tuple(round(float(b), 4) for b in bias))

    def name(self, piece: str, among: Set[Symptom] = WARNINGS) -> tuple[Symptom, float]:
        """The likeliest of these and its share among them."""
        sums = list(self.bias)
        for share, family in traits(piece):
            if family:
                total = self.weights[family].sum(axis=0, dtype=np.int64)
                sums = [a + share * self.scale * int(b) for a, b in zip(sums, total, strict=True)]
        named = [
            (total, symptom) for total, symptom in zip(sums, NAMED, strict=True) if symptom in among
        ]
        most, symptom = max(named, key=lambda each: each[0])
        return symptom, 1.0 / sum(exp(total - most) for total, _ in named)


def pack_names(namer: Namer) -> bytes:
    """A line of JSON, then the rows that have weights."""
    head = {"names": NAMES_ID, "named": NAMED, "scale": namer.scale, "bias": namer.bias}
    return json.dumps(head).encode() + b"\n" + rows_packed(namer.weights)


def unpack_names(packed: bytes) -> Namer:
    """What `pack_names` packed; raises `ValueError` for weights that name anything else."""
    line, _, rest = packed.partition(b"\n")
    head = json.loads(line)
    if head["names"] != NAMES_ID or head["named"] != [str(symptom) for symptom in NAMED]:
        raise ValueError(f"names are of {head['names']}, the code is {NAMES_ID}")
    weights = rows_unpacked(rest, (BUCKETS, len(NAMED)))
    return Namer(weights, head["scale"], tuple(head["bias"]))


@cache
def namer() -> Namer:
    """The one that the package carries, read once, when first asked for."""
    return unpack_names((files(__package__ or "") / "names.bin").read_bytes())
