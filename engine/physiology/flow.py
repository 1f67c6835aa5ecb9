"""The state of the body and how fast each part of it changes."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum

import numpy as np

from engine.evidence import physiology as known
from engine.physiology.body import Body, Floats, Quantity
from engine.physiology.intake import Day

HOURS_A_DAY = 24.0


class Row(IntEnum):
    """Rows of the state: stores in g, water in L, gut bulk and tissue in kg."""

    MUSCLE = 0  # g of glycogen
    LIVER = 1  # g of glycogen
    GUT_CARB = 2  # g eaten and not yet absorbed
    PRIMING = 3  # 0 rested to 1 freshly depleted: how high the ceiling stands
    EXTRACELLULAR = 4  # L against the first morning
    DEFICIT = 5  # L of water short, zero or negative
    GUT_BULK = 6  # kg
    TISSUE = 7  # kg against the first morning
    SPILL = 8  # g of carbohydrate lately taken past what the stores took up
    OXIDISED = 9  # g of carbohydrate burnt since the first morning
    MADE_FAT = 10  # g of carbohydrate turned to fat since the first morning
    NEW_GLUCOSE = 11  # g made from protein, glycerol and lactate since the first morning


@dataclass(frozen=True, slots=True)
class Moment:
    """How much of the day's intake and work is going on, as multiples of their 24 h rates."""

    eating: float
    working_hours: float  # length of the session if it is on, else 0


def rates(state: Floats, day: Day, now: Moment, person: Body) -> Floats:
    """Change of each row per day."""
    change = np.zeros_like(state)
    _carbohydrate(change, state, day, now, person)
    _work(change, state, day, now, person)
    _water(change, state, day, now, person)
    _tissue(change, day, now, person)
    bulk = float(known.GUT_PER_FIBRE) * day.fibre_g
    change[Row.GUT_BULK] = (bulk - state[Row.GUT_BULK]) / float(known.GUT_TRANSIT)
    return change


def _carbohydrate(change: Floats, state: Floats, day: Day, now: Moment, person: Body) -> None:
    """Glucose absorbed or newly made serves brain and blood cells first, then liver and muscle.

    Muscle burns carbohydrate with a power of its store. What is left over is stored, the less the
    nearer the ceiling; what no store takes is burnt or made fat, and counts as spill.
    """
    muscle, liver, gut_carb = state[Row.MUSCLE], state[Row.LIVER], state[Row.GUT_CARB]
    lean = person.lean_kg
    absorbed = gut_carb * (float(known.ABSORPTION) * HOURS_A_DAY)
    made = float(known.NEW_GLUCOSE) * lean
    liver_fed = liver / (liver + float(known.LIVER_HALF))
    sparing = float(known.KETOSIS_SPARING) * (1 - liver_fed)
    obligate = float(known.OBLIGATE_GLUCOSE) * lean * (1 - sparing)
    spare = np.maximum(absorbed + made - obligate, 0)
    short = np.maximum(obligate - absorbed - made, 0)
    liver_room = np.maximum(1 - liver / person.liver_ceiling_g, 0)
    liver_in = spare * float(known.LIVER_SHARE) * liver_room
    offered = spare - liver_in

    level = np.maximum(person.concentration(muscle), 0)  # a step may end a hair under empty
    burn = _burn(offered, level, state[Row.PRIMING], day, person)
    left = np.maximum(offered - burn, 0)
    fastest = person.muscle_g(person.synthesis) * HOURS_A_DAY
    nearness = (level / person.ceiling(state[Row.PRIMING])) ** float(known.CEILING_STEEPNESS)
    stored = fastest * (1 - np.exp(-left / fastest)) * np.maximum(1 - nearness, 0)
    over = left - stored
    drawn = np.maximum(burn - offered, 0)
    # Nearly empty muscle refills at the liver's cost even without food.
    lacking = np.maximum(1 - level / float(known.LOW_LEVEL), 0)
    lent = lacking * float(known.LOW_REFILL) * lean * liver_fed
    # Glucose past the stores is burnt in place of fat while there is fat burning to replace.
    fat_burning = person.resting_kcal / float(known.CARB_ENERGY) - obligate - burn
    burnt_instead = np.minimum(over, np.maximum(fat_burning, 0))

    change[Row.GUT_CARB] = day.carb_g * now.eating - absorbed
    change[Row.LIVER] = liver_in - short * liver_fed - lent
    change[Row.MUSCLE] = stored + lent - drawn
    change[Row.NEW_GLUCOSE] = made
    change[Row.SPILL] = over - state[Row.SPILL] / float(known.SPILL_KEPT)
    change[Row.MADE_FAT] = over - burnt_instead
    change[Row.OXIDISED] = obligate - short * (1 - liver_fed) + burn + burnt_instead


