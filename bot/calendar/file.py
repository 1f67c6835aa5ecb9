"""`/calendar`: the file handed out, and sent anew, once and silently, when what it says has changed.

An athlete's file holds their week; a coach's holds what a coach has to know of all their athletes.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date, datetime, timedelta
from typing import TYPE_CHECKING, Any
from uuid import uuid4
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.calendar import words
from bot.calendar.week_calendar import Drawn, drawn, drawn_for_coach
from bot.core.chat.cards import OnCalendar
from bot.core.chat.outbox import Delivery, Topic, send_document
from bot.core.timing import agenda
from bot.core.timing.agenda import Subject
from bot.core.turn import Act, Document, OnAthlete, Turn
from bot.people.people import (
    athletes_of,
    athletes_seen_by,
    get_person,
    name_of,
    own_athlete,
    profile_of,
)
from bot.people.telling import answer, say_to, speaking_to
from bot.store.base import id_of
from bot.store.tables.event import CalendarRow
from bot.store.tables.people import AthleteProfile, HistoryRow, Person
from bot.store.tables.traffic import AgendaRow, TopicKind
from bot.store.tables.week import EventRow
from bot.week.load import current_event
from bot.words.common import no_event_ahead

if TYPE_CHECKING:
    from bot.calendar.ical import CalendarEntry

MAKE = "calendar"


def command(turn: Act) -> None:
    """`/calendar`: the own week, and for a coach one file of all athletes."""
    own = profile_of(turn.session, turn.person.id)
    if own is not None and current_event(turn.session, own.person_id) is not None:
        _send(turn, turn.person, own)
        if len(athletes_seen_by(turn.session, turn.person)) > 1:
            _send_all(turn, turn.person)
        return
    if own is not None and not athletes_of(turn.session, turn.person):
        say_to(turn, turn.person, words.nothing_yet())
        return
    _send_all(turn, turn.person)


def tapped(turn: Act, pressed: OnCalendar) -> None:
    """For the athlete and for their coach."""
    known = pressed.athlete
    if turn.person.id == known and profile_of(turn.session, known) is not None:
        _send(turn, turn.person, turn.session.get_one(AthleteProfile, known))
        return
    profile = own_athlete(turn.session, turn.person, known)
    if profile is None:
        answer(turn, words.not_here())
        return
    on_card(turn.on(profile))


def on_card(turn: OnAthlete) -> None:
    """The card's button: for a coach it is the file of all their athletes."""
    if turn.self_coached:
        _send(turn, turn.person, turn.profile)
    elif current_event(turn.session, turn.profile.person_id) is None:
        name = name_of(turn.session, turn.profile.person_id)
        say_to(turn, turn.person, words.no_event_yet(name))
    else:
        _send_all(turn, turn.person)


def send_anew(turn: Turn, duty: AgendaRow) -> None:
    """What the week says has changed and has been still since: a new file to each who has one."""
    profile = profile_of(turn.session, Subject.ATHLETE.of(duty))
    event = current_event(turn.session, profile.person_id) if profile is not None else None
    if profile is None or event is None:
        return
    given_out = select(CalendarRow.reader_id).where(CalendarRow.event_id == event.id)
    readers = dict.fromkeys(turn.session.exec(given_out))
    if has_file_of_all(turn.session, profile.coach_id):
        readers[profile.coach_id] = None
    for reader_id in readers:
        reader = get_person(turn.session, reader_id)
        if _may_see(turn.session, reader, profile):
            with speaking_to(reader):
                _send_changes(turn, reader, profile, event)


def has_file_of_all(session: Session, coach_id: int) -> bool:
    """Whether a coach was given the file in which new athletes and events belong as well."""
    query = select(CalendarRow.id).where(
        CalendarRow.reader_id == coach_id, CalendarRow.athlete_id != coach_id
    )
    return session.exec(query).first() is not None


def _send_changes(turn: Turn, reader: Person, profile: AthleteProfile, event: EventRow) -> None:
    before = _row_of(turn.session, reader, event)
    said = before.entries if before is not None else {}
    row = _issue(turn, reader, profile, event)
    changed = [key for key, now in row.entries.items() if said.get(key) != now]
    if not changed:
        return
    gone = sum(bool(row.entries[key]["cancelled"]) for key in changed)
    own = reader.id == profile.person_id
    text = words.caption_anew(
        name_of(turn.session, profile.person_id),
        own=own, changed=len(changed) - gone, cancelled=gone,
    )  # fmt: skip
    if own:
        _hand_over(turn, reader, row, text, silent=True)
    else:
        _hand_over_all(turn, reader, text, silent=True)


