"""A check on every message of every test: it is written in the language of whoever reads it."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from sqlalchemy import Connection, event, select

from bot import languages
from bot.store.people import Person
from bot.store.traffic import OutboxRow

#: A language with a catalogue that says everything as it stands in the code.
OTHER = "xa"


def add_other_language(folder: Path) -> None:
    """Have one more language, in a folder of catalogues of its own."""
    target = folder / OTHER / "LC_MESSAGES" / f"{languages.DOMAIN}.po"
    target.parent.mkdir(parents=True)
    target.write_text('msgid ""\nmsgstr "Content-Type: text/plain; charset=utf-8\\n"\n')
    languages.CATALOGUES = folder


def heed_readers() -> None:
    event.listen(OutboxRow, "before_insert", _written_for_its_reader)


def _written_for_its_reader(_mapper: Any, connection: Connection, row: OutboxRow) -> None:
    person = Person.__table__.c  # type: ignore[attr-defined]
    found = connection.execute(
        select(person.chosen_language, person.language).where(person.chat_id == row.chat_id)
    ).first()
    if found is None or row.payload.get("commands") == []:
        return
    wanted = languages.nearest(found.chosen_language or found.language)
    assert languages.language() == wanted, (
        f"said in {languages.language()} to somebody who reads {wanted}: {row.payload}"
    )
