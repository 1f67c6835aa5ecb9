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
    "US labels (21 CFR 101.9): total carbohydrate by difference, fibre included; sodium "
    "in mg a serving",
    Provenance.MEMORY,
)

THERMOCHEMICAL_CALORIE = Source(
    "thermochemical-calorie",
    "The thermochemical calorie is 4.184 J by definition (National Bureau of Standards)",
    Provenance.MEMORY,
)

KJ_PER_KCAL = Number(
    name="kilojoules in a kilocalorie", value=4.184, unit="kJ/kcal", source=THERMOCHEMICAL_CALORIE
)
SALT_PER_SODIUM = Number(name="salt per sodium", value=2.5, unit="g/g", source=SALT_TO_SODIUM)
CARBS_MET_G = Number(name="carbs count as met within", value=5, unit="g", source=OWN_CHOICE)
PROTEIN_MET_G = Number(name="protein counts as met within", value=5, unit="g", source=OWN_CHOICE)
FAT_MET_G = Number(name="fat counts as met within", value=3, unit="g", source=OWN_CHOICE)
SODIUM_ROOM_SHARE = Number(
    name="sodium of the day around its target", value=0.25, unit="1", source=OWN_CHOICE,
    note="as in the review of plans",
)  # fmt: skip
SALTS_FROM_MG = Number(
    name="sodium from which a food is there to salt with", value=5000, unit="mg per 100 g",
    source=OWN_CHOICE, note="salt, soy sauce and stock cubes are over it; what is eaten is under it",
)  # fmt: skip
MOST_IN_A_MEAL_G = Number(
    name="most of one food in a meal", value=400, unit="g", source=COMMON_PRACTICE
)
MOST_KCAL_IN_A_MEAL = Number(
    name="most of one food in a meal, by energy", value=800, unit="kcal", source=COMMON_PRACTICE
)
COMFORTABLE_IN_A_MEAL_G = Number(
    name="one food in each meal that is an ordinary helping", value=300, unit="g",
    source=COMMON_PRACTICE,
)  # fmt: skip
COMFORTABLE_KCAL_IN_A_MEAL = Number(
    name="one food in each meal that is an ordinary helping, by energy", value=350, unit="kcal",
    source=COMMON_PRACTICE, note="270 g of cooked rice, 210 g of chicken",
)  # fmt: skip
COMFORTABLE_SWEET_KCAL_IN_A_MEAL = Number(
    name="the same of what is all sugar, such as honey, jam or gumdrops", value=120, unit="kcal",
    source=COMMON_PRACTICE, note="40 g of honey or of jam, 30 g of gumdrops: beside rice, not for it",
)  # fmt: skip
LABEL_ENERGY_SHARE = Number(
    name="how far a label's energy may lie from its own macros", value=0.25, unit="1",
    source=OWN_CHOICE, note="polyols, alcohol and rounding are within it; a slip is not",
)  # fmt: skip
LABEL_ENERGY_KCAL = Number(
    name="difference under which a label's energy is not questioned", value=25,
    unit="kcal per 100 g", source=OWN_CHOICE,
)  # fmt: skip
