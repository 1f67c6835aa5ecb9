"""What is believed of one athlete, learnt morning by morning with a particle filter.

Each particle is one possible person (parameters, and one of each kind of `engine.model.structures`) in
one possible condition. A day moves them on with what was eaten; a morning's answers weigh them; they
are then resampled, the parameters slightly shaken so that they stay apart. Randomness comes from
the generator handed in; `generator` makes one from athlete and day, so that a repeat gives the same.
"""

from __future__ import annotations

import hashlib
from dataclasses import dataclass, replace
from datetime import date
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from engine.evidence import physiology as sizes
from engine.evidence import pooling
from engine.evidence import tracking as known
from engine.model.aim import USUAL_AIM, Aim
from engine.model.physiology import Intake
from engine.model.structures import (
    NOT_COUNTED,
    Bodies,
    Floats,
    Kinds,
    Row,
    Usual,
    a_day,
    bodies,
    draw_kinds,
    felt_level,
    first_morning,
    habits,
    hours_lifted,
    mass_change_kg,
)
from engine.values.athlete import Sex
from engine.values.look import Look
from engine.values.prior import Prior

PARTICLES = 2000

#: Goes up with whatever makes the same mornings believed otherwise; kept with each decision, so that
#: a stored one is not held against a model that it never knew. 1: one body by the hour. 2: several.
#: 3: answers and weights count for more, and chances are told surer.
MODEL = 3


@dataclass(frozen=True)
class Person:
    """A particle's parameters by row, logarithms where the figure is a factor (`PRIOR`), and kinds."""

    values: Floats  # parameters x particles
    kinds: Kinds  # kinds x particles; see `engine.model.structures`

    def __getitem__(self, name: str) -> Floats:
        return np.asarray(self.values[NAMES.index(name)])

    @cached_property
    def _made(self) -> dict[tuple[float, float], Bodies]:
        return {}

    def bodies(self, lean_kg: float, muscle_kg: float) -> Bodies:
        """The bodies of these parameters in people of that size, made once."""
        made, size = self._made, (lean_kg, muscle_kg)
        if size not in made:
            named = dict(zip(NAMES, self.values, strict=True))
            made[size] = bodies(lean_kg, muscle_kg, named, self.kinds)
        return made[size]

    def chosen(self, which: NDArray[np.int_]) -> Person:
        return Person(self.values[:, which], self.kinds[:, which])


#: Mean and SD of each parameter's prior.
PRIOR: dict[str, tuple[float, float]] = {
    "ceiling": (0.0, float(known.CEILING_SPREAD)),
    "burn": (0.0, float(known.BURN_SPREAD)),
    "fill": (0.0, float(known.FILL_SPREAD)),
    "work": (0.0, float(known.WORK_SPREAD)),
    "intake": (0.0, float(known.INTAKE_SPREAD)),
    "unseen": (0.0, float(known.SPILL_UNSEEN_SPREAD)),
    "carries": (0.0, float(known.SPILL_CARRIED_SPREAD)),
    "water": (0.0, float(known.WATER_SPREAD)),
    "late": (float(known.LATE_WATER), float(known.LATE_WATER_SPREAD)),
    "salt": (float(known.SALT_WATER), float(known.SALT_WATER_SPREAD)),
    "scale": (0.0, float(known.SCALE_SPREAD)),  # of body mass
    "empty": (float(known.EMPTY_LEVEL), float(known.EMPTY_SPREAD)),
    "fullest": (float(known.FULLEST_LEVEL), float(known.FULLEST_SPREAD)),
    "crisp": (float(known.CRISP), float(known.CRISP_SPREAD)),
    "flat": (float(known.FLAT_UNDER), float(known.FLAT_UNDER_SPREAD)),
    "start": (float(np.log(float(known.START_LEVEL))), float(known.START_SPREAD)),
}
NAMES = tuple(PRIOR)
_SCALE = NAMES.index("scale")


