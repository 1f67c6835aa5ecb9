"""Files that people send: which are wanted, and what follows once they are here."""

from __future__ import annotations

from pathlib import PurePath

from sqlmodel import Session, select

from bot.context import Context
from bot.incoming import Incoming, SentFile
from bot.messages import sheets as sheet_words
from bot.outbox import say
from bot.service import sheets
from bot.service.people import get_person
from bot.sheets.opening import MOST_BYTES as MOST_SHEET_BYTES
from bot.store.people import Person
from bot.store.traffic import FetchRow

SHEET = "sheet"
SHEET_NAMES = (".xlsx", ".xlsm", ".xls", ".ods", ".csv", ".tsv", ".txt", ".numbers")


def received(session: Session, person: Person, incoming: Incoming, context: Context) -> bool:
    """A file has come: note that it is to be fetched. False for one that nobody here wants."""
    file = incoming.file
    assert file is not None
    if person.is_coach and not file.as_photo and _may_be_sheet(file):
        if file.size > MOST_SHEET_BYTES:
            text = sheet_words.too_large(MOST_SHEET_BYTES)
            say(session, chat_id=person.chat_id, text=text, now=context.now)
            return True
        order(session, person, incoming, SHEET, MOST_SHEET_BYTES, context)
        return True
    return False


def order(
    session: Session,
    person: Person,
    incoming: Incoming,
    kind: str,
    most_bytes: int,
    context: Context,
    **about: object,
) -> FetchRow:
    """Have a file fetched; the same update orders it once."""
    assert incoming.file is not None
    known = session.exec(select(FetchRow).where(FetchRow.update_id == incoming.update_id)).first()
    if known is not None:
        return known
    row = FetchRow(
        update_id=incoming.update_id, person_id=person.id or 0, kind=kind,
        file_id=incoming.file.file_id, name=incoming.file.name[:200], most_bytes=most_bytes,
        about=about, not_before=context.now, created_at=context.now,
    )  # fmt: skip
    session.add(row)
    session.flush()
    return row


def unpack(row: FetchRow, content: bytes, context: Context) -> object:
    """What is made of a file's bytes, outside any transaction."""
    return sheets.unpack_sheet(content)


def fetched(session: Session, row: FetchRow, outcome: object, context: Context) -> None:
    """What follows from it, in one; `outcome` None: it could not be had."""
    person = get_person(session, row.person_id)
    if person.is_coach:
        sheets.sheet_came(session, person, outcome, context)


def _may_be_sheet(file: SentFile) -> bool:
    suffix = PurePath(file.name.lower()).suffix
    mime = file.mime.lower()
    return (
        suffix in SHEET_NAMES
        or "spreadsheet" in mime
        or "excel" in mime
        or mime in ("text/csv", "text/plain", "application/zip", "application/octet-stream")
    )
