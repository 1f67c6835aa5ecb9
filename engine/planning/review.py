"""A plan held against the evidence: what a coach should know before it goes live.

A finding never changes a plan. A *warning* has to be answered with a reason before the plan counts,
a *caution* and an *advisory* are told. What each says in words is up to whoever shows it; here are
the days, the figures and the sources.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field

from engine.evidence.deciding import (
    ARETA_2018,
    COMMON_PRACTICE,
    DE_MORAES_2019,
    FOO_2022,
    HOMER_2024,
    SEDLOCK_2008,
)
from engine.evidence.planning import reviewing as e
from engine.evidence.planning.drafting import LARGE_OF_HABIT
from engine.evidence.safety import ENERGY_AVAILABILITY, LOW_ENERGY_AVAILABILITY
from engine.evidence.source import Source
from engine.food.foods import LabelConvention
from engine.safety import Level, exercise_kcal
from engine.values.athlete import Athlete, Baseline, Sex, energy_kcal
from engine.values.limits import GuardRails
from engine.values.plan import DayTarget, PeakPlan, Phase

#: Room for sums of decimals; no figure of a plan is this fine.
_HAIR = 1e-6

_LEGS = re.compile(
    r"\b(?:legs?|squats?|deadlifts?|lunges?|quads?|hamstrings?|glutes?|lower[ -]body|leg[ -]press)\b",
    re.IGNORECASE,
)
_HARD = re.compile(
    r"\b(?:new|first time|never done|hiit|sprints?|intervals?|max(?:imal|imum)?|1 ?rm|"
    r"(?:to )?failure|heavy|negatives|eccentrics?|drop[ -]?sets?|crossfit|personal best|pb)\b",
    re.IGNORECASE,
)
#: "no legs", "nothing new", "far from failure", "legs stay off": what is said to be left out.
_LEFT_OUT_BEFORE = re.compile(
    r"\b(?:no|not|never|rest|without|nothing|avoid|skip|don't|far from|short of|away from|well off|"
    r"stop before|shy of|instead of)(?: \w+){0,2} ?$",
    re.IGNORECASE,
)
_LEFT_OUT_AFTER = re.compile(
    r"^(?: \w+){0,1} (?:off|rest(?:ed|ing)?|spared|left out|skipped|not trained)\b", re.IGNORECASE
)


@dataclass(frozen=True, slots=True)
class OnDay:
    """The figure that was found on one day (None for the plan as a whole), in the finding's unit."""

    days_out: int | None
    value: float | str


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """One thing found: a stable id, how urgent, on which days, against which bound, and the sources."""

    id: str
    level: Level
    days: tuple[OnDay, ...]
    sources: tuple[Source, ...]
    facts: Mapping[str, float] = field(default_factory=dict)

    def __post_init__(self) -> None:
        if not self.id or not self.days or not self.sources:
            raise ValueError("a finding needs an id, a day and a source")


@dataclass(frozen=True, slots=True)
class _Reviewed:
    """What each check looks at."""

    athlete: Athlete
    baseline: Baseline
    plan: PeakPlan


def review_plan(
    athlete: Athlete,
    baseline: Baseline,
    plan: PeakPlan,
    *,
    rehearsed: bool | None = None,
    stated_kcal: Mapping[int, float] | None = None,
) -> tuple[Finding, ...]:
    """Every finding, the most urgent first.

    `rehearsed`: whether a trial came before; None where it does not matter (a trial itself).
    `stated_kcal`: totals that came with the plan, by days out.
    """
    found = [finding for check in _CHECKS for finding in check(_Reviewed(athlete, baseline, plan))]
    if rehearsed is False:
        found.append(_finding("nothing-rehearsed", Level.ADVISORY, [OnDay(None, "")], e.REHEARSAL))
    found += _totals(plan, stated_kcal or {})
    return tuple(sorted(found, key=lambda finding: -finding.level.rank))


