"""How far a figure may be from its owner's habit before it is asked about, all our own choice."""

from __future__ import annotations

from engine.evidence.source import Number
from engine.evidence.units import BELIEVABLE

FULLNESS_FAR = Number(
    name="change of fullness since the last morning that is asked about", value=7, unit="of 10",
    source=BELIEVABLE, note="what is less may be a load that works, or one that fails",
)  # fmt: skip
WATER_FAR_OVER = Number(
    name="drinking over the day's target that is asked about", value=1.9, unit="1", source=BELIEVABLE,
    note="over what the safety flags hear: those are for what was truly drunk",
)  # fmt: skip
WATER_FAR_UNDER = Number(
    name="drinking under the day's target that is asked about", value=0.28, unit="1",
    source=BELIEVABLE,
)  # fmt: skip
WATER_AT_TARGET = Number(
    name="distance from the day's water target within which a figure before words is still water",
    value=0.1, unit="1", source=BELIEVABLE, note="further off, it may count what the words name",
)  # fmt: skip
CARBS_FAR_OVER = Number(
    name="carbohydrate eaten over the figure set that is asked about", value=2.5, unit="1",
    source=BELIEVABLE,
)  # fmt: skip
CARBS_FAR_UNDER = Number(
    name="carbohydrate eaten under the figure set that is asked about", value=0.25, unit="1",
    source=BELIEVABLE,
)  # fmt: skip
NEAR_A_SLIP = Number(
    name="distance to the usual weight at which a corrected slip of the finger is offered",
    value=0.035, unit="1", source=BELIEVABLE,
)  # fmt: skip
LEAST_BMI = Number(
    name="least body mass index that is believed of an athlete", value=14, unit="kg/m2",
    source=BELIEVABLE,
)  # fmt: skip
MOST_BMI = Number(
    name="greatest body mass index that is believed of an athlete", value=50, unit="kg/m2",
    source=BELIEVABLE,
)  # fmt: skip
