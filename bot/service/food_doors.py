"""Food: its command, buttons and flows, for the list in `doors`."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from sqlmodel import Session

from bot.context import Context
from bot.flows.food import ADD_FOOD, ATE, FOOD_LABEL, MEAL_TIMES
from bot.incoming import Incoming
from bot.messages import common
from bot.messages import food as words
from bot.service import food_list, food_views
from bot.service.asking import Registered
from bot.service.handles import ATHLETE, Command, Duty, Tap
from bot.service.tapping import answer
from bot.store.people import Person

OnFood = Callable[[Session, Person, list[str], Incoming, Context], None]

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
}


def food_tapped(
    session: Session, person: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    view, *rest = arguments or [""]
    if view == "swap":
        (food_views.swap if rest else food_views.which_swap)(
            session, person, rest, incoming, context
        )
    elif view in ON_FOOD:
        ON_FOOD[view](session, person, rest, incoming, context)
    else:
        answer(session, incoming, context, common.already_answered())


COMMANDS = (Command("food", ATHLETE, food_views.show_today, words.menu),)
TAPS = (Tap("f", ATHLETE, food_tapped),)
FLOWS = (
    Registered(ADD_FOOD, food_list.food_given),
    Registered(FOOD_LABEL, food_list.label_given),
    Registered(ATE, food_views.ate_given),
    Registered(MEAL_TIMES, food_list.times_given),
)
DUTIES: tuple[Duty, ...] = ()
