"""The page to hand over: its view of a card."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import view
from bot.debrief.handout import handing_over
from bot.dialogue.feature import Feature

FEATURE = Feature(id="handout", on_card=(view(cards.HANDOUT, handing_over.show),))
