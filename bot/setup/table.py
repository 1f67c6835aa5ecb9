"""Setup: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.routes import COACHING, Command, Tap
from bot.dialogue.asking import Registered
from bot.dialogue.feature import Feature
from bot.setup import agreeing, many, one, words
from bot.setup.flow import SETUP, SETUP_SURE

FEATURE = Feature(
    id="setup",
    commands=(Command("setup", COACHING, many.command, words.menu, rank=175, takes_words=True),),
    taps=(Tap("su", COACHING, many.tapped),),
    on_card={"setup": one.from_card},
    flows=(Registered(SETUP, one.given), Registered(SETUP_SURE, agreeing.answered)),
)
