"""The days between two events a week or two apart: eat, drink, no second depletion, a smaller load.

What an athlete carries from the first event stays for days (`engine.evidence.planning.bridging`), so
carbs go back to habit and not under it; water and salt stay at habit throughout. The day after is no
load day.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from engine.evidence.deciding import ROUND_TO_G
from engine.evidence.planning import bridging as e
from engine.planning.drafting.draft import NONE, draft_plan, load_range, usual_load
from engine.values.athlete import Athlete, Baseline
from engine.values.limits import GuardRails, nearest_inside
from engine.values.plan import PLAN_DAYS, DayTarget, PeakPlan, Phase

#: How a bridge is kept as the shape of a plan.
BRIDGE = "bridge"
#: After a show nobody trains to failure, and legs stay off: pump and posing.
TRAINING = "light pump session and posing, no legs, nothing to failure"


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
    whole = draft_plan(athlete, baseline, "even", mean, NONE)
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
