"""What a picture of a week is drawn from, and told from in words."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartDay:
    """One day of the week; None for what is not there.

    The band and `expected_fullness` are what the morning's decision expected. `set_carb_g` is None
    while the plan's figure stands for a day unspoken for.
    """

    date: dt.date
    days_out: int
    planned_carb_g: float | None = None
    set_carb_g: float | None = None
    answered: bool = False
    weight_kg: float | None = None
    band_low_kg: float | None = None
    band_high_kg: float | None = None
    fullness: int | None = None
    expected_fullness: int | None = None
    sharpness: int | None = None
    coach_look: str = ""  # a `CoachLook`, the most careful one; "" where no coach has looked
    coach_sharpness: int | None = None

    @property
    def against_band(self) -> int | None:
        """1 above the band, -1 below it, 0 inside; None where either is not known."""
        if self.weight_kg is None or self.band_low_kg is None or self.band_high_kg is None:
            return None
        return (self.weight_kg > self.band_high_kg) - (self.weight_kg < self.band_low_kg)


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
class ChartWeek:
    """The days from the furthest out to the event, seen on `today`, in the athlete's unit.

    `odds` is None where the forecast is off, not trusted, or has nothing to say yet or any more.
    """

    name: str
    kind: str  # show | shoot | trial
    event_day: dt.date
    today: dt.date
    weight_unit: str
    days: tuple[ChartDay, ...]
    odds: ChartOdds | None = None

    def missed(self, day: ChartDay) -> bool:
        """Whether the morning is over and nothing was answered."""
        return day.date < self.today and not day.answered

    def ahead(self, day: ChartDay) -> bool:
        return day.date > self.today
