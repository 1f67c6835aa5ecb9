"""A plan to begin from: eight days scaled by the athlete's body mass, for the coach to change.

The shape of the load is a matter of taste among coaches; how much a body takes up is not. So the
mean load comes from published ranges by sex and training, and the shape only spreads it over the load
days. A trial is drafted the same way: it is the same week, run for practice.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import NamedTuple

from engine.evidence.deciding import CARB_MOST_G_PER_KG, LOAD_MOST_G_PER_KG, ROUND_TO_G
from engine.evidence.planning import drafting as e
from engine.evidence.safety import LOW_ENERGY_AVAILABILITY
from engine.evidence.source import mark
from engine.safety import exercise_kcal
from engine.values.athlete import Athlete, Baseline, Sex, energy_kcal
from engine.values.limits import GuardRails, Rail, nearest_inside
from engine.values.plan import LOAD_DAYS, MOST_LOAD_DAYS, PLAN_DAYS, DayTarget, PeakPlan, Phase


@dataclass(frozen=True, slots=True, kw_only=True)
class Shape:
    """How a load is spread: the first and the last load day's share of the mean, and on which days.

    Days between go in equal steps. After the last load day carbs fall evenly towards the event's. With
    `fat_lead_in` the depletion days keep their energy, with fat in place of carbs.
    """

    label: str
    meaning: str
    first: float = 1.0
    last: float = 1.0
    load_days: tuple[int, ...] = LOAD_DAYS
    fat_lead_in: bool = False

    def shares(self, load_days: Sequence[int]) -> dict[int, float]:
        """Each load day's share of the mean, by days out; a single day is the mean itself."""
        steps = len(load_days) - 1
        if not steps:
            return {load_days[0]: 1.0}
        fall = (self.first - self.last) / steps
        return {out: round(self.first - k * fall, 6) for k, out in enumerate(load_days)}


_HEAVY, _LIGHT = e.LOAD_HEAVY.value, e.LOAD_LIGHT.value

SHAPES: Mapping[str, Shape] = {
    "front-load": Shape(
        label=mark("front-load"),
        meaning=mark(
            "most of the carbs 5 days out, less each day, and from 2 days out down to the event: full "
            "early, time to see and correct a spill"
        ),
        first=_HEAVY,
        last=_LIGHT,
        load_days=(5, 4, 3),
    ),
    "taper": Shape(
        label=mark("taper"),
        meaning=mark("3 to 1 days out, most on the first of them and less each day"),
        first=_HEAVY,
        last=_LIGHT,
    ),
    "even": Shape(label=mark("even"), meaning=mark("the same carbs on each load day")),
    "back-load": Shape(
        label=mark("back-load"),
        meaning=mark("more each day, most the day before: full late, little time to correct"),
        first=_LIGHT,
        last=_HEAVY,
    ),
    "fat-load": Shape(
        label=mark("fat first, then carbs"),
        meaning=mark("more fat instead of carbs until 4 days out, then an even carb load"),
        fat_lead_in=True,
    ),
}

#: How far carbs are lowered before the load, from not at all.
NONE, MILD, DEEP = "none", "mild", "deep"
DEPLETIONS = (NONE, MILD, DEEP)

#: The mean load day (g/kg) by how much is trained: about an hour a day, or well over it.
USUAL_TRAINING, MUCH_TRAINING = "usual", "much"
_LOADS = {
    (Sex.FEMALE, USUAL_TRAINING): e.LOAD_WOMEN_G_PER_KG,
    (Sex.MALE, USUAL_TRAINING): e.LOAD_MEN_G_PER_KG,
    (Sex.FEMALE, MUCH_TRAINING): e.LOAD_WOMEN_TRAINING_MUCH_G_PER_KG,
    (Sex.MALE, MUCH_TRAINING): e.LOAD_MEN_TRAINING_MUCH_G_PER_KG,
}

#: What the gym brings on each day, by days out: legs last six days out, the day before at rest.
TRAINING: Mapping[int, str] = {
    7: mark("upper body, usual session"),
    6: mark("legs, the last time"),
    5: mark("upper body, short pump session at half effort, far from failure"),
    4: mark("upper body, short pump session at half effort, far from failure"),
    3: mark("whole upper body, short pump session at half effort, far from failure"),
    2: mark("whole upper body, short pump session at half effort, far from failure"),
    1: mark("rest, posing only"),
    0: mark("pump-up before going on"),
}


