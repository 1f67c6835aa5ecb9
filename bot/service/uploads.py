"""Files that people send: which are wanted, and what follows once they are here."""

from __future__ import annotations

from pathlib import PurePath

from sqlmodel import Session

from bot.context import Context
from bot.incoming import Incoming, SentFile
from bot.messages import photos as photo_words
from bot.messages import sheets as sheet_words
from bot.outbox import say
from bot.service import photos, sheets
from bot.service.fetching import order
from bot.service.people import get_person, profile_of, speaking_to
from bot.service.rights import given_to
from bot.sheets.opening import MOST_BYTES as MOST_SHEET_BYTES
from bot.store.desk import Rights
from bot.store.people import Person
from bot.store.traffic import FetchRow

SHEET = "sheet"
SHEET_NAMES = (".xlsx", ".xlsm", ".xls", ".ods", ".csv", ".tsv", ".txt", ".numbers")


def received(session: Session, person: Person, incoming: Incoming, context: Context) -> bool:
    """A file has come: note that it is to be fetched. False for one that nobody here wants."""
    file = incoming.file
    assert file is not None
    if photos.is_picture(file):
        profile = profile_of(session, person.id)
        if profile is not None:
            return photos.received(session, person, profile, incoming, context)
        _say(session, person, photo_words.athletes_only(), context)
        return True
    if not _coaches(session, person) or not _may_be_sheet(file):
        return False
    if file.size > MOST_SHEET_BYTES:
        _say(session, person, sheet_words.too_large(MOST_SHEET_BYTES), context)
        return True
    order(session, person, incoming, SHEET, MOST_SHEET_BYTES, context)
    return True


def unpack(row: FetchRow, content: bytes, context: Context) -> object:
    """What is made of a file's bytes, outside any transaction."""
    if row.kind == photos.PHOTO:
        return photos.unpack_photo(row, content, context)
    return sheets.unpack_sheet(content)


def fetched(session: Session, row: FetchRow, outcome: object, context: Context) -> None:
    """What follows from it, in one; `outcome` None: it could not be had."""
    person = get_person(session, row.person_id)
    with speaking_to(person):
        if row.kind == photos.PHOTO:
            photos.photo_came(session, person, row, outcome, context)
        else:
            sheets.sheet_came(session, person, outcome, context)


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


def _say(session: Session, person: Person, text: str, context: Context) -> None:
    say(session, chat_id=person.chat_id, text=text, now=context.now)
