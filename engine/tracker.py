"""What is believed of one athlete, learnt morning by morning with a particle filter.

Each particle is one possible person (parameters) in one possible condition (state of the body
model). A day moves them on with what was eaten; a morning's weight, fullness and sharpness weigh
them; they are then resampled, the parameters slightly shaken so that they stay apart. Randomness
comes from the generator handed in; `generator` makes one from athlete and day, so that a repeat
gives the same.
"""

from __future__ import annotations

import hashlib
from dataclasses import dataclass, replace
from datetime import date

import numpy as np
from scipy.special import ndtr

from engine.athlete import Sex
from engine.evidence import tracking as known
from engine.look import Look
from engine.physiology import (
    Body,
    Day,
    Floats,
    Intake,
    Row,
    Trained,
    advance,
    body,
    complete,
    first_morning,
    mass_change_kg,
)

PARTICLES = 2000
STEP_H = 1.0


@dataclass(frozen=True, slots=True)
class Person:
    """A particle's parameters by row, logarithms where the figure is a factor; see `PRIOR`."""

    values: Floats  # parameters x particles

    def __getitem__(self, name: str) -> Floats:
        return np.asarray(self.values[NAMES.index(name)])


#: Mean and SD of each parameter's prior.
PRIOR: dict[str, tuple[float, float]] = {
    "pool": (0.0, float(known.POOL_SPREAD)),
    "ceiling": (0.0, float(known.CEILING_SPREAD)),
    "burn": (float(known.BURN_USUAL), float(known.BURN_SPREAD)),
    "synthesis": (float(known.SYNTHESIS_USUAL), float(known.SYNTHESIS_SPREAD)),
    "work": (float(known.WORK_USUAL), float(known.WORK_SPREAD)),
    "activity": (float(np.log(float(known.ACTIVITY))), float(known.ACTIVITY_SPREAD)),
    "intake": (0.0, float(known.INTAKE_SPREAD)),
    "water": (float(known.WATER_USUAL), float(known.WATER_SPREAD)),
    "scale": (0.0, float(known.SCALE_SPREAD)),
    "empty": (float(known.EMPTY_LEVEL), float(known.EMPTY_SPREAD)),
    "fullest": (float(known.FULLEST_LEVEL), float(known.FULLEST_SPREAD)),
    "crisp": (float(known.CRISP), float(known.CRISP_SPREAD)),
    "unseen": (0.0, float(known.SPILL_UNSEEN_SPREAD)),
    "carries": (float(np.log(float(known.SPILL_CARRIED))), float(known.SPILL_CARRIED_SPREAD)),
    "start": (float(np.log(float(known.START_LEVEL))), float(known.START_SPREAD)),
}
NAMES = tuple(PRIOR)


@dataclass(frozen=True, slots=True, kw_only=True)
class Frame:
    """The facts that all particles share."""

    sex: Sex
    body_mass_kg: float
    body_fat_percent: float | None
    trained: Trained = Trained.TRAINED


@dataclass(frozen=True, slots=True, kw_only=True)
class Belief:
    """Equally weighted particles on one morning, and how well the mornings so far were foreseen."""

    frame: Frame
    person: Person
    state: Floats  # rows x particles
    first: Floats  # the state that mass changes are against
    planned: Floats  # the state had the plan been followed; the same object until it was not
    surprises: tuple[float, ...] = ()  # where each weight fell in its forecast, 0 to 1

    @property
    def body(self) -> Body:
        typical = body(
            sex=self.frame.sex,
            body_mass_kg=self.frame.body_mass_kg,
            body_fat_percent=self.frame.body_fat_percent,
            trained=self.frame.trained,
        )
        ceiling = np.exp(self.person["ceiling"])
        return replace(
            typical,
            muscle_kg=typical.muscle_kg * np.exp(self.person["pool"]),
            ceiling_rested=typical.ceiling_rested * ceiling,
            ceiling_primed=typical.ceiling_primed * ceiling,
            burn=typical.burn * np.exp(self.person["burn"]),
            synthesis=typical.synthesis * np.exp(self.person["synthesis"]),
            bound_water=typical.bound_water * np.exp(self.person["water"]),
            activity=np.exp(self.person["activity"]),
            unseen=typical.unseen * np.exp(self.person["unseen"]),
        )

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


