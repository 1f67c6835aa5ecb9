"""Week picture: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from functools import partial

from bot.core import cards
from bot.core.routes import ATHLETE, Command, view
from bot.decision.words_target import menu
from bot.dialogue.feature import Feature
from bot.week_picture import picture

FEATURE = Feature(
    id="week_picture",
    commands=(
        Command("chart", ATHLETE, picture.own_picture, partial(menu, "chart"), rank=40),
        Command("picture", ATHLETE, picture.own_picture, rank=50),
    ),
    on_card=(view(cards.PICTURE, picture.show_picture),),
)
