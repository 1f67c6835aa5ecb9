"""Numbers by which a week that is over is read: our own choices, and said to be so."""

from __future__ import annotations

from engine.evidence.deciding import OWN_CHOICE
from engine.evidence.source import Number

EATEN_SHORT_SHARE = Number(
    name="share of what was set under which the load was not eaten", value=0.9, unit="1",
    source=OWN_CHOICE, note="what people write down of a day is seldom nearer than a tenth",
)  # fmt: skip
EATEN_OVER_SHARE = Number(
    name="share of what was set over which more than the load was eaten", value=1.1, unit="1",
    source=OWN_CHOICE,
)  # fmt: skip
EATEN_KNOWN_DAYS = Number(
    name="load days on which the carbs eaten have to be known to speak of them", value=2,
    unit="days", source=OWN_CHOICE,
)  # fmt: skip
LOAD_MOVED_SHARE = Number(
    name="by how much the mornings have to have moved the load to plan it otherwise", value=0.1,
    unit="1", source=OWN_CHOICE,
)  # fmt: skip
MORNINGS_MISSED = Number(
    name="mornings without numbers from which a week teaches little", value=2, unit="mornings",
    source=OWN_CHOICE,
)  # fmt: skip
