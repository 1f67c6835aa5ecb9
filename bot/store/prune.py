"""Raw messages hold health data and are kept only as long as they may be needed."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import delete
from sqlmodel import Session, col

from bot.store.tables.traffic import AgendaRow, FetchRow, InboxRow, OutboxRow


def prune_traffic(session: Session, before: datetime) -> None:
    """Delete what came in, went out or fell due before then and is settled."""
    session.connection().execute(
        delete(InboxRow).where(col(InboxRow.status) != "new", col(InboxRow.received_at) < before)
    )
    session.connection().execute(
        delete(OutboxRow).where(
            col(OutboxRow.status).in_(("sent", "dropped", "failed")),
            col(OutboxRow.created_at) < before,
        )
    )
    session.connection().execute(
        delete(FetchRow).where(col(FetchRow.status) != "waiting", col(FetchRow.created_at) < before)
    )
    session.connection().execute(
        delete(AgendaRow).where(col(AgendaRow.status) != "waiting", col(AgendaRow.due_at) < before)
    )
