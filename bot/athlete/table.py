"""Athlete: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.athlete import buttons, words
from bot.athlete import views as athlete_views
from bot.athlete.flow_settings import SETTINGS
from bot.core.chat.routes import ATHLETE, Command, tap
from bot.dialogue.asking import FlowBinding
from bot.dialogue.feature import Feature
from bot.words.common import already_answered

FEATURE = Feature(
    commands=(
        Command("checkin", ATHLETE, athlete_views.check_in, words.menu_checkin, rank=10),
        Command("today", ATHLETE, athlete_views.today, words.menu_today, rank=20),
        Command("week", ATHLETE, athlete_views.week_view, words.menu_week, rank=30, can_wait=True),
        Command("why", ATHLETE, athlete_views.why, words.menu_why, rank=60),
        Command("past", ATHLETE, athlete_views.past, words.menu_past, rank=70, can_wait=True),
        Command("settings", ATHLETE, athlete_views.settings, words.menu_settings, rank=100),
        Command("pause", ATHLETE, athlete_views.pause, words.menu_pause, rank=130),
        Command("resume", ATHLETE, athlete_views.resume, words.menu_resume, rank=140),
    ),
    taps=(tap(buttons.SETTING, ATHLETE, athlete_views.change_setting, already_answered),),
    flows=(*(FlowBinding(flow, athlete_views.setting_changed) for flow in SETTINGS.values()),),
)
