"""The body over days: glycogen in muscle and liver, water, gut content and tissue.

Everything is vectorised: each parameter and intake is a float or an array over people (or over
particles of one person), and the state is one array with a row a quantity.

A day begins in the morning, at waking, and food is eaten evenly over the waking hours; exercise comes
first in the day. What `simulate_day` returns is therefore the next morning, fasted.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum, StrEnum
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from engine.athlete import Sex
from engine.evidence import physiology as known

Floats = NDArray[np.float64]
Quantity = float | Floats

HOURS_A_DAY = 24.0


class Trained(StrEnum):
    UNTRAINED = "untrained"
    RECREATIONAL = "recreational"
    TRAINED = "trained"


class Exercise(StrEnum):
    NONE = "none"
    LIGHT = "light"
    DEPLETING = "depleting"


class Row(IntEnum):
    """Rows of the state. Stores in g, water and gut bulk in kg, changes against the first morning."""

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
    burn: Quantity  # g/kg FFM/d at 100 mmol/kg
    usual_muscle: Quantity  # mmol/kg wet
    bound_water: Quantity  # g/g
    usual_water_l: Quantity

    def muscle_g(self, concentration: Quantity) -> Quantity:
        """Whole-body muscle glycogen in g at a concentration in mmol/kg wet weight."""
        return concentration * self.muscle_kg * float(known.GLYCOGEN_MOLAR)

    def concentration(self, muscle_g: Quantity) -> Quantity:
        """Concentration in mmol/kg wet weight at a whole-body muscle glycogen in g."""
        return muscle_g / (self.muscle_kg * float(known.GLYCOGEN_MOLAR))

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
    priming, synthesis, usual = {
        Trained.UNTRAINED: (
            known.PRIMED_UNTRAINED, known.SYNTHESIS_UNTRAINED, known.USUAL_UNTRAINED,
        ),
        Trained.RECREATIONAL: (
            known.PRIMED_RECREATIONAL, known.SYNTHESIS_RECREATIONAL, known.USUAL_RECREATIONAL,
        ),
        Trained.TRAINED: (
            known.PRIMED_TRAINED, known.SYNTHESIS_TRAINED, known.USUAL_TRAINED,
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
        burn=float(known.MUSCLE_BURN),
        usual_muscle=float(usual),
        bound_water=float(known.BOUND_WATER),
        usual_water_l=float(known.WATER_USUAL_MALE if male else known.WATER_USUAL_FEMALE),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Work:
    """One exercise session a day, at the start of the day."""

    leaves: float  # share of the muscle glycogen above the floor that is left
    hours: float
    kcal_per_kg: float
    sweat_l_per_kg: float
    primes: bool


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


def complete(intake: Intake, person: Body) -> Day:
    """Fill what is not stated: usual protein, fat up to energy balance, fibre and sodium with energy.

    Fibre and sodium not stated fall with the energy under the usual, as they come with food;
    water not stated is the usual intake and what the work sweats out, so it is never short.
    """
    work = WORK[intake.exercise]
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


def first_morning(person: Body, muscle_mmol_per_kg: Quantity | None = None) -> Floats:
    """The state on the first morning, at the usual stores or the muscle glycogen given.

    The liver of someone who starts low in muscle glycogen starts low too.
    """
    concentration = person.usual_muscle if muscle_mmol_per_kg is None else muscle_mmol_per_kg
    people = np.broadcast(person.body_mass_kg, person.muscle_kg, concentration).shape
    state = np.zeros((len(Row), *people))
    fed = np.minimum(concentration / person.usual_muscle, 1.0)
    state[Row.MUSCLE] = person.muscle_g(concentration)
    state[Row.LIVER] = person.lean_kg * float(known.LIVER_OF_LEAN) * float(known.LIVER_USUAL) * fed
    state[Row.PRIMING] = person.standing_priming
    state[Row.GUT_BULK] = float(known.GUT_PER_FIBRE) * person.usual_fibre_g
    state[Row.DEFICIT] = -_dry_loss_l(person) * (1 - float(known.WAKING_HOURS) / HOURS_A_DAY)
    return state


def _dry_loss_l(person: Body) -> Quantity:
    """Water that a day without drinking costs, L: skin, lungs, stool and the least urine."""
    lost = (float(known.INSENSIBLE) + float(known.URINE_LEAST)) * person.body_mass_kg
    return lost - float(known.METABOLIC_WATER) * person.resting_kcal / 1000


@dataclass(frozen=True, slots=True)
class Moment:
    """How much of the day's intake and work is going on, as multiples of their 24 h rates."""

    eating: float
    working_hours: float  # length of the session if it is on, else 0


