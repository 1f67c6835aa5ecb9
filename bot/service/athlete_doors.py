"""The athlete's commands, buttons, flows and timed duties: the whole list."""

from __future__ import annotations

from functools import partial

from bot.flows.checkin import CHECK_IN
from bot.flows.measures import MEASURES
from bot.flows.onboarding import ONBOARDING
from bot.flows.settings import SETTINGS
from bot.messages import deletion as deletion_words
from bot.messages import leaving as leaving_words
from bot.messages import photos as photo_words
from bot.messages.athlete import menu
from bot.service import (
    athlete_views,
    checkins,
    compare,
    deletion,
    health_screen,
    leaving,
    morning_duties,
    onboarding,
    photo_rows,
    photo_taps,
    photos,
    picture,
    prompts,
    safety_watch,
)
from bot.service.asking import Registered
from bot.service.handles import ATHLETE, COACHING, Command, Duty, Tap

COMMANDS = (
    Command("checkin", ATHLETE, athlete_views.check_in, partial(menu, "checkin")),
    Command("today", ATHLETE, athlete_views.today, partial(menu, "today")),
    Command("week", ATHLETE, athlete_views.week_view, partial(menu, "week")),
    Command("chart", ATHLETE, picture.own_picture, partial(menu, "chart")),
    Command("picture", ATHLETE, picture.own_picture),  # what it was called before
    Command("why", ATHLETE, athlete_views.why, partial(menu, "why")),
    Command("past", ATHLETE, athlete_views.past, partial(menu, "past")),
    Command("photos", ATHLETE, photos.show_own, photo_words.photos_menu),
    Command("compare", ATHLETE | COACHING, compare.compare, photo_words.compare_menu),
    Command("settings", ATHLETE, athlete_views.settings, partial(menu, "settings")),
    Command("leave", ATHLETE, leaving.ask, leaving_words.leave_menu),
    Command("delete_my_data", ATHLETE, deletion.ask, deletion_words.deletion_menu),
    Command("pause", ATHLETE, athlete_views.pause, partial(menu, "pause")),
    Command("resume", ATHLETE, athlete_views.resume, partial(menu, "resume")),
)

TAPS = (
    Tap("k", ATHLETE, checkins.tapped),
    Tap("set", ATHLETE, athlete_views.change_setting),
    Tap("leave", ATHLETE, leaving.tapped),
    Tap("gone", ATHLETE, deletion.tapped),
    Tap("ph", ATHLETE, photo_taps.tapped),
)

FLOWS = (
    Registered(ONBOARDING, onboarding.finish),
    Registered(MEASURES, health_screen.measured),
    Registered(CHECK_IN, checkins.finish),
    *safety_watch.FLOWS,
    *(Registered(flow, athlete_views.setting_changed) for flow in SETTINGS.values()),
)

DUTIES = (
    Duty(prompts.PROMPT, morning_duties.prompt),
    Duty(prompts.NUDGE, morning_duties.nudge),
    Duty(prompts.MISSED, morning_duties.missed),
    Duty(prompts.OVER, morning_duties.event_over),
    Duty(safety_watch.UNANSWERED, safety_watch.unanswered),
    Duty(photos.FORWARD, photos.forward),
    Duty(photo_rows.REMOVE, photo_rows.remove_file),
    Duty(photo_rows.EXPIRE, photo_rows.expire),
)