class Asked(NamedTuple):
    """What a draft is asked for.

    `load_g_per_kg` is the mean load day in g of carbohydrate per kg body mass; None takes the
    published figure for the athlete's sex. `load_days`: on which days out the load lies, the furthest
    first; none takes the shape's own.
    """

    shape: str = "even"
    load_g_per_kg: float | None = None
    depletion: str = MILD
    load_days: Sequence[int] = ()


_USUALLY_ASKED = Asked()


def draft_plan(athlete: Athlete, baseline: Baseline, asked: Asked = _USUALLY_ASKED) -> PeakPlan:
    """Eight days from seven days out to the day itself.

    Raises KeyError for an unknown shape, ValueError for a load outside published ranges or whose
    heaviest day or whole would pass the guard rail, for days that are no load days, and for a
    depletion that the shape does not know.
    """
    shape, _, depletion, load_days = asked
    chosen = SHAPES[shape]
    days = tuple(load_days) or chosen.load_days
    if list(days) != sorted({out for out in days if out in PLAN_DAYS and out > 0}, reverse=True):
        raise ValueError(f"{days} are no load days: 7 to 1 days out, the furthest first")
    if len(days) > MOST_LOAD_DAYS:
        raise ValueError(f"a load has at most {MOST_LOAD_DAYS} days, not {len(days)}")
    least, most = load_range(shape, days)
    mean = mean_load(athlete.sex, asked)
    if not least <= mean <= most:
        raise ValueError(
            f"a {chosen.label} load is {least:g} to {most:g} g/kg a day on average, not {mean:g}"
        )
    if depletion not in depletions(shape):
        raise ValueError(f"{depletion!r} is no depletion before a {chosen.label}")
    draft = _Draft(athlete, baseline, chosen, mean, depletion, days)
    return PeakPlan(tuple(draft.day(out) for out in PLAN_DAYS))


def mean_load(sex: Sex, asked: Asked) -> float:
    """The mean load day that is asked for, or the published one as far as the shape goes (g/kg)."""
    if asked.load_g_per_kg is not None:
        return asked.load_g_per_kg
    return min(usual_load(sex), load_range(asked.shape, asked.load_days)[1])


def load_range(shape: str, load_days: Sequence[int] = ()) -> tuple[float, float]:
    """The least and the most that the mean load day of this shape may be (g/kg).

    The heaviest day stays inside the day's guard rail, and more than three days inside that of the
    load, with room for the rounding of each day.
    """
    chosen = SHAPES[shape]
    days = tuple(load_days) or chosen.load_days
    most = round(CARB_MOST_G_PER_KG.value / max(chosen.shares(days).values()), 1)
    if len(days) > len(LOAD_DAYS):
        whole = LOAD_MOST_G_PER_KG.value / len(days)
        most = min(most, round(whole - e.LONG_LOAD_ROOM.value, 1))
    return e.LOAD_LEAST_G_PER_KG.value, most


def usual_load(sex: Sex, training: str = USUAL_TRAINING) -> float:
    """The published mean load day for this sex, trained so much (g/kg)."""
    return _LOADS[sex, training].value


def depletions(shape: str) -> tuple[str, ...]:
    """The depletions that go before this shape: fat can only stand in for carbs left out."""
    return (MILD, DEEP) if SHAPES[shape].fat_lead_in else DEPLETIONS


def trial_window(event_day: date) -> tuple[date, date]:
    """The first and the last day on which a trial of an event on `event_day` is of use."""
    first, last = int(e.TRIAL_FIRST_DAYS.value), int(e.TRIAL_LAST_DAYS.value)
    return event_day - timedelta(days=first), event_day - timedelta(days=last)


