"""Looking up and deleting pictures: rows here, files by duties that outlive a crash."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, time, timedelta
from typing import Any

from sqlalchemy import bindparam
from sqlmodel import Session, col, select

from bot.core.timing import agenda, instants
from bot.core.turn import Context, Document, Turn
from bot.decision.signoff.signoff import morning_line
from bot.pictures.photos import kept, words
from bot.store.tables.people import AthleteProfile
from bot.store.tables.photos import PhotoMorning, PhotoRow, Pose
from bot.store.tables.traffic import AgendaRow
from bot.week.events import event_of_day
from bot.week.load import checkin_row

REMOVE, EXPIRE = "photo-file", "photos-expire"
SWEEP_AT = time(3, 0)  # UTC; any hour would do
ORPHANS_AFTER = timedelta(days=1)  # a file without a row is one being taken in, or left by a crash
FURTHEST_OUT = 60  # days; a morning longer before an event is not called days out of it


def kept_photos(session: Session, athlete_id: int, day: date | None = None) -> list[PhotoRow]:
    """What can be shown, by date and pose."""
    order = {pose.value: number for number, pose in enumerate(Pose)}
    found = session.exec(_KEPT, params={"athlete": athlete_id})
    rows = [row for row in found if day in (None, row.date)]
    return sorted(rows, key=lambda row: (row.date, order[row.pose], row.id))


_KEPT = select(PhotoRow).where(
    PhotoRow.athlete_id == bindparam("athlete"), col(PhotoRow.kept_at).is_not(None)
)


def mornings_of(session: Session, athlete_id: int) -> list[date]:
    """The dates with pictures, the earliest first."""
    return sorted({row.date for row in kept_photos(session, athlete_id)})


def named(row: PhotoRow) -> dict[str, Any]:
    """A picture as an outbox row names it."""
    return {"make": "photo", "photo": row.id}


def make_photo(turn: Turn, named: dict[str, Any]) -> Document | None:
    row = turn.session.get(PhotoRow, named["photo"])
    content = _content(row, turn.context)
    return Document(f"{row.pose}.jpg", content) if row is not None and content else None


def make_pair(turn: Turn, named: dict[str, Any]) -> Document | None:
    """Two mornings side by side; drawn when it is sent and kept nowhere."""
    rows = [turn.session.get(PhotoRow, named[side]) for side in ("left", "right")]
    labels = [row and when(turn.session, row.athlete_id, row.date) for row in rows]
    return make_row(turn, {"photos": [named["left"], named["right"]], "labels": labels})


def make_row(turn: Turn, named: dict[str, Any]) -> Document | None:
    """Photos of several mornings side by side, as `named` says with what above each."""
    from bot.pictures.photos.pairing import in_a_row  # noqa: PLC0415

    rows = [turn.session.get(PhotoRow, number) for number in named["photos"]]
    contents = [_content(row, turn.context) for row in rows]
    there = [
        (content, label)
        for content, label in zip(contents, named["labels"], strict=True)
        if content is not None
    ]
    pose = next((row.pose for row in rows if row is not None), "")
    if len(there) < 2:
        return None  # one alone compares nothing: the others have been deleted since
    return Document(f"{pose}.jpg", in_a_row(*(list(part) for part in zip(*there, strict=True))))


def when(session: Session, athlete_id: int, day: date) -> str:
    """The date, with days out where an event lay ahead of it."""
    event = event_of_day(session, athlete_id, day, timedelta(days=FURTHEST_OUT))
    return words.day(day, (event.day - day).days if event is not None else None)


def numbers(session: Session, profile: AthleteProfile, day: date) -> str:
    row = checkin_row(session, profile.person_id, day)
    return morning_line(profile, row) if row is not None else words.no_numbers_yet()


def delete_photos(turn: Turn, rows: Sequence[PhotoRow]) -> None:
    """Delete rows now, and their files by duties: a file goes once its row is gone for good."""
    for row in rows:
        remove_file_soon(turn, row.name)
        turn.session.delete(row)
    turn.session.flush()


def delete_all_photos(turn: Turn, athlete_id: int) -> None:
    """Every picture of an athlete, and what was noted around them."""
    query = select(PhotoRow).where(PhotoRow.athlete_id == athlete_id)
    delete_photos(turn, list(turn.session.exec(query)))
    for morning in turn.session.exec(
        select(PhotoMorning).where(PhotoMorning.athlete_id == athlete_id)
    ):
        turn.session.delete(morning)
    turn.session.flush()
    expire_later(turn)  # for one that is on its way at this moment


def remove_file_soon(turn: Turn, name: str) -> None:
    agenda.put(
        turn.session, agenda.Named(f"photo:{name}", turn.now.date(), REMOVE), due_at=turn.now,
        again=True,
    )  # fmt: skip


def remove_file(turn: Turn, duty: AgendaRow) -> None:
    """Delete the file, unless a row speaks of it after all."""
    name = duty.subject.partition(":")[2]
    spoken_of = turn.session.exec(select(PhotoRow.id).where(PhotoRow.name == name)).first()
    if spoken_of is None and turn.context.photo_dir is not None:
        kept.remove(turn.context.photo_dir, name)


def expire_later(turn: Turn) -> None:
    """See to it that tomorrow's sweep takes place; it repeats for as long as there are files."""
    tomorrow = turn.now.date() + timedelta(days=1)
    agenda.put(
        turn.session, agenda.Named("photos", tomorrow, EXPIRE),
        due_at=instants.local_instant(tomorrow, SWEEP_AT, "UTC"),
    )  # fmt: skip


def expire(turn: Turn, _duty: AgendaRow) -> None:
    """Delete what has been kept long enough, and files that nobody speaks of."""
    last = turn.now.date() - timedelta(days=turn.context.keep_photos_days)
    delete_photos(turn, list(turn.session.exec(select(PhotoRow).where(PhotoRow.date < last))))
    for morning in turn.session.exec(select(PhotoMorning).where(PhotoMorning.date < last)):
        turn.session.delete(morning)
    if turn.context.photo_dir is not None:
        known = set(turn.session.exec(select(PhotoRow.name)))
        for name in kept.kept_before(turn.context.photo_dir, turn.now - ORPHANS_AFTER):
            if name not in known:
                remove_file_soon(turn, name)
    if turn.context.photo_dir is not None and not kept.is_empty(turn.context.photo_dir):
        expire_later(turn)


def _content(row: PhotoRow | None, context: Context) -> bytes | None:
    if row is None or row.kept_at is None or context.photo_dir is None:
        return None
    return kept.read(context.photo_dir, row.name)
