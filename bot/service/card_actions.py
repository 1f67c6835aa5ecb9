"""What the buttons of an athlete's card do, where it is a matter of a tap or two."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.incoming import Incoming
from bot.messages import coach as words
from bot.messages import coach_plan as plan_words
from bot.messages import why as why_words
from bot.outbox import Button, say
from bot.service import health_screen, onboarding
from bot.service.alert_taps import alert_tapped
from bot.service.card import card
from bot.service.deciding import latest_decision
from bot.service.people import get_person, local_date, record, speaking_to
from bot.service.planning import week_changed
from bot.service.signoff_taps import ask_day_by_hand, sign_tapped
from bot.service.tapping import answer, ask_sure, rewrite
from bot.service.week import current_week
from bot.store.people import AthleteProfile, AthleteStatus, Person

BUTTONS_IN_A_ROW = 4


def show_why(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The latest decision with its trace and sources, as the athlete sees it."""
    answer(session, incoming, context)
    own = coach.id == profile.person_id
    name = get_person(session, profile.person_id).first_name
    decided = latest_decision(session, profile.person_id)
    if decided is None:
        text = words.nothing_decided_yet(name, own=own)
    else:
        why = why_words.why_message(
            decided.decision, profile.weight_unit, profile.volume_unit, own=own
        )
        text = words.why_as_seen(name, why, own=own)
    say(session, chat_id=coach.chat_id, text=text, now=context.now)


def show_answers(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """What was answered at the start."""
    answer(session, incoming, context)
    name = get_person(session, profile.person_id).first_name
    text = (
        words.answers_as_given(name, onboarding.answers_lines(profile))
        if profile.baseline
        else plan_words.no_measures_yet(name)
    )
    say(session, chat_id=coach.chat_id, text=text, now=context.now)


def sign_from_card(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """Buttons "c:sign:ATHLETE:approve|other|keep:ID": the word on a proposal; the card follows."""
    sign_tapped(session, coach, rest, incoming, context)
    _again(session, coach, profile, incoming, context)


def acknowledge_from_card(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """Buttons "c:ack:ATHLETE:ID"."""
    alert_tapped(session, coach, ["ack", *rest], incoming, context)
    _again(session, coach, profile, incoming, context)


def _again(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    incoming: Incoming,
    context: Context,
) -> None:
    text, buttons = card(session, coach, profile, context)
    rewrite(session, incoming, text, context, buttons)


def set_by_hand(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """First the days that are left, as buttons; then, for the one tapped, the question."""
    answer(session, incoming, context)
    week, today = current_week(session, profile), local_date(profile, context)
    ahead = [
        day.days_out for day in (week.plan if week is not None else ())
        if week is not None and week.date_of(day.days_out) >= today
    ]  # fmt: skip
    named = int(rest[0]) if rest and rest[0].isdigit() else None
    if week is None or not ahead:
        say(session, chat_id=coach.chat_id, text=words.no_such_day(), now=context.now)
        return
    if named in ahead:
        ask_day_by_hand(session, coach, profile, week.date_of(named), context)
        return
    days = [
        Button(plan_words.day_button(out), f"c:hand:{profile.person_id}:{out}") for out in ahead
    ]
    rows = [days[i : i + BUTTONS_IN_A_ROW] for i in range(0, len(days), BUTTONS_IN_A_ROW)]
    say(session, chat_id=coach.chat_id, text=words.which_day(), buttons=rows, now=context.now)


def turn_tomorrow(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """Whether a morning sets the day that begins, or always the day after."""
    profile.always_tomorrow = not profile.always_tomorrow
    session.add(profile)
    record(
        session, profile.person_id, "always tomorrow", context, by=coach.id,
        on=profile.always_tomorrow,
    )  # fmt: skip
    said = words.always_tomorrow_changed(always_tomorrow=profile.always_tomorrow)
    answer(session, incoming, context, said)
    _again(session, coach, profile, incoming, context)


def ask_doctor(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """A doctor's word is noted on a second tap only."""
    answer(session, incoming, context)
    if profile.status != AthleteStatus.DOCTOR_FIRST:
        say(session, chat_id=coach.chat_id, text=words.doctor_not_waiting(), now=context.now)
        return
    name = get_person(session, profile.person_id).first_name
    text = words.doctor_sure(name, own=coach.id == profile.person_id)
    yes = Button(words.doctor_yes_button(), f"c:doctor-yes:{profile.person_id}")
    no = Button(words.not_yet_button(), f"c:doctor-no:{profile.person_id}")
    ask_sure(session, coach, text, yes, no, context)


def doctor_said_yes(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    answer(session, incoming, context)
    if profile.status != AthleteStatus.DOCTOR_FIRST:
        rewrite(session, incoming, words.doctor_not_waiting(), context)
        return
    if health_screen.held_by_floor(session, coach, profile, incoming, context):
        return
    profile.status, profile.cleared_at = AthleteStatus.ACTIVE, context.now
    session.add(profile)
    record(session, profile.person_id, "doctor's word noted", context, by=coach.id)
    own = coach.id == profile.person_id
    athlete = get_person(session, profile.person_id)
    rewrite(session, incoming, words.doctor_noted(athlete.first_name, own=own), context)
    if not own:
        with speaking_to(athlete):
            text = words.athlete_told_doctor(coach.first_name)
            say(session, chat_id=athlete.chat_id, text=text, now=context.now)
    week_changed(session, coach, profile, context, because="plan-changed", was_complete=False)


def doctor_not_yet(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    answer(session, incoming, context)
    rewrite(session, incoming, words.left_waiting(), context)
