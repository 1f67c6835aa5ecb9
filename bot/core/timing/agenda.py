"""Timed duties as rows: when they fall due, who does them, and what happens when one fails.

A duty is named by (subject, local date, kind). Its instant is worked out here from the person's own
zone, because cron-like triggers fire twice, or skip the day, at a change of clocks.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from datetime import date, datetime, timedelta
from enum import StrEnum
from typing import Any, NamedTuple

from sqlalchemy import Integer, bindparam, or_, text
from sqlmodel import Session, col, select

from bot.store.remembering import looked_up, remembered_rows
from bot.store.tables.traffic import AgendaRow


class Subject(StrEnum):
    """What a duty may be about. Called with a number, one of them is written as the row keeps it."""

    ATHLETE = "athlete"
    COACH = "coach"
    GONE = "gone"  # a coach of whom no more than a number is left
    SECOND = "second"
    ALERT = "alert"
    DECISION = "decision"
    QUESTION = "question"

    def __call__(self, number: int | None) -> str:
        if number is None:
            raise ValueError(f"a duty about a {self} that has not been stored yet")
        return f"{self}:{number}"

    def of(self, duty: AgendaRow) -> int:
        """The number that a duty is about, which has to be about one of these."""
        found = about(duty)
        if found is None or found[0] is not self:
            raise ValueError(f"the duty {duty.kind} is about no {self}: {duty.subject}")
        return found[1]


def about(duty: AgendaRow) -> tuple[Subject, int] | None:
    """What a duty is about; None where that is nothing of these."""
    what, _, number = duty.subject.partition(":")
    return (Subject(what), int(number)) if what in set(Subject) and number.isdigit() else None


class Several(str):
    """Such a kind. Called with what tells one from another, it is written as the row keeps it."""

    __slots__ = ()

    def __call__(self, which: int | str) -> str:
        return f"{self}:{which}"

    def of(self, duty: AgendaRow) -> str:
        """What tells this duty from others of the kind. ValueError for one of another kind."""
        kind, _, which = duty.kind.partition(":")
        if kind != self or not which:
            raise ValueError(f"the duty {duty.kind} is none of several of the kind {self}")
        return which

    def number(self, duty: AgendaRow) -> int:
        """The same, where it is a number."""
        return int(self.of(duty))


def kind_alone(kind: str) -> str:
    """The kind of a duty without what tells it from others of it."""
    return kind.partition(":")[0]


FIRST_RETRY = timedelta(seconds=15)
LONGEST_RETRY = timedelta(hours=1)


# Built once: building a statement costs as much as asking it.
_NAMED = select(AgendaRow).where(
    AgendaRow.subject == bindparam("subject"),
    AgendaRow.local_date == bindparam("local_date"),
    AgendaRow.kind == bindparam("kind"),
)
_HELD = (
    select(AgendaRow)
    .where(AgendaRow.id == bindparam("id"))
    .with_for_update()
    .execution_options(populate_existing=True)
)
_WAITING = select(AgendaRow).where(
    AgendaRow.subject == bindparam("subject"), AgendaRow.status == "waiting"
)
_DUE = (
    select(AgendaRow)
    .where(
        col(AgendaRow.status) == "waiting",
        col(AgendaRow.due_at) <= bindparam("now"),
        or_(
            col(AgendaRow.claimed_until).is_(None), col(AgendaRow.claimed_until) <= bindparam("now")
        ),
    )
    .order_by(col(AgendaRow.due_at), col(AgendaRow.rank), col(AgendaRow.id))
    .limit(bindparam("most", type_=Integer))
)
#: Apart, by the first of its two numbers, from the locks of people, desks and chats.
SUBJECTS = 3
_OURS = text(f"SELECT pg_try_advisory_xact_lock({SUBJECTS}, hashtext(:subject))")


class Named(NamedTuple):
    """What names a duty: of several of one name there is only one."""

    subject: str
    local_date: date
    kind: str


def put(
    session: Session,
    named: Named,
    *,
    due_at: datetime,
    payload: dict[str, Any] | None = None,
    again: bool = False,
) -> AgendaRow:
    """Note a duty, or move it. A cancelled one waits again; a done one only with `again`."""
    return _put(session, named, again=again, due_at=due_at, payload=dict(payload or {}), rank=0)


def put_in_rank(session: Session, named: Named, *, due_at: datetime, rank: int) -> AgendaRow:
    """The same; of duties that fall due at one instant those with the lower rank are done first."""
    return _put(session, named, again=False, due_at=due_at, payload={}, rank=rank)


def _put(session: Session, named: Named, *, again: bool, **columns: Any) -> AgendaRow:
    row = session.exec(_NAMED, params=named._asdict()).first()
    if row is None:
        row = AgendaRow(**named._asdict(), **columns)
    elif row.status == "done" and not again:
        return row
    else:
        for name, value in columns.items():
            setattr(row, name, value)
        row.status, row.attempts, row.claimed_until = "waiting", 0, None
    session.add(row)
    session.flush()
    return row


def cancel(
    session: Session,
    *,
    subject: str,
    kinds: Collection[str] | None = None,
    local_date: date | None = None,
) -> None:
    """Cancel what waits for this subject: all of it, or only those kinds or that day."""
    waiting = remembered_rows(session, AgendaRow, ("waiting", subject), _WAITING, subject=subject)
    meant = [
        row
        for row in waiting
        if (kinds is None or row.kind in kinds) and local_date in (None, row.local_date)
    ]
    for row in meant:
        row.status = "cancelled"
        session.add(row)


def due(session: Session, now: datetime, limit: int = 20) -> Sequence[AgendaRow]:
    """Up to `limit` duties that may be done now, those first that are to be done first.

    Nothing is taken by looking; whoever goes on to do one asks `is_ours` and then `take`.
    """
    return session.exec(_DUE, params={"now": now, "most": limit}).all()


def is_ours(session: Session, subject: str) -> bool:
    """Whether no other process is at work on a duty of this subject; if so, none is until the end of
    this transaction. To be asked before anything is read or locked that the duty is about.

    Nobody ever waits for this lock, so it cannot cross with others, and it ends with its transaction:
    what a killed process was doing is free as soon as the database has noticed.
    """
    if session.get_bind().dialect.name == "sqlite":
        return True  # whoever writes is alone
    ((ours,),) = looked_up(session, _OURS, {"subject": subject})
    return bool(ours)


def take(session: Session, row_id: int, now: datetime, *, begun: bool = False) -> AgendaRow | None:
    """The duty, marked done in the transaction that is about to do it. `begun`: that it would be was
    noted (`note_beginning`), and is no failure.

    None where it was cancelled, moved, put off or done since it was looked for, or where something of
    the same subject is to be done before it. It is marked before it is done so that the use case may
    put the same duty again (an alert that repeats itself).
    """
    row = _held(session, row_id, now, begun=begun)
    if row is None:
        return None
    row.status = "done"
    row.attempts -= begun
    row.claimed_until = None
    session.add(row)
    session.flush()
    return row


#: So often a duty may be begun on, and its process end over it, before it is put off ahead of that.
BEGINNINGS = 2


def note_beginning(session: Session, row_id: int, now: datetime) -> bool:
    """Note, before it is done in a transaction of its own, that a duty is begun on; whether it may be.
    One over which process after process has ended is put off first, each time for longer.
    """
    row = _held(session, row_id, now)
    if row is None:
        return False
    row.attempts += 1
    if row.attempts > BEGINNINGS:
        row.claimed_until = now + _pause(row.attempts - BEGINNINGS)
    session.add(row)
    return True


def _held(session: Session, row_id: int, now: datetime, *, begun: bool = False) -> AgendaRow | None:
    """The duty, held, where it may be done now and nothing is to be done before it."""
    row = session.exec(_HELD, params={"id": row_id}).first()
    if row is None or row.status != "waiting" or not (begun or _may_be_done(row, now)):
        return None
    return None if _is_preceded(session, row, now) else row


def _pause(times: int) -> timedelta:
    pause: timedelta = FIRST_RETRY * 2 ** min(times - 1, 12)
    return min(pause, LONGEST_RETRY)


def _may_be_done(row: AgendaRow, now: datetime) -> bool:
    return row.due_at <= now and (row.claimed_until is None or row.claimed_until <= now)


def _is_preceded(session: Session, row: AgendaRow, now: datetime) -> bool:
    """Whether something is left, by a process that was killed over it, that is to be done before this.

    What fails, and was put off for it, holds up nothing behind it.
    """
    place = (row.due_at, row.rank, row.id)
    return any(
        (one.due_at, one.rank, one.id) < place
        and one.claimed_until is None
        and _may_be_done(one, now)
        for one in session.exec(_WAITING, params={"subject": row.subject})
    )


def retry(session: Session, row_id: int, now: datetime, *, begun: bool = False) -> None:
    """Put a duty that failed off: each time for longer, up to an hour, and for ever. `begun`: it was
    counted when it was begun on.
    """
    row = session.exec(_HELD, params={"id": row_id}).first()
    if row is None or row.status != "waiting":
        return
    row.attempts += not begun
    row.claimed_until = now + _pause(row.attempts)
    session.add(row)
