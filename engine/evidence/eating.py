"""Numbers behind portions of food: how near a target counts as met, and what a portion may be."""

from __future__ import annotations

from engine.evidence.deciding import COMMON_PRACTICE, OWN_CHOICE
from engine.evidence.source import Number, from_memory, seen

USDA_SR26 = seen(
    "usda-sr26",
    "US Department of Agriculture, National Nutrient Database for Standard Reference, release 26 "
    "(public domain; carbohydrate by difference includes fibre)",
)
SALT_TO_SODIUM = seen(
    "eu-1169-2011-salt",
    "Regulation (EU) No 1169/2011, Annex I: salt is sodium times 2.5; carbohydrate on EU labels is "
    "without fibre",
)
US_LABEL = from_memory(
    "us-label-carbohydrate",
    "US labels (21 CFR 101.9): total carbohydrate by difference, fibre included; sodium "
    "in mg a serving",
)

THERMOCHEMICAL_CALORIE = from_memory(
    "thermochemical-calorie",
    "The thermochemical calorie is 4.184 J by definition (National Bureau of Standards)",
)

KJ_PER_KCAL = Number("kilojoules in a kilocalorie", 4.184, "kJ/kcal", THERMOCHEMICAL_CALORIE)
SALT_PER_SODIUM = Number("salt per sodium", 2.5, "g/g", SALT_TO_SODIUM)
CARBS_MET_G = Number("carbs count as met within", 5, "g", OWN_CHOICE)
PROTEIN_MET_G = Number("protein counts as met within", 5, "g", OWN_CHOICE)
FAT_MET_G = Number("fat counts as met within", 3, "g", OWN_CHOICE)
SODIUM_ROOM_SHARE = Number(
    "sodium of the day around its target", 0.25, "1", OWN_CHOICE,
    "as in the review of plans",
)  # fmt: skip
SALTS_FROM_MG = Number(
    "sodium from which a food is there to salt with", 5000, "mg per 100 g",
    OWN_CHOICE, "salt, soy sauce and stock cubes are over it; what is eaten is under it",
)  # fmt: skip
MOST_IN_A_MEAL_G = Number("most of one food in a meal", 400, "g", COMMON_PRACTICE)
MOST_KCAL_IN_A_MEAL = Number("most of one food in a meal, by energy", 800, "kcal", COMMON_PRACTICE)
COMFORTABLE_IN_A_MEAL_G = Number(
    "one food in each meal that is an ordinary helping", 300, "g",
    COMMON_PRACTICE,
)  # fmt: skip
COMFORTABLE_KCAL_IN_A_MEAL = Number(
    "one food in each meal that is an ordinary helping, by energy", 350, "kcal",
    COMMON_PRACTICE, "270 g of cooked rice, 210 g of chicken",
)  # fmt: skip
COMFORTABLE_SWEET_KCAL_IN_A_MEAL = Number(
    "the same of what is all sugar, such as honey, jam or gumdrops", 120, "kcal",
    COMMON_PRACTICE, "40 g of honey or of jam, 30 g of gumdrops: beside rice, not for it",
)  # fmt: skip
LABEL_ENERGY_SHARE = Number(
    "how far a label's energy may lie from its own macros", 0.25, "1",
    OWN_CHOICE, "polyols, alcohol and rounding are within it; a slip is not",
)  # fmt: skip
LABEL_ENERGY_KCAL = Number(
    "difference under which a label's energy is not questioned", 25,
    "kcal per 100 g", OWN_CHOICE,
)  # fmt: skip
