"""What a dose of carbohydrate would lead to at stage time, and which allowed dose is worth it.

Each candidate for the coming day is followed to stage time under the same particles and the same
chance, with the days after it re-planned inside the limits. A dose is judged against the plan
particle by particle: what it may win, less what it may lose, a loss counting more than a win. So a
change has to be worth it, and the less is known of an athlete the nearer the plan it stays.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from engine.evidence import tracking as known
from engine.model.aim import USUAL_AIM, Aim
from engine.model.particles import Band, Belief, Person
from engine.model.physiology import Intake
from engine.model.structures import Bodies, Floats, Row, a_day, hours_lifted
from engine.model.tracker import doubted, level_shift, levels_of, outcome_probabilities, weights_kg

PARTICLES = 400
#: How the days after the first may be moved, as shares of what their limits allow; all of them go
#: the same way, as the mornings by then decide between them anyway. The first is the plan's.
REPLANNING_FRACTIONS = (0.0, -0.6, 0.6)


@dataclass(frozen=True, slots=True, kw_only=True)
class DayAhead:
    """A day still to come: what is planned, and how far its carbohydrate may be moved.

    Only a day `in_load` counts for the load total.
    """

    planned: Intake
    low_g: float
    high_g: float
    in_load: bool = True


@dataclass(frozen=True, slots=True, kw_only=True)
class DoseForecast:
    """What one dose leads to: chances at stage time, the expected look, tomorrow's weight."""

    carb_g: float
    flat: float
    full: float
    spilled: float
    look: float  # 0 to 1
    worth: float  # look won over the plan, less the look lost times `LOSS_AVERSION`
    tomorrow: Band
    replanned_g: tuple[float, ...]  # the days after it, as re-planned here


def forecast(
    belief: Belief,
    ahead: Sequence[DayAhead],
    doses: Sequence[float],
    rng: np.random.Generator,
    *,
    load_left_g: float = np.inf,
    particles: int = PARTICLES,
) -> list[DoseForecast]:
    """An outlook for each dose of the first day ahead, in the order of the doses.

    `ahead` holds the days up to stage morning, the day to be set first. `load_left_g` bounds the
    sum over those in the load; a dose over it is followed none the less, with nothing left for later.
    """
    if not ahead or not doses:
        raise ValueError("a forecast needs a day ahead and a dose")
    few = subsample(belief, particles, rng)
    chance = NoiseDraws(len(ahead), few.state.shape[1], rng)
    as_planned = float(ahead[0].planned.carb_g)
    paths = [
        Trajectory((as_planned,), 0.0, few.planned),
        *(Trajectory((float(dose),), 0.0, few.state) for dose in doses),
    ]
    paths = propagate(few, paths, ahead[0], chance, 0)
    tomorrow = [weights_kg(replace(few, state=path.state)) + chance.tomorrow for path in paths]
    for number, day in enumerate(ahead[1:], 1):
        paths = [
            paths[0].eating(float(day.planned.carb_g)),
            *(
                path.on(day, way, _left_g(load_left_g, path, ahead))
                for path in paths[1:]
                for way in (REPLANNING_FRACTIONS if number == 1 else (path.way,))
            ),
        ]
        paths = propagate(few, paths, day, chance, number)
    looks = np.stack([look_of(path.state, few.person, few.body, few.frame.aim) for path in paths])
    worths = worth(looks[1:] - looks[0]).reshape(len(doses), -1)  # row 0 followed the plan
    each = worths.shape[1]
    best = [1 + each * k + int(np.argmax(ways)) for k, ways in enumerate(worths)]
    return [
        _outlook(few, paths[row], float(looks[row].mean()), float(worths.flat[row - 1]), weights)
        for row, weights in zip(best, tomorrow[1:], strict=True)
    ]


def _left_g(load_left_g: float, path: Trajectory, ahead: Sequence[DayAhead]) -> float:
    """What the load total leaves for the next day of that path; no bound on a day outside the load."""
    if not ahead[len(path.doses)].in_load:
        return np.inf
    eaten = zip(path.doses, ahead, strict=False)
    return load_left_g - sum(dose for dose, day in eaten if day.in_load)


def _outlook(
    few: Belief, path: Trajectory, look: float, worth: float, weights: Floats
) -> DoseForecast:
    flat, full, spilled = doubted(
        outcome_probabilities(path.state, few.person, few.body, few.frame.aim).mean(axis=1)
    )
    low, middle, high = np.percentile(weights, (10, 50, 90))
    return DoseForecast(
        carb_g=path.doses[0],
        flat=flat,
        full=full,
        spilled=spilled,
        look=look,
        worth=worth,
        tomorrow=Band(low=float(low), middle=float(middle), high=float(high)),
        replanned_g=path.doses[1:],
    )


