"""A coaching ends: the athlete keeps what is theirs, the coach sees nothing of it any more."""

from __future__ import annotations

from sqlmodel import Session, select

from bot import agenda
from bot.context import Context
from bot.flows.symptom import ASKED_ABOUT_SIGNS
from bot.incoming import Incoming
from bot.messages import coach_second as words
from bot.outbox import Button, say
from bot.service import asking, health_screen, notes, prompts, ready, second_coach
from bot.service.changes import end_hold
from bot.service.open_matters import open_matters
from bot.service.people import get_person, local_date, record, speaking_to
from bot.service.tapping import answer, ask_sure, rewrite
from bot.store.desk import SecondCoach
from bot.store.people import AthleteProfile, AthleteStatus, Person


def ask_to_end(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """Ending takes a second tap, on a question that says what it means."""
    answer(session, incoming, context)
    refused = _refusal(session, profile)
    if refused:
        say(session, chat_id=coach.chat_id, text=refused, now=context.now)
        return
    text = words.end_sure(get_person(session, profile.person_id).first_name)
    yes = Button(words.end_yes_button(), f"c:end-yes:{profile.person_id}")
    no = Button(words.end_no_button(), f"c:end-no:{profile.person_id}")
    ask_sure(session, coach, text, yes, no, context)


def end(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The relation is over, and both are told."""
    answer(session, incoming, context)
    refused = _refusal(session, profile)
    if refused:
        rewrite(session, incoming, refused, context)
        return
    athlete = get_person(session, profile.person_id)
    record(session, profile.person_id, "coach ended", context, by=coach.id)
    part(session, profile, coach, context)
    rewrite(session, incoming, words.ended(athlete.first_name), context)
    with speaking_to(athlete):
        text = words.athlete_told_ended(coach.first_name)
        say(session, chat_id=athlete.chat_id, text=text, now=context.now)


def part(session: Session, profile: AthleteProfile, coach: Person, context: Context) -> None:
    """Nobody coaches the athlete from here on, and nothing waits to be asked or told of them."""
    let_go(session, profile, coach, context)
    end_hold(session, profile.person_id, local_date(profile, context), context)
    # Nobody else coaches them: what they keep is theirs alone until they take up an invitation.
    profile.coach_id, profile.status = profile.person_id, AthleteStatus.ENDED
    session.add(profile)
    agenda.cancel(session, subject=prompts.subject(profile))
    for question in asking.open_questions(session, get_person(session, profile.person_id)):
        # Whether a doubtful word meant a warning sign is still to be known, for the athlete's sake.
        if question.subject_id == profile.person_id and question.flow not in ASKED_ABOUT_SIGNS:
            asking.close(session, question, context)


def let_go(session: Session, profile: AthleteProfile, coach: Person, context: Context) -> None:
    """Whoever stood beside this coach for this one athlete does no more; held notes go untold."""
    beside = select(SecondCoach).where(
        SecondCoach.athlete_id == profile.person_id, SecondCoach.coach_id == coach.id
    )
    for row in session.exec(beside).all():
        if row.ended_at is None:
            second_coach.end(session, row, context)
    notes.forget_held(session, profile.person_id)


def keep(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    answer(session, incoming, context)
    rewrite(session, incoming, words.goes_on(), context)


def take_up(
    session: Session, person: Person, profile: AthleteProfile, coach: Person, context: Context
) -> None:
    """Another coach's invitation, after an end: everything that was is there again."""
    profile.coach_id = coach.id or 0
    waits = health_screen.has_to_wait(profile)
    profile.status = AthleteStatus.DOCTOR_FIRST if waits else AthleteStatus.ACTIVE
    session.add(profile)
    record(session, profile.person_id, "coach began", context, by=coach.id)
    own = coach.id == person.id
    with speaking_to(person):
        text = words.taken_up_own() if own else words.athlete_told_taken_up(coach.first_name)
        say(session, chat_id=person.chat_id, text=text, now=context.now)
    if not own:
        with speaking_to(coach):
            text = words.taken_up(person.first_name)
            say(session, chat_id=coach.chat_id, text=text, now=context.now)
    prompts.schedule(session, profile, context=context)
    ready.schedule(session, profile, context)


def _refusal(session: Session, profile: AthleteProfile) -> str:
    if profile.coach_id == profile.person_id:
        return words.end_own()
    if open_matters(session, profile):
        return words.end_waits(get_person(session, profile.person_id).first_name)
    return ""
