"""What a person is, as sizes and rates; any of them may be an array over people."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from engine.evidence.body import physiology as known
from engine.values.athlete import Sex

Floats = NDArray[np.float64]
Quantity = float | Floats


class Trained(StrEnum):
    UNTRAINED = "untrained"
    RECREATIONAL = "recreational"
    TRAINED = "trained"


@dataclass(frozen=True, slots=True, kw_only=True)
class Body:
    """What a person is: sizes in kg, rates per day. Any field may be an array over people."""

    body_mass_kg: Quantity
    lean_kg: Quantity
    muscle_kg: Quantity
    ceiling_rested: Quantity  # mmol/kg wet
    ceiling_primed: Quantity  # mmol/kg wet
    standing_priming: Quantity
    synthesis: Quantity  # mmol/kg wet/h
    fast: Quantity  # by how much that is faster in empty muscle, as a share of it
    oxidation: Quantity  # g/kg FFM/d at 100 mmol/kg
    activity: Quantity  # g/kg FFM/d burnt in posing, walking and standing about
    unseen: Quantity  # g/kg FFM/d past the stores that never shows
    usual_muscle: Quantity  # mmol/kg wet
    bound_water: Quantity  # g/g
    usual_water_l: Quantity

    def muscle_g(self, concentration: Quantity) -> Quantity:
        """Whole-body muscle glycogen in g at a concentration in mmol/kg wet weight."""
        return concentration * self.muscle_kg * float(known.GLYCOGEN_MOLAR)

    def concentration(self, muscle_g: Quantity) -> Quantity:
        """Concentration in mmol/kg wet weight at a whole-body muscle glycogen in g."""
        return muscle_g / (self.muscle_kg * float(known.GLYCOGEN_MOLAR))

    def ceiling(self, priming: Quantity) -> Quantity:
        """Muscle glycogen in mmol/kg wet weight at which storing ends."""
        return self.ceiling_rested + priming * (self.ceiling_primed - self.ceiling_rested)

    @property
    def liver_ceiling_g(self) -> Quantity:
        return self.lean_kg * float(known.LIVER_OF_LEAN) * float(known.LIVER_CEILING)

    @property
    def resting_kcal(self) -> Quantity:
        """Expenditure of a day without exercise, kcal."""
        rest = float(known.REST_FIXED) + float(known.REST_PER_LEAN) * self.lean_kg
        return rest * float(known.DAILY_ACTIVITY)

    @property
    def usual_fibre_g(self) -> Quantity:
        grams = float(known.FIBRE_USUAL_ENERGY) * self.resting_kcal
        return np.minimum(grams, float(known.FIBRE_MOST))


def body(
    *,
    sex: Sex,
    body_mass_kg: Quantity,
    body_fat_percent: Quantity | None = None,
    trained: Trained = Trained.RECREATIONAL,
) -> Body:
    """The typical person of that sex, size and training status."""
    male = sex is Sex.MALE
    if body_fat_percent is None:
        body_fat_percent = float(known.BODY_FAT_MALE if male else known.BODY_FAT_FEMALE)
    lean = body_mass_kg * (1 - body_fat_percent / 100)
    share = known.MUSCLE_OF_LEAN_MALE if male else known.MUSCLE_OF_LEAN_FEMALE
    priming, synthesis, fast, usual = {
        Trained.UNTRAINED: (
            known.PRIMED_UNTRAINED, known.SYNTHESIS_UNTRAINED,
            known.FAST_OTHERS, known.USUAL_UNTRAINED,
        ),
        Trained.RECREATIONAL: (
            known.PRIMED_RECREATIONAL, known.SYNTHESIS_RECREATIONAL,
            known.FAST_OTHERS, known.USUAL_RECREATIONAL,
        ),
        Trained.TRAINED: (
            known.PRIMED_TRAINED, known.SYNTHESIS_TRAINED,
            known.FAST_TRAINED, known.USUAL_TRAINED,
        ),
    }[trained]  # fmt: skip
    return Body(
        body_mass_kg=body_mass_kg,
        lean_kg=lean,
        muscle_kg=lean * float(share),
        ceiling_rested=float(known.CEILING_RESTED),
        ceiling_primed=float(known.CEILING_PRIMED),
        standing_priming=float(priming),
        synthesis=float(synthesis),
        fast=float(fast),
        oxidation=float(known.MUSCLE_OXIDATION),
        activity=0.0,  # studies have their subjects rest
        unseen=float(known.SPILL_UNSEEN),
        usual_muscle=float(usual),
        bound_water=float(known.BOUND_WATER),
        usual_water_l=float(known.WATER_USUAL_MALE if male else known.WATER_USUAL_FEMALE),
    )
