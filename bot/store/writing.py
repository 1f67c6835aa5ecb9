"""What is pending goes to the database in one plain statement a row, and only once it is needed there.

The mapper's unit of work sorts out relations, cascades, inheritance and keys that change. The tables
here have none of these, and the sorting costs several times what the statements do. So a session
of a use case writes its rows itself: what has changed first, then what is new, in the order in which
it was added. Whatever is not as plain as that (a row deleted, a key changed, very many rows) goes the
mapper's way. `tests/bot/test_plain_rows.py` compares the two ways, table by table.

A read (`bot.store.reading`) has nothing to wait for where no row of its tables is pending.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from functools import cache, lru_cache
from typing import Any

from sqlalchemy import bindparam, func, insert, select, update
from sqlalchemy.orm import InstanceState
from sqlalchemy.orm.attributes import instance_state
from sqlalchemy.orm.exc import StaleDataError
from sqlmodel import SQLModel

from bot.store.driver import Straight
from bot.store.reading import ReadsPlainly
from bot.store.rows import Shape, shape_of

#: So many new rows of one table are better sent by the mapper, which sends them together.
MANY = 20
#: More of one table go one by one, or every number of them would be another statement to be prepared.
ALIKE_AT_ONCE = 4


class WritesPlainly(ReadsPlainly):
    """A session that writes plain rows without the unit of work, and not before it has to."""

    def connection(self, *given: Any, **more: Any) -> Any:
        """Whoever asks for it goes past the session, which has written everything by then."""
        self.flush()
        return super().connection(*given, **more)

    def flush(self, objects: Any = None) -> None:
        if self._is_clean():
            return
        new, changed = list(self.new), list(self.dirty)
        if objects is not None or self.deleted or not _are_plain(new, changed):
            super().flush(*(() if objects is None else (objects,)))
            return
        self._flushing = True  # so that nothing that is loaded meanwhile begins another one
        try:
            straight = self.straight()
            states = _updated(straight, changed)
            states += _all_inserted(straight, [instance_state(row) for row in new])
            self.after_writing([*new, *changed])
            # As the mapper's flush ends: they are persistent, and nothing in them is new any more.
            self._register_persistent(set(states))
        finally:
            self._flushing = False

    def after_writing(self, rows: list[Any]) -> None:
        """Called once these have been written plainly, as `after_flush` is where the mapper did it."""


def _shape(state: InstanceState[Any]) -> Shape:
    kind: Any = state.class_
    return shape_of(kind)


def _are_plain(new: list[Any], changed: list[Any]) -> bool:
    for state in map(instance_state, changed):
        if not state.committed_state.keys().isdisjoint(_shape(state).keys):
            return False
    if len(new) >= MANY and max(Counter(map(type, new)).values()) >= MANY:
        return False
    return all(
        _leaves_nothing_open(_shape(state), state.dict) for state in map(instance_state, new)
    )


def _leaves_nothing_open(shape: Shape, values: dict[str, Any]) -> bool:
    """Whether nothing is left to defaults of the database, apart from the key that it counts up."""
    if len(shape.keys) > 1 and any(values.get(key) is None for key in shape.keys):
        return False
    return not any(values.get(name) is None for name in _with_default(shape.kind))


@cache
def _with_default(kind: type[SQLModel]) -> tuple[str, ...]:
    """Columns that get another value than nothing where nothing is given."""
    shape = shape_of(kind)
    return tuple(
        name
        for name, column in shape.columns
        if (column.default is not None or column.server_default is not None)
        and not column.type.should_evaluate_none
    )


@cache
def _insert(kind: type[SQLModel], counted: tuple[str, ...]) -> tuple[Any, tuple[str, ...]]:
    """The statement for a new row, and the columns that it is given: all but the keys that the database
    counts up and returns.
    """
    shape = shape_of(kind)
    columns = dict(shape.columns)
    statement = insert(shape.table)
    if counted:
        statement = statement.returning(*(columns[name] for name in counted))
    return statement, tuple(one.key for name, one in shape.columns if name not in counted)


def _counted(state: InstanceState[Any]) -> tuple[str, ...]:
    """The keys of a new row that the database counts up."""
    return tuple(name for name in _shape(state).keys if state.dict.get(name) is None)


def _all_inserted(straight: Straight, states: list[InstanceState[Any]]) -> list[InstanceState[Any]]:
    """On PostgreSQL, where each statement is a round trip, rows go together as far as they can."""
    alike: dict[type[SQLModel], list[InstanceState[Any]]] = {}
    if straight.dialect.name == "postgresql" and len(states) > 1:
        for state in states:
            alike.setdefault(_shape(state).kind, []).append(state)
        alike = {kind: found for kind, found in alike.items() if _may_go_together(found)}
    for state in states:
        if _shape(state).kind not in alike:
            _inserted(straight, state)
    if alike:
        _inserted_together(straight, alike)
    return states


def _may_go_together(states: list[InstanceState[Any]]) -> bool:
    return len(states) <= ALIKE_AT_ONCE and all(len(_counted(state)) == 1 for state in states)


def _inserted_together(
    straight: Straight, alike: Mapping[type[SQLModel], list[InstanceState[Any]]]
) -> None:
    kinds = tuple((kind, len(found)) for kind, found in alike.items())
    given = {
        f"{table}_{place}_{column.key}": state.dict.get(name)
        for table, found in enumerate(alike.values())
        for place, state in enumerate(found)
        for name, column in _shape(state).columns
    }
    (row,) = straight.found(_inserts(kinds), given)
    for found, keys in zip(alike.values(), row, strict=True):
        for state, key in zip(found, sorted(keys), strict=True):  # counted up in their order
            state.dict[_shape(state).keys[0]] = key


@lru_cache(maxsize=300)
def _inserts(kinds: tuple[tuple[type[SQLModel], int], ...]) -> Any:
    """One statement for so many new rows of each of these kinds, which returns the keys of each."""
    found = []
    for number, (kind, count) in enumerate(kinds):
        shape = shape_of(kind)
        (key,) = (column for name, column in shape.columns if name in shape.keys)
        rows = [
            {
                column: bindparam(f"{number}_{place}_{column.key}", type_=column.type)
                for _, column in shape.columns
                if column is not key
            }
            for place in range(count)
        ]
        new = insert(shape.table).values(rows).returning(key).cte(f"new_{number}")
        found.append(
            select(func.array_agg(new.c[key.key])).scalar_subquery().label(f"keys_{number}")
        )
    return select(*found)


def _inserted(straight: Straight, state: InstanceState[Any]) -> InstanceState[Any]:
    shape, values = _shape(state), state.dict
    counted = _counted(state)
    statement, columns = _insert(shape.kind, counted)
    given = {column.key: values.get(name) for name, column in shape.columns}
    if counted:
        (row,) = straight.found(statement, given, columns)
        values.update(zip(counted, row, strict=True))
    else:
        straight.put(statement, given, columns=columns)
    return state


@cache
def _update(kind: type[SQLModel], changed: tuple[str, ...]) -> Any:
    """The statement that sets these columns of a row; built once for a table and a set of columns."""
    shape = shape_of(kind)
    columns = dict(shape.columns)
    return (
        update(shape.table)
        .where(*(columns[name] == bindparam(f"key_{name}") for name in shape.keys))
        .values({columns[name]: bindparam(f"set_{name}") for name in changed})
    )


def _updated(straight: Straight, rows: list[Any]) -> list[InstanceState[Any]]:
    """Rows of one kind in which the same columns have changed go together."""
    states: list[InstanceState[Any]] = [instance_state(row) for row in rows]
    alike: dict[tuple[type[SQLModel], tuple[str, ...]], list[dict[str, Any]]] = {}
    for state in states:
        shape = _shape(state)
        assert state.identity is not None
        for name, one in zip(shape.keys, state.identity, strict=True):
            state.dict.setdefault(
                name, one
            )  # which is known, even where all else is to be read anew
        changed = tuple(name for name, column in shape.columns if _differs(state, name, column))
        if changed:
            key = {f"key_{name}": one for name, one in zip(shape.keys, state.identity, strict=True)}
            values = {f"set_{name}": state.dict[name] for name in changed}
            alike.setdefault((shape.kind, changed), []).append(key | values)
    for (kind, changed), found in alike.items():
        there = straight.put(_update(kind, changed), *found)
        if there != len(found):
            raise StaleDataError(f"{kind.__name__}: {len(found)} to change, {there} there")
    return states


def _differs(state: InstanceState[Any], name: str, column: Any) -> bool:
    before = state.committed_state
    return name in before and not column.type.compare_values(state.dict[name], before[name])
