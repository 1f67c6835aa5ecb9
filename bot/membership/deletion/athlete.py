"""An athlete has everything deleted that is kept about them."""

from __future__ import annotations

from functools import partial
from typing import Any

from sqlalchemy import and_, delete, or_
from sqlalchemy import select as pick
from sqlmodel import Session, col, select

from bot.alerts.alerts import to_acknowledge
from bot.core.chat.outbox import Button, say, set_menu
from bot.core.timing.agenda import Subject
from bot.core.turn import Act, ChatTurn
from bot.decision.flow_figure import OTHER_FIGURE
from bot.direct.flow import PASS_ON
from bot.membership.buttons import GONE, Gone, IsGone
from bot.membership.deletion import coach as coach_deletion
from bot.membership.deletion import removal, told_others, words
from bot.membership.flow_invitations import CHANGE_COACH
from bot.people.people import (
    drop_pending_entries,
    get_person,
    given_to,
    others_coaching,
    profile_of,
)
from bot.people.telling import rewrite, say_to
from bot.pictures.photos.photo_rows import delete_all_photos
from bot.store.base import id_of
from bot.store.tables import metadata
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.week import AlertRow, DecisionRow, EventRow
from bot.words.common import keep_it_button, nothing_deleted


def ask(turn: Act) -> None:
    """/delete_my_data: what goes, what stays, and a second look."""
    profile = profile_of(turn.session, turn.person.id)
    if profile is None:
        coach_deletion.ask(turn)
        return
    coach = get_person(turn.session, profile.coach_id)
    text = words.ask(coach.first_name, self_coached=coach.id == turn.person.id)
    buttons = [
        [Button(words.yes_button(), GONE(Gone.YES)), Button(keep_it_button(), GONE(Gone.NO))]
    ]
    if coach_deletion.is_more_than_an_athlete(turn.session, turn.person):
        text += "\n\n" + words.more_than_an_athlete()
        buttons.append([Button(words.all_button(), GONE(Gone.ALL))])
    say_to(turn, turn.person, text, buttons=buttons)


def tapped(turn: Act, pressed: IsGone) -> None:
    """The second tap."""
    profile = profile_of(turn.session, turn.person.id)
    if pressed.what is Gone.ALL:
        coach_deletion.ask(turn)
    elif pressed.what is Gone.ALL_YES:
        if coach_deletion.agreed(turn, pressed.mark):
            if profile is not None:
                _delete(turn, turn.person, profile, last=False)
            coach_deletion.delete_all(turn, turn.person)
    elif pressed.what is Gone.NO:
        rewrite(turn, nothing_deleted())
    elif profile is None:
        rewrite(turn, words.nothing_there())
    else:
        _delete(turn, turn.person, profile)


def _delete(turn: ChatTurn, person: Person, profile: AthleteProfile, *, last: bool = True) -> None:
    person_id, chat_id = profile.person_id, person.chat_id
    coaches = others_coaching(turn.session, profile)
    told, who = (
        told_others.chats_told(turn.session, person_id),
        told_others.about(turn.session, person),
    )
    urgent = bool(to_acknowledge(turn.session, person_id))
    delete_all_photos(turn, person_id)
    _delete_traffic(turn.session, person_id, chat_id, turn.incoming.update_id)
    _delete_rows(turn.session, person_id)
    # What the session remembers of the rows is out of date now.
    drop_pending_entries(turn.session)
    turn.session.expire_all()
    if last and _delete_person(turn.session, person_id):
        set_menu(turn, chat_id=chat_id, commands=())
    told_others.forget(turn.session, told, who)
    if coaches:
        told_others.look_again(turn, id_of(coaches[0]), told, who)
    if last:
        say(turn, chat_id=chat_id, text=words.done())
    for coach in coaches:
        say_to(
            turn, coach, partial(words.coach_told, turn.incoming.first_name, warning_open=urgent)
        )


def _delete_traffic(session: Session, person_id: int, chat_id: int, update_id: int) -> None:
    """What was said and what was due."""
    subjects = [Subject.ATHLETE(person_id)]
    for subject, ids in (
        (Subject.ALERT, select(AlertRow.id).where(AlertRow.athlete_id == person_id)),
        (Subject.DECISION, select(DecisionRow.id).where(DecisionRow.athlete_id == person_id)),
        (Subject.QUESTION, select(OpenQuestion.id).where(OpenQuestion.person_id == person_id)),
    ):
        subjects += [subject(number) for number in session.exec(ids)]
    removal.delete_traffic(session, person_id, chat_id, subjects, but=update_id)


def _delete_rows(session: Session, person_id: int) -> None:
    """Every row about the athlete, in whatever table: those of an athlete, of their events, and the
    questions put to them or about them.
    """
    events = pick(col(EventRow.id)).where(col(EventRow.athlete_id) == person_id)
    decisions = pick(col(DecisionRow.id)).where(col(DecisionRow.athlete_id) == person_id)
    session.connection().execute(
        delete(OpenQuestion).where(
            or_(
                col(OpenQuestion.person_id) == person_id,
                and_(
                    col(OpenQuestion.subject_id) == person_id,
                    col(OpenQuestion.flow).not_in((OTHER_FIGURE.id, CHANGE_COACH.id)),
                ),
                and_(
                    col(OpenQuestion.flow) == OTHER_FIGURE.id,
                    col(OpenQuestion.subject_id).in_(decisions),
                ),
            )
        )
    )
    named = select(OpenQuestion).where(OpenQuestion.flow == PASS_ON.id)
    for question in session.exec(named).all():
        if person_id in [number for number, _ in question.answers.get("_athletes", ())]:
            session.delete(question)
    session.flush()
    for table in reversed(metadata.sorted_tables):
        about: list[Any] = []
        if "athlete_id" in table.c:
            about.append(table.c.athlete_id == person_id)
        if "event_id" in table.c and table.name != EventRow.__tablename__:
            about.append(table.c.event_id.in_(events))
        if table.name == AthleteProfile.__tablename__:
            about.append(table.c.person_id == person_id)
        if about:
            session.connection().execute(delete(table).where(or_(*about)))


def _delete_person(session: Session, person_id: int) -> bool:
    """The person too, where they are nothing else here: no coach, stand-in or contact."""
    person = get_person(session, person_id)
    is_contact = select(Person.id).where(Person.second_contact_id == person_id)
    if person.is_coach or session.exec(is_contact).first() or given_to(session, person):
        return False
    removal.remove_person(session, person)
    return True
