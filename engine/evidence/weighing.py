"""Numbers behind what is likely on the scale at a weigh-in, and what may honestly move it."""

from __future__ import annotations

from engine.evidence.deciding import COMMON_PRACTICE, FOO_2022, OWN_CHOICE
from engine.evidence.source import Number, Provenance, Source

CAP_BY_HEIGHT_CM = Number(
    name="body height less than which a height-weight cap counts its kg from", value=100, unit="cm",
    source=COMMON_PRACTICE, note="height in cm less 100, plus the kg that the federation allows",
)  # fmt: skip
#: What is said of fat loss a week is from memory of the review; so it stands in no message.
HELMS_2014 = Source(
    "helms-2014",
    "Helms et al. 2014, J Int Soc Sports Nutr 11:20: 0.5 to 1 % of body mass a week in preparation",
    Provenance.MEMORY,
)
DAY_RISE_SHARE = Number(
    name="rise of body mass from the morning's weighing to the evening's, share of it", value=0.012,
    unit="1", source=OWN_CHOICE,
    note="food and drink of the day, less what has left by then; clothes come on top",
)  # fmt: skip
DAY_RISE_HOURS = Number(name="hours over which it rises", value=14, unit="h", source=OWN_CHOICE)
DAY_RISE_SPREAD = Number(
    name="scatter of that rise, share of itself", value=0.5, unit="1", source=OWN_CHOICE
)
MORNING_HOUR = Number(
    name="hour of the morning's weighing", value=7, unit="o'clock", source=OWN_CHOICE
)
FIBRE_LIGHTER_KG = Number(
    name="body mass that four days of low fibre take off", value=0.4, unit="kg", source=FOO_2022,
    note="30 to under 10 g a day; SD between people 0.77 kg",
)  # fmt: skip
FIBRE_DAYS = Number(name="days that it takes", value=4, unit="days", source=FOO_2022)
FIBRE_FROM_G = Number(
    name="habitual fibre from which there is something to take off", value=20, unit="g/day",
    source=FOO_2022,
)  # fmt: skip
IN_DOUBT_FROM = Number(
    name="chance of being over the cap from which the coach is told early", value=0.2, unit="1",
    source=OWN_CHOICE,
)  # fmt: skip
MISSED_FROM = Number(
    name="chance of being over the cap from which it is likely missed", value=0.5, unit="1",
    source=OWN_CHOICE,
)  # fmt: skip
