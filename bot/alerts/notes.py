"""What a coach may read in their own time: silent, gathered into one message, held in quiet hours.

A message of notes grows in place while it is fresh, so that twenty athletes' mornings are one
message and not twenty. Alerts that need a word never come this way.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from enum import Enum, auto
from zoneinfo import ZoneInfo

from sqlalchemy import bindparam
from sqlmodel import Session, col, select

from bot.core.chat.cards import MESSAGE
from bot.core.chat.outbox import SILENTLY, TEXT_LIMIT, Button, Shown, Topic
from bot.core.timing import agenda, instants
from bot.core.timing.agenda import Subject
from bot.core.turn import Context, Turn
from bot.people.changes import Change
from bot.people.coach_settings import coach_settings_of, settings_kept, subject_of, zone_of_coach
from bot.people.locks import hold_coaches
from bot.people.people import get_person
from bot.people.telling import Said, as_said, edit_to, say_to, speaking_to
from bot.store.base import id_of
from bot.store.tables.coach import CoachNote, CoachSettings
from bot.store.tables.people import HistoryRow, Person
from bot.store.tables.traffic import AgendaRow, OutboxRow, TopicKind
from bot.words import common
from engine.written.chatter import is_chatter

RELEASE = "notes"
IDLE_FOR = timedelta(hours=12)  # our own choice: later, nobody knows any more what an "ok" was to
GATHER_FOR = timedelta(minutes=15)  # our own choice: a morning's answers come close together

# Built once: building a statement costs more than asking it.
_NOTED = select(CoachNote.id).where(
    CoachNote.coach_id == bindparam("coach"),
    CoachNote.athlete_id == bindparam("athlete"),
    CoachNote.text == bindparam("text"),
    col(CoachNote.at) > bindparam("since"),
)
_WRITTEN_LATELY = (
    select(CoachNote)
    .where(
        CoachNote.coach_id == bindparam("coach"),
        CoachNote.athlete_id == bindparam("athlete"),
        CoachNote.said != "",
        col(CoachNote.at) >= bindparam("since"),
    )
    .order_by(col(CoachNote.id))
)
_GATHERED = (
    select(CoachNote).where(CoachNote.outbox_id == bindparam("message")).order_by(col(CoachNote.id))
)


class Comes(Enum):
    """When a note comes to a coach."""

    IN_TURN = auto()  # after their quiet hours
    ONCE_A_DAY = auto()  # the same, where these words have not come within a day
    AT_ONCE = auto()  # in quiet hours too: it makes no sound, and is there for who looks
    ALONG = auto()  # with what is still fresh or comes next, making no message by itself


def tell(
    turn: Turn, coach: Person, athlete_id: int, sentence: Said, comes: Comes = Comes.IN_TURN
) -> None:
    """Tell the coach silently: in the message of notes that is still fresh, or in a new one."""
    with speaking_to(coach):
        text = as_said(sentence)
        if comes is Comes.ONCE_A_DAY and _noted(turn, coach, athlete_id, text):
            return
        note = CoachNote(coach_id=id_of(coach), athlete_id=athlete_id, at=turn.now, text=text)
        _tell_or_hold(turn, coach, note, at_once=comes is Comes.AT_ONCE)


@dataclass(frozen=True, slots=True)
class Wrote:
    """What an athlete wrote of their own accord, and in which message.

    `instead` is what coaches read behind the words, or for what is none (a voice message).
    """

    words: str
    message_id: int | None = None
    instead: Callable[[], str] | None = None

    def whole(self) -> str:
        """All that coaches read, in the language in force."""
        parts = (self.words, self.instead() if self.instead is not None else "")
        return " ".join(part for part in parts if part)


def gather(
    turn: Turn, coach: Person, athlete: Person, wrote: Wrote, comes: Comes = Comes.IN_TURN
) -> str:
    """What an athlete wrote: silent, and one message a stretch of it, with a button to reply.
    Returns the words as they are kept.
    """
    with speaking_to(coach):
        said = wrote.whole()
        note = CoachNote(
            coach_id=id_of(coach), athlete_id=id_of(athlete), at=turn.now, said=said,
            text=common.wrote(athlete.first_name, common.shown(said)), message_id=wrote.message_id,
        )  # fmt: skip
        if comes is not Comes.ALONG:
            _tell_or_hold(turn, coach, note, at_once=comes is Comes.AT_ONCE)
            return said
        hold_coaches(turn.session)
        turn.session.add(note)
        if _fresh_stretch(turn, coach, athlete, _lately(turn, coach, athlete)) is not None:
            _send_all(turn, coach, [note])
        return said


def gathered_in(session: Session, outbox_id: int) -> list[CoachNote]:
    """The athletes' own sentences that a message to a coach holds, in order."""
    query = select(CoachNote).where(CoachNote.outbox_id == outbox_id, CoachNote.said != "")
    return list(session.exec(query.order_by(col(CoachNote.id))))


