"""Virtual athletes: a hidden physiology in daily steps, with equations other than the tracker's.

One store that fills along an exponential and empties with the square of its level, where the
tracker has muscle, liver, gut and energy balance by the hour; a ration of excess a day burns
unseen, and half of the rest blurs the look only a day later, where the tracker lets it run by the
hour from what is spilled to what shows. Water follows with a lag, salt and gut wander, and answers
are noisy, biased, misreported or missing. What the two share is the meaning of the words: the score
of a look, flat, and spilled over. All figures in here are invented for the bench, spread so widely
that a fixed plan leaves many athletes flat or spilled over; coaches' plans differ too.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]

FLAT_UNDER = 0.80  # of the store's ceiling at stage time
PARTS_OF_A_DAY = 8
#: Coaches' loads differ: 3 to 12 g/kg a day is what reviews of the trade give.
PLAN_SPREAD = 0.15  # SD of the logarithm
SPILLED_OVER = 1.0  # blur, in units of what this athlete can carry unseen


@dataclass(frozen=True, slots=True, kw_only=True)
class Athletes:
    """Hidden facts of each athlete, one array element an athlete; masses in kg, stores in g."""

    female: Bools
    body_mass: Floats
    body_fat_percent: Floats
    lean: Floats
    ceiling: Floats  # g of muscle glycogen
    needs: Floats  # g a day that never reach the store
    fill: Floats  # share of the ceiling that a day can fill
    usage: Floats  # share of the ceiling used a day at rest when full; falls with the square
    training: Floats  # share of the store used by a training day, on top
    burn_more: Floats  # g of excess a day that is burnt unseen
    carries: Floats  # g of excess that the look carries unseen
    water: Floats  # g/g
    intake_bias: Floats  # true carbohydrate over what is told
    fullness_bias: Floats
    sharpness_bias: Floats
    scale_sd: Floats  # kg
    menstruating: Bools
    generosity: Floats  # of the coach's load, against the typical

    def __len__(self) -> int:
        return len(self.body_mass)


@dataclass(frozen=True, slots=True, kw_only=True)
class Condition:
    """The hidden state on one morning."""

    store: Floats  # g
    liver: Floats  # g
    blur: Floats  # in units of what the athlete carries
    pending: Floats  # blur still to show
    lag_water: Floats  # kg
    salt_water: Floats  # kg
    gut: Floats  # kg
    tissue: Floats  # kg


@dataclass(frozen=True, slots=True, kw_only=True)
class Answers:
    """What the athletes tell on a morning; NaN is not answered."""

    weight_kg: Floats
    fullness: Floats
    sharpness: Floats


def draw_athletes(
    number: int,
    rng: np.random.Generator,
    *,
    plan_spread: float = PLAN_SPREAD,
    population_spread: float = 0.0,
) -> Athletes:
    """That many athletes of one population.

    `population_spread` is how far its typical figures may all lie from those below, SD of the
    logarithm: athletes unlike those that any prior was fitted to.
    """
    female = rng.random(number) < 0.5
    mass = np.where(female, rng.normal(57, 5, number), rng.normal(80, 8, number)).clip(45, 110)
    fat = np.where(female, rng.normal(14, 2.5, number), rng.normal(7.5, 1.5, number)).clip(4, 22)
    lean = mass * (1 - fat / 100)

    def around(value: float, spread: float) -> Floats:
        usual = value * np.exp(rng.normal(0, population_spread)) if population_spread else value
        return np.asarray(usual * np.exp(rng.normal(0, spread, number)))

    muscle = lean * np.where(female, 0.46, 0.50)
    ceiling = muscle * 0.162 * around(190, 0.20)
    return Athletes(
        female=female,
        body_mass=mass,
        body_fat_percent=fat + rng.normal(0, 1.5, number),
        lean=lean,
        ceiling=ceiling,
        needs=lean * around(2.7, 0.20),
        fill=around(0.80, 0.25),
        usage=around(0.20, 0.25),
        training=around(0.12, 0.25),
        burn_more=lean * around(2.5, 0.25),
        carries=lean * around(1.6, 0.25),
        water=around(2.8, 0.12),
        intake_bias=around(1.0, 0.05),
        fullness_bias=rng.normal(0, 0.5, number),
        sharpness_bias=rng.normal(0, 0.3, number),
        scale_sd=around(0.25, 0.3),
        menstruating=female & (rng.random(number) < 0.15),
        generosity=around(1.0, plan_spread).clip(0.6, 1.35),
    )


def start(athletes: Athletes, rng: np.random.Generator) -> Condition:
    number = len(athletes)
    zero = np.zeros(number)
    return Condition(
        store=athletes.ceiling * rng.normal(0.50, 0.07, number).clip(0.3, 0.75),
        liver=athletes.lean * rng.normal(1.0, 0.15, number),
        blur=zero,
        pending=zero,
        lag_water=zero,
        salt_water=rng.normal(0, 0.25, number),
        gut=zero,
        tissue=zero,
    )


def next_morning(
    athletes: Athletes,
    now: Condition,
    carb_g: Floats,
    *,
    training: float,
    rng: np.random.Generator | None,
) -> Condition:
    """The condition after a day at that true carbohydrate; without `rng`, as expected."""
    number = len(athletes)
    net = np.maximum(
        carb_g - athletes.needs * (0.6 + 0.4 * np.minimum(carb_g / athletes.needs, 1)), 0
    )
    liver = (
        now.liver
        + (athletes.lean * 1.9 * (1 - np.exp(-carb_g / (3.0 * athletes.lean))) - now.liver) * 0.6
    )
    store, stored = _fill(athletes, now.store, net, training)
    excess = np.maximum(net - stored - athletes.burn_more, 0) / athletes.carries
    blur = 0.5 * now.blur + now.pending + 0.5 * excess
    gained = (store - now.store + liver - now.liver) / 1000 * athletes.water
    lag = 0.45 * (now.lag_water + gained)
    salt, gut = 0.55 * now.salt_water, 0.6 * now.gut
    if rng is not None:
        salt = salt + rng.normal(0, 0.28, number)
        gut = gut + rng.normal(0, 0.18, number)
    kcal_short = 0.5 * (1 - carb_g / (5 * athletes.lean))
    return Condition(
        store=store,
        liver=liver,
        blur=blur,
        pending=0.5 * excess,
        lag_water=lag,
        salt_water=salt,
        gut=gut,
        tissue=now.tissue - 0.07 * kcal_short,
    )


def _fill(athletes: Athletes, store: Floats, net: Floats, training: float) -> tuple[Floats, Floats]:
    """The store after a day in small parts, and what of `net` it took."""
    most = athletes.fill * athletes.ceiling / PARTS_OF_A_DAY
    stored = np.zeros_like(store)
    for _ in range(PARTS_OF_A_DAY):
        share = store / athletes.ceiling
        room = np.maximum(1 - share**8, 0)
        taken = most * (1 - np.exp(-net / PARTS_OF_A_DAY / most)) * room
        used = store * (share * athletes.usage + training * athletes.training) / PARTS_OF_A_DAY
        store = np.clip(store + taken - used, 0.02 * athletes.ceiling, athletes.ceiling)
        stored += taken
    return store, stored


def true_weight(athletes: Athletes, first: Condition, now: Condition) -> Floats:
    """Morning mass in kg before the scale's noise."""
    grams = now.store + now.liver - first.store - first.liver
    cycle = np.where(athletes.menstruating, 0.45, 0.0)
    return np.asarray(
        athletes.body_mass
        + grams / 1000 * (1 + athletes.water)
        - (now.lag_water - first.lag_water)
        + now.salt_water
        + 0.4 * now.blur
        + now.gut
        + now.tissue
        + cycle
    )


