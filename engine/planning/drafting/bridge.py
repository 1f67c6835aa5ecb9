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
    Grams,
    NoiseDraws,
    a_day_later,
    expected_utility,
    look_of,
    utility,
)
from engine.model.particles import Belief
from engine.model.structures import Floats
from engine.model.tracker import doubted, outcome_probabilities, seen_as
from engine.planning.drafting.draft import NONE, Asked, draft_plan, load_range, usual_load
from engine.values.athlete import Athlete, Baseline
from engine.values.checkin import Look
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
#: Those of a load that is put off the plan's on purpose: no further than a modest step (a fifth).
ASKED = (0.8, 0.9, 1.1, 1.2)
#: The first loads that are followed.
AS_PLANNED, OWN = 0, 1
DUST_G = 0.1  # sums that lie no further apart are one load


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
    """What another load is held against: a loss of look counts `aversion` times a gain.

    Both are against what was `meant` by whoever planned it (g, a figure for each of the load's last
    days); where that is not given, against the load times `own`. That one stands where nothing else
    is worth more; what a load under it loses counts `less` times besides.
    """

    aversion: float = float(known.LOSS_AVERSION)
    own: float = 1.0
    less: float = 0.0
    meant: tuple[float, ...] | None = None


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
    factors = (1.0, against.own, *FACTORS)
    scaled = _scaled_by(week, within, factors)
    loads = np.array(scaled if against.meant is None else [*scaled, against.meant])
    tried, aim = _tried(few, week, rng, loads), few.frame.aim
    state = tried.state
    meant = tried.looks[OWN if against.meant is None else -1]
    gains = tried.looks[: len(factors)] - meant
    utilities = expected_utility(gains, against.aversion)
    if against.less:
        sums = tried.loads[: len(factors)].sum(axis=1)
        lost = np.minimum(gains, 0).mean(axis=-1)
        utilities = utilities + np.where(sums < sums[OWN] - DUST_G, against.less, 0) * lost
    enough = utilities[OWN] + float(known.WORTH_ALIKE)
    row = OWN if utilities.max() <= enough else int(np.argmax(utilities))
    as_was, (flat, full, spilled) = (
        doubted(outcome_probabilities(state[:, k], few.person, few.body, aim).mean(axis=1))
        for k in (AS_PLANNED, row)
    )
    return Suggestion(
        factor=factors[row],
        as_planned=as_was,
        carbs_g=tried.carbs_g(week, row),
        flat=flat,
        full=full,
        spilled=spilled,
        expected_utility=float(utilities[row]),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Telling:
    """A load put off the plan's to see how it looks, and the chances of that look.

    `tells` is how much look it is expected to win for the next load, over another run of the plan's.
    """

    factor: float
    carbs_g: tuple[float, ...]  # by day, the days before the load among them
    flat: float
    full: float
    spilled: float
    tells: float


def most_telling(
    few: Belief,
    week: Sequence[DayAhead],
    rng: np.random.Generator,
    *,
    within: Load = _USUAL_LOAD,
    aversion: float = float(known.LOSS_AVERSION),
) -> Telling | None:
    """The load whose look is worth most to the load after it; None where the plan's own is.

    For each load and each look that it may come in with, the best next load of those who would have
    looked so is found, against the plan's: the value of perfect knowledge of that look (Raiffa and
    Schlaifer 1961, preposterior analysis). One that would spill over more often than `TOLD_SPILLED`
    is left out.
    """
    factors = (1.0, *FACTORS)
    tried = _tried(few, week, rng, np.array(_scaled_by(week, within, factors)))
    gains = utility(tried.looks - tried.looks[AS_PLANNED], aversion)

    def after_the_look(odds: Floats) -> float:
        return sum(
            max(float((gains * seen_as(odds, look)).mean(axis=1).max()), 0.0) for look in Look
        )

    odds = outcome_probabilities(tried.state, few.person, few.body, few.frame.aim)
    same = after_the_look(odds[:, AS_PLANNED])
    rows = [
        k
        for k, factor in enumerate(factors)
        if factor in ASKED and odds[-1, k].mean() <= known.TOLD_SPILLED.value
    ]
    told = {k: after_the_look(odds[:, k]) - same for k in rows}
    best = max(told, key=lambda k: told[k], default=AS_PLANNED)
    if told.get(best, 0.0) <= known.WORTH_TELLING.value:
        return None
    flat, full, spilled = doubted(odds[:, best].mean(axis=1))
    return Telling(
        factor=factors[best],
        carbs_g=tried.carbs_g(week, best),
        flat=flat,
        full=full,
        spilled=spilled,
        tells=told[best],
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class _Tried:
    """The week lived by the same particles with each load: times each factor, and what was meant."""

    loads: Grams  # loads x days
    state: Floats  # on stage morning: rows x loads x particles
    looks: Floats  # loads x particles

    def carbs_g(self, week: Sequence[DayAhead], row: int) -> tuple[float, ...]:
        before = week[: len(week) - self.loads.shape[1]]
        return (*(float(day.planned.carb_g) for day in before), *map(float, self.loads[row]))


def _scaled_by(
    week: Sequence[DayAhead], within: Load, factors: Sequence[float]
) -> list[list[float]]:
    """The load times each factor, by day."""
    if not 1 <= within.days <= len(week):
        raise ValueError(f"the load takes {within.days} of {len(week)} days: give the whole week")
    load = week[len(week) - within.days :]
    return [_scaled(load, factor, within.total_g) for factor in factors]


def _tried(few: Belief, week: Sequence[DayAhead], rng: np.random.Generator, loads: Grams) -> _Tried:
    chance = NoiseDraws(len(week), few.state.shape[1], rng)
    first = len(week) - loads.shape[1]
    state = few.state[:LOOK_ROWS, None]
    for number, day in enumerate(week):
        doses = [float(day.planned.carb_g)] if number < first else loads[:, number - first]
        if number == first:
            state = np.repeat(state, len(loads), axis=1)
        state = a_day_later(few, state, doses, day, chance.on(number))
    return _Tried(
        loads=loads, state=state, looks=look_of(state, few.person, few.body, few.frame.aim)
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
