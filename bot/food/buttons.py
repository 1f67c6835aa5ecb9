"""Food: its buttons and what they carry."""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from bot.core.chat.buttons import CardRoute, Nothing, Rest, Route


class FoodView(StrEnum):
    DAY = "day"
    ELSE = "else"
    SHOP = "shop"
    LIST = "list"
    ADD = "add"
    LABEL = "label"
    TIMES = "times"


class OnFood(NamedTuple):
    view: FoodView


class OfFood(NamedTuple):
    """A food of the athlete's list, by its row."""

    food: int | None = None


class Swap(NamedTuple):
    """What gives way, and the row of what comes instead ("any": whatever fits)."""

    food: int | None = None
    other: str | None = None


class OfMeal(NamedTuple):
    """A meal by its time, "07:00"."""

    at: Rest


class OfMealTime(NamedTuple):
    """A meal by its time without the colon, "0700"; without it the choice of meals."""

    at: str | None = None


class Mark(NamedTuple):
    food: int | None = None
    liking: str | None = None


class Known(NamedTuple):
    """A food of the table that everybody has, by its id."""

    food: str


FOOD = Route("f", OnFood)
SWAP = Route("f:swap", Swap)
LOCK = Route("f:lock", OfFood)
EATEN = Route("f:ate", OfMeal)
MISSED = Route("f:missed", OfMeal)
LISTED = Route("f:food", OfFood)
MARK = Route("f:mark", Mark)
OFF = Route("f:off", OfFood)
TAKE = Route("f:take", Known)

FOOD_OF = CardRoute("food", Nothing)
FOOD_FIX = CardRoute("food-fix", OfFood)
FOOD_MEAL = CardRoute("food-meal", OfMealTime)
FOOD_SUGGEST = CardRoute("food-suggest", Nothing)
