"""Having a file fetched that somebody sent."""

from __future__ import annotations

from sqlmodel import Session, select

from bot.context import Context
from bot.incoming import Incoming
from bot.store.people import Person
from bot.store.traffic import FetchRow

LONGEST_NAME = 200


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
        file_id=incoming.file.file_id, name=incoming.file.name[:LONGEST_NAME],
        most_bytes=most_bytes, about=about, not_before=context.now, created_at=context.now,
    )  # fmt: skip
    session.add(row)
    session.flush()
    return row
