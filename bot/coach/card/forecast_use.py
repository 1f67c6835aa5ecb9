"""The coach says what the forecast may do for an athlete: propose, show, or nothing."""

from __future__ import annotations

from bot.coach.buttons import FORECAST_USE, ChosenUse
from bot.core.chat.cards import CARD
from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import OnAthlete
from bot.decision import words_forecast_use as words
from bot.people.changes import Change
from bot.people.people import name_of, record
from bot.people.telling import answer, rewrite
from bot.store.tables.people import AthleteProfile
from bot.week.cases import prior_for, priors_on
from bot.words import common
from engine.values.case import ForecastUse


def show(turn: OnAthlete) -> None:
    """What holds now, and a button for each of the others."""
    answer(turn)
    name = name_of(turn.session, turn.profile.person_id)
    use, self_coached = ForecastUse(turn.profile.forecast), turn.self_coached
    text = words.view(
        name, use, self_coached=self_coached, rests="" if self_coached else _rests_on(turn, use)
    )
    rewrite(turn, text, _buttons(turn.profile))


def _rests_on(turn: OnAthlete, use: ForecastUse) -> str:
    """On how many finished weeks of others the forecast for this athlete begins."""
    if use is ForecastUse.RULES_ONLY:
        return ""
    prior = prior_for(turn.session, turn.profile)
    if prior is None:
        return words.rests_on(0, 0)
    if not priors_on(turn.session):
        return words.not_used(prior.weeks)
    return words.rests_on(prior.weeks, prior.athletes)


def choose(turn: OnAthlete, pressed: ChosenUse) -> None:
    """One of them is tapped; from the next check-in on it holds."""
    use = pressed.use
    if use is None or use == turn.profile.forecast:
        show(turn)
        return
    answer(turn)
    turn.profile.forecast = use
    turn.session.add(turn.profile)
    record(turn, turn.profile.person_id, Change.FORECAST, by=turn.person.id, use=use.value)
    rewrite(turn, words.chosen(use), _buttons(turn.profile))


def _buttons(profile: AthleteProfile) -> Buttons:
    number = profile.person_id
    others = [
        [Button(words.choice(use), FORECAST_USE(number, use))]
        for use in ForecastUse
        if use != profile.forecast
    ]
    return [*others, [Button(common.back_button(), CARD(number))]]
