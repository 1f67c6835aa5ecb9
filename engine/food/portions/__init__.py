"""A day's targets turned into portions of the athlete's own foods."""

from engine.food.portions.day import can_be_met, can_be_salted, points, solve_day
from engine.food.portions.meals import (
    TOLERANCE,
    Aim,
    Choice,
    Liking,
    Miss,
    NutrientTargets,
    Totals,
    misses,
    most_steps,
    spread,
    totals_of,
)
from engine.food.portions.menu import DayMenu, Portion, explain_misses, plan_menu

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
