"""Pooling: finished weeks of a coach's athletes sharpen the prior for the next one."""

from __future__ import annotations

from bot.core.chat.routes import Duty
from bot.debrief.pooling import weeks
from bot.dialogue.feature import After, Feature

FEATURE = Feature(
    id="pooling",
    duties=(
        Duty(weeks.LEARN, weeks.due, "what a finished week teaches about this coach's athletes"),
    ),
    after=(After(weeks.OVER, weeks.look_at_ended),),
)
