"""The body over days: glycogen in muscle and liver, water, gut content and tissue.

Everything is vectorised: each parameter and intake is a float or an array over people (or over
particles of one person), and the state is one array with a row a quantity.
"""

from __future__ import annotations

from engine.model.physiology.body import Body, Floats, Quantity, Trained, body
from engine.model.physiology.days import (
    advance,
    first_morning,
    mass_change_kg,
    simulate_day,
    water_change_l,
)
from engine.model.physiology.dynamics import HOURS_A_DAY, DayPhase, Row, rates
from engine.model.physiology.intake import WORK, Day, Intake, Work, complete
from engine.values.plan import Exercise

__all__ = [
    "HOURS_A_DAY",
    "WORK",
    "Body",
    "Day",
    "DayPhase",
    "Exercise",
    "Floats",
    "Intake",
    "Quantity",
    "Row",
    "Trained",
    "Work",
    "advance",
    "body",
    "complete",
    "first_morning",
    "mass_change_kg",
    "rates",
    "simulate_day",
    "water_change_l",
]
