"""Readiness: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat.routes import ATHLETE, COACH, Command, Duty, tap
from bot.dialogue.asking import FlowBinding, of_own_athlete
from bot.dialogue.feature import Feature
from bot.readiness import readiness as ready
from bot.readiness import words
from bot.readiness.buttons import READINESS
from bot.readiness.flow import READY, READY_ANYWAY, READY_HEALTH
from bot.words.common import settled_already

FEATURE = Feature(
    commands=(Command("ready", ATHLETE | COACH, ready.command, words.menu, rank=280),),
    taps=(tap(READINESS, ATHLETE | COACH, ready.tapped, settled_already),),
    flows=(
        FlowBinding(READY, of_own_athlete(ready.answered, gone=None)),
        FlowBinding(READY_HEALTH, ready.health_given),
        FlowBinding(READY_ANYWAY, ready.went_on),
    ),
    duties=(Duty(ready.ASK, ready.due, "the question whether a peak week is worth it"),),
)
