"""The weights by which a text is taken for a request: small whole numbers, the same everywhere."""

from __future__ import annotations

from functools import cache
from importlib.resources import files

from engine.asked.reading import FAMILIES, features
from engine.symptoms.ear.model import WholeModel
from engine.symptoms.ear.reading import BUCKETS


class Model(WholeModel):
    __slots__ = ()
    ID, ROWS, NEXT_TO_NOTHING = "asked-1", BUCKETS, 4

    def chances(self, text: str) -> tuple[float, ...]:
        """How likely the text is of each class; they sum to 1."""
        return self.chances_by(zip(FAMILIES, features(text), strict=True))


@cache
def model() -> Model:
    """The model that the package carries, read once, when first asked for."""
    return Model.unpacked((files(__package__ or "") / "weights.bin").read_bytes())
