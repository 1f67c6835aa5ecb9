"""What a picture of a week is drawn from, and told from in words."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass

from engine.values.body import against_band


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartDay:
    """One day of the week; None for what is not there.

    The band and `expected_fullness` are what the morning's decision expected. `set_carb_g` is None
    while the plan's figure stands for a day unspoken for. `eaten_carb_g` and `water_l` are the day's
    own, as told the morning after. `eye` is what the coach saw that morning, `symptoms` are ids.
    """

    date: dt.date
    days_out: int
    phase: str | None = None  # what the plan says the day is for
    planned_carb_g: float | None = None
    set_carb_g: float | None = None
    eaten_carb_g: float | None = None
    planned_water_l: float | None = None
    water_l: float | None = None
    answered: bool = False
    weight_kg: float | None = None
    band_low_kg: float | None = None
    band_high_kg: float | None = None
    fullness: int | None = None
    expected_fullness: int | None = None
    eye: str | None = None
    sharpness: int | None = None
    symptoms: tuple[str, ...] = ()

    @property
    def carb_g(self) -> float | None:
        """What held for the day: what was set, else what was planned."""
        return self.set_carb_g if self.set_carb_g is not None else self.planned_carb_g

    @property
    def against_band(self) -> int | None:
        return against_band(self.weight_kg, self.band_low_kg, self.band_high_kg)


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartOdds:
    """How the day looks from a morning: of ten such days, how many full, flat and spilled over.

    They hold if `carb_g` is eaten on `sets_date` and the rest as planned from there.
    """

    morning: dt.date
    sets_date: dt.date
    carb_g: float
    full: int
    flat: int
    spilled: int


@dataclass(frozen=True, slots=True, kw_only=True)
class BeforeDay:
    """A day of the last trial. `moved_kg` is its weight against the first one of that week."""

    days_out: int
    moved_kg: float | None = None
    carb_g: float | None = None
    fullness: int | None = None
    sharpness: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Before:
    """The last trial before this week, as far as it is drawn behind it."""

    event_day: dt.date
    days: tuple[BeforeDay, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartWeek:
    """The days from the furthest out to the event, seen on `today`, in the athlete's units.

    `odds` is None where the forecast is off, not trusted, or has nothing to say yet or any more.
    `baseline_kg` is the weight on file, which a loss is counted from.
    """

    name: str
    kind: str  # show | shoot | trial
    event_day: dt.date
    today: dt.date
    weight_unit: str
    days: tuple[ChartDay, ...]
    odds: ChartOdds | None = None
    volume_unit: str = "l"
    baseline_kg: float | None = None
    before: Before | None = None

    def missed(self, day: ChartDay) -> bool:
        """Whether the morning is over and nothing was answered."""
        return day.date < self.today and not day.answered

    def ahead(self, day: ChartDay) -> bool:
        return day.date > self.today

    @property
    def first_kg(self) -> float | None:
        """The first weight of the week, which the last trial's changes are drawn from."""
        return next((day.weight_kg for day in self.days if day.weight_kg is not None), None)
