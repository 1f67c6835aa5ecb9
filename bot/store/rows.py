"""What is known for good of the rows of each table: a class, its columns in their order, its key."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

from sqlalchemy import Column, Table, inspect
from sqlalchemy.orm import Mapper
from sqlmodel import SQLModel


@dataclass(frozen=True, slots=True)
class Shape:
    """`columns`: attribute names with their columns; `keys`: the names that are the primary key, and
    `key_places` where in `columns` they stand. The tables have no relations and no inheritance.
    """

    kind: type[SQLModel]
    table: Table
    names: tuple[str, ...]
    columns: tuple[tuple[str, Column[Any]], ...]
    keys: tuple[str, ...]
    key_places: tuple[int, ...]
    manager: Any


@cache
def shape_of(kind: Any) -> Shape:
    """The shape of a class of rows. Raises ValueError where its rows are more than their columns."""
    mapper: Mapper[Any] = inspect(kind)
    table = mapper.local_table
    if mapper.relationships or mapper.inherits is not None or not isinstance(table, Table):
        raise ValueError(f"{kind.__name__} is more than the rows of one table")
    columns = tuple((one.key, table.c[one.columns[0].key]) for one in mapper.column_attrs)
    names = tuple(name for name, _ in columns)
    keys = tuple(mapper.get_property_by_column(column).key for column in mapper.primary_key)
    return Shape(
        kind, table, names, columns, keys, tuple(names.index(key) for key in keys),
        mapper.class_manager,
    )  # fmt: skip
