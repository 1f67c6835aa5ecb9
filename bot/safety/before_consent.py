"""What somebody tells before they have agreed that it is passed on: they are answered, and an emergency
alone is brought to the coach, as the words to agree to say. Nothing else of it is kept.
"""

from __future__ import annotations

from dataclasses import replace

from bot.alerts import words_advice as advice
from bot.alerts import words_athlete as words
from bot.core.turn import Turn
from bot.decision import words_self_coached as on_your_own
from bot.people.people import has_agreed, is_own_coach
from bot.people.telling import say_to
from bot.safety import words as safety_words
from bot.safety.reports import Told, coach_name, report
from bot.store.tables.people import AthleteProfile, Person
from engine.symptoms import EATING_AND_MOOD, WARNINGS


def bring(turn: Turn, person: Person, profile: AthleteProfile, told: Told) -> None:
    """To the coach, kept and answered; an emergency alone before they have agreed to that."""
    if has_agreed(turn.session, person):
        report(turn, profile, told)
    else:
        _told(turn, person, profile, told)


def who_knows(turn: Turn, person: Person, profile: AthleteProfile) -> str:
    """Who was told of a doubt; "" for nobody."""
    return coach_name(turn.session, profile) if has_agreed(turn.session, person) else ""


def _told(turn: Turn, person: Person, profile: AthleteProfile, found: Told) -> None:
    """Answer what was told; bring an emergency in it to the coach, without what was told beside it."""
    warnings = tuple(symptom for symptom in found.symptoms if symptom in WARNINGS)
    if warnings or found.emergency:
        of_it = replace(found, symptoms=warnings, drugs=(), readings=(), unread=False)
        report(turn, profile, of_it)
        return
    say_to(turn, person, _answer(found, self_coached=is_own_coach(profile)))


def _answer(found: Told, *, self_coached: bool) -> str:
    body = [symptom for symptom in found.symptoms if symptom not in EATING_AND_MOOD]
    gentle = advice.gently([symptom for symptom in found.symptoms if symptom in EATING_AND_MOOD])
    parts = [
        on_your_own.drug_refusal() if found.drugs else "",
        gentle,
        advice.too_fast() if found.readings else "",
        advice.advice(body),
        safety_words.stays_with_you(self_coached=self_coached),
        words.if_worse(),
    ]
    return "\n\n".join(part for part in parts if part)
