"""Sheets: a plan's, weeks that lie in the past, the workbook, a coach's own numbers."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import ATHLETE, COACH, COACHING, Command, tap, view
from bot.dialogue.asking import FlowBinding
from bot.dialogue.feature import Feature
from bot.sheets import buttons, sheets
from bot.sheets.coach_numbers import view as numbers
from bot.sheets.coach_numbers import words as number_words
from bot.sheets.flow import IMPORT, SHEET
from bot.sheets.past_weeks import importing
from bot.sheets.workbook import files
from bot.sheets.workbook import words as workbook_words
from bot.words.common import already_answered

_BOTH = ATHLETE | COACHING

FEATURE = Feature(
    commands=(
        Command("files", _BOTH, files.show, workbook_words.menu, rank=105, can_wait=True),
        Command("numbers", COACH, numbers.show, number_words.menu, rank=174, can_wait=True),
    ),
    taps=(
        tap(buttons.OWN_FILES, _BOTH, files.tapped, already_answered),
        tap(buttons.NUMBERS, COACH, numbers.tapped),
    ),
    on_card=(
        view(cards.PLAN_SHEET, sheets.offer_sheet),
        view(cards.FILES, files.on_card),
        view(cards.IMPORTS, importing.show),
        view(buttons.BACK, importing.ask_back),
        view(buttons.BACK_YES, importing.back),
        view(buttons.BACK_NO, importing.keep),
    ),
    flows=(FlowBinding(SHEET, sheets.sheet_answered), FlowBinding(IMPORT, importing.answered)),
)
