"""How far a figure may be from its owner's habit before it is asked about, all our own choice."""

from __future__ import annotations

from engine.evidence.source import Number
from engine.evidence.units import BELIEVABLE

FULLNESS_FAR = Number(
    "change of fullness since the last morning that is asked about", 7, "of 10",
    BELIEVABLE, "what is less may be a load that works, or one that fails",
)  # fmt: skip
WATER_FAR_OVER = Number(
    "drinking over the day's target that is asked about", 1.9, "1", BELIEVABLE,
    "over what the safety flags hear: those are for what was truly drunk",
)  # fmt: skip
WATER_FAR_UNDER = Number(
    "drinking under the day's target that is asked about", 0.28, "1",
    BELIEVABLE,
)  # fmt: skip
A_GLASS_L = Number(
    "drinking of a whole day, other than none, under which it is asked about: a glass or a can",
    0.5, "L", BELIEVABLE, "such a figure mostly is of one drink; so little in a day is heard once sure",
)  # fmt: skip
WATER_AT_TARGET = Number(
    "distance from the day's water target within which a figure before words is still water",
    0.1, "1", BELIEVABLE, "further off, it may count what the words name",
)  # fmt: skip
CARBS_FAR_OVER = Number(
    "carbohydrate eaten over the figure set that is asked about", 2.5, "1",
    BELIEVABLE,
)  # fmt: skip
CARBS_FAR_UNDER = Number(
    "carbohydrate eaten under the figure set that is asked about", 0.25, "1",
    BELIEVABLE,
)  # fmt: skip
NEAR_A_SLIP = Number(
    "distance to the usual weight at which a corrected slip of the finger is offered",
    0.035, "1", BELIEVABLE,
)  # fmt: skip
LEAST_BMI = Number(
    "least body mass index that is believed of an athlete", 14, "kg/m2",
    BELIEVABLE,
)  # fmt: skip
MOST_BMI = Number(
    "greatest body mass index that is believed of an athlete", 50, "kg/m2",
    BELIEVABLE,
)  # fmt: skip
