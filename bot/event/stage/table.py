"""Stage: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat.routes import ATHLETE, COACHING, Command, Duty, tap
from bot.dialogue.asking import FlowBinding
from bot.dialogue.feature import Feature
from bot.event.stage import buttons, times_perhaps, words
from bot.event.stage import look as stage_look
from bot.event.stage import reminders as stage_reminders
from bot.event.stage import views as stage_views
from bot.event.stage.day import REMIND
from bot.event.stage.flow import LOOK, STAGE

BOTH = ATHLETE | COACHING

FEATURE = Feature(
    id="stage",
    commands=(
        Command("stage", BOTH, stage_views.show, words.menu, rank=240),
        Command("late", BOTH, stage_views.late, words.late_menu, takes_words=True, rank=250),
        Command("early", BOTH, stage_views.early, takes_words=True),
    ),
    taps=(
        tap(buttons.ON_STAGE, BOTH, stage_views.tapped, words.day_not_here),
        tap(buttons.LATE, BOTH, stage_views.late_tapped, words.day_not_here),
        tap(buttons.TOLD, BOTH, times_perhaps.tapped, words.day_not_here),
        tap(buttons.TOP_UP, BOTH, stage_views.top_up_tapped, words.day_not_here),
    ),
    flows=(FlowBinding(STAGE, stage_views.times_given), FlowBinding(LOOK, stage_look.look_given)),
    duties=(Duty(REMIND, stage_reminders.remind, "a reminder of the day itself"),),
)