def to_answer(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """The findings that need the coach's reason before the plan goes live."""
    return tuple(finding for finding in findings if finding.level is Level.WARNING)


def kcal_by_label(day: DayTarget) -> tuple[float, float]:
    """The day's energy with carbs as on EU labels (without fibre), and with fibre in the carbs.

    The second is what the same figures come to where the coach counts as US labels do: the carbs
    then hold the fibre already, so nothing is added for it.
    """
    macros = (day.carb_g, day.protein_g, day.fat_g)
    return energy_kcal(*macros, day.fibre_g), energy_kcal(*macros)


def conventions_of(day: DayTarget, stated_kcal: float) -> tuple[LabelConvention, ...]:
    """The conventions by which a stated total fits the day's figures; none where it is off."""
    room = float(e.TOTAL_OFF_SHARE) * stated_kcal + _HAIR
    by_convention = zip(LabelConvention, kcal_by_label(day), strict=True)
    return tuple(name for name, kcal in by_convention if abs(stated_kcal - kcal) <= room)


def _water(case: _Reviewed) -> Iterator[Finding]:
    rail = GuardRails.of(case.athlete).rail("water_floor_l")
    habit = min(max(case.baseline.water_l, rail.low), rail.high)
    least = habit * float(e.WATER_CUT_SHARE)
    most = habit + float(e.WATER_LOAD_L)
    cut = _days(case.plan, lambda day: day.water_l, lambda litres: litres < least - _HAIR)
    load = _days(case.plan, lambda day: day.water_l, lambda litres: litres > most + _HAIR)
    yield from _if(cut, "water-cut", Level.WARNING, e.ESCALANTE_2021_WATER, habit_l=habit)
    yield from _if(
        load, "water-load", Level.WARNING, e.WATER_LOAD_L.source, rail.high_source,
        habit_l=habit, most_l=most,
    )  # fmt: skip


def _sodium(case: _Reviewed) -> Iterator[Finding]:
    """A figure far from habit; and any figure where the habit is not known, for that may be a cut."""
    habit, sources = case.baseline.sodium_mg, (e.SODIUM_MODELS, e.ESCALANTE_2021_WATER)
    if habit is None:
        told = _days(case.plan, lambda day: day.sodium_mg, lambda _: True)
        yield from _if(told, "sodium-habit-unknown", Level.CAUTION, *sources)
        return
    room = habit * float(e.SODIUM_SWING_SHARE)
    swing = _days(case.plan, lambda day: day.sodium_mg, lambda mg: abs(mg - habit) > room + _HAIR)
    yield from _if(swing, "sodium-swing", Level.WARNING, *sources, habit_mg=habit)


def _fibre(case: _Reviewed) -> Iterator[Finding]:
    late = [day for day in case.plan if day.days_out <= e.FIBRE_LATE_DAYS.value]
    most = float(e.FIBRE_LATE_G)
    high = _days(late, lambda day: day.fibre_g, lambda grams: grams > most + _HAIR)
    yield from _if(high, "fibre-high-late", Level.CAUTION, FOO_2022, DE_MORAES_2019, most_g=most)


def _carbs(case: _Reviewed) -> Iterator[Finding]:
    rails, kg = GuardRails.of(case.athlete), case.athlete.body_mass_kg
    day_rail, load_rail = rails.rail("carb_ceiling_g"), rails.rail("load_total_g")
    over = _days(case.plan, lambda day: day.carb_g, lambda grams: grams > day_rail.high + _HAIR)
    yield from _if(
        over, "carbs-over-guard-rail", Level.WARNING, day_rail.high_source,
        most_g=day_rail.high, body_mass_kg=kg,
    )  # fmt: skip
    load_days = case.plan.load_days
    load = [day.carb_g for day in case.plan if day.days_out in load_days]
    if sum(load) > load_rail.high + _HAIR:
        whole = [OnDay(None, sum(load))]
        yield _finding(
            "load-over-guard-rail", Level.WARNING, whole, load_rail.high_source,
            most_g=load_rail.high,
        )  # fmt: skip
    if load:
        yield from _small_load(case.athlete, load)
    before = [day for day in case.plan if day.days_out > case.plan.first_load_day]
    deep = min(
        float(e.DEEP_DEPLETION_G_PER_KG) * kg, float(e.DEEP_DEPLETION_SHARE) * case.baseline.carb_g
    )
    found = _days(before, lambda day: day.carb_g, lambda grams: grams < deep - _HAIR)
    yield from _if(found, "deep-depletion", Level.ADVISORY, HOMER_2024, least_g=deep)


def _phases(case: _Reviewed) -> Iterator[Finding]:
    """A day called low or usual that is as large as a load day, and a plan without any load."""
    load_days = case.plan.load_days
    load = [day.carb_g for day in case.plan if day.days_out in load_days]
    if not load:
        yield _finding("no-load-day", Level.ADVISORY, [OnDay(None, "")], COMMON_PRACTICE)
        return
    large = max(min(load), float(LARGE_OF_HABIT) * case.baseline.carb_g)
    low = [
        day for day in case.plan if case.plan.phase(day.days_out) in (Phase.DEPLETION, Phase.USUAL)
    ]
    found = _days(low, lambda day: day.carb_g, lambda grams: grams > large - _HAIR)
    yield from _if(found, "load-by-another-name", Level.CAUTION, COMMON_PRACTICE, load_g=min(load))


def _small_load(athlete: Athlete, load: list[float]) -> Iterator[Finding]:
    mean, most = (grams / athlete.body_mass_kg for grams in (sum(load) / len(load), max(load)))
    if athlete.sex is Sex.FEMALE and most <= float(e.LOAD_WOMEN_NEED) + _HAIR:
        need = float(e.LOAD_WOMEN_NEED)
        days = [OnDay(None, most)]
        yield _finding(
            "load-small-for-a-woman", Level.ADVISORY, days, SEDLOCK_2008, need_g_per_kg=need
        )
    elif mean < float(e.LOAD_THAT_DOES_LITTLE) - _HAIR:
        need = float(e.LOAD_THAT_DOES_LITTLE)
        days = [OnDay(None, mean)]
        yield _finding("load-small", Level.ADVISORY, days, ARETA_2018, need_g_per_kg=need)


def _last_days(case: _Reviewed) -> Iterator[Finding]:
    least = float(e.LAST_DAY_LEAST_G_PER_KG) * case.athlete.body_mass_kg
    jumps = []
    for out in (1, 0):
        day, before = case.plan.day(out), case.plan.day(out + 1)
        if day is None or before is None:
            continue
        steep = day.carb_g > before.carb_g * float(e.LAST_DAY_RATIO) + _HAIR
        if steep and day.carb_g - before.carb_g > least + _HAIR:
            jumps.append(OnDay(out, day.carb_g))
    yield from _if(jumps, "last-day-jump", Level.CAUTION, DE_MORAES_2019)


def _energy(case: _Reviewed) -> Iterator[Finding]:
    lean = case.athlete.fat_free_mass_kg
    if lean is None:
        return
    least = float(LOW_ENERGY_AVAILABILITY)

    def available(day: DayTarget) -> float:
        eaten = energy_kcal(day.carb_g, day.protein_g, day.fat_g, day.fibre_g)
        return (eaten - exercise_kcal(day, case.athlete.body_mass_kg)) / lean

    low = _days(case.plan, available, lambda kcal: kcal < least - _HAIR)
    yield from _if(
        low, "low-energy-availability", Level.ADVISORY, ENERGY_AVAILABILITY, least_kcal_per_kg=least
    )


def _training(case: _Reviewed) -> Iterator[Finding]:
    legs = [OnDay(day.days_out, day.training) for day in case.plan if _says(_LEGS, day.training)]
    last = e.LEGS_LAST_DAY.value
    late = [day for day in legs if day.days_out is not None and day.days_out < last]
    too_late = any(day.days_out is not None and day.days_out < last - 1 for day in late)
    level = Level.WARNING if too_late else Level.ADVISORY
    yield from _if(late, "legs-too-late", level, e.LEGS_LAST_DAY.source, last_days_out=last)
    near = [day for day in case.plan if day.days_out <= e.NEW_STIMULUS_DAYS.value]
    hard = [OnDay(day.days_out, day.training) for day in near if _says(_HARD, day.training)]
    yield from _if(hard, "new-stimulus", Level.WARNING, e.NEW_STIMULUS_DAYS.source)
    jumps = []
    for day in near:
        earlier = [d.cardio_min or 0 for d in case.plan if d.days_out > e.NEW_STIMULUS_DAYS.value]
        usual = max(earlier, default=0)
        if (day.cardio_min or 0) > usual + float(e.CARDIO_JUMP_MIN) + _HAIR:
            jumps.append(OnDay(day.days_out, float(day.cardio_min or 0)))
    yield from _if(jumps, "cardio-jump", Level.CAUTION, e.CARDIO_JUMP_MIN.source)


def _totals(plan: PeakPlan, stated_kcal: Mapping[int, float]) -> Iterator[Finding]:
    """Stated totals that fit their macros by neither convention, day by day: each has figures."""
    for day in plan:
        stated = stated_kcal.get(day.days_out)
        if stated is None or not math.isfinite(stated):
            continue
        if not conventions_of(day, stated):
            without, within = kcal_by_label(day)
            yield _finding(
                "total-off", Level.CAUTION, [OnDay(day.days_out, stated)], e.CALORIE_TOTALS,
                kcal_fibre_apart=without, kcal_fibre_within=within,
            )  # fmt: skip


_CHECKS: tuple[Callable[[_Reviewed], Iterator[Finding]], ...] = (
    _water,
    _sodium,
    _carbs,
    _phases,
    _last_days,
    _training,
    _fibre,
    _energy,
)

#: Every id that a finding may have, so that whoever words them can be held against it.
FINDINGS = (
    "water-cut", "water-load", "sodium-swing", "sodium-habit-unknown", "carbs-over-guard-rail",
    "load-over-guard-rail",
    "load-small-for-a-woman", "load-small", "no-load-day", "load-by-another-name",
    "deep-depletion", "last-day-jump", "legs-too-late",
    "new-stimulus", "cardio-jump", "fibre-high-late", "low-energy-availability",
    "nothing-rehearsed", "total-off",
)  # fmt: skip


def _says(pattern: re.Pattern[str], text: str) -> bool:
    """Whether the text names it, other than to say that it is left out."""
    text = " ".join(text.split())
    return any(
        not _LEFT_OUT_BEFORE.search(text[: hit.start()].rstrip() + " ")
        and not _LEFT_OUT_AFTER.search(text[hit.end() :])
        for hit in pattern.finditer(text)
    )


def _days(
    days: Iterable[DayTarget],
    value: Callable[[DayTarget], float | None],
    found: Callable[[float], bool],
) -> list[OnDay]:
    """The days whose figure is so; one that gives no figure ("as always") is never found."""
    figures = ((day.days_out, value(day)) for day in days)
    return [OnDay(out, figure) for out, figure in figures if figure is not None and found(figure)]


def _if(
    days: list[OnDay], id: str, level: Level, *sources: Source, **facts: float
) -> list[Finding]:
    return [_finding(id, level, days, *sources, **facts)] if days else []


def _finding(
    id: str, level: Level, days: Iterable[OnDay], *sources: Source, **facts: float
) -> Finding:
    return Finding(id=id, level=level, days=tuple(days), sources=sources, facts=facts)
