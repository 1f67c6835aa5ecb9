"""How everybody comes in: the coach, the second contact, the athlete's first questions."""

from __future__ import annotations

from bot.rehearsal.demo.cast import ATHLETE, COACH, CONTACT
from bot.rehearsal.demo.script import Act, Joins, Presses, Reads, Says, Step

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
    *(Presses(ATHLETE, "None of these") for _ in range(3)),  # the health questions
    Says(ATHLETE, "Galway"),
    Presses(ATHLETE, "7:00"),
    Says(ATHLETE, "166 cm"),
    Says(ATHLETE, "60,4 kg"),
    Says(ATHLETE, "280 130 65 and 3.5 L"),
)
REST: tuple[Step, ...] = (
    Presses(ATHLETE, "Body fat, fibre, salt: answer now"),
    Says(ATHLETE, "16"),
    Says(ATHLETE, "25"),
    Presses(ATHLETE, "Not sure"),
    Reads(ATHLETE, "They are used from the next plan on"),
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
        *REST,
    ),
)

COACH_SETS = Act(
    "The coach sets the day, the plan and the limits",
    (
        Says(COACH, "/roster"),
        Reads(COACH, "Needs you: set the event"),
        Presses(COACH, "Orla"),
        Presses(COACH, "Event"),
        Presses(COACH, "A show"),
        Says(COACH, "31 October"),
        Presses(COACH, "Same time zone"),
        Reads(COACH, "Show, Sat 31 Oct 2026"),
        Reads(ATHLETE, "Aino has set your event"),
        Presses(COACH, "Draft a plan"),
        Presses(COACH, "even"),
        Presses(COACH, "8.2 g/kg"),
        Presses(COACH, "Mild"),
        Reads(COACH, "This is the draft"),
        Presses(COACH, "Use this plan"),
        Presses(COACH, "Set the limits"),
        Presses(COACH, "Set these limits"),
        Reads(COACH, "The limits are set"),
        Reads(ATHLETE, "Aino has set your event, plan and limits"),
        # Wide enough for one step, too narrow for two.
        Presses(COACH, "See the limits"),
        Presses(COACH, "Auto-approve up to"),
        Says(COACH, "30"),
        Reads(COACH, "Auto-approve changes up to: 30 g"),
        Says(COACH, "/roster"),
        Presses(COACH, "Orla"),
        Presses(COACH, "Plan …"),
        Presses(COACH, "Forecast"),
        Reads(COACH, "The forecast proposes, you decide"),
        Presses(COACH, "Show me, change nothing"),
        Reads(COACH, "The forecast only shows: the rules decide alone"),
    ),
)

OPENING = (COACH_JOINS, ATHLETE_JOINS, COACH_SETS)
