"""How a change of the times of the event's day is put back: moved, called off, or laid out anew."""

from __future__ import annotations

from datetime import datetime
from functools import partial

from sqlmodel import Session, col, select

from bot.coach.history import in_words
from bot.core.chat.outbox import on
from bot.core.turn import Turn
from bot.event.stage import day as stage_day
from bot.event.stage import views as stage_views
from bot.event.stage import words
from bot.people.changes import KINDS, Back, Change
from bot.people.people import get_person, record
from bot.store.base import id_of
from bot.store.tables.event import StageRow
from bot.store.tables.people import AthleteProfile, HistoryRow, Person
from bot.store.tables.traffic import OutboxRow
from bot.week.load import current_event

SETS_TIMES = tuple(kind for kind in KINDS.values() if kind.back is Back.TIMES)


def last_change(turn: Turn, profile: AthleteProfile) -> HistoryRow | None:
    """The last one of the times of the current event, where it still can be taken back."""
    query = select(HistoryRow).where(
        HistoryRow.athlete_id == profile.person_id,
        col(HistoryRow.what).in_((*SETS_TIMES, Change.TIMES_TAKEN_BACK)),
    )
    row = turn.session.exec(query.order_by(col(HistoryRow.id).desc())).first()
    event = current_event(turn.session, profile.person_id)
    kept = stage_day.stage_row(turn.session, event) if event is not None else None
    if row is None or kept is None or row.detail.get("stage_day") != kept.id:
        return None
    before = row.detail.get("before")
    if row.what not in SETS_TIMES or before is None or not before["facts"]:
        return None
    last = max(datetime.fromisoformat(stage) for stage in before["facts"]["stages"])
    return row if last > turn.now else None


def told(session: Session, profile: AthleteProfile, row: HistoryRow) -> bool:
    """Whether the athlete has been sent the times, or word of the calling off, since."""
    return any(one.status in ("sending", "sent") for one in _messages(session, profile, row))


def take_back(turn: Turn, by: Person, profile: AthleteProfile, row: HistoryRow) -> bool:
    """The times before hold again, reminders too; True where somebody had been told of the change."""
    event = current_event(turn.session, profile.person_id)
    kept = turn.session.get(StageRow, row.detail["stage_day"])
    assert event is not None
    assert kept is not None
    arrived = told(turn.session, profile, row)
    for message in _messages(turn.session, profile, row):
        if message.status == "waiting":
            message.status = "dropped"
            turn.session.add(message)
    stage_day.restore(turn, profile, event, kept, row.detail["before"])
    record(turn, profile.person_id, by=by.id, what=Change.TIMES_TAKEN_BACK(
        of=id_of(row), sentence=in_words(row, profile), stage_day=id_of(kept),
    ))  # fmt: skip
    if arrived:
        for reader in stage_views.readers(turn.session, profile):
            lead = partial(words.times_taken_back, by.first_name, own=reader.id == by.id)
            stage_views.say_day(turn, reader, profile, lead=lead)
    return arrived


def _messages(session: Session, profile: AthleteProfile, row: HistoryRow) -> list[OutboxRow]:
    athlete = get_person(session, profile.person_id)
    query = select(OutboxRow).where(
        *on(stage_views.topic(profile, athlete)), OutboxRow.created_at >= row.at
    )
    return list(session.exec(query))
