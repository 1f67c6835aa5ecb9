"""The state of the body and how fast each part of it changes."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum

import numpy as np

from engine.evidence.body import physiology
from engine.evidence.source import bare
from engine.model.physiology.body import Body, Floats, Quantity
from engine.model.physiology.intake import Day

HOURS_A_DAY = 24.0
known = bare(physiology)


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
    SPILL = 8  # g of carbohydrate past stores and spare burning, not to be seen yet
    SHOWN_SPILL = 9  # g of it that shows
    OXIDISED = 10  # g of carbohydrate burnt since the first morning
    LIPOGENESIS = 11  # g of carbohydrate turned to fat since the first morning
    GLUCONEOGENESIS = 12  # g made from protein, glycerol and lactate since the first morning


@dataclass(frozen=True, slots=True)
class DayPhase:
    """How much of the day's intake and work is going on, as multiples of their 24 h rates."""

    eating: float
    working_hours: float  # length of the session if it is on, else 0


@dataclass(frozen=True, slots=True, kw_only=True)
class RateCoefficients:
    """What a day's sums need that stays the same all day, worked out once."""

    day: Day
    person: Body
    per_level: Quantity  # g of glycogen per mmol/kg wet
    ceiling_span: Quantity  # mmol/kg wet between rested and freshly depleted
    gluconeogenesis: Quantity  # g/d of glucose newly made
    obligate: Quantity  # g/d burnt by brain and blood cells, nothing spared
    liver_ceiling_g: Quantity
    max_synthesis: Quantity  # g/d of synthesis in filled muscle
    oxidation: Quantity  # g/d at 100 mmol/kg in energy balance
    unseen: Quantity  # g/d past the stores that never shows
    active: Quantity  # g/d burnt in daily life while meals offer it, whatever the store
    spared: Quantity  # exponent by which the day's energy spares it
    rest_as_carb: Quantity  # g/d of carbohydrate that would cover resting expenditure
    water_aim_l: Quantity  # extracellular water that sodium and carbohydrate set
    bound_l: Quantity  # L of water per g of glycogen
    dry_loss_l: Quantity
    gut_bulk_kg: Quantity

    @classmethod
    def of(cls, day: Day, person: Body) -> RateCoefficients:
        lean = person.lean_kg
        surplus = np.clip(day.surplus, known.ENERGY_LEAST, known.ENERGY_MOST)
        return cls(
            day=day,
            person=person,
            per_level=person.muscle_kg * known.GLYCOGEN_MOLAR,
            ceiling_span=person.ceiling_primed - person.ceiling_rested,
            gluconeogenesis=known.GLUCONEOGENESIS * lean,
            obligate=known.OBLIGATE_GLUCOSE * lean,
            active=person.activity * lean,
            liver_ceiling_g=person.liver_ceiling_g,
            max_synthesis=person.muscle_g(person.synthesis) * HOURS_A_DAY,
            oxidation=person.oxidation * lean,
            unseen=person.unseen * lean,
            spared=known.OXIDATION_ENERGY * surplus,
            rest_as_carb=person.resting_kcal / known.CARB_ENERGY,
            water_aim_l=_water_aim_l(day, person),
            bound_l=person.bound_water / 1000,
            dry_loss_l=dry_loss_l(person),
            gut_bulk_kg=known.GUT_PER_FIBRE * day.fibre_g,
        )


def rates(state: Floats, day: Day, now: DayPhase, person: Body) -> Floats:
    """Change of each row per day."""
    change = np.empty_like(state)
    rates_into(change, state, now, RateCoefficients.of(day, person))
    return change


def rates_into(change: Floats, state: Floats, now: DayPhase, pace: RateCoefficients) -> None:
    """Change of each row per day, written into `change`."""
    _carbohydrate(change, state, now, pace)
    _work(change, state, now, pace)
    _water(change, state, now, pace)
    _tissue(change, now, pace)
    change[Row.GUT_BULK] = (pace.gut_bulk_kg - state[Row.GUT_BULK]) / known.GUT_TRANSIT


