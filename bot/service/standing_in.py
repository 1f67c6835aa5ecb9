"""What a second coach did about another coach's athlete, told to that coach."""

from __future__ import annotations

from sqlmodel import Session, col, select

from bot.context import Context
from bot.messages import coach_second as words
from bot.service import notes
from bot.service.history_view import in_words
from bot.service.people import get_person, profile_of
from bot.service.rights import given_to
from bot.store.people import AthleteProfile, HistoryRow, Person

# Of these the first coach hears anyhow: on the message that had asked, or at once.
TOLD_ALREADY = ("signed off", "alert acknowledged")


def tell_first_coach(session: Session, second: Person, context: Context) -> None:
    """A silent note of each thing that was just kept as done by this second coach."""
    coaches = {row.coach_id for row in given_to(session, second)} - {second.id}
    if not coaches:
        return
    theirs = select(AthleteProfile.person_id).where(col(AthleteProfile.coach_id).in_(coaches))
    query = select(HistoryRow).where(
        col(HistoryRow.athlete_id).in_(theirs),
        HistoryRow.athlete_id != second.id,
        HistoryRow.at == context.now,
        HistoryRow.by_id == second.id,
        col(HistoryRow.what).not_in(TOLD_ALREADY),
    )
    for row in session.exec(query.order_by(col(HistoryRow.id))).all():
        profile = profile_of(session, row.athlete_id)
        assert profile is not None
        name = get_person(session, row.athlete_id).first_name
        text = words.did(second.first_name, name, in_words(row, profile))
        notes.tell(session, get_person(session, profile.coach_id), row.athlete_id, text, context)
