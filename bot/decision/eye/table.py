"""The coach's eye: what a coach sees of a morning, tapped on the card or under its photos."""

from __future__ import annotations

from bot.core.chat.routes import view
from bot.decision.eye import buttons, looking, words
from bot.dialogue.feature import Feature

FEATURE = Feature(
    on_card=(
        view(buttons.EYE, looking.show, words.no_such_morning),
        view(buttons.EYE_LOOK, looking.look_tapped, words.no_such_morning),
        view(buttons.EYE_SHARPNESS, looking.sharpness_tapped, words.no_such_morning),
        view(buttons.EYE_BACK, looking.take_back, words.no_such_morning),
    )
)
