"""Everything that is kept of whoever asks (/mydata): as one JSON document, as sheets, in one ZIP."""

from __future__ import annotations

import io
import json
import zipfile
from collections.abc import Callable
from datetime import date, datetime, time
from typing import Any
from zoneinfo import ZoneInfo

from sqlalchemy import ColumnElement, Table
from sqlalchemy import select as pick
from sqlmodel import Session, col, select

from bot.core.chat.outbox import send_document
from bot.core.turn import Act, Document, Turn
from bot.membership import words
from bot.membership.my_data.owned import Me, as_athlete, as_coach, as_person, given, tables
from bot.membership.my_data.schema import FILE, FORMAT, VERSION
from bot.people.coach_settings import zone_of_coach
from bot.people.people import athletes_of, profile_of
from bot.pictures.photos.photo_rows import make_photo
from bot.sheets.workbook import words as workbook_words
from bot.sheets.workbook.files import pages_for
from bot.sheets.workbook.tables import Column, Kind
from bot.sheets.workbook.writing import Page, xlsx
from bot.store.base import id_of
from bot.store.tables import metadata
from bot.store.tables.people import Person
from bot.store.tables.photos import PhotoRow

Rows = list[dict[str, Any]]


def document(session: Session, me: Me, made_at: datetime) -> dict[str, Any]:
    """By role and table, the rows as they are stored; ids of other people stand for their names."""
    found: dict[str, Any] = {
        "format": FORMAT,
        "version": VERSION,
        "made_at": made_at.isoformat(),
        "person": _of(session, me, as_person, to_athlete=True),
        "athlete": _of(session, me, as_athlete, to_athlete=True),
        "coach": _of(session, me, as_coach, to_athlete=False),
    }
    return found | {"people": _people(session, found)}


def as_json(found: dict[str, Any]) -> bytes:
    """UTF-8, readable as it is."""
    return json.dumps(found, ensure_ascii=False, indent=1).encode()


def _of(
    session: Session,
    me: Me,
    whose: Callable[[Table, Me], ColumnElement[bool] | None],
    *,
    to_athlete: bool,
) -> dict[str, Rows]:
    found: dict[str, Rows] = {}
    for table in tables():
        condition = whose(table, me)
        if condition is None:
            continue
        columns = given(table, to_athlete=to_athlete)
        query = pick(*columns).where(condition).order_by(*table.primary_key.columns)
        found[table.name] = [
            {column.name: plain(value) for column, value in zip(columns, row, strict=True)}
            for row in session.connection().execute(query)
        ]
    return found


def plain(value: Any) -> Any:
    """A value as JSON knows it: dates and instants as RFC 3339 writes them."""
    if isinstance(value, datetime | date | time):
        return value.isoformat()
    return value


def _people(session: Session, found: dict[str, Any]) -> dict[str, str]:
    """First names of everybody who is named by an id."""
    named: set[int] = set()
    for role in ("person", "athlete", "coach"):
        for table, rows in found[role].items():
            columns = [
                column.name
                for column in metadata.tables[table].c
                if any(key.target_fullname == "person.id" for key in column.foreign_keys)
            ]
            named |= {row[c] for row in rows for c in columns if row.get(c) is not None}
    people = metadata.tables["person"]
    query = pick(people.c.id, people.c.first_name).where(people.c.id.in_(named))
    return {str(number): name for number, name in session.connection().execute(query)}


MOST_IN_A_TITLE = 31  # characters of a sheet's name; spreadsheet programs take no more
ROLES = ("person", "athlete", "coach")


def as_sheets(found: dict[str, Any]) -> list[Page]:
    """Sheets named "athlete checkin": what somebody is in it, and the table. What holds several
    values is written as JSON.
    """
    pages = [
        _page(f"{role} {table}", rows)
        for role in ROLES
        for table, rows in found[role].items()
        if rows
    ]
    people = [{"id": int(number), "first_name": name} for number, name in found["people"].items()]
    return [*pages, _page("people", people)]


def _page(title: str, rows: list[dict[str, Any]]) -> Page:
    keys = tuple(rows[0]) if rows else ("id", "first_name")
    columns = tuple(Column(key=key, heading=key, kind=Kind.TEXT) for key in keys)
    return Page(
        id=title, title=title[:MOST_IN_A_TITLE], columns=columns, headings=keys,
        rows=[[_cell(row[key]) for key in keys] for row in rows],
    )  # fmt: skip


def _cell(value: Any) -> Any:
    """A figure or text as it is; anything else as JSON."""
    if isinstance(value, bool | dict | list):
        return json.dumps(value, ensure_ascii=False)
    return value


MAKE = "my-data"
#: Telegram takes 50 MB from a bot (https://core.telegram.org/bots/api#senddocument).
MOST_OF_PHOTOS = 40_000_000


def hand_out(turn: Act) -> None:
    """/mydata."""
    profile = profile_of(turn.session, turn.person.id)
    zone = zone_of_coach(turn.session, turn.person) or (profile.zone if profile else None) or "UTC"
    send_document(
        turn,
        chat_id=turn.person.chat_id,
        document={
            "make": MAKE, "person": turn.person.id,
            "day": turn.now.astimezone(ZoneInfo(zone)).date().isoformat(),
        },
        caption=words.caption(keep_days=turn.context.keep_traffic_days),
    )  # fmt: skip


def make(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The ZIP; None once the person is gone."""
    person = turn.session.get(Person, named["person"])
    if person is None:
        return None
    day = date.fromisoformat(named["day"])
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        found = document(turn.session, me(turn.session, person), turn.now)
        archive.writestr("data.json", as_json(found))
        archive.writestr("schema.json", FILE.read_bytes())
        archive.writestr("data.xlsx", xlsx(as_sheets(found)))
        profile = profile_of(turn.session, person.id)
        if profile is not None:
            whose = workbook_words.whose_own()
            pages = pages_for(turn.session, person, [profile], whose=whose, day=day)
            archive.writestr("workbook.xlsx", xlsx(pages))
            _photos(turn, archive, profile.person_id)
    return Document(f"my-data-{day.isoformat()}.zip", out.getvalue())


def me(session: Session, person: Person) -> Me:
    """Whoever asks, and whom they coach now."""
    coached = frozenset(profile.person_id for profile in athletes_of(session, person))
    return Me(id_of(person), person.chat_id, coached)


def _photos(turn: Turn, archive: zipfile.ZipFile, athlete_id: int) -> None:
    """The newest pictures first, as many as a message can carry."""
    query = (
        select(PhotoRow)
        .where(PhotoRow.athlete_id == athlete_id, col(PhotoRow.kept_at).is_not(None))
        .order_by(col(PhotoRow.date).desc(), col(PhotoRow.id).desc())
    )
    size = 0
    for row in turn.session.exec(query):
        made = make_photo(turn, {"photo": row.id})
        if made is None:
            continue
        size += len(made.content)
        if size > MOST_OF_PHOTOS:
            return
        name = f"photos/{row.date.isoformat()}-{row.pose}-{row.id}.jpg"
        archive.writestr(name, made.content, zipfile.ZIP_STORED)
