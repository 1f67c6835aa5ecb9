"""`brimline status`: how the bot is doing, for whoever runs it. Counts and times, nothing personal."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import func
from sqlmodel import Session, col, select

from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.traffic import InboxRow, OutboxRow
from bot.store.tables.week import AlertRow
from bot.watching.watch import Backlog, backlog, minutes, troubles

MOST_SHOWN = 10
QUEUE_NAMES = {
    "inbox": "to be read",
    "outbox": "to be sent",
    "urgent": "of these urgent",
    "agenda": "duties overdue",
}


def status(session: Session, now: datetime) -> tuple[str, bool]:
    """The report, and whether all is well."""
    found = backlog(session, now)
    wrong = troubles(found)
    lines = [f"Brimline at {now:%Y-%m-%d %H:%M} UTC", "", *_people(session), "", *_queues(found)]
    lines += _unsettled(session)
    lines += ["", *(f"behind: {line}" for line in wrong)] if wrong else ["", "All is well."]
    return "\n".join(lines), not wrong


def _people(session: Session) -> list[str]:
    coaches = session.exec(select(func.count()).where(col(Person.is_coach))).one()
    by_status = dict(
        session.exec(
            select(AthleteProfile.status, func.count()).group_by(col(AthleteProfile.status))
        ).all()
    )
    athletes = ", ".join(
        f"{by_status[status]} {status.value}" for status in AthleteStatus if by_status.get(status)
    )
    return [f"coaches         {coaches}", f"athletes        {athletes or 'none yet'}"]


def _queues(found: Backlog) -> list[str]:
    lines = [
        f"{QUEUE_NAMES[queue.name]:<16}{queue.count}"
        + (f", the oldest for {minutes(queue.oldest)}" if queue.count else "")
        for queue in found.queues
    ]
    sent = f"{found.last_sent:%Y-%m-%d %H:%M} UTC" if found.last_sent else "nothing yet"
    return [*lines, f"{'last sent':<16}{sent}"]


def _unsettled(session: Session) -> list[str]:
    alerts = session.exec(select(func.count()).where(col(AlertRow.acknowledged_at).is_(None))).one()
    lines = [f"{'open alerts':<16}{alerts}"]
    aside = session.exec(
        select(InboxRow).where(InboxRow.status == "poison").order_by(col(InboxRow.update_id).desc())
    ).all()
    lines += [f"{'set aside':<16}{len(aside)}"]
    lines += [
        f"  update {row.update_id}, {row.received_at:%Y-%m-%d %H:%M} UTC: {row.problem}"
        for row in aside[:MOST_SHOWN]
    ]
    failed = session.exec(
        select(OutboxRow).where(OutboxRow.status == "failed").order_by(col(OutboxRow.id).desc())
    ).all()
    lines += [f"{'not delivered':<16}{len(failed)}"]
    return lines + [
        f"  {row.method} {row.id}, {row.created_at:%Y-%m-%d %H:%M} UTC: {row.problem}"
        for row in failed[:MOST_SHOWN]
    ]
