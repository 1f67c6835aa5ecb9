"""A plan to begin from: eight days scaled by the athlete's body mass, for the coach to change.

The shape of the load is a matter of taste among coaches; how much a body takes up is not. So the
mean load comes from published ranges by sex, and the shape only spreads it over the three days.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from engine.athlete import Athlete, Baseline, Sex
from engine.energy import energy_kcal
from engine.evidence import deciding as e
from engine.limits import GuardRails, Rail, nearest_inside
from engine.plan import LOAD_DAYS, PLAN_DAYS, DayTarget, PeakPlan


@dataclass(frozen=True, slots=True, kw_only=True)
class Shape:
    """How a load is spread: each load day's share of the mean, by days out.

    With `fat_lead_in` the depletion days keep their energy, with fat in place of carbs.
    """

    label: str
    meaning: str
    shares: Mapping[int, float]
    fat_lead_in: bool = False


_EVEN = {3: 1.0, 2: 1.0, 1: 1.0}
_HEAVY, _LIGHT = e.DRAFT_LOAD_HEAVY.value, e.DRAFT_LOAD_LIGHT.value

SHAPES: Mapping[str, Shape] = {
    "front-load": Shape(
        label="front-load",
        meaning="most of the carbs 3 days out, then tapering: time to see and correct a spill",
        shares={3: _HEAVY, 2: 1.0, 1: _LIGHT},
    ),
    "even": Shape(label="even", meaning="the same carbs on each load day", shares=_EVEN),
    "back-load": Shape(
        label="back-load",
        meaning="rising to most of the carbs the day before: full late, little time to correct",
        shares={3: _LIGHT, 2: 1.0, 1: _HEAVY},
    ),
    "fat-load": Shape(
        label="lead-in fat load",
        meaning="fat in place of the carbs left out until 4 days out, then an even carb load",
        shares=_EVEN,
        fat_lead_in=True,
    ),
}

#: What the gym brings on each day, by days out: legs last six days out, the day before at rest.
TRAINING: Mapping[int, str] = {
    7: "upper body, usual session",
    6: "legs, the last time",
    5: "upper body, short pump session, high repetitions",
    4: "upper body, short pump session, high repetitions",
    3: "whole upper body, short and light pump session",
    2: "whole upper body, short and light pump session",
    1: "rest, posing only",
    0: "pump-up before going on",
}


def draft_plan(
    athlete: Athlete,
    baseline: Baseline,
    shape: str = "even",
    load_g_per_kg: float | None = None,
) -> PeakPlan:
    """Eight days from seven days out to the day itself.

    `load_g_per_kg` is the mean load day in g of carbohydrate per kg body mass; None takes the
    published figure for the athlete's sex. Raises KeyError for an unknown shape, ValueError for a
    load outside published ranges or whose heaviest day would pass the guard rail.
    """
    chosen = SHAPES[shape]
    mean = load_g_per_kg if load_g_per_kg is not None else usual_load(athlete.sex)
    least, most = load_range(shape)
    if not least <= mean <= most:
        raise ValueError(
            f"a {chosen.label} load is {least:g} to {most:g} g/kg a day on average, not {mean:g}"
        )
    return PeakPlan(tuple(_day(athlete, baseline, chosen, mean, out) for out in PLAN_DAYS))


def load_range(shape: str) -> tuple[float, float]:
    """The least and the most that the mean load day of this shape may be (g/kg)."""
    most = round(e.CARB_MOST_G_PER_KG.value / max(SHAPES[shape].shares.values()), 1)
    return e.DRAFT_LOAD_LEAST_G_PER_KG.value, most


def usual_load(sex: Sex) -> float:
    """The published mean load day for this sex (g/kg)."""
    number = e.DRAFT_LOAD_WOMEN_G_PER_KG if sex is Sex.FEMALE else e.DRAFT_LOAD_MEN_G_PER_KG
    return number.value


def _day(athlete: Athlete, baseline: Baseline, shape: Shape, mean: float, out: int) -> DayTarget:
    rails, kg = GuardRails.of(athlete), athlete.body_mass_kg
    depletion = out > max(LOAD_DAYS)
    wanted = min(_carbs(athlete, baseline, shape, mean, out), e.DRAFT_CARB_MOST_G.value)
    carb = nearest_inside(wanted, rails.rail("carb_floor_g"), e.ROUND_TO_G.value)
    return DayTarget(
        days_out=out,
        carb_g=carb,
        protein_g=round(baseline.protein_g if depletion else _eased_protein(baseline, kg)),
        fat_g=round(_fat(baseline, shape, carb) if depletion else _lean_fat(baseline, kg)),
        fibre_g=_fibre(baseline, out),
        # Steady at habit: nothing in this project cuts or loads water or salt.
        water_l=_inside(baseline.water_l, rails.rail("water_floor_l")),
        sodium_mg=baseline.sodium_mg,
        training=TRAINING[out],
        cardio_min=e.DRAFT_CARDIO_MIN.value if depletion else 0,
        steps=int(_steps(out)),
    )


def _carbs(athlete: Athlete, baseline: Baseline, shape: Shape, mean: float, out: int) -> float:
    """Grams before they are rounded and kept inside the guard rail."""
    if out in shape.shares:
        return mean * shape.shares[out] * athlete.body_mass_kg
    if out == 0:
        return e.DRAFT_STAGE_G_PER_KG.value * athlete.body_mass_kg
    return baseline.carb_g * e.DRAFT_DEPLETION_SHARE.value


def _eased_protein(baseline: Baseline, kg: float) -> float:
    enough = min(baseline.protein_g, e.DRAFT_PROTEIN_LEAST_G_PER_KG.value * kg)
    return max(baseline.protein_g * e.DRAFT_PROTEIN_SHARE.value, enough)


def _lean_fat(baseline: Baseline, kg: float) -> float:
    return min(baseline.fat_g, e.DRAFT_FAT_G_PER_KG.value * kg)


def _fat(baseline: Baseline, shape: Shape, carb_g: float) -> float:
    """Fat of a depletion day: habit, or with a lead-in fat load the energy of the carbs too."""
    left_out = max(baseline.carb_g - carb_g, 0)
    if not shape.fat_lead_in:
        return baseline.fat_g
    in_its_place = energy_kcal(left_out, 0, 0) / energy_kcal(0, 0, 1)
    return min(baseline.fat_g + in_its_place, max(baseline.fat_g, e.DRAFT_FAT_MOST_G.value))


def _fibre(baseline: Baseline, out: int) -> float:
    if out > max(LOAD_DAYS):
        return baseline.fibre_g
    most = e.DRAFT_FIBRE_FIRST_G if out == max(LOAD_DAYS) else e.DRAFT_FIBRE_G
    return min(baseline.fibre_g, most.value)


def _steps(out: int) -> float:
    if out > max(LOAD_DAYS):
        return e.DRAFT_STEPS.value
    return (e.DRAFT_STEPS_LAST if out <= 1 else e.DRAFT_STEPS_LOADING).value


def _inside(wanted: float, rail: Rail) -> float:
    return min(max(wanted, rail.low), rail.high)
