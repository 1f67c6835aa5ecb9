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
from bot.messages import coach as coach_words
from bot.messages import passing_on as words
from bot.outbox import TEXT_LIMIT, Button, edit, say
from bot.service.desk import desk_of, subject_of, zone_of_coach
from bot.service.people import get_person, speaking_to
from bot.store.desk import CoachDesk, CoachNote
from bot.store.people import HistoryRow, Person
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
    _tell_or_hold(session, coach, note, context, at_once=at_once)


def gather(
    session: Session,
    coach: Person,
    athlete: Person,
    said: str,
    context: Context,
    *,
    message_id: int | None = None,
) -> None:
    """What an athlete wrote of their own accord: silent, and one message a stretch of it, with a
    button to reply. To be called in the coach's language.
    """
    assert coach.id is not None
    assert athlete.id is not None
    note = CoachNote(
        coach_id=coach.id, athlete_id=athlete.id, at=context.now, said=said, message_id=message_id,
        text=words.wrote(athlete.first_name, words.shown(said)),
    )  # fmt: skip
    _tell_or_hold(session, coach, note, context)


def gathered_in(session: Session, outbox_id: int) -> list[CoachNote]:
    """The athletes' own sentences that a message to a coach holds, in order."""
    query = select(CoachNote).where(CoachNote.outbox_id == outbox_id, CoachNote.said != "")
    return list(session.exec(query.order_by(col(CoachNote.id))))


def said_anew(
    session: Session, athlete: Person, message_id: int, said: str, context: Context
) -> list[CoachNote]:
    """An athlete edited what had been gathered: it is changed for those who have it."""
    query = select(CoachNote).where(
        CoachNote.athlete_id == athlete.id,
        CoachNote.message_id == message_id,
        CoachNote.said != "",
        CoachNote.said != said,
    )
    changed = list(session.exec(query.order_by(col(CoachNote.id))))
    for note in changed:
        coach = get_person(session, note.coach_id)
        note.said = said
        session.add(note)
        session.flush()
        with speaking_to(coach):
            note.text = words.wrote(athlete.first_name, words.shown(said))
            together = gathered_in(session, note.outbox_id) if note.outbox_id else []
            if note.outbox_id and {one.athlete_id for one in together} == {athlete.id}:
                edit(
                    session, chat_id=coach.chat_id, outbox_id=note.outbox_id, now=context.now,
                    text=_stretch(athlete, together), buttons=[[_reply_button(athlete)]],
                    topic=f"notes:{note.outbox_id}",
                )  # fmt: skip
    return changed


def _tell_or_hold(
    session: Session, coach: Person, note: CoachNote, context: Context, *, at_once: bool = False
) -> None:
    session.add(note)
    session.flush()
    until = quiet_until(session, coach, context.now)
    if until is None or at_once:
        _send_all(session, coach, [note], context)
        return
    assert coach.id is not None
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
        _send_all(session, coach, held, context)


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


def _send_all(session: Session, coach: Person, notes: list[CoachNote], context: Context) -> None:
    """Ours in one message, and what each athlete wrote in one of their own."""
    ours = [note for note in notes if not note.said]
    if ours:
        _send(session, coach, ours, context)
    for athlete_id in dict.fromkeys(note.athlete_id for note in notes if note.said):
        wrote = [note for note in notes if note.said and note.athlete_id == athlete_id]
        _send_stretch(session, coach, get_person(session, athlete_id), wrote, context)


def _send_stretch(
    session: Session, coach: Person, athlete: Person, notes: list[CoachNote], context: Context
) -> None:
    fresh = _fresh_stretch(session, coach, athlete, context)
    if fresh is not None:
        text = _stretch(athlete, [*gathered_in(session, fresh.id or 0), *notes])
        if _fits(text):
            edit(
                session, chat_id=coach.chat_id, outbox_id=fresh.id, text=text, now=context.now,
                buttons=[[_reply_button(athlete)]], topic=f"notes:{fresh.id}",
            )  # fmt: skip
            _told(session, notes, fresh)
            return
    while notes:
        count = len(notes)
        while count > 1 and not _fits(_stretch(athlete, notes[:count])):
            count -= 1
        row = say(
            session, chat_id=coach.chat_id, text=_stretch(athlete, notes[:count]), silent=True,
            now=context.now, buttons=[[_reply_button(athlete)]],
        )  # fmt: skip
        _told(session, notes[:count], row)
        notes = notes[count:]


def _fresh_stretch(
    session: Session, coach: Person, athlete: Person, context: Context
) -> OutboxRow | None:
    """The message that gathers what this athlete writes just now."""
    query = (
        select(CoachNote)
        .where(
            CoachNote.coach_id == coach.id,
            CoachNote.athlete_id == athlete.id,
            CoachNote.said != "",
            col(CoachNote.outbox_id).is_not(None),
        )
        .order_by(col(CoachNote.id).desc())
    )
    last = session.exec(query).first()
    row = session.get(OutboxRow, last.outbox_id) if last is not None else None
    gathers = row is not None and row.chat_id == coach.chat_id and _grows(row, context)
    if gathers and row is not None and _answered_since(session, coach, athlete, row):
        return None  # what comes now may be about the answer
    # A digest may have told it instead, which is no message of this athlete's.
    return row if gathers and row is not None and "reply_markup" in row.payload else None


def _answered_since(session: Session, coach: Person, athlete: Person, row: OutboxRow) -> bool:
    query = select(HistoryRow.id).where(
        HistoryRow.athlete_id == athlete.id,
        HistoryRow.what == "message to athlete",
        HistoryRow.by_id == coach.id,
        HistoryRow.at >= row.created_at,
    )
    return session.exec(query).first() is not None


def _stretch(athlete: Person, notes: list[CoachNote]) -> str:
    return words.from_athlete(athlete.first_name, [note.said for note in notes])


def _reply_button(athlete: Person) -> Button:
    return Button(coach_words.reply_button(), f"c:message:{athlete.id}:here")


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
