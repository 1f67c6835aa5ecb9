"""Week picture: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import ATHLETE, Command, view
from bot.dialogue.feature import Feature
from bot.pictures.week_picture import picture, words

FEATURE = Feature(
    id="week_picture",
    commands=(
        Command("chart", ATHLETE, picture.own_picture, words.menu, rank=40, can_wait=True),
        Command("picture", ATHLETE, picture.own_picture, rank=50, can_wait=True),
    ),
    on_card=(view(cards.PICTURE, picture.show_picture),),
)
