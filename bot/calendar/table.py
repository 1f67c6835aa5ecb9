"""Calendar: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.calendar import file, stale, words
from bot.calendar import file as calendar_file
from bot.calendar.stale import ANEW
from bot.core.routes import ATHLETE, COACH, Command, Duty, Tap
from bot.dialogue.feature import Feature

FEATURE = Feature(
    id="calendar",
    commands=(Command("calendar", ATHLETE | COACH, file.command, words.menu, rank=260),),
    taps=(Tap("cal", ATHLETE | COACH, file.tapped),),
    on_card={
        "calendar": calendar_file.on_card,
    },
    duties=(Duty(ANEW, file.send_anew),),
    after=(stale.look_at_kept,),
)
