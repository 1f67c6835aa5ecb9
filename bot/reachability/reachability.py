"""Somebody stopped the bot, and who has to know; when they are back, what went past them is told.

What failed stays failed in the outbox, so that it is known; what still matters of it is said anew:
alerts, changes that wait for a coach's approval, and an athlete's target or question of this morning.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from sqlmodel import Session, col, select

from bot.alerts import alerts, delivery
from bot.alerts.delivery import coach_gone, second_contact
from bot.alerts.notes import quiet_now
from bot.checkin import checkins
from bot.checkin.flow import CHECK_IN
from bot.coach import words as coach_words
from bot.core.chat.outbox import SILENTLY, Delivery, on
from bot.core.turn import Turn
from bot.decision import to_athlete
from bot.decision.signoff import signoff
from bot.dialogue import asking
from bot.dialogue.asking import FlowBinding
from bot.membership import flow_second
from bot.people.changes import Change
from bot.people.people import (
    athletes_of,
    get_person,
    given_to,
    local_date,
    others_coaching,
    profile_of,
    record,
)
from bot.people.telling import say_to
from bot.reachability import words
from bot.safety import alert_taps
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.traffic import OutboxRow, TopicKind
from bot.store.tables.week import AlertRow


def came_back(turn: Turn, person: Person) -> None:
    """Tell them what they missed, and those who were told that they were gone."""
    _alerts_missed(turn, person)
    signoff.ask_anew(turn, person)
    profile = profile_of(turn.session, person.id)
    if profile is not None and profile.status != AthleteStatus.DECLINED:
        _morning_missed(turn, person, profile)
        record(turn, profile.person_id, Change.REACHABLE_AGAIN(), by=None)
        alerts.note(turn, profile, lambda: words.athlete_back(person.first_name))
    backed = select(Person).where(Person.second_contact_id == person.id).order_by(col(Person.id))
    told: list[tuple[Person, Callable[[str], str]]] = []
    told += [(coach, words.contact_back) for coach in turn.session.exec(backed)]
    for coach_id in dict.fromkeys(row.coach_id for row in given_to(turn.session, person)):
        told.append((get_person(turn.session, coach_id), words.second_back))
    contact = delivery.second_contact(turn.session, person) if person.is_coach else None
    if contact is not None and athletes_of(turn.session, person):
        told.append((contact, words.coach_back))
    for reader, sentence in told:
        say_to(turn, reader, partial(sentence, person.first_name), how=SILENTLY)


def _alerts_missed(turn: Turn, person: Person) -> None:
    """Alerts whose newest message to this person failed: open ones with their button."""
    failed = select(OutboxRow.topic_about).where(
        OutboxRow.chat_id == person.chat_id,
        OutboxRow.status == "failed",
        OutboxRow.topic == TopicKind.ALERT,
    )
    numbers = sorted({number for number in turn.session.exec(failed) if number is not None})
    rows = [turn.session.get(AlertRow, number) for number in numbers]
    missed = [row for row in rows if row is not None and _went_past(turn.session, row, person)]
    if missed:
        say_to(turn, person, words.missed_alerts(len(missed)))
    for row in missed:
        if row.acknowledged_at is None:
            delivery.send(turn, row, person)
            continue
        say_to(
            turn,
            person,
            alert_taps.settled_text(turn.session, row, person),
            how=Delivery(topic=delivery.topic_of(row, person)),
        )


def _went_past(session: Session, row: AlertRow, person: Person) -> bool:
    """Whether this person is still one to be told, and the newest message that told them failed."""
    profile = profile_of(session, row.athlete_id)
    if profile is None or profile.coach_id != row.coach_id or profile.status == AthleteStatus.ENDED:
        return False
    if row.acknowledged_at is not None and row.acknowledged_by is None:
        return False  # a worse one took its place, and is told itself
    newest = delivery.latest_message(session, row, person)
    return (
        newest is not None
        and newest.status == "failed"
        and person.id in {one.id for one in delivery.told_of(session, row)}
    )


def _morning_missed(turn: Turn, person: Person, profile: AthleteProfile) -> None:
    """This day's figures, where they did not arrive; else the question that waits for an answer."""
    today = local_date(profile, turn.context)
    newest = select(OutboxRow.status).where(*on(to_athlete.target_topic(profile.person_id, today)))
    if turn.session.exec(newest.order_by(col(OutboxRow.id).desc())).first() == "failed":
        to_athlete.send_target(turn, profile, today, because="")
        return
    asked = asking.open_questions(
        turn.session, person, flow=CHECK_IN.id, subject_id=profile.person_id
    )
    if asked and asked[-1].answers.get("_date") == today.isoformat():
        flows = {CHECK_IN.id: FlowBinding(CHECK_IN, checkins.finish)}
        asking.ask_again(turn, person, asked[-1], flows)


def became_unreachable(turn: Turn, person: Person) -> None:
    """Note it once, and tell those who count on this person."""
    if not person.reachable:
        return
    person.reachable = False
    profile = profile_of(turn.session, person.id)
    if profile is not None and profile.status != AthleteStatus.DECLINED:
        record(turn, profile.person_id, Change.UNREACHABLE(), by=None)
        for coach in others_coaching(turn.session, profile):
            quiet = quiet_now(turn, coach)
            say_to(
                turn,
                coach,
                partial(coach_words.athlete_unreachable, person.first_name),
                how=Delivery(silent=quiet),
            )
    coaches = select(Person).where(Person.second_contact_id == person.id)
    for coach in turn.session.exec(coaches.order_by(col(Person.id))).all():
        say_to(turn, coach, partial(coach_words.contact_unreachable, person.first_name))
    for coach_id in dict.fromkeys(row.coach_id for row in given_to(turn.session, person)):
        coach = get_person(turn.session, coach_id)
        say_to(turn, coach, partial(flow_second.unreachable, person.first_name))
    if person.is_coach:
        contact = second_contact(turn.session, person)
        if contact is not None and athletes_of(turn.session, person):
            say_to(turn, contact, partial(coach_words.coach_unreachable, person.first_name))
        coach_gone(turn, person)
