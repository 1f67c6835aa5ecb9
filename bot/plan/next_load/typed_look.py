"""A coach types how an athlete looked instead of tapping it: the verdict that is missing is asked for
once more, beside the words.
"""

from __future__ import annotations

import re
from datetime import timedelta

from sqlmodel import col, select

from bot.core.turn import ChatTurn
from bot.decision.words_outlook import LOOK_SAID
from bot.people.people import local_date
from bot.people.rights import approvers, athletes_seen_by
from bot.plan.next_load import looks
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow
from bot.words.languages import listed

LISTENS_FOR = timedelta(days=7)  # our own choice: later a look is told of another week
BARE, MOST_WORDS = 3, 14
_WORD = re.compile(r"[\w'-]+")


def heard(turn: ChatTurn, person: Person) -> bool:
    """Whether the text was a verdict and nothing else; of a longer one that may be one the question is
    put as well, and the words are for somebody still.
    """
    words = _WORD.findall(turn.incoming.text.casefold())
    if "?" in turn.incoming.text or not 0 < len(words) <= MOST_WORDS or not _looks_in(words):
        return False
    missing = _missing(turn, person)
    if len(missing) != 1:
        return False
    profile, event = missing[0]
    looks.ask_look_again(turn, person, profile, event)
    return len(words) <= BARE


def _looks_in(words: list[str]) -> bool:
    """Whether exactly one look is named."""
    text = f" {' '.join(words)} "
    named = {
        look for look, said in LOOK_SAID.items() if any(f" {one} " in text for one in listed(said))
    }
    return len(named) == 1


def _missing(turn: ChatTurn, person: Person) -> list[tuple[AthleteProfile, EventRow]]:
    """Events of the last days whose look this coach has not judged."""
    found = []
    for profile in athletes_seen_by(turn.session, person):
        if person.id not in {one.id for one in approvers(turn.session, profile)}:
            continue
        today = local_date(profile, turn.context)
        query = select(EventRow).where(
            EventRow.athlete_id == profile.person_id,
            col(EventRow.day) < today,
            col(EventRow.day) >= today - LISTENS_FOR,
            col(EventRow.look).is_(None),
        )
        found += [(profile, event) for event in turn.session.exec(query)]
    return found
