"""The page to hand over: its view of a card."""

from __future__ import annotations

from bot.core import cards
from bot.core.routes import view
from bot.dialogue.feature import Feature
from bot.handout import handing_over

FEATURE = Feature(id="handout", on_card=(view(cards.HANDOUT, handing_over.show),))
