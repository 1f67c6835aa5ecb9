"""What every table shares: rows whose columns are set at once, stable constraint names."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Set
from functools import cache
from itertools import islice
from typing import TYPE_CHECKING, Any, Protocol, TypeVar, runtime_checkable

from sqlalchemy.orm import object_session
from sqlmodel import Field, Session, SQLModel, col, select

SQLModel.metadata.naming_convention = {
    "ix": "ix_%(column_0_label)s",
    "uq": "uq_%(table_name)s_%(column_0_N_name)s",
    "ck": "ck_%(table_name)s_%(constraint_name)s",
    "fk": "fk_%(table_name)s_%(column_0_name)s_%(referred_table_name)s",
    "pk": "pk_%(table_name)s",
}


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

    if not TYPE_CHECKING:  # or any attribute at all might be set, for all that a checker knows
        __setattr__ = object.__setattr__


class NumberedRow(Row):
    """One with a number of its own, which it has once it is written, or before (`id_of`)."""

    id: int | None = Field(default=None, primary_key=True)


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


AT_ONCE = 500

_Item = TypeVar("_Item")
_Row = TypeVar("_Row", bound=NumberedRow)


def batches(items: Iterable[_Item]) -> Iterator[list[_Item]]:
    """The items in their order, in lists of at most `AT_ONCE`, none of them empty."""
    left = iter(items)
    while batch := list(islice(left, AT_ONCE)):
        yield batch


def rows_of_all(
    session: Session, table: type[_Row], key: Any, values: Iterable[object], *more: Any
) -> Iterator[_Row]:
    """The rows with one of these values, in the order of their numbers as far as they are read at once;
    `more` has to hold of them, too.
    """
    for chunk in batches(values):
        query = select(table).where(col(key).in_(chunk), *more)
        yield from session.exec(query.order_by(col(table.id)))
