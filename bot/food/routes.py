"""The buttons of food that carry nothing but which of them they are."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from bot.core.turn import Act
from bot.food import list as food_list
from bot.food import views as food_views
from bot.food.buttons import FoodView, OnFood

SHOWS: Mapping[FoodView, Callable[[Act], None]] = {
    FoodView.DAY: food_views.back_to_today,
    FoodView.ELSE: food_views.ask_ate,
    FoodView.SHOP: food_views.show_shopping,
    FoodView.LIST: food_list.show_list,
    FoodView.ADD: food_list.ask_food,
    FoodView.LABEL: food_list.ask_label,
    FoodView.TIMES: food_list.ask_times,
}


def food_tapped(turn: Act, pressed: OnFood) -> None:
    SHOWS[pressed.view](turn)
