"""A day's targets turned into portions of the athlete's own foods."""

from engine.food.portions.day import can_be_met, can_be_salted, points, solve_day
from engine.food.portions.meals import spread
from engine.food.portions.menu import DayMenu, Portion, explain_misses, plan_menu
from engine.food.portions.wish import (
    TOLERANCE,
    Aim,
    Choice,
    Liking,
    Miss,
    NutrientTargets,
    Totals,
    misses,
    most_steps,
    totals_of,
)

__all__ = [
    "TOLERANCE",
    "Aim",
    "Choice",
    "DayMenu",
    "Liking",
    "Miss",
    "NutrientTargets",
    "Portion",
    "Totals",
    "can_be_met",
    "can_be_salted",
    "explain_misses",
    "misses",
    "most_steps",
    "plan_menu",
    "points",
    "solve_day",
    "spread",
    "totals_of",
]
