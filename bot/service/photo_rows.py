"""Looking up and deleting pictures: rows here, files by duties that outlive a crash."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, time, timedelta
from typing import Any

from sqlmodel import Session, col, select

from bot import agenda
from bot.context import Context, Document
from bot.messages import photos as words
from bot.pictures import folder
from bot.pictures.pairing import side_by_side
from bot.service.signoff import morning_line
from bot.service.week import checkin_row
from bot.store.people import AthleteProfile
from bot.store.photos import PhotoMorning, PhotoRow, Pose
from bot.store.traffic import AgendaRow
from bot.store.week import EventRow

REMOVE, EXPIRE = "photo-file", "photos-expire"
SWEEP_AT = time(3, 0)  # UTC; any hour would do
ORPHANS_AFTER = timedelta(days=1)  # a file without a row is one being taken in, or left by a crash
FURTHEST_OUT = 60  # days; a morning longer before an event is not called days out of it


def kept_photos(session: Session, athlete_id: int, day: date | None = None) -> list[PhotoRow]:
    """What can be shown, by date and pose."""
    query = select(PhotoRow).where(
        PhotoRow.athlete_id == athlete_id, col(PhotoRow.kept_at).is_not(None)
    )
    if day is not None:
        query = query.where(PhotoRow.date == day)
    order = {pose.value: number for number, pose in enumerate(Pose)}
    return sorted(session.exec(query), key=lambda row: (row.date, order[row.pose], row.id))


def mornings_of(session: Session, athlete_id: int) -> list[date]:
    """The dates with pictures, the earliest first."""
    return sorted({row.date for row in kept_photos(session, athlete_id)})


def named(row: PhotoRow) -> dict[str, Any]:
    """A picture as an outbox row names it."""
    return {"make": "photo", "photo": row.id}


def make_photo(session: Session, named: dict[str, Any], context: Context) -> Document | None:
    row = session.get(PhotoRow, named["photo"])
    content = _content(row, context)
    return Document(f"{row.pose}.jpg", content) if row is not None and content else None


def make_pair(session: Session, named: dict[str, Any], context: Context) -> Document | None:
    """Two mornings side by side; drawn when it is sent and kept nowhere."""
    rows = [session.get(PhotoRow, named[side]) for side in ("left", "right")]
    contents = [_content(row, context) for row in rows]
    if rows[0] is None or rows[1] is None or contents[0] is None or contents[1] is None:
        return None
    labels = [when(session, row.athlete_id, row.date) for row in rows if row is not None]
    return Document(f"{rows[0].pose}.jpg", side_by_side(contents[0], contents[1], *labels))


def when(session: Session, athlete_id: int, day: date) -> str:
    """The date, with days out where an event lay ahead of it."""
    query = (
        select(EventRow)
        .where(
            EventRow.athlete_id == athlete_id,
            EventRow.day >= day,
            EventRow.day <= day + timedelta(days=FURTHEST_OUT),
        )
        .order_by(col(EventRow.id).desc())
    )
    event = session.exec(query).first()
    return words.day(day, (event.day - day).days if event is not None else None)


def numbers(session: Session, profile: AthleteProfile, day: date) -> str:
    row = checkin_row(session, profile.person_id, day)
    return morning_line(profile, row) if row is not None else words.no_numbers_yet()


def delete_photos(session: Session, rows: Sequence[PhotoRow], context: Context) -> None:
    """Delete rows now, and their files by duties: a file goes once its row is gone for good."""
    for row in rows:
        remove_file_soon(session, row.name, context)
        session.delete(row)
    session.flush()


def delete_all_photos(session: Session, athlete_id: int, context: Context) -> None:
    """Every picture of an athlete, and what was noted around them."""
    query = select(PhotoRow).where(PhotoRow.athlete_id == athlete_id)
    delete_photos(session, list(session.exec(query)), context)
    for morning in session.exec(select(PhotoMorning).where(PhotoMorning.athlete_id == athlete_id)):
        session.delete(morning)
    session.flush()
    expire_later(session, context)  # for one that is on its way at this moment


def remove_file_soon(session: Session, name: str, context: Context) -> None:
    agenda.put(
        session, subject=f"photo:{name}", local_date=context.now.date(), kind=REMOVE,
        due_at=context.now, again=True,
    )  # fmt: skip


def remove_file(session: Session, duty: AgendaRow, context: Context) -> None:
    """Delete the file, unless a row speaks of it after all."""
    name = duty.subject.partition(":")[2]
    spoken_of = session.exec(select(PhotoRow.id).where(PhotoRow.name == name)).first()
    if spoken_of is None and context.photo_dir is not None:
        folder.remove(context.photo_dir, name)


def expire_later(session: Session, context: Context) -> None:
    """See to it that tomorrow's sweep takes place; it repeats for as long as there are files."""
    tomorrow = context.now.date() + timedelta(days=1)
    agenda.put(
        session, subject="photos", local_date=tomorrow, kind=EXPIRE,
        due_at=agenda.local_instant(tomorrow, SWEEP_AT, "UTC"),
    )  # fmt: skip


def expire(session: Session, _duty: AgendaRow, context: Context) -> None:
    """Delete what has been kept long enough, and files that nobody speaks of."""
    last = context.now.date() - timedelta(days=context.keep_photos_days)
    delete_photos(
        session, list(session.exec(select(PhotoRow).where(PhotoRow.date < last))), context
    )
    for morning in session.exec(select(PhotoMorning).where(PhotoMorning.date < last)):
        session.delete(morning)
    if context.photo_dir is not None:
        known = set(session.exec(select(PhotoRow.name)))
        for name in folder.kept_before(context.photo_dir, context.now - ORPHANS_AFTER):
            if name not in known:
                remove_file_soon(session, name, context)
    if context.photo_dir is not None and not folder.is_empty(context.photo_dir):
        expire_later(session, context)


def _content(row: PhotoRow | None, context: Context) -> bytes | None:
    if row is None or row.kept_at is None or context.photo_dir is None:
        return None
    return folder.read(context.photo_dir, row.name)
