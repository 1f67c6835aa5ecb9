"""A coach's own numbers: their command and buttons."""

from __future__ import annotations

from bot.core.chat.routes import COACH, Command, tap
from bot.dialogue.feature import Feature
from bot.sheets.coach_numbers import view, words
from bot.sheets.coach_numbers.buttons import NUMBERS

FEATURE = Feature(
    id="coach_numbers",
    commands=(Command("numbers", COACH, view.show, words.menu, rank=175, can_wait=True),),
    taps=(tap(NUMBERS, COACH, view.tapped),),
)
