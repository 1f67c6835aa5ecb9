"""Travel: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat.routes import ATHLETE, Command, Duty
from bot.dialogue.asking import FlowBinding
from bot.dialogue.feature import Feature
from bot.event.travel import travel, words
from bot.event.travel.flow import TRAVEL

FEATURE = Feature(
    id="travel",
    commands=(Command("travel", ATHLETE, travel.command, words.menu, rank=270),),
    flows=(FlowBinding(TRAVEL, travel.given),),
    duties=(Duty(travel.ARRIVE, travel.arrived, "the arrival in another zone"),),
)