def rates(state: Floats, day: Day, now: Moment, person: Body) -> Floats:  # noqa: PLR0915
    """Change of each row per day.

    Glucose absorbed or newly made serves brain and blood cells first, then liver and muscle. Muscle
    burns carbohydrate with the square of its store; what is left over is stored, the less the nearer
    the ceiling; what no store takes is burnt or made fat, and counts as spill.
    """
    muscle, liver, gut_carb = state[Row.MUSCLE], state[Row.LIVER], state[Row.GUT_CARB]
    lean = person.lean_kg
    change = np.zeros_like(state)

    absorbed = gut_carb * (float(known.ABSORPTION) * HOURS_A_DAY)
    made = float(known.NEW_GLUCOSE) * lean
    liver_fed = liver / (liver + float(known.LIVER_HALF))
    obligate = float(known.OBLIGATE_GLUCOSE) * lean
    obligate = obligate * (1 - float(known.KETOSIS_SPARING) * (1 - liver_fed))
    spare = np.maximum(absorbed + made - obligate, 0)
    short = np.maximum(obligate - absorbed - made, 0)
    liver_room = 1 - liver / person.liver_ceiling_g
    liver_in = spare * float(known.LIVER_SHARE) * np.maximum(liver_room, 0)

    level = person.concentration(muscle)
    offered = spare - liver_in
    fed = offered / (offered + float(known.FED_HALF) * lean)
    fasted = float(known.BURN_FASTED)
    surplus = np.clip(day.surplus, float(known.ENERGY_LEAST), float(known.ENERGY_MOST))
    burn = person.burn * lean * (level / 100) ** 2
    spared = float(known.BURN_ENERGY) * surplus + float(known.BURN_PRIMED) * (
        state[Row.PRIMING] - float(known.PRIMED_RECREATIONAL)
    )
    burn = burn * np.exp(-spared) * (fasted + (1 - fasted) * fed)
    left = np.maximum(offered - burn, 0)
    ceiling = person.ceiling_rested + state[Row.PRIMING] * (
        person.ceiling_primed - person.ceiling_rested
    )
    room = np.maximum(1 - (level / ceiling) ** float(known.CEILING_STEEPNESS), 0)
    fastest = person.muscle_g(person.synthesis) * HOURS_A_DAY
    stored = fastest * (1 - np.exp(-left / fastest)) * room
    over = left - stored
    drawn = np.maximum(burn - offered, 0)
    lent = np.maximum(1 - level / float(known.LOW_LEVEL), 0)
    lent = lent * float(known.LOW_REFILL) * lean * liver_fed
    liver_out = short * liver_fed + lent

    worked = np.zeros_like(muscle)
    session_kcal: Quantity = 0.0
    sweat: Quantity = 0.0
    if now.working_hours > 0:
        a_day = HOURS_A_DAY / now.working_hours
        usable = np.maximum(muscle - person.muscle_g(float(known.WORK_FLOOR)), 0)
        worked = usable * (-np.log(day.work.leaves) * a_day)
        session_kcal = day.work.kcal_per_kg * person.body_mass_kg * a_day
        sweat = day.work.sweat_l_per_kg * person.body_mass_kg * a_day
        if day.work.primes:
            change[Row.PRIMING] = (1 - state[Row.PRIMING]) * (2 * a_day)

    change[Row.GUT_CARB] = day.carb_g * now.eating - absorbed
    change[Row.LIVER] = liver_in - liver_out
    change[Row.MUSCLE] = stored + lent - drawn - worked
    change[Row.NEW_GLUCOSE] = made
    change[Row.SPILL] = over - state[Row.SPILL] / float(known.SPILL_KEPT)
    # Glucose past the stores is burnt in place of fat while there is fat burning to replace.
    burnt_instead = np.minimum(
        over, np.maximum(person.resting_kcal / float(known.CARB_ENERGY) - obligate - burn, 0)
    )
    change[Row.MADE_FAT] = over - burnt_instead
    change[Row.OXIDISED] = (
        absorbed + made - change[Row.LIVER] - change[Row.MUSCLE] - change[Row.MADE_FAT]
    )
    change[Row.PRIMING] -= (state[Row.PRIMING] - person.standing_priming) / float(
        known.PRIMING_KEPT
    )

    _water(change, state, day, now, person, sweat)

    stored_kcal = float(known.CARB_ENERGY) * (
        change[Row.MUSCLE] + change[Row.LIVER] + change[Row.GUT_CARB] - made
    )
    cost = float(known.FAT_SYNTHESIS_COST) * float(known.CARB_ENERGY) * change[Row.MADE_FAT]
    balance = (
        day.energy_kcal * now.eating - day.spent_kcal - session_kcal - stored_kcal - cost
        - float(known.CARB_ENERGY) * made
    )  # fmt: skip
    change[Row.TISSUE] = balance / float(known.TISSUE_ENERGY)
    bulk = float(known.GUT_PER_FIBRE) * day.fibre_g
    change[Row.GUT_BULK] = (bulk - state[Row.GUT_BULK]) / float(known.GUT_TRANSIT)
    return change


