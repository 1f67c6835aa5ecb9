"""The last look before the stage, and the last small choice: a top-up or not.

The same thought as the morning's rules, in the small: only somebody flat and sharp gains by more
carbs now; whoever is full, softening or unsettled can only lose by it.
"""

from __future__ import annotations

from dataclasses import dataclass

from engine.evidence import deciding as e
from engine.values.checkin import Gut
from engine.values.limits import Limits


@dataclass(frozen=True, slots=True)
class LastChoice:
    """`grams` of quick carbs, 0 for none; `rule` says why; `needs_sign_off`: the coach's word first."""

    rule: str
    grams: float
    needs_sign_off: bool = False
    bound: str | None = None


def last_choice(fullness: int, sharpness: int, gut: Gut, limits: Limits) -> LastChoice:
    """A top-up of one step at most, inside what a day may be changed by.

    Raises ValueError for scores outside their scales (1 to 10 and 1 to 5).
    """
    if not 1 <= fullness <= 10 or not 1 <= sharpness <= 5:
        raise ValueError(f"fullness {fullness} or sharpness {sharpness} is outside its scale")
    if gut is not Gut.FINE:
        return LastChoice("gut-unsettled", 0)
    if sharpness <= e.BLURRED_TO.value:
        return LastChoice("blurred", 0)
    if fullness >= e.FULL_FROM.value:
        return LastChoice("full", 0)
    if sharpness < e.CRISP_FROM.value or fullness > e.FULLNESS_LOADED.value - e.FLAT_BY.value:
        return LastChoice("good-enough", 0)
    grams = min(limits.step_g, limits.change_per_day_g)
    if grams <= 0:
        return LastChoice("flat-no-room", 0, bound="change_per_day_g")
    return LastChoice(
        "flat-and-sharp", grams, needs_sign_off=grams > limits.apply_without_asking_g,
        bound="change_per_day_g" if grams < limits.step_g else None,
    )  # fmt: skip
