"""The schema of the document, made from the tables: JSON Schema 2020-12.

`python -m bot.membership.my_data.schema` writes `schema.json` beside this file anew; a test fails
while that is older than the tables.
"""

from __future__ import annotations

import json
from dataclasses import fields
from pathlib import Path
from typing import Any

import sqlalchemy as sa
from sqlalchemy import Column, Table
from sqlmodel import SQLModel

from bot.membership.my_data.owned import Owned, given, owned, tables
from engine.values.limits import LIMIT_KEYS
from engine.values.plan import DayTarget

DIALECT = "https://json-schema.org/draft/2020-12/schema"
FORMAT, VERSION = "brimline-data", 1
FILE = Path(__file__).with_name("schema.json")
Schema = dict[str, Any]


def schema() -> Schema:
    """The whole schema."""
    defs: Schema = {}
    properties: Schema = {
        "format": {"const": FORMAT},
        "version": {"const": VERSION},
        "made_at": {"type": "string", "format": "date-time"},
        "people": {
            "description": "First names of people by the ids that stand for them.",
            "type": "object",
            "patternProperties": {"^[0-9]+$": {"type": "string"}},
            "additionalProperties": False,
        },
    }
    for role, about in _ROLES.items():
        mine = [table for table in tables() if _has(owned(table), role)]
        to_athlete = role != "coach"
        properties[role] = _closed({t.name: _rows_of(t, to_athlete, defs) for t in mine})
        properties[role]["description"] = about
    return {
        "$schema": DIALECT,
        "$id": f"urn:{FORMAT}:{VERSION}",
        "title": "Everything that Brimline keeps of one person",
        "description": (
            "Weights are in kg, volumes in L, amounts in g or mg as the names of the figures say; "
            "dates are days on the athlete's own clocks, instants have their offset."
        ),
        **_closed(properties),
        "$defs": defs,
    }


_ROLES = {
    "person": "What is theirs whatever they are here: who they are, and what was said in their chat.",
    "athlete": "Everything about them as an athlete, whoever wrote it.",
    "coach": "What they set, wrote and were told as a coach, of athletes whom they still coach.",
}


def _has(how: Owned, role: str) -> bool:
    """Whether the part for this role has such rows."""
    return {
        "person": bool(how.person or how.chat),
        "athlete": bool(how.athlete),
        "coach": bool(how.coach),
    }[role]


def written() -> str:
    return json.dumps(schema(), indent=1, ensure_ascii=False) + "\n"


def _closed(properties: Schema) -> Schema:
    return {
        "type": "object",
        "properties": properties,
        "required": list(properties),
        "additionalProperties": False,
    }


def _rows_of(table: Table, to_athlete: bool, defs: Schema) -> Schema:
    how: Owned = owned(table)
    name = f"{table.name}_of_athlete" if how.coachs and to_athlete else table.name
    if name not in defs:
        columns = given(table, to_athlete=to_athlete)
        defs[name] = _closed({column.name: _value(column) for column in columns})
        defs[name]["description"] = _told(table)
    return {"type": "array", "items": {"$ref": f"#/$defs/{name}"}}


def _told(table: Table) -> str:
    """What the table's own class says of it."""
    for mapper in SQLModel._sa_registry.mappers:
        if mapper.local_table is table:
            return " ".join((mapper.class_.__doc__ or table.name).split()).replace("`", "'")
    return str(table.name)


def _value(column: Column[Any]) -> Schema:
    if (column.table.name, column.name) in _INSIDE:
        return _INSIDE[column.table.name, column.name]
    found = dict(next(said for kind, said in _KINDS if isinstance(column.type, kind)))
    if column.nullable and "type" in found:
        found["type"] = [found["type"], "null"]
    return found


#: The first that fits; what is JSON in the table may be anything but where `_INSIDE` says more.
_KINDS: tuple[tuple[Any, Schema], ...] = (
    (sa.Boolean, {"type": "boolean"}),
    (sa.Integer, {"type": "integer"}),
    (sa.Float, {"type": "number"}),
    (sa.Date, {"type": "string", "format": "date"}),
    # RFC 3339 has no time without an offset, and these are clock times: HH:MM:SS.
    (sa.Time, {"type": "string", "pattern": "^[0-9]{2}:[0-9]{2}:[0-9]{2}$"}),
    (sa.DateTime, {"type": "string", "format": "date-time"}),
    (sa.TypeDecorator, {"type": "string", "format": "date-time"}),
    (sa.JSON, {}),
    (sa.String, {"type": "string"}),
)


def _day_target() -> Schema:
    """A day of a plan: what it has to have, and what it may."""
    kinds = {"int": "integer", "str": "string"}
    found: Schema = {}
    for one in fields(DayTarget):
        named = str(one.type).partition(" ")[0]
        kind = kinds.get(named, "number" if named == "float" else "")
        if kind:
            found[one.name] = {"type": [kind, "null"] if "None" in str(one.type) else kind}
        else:
            found[one.name] = {}
    return {
        "type": "object",
        "properties": found,
        "required": ["days_out", "carb_g", "protein_g", "fat_g", "water_l"],
    }


_INSIDE: dict[tuple[str, str], Schema] = {
    ("plan", "days"): {"type": "array", "items": _day_target()},
    ("limits", "bounds"): {
        "type": "object",
        "properties": {key: {"type": "number", "minimum": 0} for key in LIMIT_KEYS},
    },
    ("checkin", "symptoms"): {"type": "array", "items": {"type": "string"}},
}


if __name__ == "__main__":
    FILE.write_text(written())
