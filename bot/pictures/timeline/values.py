"""A season as it is drawn and told in words."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class SeasonEvent:
    """A trial, show or shoot. `weight_kg` is that of the last morning of its week, if one is known;
    `load_per_kg` g a kg and day of the load; both None where its day is still to come.
    """

    kind: str
    day: dt.date
    look: str | None = None
    placing: str = ""
    weight_kg: float | None = None
    load_per_kg: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Season:
    """An athlete's weights by date and events, oldest first, as seen on `today`; never none of both."""

    name: str
    weight_unit: str
    today: dt.date
    weights: tuple[tuple[dt.date, float], ...]
    events: tuple[SeasonEvent, ...]

    @property
    def first(self) -> dt.date:
        return min([*(day for day, _ in self.weights), *(one.day for one in self.events)])

    @property
    def last(self) -> dt.date:
        return max([*(day for day, _ in self.weights), *(one.day for one in self.events)])
