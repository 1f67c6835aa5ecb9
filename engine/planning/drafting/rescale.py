"""The plan of the next run, scaled before its week begins by what earlier runs have taught.

A trial or show says more of an athlete than a week of mornings does: where the ceiling lies, and
how much the look carries. So the load is scaled as a whole first, for the coach to sign off, and
the mornings then move single days about it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import NamedTuple

import numpy as np

from engine.evidence.body import tracking as known
from engine.model.forecast import (
    LOOK_ROWS,
    PARTICLES,
    DayAhead,
    NoiseDraws,
    a_day_later,
    look_of,
    subsample,
    worth,
)
from engine.model.particles import Belief
from engine.model.tracker import doubted, outcome_probabilities

FACTORS = tuple(round(0.60 + 0.05 * k, 2) for k in range(19))
#: The first loads that are followed.
AS_PLANNED, OWN = 0, 1


@dataclass(frozen=True, slots=True, kw_only=True)
class Suggestion:
    """A load scaled as a whole, and the chances at stage time if it is followed to the gram."""

    factor: float  # 1 where no other load is worth a change
    as_planned: tuple[float, float, float]  # flat, full and spilled over with the load as it was
    carbs_g: tuple[float, ...]  # by day, the days before the load among them
    flat: float
    full: float
    spilled: float
    worth: float  # see `engine.model.forecast.DoseForecast`


class Against(NamedTuple):
    """What another load is held against: a loss of look counts `aversion` times a gain, both against
    the load times `own`, which stands where nothing else is worth a change.
    """

    aversion: float = float(known.LOSS_AVERSION)
    own: float = 1.0


class Load(NamedTuple):
    """How many days before the event it takes, and what they may come to."""

    days: int = 3
    total_g: float = np.inf


_AS_IT_IS, _USUAL_LOAD = Against(), Load()


def suggested_plan(
    belief: Belief,
    week: Sequence[DayAhead],
    rng: np.random.Generator,
    *,
    within: Load = _USUAL_LOAD,
    particles: int = PARTICLES,
    against: Against = _AS_IT_IS,
) -> Suggestion:
    """The load most worth planning for a belief carried over to the week's first morning.

    `week` holds every day up to stage morning; of its last `within.days` those in the load are scaled
    together, each inside its own limits, the sum inside `within.total_g`. All others stay as planned.
    """
    if not 1 <= within.days <= len(week):
        raise ValueError(f"the load takes {within.days} of {len(week)} days: give the whole week")
    few = subsample(belief, particles, rng)
    chance = NoiseDraws(len(week), few.state.shape[1], rng)
    before, load = week[: len(week) - within.days], week[len(week) - within.days :]
    state = few.state[:LOOK_ROWS, None]
    for number, day in enumerate(before):
        state = a_day_later(few, state, [float(day.planned.carb_g)], day, chance, number)
    factors = (1.0, against.own, *FACTORS)
    loads = np.array([_scaled(load, factor, within.total_g) for factor in factors])
    state = np.repeat(state, len(loads), axis=1)
    for number, day in enumerate(load):
        state = a_day_later(few, state, loads[:, number], day, chance, len(before) + number)
    aim = few.frame.aim
    looks = look_of(state, few.person, few.body, aim)
    worths = worth(looks - looks[OWN], against.aversion)
    row = OWN if worths.max() <= float(known.WORTH_ALIKE) else int(np.argmax(worths))
    as_was, (flat, full, spilled) = (
        doubted(outcome_probabilities(state[:, k], few.person, few.body, aim).mean(axis=1))
        for k in (AS_PLANNED, row)
    )
    return Suggestion(
        factor=factors[row],
        as_planned=as_was,
        carbs_g=(*(float(day.planned.carb_g) for day in before), *map(float, loads[row])),
        flat=flat,
        full=full,
        spilled=spilled,
        worth=float(worths[row]),
    )


def _scaled(load: Sequence[DayAhead], factor: float, total_g: float) -> list[float]:
    """The load times `factor`, each day inside its limits, the sum inside the total."""
    left, doses = total_g, []
    for day in load:
        if not day.in_load:
            doses.append(float(day.planned.carb_g))
            continue
        wanted = float(np.clip(factor * float(day.planned.carb_g), day.low_g, day.high_g))
        doses.append(max(min(wanted, left), 0.0))
        left -= doses[-1]
    return doses
