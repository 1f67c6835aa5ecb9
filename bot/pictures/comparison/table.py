"""Comparison: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat.routes import ATHLETE, Command, tap, view
from bot.dialogue.feature import Feature
from bot.pictures.comparison import buttons, comparing, words

FEATURE = Feature(
    id="comparison",
    commands=(Command("weeks", ATHLETE, comparing.own, words.menu, rank=72, can_wait=True),),
    taps=(tap(buttons.OWN_WEEKS, ATHLETE, comparing.own_tapped),),
    on_card=(view(buttons.WEEKS, comparing.of_athlete),),
)