def first_belief(frame: Frame, rng: np.random.Generator, *, particles: int = PARTICLES) -> Belief:
    """What is believed before the first morning, from sex, size and training alone."""
    values = np.stack([rng.normal(mean, spread, particles) for mean, spread in PRIOR.values()])
    return _at_start(frame, Person(values))


def _at_start(frame: Frame, person: Person) -> Belief:
    particles = person.values.shape[1]
    empty = np.zeros((len(Row), particles))
    unmoved = Belief(frame=frame, person=person, state=empty, first=empty, planned=empty)
    who = unmoved.body
    level = who.usual_ceiling * np.clip(np.exp(person["start"]), 0.1, 0.95)
    state = first_morning(who, level)
    return replace(unmoved, state=state, first=state, planned=state)


def after_day(
    belief: Belief,
    intake: Intake,
    rng: np.random.Generator,
    *,
    planned: Intake | None = None,
    training_spread: float = 0.0,
    step_h: float = STEP_H,
) -> Belief:
    """Belief on the next morning, before it is asked about; `intake` is what was eaten and done.

    `planned` is what the plan gave for the day, where that is something else. `training_spread` is
    how little is known of what was done of the session (SD of the logarithm).
    """
    particles = belief.state.shape[1]
    who = belief.body
    told = np.exp(belief.person["intake"] + rng.normal(0, float(known.INTAKE_DAILY), particles))
    water = rng.normal(0, float(known.WATER_DAILY), particles)
    gut = rng.normal(0, float(known.GUT_DAILY), particles)
    store = np.exp(rng.normal(0, float(known.STORE_DAILY), particles))
    trained: Floats | float = 1.0
    if training_spread:
        trained = np.exp(rng.normal(0, training_spread, particles))

    def lived(begin: Floats, eaten: Intake) -> Floats:
        day = own_day(belief.person, replace(eaten, carb_g=eaten.carb_g * told), who, trained)
        state = advance(begin, day, who, hours=24, step_h=step_h)
        state[Row.EXTRACELLULAR] += water
        state[Row.GUT_BULK] += gut
        state[Row.MUSCLE] *= store
        return state

    state = lived(belief.state, intake)
    as_planned = planned is None or planned == intake
    if as_planned and belief.planned is belief.state:
        return replace(belief, state=state, planned=state)
    other = lived(belief.planned, intake if planned is None else planned)
    return replace(belief, state=state, planned=other)


def own_day(person: Person, intake: Intake, who: Body, trained: Floats | float = 1.0) -> Day:
    """A day's intake with each particle's own cost of a session; `trained` is how much of it."""
    day = complete(intake, who)
    if day.work.hours == 0:
        return day
    leaves = day.work.leaves ** (np.exp(person["work"]) * trained)
    also = day.work.also_leaves**trained
    return replace(day, work=replace(day.work, leaves=leaves, also_leaves=also))


def weights_kg(belief: Belief) -> Floats:
    """Morning body mass of each particle, before the scale's noise."""
    who = belief.body
    changes = mass_change_kg(belief.state, belief.first, who)
    spilled = float(known.SPILL_WATER) * blurs_of(belief.state, belief.person, who.lean_kg)
    return np.asarray(belief.frame.body_mass_kg + belief.person["scale"] + changes + spilled)


def weight_band(belief: Belief, rng: np.random.Generator, *, chance: float = 0.8) -> Band:
    """Where this morning's weight is expected, with the scale's noise."""
    weights = weights_kg(belief)
    weights = weights + rng.normal(0, float(known.SCALE_NOISE), len(weights))
    low, middle, high = np.quantile(weights, [(1 - chance) / 2, 0.5, (1 + chance) / 2])
    return Band(low=float(low), middle=float(middle), high=float(high))


def levels(belief: Belief) -> Floats:
    """Muscle glycogen as a share of the ceiling, each particle."""
    return levels_of(belief.state, belief.body)


def levels_of(state: Floats, who: Body) -> Floats:
    return np.asarray(who.concentration(state[Row.MUSCLE]) / who.usual_ceiling)


def blurs_of(state: Floats, person: Person, lean_kg: float | Floats) -> Floats:
    """Spill that shows, in units of what this person carries: over 1 is spilled over."""
    return np.asarray(state[Row.SHOWN_SPILL] / lean_kg / np.exp(person["carries"]))


