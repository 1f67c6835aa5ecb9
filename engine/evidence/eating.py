"""Numbers behind portions of food: how near a target counts as met, and what a portion may be."""

from __future__ import annotations

from engine.evidence.deciding import COMMON_PRACTICE, OWN_CHOICE
from engine.evidence.source import Number, Provenance, Source

USDA_SR26 = Source(
    "usda-sr26",
    "US Department of Agriculture, National Nutrient Database for Standard Reference, release 26 "
    "(public domain; carbohydrate by difference includes fibre)",
    Provenance.SEEN,
)
SALT_TO_SODIUM = Source(
    "eu-1169-2011-salt",
    "Regulation (EU) No 1169/2011, Annex I: salt is sodium times 2.5; carbohydrate on EU labels is "
    "without fibre",
    Provenance.SEEN,
)
US_LABEL = Source(
    "us-label-carbohydrate",
    "US labels (21 CFR 101.9, from memory): total carbohydrate by difference, fibre included; sodium "
    "in mg a serving",
    Provenance.MEMORY,
)

SALT_PER_SODIUM = Number(name="salt per sodium", value=2.5, unit="g/g", source=SALT_TO_SODIUM)
CARBS_MET_G = Number(name="carbs count as met within", value=5, unit="g", source=OWN_CHOICE)
PROTEIN_MET_G = Number(name="protein counts as met within", value=5, unit="g", source=OWN_CHOICE)
FAT_MET_G = Number(name="fat counts as met within", value=3, unit="g", source=OWN_CHOICE)
SODIUM_ROOM_SHARE = Number(
    name="sodium of the day around its target", value=0.25, unit="1", source=OWN_CHOICE,
    note="as in the review of plans",
)  # fmt: skip
MOST_IN_A_MEAL_G = Number(
    name="most of one food in a meal", value=400, unit="g", source=COMMON_PRACTICE
)
MOST_KCAL_IN_A_MEAL = Number(
    name="most of one food in a meal, by energy", value=800, unit="kcal", source=COMMON_PRACTICE
)
LABEL_ENERGY_SHARE = Number(
    name="how far a label's energy may lie from its own macros", value=0.25, unit="1",
    source=OWN_CHOICE, note="polyols, alcohol and rounding are within it; a slip is not",
)  # fmt: skip
LABEL_ENERGY_KCAL = Number(
    name="difference under which a label's energy is not questioned", value=25,
    unit="kcal per 100 g", source=OWN_CHOICE,
)  # fmt: skip
