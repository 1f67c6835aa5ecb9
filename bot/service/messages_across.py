"""A word from the coach to an athlete, and back."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.flows.coach_message import TO_ATHLETE, TO_COACH
from bot.incoming import Incoming
from bot.messages import coach as words
from bot.outbox import Button, say
from bot.service import asking
from bot.service.people import get_person, own_athlete, profile_of, record, speaking_to
from bot.service.tapping import answer
from bot.store.people import AthleteProfile, OpenQuestion, Person


def ask_message(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The card's button for a message."""
    answer(session, incoming, context)
    asking.open_question(
        session, coach, TO_ATHLETE, context=context, subject_id=profile.person_id,
        answers={"_name": get_person(session, profile.person_id).first_name},
    )  # fmt: skip


def message_given(
    session: Session, coach: Person, question: OpenQuestion, context: Context
) -> None:
    profile = own_athlete(session, coach, question.subject_id or 0)
    if profile is None:
        say(session, chat_id=coach.chat_id, text=words.not_your_athlete(), now=context.now)
        return
    athlete = get_person(session, profile.person_id)
    with speaking_to(athlete):
        text = words.from_coach(coach.first_name, question.answers["text"])
        button = [[Button(words.reply_button(), "reply:coach")]]
        say(session, chat_id=athlete.chat_id, text=text, now=context.now, buttons=button)
    _confirm(session, coach, athlete, context)
    record(
        session, profile.person_id, "message to athlete", context, by=coach.id,
        text=question.answers["text"],
    )  # fmt: skip


def reply_tapped(
    session: Session, athlete: Person, _arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """The athlete's button under a coach's message."""
    answer(session, incoming, context)
    profile = profile_of(session, athlete.id)
    assert profile is not None
    asking.open_question(
        session, athlete, TO_COACH, context=context, subject_id=athlete.id,
        answers={"_coach": get_person(session, profile.coach_id).first_name},
    )  # fmt: skip


def reply_given(
    session: Session, athlete: Person, question: OpenQuestion, context: Context
) -> None:
    profile = profile_of(session, athlete.id)
    assert profile is not None
    coach = get_person(session, profile.coach_id)
    with speaking_to(coach):
        text = words.from_athlete(athlete.first_name, question.answers["text"])
        button = [[Button(words.reply_button(), f"c:message:{profile.person_id}")]]
        say(session, chat_id=coach.chat_id, text=text, now=context.now, buttons=button)
    _confirm(session, athlete, coach, context)
    record(
        session, profile.person_id, "message to coach", context, by=athlete.id,
        text=question.answers["text"],
    )  # fmt: skip


def _confirm(session: Session, sender: Person, reader: Person, context: Context) -> None:
    said = words.message_sent if reader.reachable else words.message_may_not_arrive
    say(session, chat_id=sender.chat_id, text=said(reader.first_name), now=context.now)
