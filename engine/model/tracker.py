"""What is believed of one athlete, learnt morning by morning with a particle filter.

Each particle is one possible person (parameters, and one of each kind of `engine.model.structures`) in
one possible condition. A day moves them on with what was eaten; a morning's answers weigh them; they
are then resampled, the parameters slightly shaken so that they stay apart. Randomness comes from
the generator handed in; `generator` makes one from athlete and day, so that a repeat gives the same.
"""

from __future__ import annotations

import hashlib
from dataclasses import replace
from datetime import date

import numpy as np
from numpy.typing import NDArray

from engine.evidence.body import pooling
from engine.evidence.body import tracking as known
from engine.model.aim import USUAL_AIM, Aim
from engine.model.normal import normal_below
from engine.model.particles import (
    _SCALE,
    ALIKE,
    NAMES,
    PARTICLES,
    PRIOR,
    Band,
    Belief,
    Covariates,
    Morning,
    Person,
)
from engine.model.physiology import Intake
from engine.model.structures import (
    Bodies,
    Floats,
    Kinds,
    Row,
    a_day,
    draw_kinds,
    felt_level,
    first_morning,
    habits,
    hours_lifted,
    mass_change_kg,
)
from engine.values.athlete import Sex
from engine.values.body import Prior
from engine.values.checkin import Look


def generator(athlete: str, day: date) -> np.random.Generator:
    """Randomness fixed by athlete and day."""
    digest = hashlib.blake2b(f"{athlete}/{day.isoformat()}".encode(), digest_size=8).digest()
    return np.random.default_rng(int.from_bytes(digest, "big"))


