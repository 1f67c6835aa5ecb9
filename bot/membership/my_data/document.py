"""Everything that is kept of somebody, as one JSON document that fits the published schema."""

from __future__ import annotations

import json
from collections.abc import Callable
from datetime import date, datetime, time
from typing import Any

from sqlalchemy import ColumnElement, Table
from sqlalchemy import select as pick
from sqlmodel import Session

from bot.membership.my_data.owned import Me, as_athlete, as_coach, as_person, given, tables
from bot.store.tables import metadata

FORMAT, VERSION = "brimline-data", 1
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
