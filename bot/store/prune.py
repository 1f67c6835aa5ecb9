"""Raw messages hold health data and are kept only as long as they may be needed."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import ColumnElement, Engine, delete
from sqlmodel import Session, col, select

from bot.store.db import claiming
from bot.store.tables.traffic import AgendaRow, FetchRow, InboxRow, OutboxRow
from bot.store.traces import forget_log

#: Rows that go in one transaction, in which nobody else can write: each lies in many pages.
AT_ONCE = 50


def prune_traffic(engine: Engine, before: datetime, *, at_once: int = AT_ONCE) -> int:
    """Delete what came in, went out or fell due before then and is settled; how many rows.

    Looking for them keeps nobody waiting, and each handful goes by itself.
    """
    gone = 0
    for key, settled in _old(before):
        last: Any = None
        while found := _next(engine, key, settled, last, at_once):
            last = found[-1]
            with claiming(engine) as session:
                # As it is now: it may have been taken up again since.
                old = delete(key.class_).where(key.in_(found), *settled)
                gone += session.connection().execute(old).rowcount
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


def _next(
    engine: Engine, key: Any, settled: Sequence[ColumnElement[bool]], last: Any, at_once: int
) -> list[Any]:
    """The keys of the next ones, in their order."""
    query = select(key).where(*settled).order_by(key).limit(at_once)
    if last is not None:
        query = query.where(key > last)
    with Session(engine) as session:
        return list(session.exec(query))