def make_calendar(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The file as last given out; None for somebody who may not see this athlete any more."""
    # Loaded at the first file only: whoever never asks for one never waits for it.
    from bot.calendar.ical import calendar_file  # noqa: PLC0415

    if "calendar" not in named:
        reader = turn.session.get(Person, named["reader"])
        rows = _rows_of_all(turn.session, reader) if reader is not None else []
        if not rows:
            return None
        entries = [entry for row in rows for entry in _entries(row)]
        return Document("athletes.ics", calendar_file(words.name_of_all(), entries))
    row = turn.session.get(CalendarRow, named["calendar"])
    profile = profile_of(turn.session, row.athlete_id) if row is not None else None
    event = turn.session.get(EventRow, row.event_id) if row is not None else None
    if row is None or profile is None or event is None:
        return None
    # An id of a deleted row may have come to mean another one.
    if (row.reader_id, row.athlete_id) != (named["reader"], named["athlete"]):
        return None
    if not _may_see(turn.session, get_person(turn.session, row.reader_id), profile):
        return None
    name = words.calendar_name(name_of(turn.session, profile.person_id))
    return Document(f"week-{event.day.isoformat()}.ics", calendar_file(name, list(_entries(row))))


def _entries(row: CalendarRow) -> Iterator[CalendarEntry]:
    from bot.calendar.ical import CalendarEntry  # noqa: PLC0415

    for key, kept in row.entries.items():
        yield CalendarEntry(
            uid=f"{key.replace(':', '-')}.{row.root}@brimline.invalid",
            start=_start(kept),
            minutes=kept["minutes"] or 0,
            zone=kept["zone"],
            summary=kept["summary"],
            description=kept["description"],
            sequence=kept["sequence"],
            revised_at=datetime.fromisoformat(kept["revised_at"]),
            cancelled=kept["cancelled"],
        )


def _send(turn: Turn, reader: Person, profile: AthleteProfile) -> None:
    """The athlete's own week."""
    event = current_event(turn.session, profile.person_id)
    row = _issue(turn, reader, profile, event) if event is not None else None
    if row is None or not row.entries:
        say_to(turn, reader, words.nothing_yet())
        return
    _hand_over(turn, reader, row, words.caption(entries=_standing(row)))


def _send_all(turn: Turn, coach: Person) -> None:
    """One file of all whom this person coaches."""
    athletes = 0
    for profile in athletes_seen_by(turn.session, coach):
        event = current_event(turn.session, profile.person_id)
        if event is not None and profile.person_id != coach.id:
            athletes += bool(_issue(turn, coach, profile, event).entries)
    if not athletes:
        say_to(turn, coach, no_event_ahead())
        return
    entries = sum(_standing(row) for row in _rows_of_all(turn.session, coach))
    _hand_over_all(turn, coach, words.caption_of_all(athletes=athletes, entries=entries))


def _standing(row: CalendarRow) -> int:
    return sum(not kept["cancelled"] for kept in row.entries.values())


def _issue(turn: Turn, reader: Person, profile: AthleteProfile, event: EventRow) -> CalendarRow:
    """Bring the row up to what the week says now: each change a revision, what is gone cancelled."""
    row = _row_of(turn.session, reader, event) or CalendarRow(
        athlete_id=profile.person_id, event_id=id_of(event), reader_id=id_of(reader),
        root=uuid4().hex, entries={}, issued_at=turn.now,
    )  # fmt: skip
    found = (
        drawn(turn.session, profile, event)
        if reader.id == profile.person_id
        else drawn_for_coach(turn.session, profile, event)
    )
    row.entries = revised(row.entries, found, turn.now)
    row.issued_at = turn.now
    if row.entries:
        turn.session.add(row)
        turn.session.flush()
    return row


def revised(
    before: Mapping[str, Mapping[str, Any]], found: Mapping[str, Drawn], now: datetime
) -> dict[str, dict[str, Any]]:
    """Entries as they are to be given out next: `before` as given out last, `found` as they are."""
    entries: dict[str, dict[str, Any]] = {}
    for key, one in found.items():
        kept, says = before.get(key), one.says() | {"cancelled": False}
        if not _is_over(says, now) or (kept is not None and not _is_over(kept, now)):
            entries[key] = _next(kept, says, now)
        elif kept is not None:
            # What lies in the past stays as it was, whatever is worked out of it today.
            entries[key] = dict(kept)
    for key, kept in before.items():
        if key in found:
            continue
        gone = dict(kept) | {"cancelled": True}
        entries[key] = dict(kept) if _is_over(kept, now) else _next(kept, gone, now)
    return entries


def _next(kept: Mapping[str, Any] | None, says: dict[str, Any], now: datetime) -> dict[str, Any]:
    """The same revision where it says the same, else the one after it (RFC 5545, 3.8.7.4)."""
    if kept is None:
        return says | {"sequence": 0, "revised_at": now.isoformat()}
    if all(kept[key] == value for key, value in says.items()):
        return dict(kept)
    return says | {"sequence": kept["sequence"] + 1, "revised_at": now.isoformat()}


def _start(kept: Mapping[str, Any]) -> date | datetime:
    whole_day = kept["minutes"] is None
    return (date if whole_day else datetime).fromisoformat(kept["start"])


def _is_over(kept: Mapping[str, Any], now: datetime) -> bool:
    start = _start(kept)
    if isinstance(start, datetime):
        return start + timedelta(minutes=kept["minutes"]) < now
    return start < now.astimezone(ZoneInfo(kept["zone"])).date()


def _hand_over(
    turn: Turn, reader: Person, row: CalendarRow, caption: str, *, silent: bool = False
) -> None:
    # Of several files not yet sent only the newest matters, and it is made when it is sent.
    send_document(
        turn,
        chat_id=reader.chat_id,
        caption=caption,
        document={
            "make": MAKE, "calendar": row.id, "reader": row.reader_id, "athlete": row.athlete_id,
        },
        how=Delivery(silent=silent, topic=Topic(TopicKind.CALENDAR, id_of(row))),
    )  # fmt: skip


def _hand_over_all(turn: Turn, coach: Person, caption: str, *, silent: bool = False) -> None:
    send_document(
        turn, chat_id=coach.chat_id, caption=caption, document={"make": MAKE, "reader": coach.id},
        how=Delivery(silent=silent, topic=Topic(TopicKind.CALENDAR_OF_ALL, id_of(coach))),
    )  # fmt: skip


def _rows_of_all(session: Session, coach: Person) -> list[CalendarRow]:
    """What a coach was given of the events that count now, of athletes they still coach."""
    query = (
        select(CalendarRow)
        .join(EventRow)
        .where(
            CalendarRow.reader_id == coach.id, CalendarRow.athlete_id != coach.id, EventRow.active
        )
        .order_by(col(CalendarRow.id))
    )
    seen = {profile.person_id for profile in athletes_seen_by(session, coach)}
    return [row for row in session.exec(query) if row.athlete_id in seen]


def _row_of(session: Session, reader: Person, event: EventRow) -> CalendarRow | None:
    query = select(CalendarRow).where(
        CalendarRow.event_id == event.id, CalendarRow.reader_id == reader.id
    )
    return session.exec(query).first()


def _may_see(session: Session, reader: Person, profile: AthleteProfile) -> bool:
    own = reader.id == profile.person_id
    return own or own_athlete(session, reader, profile.person_id) is not None


ANEW = "calendar"
# Our own choice: a coach who changes five numbers in a row brings one file, not five.
STILL_FOR = timedelta(minutes=5)


def look_at_moved(turn: Turn, moved: list[HistoryRow]) -> None:
    """Whether what was kept in a use case makes a file that was given out stale."""
    for athlete_id in dict.fromkeys(row.athlete_id for row in moved):
        calendar_stale(turn, athlete_id)


def calendar_stale(turn: Turn, athlete_id: int) -> None:
    """Something was kept about the athlete that can matter to a file given out: look soon."""
    given_out = (
        select(CalendarRow.id)
        .join(EventRow)
        .where(CalendarRow.athlete_id == athlete_id, EventRow.active)
    )
    profile = turn.session.get(AthleteProfile, athlete_id)
    of_all = select(CalendarRow.id).where(
        CalendarRow.reader_id == (profile.coach_id if profile is not None else None),
        CalendarRow.athlete_id != CalendarRow.reader_id,
    )  # a coach's file holds all their athletes, new ones too
    if not any(turn.session.exec(query).first() for query in (given_out, of_all)):
        return
    agenda.cancel(turn.session, subject=Subject.ATHLETE(athlete_id), kinds=[ANEW])
    agenda.put(
        turn.session, agenda.Named(Subject.ATHLETE(athlete_id), turn.now.date(), ANEW),
        due_at=turn.now + STILL_FOR, again=True,
    )  # fmt: skip
