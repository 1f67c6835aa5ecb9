"""Workbooks: their command, buttons and view of a card."""

from __future__ import annotations

from bot.core import cards
from bot.core.routes import ATHLETE, COACHING, Command, tap, view
from bot.dialogue.feature import Feature
from bot.words.common import already_answered
from bot.workbook import files, words
from bot.workbook.buttons import OWN_FILES

FEATURE = Feature(
    id="workbook",
    commands=(Command("files", ATHLETE | COACHING, files.show, words.menu, rank=105),),
    taps=(tap(OWN_FILES, ATHLETE | COACHING, files.tapped, already_answered),),
    on_card=(view(cards.FILES, files.on_card),),
)