@dataclass(frozen=True, slots=True, kw_only=True)
class Frame:
    """The facts that all particles share."""

    sex: Sex
    body_mass_kg: float
    body_fat_percent: float | None
    usual: Usual = NOT_COUNTED
    aim: Aim = USUAL_AIM

    @property
    def lean_kg(self) -> float:
        male = self.sex is Sex.MALE
        ordinary = float(sizes.BODY_FAT_MALE if male else sizes.BODY_FAT_FEMALE)
        fat = ordinary if self.body_fat_percent is None else self.body_fat_percent
        return self.body_mass_kg * (1 - fat / 100)

    @property
    def muscle_kg(self) -> float:
        male = self.sex is Sex.MALE
        share = sizes.MUSCLE_OF_LEAN_MALE if male else sizes.MUSCLE_OF_LEAN_FEMALE
        return self.lean_kg * float(share)


@dataclass(frozen=True, slots=True, kw_only=True)
class Belief:
    """Equally weighted particles on one morning, and how well the mornings so far were foreseen."""

    frame: Frame
    person: Person
    state: Floats  # rows x particles
    first: Floats  # the state that mass changes are against
    planned: Floats  # the state had the plan been followed; the same object until it was not
    weighed: bool = False  # whether this week's scale is known: before that, the mass on file
    surprises: tuple[float, ...] = ()  # where each weight fell in its forecast, 0 to 1
    eyes: tuple[
        tuple[int, Floats], ...
    ] = ()  # each coach that has looked, and how far off they rate

    @property
    def body(self) -> Bodies:
        return self.person.bodies(self.frame.lean_kg, self.frame.muscle_kg)

    @property
    def fits(self) -> bool:
        """False after three mornings running outside the 95 % band: then do not trust it."""
        last = self.surprises[-3:]
        return not (len(last) == 3 and all(place < 0.025 or place > 0.975 for place in last))


@dataclass(frozen=True, slots=True, kw_only=True)
class Morning:
    """What was answered; None is not answered."""

    weight_kg: float | None = None
    fullness: int | None = None
    sharpness: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Band:
    low: float
    middle: float
    high: float


def generator(athlete: str, day: date) -> np.random.Generator:
    """Randomness fixed by athlete and day."""
    digest = hashlib.blake2b(f"{athlete}/{day.isoformat()}".encode(), digest_size=8).digest()
    return np.random.default_rng(int.from_bytes(digest, "big"))


def first_belief(
    frame: Frame,
    rng: np.random.Generator,
    *,
    particles: int = PARTICLES,
    prior: Prior | None = None,
) -> Belief:
    """What is believed before the first morning, from sex, size and training alone.

    With a `prior` that other athletes' weeks have taught, a share of the particles is drawn from
    that; the rest stays as published. One that another model learnt is passed over: its parameters
    mean other things.
    """
    values = np.stack([rng.normal(mean, spread, particles) for mean, spread in PRIOR.values()])
    kinds = draw_kinds(particles, rng)
    if prior is not None and prior.model == MODEL:
        values, kinds = _taught_by_others(values, kinds, prior, rng)
    return _at_start(frame, Person(values.astype(np.float32), kinds))


def _taught_by_others(
    values: NDArray[np.float64], kinds: Kinds, prior: Prior, rng: np.random.Generator
) -> tuple[NDArray[np.float64], Kinds]:
    """The drawn particles moved to where the prior has them, but for the share that stays."""
    particles = kinds.shape[1]
    moved = rng.random(particles) >= float(pooling.STAYS_PUBLISHED)
    for one in prior.parameters:
        row, (mean, spread) = NAMES.index(one.name), PRIOR[one.name]
        there = one.mean + one.spread * (values[row] - mean) / spread
        values[row] = np.where(moved, there, values[row])
    others = draw_kinds(particles, rng, [one.shares for one in prior.kinds])
    return values, np.where(moved, others, kinds)