def _carbohydrate(change: Floats, state: Floats, now: DayPhase, pace: RateCoefficients) -> None:
    """Glucose absorbed or newly made serves brain and blood cells first, then liver and muscle.

    Muscle burns carbohydrate with a power of its store. What is left over is stored, the faster the
    emptier trained muscle is and the less the nearer the ceiling; what no store takes is burnt or
    made fat, and past what this person burns unseen it counts as spill, which shows a day later.
    """
    muscle, liver, gut_carb = state[Row.MUSCLE], state[Row.LIVER], state[Row.GUT_CARB]
    lean, gluconeogenesis = pace.person.lean_kg, pace.gluconeogenesis
    absorbed = gut_carb * (known.ABSORPTION * HOURS_A_DAY)
    liver_fed = liver / (liver + known.LIVER_HALF)
    sparing = known.KETOSIS_SPARING * (1 - liver_fed)
    obligate = pace.obligate * (1 - sparing)
    spare = np.maximum(absorbed + gluconeogenesis - obligate, 0)
    short = np.maximum(obligate - absorbed - gluconeogenesis, 0)
    liver_room = np.maximum(1 - liver / pace.liver_ceiling_g, 0)
    liver_in = spare * known.LIVER_SHARE * liver_room
    offered = spare - liver_in

    level = np.maximum(muscle / pace.per_level, 0)  # a step may end a hair under empty
    oxidation = _oxidation(offered, level, state[Row.PRIMING], pace)
    left = np.maximum(offered - oxidation, 0)
    ceiling = pace.person.ceiling_rested + state[Row.PRIMING] * pace.ceiling_span
    nearness = (level / ceiling) ** known.CEILING_STEEPNESS
    empty = np.maximum(1 - level / known.FAST_UNDER, 0)
    max_synthesis = pace.max_synthesis * (1 + pace.person.fast * empty)
    stored = max_synthesis * (1 - np.exp(-left / max_synthesis)) * np.maximum(1 - nearness, 0)
    over = left - stored
    drawn = np.maximum(oxidation - offered, 0)
    # Nearly empty muscle refills at the liver's cost even without food.
    lacking = np.maximum(1 - level / known.LOW_LEVEL, 0)
    lent = lacking * known.LOW_REFILL * lean * liver_fed
    # Glucose past the stores is burnt in place of fat while there is fat burning to replace.
    fat_oxidation = pace.rest_as_carb - obligate - oxidation
    oxidised_instead = np.minimum(over, np.maximum(fat_oxidation, 0))

    change[Row.GUT_CARB] = pace.day.carb_g * now.eating - absorbed
    change[Row.LIVER] = liver_in - short * liver_fed - lent
    change[Row.MUSCLE] = stored + lent - drawn
    change[Row.GLUCONEOGENESIS] = gluconeogenesis
    spilled, showing = np.maximum(over - pace.unseen, 0), state[Row.SPILL] / known.SPILL_LAG
    change[Row.SPILL] = spilled - showing
    change[Row.SHOWN_SPILL] = showing - state[Row.SHOWN_SPILL] / known.SPILL_KEPT
    change[Row.LIPOGENESIS] = over - oxidised_instead
    change[Row.OXIDISED] = obligate - short * (1 - liver_fed) + oxidation + oxidised_instead


def _oxidation(
    offered: Quantity, level: Quantity, priming: Floats, pace: RateCoefficients
) -> Floats:
    """Carbohydrate that muscle burns: a part always, a part of what meals offer, daily life's too.

    At rest less in energy surplus and after depleting work; never more of a meal than the meal.
    """
    spared = pace.spared + known.OXIDATION_PRIMED * (priming - known.PRIMED_RECREATIONAL)
    most = pace.oxidation * (level / 100) ** known.OXIDATION_POWER
    most = most * np.exp(-spared)
    fasted = most * known.OXIDATION_FASTED
    from_meals = most - fasted + pace.active
    nothing = 1e-9  # g, against 0 / 0 in an empty muscle
    return np.asarray(fasted + from_meals * offered / (offered + from_meals + nothing))


