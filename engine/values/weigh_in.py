"""A weigh-in: when, and what the scale may show at most."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import time

from engine.evidence.planning.weighing import CAP_BY_HEIGHT_CM

#: Caps that can be a class at all.
LIGHTEST_KG, HEAVIEST_KG = 30.0, 250.0


@dataclass(frozen=True, slots=True, kw_only=True)
class WeighIn:
    """`at` is the hour where the event is, so many days before its day; `cap_kg` is still allowed.

    `over_height_kg` is what a height-weight class allows over the height in cm less 100, if that is
    what the cap was made of.
    """

    days_out: int
    at: time
    cap_kg: float
    over_height_kg: float | None = None

    def __post_init__(self) -> None:
        if not 0 <= self.days_out <= 7:
            raise ValueError(f"a weigh-in is 7 to 0 days out, not {self.days_out}")
        if not LIGHTEST_KG <= self.cap_kg <= HEAVIEST_KG:
            raise ValueError(f"a cap of {self.cap_kg} kg is outside 30 to 250 kg")

    @classmethod
    def by_height(
        cls, *, days_out: int, at: time, height_cm: float, over_height_kg: float
    ) -> WeighIn:
        """The cap of a height-weight class for somebody of this height."""
        cap = round(height_cm - CAP_BY_HEIGHT_CM.value + over_height_kg, 1)
        return cls(days_out=days_out, at=at, cap_kg=cap, over_height_kg=over_height_kg)
