"""What may tell of danger and could not be handled, again and again: it is told as it stands.

Nothing in it is read here, since reading it may be what fails.
"""

from __future__ import annotations

from functools import partial

from bot.alerts import alerts
from bot.alerts import words_athlete as words
from bot.core.chat.outbox import Delivery
from bot.core.turn import Turn
from bot.decision import deciding
from bot.decision.to_athlete import WARNED
from bot.people.people import is_own_coach, local_date
from bot.people.telling import say_to
from bot.safety.reports import coach_name
from bot.safety.watch import short
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.traffic import Urgency
from engine.evidence import safety as evidence
from engine.safety import Flag, FlagId, Level


def bring(turn: Turn, person: Person, profile: AthleteProfile, said: str) -> None:
    """The coach gets an athlete's words as a warning, and the athlete hears what to do in danger."""
    facts = {"words": short(said)}
    flag = Flag(FlagId.SYMPTOM_UNREAD, Level.WARNING, facts, (evidence.A_HUMAN_LOOKS,))
    deciding.freeze(turn, profile, WARNED)
    own = is_own_coach(profile)
    coach = "" if profile.status == AthleteStatus.ENDED else coach_name(turn.session, profile)
    answer = partial(words.could_not_be_handled, coach, turn.context.helpline, self_coached=own)
    found = alerts.Found((flag,), local_date(profile, turn.context))
    answered = alerts.Answered(answer if own else None)
    if not alerts.raise_flags(turn, profile, found, answered):
        say_to(turn, person, answer, how=Delivery(urgency=Urgency.URGENT))
