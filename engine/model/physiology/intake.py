"""What a day brings: food, drink, salt and exercise, and how what is not stated is filled in."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from engine.evidence.body import physiology as known
from engine.model.physiology.body import Body, Quantity
from engine.values.plan import Exercise


@dataclass(frozen=True, slots=True, kw_only=True)
class Work:
    """One exercise session a day, at the start of the day."""

    leaves: Quantity  # share of the muscle glycogen above the floor that is left
    hours: float
    kcal_per_kg: float
    sweat_l_per_kg: float
    primes: bool
    also_leaves: Quantity = 1  # the same after steady cardio, which costs everybody much alike

    def times(self, share: float) -> Work:
        """That much of the session: 0 none of it, 1 all."""
        if share == 1:
            return self
        return Work(
            leaves=self.leaves**share,
            hours=self.hours * share,
            kcal_per_kg=self.kcal_per_kg * share,
            sweat_l_per_kg=self.sweat_l_per_kg * share,
            primes=self.primes and share > 0,
            also_leaves=self.also_leaves**share,
        )

    def and_cardio(self, hours: float) -> Work:
        """With steady cardio after it, which is light work."""
        if hours <= 0:
            return self
        cardio = WORK[Exercise.LIGHT].times(hours / float(known.LIGHT_HOURS))
        return Work(
            leaves=self.leaves,
            hours=self.hours + cardio.hours,
            kcal_per_kg=self.kcal_per_kg + cardio.kcal_per_kg,
            sweat_l_per_kg=self.sweat_l_per_kg + cardio.sweat_l_per_kg,
            primes=self.primes,
            also_leaves=self.also_leaves * cardio.leaves,
        )


WORK = {
    Exercise.NONE: Work(leaves=1, hours=0, kcal_per_kg=0, sweat_l_per_kg=0, primes=False),
    Exercise.LIGHT: Work(
        leaves=float(known.LIGHT_LEAVES),
        hours=float(known.LIGHT_HOURS),
        kcal_per_kg=float(known.LIGHT_ENERGY),
        sweat_l_per_kg=float(known.LIGHT_SWEAT),
        primes=False,
    ),
    Exercise.DEPLETING: Work(
        leaves=float(known.DEPLETING_LEAVES),
        hours=float(known.DEPLETING_HOURS),
        kcal_per_kg=float(known.DEPLETING_ENERGY),
        sweat_l_per_kg=float(known.DEPLETING_SWEAT),
        primes=True,
    ),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Intake:
    """What a day brings, as amounts per 24 h; None is "not stated" and filled in by `complete`."""

    carb_g: Quantity
    protein_g: Quantity | None = None
    fat_g: Quantity | None = None
    fibre_g: Quantity | None = None
    sodium_mg: Quantity | None = None
    water_l: Quantity | None = None
    exercise: Exercise = Exercise.NONE
    cardio_h: float = 0.0
    work_done: float = 1.0  # share of session and cardio that was done

    @property
    def work(self) -> Work:
        return WORK[self.exercise].and_cardio(self.cardio_h).times(self.work_done)


@dataclass(frozen=True, slots=True, kw_only=True)
class Day:
    """A day's intake with nothing left open, and what it means in energy."""

    carb_g: Quantity
    fibre_g: Quantity
    sodium_mg: Quantity
    water_l: Quantity
    energy_kcal: Quantity
    work: Work
    spent_kcal: Quantity  # without the work
    surplus: Quantity  # share of the whole expenditure

    def without_session(self) -> Day:
        """Its food alone, where the session was in another part of the day."""
        return replace(self, work=replace(self.work, hours=0.0))


def complete(intake: Intake, person: Body) -> Day:
    """Fill what is not stated: usual protein, and fat up to energy balance.

    Fibre and sodium not stated fall with the energy under the usual, as they come with food;
    water not stated is the usual intake and what the work sweats out, so it is never short.
    """
    work = intake.work
    spent = person.resting_kcal
    session = work.kcal_per_kg * person.body_mass_kg
    protein, fat = intake.protein_g, intake.fat_g
    if protein is None:
        protein = float(known.PROTEIN_USUAL) * person.body_mass_kg
    stated = intake.carb_g * float(known.CARB_ENERGY) + protein * float(known.PROTEIN_ENERGY)
    if fat is None:
        missing = (spent + session - stated) / float(known.FAT_ENERGY)
        fat = np.maximum(missing, float(known.FAT_LEAST) * person.body_mass_kg)
    energy = stated + fat * float(known.FAT_ENERGY)
    fibre = intake.fibre_g
    if fibre is None:
        fibre = np.minimum(float(known.FIBRE_PER_ENERGY) * energy, person.usual_fibre_g)
    water = intake.water_l
    if water is None:
        water = person.usual_water_l + work.sweat_l_per_kg * person.body_mass_kg
    sodium = intake.sodium_mg
    if sodium is None:
        sodium = float(known.SODIUM_USUAL) * np.minimum(
            energy / (spent * float(known.SODIUM_ENERGY)), 1
        )
    return Day(
        carb_g=intake.carb_g,
        fibre_g=fibre,
        sodium_mg=sodium,
        water_l=water,
        energy_kcal=energy,
        work=work,
        spent_kcal=spent,
        surplus=(energy - spent - session) / (spent + session),
    )
