"""Setup: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import COACHING, Command, tap, view
from bot.dialogue.asking import FlowBinding, of_own_athlete
from bot.dialogue.feature import Feature
from bot.setup import agreeing, many, one, words
from bot.setup.buttons import SETUP_ONE, SETUP_SHEET
from bot.setup.flow import SETUP, SETUP_SURE
from bot.words.common import cancelled

FEATURE = Feature(
    commands=(Command("setup", COACHING, many.command, words.menu, rank=175, takes_words=True),),
    taps=(
        tap(SETUP_ONE, COACHING, many.one_tapped, cancelled),
        tap(SETUP_SHEET, COACHING, many.sheet_tapped),
    ),
    on_card=(view(cards.SETUP, one.from_card),),
    flows=(
        FlowBinding(SETUP, of_own_athlete(one.given, gone=cancelled)),
        FlowBinding(SETUP_SURE, agreeing.answered),
    ),
)
