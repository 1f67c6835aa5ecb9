"""A coach, a stand-in or a second contact has everything deleted, and nobody who relied on them is
left without knowing it.

An athlete is taken over by whoever stands in with full rights: they are known to the athlete and see
everything already. Nobody coaches the others afterwards; what is open about them is brought to
everybody who was there for alerts, once more and for the last time, and the athletes are told.
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial

from sqlalchemy import delete, or_, update
from sqlmodel import Session, col, select

from bot.alerts.alerts import open_alerts, to_acknowledge
from bot.alerts.delivery import alert_text
from bot.core.chat.outbox import Button, Delivery, say, set_menu
from bot.core.timing.agenda import Subject
from bot.core.turn import Act, ChatTurn
from bot.membership import second_coach
from bot.membership.buttons import GONE, Gone
from bot.membership.deletion import removal, told_others
from bot.membership.deletion import words as athlete_words
from bot.membership.ending import close_all, part, waiting
from bot.membership.flow_invitations import CHANGE_COACH
from bot.people.changes import Change
from bot.people.people import (
    athletes_of,
    get_person,
    given_by,
    given_to,
    name_of,
    profile_of,
    record,
    second_coaches,
)
from bot.people.telling import say_to
from bot.store.base import batches, id_of
from bot.store.tables import metadata
from bot.store.tables.coach import Rights, SecondCoach
from bot.store.tables.people import AthleteProfile, Invite, OpenQuestion, Person
from bot.store.tables.traffic import Urgency
from bot.store.tables.week import AlertRow
from bot.words.common import keep_it_button

#: A coach's own tables: what is in them is about no athlete, or noted for the coach alone.
OWN_TABLES = ("coach_desk", "plan_template", "coach_note", "taught", "second_coach")


@dataclass(frozen=True, slots=True)
class Foreseen:
    """What going would mean. `alone` and `taken`: athletes, the latter with who takes them over."""

    alone: list[AthleteProfile]
    taken: list[tuple[AthleteProfile, Person]]
    alerts: list[AlertRow]
    waiting: list[int]  # athletes for whom a change waits for approval
    contact_for: list[Person]
    stands_in: Sequence[SecondCoach]

    @property
    def mark(self) -> str:
        """The same as long as going means the same."""
        said = (
            sorted(one.person_id for one in self.alone),
            sorted((one.person_id, other.id) for one, other in self.taken),
            sorted(id_of(row) for row in self.alerts),
            sorted(self.waiting),
        )
        return hashlib.sha256(repr(said).encode()).hexdigest()[:12]


def is_more_than_an_athlete(session: Session, person: Person) -> bool:
    """Whether they coach, stand in, or are somebody's second contact."""
    return person.is_coach or bool(_contact_for(session, person) or given_to(session, person))


def foresee(session: Session, person: Person) -> Foreseen:
    alone: list[AthleteProfile] = []
    taken: list[tuple[AthleteProfile, Person]] = []
    for profile in athletes_of(session, person):
        if profile.person_id == person.id:
            continue
        beside = second_coaches(session, profile, rights=Rights.FULL)
        others = [one for one in beside if one.reachable]
        if others:
            taken.append((profile, others[0]))
        else:
            alone.append(profile)
    everybody = [*alone, *(profile for profile, _ in taken)]
    return Foreseen(
        alone,
        taken,
        [row for one in everybody for row in to_acknowledge(session, one.person_id)],
        [one.person_id for one in everybody if waiting(session, one)],
        _contact_for(session, person),
        given_to(session, person),
    )


def ask(turn: Act, before: str = "") -> None:
    """What goes, what becomes of everybody else, and a second look."""
    foreseen = foresee(turn.session, turn.person)
    yes = Button(athlete_words.yes_button(), GONE(Gone.ALL_YES, foreseen.mark))
    no = Button(keep_it_button(), GONE(Gone.NO))
    parts = [before, *_told(turn.session, turn.person, foreseen), athlete_words.sure()]
    text = "\n\n".join(part for part in parts if part)
    say_to(turn, turn.person, text, buttons=[[yes, no]])


def agreed(turn: Act, mark: str | None) -> bool:
    """Whether what was agreed to is still what going means; if not, it is asked again."""
    if mark == foresee(turn.session, turn.person).mark:
        return True
    ask(turn, athlete_words.changed())
    return False