def first_belief(
    frame: Covariates,
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
    if prior is not None and prior.model in ALIKE:
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


def _at_start(frame: Covariates, person: Person) -> Belief:
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
    bodies = belief.body
    told = np.exp(belief.person["intake"] + _noise(rng, float(known.INTAKE_DAILY), particles))
    water = _noise(rng, float(known.WATER_DAILY), particles)
    store = np.exp(_noise(rng, float(known.STORE_DAILY), particles))
    done = np.ones(1, dtype=np.float32)
    if training_spread:
        done = np.asarray(np.exp(_noise(rng, training_spread, particles)))

    def propagated(begin: Floats, eaten: Intake) -> Floats:
        carb_g = np.asarray(np.float32(eaten.carb_g) * told)
        state = a_day(begin, carb_g, hours_lifted(eaten) * done, bodies)
        habits(state, begin, eaten, belief.frame.usual)
        state[Row.WATER] += water
        state[Row.MUSCLE] = np.minimum(state[Row.MUSCLE] * store, bodies.ceiling_g)
        return state

    state = propagated(belief.state, intake)
    as_planned = planned is None or planned == intake
    if as_planned and belief.planned is belief.state:
        return replace(belief, state=state, planned=state)
    other = propagated(belief.planned, intake if planned is None else planned)
    return replace(belief, state=state, planned=other)


def weights_kg(belief: Belief) -> Floats:
    """Morning body mass of each particle, before the scale's noise."""
    changes = mass_change_kg(belief.state, belief.first, belief.body)
    return np.asarray(belief.frame.body_mass_kg * (1 + belief.person["scale"]) + changes)


def weight_band(belief: Belief, rng: np.random.Generator, *, chance: float = 0.8) -> Band:
    """Where this morning's weight is expected, with the scale's noise."""
    weights = weights_kg(belief)
    weights = weights + _noise(rng, float(known.SCALE_NOISE), len(weights))
    low, middle, high = quantiles(weights, [(1 - chance) / 2, 0.5, (1 + chance) / 2])
    return Band(low=low, middle=middle, high=high)


def quantiles(values: Floats, shares: list[float]) -> list[float]:
    """As `np.quantile` has them, to the bit, in a fifth of its time: every morning asks for three."""
    in_order, last = np.sort(values), len(values) - 1
    places = np.multiply(shares, last)
    under = places.astype(int)
    on = places - under
    lower, upper = in_order[under], in_order[np.minimum(under + 1, last)]
    between = upper - lower
    found: list[float] = np.where(
        on < 0.5, lower + between * on, upper - between * (1 - on)
    ).tolist()
    return found


def levels(belief: Belief) -> Floats:
    """Muscle glycogen as a share of the ceiling, each particle."""
    return levels_of(belief.state, belief.body)


def levels_of(state: Floats, bodies: Bodies) -> Floats:
    return np.asarray(state[Row.MUSCLE] / bodies.ceiling_g)


def update_belief(belief: Belief, morning: Morning, rng: np.random.Generator) -> Belief:
    """Belief after a morning's answers; none at all leaves it as it is."""
    particles = belief.state.shape[1]
    log_likelihood = np.zeros(particles, dtype=np.float32)
    if morning.weight_kg is not None and not belief.weighed:
        # The first morning's scale is the reference for the week, whatever is on file.
        belief = replace(_on_this_scale(belief, morning.weight_kg, rng), weighed=True)
    elif morning.weight_kg is not None:
        off = morning.weight_kg - weights_kg(belief)
        log_likelihood += _weight_log_likelihood(off, female=belief.frame.sex is Sex.FEMALE)
        belief = foreseen(belief, morning)
    if morning.fullness is not None:
        log_likelihood += _grade_log_likelihood(
            morning.fullness, fullness_of(belief), float(known.FULLNESS_NOISE), 10
        )
    if morning.sharpness is not None:
        mean = belief.person["crisp"] - float(known.BLUR_GRADES) * belief.state[Row.SHOWN]
        log_likelihood += _grade_log_likelihood(
            morning.sharpness, mean, float(known.SHARPNESS_NOISE), 5
        )
    return resample(belief, log_likelihood, rng)


def foreseen(belief: Belief, morning: Morning) -> Belief:
    """The belief with how well it foresaw this morning's weight; nothing else of it is learnt."""
    if morning.weight_kg is None or not belief.weighed:
        return belief
    off = (morning.weight_kg - weights_kg(belief)) / float(known.SCALE_NOISE)
    place = float(np.mean(normal_below(off)))
    return replace(belief, pit_values=(*belief.pit_values, place))


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


def update_on_look(
    belief: Belief, seen: Look, rng: np.random.Generator, *, aim: Aim | None = None
) -> Belief:
    """Belief after the coach's word on how a stage or trial day looked, held against its own aim."""
    looks = outcome_probabilities(belief.state, belief.person, belief.body, aim or belief.frame.aim)
    return resample(belief, np.log(seen_as(looks, seen)), rng)


def seen_as(looks: Floats, seen: Look) -> Floats:
    """How likely each particle makes that word, of its chances of flat, full and spilled over (rows).

    A word is a judgement: some likelihood is left to each whatever the look.
    """
    return np.asarray(0.03 + 0.91 * looks[list(Look).index(seen)])


def level_shift(person: Person, grades: float) -> Floats:
    """So many grades of fullness as a share of the store's ceiling, each particle."""
    span = np.maximum(person["fullest"] - person["empty"], 0.3)
    return np.asarray(np.float32(grades / 9) * span)


def outcome_probabilities(
    state: Floats, person: Person, bodies: Bodies, aim: Aim = USUAL_AIM
) -> Floats:
    """Chances of flat, full and spilled over (rows) for each particle, edges softened."""
    edge = np.float32(1 + max(aim.blur, 0.0))
    spilled = normal_below((state[Row.SHOWN] - edge) / np.float32(known.SPILL_EDGE.value))
    under = person["flat"]
    if aim.fullness:
        under = under + level_shift(person, aim.fullness)
    flat = normal_below((under - levels_of(state, bodies)) / np.float32(known.FLAT_EDGE.value))
    return np.stack([(1 - spilled) * flat, (1 - spilled) * (1 - flat), spilled])


def doubted(chances: Floats) -> tuple[float, float, float]:
    """Flat, full and spilled over as they are told.

    A little surer than the particles are, which hold the store for emptier than it is; and a share is
    left to what happens to anybody.
    """
    flat, spilled = float(known.ANYBODY_FLAT), float(known.ANYBODY_SPILLED)
    anybody = np.array([flat, 1 - flat - spilled, spilled])
    doubt = float(known.DOUBT)
    surer = np.asarray(chances, dtype=float) ** float(known.SURER)
    surer[0] *= float(known.FLAT_COMES)
    told = (1 - doubt) * surer / surer.sum() + doubt * anybody
    told /= told.sum()
    return float(told[0]), float(told[1]), float(told[2])


def _weight_log_likelihood(off: Floats, *, female: bool) -> Floats:
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


def _grade_log_likelihood(grade: int, mean: Floats, noise: float, most: int) -> Floats:
    upper = 1.0 if grade >= most else normal_below((grade + 0.5 - mean) / noise)
    lower = 0.0 if grade <= 1 else normal_below((grade - 0.5 - mean) / noise)
    # A slip of the thumb is always possible.
    return np.asarray(np.log(0.98 * (upper - lower) + 0.02 / most), dtype=np.float32)


def resample(belief: Belief, log_likelihood: Floats, rng: np.random.Generator) -> Belief:
    """The particles drawn anew, each as often as what was answered or seen makes it likely."""
    particles = len(log_likelihood)
    if not np.any(log_likelihood):
        return belief
    weight = np.exp(log_likelihood - log_likelihood.max())
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


def next_prior(
    belief: Belief, frame: Covariates, rng: np.random.Generator, *, weeks: float
) -> Belief:
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
