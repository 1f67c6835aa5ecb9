"""Several ways in which a body may work, followed side by side by the day: the tracker's particles.

Nobody has measured how a peak week goes in a lean, dieting athlete: when a spill shows, what carbs
are burnt for, how filling ends near the ceiling, how water comes with glycogen, what fullness is felt
by. So no one way is believed. Each particle is of one kind in each of these, and mornings weigh them.
A day goes by in a few parts, in single precision: a forecast follows some ten thousand of them.
`engine.model.physiology` stays the model of published loads, by the hour; a test holds the typical
body here against what was measured there.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import IntEnum

import numpy as np
from numpy.typing import NDArray

from engine.evidence.body import tracking as known
from engine.model.physiology import Exercise, Intake

Floats = NDArray[np.float32]
Kinds = NDArray[np.int8]
Quantity = float | Floats

PARTS = 6
EATING = 4  # of the parts


class Row(IntEnum):
    """Rows of the state."""

    MUSCLE = 0  # g of glycogen
    LIVER = 1  # g of glycogen
    BURNING = 2  # g a day of carbohydrate that what was eaten has set
    PENDING = 3  # spill still to show, in units of what this body carries
    SHOWN = 4  # spill that shows, likewise: over 1 is spilled over
    MEALS = 5  # yesterday's carbohydrate, g/kg FFM
    OWED = 6  # kg of water still to come with glycogen
    SALT = 7  # kg of water held with sodium
    WATER = 8  # kg of water that wanders
    GUT = 9  # kg against the first morning
    TISSUE = 10  # kg against the first morning


class Kind(IntEnum):
    """What bodies differ in by kind; `KINDS` says how many there are of each."""

    SPILL = 0
    BURN = 1
    FILL = 2
    FELT = 3


@dataclass(frozen=True, slots=True)
class Spill:
    """How a spill shows: how much of it the same day, and what of the blur is left a day later."""

    same: float
    kept: float
    likely: float


@dataclass(frozen=True, slots=True)
class Burn:
    """What carbohydrate is burnt for, over the typical: at rest, of what is eaten, of what is held."""

    rest: float  # g/kg FFM/d, whatever is eaten
    direct: float  # share of what is eaten
    adapts: float  # how much of that follows a change within a day
    usage: float  # share of the ceiling a day when full, falling with the square of the level
    likely: float


@dataclass(frozen=True, slots=True)
class Fill:
    """How storing ends near the ceiling: room is 1 - level ** power."""

    power: float
    likely: float


@dataclass(frozen=True, slots=True)
class Felt:
    """What fullness is felt by: the level straight on, levelling off, or partly yesterday's meals."""

    levels_off: float
    by_meals: float
    likely: float


# Assumed, each after what is common practice or published of it: see `known.STRUCTURES`.
SPILLS = (
    Spill(same=0.05, kept=0.35, likely=0.3),  # it shows a day later
    Spill(same=0.5, kept=0.45, likely=0.25),  # half now, half tomorrow
    Spill(same=0.95, kept=0.25, likely=0.25),  # it shows and goes the same day
    Spill(same=0.9, kept=0.70, likely=0.2),  # a pool that drains over days
)
BURNS = (
    Burn(rest=2.5, direct=0.0, adapts=1.0, usage=0.17, likely=0.35),  # with what is held
    Burn(rest=1.6, direct=0.30, adapts=1.0, usage=0.03, likely=0.2),  # a share of each meal
    Burn(rest=1.3, direct=0.42, adapts=0.55, usage=0.02, likely=0.2),  # learnt from days before
    Burn(rest=3.2, direct=0.0, adapts=1.0, usage=0.08, likely=0.25),  # a fixed amount
)
FILLS = (Fill(power=8.0, likely=0.4), Fill(power=25.0, likely=0.3), Fill(power=2.5, likely=0.3))
FELTS = (
    Felt(levels_off=0.0, by_meals=0.0, likely=0.5),
    Felt(levels_off=1.0, by_meals=0.0, likely=0.25),
    Felt(levels_off=0.0, by_meals=0.3, likely=0.25),
)
KINDS: tuple[tuple[float, ...], ...] = (
    tuple(one.likely for one in SPILLS),
    tuple(one.likely for one in BURNS),
    tuple(one.likely for one in FILLS),
    tuple(one.likely for one in FELTS),
)


def _f(values: object) -> Floats:
    return np.asarray(values, dtype=np.float32)


_SAME, _KEPT = _f([one.same for one in SPILLS]), _f([one.kept for one in SPILLS])
_REST, _DIRECT = _f([one.rest for one in BURNS]), _f([one.direct for one in BURNS])
_ADAPTS, _USAGE = _f([one.adapts for one in BURNS]), _f([one.usage for one in BURNS])
_POWER = _f([one.power for one in FILLS])
_OFF, _MEALS = _f([one.levels_off for one in FELTS]), _f([one.by_meals for one in FELTS])