def _told(session: Session, person: Person, foreseen: Foreseen) -> list[str]:
    def names(ids: list[int]) -> list[str]:
        return [name_of(session, one) for one in dict.fromkeys(ids)]

    said = [athlete_words.ask_coach()]
    if profile_of(session, person.id) is not None:
        said.append(athlete_words.an_athlete_too())
    if foreseen.alerts:
        said.append(athlete_words.open_alerts(names([row.athlete_id for row in foreseen.alerts])))
    if foreseen.waiting:
        said.append(athlete_words.waiting(names(foreseen.waiting)))
    for other in _takers(foreseen):
        theirs = [one.person_id for one, taker in foreseen.taken if taker.id == other.id]
        said.append(athlete_words.taken(other.first_name, names(theirs)))
    if foreseen.alone:
        said.append(athlete_words.alone(names([one.person_id for one in foreseen.alone])))
    if foreseen.stands_in:
        first = names([row.coach_id for row in foreseen.stands_in])
        said.append(athlete_words.no_stand_in_for(first))
    if foreseen.contact_for:
        said.append(
            athlete_words.no_contact_for(names([id_of(one) for one in foreseen.contact_for]))
        )
    if person.is_coach:
        said.append(athlete_words.stays())
    return [*said, athlete_words.chats_stay()]


def delete_all(turn: ChatTurn, person: Person) -> None:
    """All of it. The athlete's part, where there is one, has gone already."""
    session, number, chat_id, name = turn.session, id_of(person), person.chat_id, person.first_name
    foreseen = foresee(session, person)
    athletes = removal.athletes_naming(session, number) | {
        profile.person_id for profile in athletes_of(session, person)
    }
    chats = _chats(session, person, athletes)
    beside = given_by(session, id_of(person))
    for profile in foreseen.alone:
        _leave_alone(turn, person, profile)
    for profile, other in foreseen.taken:
        _hand_over(turn, person, profile, other)
    for other in _takers(foreseen):
        _tell_taker(turn, person, other, foreseen)
    _end_what_others_do(turn, person, foreseen, beside)
    _end_what_they_did(turn, person, foreseen)
    subjects = [Subject.COACH(number), *(Subject.SECOND(row.id) for row in beside)]
    subjects += [Subject.SECOND(row.id) for row in foreseen.stands_in]
    _delete_rows(session, number)
    removal.delete_traffic(session, number, chat_id, subjects, but=turn.incoming.update_id)
    removal.take_name_out_of_records(session, athletes, name)
    session.expire_all()
    removal.remove_person(session, get_person(session, number))
    told_others.take_name_out_of_messages(session, chats, name)
    told_others.look_for_name_again(turn, Subject.GONE(number), chats, name)
    set_menu(turn, chat_id=chat_id, commands=())
    say(turn, chat_id=chat_id, text=athlete_words.coach_done())


def _leave_alone(turn: ChatTurn, coach: Person, profile: AthleteProfile) -> None:
    """Nobody coaches this athlete from here on."""
    athlete = get_person(turn.session, profile.person_id)
    alerts = to_acknowledge(turn.session, profile.person_id)
    told = _others_for_alerts(turn.session, coach, profile) if alerts else []

    def call(reader: Person) -> str:
        texts = [
            alert_text(turn.session, row, reader, settled=athlete_words.closed) for row in alerts
        ]
        return athlete_words.please_call(coach.first_name, athlete.first_name, "\n\n".join(texts))

    for other in told:
        say_to(turn, other, partial(call, other), how=Delivery(urgency=Urgency.URGENT))
    record(turn, profile.person_id, Change.COACH_ENDED(), by=coach.id)
    close_all(turn, athlete, profile, by=id_of(coach), why=lambda _name: athlete_words.closed())
    part(turn, profile, coach)

    def alone() -> str:
        line, names = (
            athlete_words.athlete_alone(coach.first_name),
            [one.first_name for one in told],
        )
        if not alerts:
            return line
        lead = (
            athlete_words.athlete_alert_told(names)
            if names
            else athlete_words.athlete_alert_untold()
        )
        return f"{lead}\n\n{line}"

    say_to(
        turn, athlete, alone, how=Delivery(urgency=Urgency.URGENT if alerts else Urgency.ORDINARY)
    )


def _others_for_alerts(session: Session, coach: Person, profile: AthleteProfile) -> list[Person]:
    """Who else was there to be told of alerts."""
    people = second_coaches(session, profile)
    if coach.second_contact_id is not None:
        people.append(get_person(session, coach.second_contact_id))
    return list({one.id: one for one in people if one.reachable}.values())