@dataclass(frozen=True, slots=True)
class _Draft:
    """What every figure of a draft is made from."""

    athlete: Athlete
    baseline: Baseline
    shape: Shape
    mean: float
    depletion: str
    load_days: tuple[int, ...]

    @property
    def first(self) -> int:
        """The load day furthest out."""
        return self.load_days[0]

    def day(self, out: int) -> DayTarget:
        rails, habit = GuardRails.of(self.athlete), self.baseline
        loading = out <= self.first
        wanted = min(self._carbs(out), e.CARB_MOST_G.value)
        target = DayTarget(
            days_out=out,
            carb_g=nearest_inside(wanted, rails.rail("carb_floor_g"), ROUND_TO_G.value),
            protein_g=round(self._protein(out)),
            fat_g=0,
            fibre_g=self._fibre(out),
            # Steady at habit: nothing in this project cuts or loads water or salt.
            water_l=_inside(habit.water_l, rails.rail("water_floor_l")),
            sodium_mg=habit.sodium_mg,
            training=TRAINING[out],
            cardio_min=0 if loading else e.CARDIO_MIN.value,
            steps=int(self._steps(out)),
            phase=self._phase(out),
        )
        fat = self._fat_loading() if loading else self._fat_before(target)
        return replace(target, fat_g=round(fat))

    def _carbs(self, out: int) -> float:
        """Grams before they are rounded and kept inside the guard rail."""
        kg, habit = self.athlete.body_mass_kg, self.baseline.carb_g
        if out in self.load_days:
            return self.mean * self.shape.shares(self.load_days)[out] * kg
        if out == 0:
            return e.STAGE_G_PER_KG.value * kg
        if out < self.first:
            return self._rest_carbs(out)
        if self.depletion == DEEP:
            return min(e.DEEP_G_PER_KG.value * kg, e.DEEP_SHARE_MOST.value * habit)
        return habit if self.depletion == NONE else e.MILD_SHARE.value * habit

    def _rest_carbs(self, out: int) -> float:
        """Habit between load days; after the last one in equal steps down to the event's."""
        last = self.load_days[-1]
        if out > last:
            return self.baseline.carb_g
        full, event = self._carbs(last), self._carbs(0)
        return event + (full - event) * out / last

    def _phase(self, out: int) -> Phase:
        if out == 0:
            return Phase.EVENT
        if out in self.load_days:
            return Phase.LOAD
        if out < self.first:
            return Phase.REST
        return Phase.USUAL if self.depletion == NONE else Phase.DEPLETION

    def _protein(self, out: int) -> float:
        """Habit until the load, then down in equal steps to its share on the day itself."""
        habit, first = self.baseline.protein_g, self.first
        steps = max(first + 1 - out, 0) / (first + 1)
        eased = habit * (1 - (1 - e.PROTEIN_SHARE.value) * steps)
        enough = min(habit, e.PROTEIN_LEAST_G_PER_KG.value * self.athlete.body_mass_kg)
        return max(eased, enough)

    def _fat_before(self, day: DayTarget) -> float:
        """Habit where nothing is depleted; low where it is, or with a fat load the carbs' energy."""
        habit = self.baseline
        if self.depletion == NONE:
            return habit.fat_g
        if self.shape.fat_lead_in:
            left_out = max(habit.carb_g - day.carb_g, 0)
            in_their_place = energy_kcal(left_out, 0, 0) / energy_kcal(0, 0, 1)
            return min(habit.fat_g + in_their_place, max(habit.fat_g, e.FAT_MOST_G.value))
        return min(habit.fat_g, max(self._low_fat(), _fat_for_energy(self.athlete, day)))

    def _low_fat(self) -> float:
        return min(self.baseline.fat_g, e.FAT_LOW_G_PER_KG.value * self.athlete.body_mass_kg)

    def _fat_loading(self) -> float:
        """A little more than the last day before, or than the low figure where that was not low."""
        low = self._low_fat()
        before = self.first + 1
        if self.depletion != NONE and not self.shape.fat_lead_in and before in PLAN_DAYS:
            low = self.day(before).fat_g
        kg = self.athlete.body_mass_kg
        return min(low + e.FAT_UP_G_PER_KG.value * kg, e.FAT_LOADING_MOST_G_PER_KG.value * kg)

    def _fibre(self, out: int) -> float | None:
        """Habit, and low in the load; None where the habit is not counted: it stays as always."""
        habit = self.baseline.fibre_g
        if habit is None or out > self.first:
            return habit
        return min(habit, (e.FIBRE_FIRST_G if out == self.first else e.FIBRE_G).value)

    def _steps(self, out: int) -> float:
        if out > self.first:
            return e.STEPS.value
        return (e.STEPS_LAST if out <= 1 else e.STEPS_LOADING).value


def _fat_for_energy(athlete: Athlete, day: DayTarget) -> float:
    """Fat with which the day's energy availability is not low; 0 where lean mass is unknown."""
    lean = athlete.fat_free_mass_kg
    if lean is None:
        return 0
    needed = float(LOW_ENERGY_AVAILABILITY) * lean + exercise_kcal(day, athlete.body_mass_kg)
    missing = needed - energy_kcal(day.carb_g, day.protein_g, 0, day.fibre_g)
    return math.ceil(missing / energy_kcal(0, 0, 1))


def _inside(wanted: float, rail: Rail) -> float:
    return min(max(wanted, rail.low), rail.high)
