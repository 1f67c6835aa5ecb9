"""Past weeks: the views of a card and the question by which they come in."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import view
from bot.dialogue.asking import FlowBinding
from bot.dialogue.feature import Feature
from bot.sheets.past_weeks import buttons, importing
from bot.sheets.past_weeks.flow import IMPORT

FEATURE = Feature(
    id="past_weeks",
    on_card=(
        view(cards.IMPORTS, importing.show),
        view(buttons.BACK, importing.ask_back),
        view(buttons.BACK_YES, importing.back),
        view(buttons.BACK_NO, importing.keep),
    ),
    flows=(FlowBinding(IMPORT, importing.answered),),
)
