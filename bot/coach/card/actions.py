"""What a coach does from an athlete's card, by hand; and what the forecast may do for them."""

from __future__ import annotations

from functools import partial

from bot.alerts.buttons import Do, OnAlert
from bot.athlete import words as why_words
from bot.coach import words
from bot.coach.buttons import BY_HAND, DOCTOR_NO, DOCTOR_YES, FORECAST_USE, ChosenUse, OfDaysOut
from bot.coach.card.card import card
from bot.core.chat.cards import CARD, OfRow, OnProposal
from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import OnAthlete
from bot.decision import words_forecast as use_words
from bot.decision.deciding import latest_decision
from bot.decision.signoff.taps import ask_day_by_hand, sign_tapped
from bot.decision.to_athlete import told_whole
from bot.membership.onboarding import onboarding
from bot.people.changes import Change
from bot.people.people import get_person, local_date, name_of, record
from bot.people.telling import answer, ask_sure, rewrite, say_to, tell_athlete
from bot.plan import words as plan_words
from bot.plan.planning import week_changed
from bot.safety.alert_taps import alert_tapped
from bot.store.tables.people import AthleteProfile, AthleteStatus
from bot.week.cases import decision_of, prior_for, priors_on
from bot.week.load import current_week
from bot.words import common
from engine.values.case import ForecastUse

BUTTONS_IN_A_ROW = 4


def show_why(turn: OnAthlete) -> None:
    """The latest decision with its trace and sources, as the athlete sees it."""
    name = name_of(turn.session, turn.profile.person_id)
    decided = latest_decision(turn.session, turn.profile.person_id)
    if decided is None:
        text = words.nothing_decided_yet(name, self_coached=turn.self_coached)
    else:
        why = why_words.why_message(
            decision_of(decided),
            told_whole(turn.session, turn.profile, decided),
            turn.profile.weight_unit,
            turn.profile.volume_unit,
        )
        text = words.why_as_seen(name, why, self_coached=turn.self_coached)
    say_to(turn, turn.person, text)


def show_answers(turn: OnAthlete) -> None:
    """What was answered at the start."""
    name = name_of(turn.session, turn.profile.person_id)
    text = (
        words.answers_as_given(name, onboarding.answers_lines(turn.profile))
        if turn.profile.baseline
        else plan_words.no_measures_yet(name)
    )
    say_to(turn, turn.person, text)


def sign_from_card(turn: OnAthlete, pressed: OnProposal) -> None:
    """The coach's answer to a proposal; the card follows."""
    sign_tapped(turn, pressed)
    rewrite(turn, *card(turn, turn.person, turn.profile))


def acknowledge_from_card(turn: OnAthlete, pressed: OfRow) -> None:
    alert_tapped(turn, OnAlert(Do.ACKNOWLEDGE, pressed.row))
    rewrite(turn, *card(turn, turn.person, turn.profile))


def set_by_hand(turn: OnAthlete, pressed: OfDaysOut) -> None:
    """First the days that are left, as buttons; then, for the one tapped, the question."""
    week, today = current_week(turn.session, turn.profile), local_date(turn.profile, turn.context)
    ahead = [
        day.days_out for day in (week.plan if week is not None else ())
        if week is not None and week.date_of(day.days_out) >= today
    ]  # fmt: skip
    named = pressed.days_out
    if week is None or not ahead:
        say_to(turn, turn.person, common.no_such_day())
        return
    if named in ahead:
        ask_day_by_hand(turn, turn.person, turn.profile, week.date_of(named))
        return
    days = [
        Button(plan_words.day_button(out), BY_HAND(turn.profile.person_id, out)) for out in ahead
    ]
    rows = [days[i : i + BUTTONS_IN_A_ROW] for i in range(0, len(days), BUTTONS_IN_A_ROW)]
    say_to(turn, turn.person, words.which_day(), buttons=rows)


def turn_tomorrow(turn: OnAthlete) -> None:
    """Whether a morning sets the day that begins, or always the day after."""
    turn.profile.always_tomorrow = not turn.profile.always_tomorrow
    entry = Change.ALWAYS_TOMORROW(on=turn.profile.always_tomorrow)
    record(turn, turn.profile.person_id, entry, by=turn.person.id)
    answer(turn, words.always_tomorrow_changed(always_tomorrow=turn.profile.always_tomorrow))
    rewrite(turn, *card(turn, turn.person, turn.profile))


def ask_doctor(turn: OnAthlete) -> None:
    """A doctor's clearance is kept on a second tap only."""
    if turn.profile.status != AthleteStatus.DOCTOR_FIRST:
        say_to(turn, turn.person, words.doctor_not_waiting())
        return
    name = name_of(turn.session, turn.profile.person_id)
    text = words.doctor_sure(name, self_coached=turn.self_coached)
    yes = Button(words.doctor_yes_button(), DOCTOR_YES(turn.profile.person_id))
    no = Button(common.not_yet(), DOCTOR_NO(turn.profile.person_id))
    ask_sure(turn, turn.person, text, yes, no)


def doctor_said_yes(turn: OnAthlete) -> None:
    if turn.profile.status != AthleteStatus.DOCTOR_FIRST:
        rewrite(turn, words.doctor_not_waiting())
        return
    if onboarding.held_by_floor(turn, turn.person, turn.profile):
        return
    turn.profile.status, turn.profile.cleared_at = AthleteStatus.ACTIVE, turn.now
    record(turn, turn.profile.person_id, Change.DOCTOR_WORD_NOTED(), by=turn.person.id)
    athlete = get_person(turn.session, turn.profile.person_id)
    rewrite(turn, words.doctor_noted(athlete.first_name, self_coached=turn.self_coached))
    told = partial(words.athlete_told_doctor, turn.person.first_name)
    tell_athlete(turn, turn.person, turn.profile, told)
    week_changed(turn, turn.person, turn.profile, because="plan-changed", was_complete=False)


def doctor_not_yet(turn: OnAthlete) -> None:
    rewrite(turn, common.cancelled())


def show(turn: OnAthlete) -> None:
    """What holds now, and a button for each of the others."""
    name = name_of(turn.session, turn.profile.person_id)
    use, self_coached = ForecastUse(turn.profile.forecast), turn.self_coached
    text = use_words.view(
        name, use, self_coached=self_coached, rests="" if self_coached else _rests_on(turn, use)
    )
    rewrite(turn, text, _buttons(turn.profile))


def _rests_on(turn: OnAthlete, use: ForecastUse) -> str:
    """On how many finished weeks of others the forecast for this athlete begins."""
    if use is ForecastUse.RULES_ONLY:
        return ""
    prior = prior_for(turn.session, turn.profile)
    if prior is None:
        return use_words.rests_on(0, 0)
    if not priors_on(turn.session):
        return use_words.not_used(prior.weeks)
    return use_words.rests_on(prior.weeks, prior.athletes)


def choose(turn: OnAthlete, pressed: ChosenUse) -> None:
    """One of them is tapped; from the next check-in on it holds."""
    use = pressed.use
    if use is None or use == turn.profile.forecast:
        show(turn)
        return
    turn.profile.forecast = use
    record(turn, turn.profile.person_id, Change.FORECAST(use=use.value), by=turn.person.id)
    rewrite(turn, use_words.chosen(use), _buttons(turn.profile))


def _buttons(profile: AthleteProfile) -> Buttons:
    number = profile.person_id
    others = [
        [Button(use_words.choice(use), FORECAST_USE(number, use))]
        for use in ForecastUse
        if use != profile.forecast
    ]
    return [*others, [Button(common.back_button(), CARD(number))]]
