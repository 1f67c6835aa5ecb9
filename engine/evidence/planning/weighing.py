"""Numbers behind what is likely on the scale at a weigh-in, and what may honestly move it."""

from __future__ import annotations

from engine.evidence.deciding import COMMON_PRACTICE, FOO_2022, OWN_CHOICE
from engine.evidence.source import Number, Provenance, Source

CAP_BY_HEIGHT_CM = Number(
    "body height less than which a height-weight cap counts its kg from", 100, "cm",
    COMMON_PRACTICE, "height in cm less 100, plus the kg that the federation allows",
)  # fmt: skip
#: What is said of fat loss a week is from memory of the review; so it stands in no message.
HELMS_2014 = Source(
    "helms-2014",
    "Helms et al. 2014, J Int Soc Sports Nutr 11:20: 0.5 to 1 % of body mass a week in preparation",
    Provenance.MEMORY,
)
DAY_RISE_SHARE = Number(
    "rise of body mass from the morning's weighing to the evening's, share of it", 0.012,
    "1", OWN_CHOICE,
    "food and drink of the day, less what has left by then; clothes come on top",
)  # fmt: skip
DAY_RISE_HOURS = Number("hours over which it rises", 14, "h", OWN_CHOICE)
DAY_RISE_SPREAD = Number("scatter of that rise, share of itself", 0.5, "1", OWN_CHOICE)
MORNING_HOUR = Number("hour of the morning's weighing", 7, "o'clock", OWN_CHOICE)
FIBRE_LIGHTER_KG = Number(
    "body mass that four days of low fibre take off", 0.4, "kg", FOO_2022,
    "30 to under 10 g a day; SD between people 0.77 kg",
)  # fmt: skip
FIBRE_DAYS = Number("days that it takes", 4, "days", FOO_2022)
FIBRE_FROM_G = Number(
    "habitual fibre from which there is something to take off", 20, "g/day",
    FOO_2022,
)  # fmt: skip
IN_DOUBT_FROM = Number(
    "chance of being over the cap from which the coach is told early", 0.2, "1",
    OWN_CHOICE,
)  # fmt: skip
MISSED_FROM = Number(
    "chance of being over the cap from which it is likely missed", 0.5, "1",
    OWN_CHOICE,
)  # fmt: skip
