"""Composition of 49 common foods, per 100 g as eaten.

Source: USDA National Nutrient Database for Standard Reference, release 26 (file ABBREV, public
domain); the first figure is its NDB number. Carbohydrate is "by difference" as there: it includes
the fibre. Energy is the database's own, by food-specific factors, so that 4/4/9 comes near it and
not upon it (rice 126 against 130, honey 331 against 304).

Portions are ours: steps that people weigh out, or pieces of an ordinary size (common practice).
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple


class Row(NamedTuple):
    """One food of the table: grams, but for kcal and mg; `step_g` is the smallest portion served."""

    number: str
    name: str
    kcal: float
    protein_g: float
    fat_g: float
    carb_by_difference_g: float
    fibre_g: float
    sodium_mg: float
    step_g: float
    piece: str = ""


# fmt: off
TABLE: tuple[Row, ...] = (
    Row("20045", "White rice, cooked", 130, 2.69, 0.28, 28.17, 0.4, 1, 25),
    Row("20445", "White rice, cooked, unenriched", 130, 2.69, 0.28, 28.17, 0.4, 1, 25),
    Row("20345", "White rice, cooked with salt", 130, 2.69, 0.28, 28.17, 0.4, 382, 25),
    Row("19816", "Rice cakes, unsalted", 387, 8.2, 2.8, 81.5, 4.2, 26, 9, "cake"),
    Row("19051", "Rice cakes, salted", 387, 8.2, 2.8, 81.5, 4.2, 326, 9, "cake"),
    Row("08100", "Cream of rice, dry", 370, 6.3, 0.5, 82.4, 0.7, 6, 10),
    Row("08101", "Cream of rice, cooked in water", 52, 0.9, 0.1, 11.4, 0.1, 1, 50),
    Row("08120", "Oats, dry", 379, 13.15, 6.52, 67.7, 10.1, 6, 10),
    Row("08121", "Oats, cooked in water", 71, 2.54, 1.52, 12, 1.7, 4, 50),
    Row("19297", "Jam", 278, 0.37, 0.07, 68.86, 1.1, 32, 10),
    Row("19296", "Honey", 304, 0.3, 0, 82.4, 0.2, 4, 5),
    Row("18069", "White bread", 265, 9.15, 3.19, 49.06, 2.7, 491, 25, "slice"),
    Row("11367", "Potatoes, boiled, no skin", 86, 1.71, 0.1, 20.01, 1.8, 5, 25),
    Row("11508", "Sweet potato, baked in skin", 90, 2.01, 0.15, 20.71, 3.3, 36, 25),
    Row("11510", "Sweet potato, boiled, no skin", 76, 1.37, 0.14, 17.72, 2.5, 27, 25),
    Row("09040", "Banana", 89, 1.09, 0.33, 22.84, 2.6, 1, 59, "half banana"),
    Row("19335", "Sugar", 387, 0, 0, 99.98, 0, 1, 5),
    Row("19353", "Maple syrup", 260, 0.04, 0.06, 67.04, 0, 12, 10),
    Row("05064", "Chicken breast, roasted", 165, 31.02, 3.57, 0, 0, 74, 25),
    Row("01124", "Egg white, weighed raw", 52, 10.9, 0.17, 0.73, 0, 166, 33, "egg white"),
    Row("15016", "Cod, baked or grilled", 105, 22.83, 0.86, 0, 0, 78, 25),
    Row("15262", "Tilapia, baked or grilled", 128, 26.15, 2.65, 0, 0, 56, 25),
    Row("15034", "Haddock, baked or grilled", 90, 19.99, 0.55, 0, 0, 261, 25),
    Row("23558", "Ground beef, 95 % lean, grilled", 171, 26.29, 6.55, 0, 0, 65, 25),
    Row("13418", "Beef round roast, lean", 163, 29.85, 3.9, 0, 0, 67, 25),
    Row("15237", "Salmon, farmed, baked or grilled", 206, 22.1, 12.35, 0, 0, 61, 25),
    Row("15209", "Salmon, wild, baked or grilled", 182, 25.44, 8.13, 0, 0, 56, 25),
    Row("04053", "Olive oil", 884, 0, 100, 0, 0, 2, 5),
    Row("16398", "Peanut butter, unsalted", 588, 25.09, 50.39, 19.56, 6, 17, 5),
    Row("16098", "Peanut butter, salted", 588, 25.09, 50.39, 19.56, 6, 459, 5),
    Row("12061", "Almonds", 579, 21.15, 49.93, 21.55, 12.5, 1, 5),
    Row("11457", "Spinach, raw", 23, 2.86, 0.39, 3.63, 2.2, 79, 25),
    Row("11091", "Broccoli, boiled", 35, 2.38, 0.41, 7.18, 3.3, 41, 25),
    Row("11090", "Broccoli, raw", 34, 2.82, 0.37, 6.64, 2.6, 33, 25),
    Row("11012", "Asparagus, boiled", 22, 2.4, 0.22, 4.11, 2, 14, 25),
    Row("01256", "Greek yogurt, nonfat", 59, 10.19, 0.39, 3.6, 0, 36, 25),
    Row("09087", "Dates, deglet noor", 282, 2.45, 0.39, 75.03, 8, 2, 7, "date"),
    Row("09298", "Raisins", 299, 3.07, 0.46, 79.18, 3.7, 11, 10),
    Row("19108", "Jelly beans", 375, 0, 0.05, 93.55, 0.2, 50, 10),
    Row("19106", "Gumdrops", 396, 0, 0, 98.9, 0.1, 44, 10),
    Row("09206", "Orange juice", 45, 0.7, 0.2, 10.4, 0.2, 1, 50),
    Row("09050", "Blueberries", 57, 0.74, 0.33, 14.49, 2.4, 1, 25),
    Row("09003", "Apple, with skin", 52, 0.26, 0.17, 13.81, 2.4, 1, 91, "half apple"),
    Row("09132", "Grapes", 69, 0.72, 0.16, 18.1, 0.9, 2, 25),
    Row("09037", "Avocado", 160, 2, 14.66, 8.53, 6.7, 7, 25),
    Row("19047", "Pretzels, salted", 384, 9.95, 3.47, 79.97, 3.3, 1150, 10),
    Row("02047", "Table salt", 0, 0, 0, 0, 0, 38758, 0.5),
    Row("05711", "Turkey breast, roasted", 136, 29.51, 1.97, 0, 0, 114, 25),
    Row("11205", "Cucumber, with peel", 15, 0.65, 0.11, 3.63, 0.5, 2, 25),
)
# fmt: on

# What a cooked food weighs before it is cooked, for the shop: grams raw or dry a gram as eaten.
#
# What cooking takes or gives is water and some fat, so the carbohydrate (of what swells) or the protein
# (of what shrinks) of the cooked portion was in the raw one too: the share is one over the other, both
# of the same database. Figures of the cooked foods, and of dry oats and cream of rice, are those of the
# table. The raw ones of rice, meat and fish were put down from memory and not looked up again; they err
# by a few per cent, which a shop's packs do as well.

_OF = {row.number: row for row in TABLE}
#: By NDB number of the cooked food: carbohydrate of 100 g dry.
_DRY_CARB_G = {"20045": 79.95, "20445": 79.95, "20345": 79.95, "08101": 82.4, "08121": 67.7}
#: The same: protein of 100 g raw.
_RAW_PROTEIN_G = {
    "05064": 22.5, "15016": 17.81, "15262": 20.08, "15034": 16.32, "23558": 21.41,
    "15237": 20.42, "15209": 19.84,
}  # fmt: skip

RAW_PER_COOKED: Mapping[str, float] = {
    **{number: _OF[number].carb_by_difference_g / dry for number, dry in _DRY_CARB_G.items()},
    **{number: _OF[number].protein_g / raw for number, raw in _RAW_PROTEIN_G.items()},
}
DRY = frozenset(_DRY_CARB_G)  # sold dry; all others raw
STEP_G = 5  # as finely as a kitchen scale is read


def raw_g(number: str, cooked_g: float) -> float | None:
    """What to buy for so much as eaten (g, in steps of 5, up); None for what is bought as it is."""
    share = RAW_PER_COOKED.get(number)
    if share is None:
        return None
    return float(STEP_G * -(-cooked_g * share // STEP_G))
