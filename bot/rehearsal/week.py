"""The script: how everybody joins, and then a week."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from bot.rehearsal.script import (
    ATHLETE,
    COACH,
    CONTACT,
    Act,
    Edits,
    Joins,
    Outcome,
    Presses,
    Reads,
    ReadsNothing,
    Says,
    Step,
    Until,
    Waits,
)

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


A_DAY_AT_WORK = timedelta(hours=11)

SEVEN_OUT = Act(
    "7 days out. A morning by buttons",
    (
        Until("prompt"),
        Reads(ATHLETE, "Good morning, Orla. 7 days out."),
        Says(ATHLETE, "60.4"),
        Presses(ATHLETE, "5"),
        Presses(ATHLETE, "3.5 L"),
        Says(ATHLETE, "280"),
        Presses(ATHLETE, "All fine"),
        Reads(ATHLETE, "Carbs 170 g (as planned)"),
        ReadsNothing(COACH),
        Says(ATHLETE, "/week"),
        Reads(ATHLETE, "Towards your show"),
        Says(ATHLETE, "/why"),
        Reads(ATHLETE, "Based on:"),
    ),
)

SIX_OUT = Act(
    "6 days out. A morning in one line, an answer changed, and a symptom in plain words",
    (
        Until("prompt"),
        Says(ATHLETE, "60,1 6 3,4 on target fine"),
        Reads(ATHLETE, "Carbs 170 g (as planned)"),
        Edits(ATHLETE, "60,1 5 3,4 on target fine"),
        Reads(ATHLETE, "fullness 6"),
        Reads(ATHLETE, "fullness 5"),
        Reads(ATHLETE, "Updated with your new answers"),
        Waits(A_DAY_AT_WORK),
        Says(ATHLETE, "bit dizzy on the stairs after legs today"),
        Reads(ATHLETE, "If it gets worse"),
        Reads(ATHLETE, "Carbs 195 g (+25 on the plan's 170)"),
    ),
)

FIVE_OUT = Act(
    "5 days out. Far too much water, and the coach at once",
    (
        Until("prompt"),
        Says(ATHLETE, "59.8 5 6 on target fine"),
        Reads(COACH, "Caution: Orla"),
        Reads(ATHLETE, "Carbs 170 g (as planned)"),
        Reads(ATHLETE, "I've told Aino"),
        Until("alert-repeat:1"),
        Reads(COACH, "Not acknowledged yet"),
        Presses(COACH, "Acknowledge"),
        Reads(COACH, "Acknowledged by Aino"),
        Reads(ATHLETE, "Aino has seen this and will contact you"),
        Says(COACH, "/roster"),
        Presses(COACH, "Orla"),
        Presses(COACH, "Write to Orla"),
        Says(COACH, "Six litres is too much. How do you feel? Stay at 3.5, spread over the day."),
        Reads(ATHLETE, "From your coach Aino"),
        Presses(ATHLETE, "Reply"),
        Says(ATHLETE, "I feel fine. Warm office, I lost count. 3.5 it is."),
        Reads(COACH, "I lost count"),
    ),
)

FOUR_OUT = Act(
    "4 days out. A check-in that does not come",
    (
        Until("prompt"),
        Until("nudge:1"),
        Reads(ATHLETE, "still missing"),
        Until("nudge:2"),
        Reads(ATHLETE, "Last reminder"),
        Until("missed"),
        Reads(ATHLETE, "No check-in this morning"),
        Reads(COACH, "Orla", silently=True),
        Waits(A_DAY_AT_WORK / 2),
        Says(ATHLETE, "so sorry, slept in. would a water pill help on friday?"),
        Reads(ATHLETE, "I can't help with drugs"),
        Reads(COACH, "Caution: Orla"),
        Presses(COACH, "Acknowledge"),
    ),
)

THREE_OUT = Act(
    "3 days out. The load begins on a flat morning: one step up",
    (
        Until("prompt"),
        Says(ATHLETE, "59.3 1 3.5 5 on target fine"),
        Reads(ATHLETE, "Carbs 520 g (+25 on the plan's 495)"),
        ReadsNothing(COACH),
    ),
)

TWO_OUT = Act(
    "2 days out. Flatter still: two steps, which wait for the coach's approval",
    (
        Until("prompt"),
        Says(ATHLETE, "60.0"),
        Presses(ATHLETE, "2"),
        Presses(ATHLETE, "3.5 L"),
        Presses(ATHLETE, "5"),
        Presses(ATHLETE, "On target"),
        Presses(ATHLETE, "As planned"),
        Presses(ATHLETE, "All fine"),
        Reads(ATHLETE, "Eat 525 g for now, a small step"),
        Reads(ATHLETE, "Carbs 525 g (+30 on the plan's 495)"),
        Reads(COACH, "a change for you to approve"),
        Waits(timedelta(minutes=20)),
        Presses(COACH, "Approve 545 g"),
        Reads(ATHLETE, "Carbs 545 g (+50 on the plan's 495)"),
        Reads(COACH, "Approved by Aino"),
    ),
)

ONE_OUT = Act(
    "1 day out. Spilled over: a hundred grams down, the coach is silent, and a small step stays",
    (
        Until("prompt"),
        Says(ATHLETE, "62.7 8 3.5 2 on target fine"),
        Reads(ATHLETE, "Carbs 465 g (−30 on the plan's 495)"),
        Reads(COACH, "Orla eats 465 g for now"),
        Until("sign-off-lapse"),
        Reads(ATHLETE, "The small step stays"),
        Reads(COACH, "Orla was told to eat 465 g"),
    ),
)

TIMES_SET = Act(
    "1 day out, evening. The coach lays the day out, backwards from the stage",
    (
        Waits(A_DAY_AT_WORK),
        Says(COACH, "/stage"),
        Presses(COACH, "Set the times"),
        Says(COACH, "15:00"),
        Presses(COACH, "One class only"),
        Says(COACH, "40"),
        Presses(COACH, "None"),
        Says(COACH, "10:30"),
        Reads(COACH, "15:00  on stage"),
        Reads(ATHLETE, "Aino has set the times of your day"),
        Reads(ATHLETE, "13:30  last meal before the stage"),
        Says(ATHLETE, "/calendar"),
        Reads(ATHLETE, "[week-2026-10-31.ics] Your week and event day as a calendar file"),
    ),
)

THE_DAY = Act(
    "The day. Full and sharp: nothing is chased",
    (
        Until("prompt"),
        Reads(ATHLETE, "It is the day. Drink as you usually do"),
        Says(ATHLETE, "61.9 9 3.5 4 on target fine"),
        Reads(ATHLETE, "Carbs 180 g (as planned)"),
        Until("stage:leave"),
        Reads(ATHLETE, "Time to leave"),
        Until("stage:tan"),
        Until("stage:sips"),
        Reads(ATHLETE, "From here sips"),
    ),
)

RUNNING_LATE = Act(
    "The day runs late: the rest of it moves, reminders too",
    (
        Says(ATHLETE, "they're running 45 late"),
        Reads(ATHLETE, "Moved 45 min later. The rest of the day now"),
        Reads(ATHLETE, "15:45  on stage"),
        Reads(COACH, "Moved 45 min later (Orla said so)"),
        Until("calendar"),
        Reads(ATHLETE, "Your week has changed since your last calendar file", silently=True),
        ReadsNothing(COACH),
        Until("stage:look:1"),
        Reads(ATHLETE, "Look check. How full"),
        Presses(ATHLETE, "9"),
        Presses(ATHLETE, "4"),
        Presses(ATHLETE, "Fine"),
        Reads(ATHLETE, "You're full; leave it"),
        Reads(COACH, "Orla's look check: fullness 9, sharpness 4, stomach fine"),
        Until("stage:pump:1"),
        Reads(ATHLETE, "Pump-up now"),
        Until("stage:stage:1"),
        Reads(ATHLETE, "On stage now. Go well."),
        Until("stage:after"),
        Reads(ATHLETE, "Eat something ordinary, drink to thirst"),
    ),
)

MORNING_AFTER = Act(
    "The morning after. One short question, and the coach's verdict on the look",
    (
        Until("event-over"),
        Reads(ATHLETE, "Your show is over"),
        Reads(ATHLETE, "Day 1 after. How do you feel?"),
        Presses(ATHLETE, "Fine"),
        Says(ATHLETE, "63.1"),
        Reads(ATHLETE, "Ordinary meals, to appetite"),
        Presses(COACH, "Full"),
        Reads(COACH, "Saved: Orla was full on the day"),
    ),
)

LOOKING_BACK = Act(
    "Four mornings after. The week is looked back on",
    (
        Until("debrief"),
        Reads(COACH, "Debrief of Orla's show, Sat 31 Oct 2026"),
        Reads(COACH, "2 out: 495 / 545 / 545 (flat in the load)"),
        Reads(COACH, "The forecast only showed"),
        Reads(COACH, "Full: use the same load again"),
        Reads(ATHLETE, "Looking back on your show"),
        Says(ATHLETE, "Less water at work, and the third rice meal was one too many."),
        Reads(ATHLETE, "Thank you. Aino has it."),
        Reads(COACH, "the third rice meal was one too many", silently=True),
    ),
)

WEEK: Sequence[Act] = (
    SEVEN_OUT, SIX_OUT, FIVE_OUT, FOUR_OUT, THREE_OUT, TWO_OUT, ONE_OUT, TIMES_SET, THE_DAY,
    RUNNING_LATE, MORNING_AFTER, LOOKING_BACK,
)  # fmt: skip

OUTCOMES: Sequence[Outcome] = (
    Outcome(7, 170, ("held, steady",)),
    Outcome(6, 195, ("adjusted, dropping too fast, +25 g", "decided again twice")),
    Outcome(5, 170, ("caution: ", "acknowledged by Aino")),
    Outcome(4, 170, ("check-in missed, the coach was told", "advisory: missed check in")),
    Outcome(3, 520, ("adjusted, flat in load, +25 g",)),
    Outcome(2, 545, ("adjusted, flat in load, +50 g", "approved by the coach")),
    Outcome(1, 465, ("adjusted, spilled over, -100 g", "the small step stands")),
    Outcome(0, 180, ("held, full and sharp",)),
)