def worth(gains: Floats, aversion: float = float(known.LOSS_AVERSION)) -> Floats:
    """Mean gain of look along the last axis, losses counted `aversion` times."""
    return np.asarray(np.where(gains < 0, aversion * gains, gains).mean(axis=-1))


def choose(outlooks: Sequence[DoseForecast], planned_g: float) -> DoseForecast:
    """The dose most worth giving; of doses about as good, and where none is, nearest the plan."""
    best = max(outlook.worth for outlook in outlooks)
    alike = [one for one in outlooks if one.worth >= best - float(known.WORTH_ALIKE)]
    return min(alike, key=lambda one: abs(one.carb_g - planned_g))


class NoiseDraws:
    """The chance of the days ahead, the same for every dose: arrays of days x particles."""

    def __init__(self, days: int, particles: int, rng: np.random.Generator) -> None:
        def drawn(spread: float) -> Floats:
            scatter = rng.standard_normal((days, particles), dtype=np.float32)
            return np.asarray(np.exp(np.float32(spread) * scatter))

        self.intake = drawn(float(known.INTAKE_DAILY))
        self.store = drawn(float(known.STORE_DAILY))
        scatter = np.hypot(float(known.WATER_DAILY), float(known.SCALE_NOISE))
        self.tomorrow = np.float32(scatter) * rng.standard_normal(particles, dtype=np.float32)


@dataclass(frozen=True, slots=True)
class Trajectory:
    """The doses of a way to stage time so far, and where the particles are on it."""

    doses: tuple[float, ...]
    way: float
    state: Floats

    def eating(self, carb_g: float) -> Trajectory:
        """The path with that dose next."""
        return replace(self, doses=(*self.doses, carb_g))

    def on(self, day: DayAhead, way: float, left_g: float) -> Trajectory:
        """The path with the next day's dose, moved that way inside what is left for it."""
        planned = float(day.planned.carb_g)
        span = day.high_g - planned if way > 0 else planned - day.low_g
        dose = min(planned + way * span, left_g)
        return replace(self.eating(max(dose, 0.0)), way=way)


def propagate(
    few: Belief, paths: list[Trajectory], day: DayAhead, chance: NoiseDraws, at: int
) -> list[Trajectory]:
    """The paths a day later; what only body mass needs is followed for the first day alone."""
    count, many = len(paths), few.state.shape[1]
    who = few.body.repeated(count)
    told = np.tile(np.exp(few.person["intake"]) * chance.intake[at], count)
    doses = np.array([path.doses[-1] for path in paths], dtype=np.float32)
    state = np.concatenate([path.state for path in paths], axis=1)
    state = a_day(
        state, np.repeat(doses, many) * told, hours_lifted(day.planned), who, look_only=at > 0
    )
    state[Row.MUSCLE] = np.minimum(
        state[Row.MUSCLE] * np.tile(chance.store[at], count), who.ceiling_g
    )
    return [
        replace(path, state=state[:, k * many : (k + 1) * many]) for k, path in enumerate(paths)
    ]


def subsample(belief: Belief, particles: int, rng: np.random.Generator) -> Belief:
    chosen = rng.permutation(belief.state.shape[1])[:particles]
    return replace(
        belief,
        person=belief.person.chosen(chosen),
        state=belief.state[:, chosen],
        first=belief.first[:, chosen],
        planned=belief.planned[:, chosen],
    )


def look_of(state: Floats, person: Person, who: Bodies, aim: Aim = USUAL_AIM) -> Floats:
    """The look of each particle, 0 to 1: worth less the flatter, and the more the spill shows.

    Where an event asks for no more than so much fullness, past that is worth less again.
    """
    full_at = person["flat"] + np.float32(known.FULL_OVER_FLAT.value)
    if aim.fullness:
        full_at = full_at + level_shift(person, aim.fullness)
    levels = levels_of(state, who)
    short = np.clip((full_at - levels) / np.float32(known.FLAT_COST.value), 0, 1)
    if aim.over is not None:
        past = levels - full_at - level_shift(person, aim.over)
        short = np.maximum(short, np.clip(past / np.float32(known.FLAT_COST.value), 0, 1))
    free = np.float32(max(known.BLUR_FREE.value + aim.blur, 0.0))
    soft = np.maximum(state[Row.SHOWN] - free, 0)
    lost = short ** np.float32(known.FLAT_POWER.value) + np.float32(known.BLUR_COST.value) * soft
    return np.asarray(np.clip(1 - lost, 0, 1))
