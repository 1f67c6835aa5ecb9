"""An athlete has everything deleted that is kept about them."""

from __future__ import annotations

from functools import partial
from typing import Any

from sqlalchemy import Table, and_, delete, or_, update
from sqlalchemy import select as pick
from sqlmodel import Session, col, select

from bot.alerts.alerts import open_alerts
from bot.core.callbacks import answer, rewrite
from bot.core.incoming import Incoming
from bot.core.outbox import Button, say, set_menu
from bot.core.turn import Act, ChatTurn
from bot.decision.flow_figure import OTHER_FIGURE
from bot.direct.flow_passing_on import PASS_ON
from bot.membership import told_others
from bot.membership import words_deletion as words
from bot.membership.buttons import GONE, IsSure, Sure
from bot.membership.flow_invitations import CHANGE_COACH
from bot.people.people import forget_kept, get_person, profile_of
from bot.people.rights import others_coaching
from bot.people.telling import say_to
from bot.photos.photo_rows import delete_all_photos
from bot.store.base import id_of
from bot.store.tables import metadata
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow, FetchRow, InboxRow, OutboxRow
from bot.store.tables.week import AlertRow, DecisionRow, EventRow
from engine.safety import Level

PERSON = "person.id"


def ask(turn: Act) -> None:
    """/delete_my_data: what goes, what stays, and a second look."""
    profile = profile_of(turn.session, turn.person.id)
    assert profile is not None
    coach = get_person(turn.session, profile.coach_id)
    text = words.ask(coach.first_name, own=coach.id == turn.person.id)
    yes, no = Button(words.yes_button(), GONE(Sure.YES)), Button(words.no_button(), GONE(Sure.NO))
    say_to(turn, turn.person, text, buttons=[[yes, no]])


def tapped(turn: Act, pressed: IsSure) -> None:
    """The second tap."""
    answer(turn)
    profile = profile_of(turn.session, turn.person.id)
    if profile is None:
        rewrite(turn, words.nothing_there())
    elif pressed.sure is Sure.YES:
        _delete(turn, turn.person, profile)
    else:
        rewrite(turn, words.kept())


def _delete(turn: ChatTurn, person: Person, profile: AthleteProfile) -> None:
    person_id, chat_id = profile.person_id, person.chat_id
    coaches = others_coaching(turn.session, profile)
    told, who = (
        told_others.chats_told(turn.session, person_id),
        told_others.about(turn.session, person),
    )
    urgent = any(row.level != Level.ADVISORY for row in open_alerts(turn.session, person_id))
    delete_all_photos(turn, person_id)
    _delete_traffic(turn.session, person_id, chat_id, turn.incoming)
    _delete_rows(turn.session, person_id)
    # What the session remembers of the rows is out of date now.
    forget_kept(turn.session)
    turn.session.expire_all()
    if _delete_person(turn.session, person_id):
        set_menu(turn.session, chat_id=chat_id, commands=(), now=turn.now)
    told_others.forget(turn.session, told, who)
    if coaches:
        told_others.look_again(turn, id_of(coaches[0]), told, who)
    say(turn.session, chat_id=chat_id, text=words.done(), now=turn.now)
    for coach in coaches:
        say_to(
            turn, coach, partial(words.coach_told, turn.incoming.first_name, warning_open=urgent)
        )


def _delete_traffic(session: Session, person_id: int, chat_id: int, incoming: Incoming) -> None:
    """What was said and what was due; a message that is being sent at this moment is left to be so."""
    subjects = [f"athlete:{person_id}"]
    for kind, ids in (
        ("alert", select(AlertRow.id).where(AlertRow.athlete_id == person_id)),
        ("decision", select(DecisionRow.id).where(DecisionRow.athlete_id == person_id)),
        ("question", select(OpenQuestion.id).where(OpenQuestion.person_id == person_id)),
    ):
        subjects += [f"{kind}:{number}" for number in session.exec(ids)]
    waiting = col(OutboxRow.status) != "sending"
    not_an_answer = col(OutboxRow.method) != "answerCallbackQuery"
    for statement in (
        delete(AgendaRow).where(col(AgendaRow.subject).in_(subjects)),
        delete(FetchRow).where(col(FetchRow.person_id) == person_id),
        delete(InboxRow).where(
            col(InboxRow.chat_id) == chat_id, col(InboxRow.update_id) != incoming.update_id
        ),
        delete(OutboxRow).where(col(OutboxRow.chat_id) == chat_id, waiting, not_an_answer),
    ):
        session.connection().execute(statement)


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
    """The person too, where they are nothing else here: no coach, contact or maker of what stays."""
    person = get_person(session, person_id)
    if person.is_coach or _is_needed(session, person_id):
        return False
    for table, column in _references():
        if table.c[column].nullable:
            cleared = update(table).where(table.c[column] == person_id).values({column: None})
            session.connection().execute(cleared)
    session.expunge(person)
    session.connection().execute(delete(Person).where(col(Person.id) == person_id))
    return True


def _is_needed(session: Session, person_id: int) -> bool:
    """Whether a row that stays cannot do without this person."""
    if session.exec(select(Person.id).where(Person.second_contact_id == person_id)).first():
        return True
    return any(
        session.connection().execute(pick(1).where(table.c[column] == person_id)).first()
        for table, column in _references()
        if not table.c[column].nullable
    )


def _references() -> list[tuple[Table, str]]:
    return [
        (table, column.name)
        for table in metadata.sorted_tables
        for column in table.c
        for key in column.foreign_keys
        if key.target_fullname == PERSON
    ]
