"""Past weeks: the views of a card and the question by which they come in."""

from __future__ import annotations

from bot.dialogue.asking import Registered
from bot.dialogue.feature import Feature
from bot.past_weeks import importing
from bot.past_weeks.flow import IMPORT

FEATURE = Feature(
    id="past_weeks",
    on_card={
        "past": importing.show,
        "past-back": importing.ask_back,
        "past-back-yes": importing.back,
        "past-back-no": importing.keep,
    },
    flows=(Registered(IMPORT, importing.answered),),
)
