"""What each load day may have instead of its plan, and a load inside it that anyone weighs out."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from engine.decision.beliefs import intake_of
from engine.evidence import deciding as e
from engine.model.forecast import DayAhead
from engine.values.athlete import Athlete, Baseline
from engine.values.limits import GUARD_RAIL, GuardRails, Limits, round_carbs
from engine.values.plan import PLAN_DAYS, PeakPlan, Phase


@dataclass(frozen=True, slots=True)
class Room:
    """What each load day may have by days out, and which bound makes each end."""

    low: Mapping[int, float]
    high: Mapping[int, float]
    low_bound: Mapping[int, str]
    high_bound: Mapping[int, str]

    @classmethod
    def of(cls, athlete: Athlete, plan: PeakPlan, limits: Limits | None) -> Room:
        rails = GuardRails.of(athlete)
        day, load = rails.rail("carb_ceiling_g"), rails.rail("load_total_g")
        change = e.SUGGESTED_CHANGE_G_PER_KG.value * athlete.body_mass_kg
        floor, ceiling = (day.low, GUARD_RAIL), (day.high, GUARD_RAIL)
        if limits is not None:
            change = limits.change_per_day_g
            floor = (limits.carb_floor_g, "carb_floor_g")
            ceiling = (limits.carb_ceiling_g, "carb_ceiling_g")
        # Each day has its share of the total, so that it is never the last day that pays for it.
        most = load.high / max(plan.load_g, 1.0)
        lows, highs = {}, {}
        for out in plan.load_days:
            carb_g = planned_g(plan, out)
            lows[out] = max(floor, (carb_g - change, "change_per_day_g"))
            high = min(ceiling, (carb_g + change, "change_per_day_g"), (carb_g * most, GUARD_RAIL))
            highs[out] = max(high, lows[out], key=lambda bound: bound[0])
        return cls(
            low={out: grams for out, (grams, _) in lows.items()},
            high={out: grams for out, (grams, _) in highs.items()},
            low_bound={out: bound for out, (_, bound) in lows.items()},
            high_bound={out: bound for out, (_, bound) in highs.items()},
        )

    def at(self, plan: PeakPlan, factor: float) -> Room:
        """Room for no other load than the plan's times `factor`, as far as it is inside this one."""
        return self.between(plan, factor, factor)

    def between(self, plan: PeakPlan, one: float, other: float) -> Room:
        """Room for the plan's load times factors between these two, as far as inside this one."""
        low, high = (
            {
                out: min(max(factor * planned_g(plan, out), self.low[out]), self.high[out])
                for out in plan.load_days
            }
            for factor in sorted((one, other))
        )
        return replace(self, low=low, high=high)


def day_ahead(plan: PeakPlan, baseline: Baseline, out: int, room: Room) -> DayAhead:
    target = plan.day(out)
    carb_g = target.carb_g if target is not None else baseline.carb_g
    in_load = plan.phase(out) is Phase.LOAD
    low, high = (room.low[out], room.high[out]) if in_load else (carb_g, carb_g)
    return DayAhead(planned=intake_of(target, carb_g), low_g=low, high_g=high, in_load=in_load)


def scaled(plan: PeakPlan, carbs_g: Sequence[float], room: Room) -> PeakPlan:
    """The plan with the load as suggested, in figures that anyone weighs out."""
    load_days = plan.load_days
    for out, carb_g in zip((out for out in PLAN_DAYS if out > 0), carbs_g, strict=True):
        if out in load_days and abs(carb_g - planned_g(plan, out)) > 1e-6:
            plan = plan.with_carbs(out, _weighed_out(carb_g, room.low[out], room.high[out]))
    return plan


def _weighed_out(carb_g: float, low: float, high: float) -> float:
    """Rounded, inside both ends; an end itself where no round figure lies between them."""
    grain = e.ROUND_TO_G.value
    grams = round_carbs(carb_g)
    if grams > high:
        grams = math.floor(high / grain + 1e-9) * grain
    if grams < low:
        grams = math.ceil(low / grain - 1e-9) * grain
    return grams if low <= grams <= high else min(max(carb_g, low), high)


def bound_of(plan: PeakPlan, factor: float, room: Room) -> str | None:
    """The bound that cut the heaviest of the days that were held back."""
    for out in sorted(plan.load_days, key=lambda out: -planned_g(plan, out)):
        wanted = factor * planned_g(plan, out)
        if wanted > room.high[out] + 1e-6:
            return room.high_bound[out]
        if wanted < room.low[out] - 1e-6:
            return room.low_bound[out]
    return None


def planned_g(plan: PeakPlan, out: int) -> float:
    """The day's carbohydrate in the plan, g; 0 for one that it has not."""
    day = plan.day(out)
    return day.carb_g if day is not None else 0.0
