"""A coaching ends: the athlete keeps what is theirs, the coach sees nothing of it any more."""

from __future__ import annotations

from functools import partial

from sqlmodel import Session, select

from bot.alerts import notes
from bot.core.chat.outbox import Button
from bot.core.timing import agenda
from bot.core.turn import OnAthlete, Turn
from bot.dialogue import asking
from bot.membership.buttons import END_NO, END_YES
from bot.membership.onboarding import health_screen
from bot.membership.pending_items import has_pending_items
from bot.membership.second import second_coach, words
from bot.membership.words_leaving import goes_on
from bot.people.changes import Change
from bot.people.people import get_person, local_date, name_of, record
from bot.people.telling import answer, ask_sure, rewrite, say_to
from bot.readiness import readiness as ready
from bot.safety.flow_symptom import ASKED_ABOUT_SIGNS
from bot.store.base import id_of
from bot.store.tables.coach import SecondCoach
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.week import prompts
from bot.week.snapshots import end_hold


def ask_to_end(turn: OnAthlete) -> None:
    """Ending takes a second tap, on a question that says what it means."""
    answer(turn)
    refused = _refusal(turn.session, turn.profile)
    if refused:
        say_to(turn, turn.person, refused)
        return
    text = words.end_sure(name_of(turn.session, turn.profile.person_id))
    yes = Button(words.end_yes_button(), END_YES(turn.profile.person_id))
    no = Button(words.end_no_button(), END_NO(turn.profile.person_id))
    ask_sure(turn, turn.person, text, yes, no)


def end(turn: OnAthlete) -> None:
    """The relation is over, and both are told."""
    answer(turn)
    refused = _refusal(turn.session, turn.profile)
    if refused:
        rewrite(turn, refused)
        return
    athlete = get_person(turn.session, turn.profile.person_id)
    record(turn, turn.profile.person_id, Change.COACH_ENDED, by=turn.person.id)
    part(turn, turn.profile, turn.person)
    rewrite(turn, words.ended(athlete.first_name))
    say_to(turn, athlete, lambda: words.athlete_told_ended(turn.person.first_name))


def part(turn: Turn, profile: AthleteProfile, coach: Person) -> None:
    """Nobody coaches the athlete from here on, and nothing waits to be asked or told of them."""
    let_go(turn, profile, coach)
    end_hold(turn, profile.person_id, local_date(profile, turn.context))
    # Nobody else coaches them: what they keep is theirs alone until they take up an invitation.
    profile.coach_id, profile.status = profile.person_id, AthleteStatus.ENDED
    turn.session.add(profile)
    agenda.cancel(turn.session, subject=prompts.subject(profile))
    for question in asking.open_questions(
        turn.session, get_person(turn.session, profile.person_id)
    ):
        # Whether a doubtful word meant a warning sign is still to be known, for the athlete's sake.
        if question.subject_id == profile.person_id and question.flow not in ASKED_ABOUT_SIGNS:
            asking.close(turn, question)


def let_go(turn: Turn, profile: AthleteProfile, coach: Person) -> None:
    """Whoever stood beside this coach for this one athlete does no more; held notes go untold."""
    beside = select(SecondCoach).where(
        SecondCoach.athlete_id == profile.person_id, SecondCoach.coach_id == coach.id
    )
    for row in turn.session.exec(beside).all():
        if row.ended_at is None:
            second_coach.end(turn, row)
    notes.forget_held(turn.session, profile.person_id)


def keep(turn: OnAthlete) -> None:
    answer(turn)
    rewrite(turn, goes_on())


def take_up(turn: Turn, person: Person, profile: AthleteProfile, coach: Person) -> None:
    """Another coach's invitation, after an end: everything that was is there again."""
    profile.coach_id = id_of(coach)
    waits = health_screen.has_to_wait(profile)
    profile.status = AthleteStatus.DOCTOR_FIRST if waits else AthleteStatus.ACTIVE
    turn.session.add(profile)
    record(turn, profile.person_id, Change.COACH_BEGAN, by=coach.id)
    self_coached = coach.id == person.id
    if self_coached:
        say_to(turn, person, words.taken_up_own)
    else:
        say_to(turn, person, partial(words.athlete_told_taken_up, coach.first_name))
        say_to(turn, coach, partial(words.taken_up, person.first_name))
    prompts.schedule(turn, profile)
    ready.schedule(turn, profile)


def _refusal(session: Session, profile: AthleteProfile) -> str:
    if profile.coach_id == profile.person_id:
        return words.end_own()
    if has_pending_items(session, profile):
        return words.end_waits(name_of(session, profile.person_id))
    return ""
