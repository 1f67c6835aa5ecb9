"""The last change of the day's times taken back: moved, called off, or laid out anew."""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Session, col, select

from bot.context import Context
from bot.messages import stage as words
from bot.service import stage_day, stage_views
from bot.service.history_view import in_words
from bot.service.people import get_person, record, speaking_to
from bot.service.week import current_event
from bot.store.people import AthleteProfile, HistoryRow, Person
from bot.store.stage import StageRow
from bot.store.traffic import OutboxRow

CHANGES = ("day laid out", "day moved", "stage called off")


def last_change(session: Session, profile: AthleteProfile, context: Context) -> HistoryRow | None:
    """The last one of the times of the current event, where it still can be taken back."""
    query = select(HistoryRow).where(
        HistoryRow.athlete_id == profile.person_id,
        col(HistoryRow.what).in_((*CHANGES, "times taken back")),
    )
    row = session.exec(query.order_by(col(HistoryRow.id).desc())).first()
    event = current_event(session, profile.person_id)
    kept = stage_day.stage_row(session, event) if event is not None else None
    if row is None or kept is None or row.detail.get("stage_day") != kept.id:
        return None
    before = row.detail.get("before")
    if row.what not in CHANGES or before is None or not before["facts"]:
        return None
    last = max(datetime.fromisoformat(stage) for stage in before["facts"]["stages"])
    return row if last > context.now else None


def told(session: Session, profile: AthleteProfile, row: HistoryRow) -> bool:
    """Whether the athlete has been sent the times, or word of the calling off, since."""
    return any(one.status in ("sending", "sent") for one in _messages(session, profile, row))


def take_back(
    session: Session, by: Person, profile: AthleteProfile, row: HistoryRow, context: Context
) -> bool:
    """The times before hold again, reminders too; True where somebody had been told of the change."""
    event = current_event(session, profile.person_id)
    kept = session.get(StageRow, row.detail["stage_day"])
    assert event is not None
    assert kept is not None
    arrived = told(session, profile, row)
    for message in _messages(session, profile, row):
        if message.status == "waiting":
            message.status = "dropped"
            session.add(message)
    stage_day.restore(session, profile, event, kept, row.detail["before"], context)
    record(
        session, profile.person_id, "times taken back", context, by=by.id, of=row.id,
        sentence=in_words(row, profile), stage_day=kept.id,
    )  # fmt: skip
    if arrived:
        for reader in stage_views.readers(session, profile):
            with speaking_to(reader):
                lead = words.times_taken_back(by.first_name, own=reader.id == by.id)
                stage_views.say_day(session, reader, profile, context, lead=lead)
    return arrived


def _messages(session: Session, profile: AthleteProfile, row: HistoryRow) -> list[OutboxRow]:
    athlete = get_person(session, profile.person_id)
    query = select(OutboxRow).where(
        OutboxRow.topic == stage_views.topic(profile, athlete), OutboxRow.created_at >= row.at
    )
    return list(session.exec(query))
