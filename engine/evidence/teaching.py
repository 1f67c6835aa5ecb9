"""What a trial is weighed by before it is run: our own choices."""

from __future__ import annotations

from datetime import date

from engine.evidence.learning import OWN_LEARNING
from engine.evidence.source import Number

STEP = Number(
    name="steps between the loads that a trial may have", value=0.5, unit="g/kg a load day",
    source=OWN_LEARNING,
)  # fmt: skip
SPILL_AT_MOST = Number(
    name="most chance of spilling over at which a trial's load is put over the plan's", value=0.5,
    unit="1", source=OWN_LEARNING, note="a trial may miss, but not be run to miss",
)  # fmt: skip
ALIKE = Number(
    name="difference in what two trials teach that counts as none", value=0.02, unit="1",
    source=OWN_LEARNING,
)  # fmt: skip
WORTH_SAYING = Number(
    name="least that the edges get narrower for a trial's load to be suggested", value=0.05, unit="1",
    source=OWN_LEARNING,
)  # fmt: skip
#: Fixes the chance where no week lies behind.
FIRST_DAY = date(2026, 1, 1)
