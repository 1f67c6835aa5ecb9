"""What the days of a plan are for, and a plan as a template that others are drafted from."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import Any

from engine.evidence import deciding
from engine.evidence.deciding import ROUND_TO_G
from engine.evidence.planning import drafting as e
from engine.values.athlete import Athlete, Baseline
from engine.values.limits import LIMIT_KEYS, GuardRails, Limits, nearest_inside, round_carbs
from engine.values.plan import LOAD_DAYS, MOST_LOAD_DAYS, DayTarget, PeakPlan, Phase

# What each day of a plan is for, where nobody has said so: read off its figures.
#
# A load is the last run of large days before the event, with at most one smaller day between two of
# them. Where that smaller day is a low one, the large day before it was a refeed: the load comes after.
# What a coach has said is kept.


def named(plan: PeakPlan, baseline: Baseline) -> PeakPlan:
    """The plan with a phase on each day; those that it states are kept as they are.

    A plan that no figures give a load to keeps it where it always was, three days out to one.
    """
    if all(day.phase is not None for day in plan):
        return plan
    found = _load_of(plan, baseline)
    stated = {day.days_out for day in plan if day.phase is Phase.LOAD}
    if stated:
        found = tuple(sorted(stated, reverse=True))
    elif not found:
        found = tuple(out for out in LOAD_DAYS if plan.day(out) is not None)
    return PeakPlan(tuple(_named(day, found, plan, baseline) for day in plan))


def as_ever(plan: PeakPlan, baseline: Baseline) -> PeakPlan:
    """The plan with its phases said as they were understood all along, whatever its figures."""
    load = tuple(out for out in plan.load_days if plan.day(out) is not None)
    return PeakPlan(tuple(_named(day, load, plan, baseline) for day in plan))


def renamed(plan: PeakPlan, days_out: int, baseline: Baseline) -> PeakPlan:
    """The plan with that day's phase read anew, once its carbs are others.

    A low, usual or rest day that has become as large as the load joins it, or is a refeed where a low
    day follows; a refeed that is no longer large is what the days around it are. A load day stays one:
    how light a load day may be is the coach's.
    """
    day = plan.day(days_out)
    if day is None or day.phase in (Phase.LOAD, Phase.EVENT):
        return plan
    large = _large(day, plan, baseline)
    if not large:
        load = plan.load_days
        fresh = _named(replace(day, phase=None), load, plan, baseline)
        return plan if day.phase in (Phase.REST, fresh.phase) else plan.with_day(fresh)
    return plan.with_day(replace(day, phase=_of_large(plan, days_out, baseline)))


def _of_large(plan: PeakPlan, days_out: int, baseline: Baseline) -> Phase:
    """A large day beside the load, or a rest day away from it, is one of it; else it is a refeed."""
    room = len(plan.load_days) < MOST_LOAD_DAYS
    following = plan.day(days_out - 1)
    if not plan.load_days or (room and plan.loading(days_out)):
        return Phase.LOAD
    low = following is not None and _low(following, baseline)
    beside = days_out - plan.first_load_day <= 2 and not low
    return Phase.LOAD if room and beside else Phase.REFEED


def _load_of(plan: PeakPlan, baseline: Baseline) -> tuple[int, ...]:
    """The load days that the figures show, the furthest out first."""
    large = [day.days_out for day in plan if day.days_out > 0 and _large(day, plan, baseline)]
    load: list[int] = []
    for out in sorted(large):  # from the event backwards
        if len(load) == MOST_LOAD_DAYS:
            break
        if load and not _joined(plan, out, load[-1], baseline):
            break
        load.append(out)
    return tuple(reversed(load))


def _joined(plan: PeakPlan, out: int, nearer: int, baseline: Baseline) -> bool:
    """Whether nothing, or one day that is not low, lies between two large days."""
    if out - nearer > 2:
        return False
    between = plan.day(out - 1) if out - nearer == 2 else None
    return between is None or not _low(between, baseline)


def _named(day: DayTarget, load: tuple[int, ...], plan: PeakPlan, baseline: Baseline) -> DayTarget:
    return day if day.phase is not None else replace(day, phase=_phase(day, load, plan, baseline))


def _phase(day: DayTarget, load: tuple[int, ...], plan: PeakPlan, baseline: Baseline) -> Phase:
    if day.days_out == 0:
        return Phase.EVENT
    if day.days_out in load:
        return Phase.LOAD
    if day.days_out < max(load, default=0):
        return Phase.REST
    if _large(day, plan, baseline):
        return Phase.REFEED
    usual = day.carb_g >= e.USUAL_OF_HABIT.value * baseline.carb_g
    return Phase.USUAL if usual else Phase.DEPLETION


def _large(day: DayTarget, plan: PeakPlan, baseline: Baseline) -> bool:
    most = max((other.carb_g for other in plan if other.days_out > 0), default=0.0)
    least = max(e.LARGE_OF_HABIT.value * baseline.carb_g, e.LARGE_OF_LARGEST.value * most)
    return day.carb_g > 0 and day.carb_g >= least


def _low(day: DayTarget, baseline: Baseline) -> bool:
    return day.carb_g < deciding.DEPLETED_SHARE.value * baseline.carb_g


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
