"""What is pending goes to the database in one plain statement a row, and only once it is needed there.

The mapper's unit of work sorts out relations, cascades, inheritance and keys that change. The tables
here have none of these, and the sorting costs several times what the statements do. So a session
of a use case writes its rows itself: what has changed first, then what is new, in the order in which
it was added. Whatever is not as plain as that (a row deleted, a key changed, very many rows) goes the
mapper's way. `tests/bot/test_plain_rows.py` compares the two ways, table by table.

A read (`bot.store.reading`) has nothing to wait for where no row of its tables is pending.
"""

from __future__ import annotations

from collections import Counter, deque
from collections.abc import Sequence
from functools import cache, lru_cache
from itertools import islice
from typing import Any

from sqlalchemy import TextClause, bindparam, func, insert, literal, select, text, update
from sqlalchemy.orm import InstanceState
from sqlalchemy.orm.attributes import instance_state
from sqlalchemy.orm.exc import StaleDataError
from sqlmodel import Session, SQLModel

from bot.store.driver import Straight
from bot.store.reading import ReadsPlainly, Shape, shape_of

#: What the answer to a check-in takes, by table: drawn along with another statement of nearly every
#: use case (`DRAWN_ALONG`: a row each, in this order). All else is drawn by itself, so many at once.
OFTEN = (("open_question", 1), ("checkin", 1), ("decision", 1), ("outbox", 3))
AT_ONCE = 3
DRAWN_ALONG = " UNION ALL ".join(
    f"SELECT nextval('{table}_id_seq'), NULL" for table, many in OFTEN for _ in range(many)
)


class Numbers:
    """Numbers that were drawn for rows of this transaction and not given yet, by table: on PostgreSQL a
    new row gets its own before it is written.

    What a use case makes names what it has made before: a decision its check-in, a button its question.
    To write each row as soon as its number is asked for would be a statement apiece; so the number is
    drawn where the database would take it from, a few of those that are mostly wanted at once, and all
    rows go together at the end. Numbers of a table are given in the order in which its rows were added,
    and drawn after whoever is concerned is locked (`bot.people.locks`), so that they tell who came
    first as ever. On SQLite a statement is no round trip: a number is the one the row was written with.
    """

    def __init__(self) -> None:
        self._drawn: dict[str, deque[int]] = {}

    def give(self, straight: Straight, shape: Shape, rows: Sequence[InstanceState[Any]]) -> None:
        """To each of these new rows of one table its number, in their order."""
        kept = self._drawn.setdefault(shape.table.name, deque())
        if len(kept) < len(rows):
            kept.clear()
            kept.extend(self._draw(straight, shape, len(rows)))
        for row in rows:
            row.dict[shape.keys[0]] = kept.popleft()

    def give_what_is_left(self, shape: Shape, rows: Sequence[InstanceState[Any]]) -> None:
        """To rows that are written now, so that later ones of their table have no lower numbers."""
        kept = self._drawn.get(shape.table.name, ())
        if len(kept) >= len(rows):
            for row in rows:
                row.dict[shape.keys[0]] = kept.popleft()  # type: ignore[union-attr]
        else:
            self._drawn.pop(shape.table.name, None)

    def forget(self) -> None:
        """Whatever is numbered from here on comes after what others have numbered by now."""
        self._drawn.clear()

    def came_along(self, drawn: Sequence[int]) -> None:
        """What `DRAWN_ALONG` has brought, in place of whatever was left."""
        numbers = iter(drawn)
        self._drawn = {table: deque(islice(numbers, many)) for table, many in OFTEN}

    def _draw(self, straight: Straight, shape: Shape, count: int) -> Sequence[int]:
        drawing = _drawing(shape.table.name, shape.keys[0])
        return [number for (number,) in straight.found(drawing, {"many": max(count, AT_ONCE)})]


@cache
def _drawing(table: str, key: str) -> TextClause:
    return text(f"SELECT nextval('{table}_{key}_seq') FROM generate_series(1, :many)")


#: So many new rows of one table are better sent by the mapper, which sends them together.
MANY = 20