def _burn(offered: Quantity, level: Quantity, priming: Floats, day: Day, person: Body) -> Floats:
    """Carbohydrate that muscle burns at rest: a part always, a part of what meals offer.

    Less in energy surplus and after depleting work; never more of a meal than the meal.
    """
    surplus = np.clip(day.surplus, float(known.ENERGY_LEAST), float(known.ENERGY_MOST))
    spared = float(known.BURN_ENERGY) * surplus + float(known.BURN_PRIMED) * (
        priming - float(known.PRIMED_RECREATIONAL)
    )
    most = person.burn * person.lean_kg * (level / 100) ** float(known.BURN_POWER)
    most = most * np.exp(-spared)
    from_meals = most * (1 - float(known.BURN_FASTED))
    nothing = 1e-9  # g, against 0 / 0 in an empty muscle
    return np.asarray(most - from_meals + from_meals * offered / (offered + from_meals + nothing))


def _work(change: Floats, state: Floats, day: Day, now: Moment, person: Body) -> None:
    """What a session takes out of the muscle, and how depleting work raises the ceiling."""
    standing = person.standing_priming
    change[Row.PRIMING] = (standing - state[Row.PRIMING]) / float(known.PRIMING_KEPT)
    if now.working_hours == 0:
        return
    a_day = HOURS_A_DAY / now.working_hours
    usable = np.maximum(state[Row.MUSCLE] - person.muscle_g(float(known.WORK_FLOOR)), 0)
    worked = usable * (-np.log(day.work.leaves) * a_day)
    change[Row.MUSCLE] -= worked
    change[Row.OXIDISED] += worked
    if day.work.primes:
        change[Row.PRIMING] += (1 - state[Row.PRIMING]) * (2 * a_day)


def _water(change: Floats, state: Floats, day: Day, now: Moment, person: Body) -> None:
    """Extracellular water and water deficit.

    Water that goes with glycogen comes out of, and goes back to, the extracellular water at once;
    the kidneys then bring that back to what sodium and carbohydrate set, over about a day.
    """
    excretion = float(known.SODIUM_EXCRETION)
    sodium = (day.sodium_mg - float(known.SODIUM_USUAL)) / excretion
    most = float(known.SODIUM_GAIN_MOST)
    from_sodium = np.where(sodium > 0, most * np.tanh(sodium / most), sodium)
    without = np.maximum(1 - day.carb_g / (float(known.KETOSIS_CARB) * person.lean_kg), 0)
    aim = from_sodium - float(known.SODIUM_CARB) / excretion * without
    shifted = person.bound_water / 1000 * (change[Row.MUSCLE] + change[Row.LIVER])

    to_hand = day.water_l * now.eating - dry_loss_l(person)
    deficit = state[Row.DEFICIT]
    made_good = np.minimum(to_hand, -deficit * (HOURS_A_DAY / float(known.REHYDRATION)))
    sweat: Quantity = 0.0
    if now.working_hours > 0:
        sweat = day.work.sweat_l_per_kg * person.body_mass_kg * HOURS_A_DAY / now.working_hours
    change[Row.DEFICIT] = made_good - sweat
    settling = excretion / float(known.SODIUM_OF_WATER)
    kept = (aim - state[Row.EXTRACELLULAR]) * settling
    change[Row.EXTRACELLULAR] = np.minimum(kept, np.maximum(to_hand - made_good, 0)) - shifted


def _tissue(change: Floats, day: Day, now: Moment, person: Body) -> None:
    """Energy that goes neither into expenditure nor into carbohydrate stores changes tissue."""
    session_kcal: Quantity = 0.0
    if now.working_hours > 0:
        a_day = HOURS_A_DAY / now.working_hours
        session_kcal = day.work.kcal_per_kg * person.body_mass_kg * a_day
    carb_energy = float(known.CARB_ENERGY)
    stores = change[Row.MUSCLE] + change[Row.LIVER] + change[Row.GUT_CARB]
    cost = float(known.FAT_SYNTHESIS_COST) * carb_energy * change[Row.MADE_FAT]
    balance = day.energy_kcal * now.eating - day.spent_kcal - session_kcal
    change[Row.TISSUE] = (balance - carb_energy * stores - cost) / float(known.TISSUE_ENERGY)


def dry_loss_l(person: Body) -> Quantity:
    """Water that a day without drinking costs, L: skin, lungs, stool and the least urine."""
    lost = (float(known.INSENSIBLE) + float(known.URINE_LEAST)) * person.body_mass_kg
    return lost - float(known.METABOLIC_WATER) * person.resting_kcal / 1000
