"""What a coach may read in their own time: silent, gathered into one message, held in quiet hours.

A message of notes grows in place while it is fresh, so that twenty athletes' mornings are one
message and not twenty. Alerts that need a word never come this way.
"""

from __future__ import annotations

from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot import agenda
from bot.context import Context
from bot.outbox import TEXT_LIMIT, edit, say
from bot.service.desk import desk_of, subject_of, zone_of_coach
from bot.service.people import get_person
from bot.store.desk import CoachDesk, CoachNote
from bot.store.people import Person
from bot.store.traffic import AgendaRow, OutboxRow

RELEASE = "notes"
GATHER_FOR = timedelta(minutes=15)  # our own choice: a morning's answers come close together


def tell(
    session: Session,
    coach: Person,
    athlete_id: int,
    text: str,
    context: Context,
    *,
    at_once: bool = False,
) -> None:
    """Tell the coach silently: in the message of notes that is still fresh, or in a new one.

    With `at_once`, in quiet hours too: it makes no sound, and is there for who looks.
    """
    assert coach.id is not None
    note = CoachNote(coach_id=coach.id, athlete_id=athlete_id, at=context.now, text=text)
    session.add(note)
    session.flush()
    until = quiet_until(session, coach, context.now)
    if until is None or at_once:
        _send(session, coach, [note], context)
        return
    agenda.put(
        session, subject=subject_of(coach.id), local_date=until.date(), kind=RELEASE, due_at=until,
        again=True,
    )  # fmt: skip


def release(session: Session, duty: AgendaRow, context: Context) -> None:
    """The quiet hours are over: what was held comes in one message."""
    coach = get_person(session, int(duty.subject.partition(":")[2]))
    until = quiet_until(session, coach, context.now)
    if until is not None:  # the hours were changed meanwhile
        agenda.put(
            session, subject=duty.subject, local_date=until.date(), kind=RELEASE, due_at=until,
            again=True,
        )  # fmt: skip
        return
    held = held_notes(session, coach)
    if held:
        _send(session, coach, held, context)


def held_notes(session: Session, coach: Person) -> list[CoachNote]:
    """Notes that the coach has not been told yet, the oldest first."""
    query = select(CoachNote).where(
        CoachNote.coach_id == coach.id, col(CoachNote.outbox_id).is_(None)
    )
    return list(session.exec(query.order_by(col(CoachNote.id))))


def noted(session: Session, coach: Person, athlete_id: int, text: str, context: Context) -> bool:
    """Whether the coach has been noted these very words about this athlete within a day."""
    query = select(CoachNote.id).where(
        CoachNote.coach_id == coach.id,
        CoachNote.athlete_id == athlete_id,
        CoachNote.text == text,
        CoachNote.at > context.now - timedelta(days=1),
    )
    return session.exec(query).first() is not None


def forget_held(session: Session, athlete_id: int) -> None:
    """What was held about an athlete who is not coached any more is not told after all."""
    held = select(CoachNote).where(
        CoachNote.athlete_id == athlete_id, col(CoachNote.outbox_id).is_(None)
    )
    for note in session.exec(held).all():
        session.delete(note)
    session.flush()


def notes_since(session: Session, coach: Person, since: datetime) -> list[CoachNote]:
    """Notes from then on, told or held, the oldest first."""
    query = select(CoachNote).where(CoachNote.coach_id == coach.id, CoachNote.at > since)
    return list(session.exec(query.order_by(col(CoachNote.id))))


def quiet_now(session: Session, coach: Person, context: Context) -> bool:
    """Whether what is no alert should come without a sound just now."""
    return quiet_until(session, coach, context.now) is not None


def quiet_until(session: Session, coach: Person, now: datetime) -> datetime | None:
    """When the quiet hours that run now end; None outside them, or where there are none."""
    desk = session.get(CoachDesk, coach.id)
    if desk is None or desk.quiet_from is None or desk.quiet_to is None:
        return None
    zone = zone_of_coach(session, coach) or "UTC"
    today = now.astimezone(ZoneInfo(zone)).date()
    for day in (today - timedelta(days=1), today):
        begin, end = _hours(desk, day, zone)
        if begin <= now < end:
            return end
    return None


def _hours(desk: CoachDesk, day: date, zone: str) -> tuple[datetime, datetime]:
    """The quiet hours that begin on this day of the coach's."""
    assert desk.quiet_from is not None
    assert desk.quiet_to is not None
    over_midnight = desk.quiet_to <= desk.quiet_from
    last = day + timedelta(days=1) if over_midnight else day
    return (
        agenda.local_instant(day, desk.quiet_from, zone),
        agenda.local_instant(last, desk.quiet_to, zone),
    )


def _send(session: Session, coach: Person, notes: list[CoachNote], context: Context) -> None:
    desk = desk_of(session, coach)
    fresh = session.get(OutboxRow, desk.notes_outbox_id) if desk.notes_outbox_id else None
    if fresh is not None and _grows(fresh, context):
        before = session.exec(
            select(CoachNote).where(CoachNote.outbox_id == fresh.id).order_by(col(CoachNote.id))
        )
        text = _together([*before, *notes])
        if _fits(text):
            edit(
                session, chat_id=coach.chat_id, outbox_id=fresh.id, text=text, now=context.now,
                topic=f"notes:{fresh.id}",
            )  # fmt: skip
            _told(session, notes, fresh)
            return
    while notes:
        count = len(notes)
        while count > 1 and not _fits(_together(notes[:count])):
            count -= 1
        row = say(
            session, chat_id=coach.chat_id, text=_together(notes[:count]), now=context.now,
            silent=True,
        )  # fmt: skip
        _told(session, notes[:count], row)
        notes = notes[count:]
        desk.notes_outbox_id = row.id
    session.add(desk)


def _grows(row: OutboxRow, context: Context) -> bool:
    young = context.now - row.created_at <= GATHER_FOR
    return young and row.status not in ("dropped", "failed")


def _together(notes: list[CoachNote]) -> str:
    return "\n\n".join(note.text for note in notes)


def _fits(text: str) -> bool:
    return len(text.encode("utf-16-le")) <= 2 * TEXT_LIMIT


def _told(session: Session, notes: list[CoachNote], row: OutboxRow) -> None:
    for note in notes:
        note.outbox_id = row.id
        session.add(note)
    session.flush()