def answer(
    athletes: Athletes, first: Condition, now: Condition, rng: np.random.Generator
) -> Answers:
    number = len(athletes)
    weight = true_weight(athletes, first, now) + rng.normal(0, 1, number) * athletes.scale_sd
    after_food = rng.random(number) < 0.02
    weight = np.round(weight + np.where(after_food, 0.9, 0), 1)
    share = now.store / athletes.ceiling
    full = 1 + 9 * (share - 0.15) / 0.80 + athletes.fullness_bias + rng.normal(0, 0.6, number)
    sharp = 4.4 - 1.5 * now.blur + athletes.sharpness_bias + rng.normal(0, 0.45, number)
    missed = rng.random(number) < 0.07
    return Answers(
        weight_kg=np.where(missed, np.nan, weight),
        fullness=np.where(missed, np.nan, np.clip(np.round(full), 1, 10)),
        sharpness=np.where(missed, np.nan, np.clip(np.round(sharp), 1, 5)),
    )


def look(athletes: Athletes, now: Condition) -> Floats:
    """The look at stage time, 0 to 1: full muscle, less the blur."""
    short = np.clip((0.92 - now.store / athletes.ceiling) / 0.5, 0, 1)
    soft = np.clip(now.blur - 0.4, 0, None)
    return np.clip(1 - short**1.2 - 0.5 * soft, 0, 1)


def flat(athletes: Athletes, now: Condition) -> Bools:
    return np.asarray(now.store / athletes.ceiling < FLAT_UNDER)


def spilled(now: Condition) -> Bools:
    return np.asarray(now.blur > SPILLED_OVER)
