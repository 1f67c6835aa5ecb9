"""Numbers by which the days of a plan are named where nobody has said what they are for."""

from __future__ import annotations

from engine.evidence.deciding import COMMON_PRACTICE, OWN_CHOICE
from engine.evidence.source import Number

LARGE_OF_HABIT = Number(
    name="carbs from which a day is larger than an ordinary one, share of habit", value=1.3,
    unit="1", source=OWN_CHOICE, note="at or over; the smallest published load is well past it",
)  # fmt: skip
LARGE_OF_LARGEST = Number(
    name="share of the largest day from which another belongs to the load", value=0.5, unit="1",
    source=COMMON_PRACTICE, note="at or over; a lighter last day is still one of the load",
)  # fmt: skip
USUAL_OF_HABIT = Number(
    name="carbs from which a day before the load counts as usual, share of habit", value=0.9,
    unit="1", source=OWN_CHOICE, note="at or over; about as exactly as people weigh out",
)  # fmt: skip