def _at_start(frame: Frame, person: Person) -> Belief:
    particles = person.values.shape[1]
    empty = np.zeros((len(Row), particles), dtype=np.float32)
    unmoved = Belief(frame=frame, person=person, state=empty, first=empty, planned=empty)
    state = first_morning(unmoved.body, np.clip(np.exp(person["start"]), 0.1, 0.95))
    return replace(unmoved, state=state, first=state, planned=state)


def _noise(rng: np.random.Generator, spread: float, particles: int) -> Floats:
    return np.float32(spread) * rng.standard_normal(particles, dtype=np.float32)


def after_day(
    belief: Belief,
    intake: Intake,
    rng: np.random.Generator,
    *,
    planned: Intake | None = None,
    training_spread: float = 0.0,
) -> Belief:
    """Belief on the next morning, before it is asked about; `intake` is what was eaten and done.

    `planned` is what the plan gave for the day, where that is something else. `training_spread` is
    how little is known of what was done of the session (SD of the logarithm).
    """
    particles = belief.state.shape[1]
    who = belief.body
    told = np.exp(belief.person["intake"] + _noise(rng, float(known.INTAKE_DAILY), particles))
    water = _noise(rng, float(known.WATER_DAILY), particles)
    store = np.exp(_noise(rng, float(known.STORE_DAILY), particles))
    done = np.ones(1, dtype=np.float32)
    if training_spread:
        done = np.asarray(np.exp(_noise(rng, training_spread, particles)))

    def lived(begin: Floats, eaten: Intake) -> Floats:
        carb_g = np.asarray(np.float32(eaten.carb_g) * told)
        state = a_day(begin, carb_g, hours_lifted(eaten) * done, who)
        habits(state, begin, eaten, belief.frame.usual)
        state[Row.WATER] += water
        state[Row.MUSCLE] = np.minimum(state[Row.MUSCLE] * store, who.ceiling_g)
        return state

    state = lived(belief.state, intake)
    as_planned = planned is None or planned == intake
    if as_planned and belief.planned is belief.state:
        return replace(belief, state=state, planned=state)
    other = lived(belief.planned, intake if planned is None else planned)
    return replace(belief, state=state, planned=other)


def weights_kg(belief: Belief) -> Floats:
    """Morning body mass of each particle, before the scale's noise."""
    changes = mass_change_kg(belief.state, belief.first, belief.body)
    return np.asarray(belief.frame.body_mass_kg * (1 + belief.person["scale"]) + changes)


def weight_band(belief: Belief, rng: np.random.Generator, *, chance: float = 0.8) -> Band:
    """Where this morning's weight is expected, with the scale's noise."""
    weights = weights_kg(belief)
    weights = weights + _noise(rng, float(known.SCALE_NOISE), len(weights))
    low, middle, high = np.quantile(weights, [(1 - chance) / 2, 0.5, (1 + chance) / 2])
    return Band(low=float(low), middle=float(middle), high=float(high))


def levels(belief: Belief) -> Floats:
    """Muscle glycogen as a share of the ceiling, each particle."""
    return levels_of(belief.state, belief.body)


def levels_of(state: Floats, who: Bodies) -> Floats:
    return np.asarray(state[Row.MUSCLE] / who.ceiling_g)


def learn(belief: Belief, morning: Morning, rng: np.random.Generator) -> Belief:
    """Belief after a morning's answers; none at all leaves it as it is."""
    particles = belief.state.shape[1]
    chance = np.zeros(particles, dtype=np.float32)
    surprises, weighed = belief.surprises, belief.weighed
    if morning.weight_kg is not None and not weighed:
        # The first morning's scale is the reference for the week, whatever is on file.
        belief, weighed = _on_this_scale(belief, morning.weight_kg, rng), True
    elif morning.weight_kg is not None:
        off = morning.weight_kg - weights_kg(belief)
        chance += _weight_chance(off, female=belief.frame.sex is Sex.FEMALE)
        surprises = (*surprises, float(np.mean(normal_below(off / float(known.SCALE_NOISE)))))
    if morning.fullness is not None:
        chance += _grade_chance(
            morning.fullness, fullness_of(belief), float(known.FULLNESS_NOISE), 10
        )
    if morning.sharpness is not None:
        mean = belief.person["crisp"] - float(known.BLUR_GRADES) * belief.state[Row.SHOWN]
        chance += _grade_chance(morning.sharpness, mean, float(known.SHARPNESS_NOISE), 5)
    return resample(replace(belief, surprises=surprises, weighed=weighed), chance, rng)


