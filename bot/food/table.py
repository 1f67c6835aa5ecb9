"""Food: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.routes import ATHLETE, Command, Tap
from bot.dialogue.asking import Registered
from bot.dialogue.feature import Feature
from bot.food import coach, routes, words
from bot.food import list as food_list
from bot.food import views as food_views
from bot.food.flow import ADD_FOOD, ATE, FOOD_LABEL, MEAL_TIMES
from bot.food.flow_coach import FIX, SUGGEST

FEATURE = Feature(
    id="food",
    commands=(Command("food", ATHLETE, food_views.show_today, words.menu, rank=230),),
    taps=(Tap("f", ATHLETE, routes.food_tapped),),
    on_card={
        "food": coach.show,
        "food-fix": coach.ask_fix,
        "food-meal": coach.fix_meal,
        "food-suggest": coach.ask_suggestion,
    },
    flows=(
        Registered(SUGGEST, coach.suggestion_given),
        Registered(FIX, coach.fix_given),
        Registered(ADD_FOOD, food_list.food_given),
        Registered(FOOD_LABEL, food_list.label_given),
        Registered(ATE, food_views.ate_given),
        Registered(MEAL_TIMES, food_list.times_given),
    ),
)
