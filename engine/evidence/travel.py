"""Numbers for a flight across time zones before an event."""

from __future__ import annotations

from engine.evidence.deciding import COMMON_PRACTICE, OWN_CHOICE
from engine.evidence.source import Number, Provenance, Source

JET_LAG = Source(
    "jet-lag-rates",
    "The body clock moves by about 1 h a day towards the east and 1.5 h towards the west (reviews of "
    "jet lag, such as Waterhouse et al. 2007, Lancet 369:1117-1129)",
    Provenance.MEMORY,
)
EAST_H_A_DAY = Number(name="body clock eastwards", value=1.0, unit="h/day", source=JET_LAG)
WEST_H_A_DAY = Number(name="body clock westwards", value=1.5, unit="h/day", source=JET_LAG)
SHIFT_WORTH_H = Number(
    name="shift from which it is worth beginning at home", value=3, unit="h",
    source=COMMON_PRACTICE,
)  # fmt: skip
SHIFT_AT_HOME_DAYS = Number(
    name="days on which sleep and meals are moved at home beforehand, at most", value=3,
    unit="days", source=COMMON_PRACTICE,
)  # fmt: skip
MEAL_EVERY_MIN = Number(
    name="meals of the day of travel, apart", value=180, unit="min", source=COMMON_PRACTICE
)
BED_AFTER_WAKE_H = Number(
    name="bed after the usual waking", value=16, unit="h", source=COMMON_PRACTICE
)
NIGHT_H = Number(name="a night's sleep", value=8, unit="h", source=COMMON_PRACTICE)
FIRST_MEAL_MIN = Number(
    name="first meal after waking", value=30, unit="min", source=COMMON_PRACTICE
)
UP_BEFORE_MIN = Number(name="up before leaving, at least", value=60, unit="min", source=OWN_CHOICE)
EARLY_MEAL_MIN = Number(
    name="before the usual waking, no earlier breakfast than by", value=180, unit="min",
    source=OWN_CHOICE, note="whoever leaves in the middle of the night sleeps on instead",
)  # fmt: skip
LONGEST_WITHOUT_MIN = Number(
    name="longest without food on the way while nobody can sleep yet", value=360, unit="min",
    source=OWN_CHOICE, note="where it is night by the clocks away and day by those at home",
)  # fmt: skip
NO_SLEEP_YET_H = Number(
    name="for so long after getting up nobody can sleep", value=12, unit="h", source=OWN_CHOICE
)
LAST_MEAL_BEFORE_BED_MIN = Number(
    name="last meal before bed, at least", value=60, unit="min", source=OWN_CHOICE
)
