"""Statements that are built once are read as plain rows, and made objects of here.

For every read the mapper works out anew how to make objects of its columns, which costs twice the
statement. Of the tables here that is known for good: a row is its columns in their order, and is in
the session by its key or new to it. A statement is read like that from the second time on that it is
put, so what is built for one read goes the mapper's way, and so does whatever is read with options.
Where a statement joins, its first table is named by `select_from`. `tests/bot/test_plain_rows.py`
compares the two ways.
"""

from __future__ import annotations

from collections.abc import Container, Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any
from weakref import WeakKeyDictionary

from sqlalchemy import Column, Table, event, inspect
from sqlalchemy.exc import MultipleResultsFound, NoResultFound
from sqlalchemy.orm import InstanceState, Mapper
from sqlalchemy.orm.attributes import instance_state
from sqlalchemy.sql import visitors
from sqlmodel import Session, SQLModel
from sqlmodel.sql.expression import Select, SelectOfScalar

from bot.store.driver import Straight


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


class Found(list[Any]):
    """What a statement has found, to be asked as a result of SQLAlchemy's is."""

    def all(self) -> Sequence[Any]:
        return self

    def first(self) -> Any:
        return self[0] if self else None

    def one(self) -> Any:
        if not self:
            raise NoResultFound
        if len(self) > 1:
            raise MultipleResultsFound
        return self[0]


@dataclass(frozen=True, slots=True)
class Way:
    """How a statement is read plainly.

    `parts`: for each thing that it asks for where in a row it begins and ends, with the shape of what
    is a row itself. `alone`: it asks for one thing, which is not to come in a tuple.
    """

    statement: Any
    parts: tuple[tuple[int, int, Shape | None], ...]
    alone: bool
    tables: frozenset[str]


_ways: WeakKeyDictionary[Any, Way | None] = WeakKeyDictionary()
_NONE = object()
_put_once: WeakKeyDictionary[Any, bool] = WeakKeyDictionary()


def way_of(statement: Any) -> Way | None:
    """How to read it plainly; None where it is the mapper's to read."""
    if statement in _ways:
        return _ways[statement]
    if statement in _put_once:
        return _ways.setdefault(statement, _work_out(statement))
    _put_once[statement] = True
    return None


def _work_out(statement: Any) -> Way | None:
    if not isinstance(statement, Select | SelectOfScalar) or statement.get_execution_options():
        return None
    if statement._with_options:
        return None
    parts: list[tuple[int, int, Shape | None]] = []
    columns: list[Any] = []
    for asked in statement.column_descriptions:
        begins, shape = len(columns), None
        if asked["expr"] is not asked.get("entity", _NONE):
            columns.append(asked["expr"])
        else:
            shape = shape_of(inspect(asked["entity"]).mapper.class_)
            columns += [getattr(asked["entity"], name) for name in shape.names]
        parts.append((begins, len(columns), shape))
    rows = any(shape is not None for *_, shape in parts)
    return Way(
        statement.with_only_columns(*columns) if rows else statement,
        tuple(parts), isinstance(statement, SelectOfScalar), frozenset(_tables(statement)),
    )  # fmt: skip


def _tables(statement: Any) -> Iterator[str]:
    """Every table that a statement names, wherever in it."""
    for part in visitors.iterate(statement):
        named = getattr(part, "table", part)  # a column's, else the part itself
        while not isinstance(named, Table) and hasattr(named, "element"):  # an alias of it
            named = named.element
        if isinstance(named, Table):
            yield named.name


class ReadsPlainly(Session):
    """A session that reads plainly what can be, and holds on to every row until it ends.

    Sessions hold rows weakly otherwise, and one that is asked for by its key in several places of a
    use case is read from the database each time.
    """

    def __init__(self, *given: Any, **more: Any) -> None:
        super().__init__(*given, **more)
        self.rows: list[object] = []
        self._through: tuple[object, Straight] | None = None

    def exec(self, statement: Any, *, params: Any = None, **more: Any) -> Any:
        way = None if more else way_of(statement)
        if way is None:
            return super().exec(statement, params=params, **more)
        self.flush_for(way.tables)
        found = self.straight().found(way.statement, params or {})
        if len(way.parts) == 1 and way.alone:
            ((_, _, shape),) = way.parts
            return Found(row[0] if shape is None else self._row(shape, row) for row in found)
        made = (
            tuple(
                row[begins] if shape is None else self._row(shape, row[begins:ends])
                for begins, ends, shape in way.parts
            )
            for row in found
        )
        return Found(row[0] for row in made) if way.alone else Found(made)

    def straight(self) -> Straight:
        """What the session's statements go through; whoever asks for `connection` goes past it."""
        transaction = self.get_transaction()
        if self._through is None or transaction is None or self._through[0] is not transaction:
            connection = Session.connection(self)
            self._through = (self.get_transaction(), Straight(connection))
        return self._through[1]

    def close(self) -> None:
        """An open cursor would keep the database's file open for as long as it is remembered here."""
        if self._through is not None:
            self._through[1].close()
            self._through = None
        super().close()

    def flush_for(self, tables: Container[str]) -> None:
        """Write what is pending, where a row of these tables is; not within `no_autoflush`."""
        if not self.autoflush:
            return
        for states in (self._new, self.identity_map._modified, self._deleted):
            for state in states:
                if state.class_.__tablename__ in tables:
                    self.flush()
                    return

    def add(self, instance: Any, **_more: Any) -> None:
        """As ever; what is in the session already isn't looked at once more."""
        state: InstanceState[Any] = instance_state(instance)
        if state.session_id != self.hash_key:
            self._save_or_update_impl(
                state
            )  # without a look for relations, of which there are none

    def _row(self, shape: Shape, values: Sequence[Any]) -> Any:
        """The row with these values: the one that the session has under its key, or a new one."""
        key = tuple(values[place] for place in shape.key_places)
        if None in key:
            return None  # joined to nothing
        identity = (shape.kind, key, None)
        known = self.identity_map.get(identity)
        if known is not None:
            state: InstanceState[Any] = instance_state(known)
            if state.expired_attributes:
                _fill(state, dict(zip(shape.names, values, strict=True)))
            return known
        row = shape.manager.new_instance()
        state = instance_state(row)
        state.dict.update(zip(shape.names, values, strict=True))
        state.key = identity
        state.session_id = self.hash_key
        self.identity_map.add(state)
        self.rows.append(row)
        return row


@event.listens_for(ReadsPlainly, "loaded_as_persistent")
@event.listens_for(ReadsPlainly, "pending_to_persistent")
def _keep(session: ReadsPlainly, row: InstanceState[Any]) -> None:
    session.rows.append(row)


def _fill(state: InstanceState[Any], values: dict[str, Any]) -> None:
    """What was to be read anew of a row that the session has."""
    wanted = state.expired_attributes & values.keys()
    state.dict.update({name: values[name] for name in wanted})
    state._commit(state.dict, wanted)
