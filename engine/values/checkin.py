"""What the athlete answered, and what has gone before."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from engine.values.observed import Observed


class Gut(StrEnum):
    FINE = "fine"
    HEAVY = "heavy"
    BAD = "bad"


class TrainingDone(StrEnum):
    """How yesterday's training and cardio went beside what was planned for it."""

    AS_PLANNED = "as-planned"
    LESS = "less"
    MORE = "more"
    NONE = "none"


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckIn:
    """One morning's answers; None is "not answered", which the gates deal with.

    Water, carbohydrate, training, sleep and gut speak of the day and night just past. `symptoms`
    holds what was reported, as ids of `engine.symptoms` or in own words; `note` is free text.
    `cleared` holds the ids that a doubtful word was asked about and said not to mean.
    Values are kept as given: whether they can be believed is for the gates, not the constructor.
    """

    date: date
    weight_kg: float | None = None
    fullness: int | None = None
    sharpness: int | None = None
    water_l: float | None = None
    carb_eaten_g: float | None = None
    gut: Gut | None = None
    symptoms: tuple[str, ...] = ()
    note: str = ""
    sleep_h: float | None = None
    urine_colour: int | None = None
    resting_pulse: float | None = None
    water_within_one_hour_l: float | None = None
    cleared: tuple[str, ...] = ()
    training_done: TrainingDone | None = None


@dataclass(frozen=True, slots=True)
class DaySet:
    """The carbohydrate that was in force for a day, once something had set it.

    Raises ValueError for what is no amount: a load total that holds no number holds nothing back.
    """

    date: date
    carb_g: float

    def __post_init__(self) -> None:
        if not (math.isfinite(self.carb_g) and self.carb_g >= 0):
            raise ValueError(f"a day is set to grams, 0 or more, not {self.carb_g}")


@dataclass(frozen=True, slots=True, kw_only=True)
class History:
    """Earlier check-ins, oldest first and one a date, and the figures set for days so far.

    `observed`: what coaches saw, this morning included, oldest first and one a date and coach.
    """

    checkins: tuple[CheckIn, ...] = ()
    set_days: tuple[DaySet, ...] = ()
    observed: tuple[Observed, ...] = ()

    def __post_init__(self) -> None:
        for name, days in (
            ("check-ins", [c.date for c in self.checkins]),
            ("set days", [d.date for d in self.set_days]),
        ):
            if sorted(set(days)) != days:
                raise ValueError(f"{name} must be one a date, oldest first")
        looks = [(seen.date, seen.by) for seen in self.observed]
        if sorted(set(looks)) != looks:
            raise ValueError("what coaches saw must be one a date and coach, oldest first")

    def on(self, day: date) -> CheckIn | None:
        return next((c for c in self.checkins if c.date == day), None)

    def set_on(self, day: date) -> float | None:
        return next((d.carb_g for d in self.set_days if d.date == day), None)

    def seen_on(self, day: date) -> tuple[Observed, ...]:
        """What coaches saw that morning, one a coach."""
        return tuple(seen for seen in self.observed if seen.date == day)
