"""What a day's carbohydrate may be: the coach's limits, and the guard rails around those.

Rules propose, limits dispose. Each bound is a type and not a call that could be forgotten: a
`Limits` outside its guard rails, and a `Target` outside its window, cannot be constructed.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import NamedTuple

from engine.evidence import deciding as e
from engine.evidence.source import Number, Source, mark
from engine.values.athlete import Athlete, Baseline, Sex
from engine.values.plan import LOAD_DAYS, PeakPlan


class LimitKey(NamedTuple):
    unit: str
    label: str


#: Each limit's unit and what a coach calls it, in the order in which they are asked.
LIMIT_KEYS: Mapping[str, LimitKey] = {
    "carb_floor_g": LimitKey("g", mark("carb floor a day")),
    "carb_ceiling_g": LimitKey("g", mark("carb ceiling a day")),
    "step_g": LimitKey("g", mark("step")),
    "change_per_day_g": LimitKey("g", mark("largest change from the plan")),
    "load_total_g": LimitKey("g", mark("load total")),
    "apply_without_asking_g": LimitKey("g", mark("auto-approve changes up to")),
    "water_floor_l": LimitKey("L", mark("water floor a day")),
    "water_ceiling_l": LimitKey("L", mark("water ceiling a day")),
}


#: What held a figure back, where no single limit's key says it.
GUARD_RAIL = "guard_rail"
CAUTION = "caution"


class OutsideGuardRail(ValueError):  # noqa: N818 - it names the state of the limit
    """A limit past its guard rail: which one, what was asked, the bound, and its source."""

    def __init__(self, limit: str, value: float, bound: float, source: Source) -> None:
        unit, label = LIMIT_KEYS[limit]
        side = "at least" if value < bound else "at most"
        super().__init__(
            f"{label} ({limit}) must be {side} {bound:g} {unit}, not {value:g} {unit}: "
            f"{source.citation}"
        )
        self.limit, self.value, self.bound, self.source = limit, value, bound, source


class OutOfLimits(ValueError):  # noqa: N818 - likewise of the target
    """A target outside the window that the limits leave for its day."""


@dataclass(frozen=True, slots=True)
class Rail:
    """The least and the most that one limit may be, in the limit's own unit."""

    low: float
    high: float
    low_source: Source
    high_source: Source


@dataclass(frozen=True, slots=True)
class GuardRails:
    """The absolute bounds around one athlete's limits, by sex and body mass (kg)."""

    sex: Sex
    body_mass_kg: float

    @classmethod
    def of(cls, athlete: Athlete) -> GuardRails:
        return cls(athlete.sex, athlete.body_mass_kg)

    def rail(self, key: str) -> Rail:
        """The rail around the limit of that key; KeyError for a key that is no limit."""
        return _rails(self.sex, self.body_mass_kg)[key]


@lru_cache(maxsize=256)
def _rails(sex: Sex, kg: float) -> Mapping[str, Rail]:
    day = _between(e.CARB_LEAST_G_PER_KG, e.CARB_MOST_G_PER_KG, kg, kg)
    drinks = e.WATER_LEAST_WOMEN_L if sex is Sex.FEMALE else e.WATER_LEAST_MEN_L
    water = _between(drinks, e.WATER_MOST_L_PER_KG, 1, kg)
    return {
        "carb_floor_g": day,
        "carb_ceiling_g": day,
        "step_g": _between(e.STEP_LEAST_G, e.STEP_MOST_G_PER_KG, 1, kg),
        "change_per_day_g": _between(None, e.CHANGE_MOST_G_PER_KG, 1, kg),
        "load_total_g": _between(e.CARB_LEAST_G_PER_KG, e.LOAD_MOST_G_PER_KG, 3 * kg, kg),
        "apply_without_asking_g": _between(None, e.APPLY_MOST_G_PER_KG, 1, kg),
        "water_floor_l": water,
        "water_ceiling_l": water,
    }


