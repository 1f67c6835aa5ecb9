"""Food: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat.routes import ATHLETE, Command, tap, view
from bot.dialogue.asking import FlowBinding, of_own_athlete
from bot.dialogue.feature import Feature
from bot.food import buttons, coach, words
from bot.food import list as food_list
from bot.food import views as food_views
from bot.food.flow import ADD_FOOD, ATE, FOOD_LABEL, MEAL_TIMES
from bot.food.flow_coach import FIX, SUGGEST
from bot.words import common

FEATURE = Feature(
    commands=(Command("food", ATHLETE, food_views.show_today, words.menu, rank=230),),
    taps=(
        tap(buttons.FOOD, ATHLETE, food_views.food_tapped, common.already_answered),
        tap(buttons.SWAP, ATHLETE, food_views.swap, common.already_answered),
        tap(buttons.LOCK, ATHLETE, food_views.lock, common.already_answered),
        tap(buttons.EATEN, ATHLETE, food_views.ate_meal, common.already_answered),
        tap(buttons.MISSED, ATHLETE, food_views.missed_meal, common.already_answered),
        tap(buttons.LISTED, ATHLETE, food_list.show_food, common.already_answered),
        tap(buttons.MARK, ATHLETE, food_list.mark_food, common.already_answered),
        tap(buttons.OFF, ATHLETE, food_list.take_off, common.already_answered),
        tap(buttons.TAKE, ATHLETE, coach.take, common.already_answered),
    ),
    on_card=(
        view(buttons.FOOD_OF, coach.show),
        view(buttons.FOOD_FIX, coach.ask_fix),
        view(buttons.FOOD_MEAL, coach.fix_meal),
        view(buttons.FOOD_SUGGEST, coach.ask_suggestion),
    ),
    flows=(
        FlowBinding(SUGGEST, of_own_athlete(coach.suggestion_given)),
        FlowBinding(FIX, of_own_athlete(coach.fix_given)),
        FlowBinding(ADD_FOOD, food_list.food_given),
        FlowBinding(FOOD_LABEL, food_list.label_given),
        FlowBinding(ATE, food_views.ate_given),
        FlowBinding(MEAL_TIMES, food_list.times_given),
    ),
)
