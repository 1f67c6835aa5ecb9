"""Where several coach an athlete, what one of them changes is noted to the others, silently."""

from __future__ import annotations

from bot.alerts import notes
from bot.coach.history import words
from bot.coach.history.view import in_words
from bot.core.turn import Turn
from bot.people.changes import Change, Follows
from bot.people.people import get_person, pending_entries, profile_of, speaking_to
from bot.people.rights import approvers
from bot.store.tables.people import Person


def note_to_others(turn: Turn, by: Person) -> None:
    """What this person has just changed, for whoever else coaches those athletes."""
    for row in pending_entries(turn.session):
        profile = profile_of(turn.session, row.athlete_id)
        if Follows.NOTED not in Change(row.what).follows or row.by_id != by.id or profile is None:
            continue
        athlete = get_person(turn.session, profile.person_id)
        for other in approvers(turn.session, profile):
            if other.id in (by.id, athlete.id):
                continue
            with speaking_to(other):
                text = words.changed_by(athlete.first_name, by.first_name, in_words(row, profile))
                notes.tell(turn, other, profile.person_id, text)
