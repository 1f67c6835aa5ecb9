"""Weeks side by side, as they are drawn and told in words."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass

from bot.pictures.week_picture.chart.values import ChartDay

#: How the weeks are called, oldest first, whatever their colours.
LETTERS = "ABCD"
MOST = len(LETTERS)


@dataclass(frozen=True, slots=True, kw_only=True)
class ComparedWeek:
    """A week with its days from the furthest out; `load_per_kg` is g a kg and day of the load."""

    kind: str  # show | shoot | trial
    event_day: dt.date
    look: str | None
    load_per_kg: float | None
    eaten_share: float | None
    load_from: int = 3  # the first load day, in days out
    days: tuple[ChartDay, ...]

    @property
    def load_weight_kg(self) -> float | None:
        """How the weight moved from the morning of the first load day to that of the event."""
        return _moved(self.days, self.load_from)

    def at(self, days_out: int) -> ChartDay | None:
        return next((day for day in self.days if day.days_out == days_out), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Compared:
    """Two to four weeks of one athlete, oldest first, in the athlete's units."""

    name: str
    weight_unit: str
    volume_unit: str
    weeks: tuple[ComparedWeek, ...]

    def lettered(self) -> list[tuple[str, ComparedWeek]]:
        return list(zip(LETTERS, self.weeks, strict=False))


def _moved(days: tuple[ChartDay, ...], load_from: int) -> float | None:
    weights = {day.days_out: day.weight_kg for day in days}
    first, last = weights.get(load_from), weights.get(0)
    return last - first if first is not None and last is not None else None
