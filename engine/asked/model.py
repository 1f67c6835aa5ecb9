"""The weights by which a text is taken for a request: small whole numbers, the same everywhere."""

from __future__ import annotations

import json
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

import numpy as np
import numpy.typing as npt

from engine.asked.reading import FAMILIES, features
from engine.symptoms.ear.model import chances_of, rounded, rows_packed, rows_unpacked
from engine.symptoms.ear.reading import BUCKETS

#: A new number for other features or classes.
MODEL_ID = "asked-1"
#: In steps of the scale, of which the largest weight has 127.
_NEXT_TO_NOTHING = 4


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

    def chances(self, text: str) -> tuple[float, ...]:
        """How likely the text is of each class; they sum to 1."""
        found = zip(FAMILIES, features(text), strict=True)
        return chances_of(self.weights, self.scale, self.bias, found)


def pack(model: Model) -> bytes:
    """A line of JSON, then the rows that have weights."""
    head = {
        "model": MODEL_ID, "corpus": model.corpus, "scale": model.scale, "bias": model.bias,
    }  # fmt: skip
    return json.dumps(head).encode() + b"\n" + rows_packed(model.weights)


def unpack(packed: bytes) -> Model:
    """What `pack` packed; raises `ValueError` for weights that this code's features don't fit."""
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
