"""How an athlete looked on the day, in one word; and what the judges of an event look for."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from engine.evidence import deciding as e

FULLEST, SHARPEST = 10, 5


class Look(StrEnum):
    FLAT = "flat"
    FULL = "full"
    SPILLED = "spilled over"


@dataclass(frozen=True, slots=True, kw_only=True)
class TargetLook:
    """The look that an event asks for: ranges of fullness (1-10) and sharpness (1-5), ends included.

    `words` are the coach's own. Some divisions want it softer or fuller than others; dryness is not
    asked for everywhere (common practice).
    """

    fullness_low: int
    fullness_high: int
    sharpness_low: int
    sharpness_high: int
    words: str = ""

    def __post_init__(self) -> None:
        for name, low, high, most in (
            ("fullness", self.fullness_low, self.fullness_high, FULLEST),
            ("sharpness", self.sharpness_low, self.sharpness_high, SHARPEST),
        ):
            if not 1 <= low <= high <= most:
                raise ValueError(f"{name} {low} to {high} is no range from 1 to {most}")

    @property
    def fullness(self) -> float:
        """The middle of what is asked for, which the load leads to."""
        return (self.fullness_low + self.fullness_high) / 2

    @property
    def blurred_to(self) -> int:
        """The sharpness up to which lines are blurred for this event; 0 where none is.

        What is blurred anyhow stays so under a softer look, unless that look asks for it.
        """
        apart = int(e.CRISP_FROM.value - e.BLURRED_TO.value)
        anyhow = min(int(e.BLURRED_TO.value), self.sharpness_low - 1)
        return max(self.sharpness_low - apart, anyhow)


#: What was meant wherever nothing is said: full, and as sharp as it comes.
USUAL_LOOK = TargetLook(
    fullness_low=int(e.FULL_FROM.value),
    fullness_high=FULLEST,
    sharpness_low=int(e.CRISP_FROM.value),
    sharpness_high=SHARPEST,
)
