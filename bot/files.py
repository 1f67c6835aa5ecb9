"""Files in and out: which are wanted of those that people send, and what follows once they are here;
and the files that outbox rows name, by what they are made of.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import PurePath
from typing import Any

from sqlmodel import Session

from bot.calendar import file as calendar_file
from bot.core.turn import ChatTurn, Context, Document, SentFile, Turn
from bot.debrief.handout import handing_over
from bot.membership.my_data import handing_out
from bot.people.people import get_person, given_to, profile_of
from bot.people.telling import say_to, speaking_to
from bot.pictures.comparison import comparing
from bot.pictures.photos import photo_rows, photos
from bot.pictures.photos import words as photo_words
from bot.pictures.photos.photos import order
from bot.pictures.timeline import seasons
from bot.pictures.week_picture import picture
from bot.setup import many
from bot.setup.roster_sheet import Roster, is_roster, read_roster
from bot.sheets import sheets
from bot.sheets import words as sheet_words
from bot.sheets.coach_numbers import view as numbers
from bot.sheets.format.opening import MOST_BYTES as MOST_SHEET_BYTES
from bot.sheets.format.opening import SheetRefused, open_sheet
from bot.sheets.past_weeks import importing
from bot.sheets.past_weeks.reading import is_past_weeks
from bot.sheets.workbook import files as workbook_files
from bot.store.tables.coach import Rights
from bot.store.tables.people import Person
from bot.store.tables.traffic import FetchRow
from bot.words.languages import ENGLISH, speaking

SHEET = "sheet"
SHEET_NAMES = (".xlsx", ".xlsm", ".xls", ".ods", ".csv", ".tsv", ".txt", ".numbers")


def received(turn: ChatTurn, person: Person) -> bool:
    """A file has come: note that it is to be fetched. False for one that nobody here wants."""
    file = turn.incoming.file
    assert file is not None
    if photos.is_picture(file):
        profile = profile_of(turn.session, person.id)
        if profile is not None:
            return photos.received(turn, person, profile)
        say_to(turn, person, photo_words.athletes_only())
        return True
    if not _coaches(turn.session, person) or not _may_be_sheet(file):
        return False
    if file.size > MOST_SHEET_BYTES:
        say_to(turn, person, sheet_words.too_large(MOST_SHEET_BYTES))
        return True
    order(turn, person, SHEET, MOST_SHEET_BYTES)
    return True


def unpack(row: FetchRow, content: bytes, context: Context) -> object:
    """What is made of a file's bytes, outside any transaction."""
    if row.kind == photos.PHOTO:
        return photos.unpack_photo(row, content, context)
    return _unpack_sheet(content, context)


def fetched(turn: Turn, row: FetchRow, outcome: object) -> None:
    """What follows from it, in one; `outcome` None: it could not be had."""
    person = get_person(turn.session, row.person_id)
    with speaking_to(person):
        if row.kind == photos.PHOTO:
            photos.photo_came(turn, person, row, outcome)
        elif isinstance(outcome, importing.Unpacked):
            importing.came(turn, person, outcome)
        elif isinstance(outcome, Roster):
            many.roster_came(turn, person, outcome)
        else:
            sheets.sheet_came(turn, person, outcome)


def _unpack_sheet(content: bytes, context: Context) -> object:
    """Three kinds of sheets come: of one plan, of many athletes, and of weeks that lie in the past."""
    try:
        grid = open_sheet(content)
    except SheetRefused as refused:
        return refused
    if is_past_weeks(grid):
        return importing.unpack(grid, context)
    return read_roster(grid) if is_roster(grid) else sheets.unpack_grid(grid)


def _coaches(session: Session, person: Person) -> bool:
    """Whether anybody's plan is theirs to change; whose, is seen once the sheet is read."""
    return person.is_coach or any(row.rights == Rights.FULL for row in given_to(session, person))


def _may_be_sheet(file: SentFile) -> bool:
    suffix = PurePath(file.name.lower()).suffix
    mime = file.mime.lower()
    return (
        suffix in SHEET_NAMES
        or "spreadsheet" in mime
        or "excel" in mime
        or mime in ("text/csv", "text/plain", "application/zip", "application/octet-stream")
    )


Maker = Callable[[Turn, dict[str, Any]], Document | None]

MAKERS: Mapping[str, Maker] = {
    "plan-sheet": sheets.make_sheet,
    many.MAKE: many.make_sheet,
    "photo": photo_rows.make_photo,
    "pair": photo_rows.make_pair,
    "photo-row": photo_rows.make_row,
    picture.PICTURE.make: picture.make_picture,
    comparing.PICTURE.make: comparing.make_picture,
    seasons.PICTURE.make: seasons.make_picture,
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
