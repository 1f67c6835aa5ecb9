"""The plan: one target for each of the eight days from seven days out to the day itself."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

LOAD_DAYS = (3, 2, 1)
PLAN_DAYS = tuple(range(7, -1, -1))


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

    def __post_init__(self) -> None:
        if self.days_out not in PLAN_DAYS:
            raise ValueError(f"days_out {self.days_out} is outside 7 to 0")
        bounds = {
            "carb_g": 1500, "protein_g": 600, "fat_g": 400, "fibre_g": 150,
            "water_l": 15, "sodium_mg": 20000, "cardio_min": 600, "steps": 60000,
        }  # fmt: skip
        for name, most in bounds.items():
            value = getattr(self, name)
            if value is not None and not 0 <= value <= most:
                raise ValueError(f"{self.days_out} days out: {name} {value} is outside 0 to {most}")


@dataclass(frozen=True, slots=True)
class PeakPlan:
    """Targets by days out. A plan may have gaps; a day without a target is held, never guessed."""

    days: tuple[DayTarget, ...]

    def __post_init__(self) -> None:
        outs = [day.days_out for day in self.days]
        if sorted(set(outs), reverse=True) != outs:
            raise ValueError("plan days must be one a day, from the furthest out to the nearest")

    def __iter__(self) -> Iterator[DayTarget]:
        return iter(self.days)

    def day(self, days_out: int) -> DayTarget | None:
        return next((day for day in self.days if day.days_out == days_out), None)

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
