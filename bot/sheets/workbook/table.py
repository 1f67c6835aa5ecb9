"""Workbooks: their command, buttons and view of a card."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import ATHLETE, COACHING, Command, tap, view
from bot.dialogue.feature import Feature
from bot.sheets.workbook import files, words
from bot.sheets.workbook.buttons import OWN_FILES
from bot.words.common import already_answered

FEATURE = Feature(
    id="workbook",
    commands=(
        Command("files", ATHLETE | COACHING, files.show, words.menu, rank=105, can_wait=True),
    ),
    taps=(tap(OWN_FILES, ATHLETE | COACHING, files.tapped, already_answered),),
    on_card=(view(cards.FILES, files.on_card),),
)
