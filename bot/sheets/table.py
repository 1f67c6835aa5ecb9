"""Sheets: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import view
from bot.dialogue.asking import FlowBinding
from bot.dialogue.feature import Feature
from bot.sheets import sheets
from bot.sheets.flow import SHEET

FEATURE = Feature(
    id="sheets",
    on_card=(view(cards.PLAN_SHEET, sheets.offer_sheet),),
    flows=(FlowBinding(SHEET, sheets.sheet_answered),),
)
