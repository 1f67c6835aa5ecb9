"""Why a draft's figures are what they are: one line for each thing that was decided, with its source.

What a line says in words is up to whoever shows it; here are its id, its figures and its sources.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from engine.evidence.body.tracking import LEARNT_LOAD
from engine.evidence.deciding import (
    ARETA_2018,
    COMMON_PRACTICE,
    DE_MORAES_2019,
    ESCALANTE_2021,
    FOO_2022,
    HOMER_2024,
    ROBERTS_2020,
    SEDLOCK_2008,
)
from engine.evidence.planning import drafting as e
from engine.evidence.planning.reviewing import ESCALANTE_2021_WATER, REHEARSAL, SODIUM_MODELS
from engine.evidence.safety import ENERGY_AVAILABILITY
from engine.evidence.source import Source
from engine.planning.drafting.draft import (
    DEEP,
    MILD,
    MUCH_TRAINING,
    NONE,
    SHAPES,
    USUAL_TRAINING,
    Asked,
    draft_plan,
    load_range,
    mean_load,
    usual_load,
)
from engine.values.athlete import Athlete, Baseline, Sex
from engine.values.limits import GuardRails
from engine.values.plan import PLAN_DAYS, DayTarget, PeakPlan

#: Every id that a line may have, so that whoever words them can be held against it.
LINES = (
    "load-women", "load-women-much", "load-men", "load-men-much", "load-own",
    "load-learnt",
    "shape-front-load", "shape-taper", "shape-even", "shape-back-load", "shape-fat-load",
    "depletion-none", "depletion-mild", "depletion-deep",
    "the-day", "protein", "fat-habit", "fat-low", "fat-for-energy", "fat-lead-in",
    "fibre", "fibre-not-counted", "water", "water-inside", "sodium", "sodium-not-counted",
    "training", "cardio-and-steps", "trial",
)  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One thing decided: a stable id, the figures it names (units in their keys), the sources."""

    id: str
    sources: tuple[Source, ...]
    facts: Mapping[str, float] = field(default_factory=dict)


def draft_reasons(
    athlete: Athlete, baseline: Baseline, asked: Asked, *, learnt_g_per_kg: float | None = None
) -> tuple[Line, ...]:
    """Why the draft that is asked for is as it is, the load first.

    `learnt_g_per_kg` is the load that earlier weeks suggest, if they do. Raises what
    `engine.planning.drafting.draft.draft_plan` raises.
    """
    shape, _, depletion, load_days = asked
    plan = draft_plan(athlete, baseline, asked)
    by_out = {day.days_out: day for day in plan}
    before = by_out[min(plan.first_load_day + 1, max(PLAN_DAYS))]
    return (
        _load(
            athlete.sex, load_range(shape, load_days), mean_load(athlete.sex, asked), learnt_g_per_kg
        ),
        _shape(shape, plan),
        _depletion(depletion, before, athlete.body_mass_kg),
        _line("the-day", COMMON_PRACTICE, carb_g=by_out[0].carb_g, g_per_kg=float(e.STAGE_G_PER_KG)),
        _line(
            "protein", COMMON_PRACTICE, ROBERTS_2020,
            before_g=before.protein_g, on_the_day_g=by_out[0].protein_g,
            least_g_per_kg=float(e.PROTEIN_LEAST_G_PER_KG),
        ),
        _fat(athlete, before, by_out[plan.first_load_day], shape, depletion),
        _fibre(baseline),
        _water(athlete, baseline, by_out[0].water_l),
        _sodium(baseline),
        _line("training", COMMON_PRACTICE),
        _line(
            "cardio-and-steps", COMMON_PRACTICE, cardio_min=float(e.CARDIO_MIN),
            steps=float(e.STEPS), steps_last=float(e.STEPS_LAST),
        ),
        _line("trial", REHEARSAL),
    )  # fmt: skip


def _load(sex: Sex, drafted: tuple[float, float], mean: float, learnt: float | None) -> Line:
    who = "women" if sex is Sex.FEMALE else "men"
    least, most = drafted
    facts = {"mean_g_per_kg": mean, "least_g_per_kg": least, "most_g_per_kg": most}
    if mean == learnt:
        return _line("load-learnt", LEARNT_LOAD, **facts)
    if mean == usual_load(sex, USUAL_TRAINING):
        source = SEDLOCK_2008 if sex is Sex.FEMALE else ARETA_2018
        return _line(f"load-{who}", source, **facts)
    if mean == usual_load(sex, MUCH_TRAINING):
        return _line(f"load-{who}-much", e.BURKE_2011_DAILY, **facts)
    return _line("load-own", ESCALANTE_2021, **facts)


def _shape(shape: str, plan: PeakPlan) -> Line:
    """The load days in its facts, "carb_5_g" and so on, the furthest out first."""
    sources = [COMMON_PRACTICE] + [e.BARAKAT_2022] * SHAPES[shape].fat_lead_in
    load_days = plan.load_days
    carbs = {f"carb_{day.days_out}_g": day.carb_g for day in plan if day.days_out in load_days}
    return _line(f"shape-{shape}", *sources, **carbs)


def _depletion(depletion: str, before: DayTarget, kg: float) -> Line:
    source = {NONE: e.BUSSAU_2002, MILD: COMMON_PRACTICE, DEEP: HOMER_2024}[depletion]
    grams = before.carb_g
    return _line(f"depletion-{depletion}", source, carb_g=grams, g_per_kg=grams / kg)


def _fat(
    athlete: Athlete, before: DayTarget, loading: DayTarget, shape: str, depletion: str
) -> Line:
    facts = {"before_g": before.fat_g, "loading_g": loading.fat_g}
    low = round(float(e.FAT_LOW_G_PER_KG) * athlete.body_mass_kg)
    if depletion == NONE:
        return _line("fat-habit", COMMON_PRACTICE, **facts)
    if SHAPES[shape].fat_lead_in:
        return _line("fat-lead-in", COMMON_PRACTICE, **facts)
    if facts["before_g"] > low:
        return _line("fat-for-energy", ENERGY_AVAILABILITY, **facts)
    return _line("fat-low", COMMON_PRACTICE, **facts)


def _water(athlete: Athlete, baseline: Baseline, water_l: float) -> Line:
    rail, habit = GuardRails.of(athlete).rail("water_floor_l"), baseline.water_l
    if water_l == habit:
        return _line("water", ESCALANTE_2021_WATER, water_l=water_l)
    source = rail.low_source if water_l > habit else rail.high_source
    return _line("water-inside", source, water_l=water_l, habit_l=habit)


def _fibre(baseline: Baseline) -> Line:
    if baseline.fibre_g is None:
        return _line("fibre-not-counted", FOO_2022, DE_MORAES_2019)
    return _line(
        "fibre", FOO_2022, DE_MORAES_2019, first_g=float(e.FIBRE_FIRST_G), then_g=float(e.FIBRE_G)
    )


def _sodium(baseline: Baseline) -> Line:
    if baseline.sodium_mg is None:
        return _line("sodium-not-counted", SODIUM_MODELS)
    return _line("sodium", SODIUM_MODELS, sodium_mg=baseline.sodium_mg)


def _line(id: str, *sources: Source, **facts: float) -> Line:
    return Line(id=id, sources=sources, facts=facts)
