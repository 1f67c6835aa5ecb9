"""A plan and limits that do not fit together: which limit would have to give way, or which figure.

Neither is done by itself: both are worked out so that a coach can choose by name. A safety bound gives
way to nothing.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from engine.evidence.deciding import ROUND_TO_G
from engine.values.limits import LIMIT_KEYS, Limits, Problem, plan_problems
from engine.values.plan import DayTarget, PeakPlan

_WATER_GRAIN_L = 0.05


@dataclass(frozen=True, slots=True)
class Moved:
    """A limit as it is and as it would have to be, in its own unit."""

    key: str
    was: float
    becomes: float


@dataclass(frozen=True, slots=True)
class Room:
    """The limits with room for a plan, and what moves for it.

    `limits` is None where a safety bound stands in the way; `past_bounds` says at which limits.
    """

    limits: Limits | None
    moved: tuple[Moved, ...]
    past_bounds: tuple[Problem, ...]


def room_made(plan: PeakPlan, limits: Limits) -> Room:
    """The nearest limits that hold the plan: each that it leaves moved just so far, none further."""
    needed: dict[str, float] = {}
    past: list[Problem] = []
    for problem in plan_problems(plan, limits):
        rail = limits.guard_rails.rail(problem.limit)
        if not rail.low <= problem.value <= rail.high:
            past.append(problem)
            continue
        grain = _WATER_GRAIN_L if LIMIT_KEYS[problem.limit].unit == "L" else ROUND_TO_G.value
        upward = problem.value > problem.bound
        steps = problem.value / grain
        whole = (math.ceil(steps - 1e-9) if upward else math.floor(steps + 1e-9)) * grain
        wanted = round(min(max(whole, rail.low), rail.high), 3)
        best = max if upward else min
        needed[problem.limit] = best(needed.get(problem.limit, wanted), wanted)
    moved = tuple(Moved(key, getattr(limits, key), value) for key, value in needed.items())
    roomy = limits.by_key | needed
    return Room(
        None if past else Limits(guard_rails=limits.guard_rails, **roomy), moved, tuple(past)
    )


def cut_to_fit(plan: PeakPlan, limits: Limits) -> PeakPlan:
    """The plan with each figure that leaves the limits put to the nearest one that they hold.

    A load over its total is scaled down as a whole, in figures that can be weighed out.
    """
    inside = PeakPlan(tuple(_day(day, limits) for day in plan))
    load_days = inside.load_days
    load = [day for day in inside if day.days_out in load_days]
    total, room = sum(day.carb_g for day in load), limits.load_total_g
    if total <= room:
        return inside
    over_floor = total - len(load) * limits.carb_floor_g
    if over_floor <= 0:
        return inside
    share = max(room - len(load) * limits.carb_floor_g, 0) / over_floor
    grain = ROUND_TO_G.value
    for day in load:
        wanted = limits.carb_floor_g + (day.carb_g - limits.carb_floor_g) * share
        whole = max(math.floor(wanted / grain + 1e-9) * grain, limits.carb_floor_g)
        inside = inside.with_carbs(day.days_out, whole)
    return inside


def _day(day: DayTarget, limits: Limits) -> DayTarget:
    return replace(
        day,
        carb_g=_between(day.carb_g, limits.carb_floor_g, limits.carb_ceiling_g),
        water_l=_between(day.water_l, limits.water_floor_l, limits.water_ceiling_l),
    )


def _between(value: float, low: float, high: float) -> float:
    return min(max(value, low), high)
