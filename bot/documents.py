"""The files that outbox rows name, by what they are made of."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from bot.calendar import file as calendar_file
from bot.core.turn import Document, Turn
from bot.debrief.handout import handing_over
from bot.membership.my_data import handing_out
from bot.pictures.comparison import comparing
from bot.pictures.photos import photo_rows
from bot.pictures.timeline import seasons
from bot.pictures.week_picture import picture
from bot.setup import many
from bot.sheets import sheets
from bot.sheets.coach_numbers import view as numbers
from bot.sheets.past_weeks import importing
from bot.sheets.workbook import files as workbook_files
from bot.words.languages import ENGLISH, speaking

Maker = Callable[[Turn, dict[str, Any]], Document | None]

MAKERS: Mapping[str, Maker] = {
    "plan-sheet": sheets.make_sheet,
    many.MAKE: many.make_sheet,
    "photo": photo_rows.make_photo,
    "pair": photo_rows.make_pair,
    "photo-row": photo_rows.make_row,
    picture.MAKE: picture.make_picture,
    comparing.MAKE: comparing.make_picture,
    seasons.MAKE: seasons.make_picture,
    calendar_file.MAKE: calendar_file.make_calendar,
    importing.MAKE: importing.make,
    numbers.PICTURE: numbers.make_picture,
    numbers.SHEET: numbers.make_sheet,
    handing_over.MAKE: handing_over.make,
    handing_out.MAKE: handing_out.make,
    workbook_files.MAKE: workbook_files.make,
}


def document(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The file, its words in the reader's language; None where what it was made of is gone."""
    with speaking(named.get("language", ENGLISH)):
        return MAKERS[named["make"]](turn, named)
