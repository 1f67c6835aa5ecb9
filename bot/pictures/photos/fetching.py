"""Having a file fetched that somebody sent."""

from __future__ import annotations

from sqlmodel import select

from bot.core.turn import ChatTurn
from bot.store.base import id_of
from bot.store.tables.people import Person
from bot.store.tables.traffic import FetchRow

LONGEST_NAME = 200


def order(turn: ChatTurn, person: Person, kind: str, most_bytes: int, **about: object) -> FetchRow:
    """Have a file fetched; the same update orders it once."""
    assert turn.incoming.file is not None
    known = turn.session.exec(
        select(FetchRow).where(FetchRow.update_id == turn.incoming.update_id)
    ).first()
    if known is not None:
        return known
    row = FetchRow(
        update_id=turn.incoming.update_id, person_id=id_of(person), kind=kind,
        file_id=turn.incoming.file.file_id, name=turn.incoming.file.name[:LONGEST_NAME],
        most_bytes=most_bytes, about=about, not_before=turn.now, created_at=turn.now,
    )  # fmt: skip
    turn.session.add(row)
    turn.session.flush()
    return row