def said_anew(turn: Turn, athlete: Person, message_id: int, said: str) -> list[CoachNote]:
    """An athlete edited what had been gathered: it is changed for those who have it."""
    query = select(CoachNote).where(
        CoachNote.athlete_id == athlete.id,
        CoachNote.message_id == message_id,
        CoachNote.said != "",
        CoachNote.said != said,
    )
    hold_coaches(turn.session)
    changed = list(turn.session.exec(query.order_by(col(CoachNote.id))))
    for note in changed:
        coach = get_person(turn.session, note.coach_id)
        note.said = said
        with speaking_to(coach):
            note.text = common.wrote(athlete.first_name, common.shown(said))
            together = gathered_in(turn.session, note.outbox_id) if note.outbox_id else []
            if note.outbox_id and {one.athlete_id for one in together} == {athlete.id}:
                topic = Topic(TopicKind.NOTES, note.outbox_id)
                edit_to(
                    turn, coach,
                    Shown(coach.chat_id, outbox_id=note.outbox_id, topic=topic),
                    _stretch(athlete, together), buttons=[[_reply_button(athlete)]],
                )  # fmt: skip
    return changed


def _tell_or_hold(turn: Turn, coach: Person, note: CoachNote, *, at_once: bool = False) -> None:
    hold_coaches(turn.session)
    turn.session.add(note)
    until = quiet_until(turn.session, coach, turn.now)
    if until is None or at_once:
        _send_all(turn, coach, [note])
        return
    agenda.put(
        turn.session, agenda.Named(subject_of(id_of(coach)), until.date(), RELEASE), due_at=until,
        again=True,
    )  # fmt: skip


def release(turn: Turn, duty: AgendaRow) -> None:
    """The quiet hours are over: what was held comes in one message."""
    coach = get_person(turn.session, Subject.COACH.of(duty))
    until = quiet_until(turn.session, coach, turn.now)
    if until is not None:  # the hours were changed meanwhile
        agenda.put(
            turn.session, agenda.Named(duty.subject, until.date(), RELEASE), due_at=until,
            again=True,
        )  # fmt: skip
        return
    held = held_notes(turn.session, coach)
    say_more = {note.athlete_id for note in held if not is_chatter(note.said)}
    held = [note for note in held if note.athlete_id in say_more]
    if held:
        _send_all(turn, coach, held)


def held_notes(session: Session, coach: Person) -> list[CoachNote]:
    """Notes that the coach has not been told yet, the oldest first."""
    query = select(CoachNote).where(
        CoachNote.coach_id == coach.id, col(CoachNote.outbox_id).is_(None)
    )
    return list(session.exec(query.order_by(col(CoachNote.id))))


def _noted(turn: Turn, coach: Person, athlete_id: int, text: str) -> bool:
    """Whether the coach has been noted these very words about this athlete within a day."""
    asked = {
        "coach": coach.id, "athlete": athlete_id, "text": text, "since": turn.now - timedelta(days=1),
    }  # fmt: skip
    return turn.session.exec(_NOTED, params=asked).first() is not None


def forget_held(session: Session, athlete_id: int) -> None:
    """What was held about an athlete who is not coached any more is not told after all."""
    hold_coaches(session)
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


def quiet_now(turn: Turn, coach: Person) -> bool:
    """Whether what is no alert should come without a sound just now."""
    return quiet_until(turn.session, coach, turn.now) is not None


def quiet_until(session: Session, coach: Person, now: datetime) -> datetime | None:
    """When the quiet hours that run now end; None outside them, or where there are none."""
    settings = settings_kept(session, coach.id)
    if settings is None or settings.quiet_from is None or settings.quiet_to is None:
        return None
    zone = zone_of_coach(session, coach) or "UTC"
    today = now.astimezone(ZoneInfo(zone)).date()
    for day in (today - timedelta(days=1), today):
        begin, end = _hours(settings, day, zone)
        if begin <= now < end:
            return end
    return None


def _hours(settings: CoachSettings, day: date, zone: str) -> tuple[datetime, datetime]:
    """The quiet hours that begin on this day of the coach's."""
    assert settings.quiet_from is not None
    assert settings.quiet_to is not None
    over_midnight = settings.quiet_to <= settings.quiet_from
    last = day + timedelta(days=1) if over_midnight else day
    return (
        instants.local_instant(day, settings.quiet_from, zone),
        instants.local_instant(last, settings.quiet_to, zone),
    )


