"""What every table shares: rows, UTC instants that stay UTC, JSON as text, stable constraint names."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping, Set
from datetime import UTC, datetime
from functools import cache
from typing import Any, Protocol, runtime_checkable

import orjson
from sqlalchemy import DateTime
from sqlalchemy.engine import Dialect
from sqlalchemy.orm import object_session
from sqlalchemy.orm.attributes import set_attribute
from sqlalchemy.types import TypeDecorator
from sqlmodel import SQLModel

SQLModel.metadata.naming_convention = {
    "ix": "ix_%(column_0_label)s",
    "uq": "uq_%(table_name)s_%(column_0_N_name)s",
    "ck": "ck_%(table_name)s_%(constraint_name)s",
    "fk": "fk_%(table_name)s_%(column_0_name)s_%(referred_table_name)s",
    "pk": "pk_%(table_name)s",
}
#: As the standard library has it: days and dataclasses are no JSON, keys may be numbers.
_OPTIONS = (
    orjson.OPT_PASSTHROUGH_DATACLASS | orjson.OPT_PASSTHROUGH_DATETIME | orjson.OPT_NON_STR_KEYS
)


class Row(SQLModel):
    """A table's row, whose columns are set at once.

    SQLModel asks at each whether it is one, and sets it a second time as pydantic would: two thirds of
    what it takes to make a row, and a turn sets dozens. A new row has no history to be kept besides.
    """

    def __init__(self, **given: Any) -> None:
        names, constants, factories = _defaults(type(self))
        if not given.keys() <= names:
            raise TypeError(f"{type(self).__name__} has no {sorted(given.keys() - names)}")
        values = {name: make() for name, make in factories.items() if name not in given}
        self.__dict__.update({**constants, **values, **given})
        object.__setattr__(self, "__pydantic_fields_set__", set(given))

    def __setattr__(self, name: str, value: Any) -> None:
        if name in self.__pydantic_fields__ and name not in self.__sqlmodel_relationships__:
            set_attribute(self, name, value)
            self.__pydantic_fields_set__.add(name)
        else:
            super().__setattr__(name, value)


@cache
def _defaults(
    kind: type[Row],
) -> tuple[Set[str], Mapping[str, Any], Mapping[str, Callable[[], Any]]]:
    """The columns of a class of rows, what stands in those that are not given, and what is made anew
    for each row.
    """
    columns = kind.model_fields
    optional = {name: one for name, one in columns.items() if not one.is_required()}
    made: dict[str, Any] = {
        name: one.default_factory for name, one in optional.items() if one.default_factory
    }
    constants = {name: one.default for name, one in optional.items() if name not in made}
    return columns.keys(), constants, made


class UTCDateTime(TypeDecorator[datetime]):
    """An aware instant, stored as UTC; SQLite keeps no zone, so it is put back on the way out."""

    impl = DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> Any:
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError("an instant without a zone cannot be stored")
        value = value.astimezone(UTC)
        return value.replace(tzinfo=None) if dialect.name == "sqlite" else value

    def process_result_value(  # the base class calls it with the dialect
        self,
        value: Any,
        dialect: Dialect,  # noqa: ARG002
    ) -> datetime | None:
        if value is None:
            return None
        assert isinstance(value, datetime)
        return value.replace(tzinfo=UTC) if value.tzinfo is None else value.astimezone(UTC)


class HasId(Protocol):
    id: int | None


@runtime_checkable
class GivesNumbers(Protocol):
    def number(self, row: Any) -> None:
        """Give a new row its key, by writing it or ahead of that."""


def id_of(row: HasId) -> int:
    """The key of a row that may wait to be written yet.

    Raises ValueError for one that nobody has added.
    """
    if row.id is None and (session := object_session(row)) is not None:
        if isinstance(session, GivesNumbers):
            session.number(row)
        else:
            session.flush()
    if row.id is None:
        raise ValueError(f"{type(row).__name__} has not been stored yet")
    return row.id


def to_text(value: Any) -> str:
    """Raises TypeError for what JSON has no way of writing."""
    try:
        return orjson.dumps(value, option=_OPTIONS).decode()
    except TypeError:
        # Half a sign, as a broken client sends it, and integers of more than 64 bits.
        return json.dumps(value)


def from_text(text: str | bytes) -> Any:
    """An integer of more than 64 bits comes back as a float. Raises ValueError for what is no JSON."""
    try:
        return orjson.loads(text)
    except ValueError:
        # The standard library writes half a sign as it came, and numbers beyond the finite by name.
        return json.loads(text)