def _hand_over(turn: ChatTurn, coach: Person, profile: AthleteProfile, other: Person) -> None:
    """Who stood in coaches the athlete; alerts and changes that wait are theirs as they stand."""
    other.is_coach = True
    for row in open_alerts(turn.session, profile.person_id):
        row.coach_id = id_of(other)
    profile.coach_id = id_of(other)
    turn.session.flush()
    record(turn, profile.person_id, Change.COACH_CHANGED(to=id_of(other)), by=None)
    athlete = get_person(turn.session, profile.person_id)
    say_to(turn, athlete, partial(athlete_words.athlete_taken, coach.first_name, other.first_name))


def _tell_taker(turn: ChatTurn, coach: Person, other: Person, foreseen: Foreseen) -> None:
    names = [
        name_of(turn.session, one.person_id)
        for one, taker in foreseen.taken
        if taker.id == other.id
    ]
    contact = other.second_contact_id is not None
    say_to(
        turn,
        other,
        partial(athlete_words.taken_over, coach.first_name, names, contact=contact),
        how=Delivery(urgency=Urgency.URGENT if foreseen.alerts else Urgency.ORDINARY),
    )


def _end_what_others_do(
    turn: ChatTurn, coach: Person, foreseen: Foreseen, beside: Sequence[SecondCoach]
) -> None:
    """Whoever stood beside this coach, or was their contact, does no more."""
    takers = {one.id for one in _takers(foreseen)}
    for number in dict.fromkeys(row.person_id for row in beside):
        if number not in takers:
            other = get_person(turn.session, number)
            say_to(turn, other, partial(athlete_words.stand_in_over, coach.first_name))
    if coach.second_contact_id is not None:
        contact = get_person(turn.session, coach.second_contact_id)
        say_to(turn, contact, partial(athlete_words.contact_over, coach.first_name))


def _end_what_they_did(turn: ChatTurn, person: Person, foreseen: Foreseen) -> None:
    """They stand in for nobody and are nobody's second contact."""
    for row in foreseen.stands_in:
        second_coach.end(turn, row)
        first = get_person(turn.session, row.coach_id)
        say_to(turn, first, partial(athlete_words.stand_in_gone, person.first_name))
    for first in foreseen.contact_for:
        first.second_contact_id = None
        say_to(turn, first, partial(athlete_words.contact_gone, person.first_name))
    turn.session.flush()


def _delete_rows(session: Session, number: int) -> None:
    profile = metadata.tables["athlete_profile"]
    # Those who never agreed name the coach too, and nobody else.
    declined = update(profile).where(profile.c.coach_id == number)
    session.connection().execute(declined.values(coach_id=profile.c.person_id))
    for name in OWN_TABLES:
        table = metadata.tables[name]
        whose = [table.c[key] for key in ("coach_id", "person_id") if key in table.c]
        session.connection().execute(
            delete(table).where(or_(*(column == number for column in whose)))
        )
    invited = or_(col(Invite.invited_by) == number, col(Invite.used_by) == number)
    asked = or_(
        col(OpenQuestion.person_id) == number,
        (col(OpenQuestion.flow) == CHANGE_COACH.id) & (col(OpenQuestion.subject_id) == number),
    )
    session.connection().execute(delete(Invite).where(invited))
    session.connection().execute(delete(OpenQuestion).where(asked))


def _chats(session: Session, person: Person, athletes: set[int]) -> set[int]:
    """Who may have been told of this person by name."""
    rows = [*given_by(session, id_of(person)), *given_to(session, person)]
    people = athletes | {one for row in rows for one in (row.coach_id, row.person_id)}
    people |= {id_of(one) for one in _contact_for(session, person)}
    people |= {person.second_contact_id} if person.second_contact_id is not None else set()
    found: set[int] = set()
    for some in batches(sorted(people - {id_of(person)})):
        found |= set(session.exec(select(Person.chat_id).where(col(Person.id).in_(some))))
    return found


def _contact_for(session: Session, person: Person) -> list[Person]:
    query = select(Person).where(Person.second_contact_id == person.id).order_by(col(Person.id))
    return list(session.exec(query))


def _takers(foreseen: Foreseen) -> list[Person]:
    return list({other.id: other for _, other in foreseen.taken}.values())
