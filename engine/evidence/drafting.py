"""Numbers behind drafted plans. "Habit" is the habitual day; per kg is per kg of body mass."""

from __future__ import annotations

from engine.evidence.deciding import (
    ARETA_2018,
    COMMON_PRACTICE,
    ESCALANTE_2021,
    FOO_2022,
    HOMER_2024,
    OWN_CHOICE,
    ROBERTS_2020,
    SEDLOCK_2008,
)
from engine.evidence.source import Number, Provenance, Source

BURKE_2011_DAILY = Source(
    "burke-2011-by-training",
    "Burke et al. 2011, J Sports Sci 29:S17-27: by how much is trained, 5-7 g/kg a day with about an "
    "hour of exercise a day, 6-10 g/kg with one to three",
    Provenance.MEMORY,
)
BARAKAT_2022 = Source(
    "barakat-2022",
    "Barakat et al. 2022, Sports 10(7):106: one man, carbs low and fat high first, then loaded; he "
    "felt fuller by the day",
    Provenance.SEEN,
)
BUSSAU_2002 = Source(
    "bussau-2002-no-depletion",
    "Bussau et al. 2002, Eur J Appl Physiol 87:290-295: trained men filled up in one day of 10 g/kg "
    "with no depletion before",
    Provenance.MEMORY,
)

# Before the load.
MILD_SHARE = Number(
    name="carbohydrate of a mild depletion day, share of habit", value=0.6, unit="1",
    source=COMMON_PRACTICE,
)  # fmt: skip
DEEP_G_PER_KG = Number(
    name="carbohydrate of a deep depletion day", value=1.0, unit="g/kg/day", source=HOMER_2024,
    note="that the men ate about so much is assumed; Balon 1992 comes to 1.1",
)  # fmt: skip
DEEP_SHARE_MOST = Number(
    name="carbohydrate of a deep depletion day at most, share of habit", value=0.4, unit="1",
    source=OWN_CHOICE, note="so that deep is deeper than mild where habit is low",
)  # fmt: skip

# The load.
LOAD_MEN_G_PER_KG = Number(name="mean load day, men", value=7, unit="g/kg/day", source=ARETA_2018)
LOAD_WOMEN_G_PER_KG = Number(
    name="mean load day, women", value=8.2, unit="g/kg/day", source=SEDLOCK_2008
)
LOAD_MEN_TRAINING_MUCH_G_PER_KG = Number(
    name="mean load day, men who train well over an hour a day", value=8, unit="g/kg/day",
    source=BURKE_2011_DAILY,
)  # fmt: skip
LOAD_WOMEN_TRAINING_MUCH_G_PER_KG = Number(
    name="mean load day, women who train well over an hour a day", value=9, unit="g/kg/day",
    source=BURKE_2011_DAILY,
)  # fmt: skip
LOAD_LEAST_G_PER_KG = Number(
    name="least mean load day that is drafted", value=3, unit="g/kg/day", source=ESCALANTE_2021
)
LOAD_HEAVY = Number(
    name="heavy load day of a sloped load, share of the mean", value=1.2, unit="1",
    source=COMMON_PRACTICE,
)  # fmt: skip
LOAD_LIGHT = Number(
    name="light load day of a sloped load, share of the mean", value=0.8, unit="1",
    source=COMMON_PRACTICE,
)  # fmt: skip
LONG_LOAD_ROOM = Number(
    name="what a load of four or five days stays under its guard rail by, a day", value=0.1,
    unit="g/kg/day", source=OWN_CHOICE, note="the rounding of each day",
)  # fmt: skip
CARB_MOST_G = Number(
    name="most carbohydrate drafted for a day", value=1500, unit="g/day", source=OWN_CHOICE,
    note="the most that a day of a plan holds at all",
)  # fmt: skip
STAGE_G_PER_KG = Number(
    name="carbohydrate of the day itself", value=3, unit="g/kg", source=COMMON_PRACTICE
)

# What goes with them.
PROTEIN_SHARE = Number(
    name="protein of the day itself, share of habit", value=0.8, unit="1", source=COMMON_PRACTICE,
    note="reached in equal steps from the first load day on",
)  # fmt: skip
PROTEIN_LEAST_G_PER_KG = Number(
    name="protein that easing down stops at", value=1.8, unit="g/kg/day", source=ROBERTS_2020
)
FAT_LOW_G_PER_KG = Number(
    name="fat while depleting, at most", value=0.7, unit="g/kg/day", source=COMMON_PRACTICE,
    note="more, up to habit, where energy availability would fall under 30 kcal/kg lean mass",
)  # fmt: skip
FAT_UP_G_PER_KG = Number(
    name="fat that comes back with the load", value=0.1, unit="g/kg/day", source=COMMON_PRACTICE
)
FAT_LOADING_MOST_G_PER_KG = Number(
    name="fat while loading, at most", value=1.0, unit="g/kg/day", source=COMMON_PRACTICE
)
FAT_MOST_G = Number(
    name="fat that a lead-in fat load stops at", value=250, unit="g/day", source=COMMON_PRACTICE
)
FIBRE_G = Number(
    name="fibre from two days out on, at most", value=15, unit="g/day", source=FOO_2022,
    note="Foo went under 10 g; constipation is common in these weeks (de Moraes 2019)",
)  # fmt: skip
FIBRE_FIRST_G = Number(
    name="fibre on the first load day, at most", value=18, unit="g/day", source=FOO_2022,
    note="under the 20 g that count as low here",
)  # fmt: skip
CARDIO_MIN = Number(
    name="cardio a day until four days out", value=20, unit="min", source=COMMON_PRACTICE
)
STEPS = Number(
    name="steps a day until four days out", value=10000, unit="steps", source=COMMON_PRACTICE
)
STEPS_LOADING = Number(
    name="steps a day while loading", value=7000, unit="steps", source=COMMON_PRACTICE
)
STEPS_LAST = Number(
    name="steps the day before and on the day", value=5000, unit="steps", source=COMMON_PRACTICE
)

# Rehearsing it.
TRIAL_FIRST_DAYS = Number(
    name="days before the event from which a trial is of use", value=56, unit="days",
    source=COMMON_PRACTICE,
)  # fmt: skip
TRIAL_LAST_DAYS = Number(
    name="days before the event by which a trial is over", value=14, unit="days",
    source=COMMON_PRACTICE,
)  # fmt: skip