def _work(change: Floats, state: Floats, now: DayPhase, pace: RateCoefficients) -> None:
    """What a session takes out of the muscle, and how depleting work raises the ceiling."""
    work, person = pace.day.work, pace.person
    change[Row.PRIMING] = (person.standing_priming - state[Row.PRIMING]) / known.PRIMING_KEPT
    if now.working_hours == 0:
        return
    a_day = HOURS_A_DAY / now.working_hours
    usable = np.maximum(state[Row.MUSCLE] - person.muscle_g(known.WORK_FLOOR), 0)
    worked = usable * (-np.log(work.leaves * work.also_leaves) * a_day)
    change[Row.MUSCLE] -= worked
    change[Row.OXIDISED] += worked
    if work.primes:
        change[Row.PRIMING] += (1 - state[Row.PRIMING]) * (2 * a_day)


def _water_aim_l(day: Day, person: Body) -> Quantity:
    """Extracellular water against the usual at which the kidneys come to rest, L."""
    excretion = known.SODIUM_EXCRETION
    sodium = (day.sodium_mg - known.SODIUM_USUAL) / excretion
    most = known.SODIUM_GAIN_MOST
    from_sodium = np.where(sodium > 0, most * np.tanh(sodium / most), sodium)
    without = np.maximum(1 - day.carb_g / (known.KETOSIS_CARB * person.lean_kg), 0)
    return np.asarray(from_sodium - known.SODIUM_CARB / excretion * without)


def _water(change: Floats, state: Floats, now: DayPhase, pace: RateCoefficients) -> None:
    """Extracellular water and water deficit.

    Water that goes with glycogen comes out of, and goes back to, the extracellular water at once;
    the kidneys then bring that back to what sodium and carbohydrate set, over about a day.
    """
    day, person = pace.day, pace.person
    shifted = pace.bound_l * (change[Row.MUSCLE] + change[Row.LIVER])
    to_hand = day.water_l * now.eating - pace.dry_loss_l
    deficit = state[Row.DEFICIT]
    made_good = np.minimum(to_hand, -deficit * (HOURS_A_DAY / known.REHYDRATION))
    sweat: Quantity = 0.0
    if now.working_hours > 0:
        sweat = day.work.sweat_l_per_kg * person.body_mass_kg * HOURS_A_DAY / now.working_hours
    change[Row.DEFICIT] = made_good - sweat
    settling = known.SODIUM_EXCRETION / known.SODIUM_OF_WATER
    kept = (pace.water_aim_l - state[Row.EXTRACELLULAR]) * settling
    change[Row.EXTRACELLULAR] = np.minimum(kept, np.maximum(to_hand - made_good, 0)) - shifted


def _tissue(change: Floats, now: DayPhase, pace: RateCoefficients) -> None:
    """Energy that goes neither into expenditure nor into carbohydrate stores changes tissue."""
    day = pace.day
    session_kcal: Quantity = 0.0
    if now.working_hours > 0:
        a_day = HOURS_A_DAY / now.working_hours
        session_kcal = day.work.kcal_per_kg * pace.person.body_mass_kg * a_day
    carb_energy = known.CARB_ENERGY
    stores = change[Row.MUSCLE] + change[Row.LIVER] + change[Row.GUT_CARB]
    cost = known.FAT_SYNTHESIS_COST * carb_energy * change[Row.LIPOGENESIS]
    balance = day.energy_kcal * now.eating - day.spent_kcal - session_kcal
    change[Row.TISSUE] = (balance - carb_energy * stores - cost) / known.TISSUE_ENERGY


def dry_loss_l(person: Body) -> Quantity:
    """Water that a day without drinking costs, L: skin, lungs, stool and the least urine."""
    lost: Quantity = (known.INSENSIBLE + known.URINE_LEAST) * person.body_mass_kg
    gluconeogenesis: float = known.METABOLIC_WATER
    return lost - gluconeogenesis * person.resting_kcal / 1000
