"""Numbers by which a plan is reviewed and a week that is over is read."""

from __future__ import annotations

from engine.evidence.deciding import (
    ARETA_2018,
    COMMON_PRACTICE,
    DE_MORAES_2019,
    FOO_2022,
    HOMER_2024,
    OWN_CHOICE,
    SEDLOCK_2008,
)
from engine.evidence.source import Number, Provenance, source_shown

# Seen is how the paper frames it, not each figure.
ESCALANTE_2021_WATER = source_shown(
    "escalante-2021-water",
    "Escalante et al. 2021, BMC Sports Sci Med Rehabil 13:68: in peak week neither water nor "
    "sodium is to be cut hard, and whatever is done is to be practised",
    Provenance.SEEN,
)
SODIUM_MODELS = source_shown(
    "sodium-and-body-water",
    "Bie 2018, Am J Physiol Regul (doi 10.1152/ajpregu.00363.2017): a lasting 100 mmol (2,300 "
    "mg) a day more holds about 0.9 L of water; Heer 2000, Am J Physiol Renal 278:F585, saw "
    "none. What a swing does to one athlete cannot be foretold",
    Provenance.SEEN,
)
# The handbook is cited from memory.
CALORIE_TOTALS = source_shown(
    "kcal-by-two-conventions",
    "Energy by Annex XIV of Regulation (EU) No 1169/2011 (carbohydrate 4 without fibre, fibre 2, "
    "protein 4, fat 9 kcal/g) or by the general Atwater factors 4/9/4 with fibre counted as "
    "carbohydrate, as US labels do (Merrill & Watt, USDA Handbook 74)",
    Provenance.SEEN,
)
REHEARSAL = source_shown(
    "rehearse-first",
    "Common practice, and Escalante et al. 2021 (BMC Sports Sci Med Rehabil 13:68): run the "
    "week as a trial two to eight weeks before; one earlier outcome says more than any table",
    Provenance.PRACTICE,
)

WATER_CUT_SHARE = Number(
    "share of habit under which water is cut", 0.9, "1",
    ESCALANTE_2021_WATER, "strictly under; a tenth is how exactly people drink (ours)",
)  # fmt: skip
WATER_LOAD_L = Number(
    "water over habit that is a water load", 1.0, "L/day", COMMON_PRACTICE,
    "strictly over",
)  # fmt: skip
SODIUM_SWING_SHARE = Number(
    "departure of sodium from habit that is a swing", 0.25, "1",
    SODIUM_MODELS, "strictly over; the share is our own choice",
)  # fmt: skip
FIBRE_LATE_G = Number(
    "fibre a day from three days out on that is high", 20, "g/day",
    FOO_2022, "strictly over",
)  # fmt: skip
FIBRE_LATE_DAYS = Number("days out from which fibre counts as late", 3, "days out", FOO_2022)
LEGS_LAST_DAY = Number(
    "last day on which legs are trained", 6, "days out", COMMON_PRACTICE,
    "one day later is told, later still has to be answered",
)  # fmt: skip
NEW_STIMULUS_DAYS = Number(
    "days out from which nothing new or hard is trained", 4, "days out",
    COMMON_PRACTICE,
    "sore, swollen muscle; eccentric work also slows refilling (Doyle 1993, from memory)",
)  # fmt: skip
CARDIO_JUMP_MIN = Number(
    "cardio over the most of the days before that is a jump", 20, "min",
    COMMON_PRACTICE, "strictly over, from four days out on",
)  # fmt: skip
LAST_DAY_RATIO = Number(
    "carbs of one of the last two days against the day before that are a jump",
    1.5, "1", DE_MORAES_2019,
    "strictly over; the study shows what a sudden day does to the gut, the ratio is ours",
)  # fmt: skip
LAST_DAY_LEAST_G_PER_KG = Number(
    "rise under which it is no jump", 1.0, "g/kg", OWN_CHOICE,
    "at or under",
)  # fmt: skip
LOAD_THAT_DOES_LITTLE = Number(
    "mean load day under which little is to be expected", 6, "g/kg/day",
    ARETA_2018, "strictly under",
)  # fmt: skip
LOAD_WOMEN_NEED = Number(
    "load day that women have to pass", 8, "g/kg/day", SEDLOCK_2008,
    "the heaviest day at or under it",
)  # fmt: skip
DEEP_DEPLETION_G_PER_KG = Number(
    "carbs before the load under which depletion is deep", 1.25, "g/kg/day",
    HOMER_2024,
    "strictly under; three days of about 1 g/kg (assumed) and one of 9 gained 0.3 % on habit",
)  # fmt: skip
DEEP_DEPLETION_SHARE = Number(
    "share of habit under which it is depletion at all that is deep", 0.5, "1",
    OWN_CHOICE, "strictly under, as well: who habitually eats little is not depleted",
)  # fmt: skip
TOTAL_OFF_SHARE = Number(
    "how far a stated kcal total may lie from its own macros", 0.03, "1",
    CALORIE_TOTALS, "strictly over, by either convention; the share is ours",
)  # fmt: skip


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
