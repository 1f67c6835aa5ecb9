"""Comparison: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.comparison import comparing, words
from bot.core.routes import ATHLETE, Command, Tap
from bot.dialogue.feature import Feature

FEATURE = Feature(
    id="comparison",
    commands=(Command("weeks", ATHLETE, comparing.own, words.menu, rank=72),),
    taps=(Tap("wks", ATHLETE, comparing.own),),
    on_card={"weeks": comparing.of_athlete},
)
