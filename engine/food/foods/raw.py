"""What a cooked food weighs before it is cooked, for the shop: grams raw or dry a gram as eaten.

What cooking takes or gives is water and some fat, so the carbohydrate (of what swells) or the protein
(of what shrinks) of the cooked portion was in the raw one too: the share is one over the other, both
of the USDA National Nutrient Database, release 26. Figures of the cooked foods, and of dry oats and
cream of rice, are those of the table. The raw ones of rice, meat and fish were put down from memory
and not looked up again; they err by a few per cent, which a shop's packs do as well.
"""

from __future__ import annotations

from collections.abc import Mapping

from engine.food.foods.table import TABLE

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
