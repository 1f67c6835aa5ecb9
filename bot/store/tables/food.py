"""What an athlete eats: their own list of foods, when they eat, the day's menu, what was eaten."""

from __future__ import annotations

import datetime as dt
from datetime import datetime
from typing import Any

from sqlalchemy import JSON, UniqueConstraint
from sqlmodel import Field

from bot.store.base import NumberedRow, Row
from bot.store.driver import UTCDateTime


class FoodRow(NumberedRow, table=True):
    """A food on an athlete's list. `figures`: per 100 g, by the engine's names; carbs without fibre.

    liking: favourite | well | so-so | never. Taken off the list, a row stays for what was eaten.
    """

    __tablename__ = "food"

    athlete_id: int = Field(foreign_key="person.id", index=True)
    source: str  # the id in the food table, or "label"
    name: str
    figures: dict[str, float] = Field(sa_type=JSON)
    step_g: float
    piece: str = ""
    liking: str
    usual_g: float | None = None
    fixed_g: float | None = None  # a day in each menu, as the coach has said
    added_at: datetime = Field(sa_type=UTCDateTime)
    removed_at: datetime | None = Field(default=None, sa_type=UTCDateTime)


class MealTimesRow(Row, table=True):
    """When an athlete eats: "HH:MM", in order. `fixed`: whole meals that the coach has fixed, by time,
    as {food: steps}; one whose time is no meal's any more waits for it to be one again.
    """

    __tablename__ = "meal_times"

    athlete_id: int = Field(primary_key=True, foreign_key="person.id")
    times: list[str] = Field(sa_type=JSON)
    fixed: dict[str, dict[str, int]] = Field(
        default_factory=dict, sa_type=JSON, sa_column_kwargs={"server_default": "{}"}
    )


class FoodDayRow(NumberedRow, table=True):
    """The menu of a local date. `meals`: those still ahead, as {"at", "portions": {food: steps}}.

    `locked` (food: steps of the whole day), `wanted` and `left_out` are the athlete's own word;
    `target` is what the menu was made for.
    """

    __tablename__ = "food_day"
    __table_args__ = (UniqueConstraint("athlete_id", "date"),)

    athlete_id: int = Field(foreign_key="person.id")
    date: dt.date
    meals: list[dict[str, Any]] = Field(default_factory=list, sa_type=JSON)
    settled: list[str] = Field(default_factory=list, sa_type=JSON)  # meals eaten or missed, by "at"
    locked: dict[str, int] = Field(default_factory=dict, sa_type=JSON)
    wanted: list[int] = Field(default_factory=list, sa_type=JSON)
    left_out: list[int] = Field(default_factory=list, sa_type=JSON)
    target: dict[str, float | None] = Field(default_factory=dict, sa_type=JSON)
    made_at: datetime = Field(sa_type=UTCDateTime)


class EatenRow(NumberedRow, table=True):
    """Something that was eaten, in grams."""

    __tablename__ = "eaten"

    athlete_id: int = Field(foreign_key="person.id", index=True)
    date: dt.date = Field(index=True)
    food_id: int = Field(foreign_key="food.id", index=True)
    grams: float
    at: datetime = Field(sa_type=UTCDateTime)
