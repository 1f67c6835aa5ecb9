"""What a trial is weighed by before it is run: our own choices."""

from __future__ import annotations

from datetime import date

from engine.evidence.body.learning import OWN_LEARNING
from engine.evidence.source import Number

STEP = Number(
    "steps between the loads that a trial may have", 0.5, "g/kg a load day",
    OWN_LEARNING,
)  # fmt: skip
SPILL_AT_MOST = Number(
    "most chance of spilling over at which a trial's load is put over the plan's", 0.5,
    "1", OWN_LEARNING, "a trial may miss, but not be run to miss",
)  # fmt: skip
ALIKE = Number(
    "difference in what two trials teach that counts as none", 0.02, "1",
    OWN_LEARNING,
)  # fmt: skip
WORTH_SAYING = Number(
    "least that the edges get narrower for a trial's load to be suggested", 0.05, "1",
    OWN_LEARNING,
)  # fmt: skip
#: Fixes the chance where no week lies behind.
FIRST_DAY = date(2026, 1, 1)
