"""A language of no country: every sentence of the catalogue in wide letters.

What comes out of the catalogue cannot be taken for what does not: whatever is written in plain letters
in a foreign chat was never translated, and wide letters in an English one were meant for another.
"""

from __future__ import annotations

import pickle
import re
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from babel.messages import Catalog
from sqlalchemy import event
from sqlalchemy.orm import Session
from sqlalchemy.orm.attributes import instance_state

from bot.store.tables.traffic import OutboxRow
from bot.words import languages
from bot.words.locale.update import catalogue_file, sentences, write
from tests.support.once import once_a_run

FOREIGN = "xa"
#: Our own catalogues; the tests' take their place while tests run.
OURS = languages.CATALOGUES

_WIDE = {letter: letter + 0xFEE0 for letter in map(ord, "ABCDEFGHIJKLMNOPQRSTUVWXYZ")}
_WIDE |= {letter + 32: letter + 32 + 0xFEE0 for letter in _WIDE}
_WIDE_LETTER = re.compile("[Ａ-Ｚａ-ｚ]")
#: Addresses, the code of an invitation, zones and commands.
_NO_WORDS = re.compile(
    r"https?://\S+|[0-9A-Z]{4}(?:-[0-9A-Z]{4}){3}|[A-Z][a-z]+/[A-Z][A-Za-z_]+|/[a-z_]+"
)
#: Placeholders and commands stay as they are, and so does the order of a date.
_KEPT = re.compile(r"(\{[^}]*\}|/[a-z_]+)")
_DATE_ORDER = re.compile(r"[EdMy -]+")


def wide(sentence: str) -> str:
    if _DATE_ORDER.fullmatch(sentence):
        return sentence
    parts = _KEPT.split(sentence)
    return "".join(part if n % 2 else part.translate(_WIDE) for n, part in enumerate(parts))


@pytest.fixture(scope="session")
def in_code(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A file with every sentence in the code, looked for once in a run; see `sentences_in`."""

    def look(folder: Path) -> None:
        (folder / "sentences").write_bytes(pickle.dumps(sentences()))

    return once_a_run(tmp_path_factory, "sentences", look) / "sentences"


def sentences_in(file: Path) -> Catalog:
    found: Catalog = pickle.loads(file.read_bytes())
    return found


def write_foreign_catalogue(folder: Path, in_code: Path) -> None:
    catalogue = sentences_in(in_code)
    for message in catalogue:
        if message.id:
            both = isinstance(message.id, list | tuple)
            message.string = tuple(map(wide, message.id)) if both else wide(str(message.id))
    write(catalogue, catalogue_file(FOREIGN, folder))


def is_foreign(text: str) -> bool:
    return _WIDE_LETTER.search(text) is not None


def plain_words(text: str, known: frozenset[str]) -> list[str]:
    """The words in plain letters, but for those known: names, units, months, zones, commands."""
    text = _NO_WORDS.sub(" ", text)
    return [word for word in re.findall(r"[A-Za-z]{2,}", text) if word not in known]


def calendar_names() -> frozenset[str]:
    """The names of days and months, which come from the CLDR and not from the catalogue."""
    days = [date(2027, month, day) for month in range(1, 13) for day in range(1, 8)]
    return frozenset(name for day in days for name in f"{day:%a %A %b %B}".split())


def write_plain_catalogue(folder: Path) -> None:
    """The foreign language with no sentence translated: it reads as the code does."""
    write(Catalog(charset="utf-8", fuzzy=False), catalogue_file(FOREIGN, folder))


#: As the driver takes it, since every message of every test asks it.
_READER = "SELECT chosen_language, language FROM person WHERE chat_id = "
_VALUE = {"sqlite": "?", "postgresql": "%s"}
_MADE_IN = "made in the language"


def note_the_language(row: OutboxRow, _given: Any, _more: Any) -> None:
    """In which language a message is made; it may be written later."""
    instance_state(row).info[_MADE_IN] = languages.language()


def written_for_its_reader(session: Session, row: object) -> None:
    """Raises AssertionError for a message in another language than its reader's."""
    if not isinstance(row, OutboxRow) or row.payload.get("commands") == []:
        return
    if row.payload.keys() == {"callback_query_id"}:
        return  # a spinner stops in any language
    connection = Session.connection(session)  # not as a use case's own, which writes first
    query = _READER + _VALUE[connection.dialect.name]
    if connection.dialect.name == "sqlite":  # where the bot's statements are counted: this is none
        found = connection.connection.driver_connection.execute(query, (row.chat_id,)).fetchone()  # type: ignore[union-attr]
    else:  # where two may be in each other's way, which has to come out as it does elsewhere
        found = connection.exec_driver_sql(query, (row.chat_id,)).first()
    if found is None:
        return
    wanted, made_in = languages.nearest(found[0] or found[1]), instance_state(row).info[_MADE_IN]
    assert made_in == wanted, f"said in {made_in} to somebody who reads {wanted}: {row.payload}"


def heed_readers() -> None:
    """From now on no message may be written in another language than its reader's."""
    event.listen(OutboxRow, "init", note_the_language)
    event.listen(Session, "pending_to_persistent", written_for_its_reader)
