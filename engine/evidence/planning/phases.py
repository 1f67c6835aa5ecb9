"""Numbers by which the days of a plan are named where nobody has said what they are for."""

from __future__ import annotations

from engine.evidence.deciding import COMMON_PRACTICE, OWN_CHOICE
from engine.evidence.source import Number

LARGE_OF_HABIT = Number(
    "carbs from which a day is larger than an ordinary one, share of habit", 1.3,
    "1", OWN_CHOICE, "at or over; the smallest published load is well past it",
)  # fmt: skip
LARGE_OF_LARGEST = Number(
    "share of the largest day from which another belongs to the load", 0.5, "1",
    COMMON_PRACTICE, "at or over; a lighter last day is still one of the load",
)  # fmt: skip
USUAL_OF_HABIT = Number(
    "carbs from which a day before the load counts as usual, share of habit", 0.9,
    "1", OWN_CHOICE, "at or over; about as exactly as people weigh out",
)  # fmt: skip
