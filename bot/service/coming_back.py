"""Somebody whose chat could not be reached is back: what went past them is told once more.

What failed stays failed in the outbox, so that it is known; what still matters of it is said anew:
alerts, changes that wait for a coach's word, and an athlete's target or question of this morning.
"""

from __future__ import annotations

from collections.abc import Callable

from sqlmodel import Session, col, select

from bot.context import Context
from bot.flows.checkin import CHECK_IN
from bot.incoming import Incoming, Kind
from bot.messages import coming_back as words
from bot.outbox import say
from bot.service import alert_taps, alerts, asking, checkins, deciding, signoff
from bot.service.asking import Registered
from bot.service.people import athletes_of, get_person, local_date, profile_of, record, speaking_to
from bot.service.rights import given_to
from bot.store.people import AthleteProfile, AthleteStatus, Person
from bot.store.traffic import OutboxRow
from bot.store.week import AlertRow


def is_away(session: Session, incoming: Incoming) -> bool:
    """Whether somebody acts here who could not be reached until now."""
    query = select(Person.reachable).where(Person.telegram_user_id == incoming.user_id)
    return incoming.kind is not Kind.BLOCKED and session.exec(query).first() is False


def came_back(session: Session, person: Person, context: Context) -> None:
    """Tell them what they missed, and those who were told that they were gone."""
    _alerts_missed(session, person, context)
    signoff.ask_anew(session, person, context)
    profile = profile_of(session, person.id)
    if profile is not None and profile.status != AthleteStatus.DECLINED:
        _morning_missed(session, person, profile, context)
        record(session, profile.person_id, "reachable again", context, by=None)
        alerts.note(session, profile, lambda: words.athlete_back(person.first_name), context)
    backed = select(Person).where(Person.second_contact_id == person.id).order_by(col(Person.id))
    told: list[tuple[Person, Callable[[str], str]]] = []
    told += [(coach, words.contact_back) for coach in session.exec(backed)]
    for coach_id in dict.fromkeys(row.coach_id for row in given_to(session, person)):
        told.append((get_person(session, coach_id), words.second_back))
    contact = alerts.second_contact(session, person) if person.is_coach else None
    if contact is not None and athletes_of(session, person):
        told.append((contact, words.coach_back))
    for reader, sentence in told:
        with speaking_to(reader):
            text = sentence(person.first_name)
            say(session, chat_id=reader.chat_id, text=text, now=context.now, silent=True)


def _alerts_missed(session: Session, person: Person, context: Context) -> None:
    """Alerts whose newest message to this person failed: open ones with their button."""
    failed = select(OutboxRow.topic).where(
        OutboxRow.chat_id == person.chat_id,
        OutboxRow.status == "failed",
        col(OutboxRow.topic).startswith("alert:"),
    )
    numbers = sorted({int(str(topic).split(":")[1]) for topic in session.exec(failed)})
    rows = [session.get(AlertRow, number) for number in numbers]
    missed = [row for row in rows if row is not None and _went_past(session, row, person)]
    if missed:
        text = words.missed_alerts(len(missed))
        say(session, chat_id=person.chat_id, text=text, now=context.now)
    for row in missed:
        if row.acknowledged_at is None:
            alerts.tell_again(session, row, person, context)
            continue
        say(
            session, chat_id=person.chat_id, now=context.now,
            text=alert_taps.settled_text(session, row, person),
            topic=alerts.topic_of(row, person),
        )  # fmt: skip


def _went_past(session: Session, row: AlertRow, person: Person) -> bool:
    """Whether this person is still one to be told, and the newest message that told them failed."""
    profile = profile_of(session, row.athlete_id)
    if profile is None or profile.coach_id != row.coach_id or profile.status == AthleteStatus.ENDED:
        return False
    if row.acknowledged_at is not None and row.acknowledged_by is None:
        return False  # a worse one took its place, and is told itself
    newest = alerts.latest_message(session, row, person)
    return (
        newest is not None
        and newest.status == "failed"
        and person.id in {one.id for one in alerts.told_of(session, row)}
    )


def _morning_missed(
    session: Session, person: Person, profile: AthleteProfile, context: Context
) -> None:
    """This day's figures, where they did not arrive; else the question that waits for an answer."""
    today = local_date(profile, context)
    newest = select(OutboxRow.status).where(
        OutboxRow.topic == deciding.target_topic(profile.person_id, today)
    )
    if session.exec(newest.order_by(col(OutboxRow.id).desc())).first() == "failed":
        deciding.send_target(session, profile, today, context=context, because="")
        return
    asked = asking.open_questions(session, person, flow=CHECK_IN.id, subject_id=profile.person_id)
    if asked and asked[-1].answers.get("_date") == today.isoformat():
        flows = {CHECK_IN.id: Registered(CHECK_IN, checkins.finish)}
        asking.ask_again(session, person, asked[-1], flows, context)