def _water(
    change: Floats, state: Floats, day: Day, now: Moment, person: Body, sweat: Quantity
) -> None:
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

    to_hand = day.water_l * now.eating - _dry_loss_l(person)
    deficit = state[Row.DEFICIT]
    made_good = np.minimum(to_hand, -deficit * (HOURS_A_DAY / float(known.REHYDRATION)))
    change[Row.DEFICIT] = made_good - sweat
    settling = excretion / float(known.SODIUM_OF_WATER)
    kept = (aim - state[Row.EXTRACELLULAR]) * settling
    change[Row.EXTRACELLULAR] = np.minimum(kept, np.maximum(to_hand - made_good, 0)) - shifted


def advance(
    state: Floats, day: Day, person: Body, *, hours: float, step_h: float = 0.5, works: bool = True
) -> Floats:
    """The state `hours` (at most 24) on, by Heun's method in steps of at most `step_h` hours.

    Steps end where eating or work does. In less than the waking hours food is spread over all of
    them, and a session longer than they are is done within them.
    """
    eaten_over = min(float(known.WAKING_HOURS), hours)
    session = min(day.work.hours, hours) if works else 0.0
    marks = sorted({0.0, hours, eaten_over, session})
    for begin, end in pairwise(marks):
        now = Moment(
            eating=hours / eaten_over if begin < eaten_over else 0.0,
            working_hours=session if begin < session else 0.0,
        )
        steps = max(1, int(np.ceil((end - begin) / step_h - 1e-9)))
        length = (end - begin) / steps / HOURS_A_DAY
        for _ in range(steps):
            first = rates(state, day, now, person)
            second = rates(state + length * first, day, now, person)
            state = state + (0.5 * length) * (first + second)
    return state


def simulate_day(state: Floats, intake: Intake, person: Body, *, step_h: float = 0.5) -> Floats:
    """The next morning's state after one whole day."""
    return advance(state, complete(intake, person), person, hours=HOURS_A_DAY, step_h=step_h)


def water_change_l(state: Floats, start: Floats, person: Body) -> Floats:
    """Change of body water since `start`, L: with glycogen, outside cells, and deficit."""
    glycogen = state[Row.MUSCLE] + state[Row.LIVER] - start[Row.MUSCLE] - start[Row.LIVER]
    return np.asarray(
        person.bound_water * glycogen / 1000
        + (state[Row.EXTRACELLULAR] - start[Row.EXTRACELLULAR])
        + (state[Row.DEFICIT] - start[Row.DEFICIT])
    )


def mass_change_kg(state: Floats, start: Floats, person: Body) -> Floats:
    """Change of body mass since `start`, kg: the sum of the parts."""
    grams = sum(state[row] - start[row] for row in (Row.MUSCLE, Row.LIVER, Row.GUT_CARB))
    kilos = sum(state[row] - start[row] for row in (Row.GUT_BULK, Row.TISSUE))
    return np.asarray(grams / 1000 + kilos + water_change_l(state, start, person))
