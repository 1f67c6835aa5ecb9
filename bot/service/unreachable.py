"""Somebody stopped the bot, or is gone: who has to know."""

from __future__ import annotations

from sqlmodel import Session, col, select

from bot.context import Context
from bot.messages import coach as words
from bot.messages import coach_second as second_words
from bot.outbox import say
from bot.service.alerts import coach_gone, second_contact
from bot.service.people import athletes_of, get_person, profile_of, record, speaking_to
from bot.service.rights import given_to
from bot.store.people import AthleteStatus, Person


def became_unreachable(session: Session, person: Person, context: Context) -> None:
    """Note it once, and tell those who count on this person."""
    if not person.reachable:
        return
    person.reachable = False
    session.add(person)
    profile = profile_of(session, person.id)
    if (
        profile is not None
        and profile.coach_id != person.id
        and profile.status != AthleteStatus.DECLINED
    ):
        record(session, profile.person_id, "unreachable", context, by=None)
        coach = get_person(session, profile.coach_id)
        with speaking_to(coach):
            text = words.athlete_unreachable(person.first_name)
            say(session, chat_id=coach.chat_id, text=text, now=context.now)
    coaches = select(Person).where(Person.second_contact_id == person.id)
    for coach in session.exec(coaches.order_by(col(Person.id))).all():
        with speaking_to(coach):
            text = words.contact_unreachable(person.first_name)
            say(session, chat_id=coach.chat_id, text=text, now=context.now)
    for coach_id in dict.fromkeys(row.coach_id for row in given_to(session, person)):
        coach = get_person(session, coach_id)
        with speaking_to(coach):
            text = second_words.unreachable(person.first_name)
            say(session, chat_id=coach.chat_id, text=text, now=context.now)
    if person.is_coach:
        contact = second_contact(session, person)
        if contact is not None and athletes_of(session, person):
            with speaking_to(contact):
                text = words.coach_unreachable(person.first_name)
                say(session, chat_id=contact.chat_id, text=text, now=context.now)
        coach_gone(session, person, context)
