"""Food energy from macronutrients."""

from __future__ import annotations

from engine.evidence.safety import (
    KCAL_PER_G_CARB,
    KCAL_PER_G_FAT,
    KCAL_PER_G_FIBRE,
    KCAL_PER_G_PROTEIN,
)


def energy_kcal(carb_g: float, protein_g: float, fat_g: float, fibre_g: float = 0) -> float:
    """Energy in kcal by EU 1169/2011 Annex XIV; carbohydrate is without fibre, as on EU labels."""
    return (
        carb_g * float(KCAL_PER_G_CARB)
        + protein_g * float(KCAL_PER_G_PROTEIN)
        + fat_g * float(KCAL_PER_G_FAT)
        + fibre_g * float(KCAL_PER_G_FIBRE)
    )