def learn(belief: Belief, morning: Morning, rng: np.random.Generator) -> Belief:
    """Belief after a morning's answers; none at all leaves it as it is."""
    particles = belief.state.shape[1]
    chance = np.zeros(particles)
    surprises = belief.surprises
    if morning.weight_kg is not None:
        off = morning.weight_kg - weights_kg(belief)
        chance += _weight_chance(off, female=belief.frame.sex is Sex.FEMALE)
        surprises = (*surprises, float(np.mean(ndtr(off / float(known.SCALE_NOISE)))))
    if morning.fullness is not None:
        chance += _grade_chance(
            morning.fullness, fullness_of(belief), float(known.FULLNESS_NOISE), 10
        )
    if morning.sharpness is not None:
        blur = blurs_of(belief.state, belief.person, belief.body.lean_kg)
        mean = belief.person["crisp"] - float(known.BLUR_GRADES) * blur
        chance += _grade_chance(morning.sharpness, mean, float(known.SHARPNESS_NOISE), 5)
    return _resample(replace(belief, surprises=surprises), chance, rng)


def fullness_of(belief: Belief) -> Floats:
    """The fullness grade each particle would give, before rounding and noise."""
    span = belief.person["fullest"] - belief.person["empty"]
    return np.asarray(1 + 9 * (levels(belief) - belief.person["empty"]) / np.maximum(span, 0.2))


def learn_look(belief: Belief, seen: Look, rng: np.random.Generator) -> Belief:
    """Belief after the coach's word on how a stage or trial day looked."""
    looks = chances_each(belief.state, belief.person, belief.body)
    return _resample(belief, np.log(0.03 + 0.91 * looks[list(Look).index(seen)]), rng)


def chances_each(state: Floats, person: Person, who: Body) -> Floats:
    """Chances of flat, full and spilled over (rows) for each particle, edges softened."""
    blur = blurs_of(state, person, who.lean_kg)
    spilled = ndtr((blur - 1) / float(known.SPILL_EDGE))
    flat = ndtr((float(known.FLAT_UNDER) - levels_of(state, who)) / float(known.FLAT_EDGE))
    return np.stack([(1 - spilled) * flat, (1 - spilled) * (1 - flat), spilled])


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
    return np.asarray(np.log(likely + stray * normal(off, wide) + 1e-12))


def _grade_chance(grade: int, mean: Floats, noise: float, most: int) -> Floats:
    upper = 1.0 if grade >= most else ndtr((grade + 0.5 - mean) / noise)
    lower = 0.0 if grade <= 1 else ndtr((grade - 0.5 - mean) / noise)
    # A slip of the thumb is always possible.
    return np.asarray(np.log(0.98 * (upper - lower) + 0.02 / most))


def _resample(belief: Belief, log_chance: Floats, rng: np.random.Generator) -> Belief:
    particles = len(log_chance)
    if not np.any(log_chance):
        return belief
    weight = np.exp(log_chance - log_chance.max())
    weight /= weight.sum()
    places = (np.arange(particles) + rng.random()) / particles
    chosen = np.minimum(np.searchsorted(np.cumsum(weight), places), particles - 1)
    values = belief.person.values[:, chosen]
    # Shrink towards the mean and shake by as much: particles part again, the spread stays.
    keep = float(known.SHRINK)
    mean = values.mean(axis=1, keepdims=True)
    shake = np.sqrt(1 - keep**2) * values.std(axis=1, keepdims=True)
    shaken = keep * values + (1 - keep) * mean + shake * rng.standard_normal(values.shape)
    pool = NAMES.index("pool")
    # The store keeps its level when the size of its pool is shaken.
    ratio = np.exp(shaken[pool] - values[pool])

    def survivors(state: Floats) -> Floats:
        kept = state[:, chosen].copy()
        kept[Row.MUSCLE] *= ratio
        return kept

    state = survivors(belief.state)
    planned = state if belief.planned is belief.state else survivors(belief.planned)
    return replace(
        belief,
        person=Person(shaken),
        state=state,
        first=survivors(belief.first),
        planned=planned,
    )


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
    return _at_start(frame, Person(values))
