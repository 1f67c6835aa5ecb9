"""Somebody stopped the bot, or is gone: who has to know."""

from __future__ import annotations

from functools import partial

from sqlmodel import col, select

from bot.alerts.delivery import coach_gone, second_contact
from bot.alerts.notes import quiet_now
from bot.coach import words
from bot.core.chat.outbox import Delivery
from bot.core.turn import Turn
from bot.membership.second import words as second_words
from bot.people.changes import Change
from bot.people.people import athletes_of, get_person, profile_of, record
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
            say_to(
                turn,
                coach,
                partial(words.athlete_unreachable, person.first_name),
                how=Delivery(silent=quiet),
            )
    coaches = select(Person).where(Person.second_contact_id == person.id)
    for coach in turn.session.exec(coaches.order_by(col(Person.id))).all():
        say_to(turn, coach, partial(words.contact_unreachable, person.first_name))
    for coach_id in dict.fromkeys(row.coach_id for row in given_to(turn.session, person)):
        coach = get_person(turn.session, coach_id)
        say_to(turn, coach, partial(second_words.unreachable, person.first_name))
    if person.is_coach:
        contact = second_contact(turn.session, person)
        if contact is not None and athletes_of(turn.session, person):
            say_to(turn, contact, partial(words.coach_unreachable, person.first_name))
        coach_gone(turn, person)
