"""Workbooks: their command, buttons and view of a card."""

from __future__ import annotations

from bot.core.routes import ATHLETE, COACHING, Command, Tap
from bot.dialogue.feature import Feature
from bot.workbook import files, words

FEATURE = Feature(
    id="workbook",
    commands=(Command("files", ATHLETE | COACHING, files.show, words.menu, rank=105),),
    taps=(Tap("fl", ATHLETE | COACHING, files.tapped),),
    on_card={"files": files.on_card},
)
