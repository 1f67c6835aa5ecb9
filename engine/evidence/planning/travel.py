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
EAST_H_A_DAY = Number("body clock eastwards", 1.0, "h/day", JET_LAG)
WEST_H_A_DAY = Number("body clock westwards", 1.5, "h/day", JET_LAG)
SHIFT_WORTH_H = Number(
    "shift from which it is worth beginning at home", 3, "h",
    COMMON_PRACTICE,
)  # fmt: skip
SHIFT_AT_HOME_DAYS = Number(
    "days on which sleep and meals are moved at home beforehand, at most", 3,
    "days", COMMON_PRACTICE,
)  # fmt: skip
MEAL_EVERY_MIN = Number("meals of the day of travel, apart", 180, "min", COMMON_PRACTICE)
BED_AFTER_WAKE_H = Number("bed after the usual waking", 16, "h", COMMON_PRACTICE)
NIGHT_H = Number("a night's sleep", 8, "h", COMMON_PRACTICE)
FIRST_MEAL_MIN = Number("first meal after waking", 30, "min", COMMON_PRACTICE)
UP_BEFORE_MIN = Number("up before leaving, at least", 60, "min", OWN_CHOICE)
EARLY_MEAL_MIN = Number(
    "before the usual waking, no earlier breakfast than by", 180, "min",
    OWN_CHOICE, "whoever leaves in the middle of the night sleeps on instead",
)  # fmt: skip
LONGEST_WITHOUT_MIN = Number(
    "longest without food on the way while nobody can sleep yet", 360, "min",
    OWN_CHOICE, "where it is night by the clocks away and day by those at home",
)  # fmt: skip
NO_SLEEP_YET_H = Number("for so long after getting up nobody can sleep", 12, "h", OWN_CHOICE)
LAST_MEAL_BEFORE_BED_MIN = Number("last meal before bed, at least", 60, "min", OWN_CHOICE)
