"""What a set of limits costs: how far a load may be corrected inside them, beside what may be needed.

The need is that of virtual athletes, not of people: a plausible size to hold limits against, and no
promise that an athlete needs so much.
"""

from __future__ import annotations

from dataclasses import dataclass

from engine.evidence import deciding as e
from engine.values.limits import Limits
from engine.values.plan import PeakPlan


@dataclass(frozen=True, slots=True, kw_only=True)
class Room:
    """Grams that the mean load day may be moved by either way, and the share of the need they cover.

    Shares are of `engine.evidence.deciding.PLAUSIBLE_NEED_G_PER_KG`, or of what the guard rail
    leaves where that is less; 1 is all of it.
    """

    up_g: float
    down_g: float
    up_share: float
    down_share: float

    @property
    def share(self) -> float:
        """The share of a need that may lie either way: the smaller one."""
        return min(self.up_share, self.down_share)


def room_to_correct(plan: PeakPlan, limits: Limits) -> Room | None:
    """How far these limits let this plan's load be corrected; None for a plan without a load."""
    load_days = plan.load_days
    load = [day.carb_g for day in plan if day.days_out in load_days]
    if not load:
        return None
    rails = limits.guard_rails
    day, total = rails.rail("carb_ceiling_g"), rails.rail("load_total_g")
    need = e.PLAUSIBLE_NEED_G_PER_KG.value * rails.body_mass_kg
    change = limits.change_per_day_g
    up = _up(load, change, limits.carb_ceiling_g, limits.load_total_g)
    down = _down(load, change, limits.carb_floor_g)
    return Room(
        up_g=up,
        down_g=down,
        up_share=_share(up, _up(load, need, day.high, total.high)),
        down_share=_share(down, _down(load, need, day.low)),
    )


def _up(load: list[float], change_g: float, ceiling_g: float, total_g: float) -> float:
    days = sum(max(min(change_g, ceiling_g - carb_g), 0.0) for carb_g in load)
    return max(min(days, total_g - sum(load)), 0.0) / len(load)


def _down(load: list[float], change_g: float, floor_g: float) -> float:
    return sum(max(min(change_g, carb_g - floor_g), 0.0) for carb_g in load) / len(load)


def _share(room_g: float, need_g: float) -> float:
    return min(room_g / need_g, 1.0) if need_g > 0 else 1.0
