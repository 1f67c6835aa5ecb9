"""A load set anew: the week between two shows, and a plan scaled as a whole by what was learnt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import NamedTuple

import numpy as np

from engine.evidence.body import tracking as known
from engine.evidence.deciding import ROUND_TO_G
from engine.evidence.planning import drafting as e
from engine.evidence.source import mark
from engine.model.forecast import (
    LOOK_ROWS,
    DayAhead,
    NoiseDraws,
    a_day_later,
    expected_utility,
    look_of,
)
from engine.model.particles import Belief
from engine.model.tracker import doubted, outcome_probabilities
from engine.planning.drafting.draft import NONE, Asked, draft_plan, load_range, usual_load
from engine.values.athlete import Athlete, Baseline
from engine.values.limits import GuardRails, nearest_inside
from engine.values.plan import PLAN_DAYS, DayTarget, PeakPlan, Phase

#: How a bridge is kept as the shape of a plan.
BRIDGE = "bridge"
#: After a show nobody trains to failure, and legs stay off: pump and posing.
TRAINING = mark("light pump session and posing, no legs, nothing to failure")


def is_bridge(earlier: date, event: date) -> bool:
    """Whether an event follows another one so closely that the time between is a bridge."""
    return 0 < (event - earlier).days <= e.BRIDGE_WITHIN_DAYS.value


def bridge_plan(
    athlete: Athlete, baseline: Baseline, days_between: int, load_g_per_kg: float | None = None
) -> PeakPlan:
    """The days from the one after the earlier event to the day itself.

    `days_between`: from event to event, 1 or more. `load_g_per_kg`: the mean load day; None takes a
    share of the published one. Raises ValueError for a load outside published ranges.
    """
    if days_between < 1:
        raise ValueError("the second event is on a later day")
    mean = load_g_per_kg if load_g_per_kg is not None else usual_bridge_load(athlete)
    whole = draft_plan(athlete, baseline, Asked("even", mean, NONE))
    first = min(days_between - 1, max(PLAN_DAYS))
    return PeakPlan(
        tuple(
            _day(day, athlete, baseline, days_between, before_load=day.days_out > whole.first_load_day)
            for day in whole if day.days_out <= first
        )
    )  # fmt: skip


def usual_bridge_load(athlete: Athlete) -> float:
    """The mean load day that is drafted after a bridge (g/kg)."""
    least, _ = load_range("even")
    return max(round(usual_load(athlete.sex) * float(e.BRIDGE_LOAD_SHARE), 1), least)


def _day(
    day: DayTarget, athlete: Athlete, baseline: Baseline, days_between: int, *, before_load: bool
) -> DayTarget:
    if day.days_out == 0:
        return day
    day_after = day.days_out == days_between - 1
    if not before_load and not (day_after and days_between > 2):
        return day
    rail = GuardRails.of(athlete).rail("carb_floor_g")
    return replace(
        day,
        carb_g=nearest_inside(baseline.carb_g, rail, ROUND_TO_G.value),
        protein_g=round(baseline.protein_g),
        fat_g=round(baseline.fat_g),
        fibre_g=baseline.fibre_g if before_load else day.fibre_g,
        training=TRAINING,
        phase=Phase.USUAL,
        cardio_min=min(e.BRIDGE_CARDIO_MIN.value, day.cardio_min or 0),
    )


# The plan of the next run, scaled before its week begins by what earlier runs have taught.
#
# A trial or show says more of an athlete than a week of mornings does: where the ceiling lies, and
# how much the look carries. So the load is scaled as a whole first, for the coach to sign off, and
# the mornings then move single days about it.

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
    expected_utility: float  # see `engine.model.forecast.DoseForecast`


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
    few: Belief,
    week: Sequence[DayAhead],
    rng: np.random.Generator,
    *,
    within: Load = _USUAL_LOAD,
    against: Against = _AS_IT_IS,
) -> Suggestion:
    """The load most worth planning for a belief carried over to the week's first morning.

    `week` holds every day up to stage morning; of its last `within.days` those in the load are scaled
    together, each inside its own limits, the sum inside `within.total_g`. All others stay as planned.
    """
    if not 1 <= within.days <= len(week):
        raise ValueError(f"the load takes {within.days} of {len(week)} days: give the whole week")
    chance = NoiseDraws(len(week), few.state.shape[1], rng)
    before, load = week[: len(week) - within.days], week[len(week) - within.days :]
    state = few.state[:LOOK_ROWS, None]
    for number, day in enumerate(before):
        state = a_day_later(few, state, [float(day.planned.carb_g)], day, chance.on(number))
    factors = (1.0, against.own, *FACTORS)
    loads = np.array([_scaled(load, factor, within.total_g) for factor in factors])
    state = np.repeat(state, len(loads), axis=1)
    for number, day in enumerate(load):
        state = a_day_later(few, state, loads[:, number], day, chance.on(len(before) + number))
    aim = few.frame.aim
    looks = look_of(state, few.person, few.body, aim)
    utilities = expected_utility(looks - looks[OWN], against.aversion)
    row = OWN if utilities.max() <= float(known.WORTH_ALIKE) else int(np.argmax(utilities))
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
        expected_utility=float(utilities[row]),
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
