"""Checkin: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.checkin import checkins, morning_duties
from bot.checkin.flow import CHECK_IN
from bot.core.chat.routes import ATHLETE, Duty, tap
from bot.decision.buttons import ON_ANSWERS
from bot.dialogue.asking import FlowBinding
from bot.dialogue.feature import Feature
from bot.week import prompts

FEATURE = Feature(
    taps=(tap(ON_ANSWERS, ATHLETE, checkins.tapped),),
    flows=(FlowBinding(CHECK_IN, checkins.finish),),
    duties=(
        Duty(prompts.PROMPT, morning_duties.prompt, "the morning's questions"),
        Duty(prompts.NUDGE, morning_duties.nudge, "a reminder"),
        Duty(
            prompts.MISSED, morning_duties.missed, "the hour at which a check-in counts as missed"
        ),
        Duty(prompts.OVER, morning_duties.event_over, "the morning after"),
    ),
)
