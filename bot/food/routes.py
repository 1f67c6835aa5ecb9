"""Food: its command, buttons and flows, for the list in `doors`."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from bot.core.callbacks import answer
from bot.core.turn import Act
from bot.food import coach
from bot.food import list as food_list
from bot.food import views as food_views
from bot.words import common

OnFood = Callable[[Act], None]

#: Buttons "f:VIEW:...". The foods they name are the athlete's own.
ON_FOOD: Mapping[str, OnFood] = {
    "day": food_views.back_to_today,
    "ate": food_views.ate_meal,
    "missed": food_views.missed_meal,
    "else": food_views.ask_ate,
    "lock": food_views.lock,
    "shop": food_views.show_shopping,
    "list": food_list.show_list,
    "food": food_list.show_food,
    "mark": food_list.mark_food,
    "off": food_list.take_off,
    "add": food_list.ask_food,
    "label": food_list.ask_label,
    "times": food_list.ask_times,
    "take": coach.take,
}


def food_tapped(turn: Act) -> None:
    view, *rest = turn.arguments or [""]
    if view == "swap":
        (food_views.swap if rest else food_views.which_swap)(turn.saying(rest))
    elif view in ON_FOOD:
        ON_FOOD[view](turn.saying(rest))
    else:
        answer(turn, common.already_answered())
