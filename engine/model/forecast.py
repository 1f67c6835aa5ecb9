"""What a dose of carbohydrate would lead to at stage time, and which allowed dose is worth it.

Each candidate for the coming day is followed to stage time under the same particles and the same
chance, with the days after it re-planned inside the limits. A dose is judged against the plan
particle by particle: what it may win, less what it may lose, a loss counting more than a win. What
today's change may lose counts besides, as little or as much as later days can make it good. So a
change has to be worth it, and the less is known of an athlete the nearer the plan it stays.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from engine.evidence.body import tracking as known
from engine.model.aim import USUAL_AIM, Aim
from engine.model.particles import Band, Belief, Person
from engine.model.physiology import Intake
from engine.model.structures import Bodies, Floats, Row, a_day, hours_lifted, mass_change_kg
from engine.model.tracker import doubted, level_shift, levels_of, outcome_probabilities

Grams = NDArray[np.float64]

PARTICLES = 400
#: How the days after the first may be moved, as shares of what their limits allow; all of them go
#: the same way, as the mornings by then decide between them anyway. The first is the plan's.
REPLANNING_FRACTIONS = (0.0, -0.6, 0.6)
#: Rows of the state that the look needs; the others only move body mass.
LOOK_ROWS = Row.MEALS + 1


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
    expected_utility: float  # look won over the plan, less the look lost, which counts more
    tomorrow: Band
    replanned_g: tuple[float, ...]  # the days after it, as re-planned here


@dataclass(frozen=True, slots=True, kw_only=True)
class Stakes:
    """How often look that is lost counts beside look that is won.

    `loss` is what is lost against the plan. What today's change alone may lose counts besides, `less`
    and `more` of carbohydrate, on the load's last day and before it.
    """

    loss: float
    less: float = 0.0
    less_last: float = 0.0
    more: float = 0.0
    more_last: float = 0.0

    def of_a_step(self, ahead: Sequence[DayAhead], doses: Sequence[float]) -> Grams:
        """What counts besides, for each dose of the day to be set."""
        last = len(ahead) == 1
        less, more = (self.less_last, self.more_last) if last else (self.less, self.more)
        return np.where(np.asarray(doses) > float(ahead[0].planned.carb_g), more, less)


#: An event with no week behind it that was looked at.
UNTRIED = Stakes(
    loss=float(known.LOSS_AVERSION),
    less=float(known.LESS_TODAY),
    less_last=float(known.LESS_ON_THE_LAST_DAY),
    more_last=float(known.MORE_ON_THE_LAST_DAY),
)
#: A trial, and whatever has one behind it.
REHEARSED = Stakes(loss=float(known.LOSS_AVERSION_REHEARSED))


class Doses(NamedTuple):
    """The doses (g) of the first day ahead that are looked into.

    `load_left_g` bounds the sum over the days in the load; a dose over it is followed none the less,
    with nothing left for later.
    """

    grams: Sequence[float]
    load_left_g: float = np.inf


def forecast(
    belief: Belief,
    ahead: Sequence[DayAhead],
    doses: Doses,
    rng: np.random.Generator,
    stakes: Stakes = UNTRIED,
) -> list[DoseForecast]:
    """An outlook for each dose of the first day ahead, in the order of the doses.

    `ahead` holds the days up to stage morning, the day to be set first. `stakes` say what a dose is
    worth.
    """
    if not ahead or not doses.grams:
        raise ValueError("a forecast needs a day ahead and a dose")
    few = subsample(belief, PARTICLES, rng)
    ends = _followed(few, ahead, doses, rng)
    lost = np.minimum(ends.looks - ends.unmoved, 0).mean(axis=-1)
    utilities = expected_utility(ends.looks - ends.as_planned, stakes.loss)
    utilities = utilities + stakes.of_a_step(ahead, doses.grams)[:, None] * lost
    bands = np.percentile(ends.tomorrow_kg, (10, 50, 90), axis=1)
    found = []
    for k, way in enumerate(utilities.argmax(axis=1)):
        flat, full, spilled = doubted(ends.odds[:, k, way].mean(axis=-1))
        low, middle, high = bands[:, k]
        found.append(
            DoseForecast(
                carb_g=float(doses.grams[k]),
                flat=flat,
                full=full,
                spilled=spilled,
                look=float(ends.looks[k, way].mean()),
                expected_utility=float(utilities[k, way]),
                tomorrow=Band(low=float(low), middle=float(middle), high=float(high)),
                replanned_g=tuple(float(grams[k, way]) for grams in ends.later_g),
            )
        )
    return found


@dataclass(frozen=True, slots=True, kw_only=True)
class _Ends:
    """Where doses lead, each on several ways to go on after it: doses x ways x particles."""

    tomorrow_kg: Floats  # doses x particles
    looks: Floats
    as_planned: Floats  # the look of each particle had the plan been followed
    unmoved: Floats  # the same if from today on it is
    odds: Floats  # flat, full and spilled over first
    later_g: tuple[Grams, ...]  # doses x ways, for each day after the first


def _followed(
    few: Belief, ahead: Sequence[DayAhead], asked: Doses, rng: np.random.Generator
) -> _Ends:
    """Every dose with every way to go on, lived side by side by the same particles."""
    doses, load_left_g = asked
    chance = NoiseDraws(len(ahead), few.state.shape[1], rng)
    # The first row has followed the plan, the second follows it from today on.
    planned_g = float(ahead[0].planned.carb_g)
    given = [np.array([planned_g, planned_g, *doses])]
    state = np.stack([few.planned, *[few.state] * (1 + len(doses))], axis=1)
    state = a_day_later(few, state, given[0], ahead[0], chance.on(0))
    person, bodies, aim = few.person, few.body, few.frame.aim
    scales = few.frame.body_mass_kg * (1 + person["scale"])
    scales = scales + mass_change_kg(state[:, 2:], few.first[:, None], bodies) + chance.tomorrow
    ways = REPLANNING_FRACTIONS if len(ahead) > 1 else (0.0,)
    way = np.array([0.0, 0.0, *ways * len(doses)])
    rows = np.array([0, 1, *np.repeat(np.arange(2, len(doses) + 2), len(ways))])
    state, given = state[:LOOK_ROWS, rows], [given[0][rows]]
    for number, day in enumerate(ahead[1:], 1):
        given.append(_replanned(given, way, ahead[: number + 1], load_left_g))
        state = a_day_later(few, state, given[number], day, chance.on(number))
    looks = look_of(state, person, bodies, aim)
    shape = (len(doses), len(ways))
    return _Ends(
        tomorrow_kg=scales,
        looks=looks[2:].reshape(*shape, -1),
        as_planned=looks[0],
        unmoved=looks[1],
        odds=outcome_probabilities(state[:, 2:], person, bodies, aim).reshape(3, *shape, -1),
        later_g=tuple(grams[2:].reshape(shape) for grams in given[1:]),
    )


def _replanned(
    given: Sequence[Grams], way: Grams, ahead: Sequence[DayAhead], load_left_g: float
) -> Grams:
    """The last of these days' doses: moved each its way inside its room and what the total leaves."""
    day = ahead[-1]
    planned = float(day.planned.carb_g)
    doses = planned + way * np.where(way > 0, day.high_g - planned, planned - day.low_g)
    if day.in_load:
        eaten = sum(grams for grams, one in zip(given, ahead[:-1], strict=True) if one.in_load)
        doses = np.minimum(doses, load_left_g - eaten)
    doses = np.maximum(doses, 0.0)
    doses[0] = planned
    return np.asarray(doses)