def _on_this_scale(belief: Belief, weight_kg: float, rng: np.random.Generator) -> Belief:
    """The particles' scales set by what it shows today, within a morning's scatter."""
    particles = belief.state.shape[1]
    scatter = float(np.hypot(float(known.SCALE_NOISE), float(known.WATER_DAILY)))
    off = weight_kg - weights_kg(belief) + _noise(rng, scatter, particles)
    values = belief.person.values.copy()
    values[_SCALE] += off / belief.frame.body_mass_kg
    return replace(belief, person=replace(belief.person, values=values))


def fullness_of(belief: Belief) -> Floats:
    """The fullness grade each particle would give, before rounding and noise."""
    span = belief.person["fullest"] - belief.person["empty"]
    felt = felt_level(belief.state, belief.body)
    return np.asarray(1 + 9 * (felt - belief.person["empty"]) / np.maximum(span, 0.3))


def learn_look(
    belief: Belief, seen: Look, rng: np.random.Generator, *, aim: Aim | None = None
) -> Belief:
    """Belief after the coach's word on how a stage or trial day looked, held against its own aim."""
    looks = chances_each(belief.state, belief.person, belief.body, aim or belief.frame.aim)
    return resample(belief, np.log(0.03 + 0.91 * looks[list(Look).index(seen)]), rng)


def normal_below(deviations: Floats) -> Floats:
    """The chance that a standard normal value is below each of these."""
    from scipy.special import ndtr  # noqa: PLC0415 - heavy: at the first morning, not at the start

    below: Floats = ndtr(deviations)
    return below


def level_shift(person: Person, grades: float) -> Floats:
    """So many grades of fullness as a share of the store's ceiling, each particle."""
    span = np.maximum(person["fullest"] - person["empty"], 0.3)
    return np.asarray(np.float32(grades / 9) * span)


def chances_each(state: Floats, person: Person, who: Bodies, aim: Aim = USUAL_AIM) -> Floats:
    """Chances of flat, full and spilled over (rows) for each particle, edges softened."""
    edge = np.float32(1 + max(aim.blur, 0.0))
    spilled = normal_below((state[Row.SHOWN] - edge) / np.float32(known.SPILL_EDGE.value))
    under = person["flat"]
    if aim.fullness:
        under = under + level_shift(person, aim.fullness)
    flat = normal_below((under - levels_of(state, who)) / np.float32(known.FLAT_EDGE.value))
    return np.stack([(1 - spilled) * flat, (1 - spilled) * (1 - flat), spilled])


def doubted(chances: Floats) -> tuple[float, float, float]:
    """Flat, full and spilled over as they are told.

    A little surer than the particles are, and a share is left to what happens to anybody.
    """
    flat, spilled = float(known.ANYBODY_FLAT), float(known.ANYBODY_SPILLED)
    anybody = np.array([flat, 1 - flat - spilled, spilled])
    doubt = float(known.DOUBT)
    surer = np.asarray(chances, dtype=float) ** float(known.SURER)
    told = (1 - doubt) * surer / surer.sum() + doubt * anybody
    told /= told.sum()
    return float(told[0]), float(told[1]), float(told[2])


