"""`/calendar`: the file handed out, and sent anew, once and silently, when what it says has changed."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime, timedelta
from typing import Any
from uuid import uuid4
from zoneinfo import ZoneInfo

from sqlmodel import Session, select

from bot.calendar import words
from bot.calendar.week_calendar import Drawn, drawn
from bot.core.callbacks import answer
from bot.core.context import Document
from bot.core.outbox import Button, send_document
from bot.core.turn import Act, OnAthlete, Turn
from bot.people.people import athletes_of, get_person, own_athlete, profile_of, speaking_to
from bot.people.telling import say_to
from bot.store.base import id_of
from bot.store.tables.calendar import CalendarRow
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import EventRow
from bot.week.load import current_event

MAKE = "calendar"


def command(turn: Act) -> None:
    """`/calendar`: the own week; for a coach a button an athlete, or the one there is."""
    own = profile_of(turn.session, turn.person.id)
    if own is not None and current_event(turn.session, own.person_id) is not None:
        _send(turn, turn.person, own)
        return
    found = [
        p
        for p in athletes_of(turn.session, turn.person)
        if current_event(turn.session, p.person_id)
    ]
    if len(found) == 1:
        _send(turn, turn.person, found[0])
        return
    if not found:
        text = words.nothing_yet("", own=True) if own is not None else words.nobody()
        say_to(turn, turn.person, text)
        return
    keys = [
        [Button(get_person(turn.session, p.person_id).first_name, f"cal:get:{p.person_id}")]
        for p in found
    ]
    say_to(turn, turn.person, words.which_athlete(), buttons=keys)


def tapped(turn: Act) -> None:
    """Button "cal:get:ATHLETE", for the athlete and for their coach."""
    view, number = (*turn.arguments, "", "")[:2]
    known = number if number.isdigit() and view == "get" else "0"
    profile = (
        profile_of(turn.session, turn.person.id)
        if turn.person.id == int(known)
        else own_athlete(turn.session, turn.person, int(known))
    )
    if profile is None:
        answer(turn, words.not_here())
        return
    answer(turn)
    _send(turn, turn.person, profile)


def on_card(turn: OnAthlete) -> None:
    """The card's button."""
    answer(turn)
    _send(turn, turn.person, turn.profile)


def send_anew(turn: Turn, duty: AgendaRow) -> None:
    """What the week says has changed and has been still since: a new file to each who has one."""
    profile = profile_of(turn.session, int(duty.subject.partition(":")[2]))
    event = current_event(turn.session, profile.person_id) if profile is not None else None
    if profile is None or event is None:
        return
    for row in turn.session.exec(select(CalendarRow).where(CalendarRow.event_id == event.id)).all():
        reader = get_person(turn.session, row.reader_id)
        if not _may_see(turn.session, reader, profile):
            continue
        with speaking_to(reader):
            _send_changes(turn, reader, profile, event, row)


def _send_changes(
    turn: Turn, reader: Person, profile: AthleteProfile, event: EventRow, row: CalendarRow
) -> None:
    before = row.entries
    _issue(turn, reader, profile, event, row)
    changed = [key for key, now in row.entries.items() if before.get(key) != now]
    if not changed:
        return
    gone = sum(bool(row.entries[key]["cancelled"]) for key in changed)
    text = words.caption_anew(
        get_person(turn.session, profile.person_id).first_name,
        own=reader.id == profile.person_id,
        changed=len(changed) - gone,
        cancelled=gone,
    )
    _hand_over(turn, reader, row, text, silent=True)


def make_calendar(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The file as last given out; None for somebody who may not see this athlete any more."""
    # Loaded at the first file only: whoever never asks for one never waits for it.
    from bot.calendar.ical import CalendarEntry, calendar_file  # noqa: PLC0415

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
    entries = [
        CalendarEntry(
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
        for key, kept in row.entries.items()
    ]
    name = words.calendar_name(get_person(turn.session, profile.person_id).first_name)
    return Document(f"week-{event.day.isoformat()}.ics", calendar_file(name, entries))


def _send(turn: Turn, reader: Person, profile: AthleteProfile) -> None:
    event = current_event(turn.session, profile.person_id)
    name, own = (
        get_person(turn.session, profile.person_id).first_name,
        reader.id == profile.person_id,
    )
    row = _row_of(turn.session, reader, event) if event is not None else None
    if event is not None:
        row = row or CalendarRow(
            athlete_id=profile.person_id, event_id=id_of(event), reader_id=id_of(reader),
            root=uuid4().hex, entries={}, issued_at=turn.now,
        )  # fmt: skip
        _issue(turn, reader, profile, event, row)
    if row is None or not row.entries:
        text = words.nothing_yet(name, own=own)
        say_to(turn, reader, text)
        return
    standing = sum(not kept["cancelled"] for kept in row.entries.values())
    _hand_over(turn, reader, row, words.caption(name, own=own, entries=standing))


def _issue(
    turn: Turn, reader: Person, profile: AthleteProfile, event: EventRow, row: CalendarRow
) -> None:
    """Bring the row up to what the week says now: each change a revision, what is gone cancelled."""
    found = drawn(turn.session, profile, event, own=reader.id == profile.person_id)
    row.entries = revised(row.entries, found, turn.now)
    row.issued_at = turn.now
    if row.entries:
        turn.session.add(row)
        turn.session.flush()


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
        turn.session, chat_id=reader.chat_id, now=turn.now, caption=caption, silent=silent,
        topic=f"calendar:{row.id}", document={
            "make": MAKE, "calendar": row.id, "reader": row.reader_id, "athlete": row.athlete_id,
        },
    )  # fmt: skip


def _row_of(session: Session, reader: Person, event: EventRow) -> CalendarRow | None:
    query = select(CalendarRow).where(
        CalendarRow.event_id == event.id, CalendarRow.reader_id == reader.id
    )
    return session.exec(query).first()


def _may_see(session: Session, reader: Person, profile: AthleteProfile) -> bool:
    own = reader.id == profile.person_id
    return own or own_athlete(session, reader, profile.person_id) is not None
