"""Raw messages hold health data and are kept only as long as they may be needed."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import ColumnElement, Engine, and_, case, delete
from sqlmodel import col, select

from bot.store.db import claiming, looking, write_file_anew
from bot.store.tables.traffic import AgendaRow, FetchRow, InboxRow, OutboxRow
from bot.store.traces import forget_log

#: Rows that go in one transaction, in which nobody else can write: each lies in many pages.
AT_ONCE = 50
#: Rows that are looked at in one go, which keeps nobody waiting.
LOOKED_AT = 2000


def prune_traffic(engine: Engine, before: datetime, *, at_once: int = AT_ONCE) -> int:
    """Delete what came in, went out or fell due before then and is settled; how many rows.

    Looking for them keeps nobody waiting, and each handful goes by itself.
    """
    gone = 0
    for key, settled in _old(before):
        for found in _found(engine, key, settled, at_once):
            with claiming(engine) as session:
                # As it is now: it may have been taken up again since. Said as one value, lest the
                # database look through all that was ever sent, by status, for these few.
                still_old = case((and_(*settled), 1), else_=0) == 1
                old = delete(key.class_).where(key.in_(found), still_old)
                gone += session.connection().execute(old).rowcount
    write_file_anew(engine)
    forget_log(engine)
    return gone


def _old(before: datetime) -> Sequence[tuple[Any, tuple[ColumnElement[bool], ...]]]:
    return (
        (
            col(InboxRow.update_id),
            (col(InboxRow.status) != "new", col(InboxRow.received_at) < before),
        ),
        (
            col(OutboxRow.id),
            (
                col(OutboxRow.status).in_(("sent", "dropped", "failed")),
                col(OutboxRow.created_at) < before,
            ),
        ),
        (col(FetchRow.id), (col(FetchRow.status) != "waiting", col(FetchRow.created_at) < before)),
        (col(AgendaRow.id), (col(AgendaRow.status) != "waiting", col(AgendaRow.due_at) < before)),
    )


def _found(
    engine: Engine, key: Any, settled: Sequence[ColumnElement[bool]], at_once: int
) -> Iterator[list[Any]]:
    """The keys of what is old, in handfuls. Each row is looked at once, in the order of keys: looked
    for by its status, all that was ever sent would be sorted anew for each handful.
    """
    query = select(key, and_(*settled)).order_by(key).limit(LOOKED_AT)
    last: Any = None
    while True:
        with looking(engine) as session:
            rows = session.exec(query if last is None else query.where(key > last)).all()
        if not rows:
            return
        last = rows[-1][0]
        old = [number for number, is_old in rows if is_old]
        for first in range(0, len(old), at_once):
            yield old[first : first + at_once]
