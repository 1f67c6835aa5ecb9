"""How everybody comes in: the coach, the second contact, the athlete's first questions."""

from __future__ import annotations

from bot.demo.cast import ATHLETE, COACH, CONTACT
from bot.demo.script import Act, Joins, Presses, Reads, Says, Step

COACH_JOINS = Act(
    "The coach takes up the invitation of whoever runs the bot",
    (
        Joins(COACH, None),
        Reads(COACH, "You are set up here as a coach"),
        Says(COACH, "/contact"),
        Joins(CONTACT, COACH),
        Reads(CONTACT, "You are now second contact for Aino"),
        Reads(COACH, "Eero is now your second contact"),
    ),
)

FIRST_QUESTIONS: tuple[Step, ...] = (
    Presses(ATHLETE, "I understand and agree"),
    Says(ATHLETE, "1994"),
    Presses(ATHLETE, "Female"),
    *(Presses(ATHLETE, "No") for _ in range(6)),  # the health questions
    Presses(ATHLETE, "kilograms"),
    Presses(ATHLETE, "litres"),
    Says(ATHLETE, "Galway"),
    Presses(ATHLETE, "7:00"),
    Says(ATHLETE, "166 cm"),
    Says(ATHLETE, "60,4"),
    Says(ATHLETE, "13"),
    Says(ATHLETE, "180"),
    Says(ATHLETE, "140"),
    Says(ATHLETE, "45"),
    Says(ATHLETE, "25"),
    Says(ATHLETE, "3.5"),
    Presses(ATHLETE, "Not sure"),
)

ATHLETE_JOINS = Act(
    "The athlete joins by invitation, and answers the first questions",
    (
        Says(COACH, "/invite"),
        Reads(COACH, "Aino invites you to check in here"),
        Joins(ATHLETE, COACH),
        Reads(ATHLETE, "I am not a doctor"),
        Reads(COACH, "Orla has taken your invitation"),
        *FIRST_QUESTIONS,
        Reads(ATHLETE, "All set"),
        Reads(COACH, "Orla is through the first questions"),
    ),
)

OPENING = (COACH_JOINS, ATHLETE_JOINS)
