"""What a coach and an athlete bring to a week of the bench: the file, the plan, the limits.

Plans are drafted as the project drafts them, at loads that differ as coaches differ (reviews give 3
to 12 g/kg a day); what is on file may be wrong in the ways that a bench row asks for.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date

import numpy as np

from engine.bench.worlds.world import Floats, People
from engine.planning.drafting.draft import (
    DEEP,
    MILD,
    NONE,
    Asked,
    draft_plan,
    load_range,
    usual_load,
)
from engine.values.athlete import Athlete, Baseline, Sex
from engine.values.limits import GuardRails, Limits
from engine.values.plan import LOAD_DAYS, PeakPlan

EVENT_DAY = date(2027, 6, 12)
ZONE = "Europe/London"
#: Mornings of a week, and its sessions by days out in hours of lifting, as the draft has them.
DAYS_OUT = (7, 6, 5, 4, 3, 2, 1)
SESSIONS = {7: 1.0, 6: 1.3, 5: 0.5, 4: 0.5, 3: 0.4, 2: 0.4, 1: 0.0}
PLAN_SPREAD = 0.12  # of coaches' loads, SD of the logarithm
SCALE_NOISE = 0.25  # kg, Cheuvront 2004
AFTER_FOOD = 0.02  # of weights
REPORT_NOISE = 0.06  # of a day's carbohydrate, SD of the logarithm
SHAPES = ("even", "even", "taper", "back-load")
DEPLETIONS = (MILD, MILD, DEEP, NONE)

LimitsOf = Callable[[Athlete, PeakPlan, Baseline], Limits]


@dataclass(frozen=True, slots=True, kw_only=True)
class Trouble:
    """What is wrong with the answers or the file, beyond the ordinary."""

    missed: float = 0.07  # of mornings
    report_spread: float = 0.05  # of true carbohydrate over what is told, SD of the logarithm
    fat_error: float = 1.5  # % points of the figure on file, SD
    fat_bias: float = 0.0  # % points, all the same way
    file_mass_error: float = 0.0  # of body mass on file, either way


ORDINARY = Trouble()


@dataclass(frozen=True, slots=True, kw_only=True)
class Client:
    """One athlete as the coach knows her."""

    athlete: Athlete
    baseline: Baseline
    plan: PeakPlan
    told_short: float  # true carbohydrate over what is told
    rated_high: float = 0.0  # by the coach's eye, in SDs between coaches


def clients(people: People, seed: int, trouble: Trouble) -> list[Client]:
    """Each athlete's file and coach's plan; the same ones for the same seed whatever the trouble."""
    rng = np.random.default_rng([seed, 41])
    number = len(people)
    draws = rng.normal(size=(6, number))
    shapes = rng.integers(len(SHAPES), size=number)
    depletions = rng.integers(len(DEPLETIONS), size=number)
    away = np.where(rng.random(number) < 0.5, -1.0, 1.0)
    found = []
    for i in range(number):
        sex = Sex.FEMALE if people.female[i] else Sex.MALE
        kg = float(people.mass[i])
        fat = people.fat_percent[i] + trouble.fat_error * draws[0, i] + trouble.fat_bias
        athlete = Athlete(
            sex=sex,
            birth_year=1990 + i % 12,
            height_cm=round(165 + 8 * float(draws[1, i]) * 0.5 + (12 if sex is Sex.MALE else 0), 1),
            body_mass_kg=round(kg * (1 + trouble.file_mass_error * away[i]), 1),
            body_fat_percent=round(float(np.clip(fat, 4, 40)), 1),
        )
        habit = float(np.clip(3.0 + 0.6 * draws[2, i], 1.6, 5.0))
        baseline = Baseline(
            carb_g=round(habit * kg),
            protein_g=round(2.2 * kg),
            fat_g=round(0.7 * kg),
            fibre_g=25,
            water_l=round(float(np.clip(0.05 * kg, 2, 5)), 1),
            sodium_mg=2600,
        )
        shape = SHAPES[shapes[i]]
        least, most = load_range(shape)
        load = usual_load(sex) * float(np.exp(PLAN_SPREAD * draws[3, i]))
        plan = draft_plan(
            athlete,
            baseline,
            Asked(shape, float(np.clip(load, least, most)), DEPLETIONS[depletions[i]]),
        )
        told_short = float(np.exp(trouble.report_spread * draws[4, i]))
        found.append(
            Client(
                athlete=athlete, baseline=baseline, plan=plan, told_short=told_short,
                rated_high=float(draws[5, i]),
            )
        )  # fmt: skip
    return found


def planned_g(plan: PeakPlan, out: int) -> float:
    day = plan.day(out)
    assert day is not None  # a draft has every day
    return day.carb_g


def load_g(plan: PeakPlan) -> float:
    return sum(planned_g(plan, out) for out in LOAD_DAYS)


def suggested(athlete: Athlete, plan: PeakPlan, baseline: Baseline) -> Limits:
    """The limits that the project suggests, taken as they are."""
    return Limits.suggested(athlete, plan, baseline)


def narrow(athlete: Athlete, plan: PeakPlan, baseline: Baseline) -> Limits:
    """A coach who leaves little: 1.2 g/kg over the load's total, 1.5 g/kg as the largest change."""
    given = Limits.suggested(athlete, plan, baseline)
    return _with_room(given, athlete, plan, total=1.2, change=1.5)


def _with_room(
    given: Limits, athlete: Athlete, plan: PeakPlan, *, total: float, change: float
) -> Limits:
    rails, kg = GuardRails.of(athlete), athlete.body_mass_kg
    carbs = [day.carb_g for day in plan]

    def inside(key: str, value: float) -> float:
        rail = rails.rail(key)
        return float(np.clip(value, rail.low, rail.high))

    return Limits(
        guard_rails=rails,
        carb_floor_g=inside("carb_floor_g", min(carbs) - 0.8 * kg),
        carb_ceiling_g=inside("carb_ceiling_g", max(carbs) + change * kg),
        step_g=given.step_g,
        change_per_day_g=inside("change_per_day_g", change * kg),
        load_total_g=inside("load_total_g", load_g(plan) + total * kg),
        apply_without_asking_g=given.apply_without_asking_g,
        water_floor_l=given.water_floor_l,
        water_ceiling_l=given.water_ceiling_l,
    )


def eaten_g(told: Floats, short: Floats, noise: Floats) -> Floats:
    """What was truly eaten where that was told."""
    return np.asarray(told * short * np.exp(REPORT_NOISE * noise))
