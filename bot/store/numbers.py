"""On PostgreSQL a new row gets its number before it is written.

What a use case makes names what it has made before: a decision its check-in, a button its question. To
write each row as soon as its number is asked for would be a statement apiece; so the number is drawn
where the database would take it from, a few of those that are mostly wanted at once, and all rows go
together at the end. Numbers of a table are given in the order in which its rows were added, and drawn
after whoever is concerned is locked (`bot.people.locks`), so that they tell who came first as ever.
On SQLite a statement is no round trip, and a number is the one that the row was written with.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Sequence
from functools import cache
from itertools import islice
from typing import Any

from sqlalchemy import TextClause, text
from sqlalchemy.orm import InstanceState

from bot.store.driver import Straight
from bot.store.rows import Shape

#: What the answer to a check-in takes, by table: drawn along with another statement of nearly every
#: use case (`DRAWN_ALONG`: a row each, in this order). All else is drawn by itself, so many at once.
OFTEN = (("open_question", 1), ("checkin", 1), ("decision", 1), ("outbox", 3))
AT_ONCE = 3
DRAWN_ALONG = " UNION ALL ".join(
    f"SELECT nextval('{table}_id_seq'), NULL" for table, many in OFTEN for _ in range(many)
)


class Numbers:
    """Numbers that were drawn for rows of this transaction and not given yet, by table."""

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
