"""Numbers by which a week that is over is read: our own choices, and said to be so."""

from __future__ import annotations

from engine.evidence.deciding import OWN_CHOICE
from engine.evidence.source import Number

EATEN_SHORT_SHARE = Number(
    "share of what was set under which the load was not eaten", 0.9, "1",
    OWN_CHOICE, "what people write down of a day is seldom nearer than a tenth",
)  # fmt: skip
EATEN_OVER_SHARE = Number(
    "share of what was set over which more than the load was eaten", 1.1, "1",
    OWN_CHOICE,
)  # fmt: skip
EATEN_KNOWN_DAYS = Number(
    "load days on which the carbs eaten have to be known to speak of them", 2,
    "days", OWN_CHOICE,
)  # fmt: skip
LOAD_MOVED_SHARE = Number(
    "by how much the mornings have to have moved the load to plan it otherwise", 0.1,
    "1", OWN_CHOICE,
)  # fmt: skip
MORNINGS_MISSED = Number(
    "mornings without numbers from which a week teaches little", 2, "mornings",
    OWN_CHOICE,
)  # fmt: skip