def _between(low: Number | None, high: Number, low_times: float, high_times: float) -> Rail:
    # Rounded to what a person can type, so that "at most 734.4" never refuses 734.4.
    return Rail(
        low=round(low.value * low_times, 3) if low else 0.0,
        high=round(high.value * high_times, 3),
        low_source=low.source if low else high.source,
        high_source=high.source,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Limits:
    """What the coach allows. Grams and litres a day, but for `load_total_g`: the load days together.

    `change_per_day_g` bounds how far a day may depart from its own planned figure.
    Raises `OutsideGuardRail` past a guard rail, ValueError for limits that contradict each other.
    """

    guard_rails: GuardRails
    carb_floor_g: float
    carb_ceiling_g: float
    step_g: float
    change_per_day_g: float
    load_total_g: float
    apply_without_asking_g: float
    water_floor_l: float
    water_ceiling_l: float

    @property
    def by_key(self) -> dict[str, float]:
        """The figure of each limit, in the order in which they are asked."""
        return {key: getattr(self, key) for key in LIMIT_KEYS}

    def __post_init__(self) -> None:
        for key, (_, label) in LIMIT_KEYS.items():
            value, rail = getattr(self, key), self.guard_rails.rail(key)
            if not math.isfinite(value):
                raise ValueError(f"{label} ({key}) must be a number, not {value}")
            if value < rail.low:
                raise OutsideGuardRail(key, value, rail.low, rail.low_source)
            if value > rail.high:
                raise OutsideGuardRail(key, value, rail.high, rail.high_source)
        for floor, ceiling in (
            ("carb_floor_g", "carb_ceiling_g"),
            ("water_floor_l", "water_ceiling_l"),
        ):
            low, high = getattr(self, floor), getattr(self, ceiling)
            if low > high:
                raise ValueError(f"{floor} {low:g} is over {ceiling} {high:g}")

    @classmethod
    def suggested(cls, athlete: Athlete, plan: PeakPlan, baseline: Baseline) -> Limits:
        """Limits for a coach to begin from: room for what may be needed, inside the rails.

        What goes out without asking stays small: one step.

        Where the plan itself leaves the guard rails the limits stop at them, and `plan_problems`
        says so.
        """
        rails, kg = GuardRails.of(athlete), athlete.body_mass_kg
        carbs = [day.carb_g for day in plan] or [baseline.carb_g]
        waters = [day.water_l for day in plan] or [baseline.water_l]
        step = max(round_carbs(e.SUGGESTED_STEP_G_PER_KG.value * kg), e.STEP_LEAST_G.value)
        change = round_carbs(e.SUGGESTED_CHANGE_G_PER_KG.value * kg)

        def inside(key: str, wanted: float, grain: float = e.ROUND_TO_G.value) -> float:
            return nearest_inside(wanted, rails.rail(key), grain)

        floor = inside("carb_floor_g", min(carbs) - e.SUGGESTED_FLOOR_STEPS.value * step)
        ceiling = inside("carb_ceiling_g", max(carbs) + change)
        # Water is wanted as it is, so rounding must not shut the plan's own figure out.
        rail = rails.rail("water_floor_l")
        driest, wettest = (min(max(w, rail.low), rail.high) for w in (min(waters), max(waters)))
        water_floor = inside("water_floor_l", driest * e.SUGGESTED_WATER_BELOW.value, 0.05)
        water_ceiling = inside("water_ceiling_l", wettest * e.SUGGESTED_WATER_ABOVE.value, 0.05)
        return cls(
            guard_rails=rails,
            carb_floor_g=min(floor, ceiling),
            carb_ceiling_g=ceiling,
            step_g=inside("step_g", step),
            change_per_day_g=inside("change_per_day_g", change),
            load_total_g=_suggested_total(plan, rails),
            apply_without_asking_g=inside("apply_without_asking_g", step),
            water_floor_l=min(water_floor, driest),
            water_ceiling_l=max(water_ceiling, wettest),
        )

    def with_room_for(self, plan: PeakPlan) -> Limits:
        """These limits, with a load total suggested anew where the plan's own load is past it."""
        if plan.load_g <= self.load_total_g:
            return self
        return replace(self, load_total_g=_suggested_total(plan, self.guard_rails))

    def window(self, planned_carb_g: float, load_room_g: float | None) -> Window | None:
        """The grams that day may have, or None where the limits leave none.

        `load_room_g` is what the load total leaves for this day once the other load days have
        theirs; None on a day outside the load.
        """
        change, changed = self.change_per_day_g, "change_per_day_g"
        lows = [(self.carb_floor_g, "carb_floor_g"), (planned_carb_g - change, changed)]
        highs = [(self.carb_ceiling_g, "carb_ceiling_g"), (planned_carb_g + change, changed)]
        if load_room_g is not None:
            highs.append((load_room_g, "load_total_g"))
        low, low_bound = max(lows, key=lambda bound: bound[0])
        high, high_bound = min(highs, key=lambda bound: bound[0])
        return Window(low, high, low_bound, high_bound) if low <= high else None

    def small_step(self, wanted: Target, planned_carb_g: float) -> float:
        """The figure nearest to the wanted one that goes out without asking, in round figures.

        Where the limits no longer leave the plan's own figure, the one nearest to it that they do.
        """
        alone, grain = self.apply_without_asking_g, e.ROUND_TO_G.value
        if abs(wanted.carb_g - planned_carb_g) <= alone + 1e-9:
            return wanted.carb_g
        nearest = fit(planned_carb_g, wanted.window).target.carb_g
        if wanted.carb_g > planned_carb_g:
            step_g = math.floor((planned_carb_g + alone) / grain + 1e-9) * grain
            return min(max(step_g, nearest), wanted.carb_g)
        step_g = math.ceil((planned_carb_g - alone) / grain - 1e-9) * grain
        return max(min(step_g, nearest), wanted.carb_g)

    def guard_rail_window(self) -> Window:
        """The grams any day may have on the coach's signed word."""
        rail = self.guard_rails.rail("carb_ceiling_g")
        return Window(rail.low, rail.high, GUARD_RAIL, GUARD_RAIL)


@dataclass(frozen=True, slots=True)
class Window:
    """The grams of carbohydrate a day may have, ends included, and which bound makes each end."""

    low: float
    high: float
    low_bound: str
    high_bound: str

    def __post_init__(self) -> None:
        if not self.low <= self.high:
            raise ValueError(f"no figure lies between {self.low} and {self.high} g")


@dataclass(frozen=True, slots=True)
class Target:
    """A day's carbohydrate that its window allows: any other raises `OutOfLimits`, `replace` too.

    Never pickle one: unpickling walks past the check. Rows come back through the constructor.
    """

    carb_g: float
    window: Window

    def __post_init__(self) -> None:
        if not self.window.low <= self.carb_g <= self.window.high:
            raise OutOfLimits(
                f"{self.carb_g:g} g is outside {self.window.low:g} to {self.window.high:g} g"
            )


@dataclass(frozen=True, slots=True)
class Fitted:
    """A wish put inside a window: the target, the wish as it was, and the bound that cut it."""

    target: Target
    wanted_g: float
    bound: str | None


@dataclass(frozen=True, slots=True)
class Problem:
    """One way in which a plan leaves the limits; `days_out` is None for the load as a whole."""

    days_out: int | None
    key: str
    value: float
    limit: str
    bound: float

    def __str__(self) -> str:
        unit, label = LIMIT_KEYS[self.limit]
        where = "The load" if self.days_out is None else f"{self.days_out} days out"
        side = "under" if self.value < self.bound else "over"
        return (
            f"{where}: {self.key} {self.value:g} {unit} is {side} "
            f"the {label} of {self.bound:g} {unit}"
        )


def _suggested_total(plan: PeakPlan, rails: GuardRails) -> float:
    # The room is known for three days; each day of a longer or a shorter load has its third.
    days = len(plan.load_days) / len(LOAD_DAYS)
    room = e.SUGGESTED_LOAD_ROOM_G_PER_KG.value * rails.body_mass_kg * days
    return nearest_inside(plan.load_g + room, rails.rail("load_total_g"), e.ROUND_TO_G.value)


def round_carbs(grams: float) -> float:
    """To the nearest figure that anyone weighs out; halves go up."""
    grain = e.ROUND_TO_G.value
    return math.floor(grams / grain + 0.5) * grain


def fit(wanted: float, window: Window) -> Fitted:
    """The target nearest to `wanted` (grams, rounded already) inside the window.

    Raises ValueError for a wish that is no number.
    """
    if not math.isfinite(wanted):
        raise ValueError(f"{wanted} g is no figure to fit")
    if wanted < window.low:
        return Fitted(Target(window.low, window), wanted, window.low_bound)
    if wanted > window.high:
        return Fitted(Target(window.high, window), wanted, window.high_bound)
    return Fitted(Target(wanted, window), wanted, None)


def plan_problems(plan: PeakPlan, limits: Limits) -> tuple[Problem, ...]:
    """Where a plan leaves the limits, day by day and over the load; empty when it fits."""
    found = []
    for day in plan:
        for key, value, floor, ceiling in (
            ("carb_g", day.carb_g, "carb_floor_g", "carb_ceiling_g"),
            ("water_l", day.water_l, "water_floor_l", "water_ceiling_l"),
        ):
            low, high = getattr(limits, floor), getattr(limits, ceiling)
            if value < low:
                found.append(Problem(day.days_out, key, value, floor, low))
            if value > high:
                found.append(Problem(day.days_out, key, value, ceiling, high))
    load = round(plan.load_g, 6)
    if load > limits.load_total_g:
        found.append(Problem(None, "carb_g", load, "load_total_g", limits.load_total_g))
    return tuple(found)


def nearest_inside(wanted: float, rail: Rail, grain: float) -> float:
    """The multiple of `grain` nearest to `wanted` that the rail allows, or else the rail's end."""
    least, most = math.ceil(rail.low / grain - 1e-9), math.floor(rail.high / grain + 1e-9)
    count = min(max(math.floor(wanted / grain + 0.5), least), most)
    return min(max(round(count * grain, 3), rail.low), rail.high)
