"""Where several coach an athlete, what one of them changes is noted to the others, silently."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.messages import coach_history as words
from bot.service import notes
from bot.service.history_view import in_words
from bot.service.people import get_person, kept_now, profile_of, speaking_to
from bot.service.signoff import signers
from bot.store.people import Person

#: Proposals, alerts and messages reach those who coach the athlete by ways of their own.
NOTED = frozenset(
    {
        "plan set", "limits set", "event set", "day set by hand", "held", "hold ended",
        "taken back", "times taken back", "frozen", "freeze lifted", "always tomorrow", "forecast",
        "doctor's word noted",
    }
)  # fmt: skip


def note_to_others(session: Session, by: Person, context: Context) -> None:
    """What this person has just changed, for whoever else coaches those athletes."""
    for row in kept_now(session):
        profile = profile_of(session, row.athlete_id)
        if row.what not in NOTED or row.by_id != by.id or profile is None:
            continue
        athlete = get_person(session, profile.person_id)
        for other in signers(session, profile):
            if other.id in (by.id, athlete.id):
                continue
            with speaking_to(other):
                text = words.changed_by(athlete.first_name, by.first_name, in_words(row, profile))
                notes.tell(session, other, profile.person_id, text, context)
