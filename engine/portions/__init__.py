"""A day's targets turned into portions of the athlete's own foods."""

from .day import can_be_met, can_be_salted, points, solve_day
from .meals import spread
from .menu import DayMenu, Portion, explain_misses, plan_menu
from .wish import (
    TOLERANCE,
    Aim,
    Choice,
    Liking,
    Miss,
    Totals,
    Wish,
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
    "Portion",
    "Totals",
    "Wish",
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
