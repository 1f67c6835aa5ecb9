"""A plan taken off one athlete's body and habits, to be put on another's.

The load and the day itself go by body mass, as published loads are given (g/kg); what is eaten and
drunk before it goes by the athlete's own habit, as a draft does. Training, cardio and steps stay as
they are. Nothing is checked here but what a day target is: limits have the last word where it is used.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from engine.evidence.deciding import ROUND_TO_G
from engine.values.athlete import Athlete, Baseline
from engine.values.limits import LIMIT_KEYS, GuardRails, Limits, nearest_inside, round_carbs
from engine.values.plan import DayTarget, PeakPlan

PER_KG, OF_HABIT = "per_kg", "of_habit"

#: What each figure is rounded to where it was scaled; carbs as everywhere.
GRAIN = {"protein_g": 1.0, "fat_g": 1.0, "fibre_g": 1.0, "water_l": 0.05, "sodium_mg": 10.0}
WATER_GRAIN_L = 0.05
AS_IT_IS = ("training", "cardio_min", "steps", "phase")
#: The most that a day target can hold; a limit refuses such a figure long before.
MOST = {
    "carb_g": 1500, "protein_g": 600, "fat_g": 400, "fibre_g": 150,
    "water_l": 15, "sodium_mg": 20000,
}  # fmt: skip

#: Basis and share; None where the plan gives no figure: "as always".
Share = tuple[str, float] | None
Day = dict[str, Any]


def relative(plan: PeakPlan, athlete: Athlete, baseline: Baseline) -> list[Day]:
    """The plan's days as shares: key -> [basis, share], with words and minutes as they are."""
    return [
        {"days_out": target.days_out}
        | _shares(target, athlete, baseline, fills=plan.fills(target.days_out))
        | {key: getattr(target, key) for key in AS_IT_IS}
        for target in plan
    ]


def scaled(days: Iterable[Mapping[str, Any]], athlete: Athlete, baseline: Baseline) -> PeakPlan:
    """The plan that these shares make for this athlete (g, L, mg)."""
    return PeakPlan(tuple(_day(day, athlete, baseline) for day in days))


def relative_limits(limits: Limits, athlete: Athlete, baseline: Baseline) -> Day:
    """The limits as shares: grams by body mass, water by habit (by body mass where there is none)."""
    found: Day = {}
    for key, (unit, _) in LIMIT_KEYS.items():
        by_habit = unit == "L" and baseline.water_l > 0
        basis = (OF_HABIT, baseline.water_l) if by_habit else (PER_KG, athlete.body_mass_kg)
        found[key] = [basis[0], getattr(limits, key) / basis[1]]
    return found


def scaled_limits(shares: Mapping[str, Any], athlete: Athlete, baseline: Baseline) -> Limits:
    """The limits that these shares make for this athlete, each kept inside its safety bound."""
    rails = GuardRails.of(athlete)
    bounds = {}
    for key, (basis, part) in shares.items():
        of = baseline.water_l if basis == OF_HABIT else athlete.body_mass_kg
        grain = WATER_GRAIN_L if LIMIT_KEYS[key].unit == "L" else ROUND_TO_G.value
        bounds[key] = nearest_inside(part * of, rails.rail(key), grain)
    for floor, ceiling in (
        ("carb_floor_g", "carb_ceiling_g"),
        ("water_floor_l", "water_ceiling_l"),
    ):
        bounds[floor] = min(bounds[floor], bounds[ceiling])
    return Limits(guard_rails=rails, **bounds)


def _shares(
    target: DayTarget, athlete: Athlete, baseline: Baseline, *, fills: bool
) -> dict[str, list[str | float] | None]:
    """`fills`: whether the day is there to fill the stores, so that its carbs go by body mass."""
    return {
        key: _listed(_share(key, getattr(target, key), fills, athlete, baseline)) for key in MOST
    }


def _listed(share: Share) -> list[str | float] | None:
    return None if share is None else list(share)


def _share(
    key: str, value: float | None, fills: bool, athlete: Athlete, baseline: Baseline
) -> Share:
    """A figure whose habit is not known is by body mass: there is nothing else to hold it against."""
    if value is None:
        return None
    habit = getattr(baseline, key)
    by_mass = key == "carb_g" and fills
    if by_mass or not habit:
        return PER_KG, value / athlete.body_mass_kg
    return OF_HABIT, value / habit


def _day(day: Mapping[str, Any], athlete: Athlete, baseline: Baseline) -> DayTarget:
    figures: dict[str, Any] = {key: _figure(key, day[key], athlete, baseline) for key in MOST}
    kept: dict[str, Any] = {
        key: day.get(key) for key in AS_IT_IS
    }  # a template of before phases has none
    return DayTarget(days_out=day["days_out"], **figures, **kept)


def _figure(key: str, share: Share, athlete: Athlete, baseline: Baseline) -> float | None:
    """None where the new athlete does not count it; their habit where the template says no figure."""
    habit = getattr(baseline, key)
    if habit is None:
        return None
    if share is None:
        return float(habit)
    basis, part = share
    if basis == OF_HABIT and abs(part - 1) < 1e-9:
        return float(habit)  # steady at habit: not even rounding moves it
    value = part * (athlete.body_mass_kg if basis == PER_KG else habit)
    return min(round_carbs(value) if key == "carb_g" else _rounded(key, value), MOST[key])


def _rounded(key: str, value: float) -> float:
    return round(round(value / GRAIN[key]) * GRAIN[key], 6)