class WritesPlainly(ReadsPlainly):
    """A session that writes plain rows without the unit of work, and not before it has to."""

    def __init__(self, *given: Any, **more: Any) -> None:
        super().__init__(*given, **more)
        self.numbers = Numbers()

    def connection(self, *given: Any, **more: Any) -> Any:
        """Whoever asks for it goes past the session, which has written everything by then."""
        self.flush()
        self.numbers.forget()
        return super().connection(*given, **more)

    def number(self, row: Any) -> None:
        """Give a new row its key: ahead of its being written where that saves a statement."""
        kind: Any = type(row)
        straight = self.straight()
        if straight.dialect.name == "postgresql" and len(shape_of(kind).keys) == 1:
            alike = [one for one in self._new if one.class_ is kind and _counted(one)]
            if all(_leaves_nothing_open(_shape(one), one.dict) for one in alike):
                self.numbers.give(straight, shape_of(kind), alike)
        if row.id is None:
            self.flush()

    def flush(self, objects: Any = None) -> None:
        if self._is_clean():
            return
        new, changed = list(self.new), list(self.dirty)
        if objects is not None or self.deleted or not _are_plain(new, changed):
            self.numbers.forget()
            numbered = [row for row in new if not _counted(instance_state(row))]
            if numbered and self.straight().dialect.name == "postgresql":
                self._write(numbered, [])  # those that are left may name them
            super().flush(*(() if objects is None else (objects,)))
        else:
            self._write(new, changed)

    def _write(self, new: list[Any], changed: list[Any]) -> None:
        self._flushing = True  # so that nothing that is loaded meanwhile begins another one
        try:
            straight, added = self.straight(), [instance_state(row) for row in new]
            later = [row for row in changed if _names_one_of(instance_state(row), added)]
            states = _updated(straight, [row for row in changed if row not in later])
            states += _all_inserted(straight, added, self.numbers)
            states += _updated(straight, later)
            self.after_writing([*new, *changed])
            # As the mapper's flush ends: they are persistent, and nothing in them is new any more.
            self._register_persistent(set(states))
        finally:
            self._flushing = False

    def after_writing(self, rows: list[Any]) -> None:
        """Called once these have been written plainly, as `after_flush` is where the mapper did it."""


def forget_numbers(session: Session) -> None:
    """What is numbered from here on comes after what others have numbered while this one waited."""
    if isinstance(session, WritesPlainly):
        session.numbers.forget()


def numbers_came_along(session: Session, drawn: Sequence[int]) -> None:
    """What `DRAWN_ALONG` has brought with a statement of this session."""
    if isinstance(session, WritesPlainly):
        session.numbers.came_along(drawn)


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


def _names_one_of(state: InstanceState[Any], added: list[InstanceState[Any]]) -> bool:
    """Whether what has changed in a row refers to one of these new rows."""
    changed = state.committed_state.keys()
    return any(
        state.dict.get(name) == one.dict.get(key)
        for name, table, key in _references(_shape(state).kind)
        if name in changed
        for one in added
        if _shape(one).table.name == table
    )


@cache
def _references(kind: type[SQLModel]) -> tuple[tuple[str, str, str], ...]:
    """The columns of a table that refer to another, with that table and its column."""
    return tuple(
        (name, key.column.table.name, key.column.key)
        for name, column in shape_of(kind).columns
        for key in column.foreign_keys
    )


def _counted(state: InstanceState[Any]) -> tuple[str, ...]:
    """The keys of a new row that the database counts up."""
    return tuple(name for name in _shape(state).keys if state.dict.get(name) is None)


def _all_inserted(
    straight: Straight, states: list[InstanceState[Any]], numbers: Numbers
) -> list[InstanceState[Any]]:
    """On PostgreSQL, where each statement is a round trip, all rows go together; what one of them
    refers to may then be any other.
    """
    if straight.dialect.name == "postgresql":
        alike: dict[type[SQLModel], list[InstanceState[Any]]] = {}
        for state in states:
            if len(_counted(state)) == 1:
                alike.setdefault(_shape(state).kind, []).append(state)
        for kind, found in alike.items():
            numbers.give_what_is_left(shape_of(kind), found)
        if len(states) > 1:
            _inserted_together(straight, states)
            return states
    for state in states:
        _inserted(straight, state)
    return states


def _inserted_together(straight: Straight, states: list[InstanceState[Any]]) -> None:
    alike: dict[tuple[type[SQLModel], bool], list[InstanceState[Any]]] = {}
    for state in states:
        alike.setdefault((_shape(state).kind, bool(_counted(state))), []).append(state)
    kinds = tuple((*which, len(found)) for which, found in alike.items())
    given = {
        f"{group}_{place}_{column.key}": state.dict.get(name)
        for group, found in enumerate(alike.values())
        for place, state in enumerate(found)
        for name, column in _shape(state).columns
    }
    (row,) = straight.found(_inserts(kinds), given)
    counted = [found for (_, is_counted), found in alike.items() if is_counted]
    for found, keys in zip(counted, row, strict=False):
        for state, key in zip(found, sorted(keys), strict=True):  # counted up in their order
            state.dict[_shape(state).keys[0]] = key


@lru_cache(maxsize=300)
def _inserts(kinds: tuple[tuple[type[SQLModel], bool, int], ...]) -> Any:
    """One statement for so many new rows of each of these kinds, with a key that the database counts up
    and returns, or with the key that they have.
    """
    counted: list[Any] = []
    others = []
    for number, (kind, is_counted, count) in enumerate(kinds):
        shape = shape_of(kind)
        keys = [column for name, column in shape.columns if name in shape.keys]
        rows = [
            {
                column: bindparam(f"{number}_{place}_{column.key}", type_=column.type)
                for _, column in shape.columns
                if not is_counted or column not in keys
            }
            for place in range(count)
        ]
        new = insert(shape.table).values(rows).returning(*keys).cte(f"new_{number}")
        if is_counted:
            (key,) = keys
            found = select(func.array_agg(new.c[key.key])).scalar_subquery()
            counted.append(found.label(f"keys_{number}"))
        else:
            others.append(new)
    return select(*(counted or [literal(1)])).add_cte(*others)


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
