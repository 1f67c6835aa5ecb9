"""Somebody stopped the bot, or is gone: who has to know."""

from __future__ import annotations

from sqlmodel import col, select

from bot.alerts.alerts import coach_gone, second_contact
from bot.alerts.notes import quiet_now
from bot.coach import words
from bot.core.turn import Turn
from bot.membership import words_second as second_words
from bot.people.changes import Change
from bot.people.people import athletes_of, get_person, profile_of, record, speaking_to
from bot.people.rights import given_to, others_coaching
from bot.people.telling import say_to
from bot.store.tables.people import AthleteStatus, Person


def became_unreachable(turn: Turn, person: Person) -> None:
    """Note it once, and tell those who count on this person."""
    if not person.reachable:
        return
    person.reachable = False
    turn.session.add(person)
    profile = profile_of(turn.session, person.id)
    if profile is not None and profile.status != AthleteStatus.DECLINED:
        record(turn, profile.person_id, Change.UNREACHABLE, by=None)
        for coach in others_coaching(turn.session, profile):
            quiet = quiet_now(turn, coach)
            with speaking_to(coach):
                text = words.athlete_unreachable(person.first_name)
                say_to(turn, coach, text, silent=quiet)
    coaches = select(Person).where(Person.second_contact_id == person.id)
    for coach in turn.session.exec(coaches.order_by(col(Person.id))).all():
        with speaking_to(coach):
            text = words.contact_unreachable(person.first_name)
            say_to(turn, coach, text)
    for coach_id in dict.fromkeys(row.coach_id for row in given_to(turn.session, person)):
        coach = get_person(turn.session, coach_id)
        with speaking_to(coach):
            text = second_words.unreachable(person.first_name)
            say_to(turn, coach, text)
    if person.is_coach:
        contact = second_contact(turn.session, person)
        if contact is not None and athletes_of(turn.session, person):
            with speaking_to(contact):
                text = words.coach_unreachable(person.first_name)
                say_to(turn, contact, text)
        coach_gone(turn, person)
