"""The document as sheets: one a table that holds anything, its columns as they are stored."""

from __future__ import annotations

import json
from typing import Any

from bot.sheets.workbook.tables import Column, Kind
from bot.sheets.workbook.writing import Page

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