def expected_utility(gains: Floats, aversion: float = float(known.LOSS_AVERSION)) -> Floats:
    """Mean gain of look along the last axis, losses counted `aversion` times."""
    return np.asarray(utility(gains, aversion).mean(axis=-1))


def utility(gains: Floats, aversion: float) -> Floats:
    """Each gain of look, a loss counted `aversion` times."""
    return np.where(gains < 0, aversion * gains, gains)


def choose(outlooks: Sequence[DoseForecast], planned_g: float) -> DoseForecast:
    """The dose most worth giving; of doses about as good, and where none is, nearest the plan."""
    best = max(outlook.expected_utility for outlook in outlooks)
    alike = [one for one in outlooks if one.expected_utility >= best - float(known.WORTH_ALIKE)]
    return min(alike, key=lambda one: abs(one.carb_g - planned_g))


class DayNoise(NamedTuple):
    """The chance of one day, by particle: what is eaten beside what is told, and what is stored."""

    intake: Floats
    store: Floats


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

    def on(self, day: int) -> DayNoise:
        return DayNoise(self.intake[day], self.store[day])


def a_day_later(
    few: Belief, state: Floats, doses: Sequence[float] | Grams, day: DayAhead, chance: DayNoise
) -> Floats:
    """The state (rows x ways x particles) a day later, where each way ate its own dose (g).

    A state that is cut to `LOOK_ROWS` is followed without what only body mass needs.
    """
    told = np.exp(few.person["intake"]) * chance.intake
    carb_g = np.asarray(np.asarray(doses, dtype=np.float32)[:, None] * told)
    look_only = len(state) < len(Row)
    new = a_day(state, carb_g, hours_lifted(day.planned), few.body, look_only=look_only)
    new[Row.MUSCLE] = np.minimum(new[Row.MUSCLE] * chance.store, few.body.ceiling_g)
    return new


def subsample(belief: Belief, particles: int, rng: np.random.Generator) -> Belief:
    chosen = rng.permutation(belief.state.shape[1])[:particles]
    return replace(
        belief,
        person=belief.person.chosen(chosen),
        state=belief.state[:, chosen],
        first=belief.first[:, chosen],
        planned=belief.planned[:, chosen],
    )


def look_of(state: Floats, person: Person, bodies: Bodies, aim: Aim = USUAL_AIM) -> Floats:
    """The look of each particle, 0 to 1: worth less the flatter, and the more the spill shows.

    Where an event asks for no more than so much fullness, past that is worth less again.
    """
    full_at = person["flat"] + np.float32(known.FULL_OVER_FLAT.value)
    if aim.fullness:
        full_at = full_at + level_shift(person, aim.fullness)
    levels = levels_of(state, bodies)
    short = np.clip((full_at - levels) / np.float32(known.FLAT_COST.value), 0, 1)
    if aim.over is not None:
        past = levels - full_at - level_shift(person, aim.over)
        short = np.maximum(short, np.clip(past / np.float32(known.FLAT_COST.value), 0, 1))
    free = np.float32(max(known.BLUR_FREE.value + aim.blur, 0.0))
    soft = np.maximum(state[Row.SHOWN] - free, 0)
    lost = short ** np.float32(known.FLAT_POWER.value) + np.float32(known.BLUR_COST.value) * soft
    return np.asarray(np.clip(1 - lost, 0, 1))