def _send_all(turn: Turn, coach: Person, notes: list[CoachNote]) -> None:
    """Ours in one message, and what each athlete wrote in one of their own."""
    ours = [note for note in notes if not note.said]
    if ours:
        _send(turn, coach, ours)
    for athlete_id in dict.fromkeys(note.athlete_id for note in notes if note.said):
        wrote = [note for note in notes if note.said and note.athlete_id == athlete_id]
        _send_stretch(turn, coach, get_person(turn.session, athlete_id), wrote)


def _send_stretch(turn: Turn, coach: Person, athlete: Person, notes: list[CoachNote]) -> None:
    lately = _lately(turn, coach, athlete)
    idle = [one for one in lately if one.outbox_id is None and is_chatter(one.said)]
    notes = [*(one for one in idle if one not in notes), *notes]
    fresh = _fresh_stretch(turn, coach, athlete, lately)
    if fresh is not None:
        text = _stretch(athlete, [*gathered_in(turn.session, id_of(fresh)), *notes])
        if _fits(text):
            edit_to(
                turn, coach,
                Shown(coach.chat_id, outbox_id=fresh.id, topic=Topic(TopicKind.NOTES, id_of(fresh))),
                text, buttons=[[_reply_button(athlete)]],
            )  # fmt: skip
            _told(notes, fresh)
            return
    while notes:
        count = len(notes)
        while count > 1 and not _fits(_stretch(athlete, notes[:count])):
            count -= 1
        row = say_to(
            turn,
            coach,
            _stretch(athlete, notes[:count]),
            buttons=[[_reply_button(athlete)]],
            how=SILENTLY,
        )
        _told(notes[:count], row)
        notes = notes[count:]


def _lately(turn: Turn, coach: Person, athlete: Person) -> list[CoachNote]:
    """What this athlete wrote in the last hours, told to this coach or not."""
    asked = {"coach": coach.id, "athlete": athlete.id, "since": turn.now - IDLE_FOR}
    return list(turn.session.exec(_WRITTEN_LATELY, params=asked))


def _fresh_stretch(
    turn: Turn, coach: Person, athlete: Person, lately: list[CoachNote]
) -> OutboxRow | None:
    """The message that gathers what this athlete writes just now."""
    last = next((one for one in reversed(lately) if one.outbox_id is not None), None)
    row = turn.session.get(OutboxRow, last.outbox_id) if last is not None else None
    gathers = row is not None and row.chat_id == coach.chat_id and _grows(row, turn.context)
    if gathers and row is not None and _answered_since(turn.session, coach, athlete, row):
        return None  # what comes now may be about the answer
    # A digest may have told it instead, which is no message of this athlete's.
    return row if gathers and row is not None and "reply_markup" in row.payload else None


def _answered_since(session: Session, coach: Person, athlete: Person, row: OutboxRow) -> bool:
    query = select(HistoryRow.id).where(
        HistoryRow.athlete_id == athlete.id,
        HistoryRow.what == Change.MESSAGE_TO_ATHLETE,
        HistoryRow.by_id == coach.id,
        HistoryRow.at >= row.created_at,
    )
    return session.exec(query).first() is not None


def _stretch(athlete: Person, notes: list[CoachNote]) -> str:
    return common.from_athlete(athlete.first_name, [note.said for note in notes])


def _reply_button(athlete: Person) -> Button:
    return Button(common.reply_button(), MESSAGE(id_of(athlete), "here"))


def _send(turn: Turn, coach: Person, notes: list[CoachNote]) -> None:
    settings = coach_settings_of(turn.session, coach)
    fresh = (
        turn.session.get(OutboxRow, settings.notes_outbox_id) if settings.notes_outbox_id else None
    )
    if fresh is not None and _grows(fresh, turn.context):
        before = turn.session.exec(_GATHERED, params={"message": fresh.id})
        text = _together([*before, *notes])
        if _fits(text):
            edit_to(
                turn,
                coach,
                Shown(
                    coach.chat_id, outbox_id=fresh.id, topic=Topic(TopicKind.NOTES, id_of(fresh))
                ),
                text,
            )
            _told(notes, fresh)
            return
    while notes:
        count = len(notes)
        while count > 1 and not _fits(_together(notes[:count])):
            count -= 1
        row = say_to(turn, coach, _together(notes[:count]), how=SILENTLY)
        _told(notes[:count], row)
        notes = notes[count:]
        settings.notes_outbox_id = id_of(row)


def _grows(row: OutboxRow, context: Context) -> bool:
    young = context.now - row.created_at <= GATHER_FOR
    return young and row.status not in ("dropped", "failed")


def _together(notes: list[CoachNote]) -> str:
    return "\n\n".join(note.text for note in notes)


def _fits(text: str) -> bool:
    return len(text.encode("utf-16-le")) <= 2 * TEXT_LIMIT


def _told(notes: list[CoachNote], row: OutboxRow) -> None:
    number = id_of(row)
    for note in notes:
        note.outbox_id = number
