"""The plan: one target for each of the eight days from seven days out to the day itself.

What a day is for is its phase, and the load is wherever the plan puts it. A plan of before phases were
named loads from three days out to one.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import StrEnum
from functools import cached_property

#: Where the load lies in a plan that does not say.
LOAD_DAYS = (3, 2, 1)
PLAN_DAYS = tuple(range(7, -1, -1))
MOST_LOAD_DAYS = 5


class Phase(StrEnum):
    """What a day is for. Its figures are the plan's own; a phase only says how they are judged."""

    DEPLETION = "depletion"  # carbs low, before the load
    USUAL = "usual"  # carbs about as always
    REFEED = "refeed"  # one day of more, with low days after it
    LOAD = "load"
    REST = "rest"  # a day of less between load days, or between them and the event
    EVENT = "event"  # the day itself


class Exercise(StrEnum):
    """How hard a session is, for the glycogen that it costs."""

    NONE = "none"
    LIGHT = "light"
    DEPLETING = "depleting"


#: What a coach calls a day without a session, and one that is there to deplete.
_RESTING = ("rest", "none", "off", "posing")
_DEPLETING = ("depletion", "depleting", "legs")

#: The most of each that a day's target may name.
_MOST = {
    "carb_g": 1500, "protein_g": 600, "fat_g": 400, "fibre_g": 150,
    "water_l": 15, "sodium_mg": 20000, "cardio_min": 600, "steps": 60000,
}  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class DayTarget:
    """What one day is to bring. Training and cardio are the coach's words; None is "not said".

    Fibre and sodium of None are "as always": what is not counted gets no figure.
    """

    days_out: int
    carb_g: float
    protein_g: float
    fat_g: float
    fibre_g: float | None = None
    water_l: float
    sodium_mg: float | None = None
    training: str = ""
    cardio_min: float | None = None
    steps: int | None = None
    phase: Phase | None = None

    def __post_init__(self) -> None:
        if self.days_out not in PLAN_DAYS:
            raise ValueError(f"days_out {self.days_out} is outside 7 to 0")
        if self.phase is not None:
            object.__setattr__(self, "phase", Phase(self.phase))  # rows and files hold its word
            if (self.phase is Phase.EVENT) is not (self.days_out == 0):
                raise ValueError(f"{self.days_out} days out can't be a day of {self.phase}")
        for name, most in _MOST.items():
            value = getattr(self, name)
            if value is not None and not 0 <= value <= most:
                raise ValueError(f"{self.days_out} days out: {name} {value} is outside 0 to {most}")

    @property
    def exercise(self) -> Exercise:
        """How hard a session the coach's words mean."""
        said = self.training.lower()
        if not said or any(said.startswith(word) for word in _RESTING):
            return Exercise.NONE
        if any(word in said for word in _DEPLETING):
            return Exercise.DEPLETING
        return Exercise.LIGHT


@dataclass(frozen=True)
class PeakPlan:
    """Targets by days out. A plan may have gaps; a day without a target is held, never guessed.

    Raises ValueError for more than `MOST_LOAD_DAYS` that are named as load days.
    """

    days: tuple[DayTarget, ...]

    def __post_init__(self) -> None:
        outs = [day.days_out for day in self.days]
        if sorted(set(outs), reverse=True) != outs:
            raise ValueError("plan days must be one a day, from the furthest out to the nearest")
        named = sum(day.phase is Phase.LOAD for day in self.days)
        if named > MOST_LOAD_DAYS:
            raise ValueError(f"a load has at most {MOST_LOAD_DAYS} days, not {named}")

    def __iter__(self) -> Iterator[DayTarget]:
        return iter(self.days)

    def day(self, days_out: int) -> DayTarget | None:
        return self._by_days_out.get(days_out)

    @cached_property
    def _by_days_out(self) -> dict[int, DayTarget]:
        return {day.days_out: day for day in self.days}

    def phase(self, days_out: int) -> Phase | None:
        """What that day is for; None outside the plan.

        A day that does not say is one of the load from three to one days out, and of depletion before.
        """
        day = self.day(days_out)
        if day is not None and day.phase is not None:
            return day.phase
        if days_out not in PLAN_DAYS or (day is None and self.says_phases):
            return None
        if days_out == 0:
            return Phase.EVENT
        return Phase.LOAD if days_out in LOAD_DAYS else Phase.DEPLETION

    @cached_property
    def says_phases(self) -> bool:
        """Whether any of its days names its phase."""
        return any(day.phase is not None for day in self.days)

    @cached_property
    def load_days(self) -> tuple[int, ...]:
        """The days of the load, the furthest out first."""
        if not self.says_phases:
            return LOAD_DAYS
        return tuple(
            day.days_out
            for day in self.days
            if day.phase is Phase.LOAD or (day.phase is None and day.days_out in LOAD_DAYS)
        )

    @cached_property
    def first_load_day(self) -> int:
        """The load day furthest out; 0 where there is none, so that only the day itself is left."""
        return max(self.load_days, default=0)

    @property
    def load_g(self) -> float:
        """The carbohydrate of the load days together, those without a target as none."""
        load = self.load_days
        return sum(day.carb_g for day in self.days if day.days_out in load)

    def loading(self, days_out: int) -> bool:
        """Whether that day lies between the first load day and the event, both of them included."""
        return 0 <= days_out <= self.first_load_day

    def fills(self, days_out: int) -> bool:
        """Whether that day is there to fill the stores or keep them full: the load's, or a refeed."""
        return self.loading(days_out) or self.phase(days_out) is Phase.REFEED

    def after_refeed(self, days_out: int) -> bool:
        """Whether the day before that one was a refeed."""
        day = self.day(days_out + 1)
        return day is not None and day.phase is Phase.REFEED and day.carb_g > 0

    def with_day(self, target: DayTarget) -> PeakPlan:
        """The same plan with that day's target put in place of its own."""
        others = [day for day in self.days if day.days_out != target.days_out]
        return PeakPlan(tuple(sorted([*others, target], key=lambda day: -day.days_out)))

    def with_carbs(self, days_out: int, carb_g: float) -> PeakPlan:
        """The same plan with another carbohydrate figure on a day that it has."""
        day = self.day(days_out)
        if day is None:
            raise KeyError(days_out)
        return self.with_day(replace(day, carb_g=carb_g))
