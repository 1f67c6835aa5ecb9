"""The day itself: its commands, buttons, flows and timed duties, for the list in `doors`."""

from __future__ import annotations

from bot.flows.stage import LOOK, STAGE
from bot.messages import stage as words
from bot.service import stage_look, stage_reminders, stage_views
from bot.service.asking import Registered
from bot.service.handles import ATHLETE, COACHING, Command, Duty, Tap
from bot.service.stage_day import REMIND

BOTH = ATHLETE | COACHING

COMMANDS = (
    Command("stage", BOTH, stage_views.show, words.menu),
    Command("late", BOTH, stage_views.late, words.late_menu, takes_words=True),
)
TAPS = (Tap("st", BOTH, stage_views.tapped),)
FLOWS = (
    Registered(STAGE, stage_views.times_given),
    Registered(LOOK, stage_look.look_given),
)
DUTIES = (Duty(REMIND, stage_reminders.remind),)