def draw_kinds(
    particles: int, rng: np.random.Generator, shares: Sequence[Sequence[float]] | None = None
) -> Kinds:
    """A kind of each for so many particles, as likely as they are held to be, or as `shares` say."""
    places = rng.random((len(KINDS), particles), dtype=np.float32)
    return np.stack(
        [
            np.searchsorted(np.cumsum(likely)[:-1], row, side="right").astype(np.int8)
            for likely, row in zip(shares or KINDS, places, strict=True)
        ]
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Bodies:
    """What the particles are: sizes and rates of a day, an element each."""

    lean_kg: float
    ceiling_g: Floats
    fill_g: Floats  # most that a day of eating can store in empty muscle
    rest_g: Floats
    direct: Floats
    adapts: Floats
    usage: Floats
    power: Floats
    session: Floats  # share of the store that an hour's lifting takes
    unseen_g: Floats
    carries_g: Floats
    same: Floats
    kept: Floats
    water: Floats  # kg per kg of glycogen
    late: Floats  # share of that which comes a day later
    salt_kg: Floats
    levels_off: Floats
    by_meals: Floats

    def repeated(self, times: int) -> Bodies:
        """The same ones side by side so many times."""
        again = {
            name: np.tile(getattr(self, name), times)
            for name in self.__slots__
            if name != "lean_kg"
        }
        return Bodies(lean_kg=self.lean_kg, **again)


def bodies(lean_kg: float, muscle_kg: float, person: dict[str, Floats], kinds: Kinds) -> Bodies:
    """The bodies that those parameters make: logarithms of factors, as in `tracker.PRIOR`."""
    burn = np.exp(person["burn"])
    ceiling = _f(muscle_kg * float(known.CEILING_G_PER_KG_MUSCLE) * np.exp(person["ceiling"]))
    spill, burns, felt = kinds[Kind.SPILL], kinds[Kind.BURN], kinds[Kind.FELT]
    return Bodies(
        lean_kg=lean_kg,
        ceiling_g=ceiling,
        fill_g=_f(ceiling * float(known.FILL_A_DAY) * np.exp(person["fill"])),
        rest_g=_f(_REST[burns] * lean_kg * burn),
        direct=_f(np.minimum(_DIRECT[burns] * burn, 0.8)),
        adapts=_ADAPTS[burns],
        usage=_f(_USAGE[burns] * burn),
        power=_POWER[kinds[Kind.FILL]],
        session=_f(float(known.SESSION_TAKES) * np.exp(person["work"])),
        unseen_g=_f(lean_kg * float(known.SPILL_UNSEEN) * np.exp(person["unseen"])),
        carries_g=_f(lean_kg * float(known.SPILL_CARRIED) * np.exp(person["carries"])),
        same=_SAME[spill],
        kept=_KEPT[spill],
        water=_f(float(known.WATER_WITH_GLYCOGEN) * np.exp(person["water"])),
        late=_f(np.clip(person["late"], 0, 0.7)),
        salt_kg=_f(np.maximum(person["salt"], 0)),
        levels_off=_OFF[felt],
        by_meals=_MEALS[felt],
    )


def first_morning(bodies: Bodies, level: Floats) -> Floats:
    """The state of a week's first morning with muscle at that share of its ceiling."""
    state = np.zeros((len(Row), len(bodies.ceiling_g)), dtype=np.float32)
    state[Row.MUSCLE] = bodies.ceiling_g * level
    state[Row.LIVER] = bodies.lean_kg * float(known.LIVER_USUAL)
    state[Row.BURNING] = bodies.direct * float(known.HABIT_G_PER_KG) * bodies.lean_kg
    state[Row.MEALS] = float(known.HABIT_G_PER_KG)
    return state


@dataclass(frozen=True, slots=True, kw_only=True)
class Usual:
    """What is habitual of what moves weight and not the look; None is not counted."""

    fibre_g: float | None = None
    sodium_mg: float | None = None


NOT_COUNTED = Usual()


def hours_lifted(intake: Intake) -> float:
    """The day's session and cardio, in hours of lifting by the glycogen that they cost."""
    session = {
        Exercise.NONE: 0.0,
        Exercise.LIGHT: float(known.SESSION_LIGHT),
        Exercise.DEPLETING: float(known.SESSION_DEPLETING),
    }[intake.exercise]
    return (session + intake.cardio_h * float(known.CARDIO_HOUR)) * intake.work_done


def a_day(
    state: Floats, carb_g: Floats, lifted: Quantity, bodies: Bodies, *, look_only: bool = False
) -> Floats:
    """The state a day later; `carb_g` is what each truly ate, `lifted` the hours of lifting.

    With `look_only` the rows that only body mass needs are left as they were.
    """
    new = state.copy()
    ceiling = bodies.ceiling_g
    muscle = state[Row.MUSCLE] * np.maximum(1 - bodies.session * lifted, 0.3)
    new[Row.BURNING] += bodies.adapts * (bodies.direct * carb_g - state[Row.BURNING])
    net = carb_g - np.minimum(new[Row.BURNING], 0.9 * carb_g)
    meal = net / EATING
    rest = bodies.rest_g / PARTS
    most = bodies.fill_g / EATING
    over = np.zeros_like(muscle)
    for part in range(PARTS):
        level = muscle / ceiling
        muscle = muscle - (bodies.usage / PARTS) * level * muscle
        if part >= EATING:
            # Overnight liver, fat and new glucose bear most of what is burnt.
            muscle -= float(known.OWN_SHARE) * rest * level
            continue
        offered = meal - rest
        spare = np.maximum(offered, 0)
        room = np.maximum(1 - level**bodies.power, 0)
        taken = most * (1 - np.exp(-spare / most)) * room
        taken = np.minimum(taken, np.maximum(ceiling - muscle, 0))
        over += spare - taken
        muscle += taken + float(known.OWN_SHARE) * np.minimum(offered, 0) * np.minimum(level * 2, 1)
    new[Row.MUSCLE] = np.maximum(muscle, 0.04 * ceiling)
    excess = np.maximum(over - bodies.unseen_g, 0) / bodies.carries_g
    new[Row.SHOWN] = bodies.kept * state[Row.SHOWN] + state[Row.PENDING] + bodies.same * excess
    new[Row.PENDING] = (1 - bodies.same) * excess
    new[Row.MEALS] = carb_g / bodies.lean_kg
    if not look_only:
        _weight(new, state, bodies)
    return new


def _weight(new: Floats, state: Floats, bodies: Bodies) -> None:
    """What a day does to body mass besides glycogen itself."""
    meals, lean = new[Row.MEALS], bodies.lean_kg
    holds = lean * float(known.LIVER_MOST) * (1 - np.exp(-meals / float(known.LIVER_HALF)))
    new[Row.LIVER] += float(known.LIVER_FOLLOWS) * (holds - state[Row.LIVER])
    gained = new[Row.MUSCLE] - state[Row.MUSCLE] + new[Row.LIVER] - state[Row.LIVER]
    new[Row.OWED] = bodies.late * (state[Row.OWED] + gained * bodies.water / 1000)
    fed = np.tanh((meals - float(known.HABIT_G_PER_KG)) / float(known.SALT_SPAN))
    new[Row.SALT] += float(known.SALT_FOLLOWS) * (fed * bodies.salt_kg - state[Row.SALT])
    new[Row.WATER] *= float(known.WATER_KEPT)
    new[Row.TISSUE] -= float(known.TISSUE_DAILY) * (1 - meals / float(known.TISSUE_EVEN))


def habits(new: Floats, state: Floats, intake: Intake, usual: Usual) -> None:
    """What fibre and salt away from the habit do to body mass, written into `new`."""
    if intake.fibre_g is not None and usual.fibre_g is not None:
        aim = float(known.GUT_PER_FIBRE) * (np.asarray(intake.fibre_g) - usual.fibre_g)
        new[Row.GUT] += (aim - state[Row.GUT]) / float(known.GUT_TRANSIT)
    if intake.sodium_mg is not None and usual.sodium_mg is not None:
        moved = (np.asarray(intake.sodium_mg) - usual.sodium_mg) / float(known.SODIUM_EXCRETION)
        most = float(known.SODIUM_GAIN_MOST)
        moved = np.where(moved > 0, most * np.tanh(moved / most), moved)
        new[Row.SALT] += float(known.SALT_FOLLOWS) * moved


def mass_change_kg(state: Floats, first: Floats, bodies: Bodies) -> Floats:
    """Change of body mass since `first`, kg."""
    grams = state[Row.MUSCLE] + state[Row.LIVER] - first[Row.MUSCLE] - first[Row.LIVER]
    moved = state[Row.SALT : Row.TISSUE + 1].sum(axis=0) - first[Row.SALT : Row.TISSUE + 1].sum(
        axis=0
    )
    spilled = float(known.SPILL_WATER) * (state[Row.SHOWN] - first[Row.SHOWN])
    owed = state[Row.OWED] - first[Row.OWED]
    return np.asarray(grams / 1000 * (1 + bodies.water) - owed + moved + spilled)


def felt_level(state: Floats, bodies: Bodies) -> Floats:
    """What fullness is felt by, 0 to 1."""
    level = state[Row.MUSCLE] / bodies.ceiling_g
    levelled = np.log1p(5 * np.maximum(level, 0)) / np.log1p(np.float32(5))
    # Levelling off is told in the same span: what 0.13 and 0.96 feel like stays where it is.
    levelled = (levelled - 0.28) / 0.70 * 0.83 + 0.13
    felt = level + bodies.levels_off * (levelled - level)
    meals = np.clip(0.35 + 0.08 * state[Row.MEALS], 0, 1)
    return np.asarray(felt + bodies.by_meals * (meals - felt))
