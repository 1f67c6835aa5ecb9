"""Timeline: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat.routes import ATHLETE, Command, view
from bot.dialogue.feature import Feature
from bot.pictures.timeline import buttons, seasons, words

FEATURE = Feature(
    id="timeline",
    commands=(Command("season", ATHLETE, seasons.own, words.menu, rank=74, can_wait=True),),
    on_card=(view(buttons.TIMELINE, seasons.of_athlete),),
)
