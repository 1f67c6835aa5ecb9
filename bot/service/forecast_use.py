"""The coach says what the forecast may do for an athlete: propose, show, or nothing."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.incoming import Incoming
from bot.messages import coach_history as history_words
from bot.messages import forecast_use as words
from bot.outbox import Button, Buttons
from bot.service.people import get_person, record
from bot.service.tapping import answer, rewrite
from bot.store.people import AthleteProfile, Person
from engine.case import ForecastUse


def show(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """What holds now, and a button for each of the others."""
    answer(session, incoming, context)
    name = get_person(session, profile.person_id).first_name
    text = words.view(name, ForecastUse(profile.forecast), own=coach.id == profile.person_id)
    rewrite(session, incoming, text, context, _buttons(profile))


def choose(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """One of them is tapped; from the next check-in on it holds."""
    named = rest[0] if rest else ""
    if named not in set(ForecastUse) or named == profile.forecast:
        show(session, coach, profile, [], incoming, context)
        return
    answer(session, incoming, context)
    use = ForecastUse(named)
    profile.forecast = use
    session.add(profile)
    record(session, profile.person_id, "forecast", context, by=coach.id, use=use.value)
    rewrite(session, incoming, words.chosen(use), context, _buttons(profile))


def _buttons(profile: AthleteProfile) -> Buttons:
    number = profile.person_id
    others = [
        [Button(words.choice(use), f"c:forecast-use:{number}:{use}")]
        for use in ForecastUse
        if use != profile.forecast
    ]
    return [*others, [Button(history_words.back_button(), f"c:card:{number}")]]