def _weight_chance(off: Floats, *, female: bool) -> Floats:
    """Log likelihood of a weight: scale noise, sometimes menstruation, sometimes another scale."""
    noise = float(np.hypot(float(known.SCALE_NOISE), float(known.WEIGHT_DOUBT)))
    wide = float(known.OUTLIER_NOISE)
    monthly = float(known.MENSTRUATING) if female else 0.0
    stray = float(known.OUTLIERS)

    def normal(x: Floats, sd: float) -> Floats:
        return np.asarray(np.exp(-0.5 * (x / sd) ** 2) / sd)

    likely = (1 - stray) * (
        (1 - monthly) * normal(off, noise)
        + monthly * normal(off - float(known.MENSTRUATION_GAIN), noise)
    )
    return np.asarray(np.log(likely + stray * normal(off, wide) + 1e-12), dtype=np.float32)


def _grade_chance(grade: int, mean: Floats, noise: float, most: int) -> Floats:
    upper = 1.0 if grade >= most else normal_below((grade + 0.5 - mean) / noise)
    lower = 0.0 if grade <= 1 else normal_below((grade - 0.5 - mean) / noise)
    # A slip of the thumb is always possible.
    return np.asarray(np.log(0.98 * (upper - lower) + 0.02 / most), dtype=np.float32)


def resample(belief: Belief, log_chance: Floats, rng: np.random.Generator) -> Belief:
    """The particles drawn anew, each as often as what was answered or seen makes it likely."""
    particles = len(log_chance)
    if not np.any(log_chance):
        return belief
    weight = np.exp(log_chance - log_chance.max())
    weight /= weight.sum()
    places = (np.arange(particles) + rng.random()) / particles
    chosen = np.minimum(np.searchsorted(np.cumsum(weight), places), particles - 1)
    person = belief.person.chosen(chosen)
    values = person.values
    # Shrink towards the mean and shake by as much: particles part again, the spread stays.
    keep = np.float32(known.SHRINK.value)
    mean = values.mean(axis=1, keepdims=True)
    shake = np.sqrt(1 - keep**2) * values.std(axis=1, keepdims=True)
    shaken = keep * values + (1 - keep) * mean
    shaken += shake * rng.standard_normal(values.shape, dtype=np.float32)
    kinds = _other_kinds(person.kinds, rng)
    ceiling = NAMES.index("ceiling")
    # The store keeps its level when the size of its pool is shaken.
    ratio = np.exp(shaken[ceiling] - values[ceiling])

    def survivors(state: Floats) -> Floats:
        kept = state[:, chosen]
        kept[Row.MUSCLE] *= ratio
        return kept

    state = survivors(belief.state)
    planned = state if belief.planned is belief.state else survivors(belief.planned)
    return replace(
        belief,
        person=Person(shaken, kinds),
        state=state,
        first=survivors(belief.first),
        planned=planned,
        eyes=tuple((coach, off[chosen]) for coach, off in belief.eyes),
    )


def _other_kinds(kinds: Kinds, rng: np.random.Generator) -> Kinds:
    """The kinds with a few drawn anew, so that none is ever given up for good."""
    fresh = draw_kinds(kinds.shape[1], rng)
    anew = rng.random(kinds.shape) < float(known.OTHER_KIND)
    return np.where(anew, fresh, kinds)


def carry_over(belief: Belief, frame: Frame, rng: np.random.Generator, *, weeks: float) -> Belief:
    """The belief with which the next peak week or trial begins: what was learnt, widened with time.

    The day's start is drawn afresh, and the scale's offset too.
    """
    values = belief.person.values.copy()
    particles = values.shape[1]
    widen = np.sqrt(min(weeks * float(known.FORGET_A_WEEK), 1.0))
    for row, (name, (mean, spread)) in enumerate(PRIOR.items()):
        if name == "scale":
            values[row] = rng.normal(mean, spread, particles)
        else:
            values[row] += widen * spread * rng.standard_normal(particles)
    start = NAMES.index("start")
    fresh = rng.normal(*PRIOR["start"], particles)
    values[start] = 0.5 * (values[start] + fresh)
    return replace(_at_start(frame, Person(values, belief.person.kinds)), eyes=belief.eyes)
