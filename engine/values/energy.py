"""Food energy from macronutrients."""

from __future__ import annotations

from engine.evidence.safety import (
    KCAL_PER_G_CARB,
    KCAL_PER_G_FAT,
    KCAL_PER_G_FIBRE,
    KCAL_PER_G_PROTEIN,
)


def energy_kcal(carb_g: float, protein_g: float, fat_g: float, fibre_g: float | None = 0) -> float:
    """Energy in kcal by EU 1169/2011 Annex XIV; carbohydrate is without fibre, as on EU labels.

    Fibre that is not counted adds nothing: where too little energy is what is looked for, that is
    the careful side, and 25 g of it are 50 kcal.
    """
    return (
        carb_g * float(KCAL_PER_G_CARB)
        + protein_g * float(KCAL_PER_G_PROTEIN)
        + fat_g * float(KCAL_PER_G_FAT)
        + (fibre_g or 0) * float(KCAL_PER_G_FIBRE)
    )
