"""An athlete has everything deleted that is kept about them."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Table, and_, delete, or_, update
from sqlalchemy import select as pick
from sqlmodel import Session, col, select

from bot.context import Context
from bot.flows.coach_figure import OTHER_FIGURE
from bot.flows.coach_invitations import CHANGE_COACH
from bot.flows.passing_on import PASS_ON
from bot.incoming import Incoming
from bot.messages import deletion as words
from bot.outbox import Button, say, set_menu
from bot.service.alerts import open_alerts
from bot.service.people import forget_kept, get_person, profile_of, speaking_to
from bot.service.photo_rows import delete_all_photos
from bot.service.rights import others_coaching
from bot.service.tapping import answer, rewrite
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables import metadata
from bot.store.traffic import AgendaRow, FetchRow, InboxRow, OutboxRow
from bot.store.week import AlertRow, DecisionRow, EventRow
from engine.safety import Level

PERSON = "person.id"


def ask(session: Session, person: Person, _rest: str, context: Context) -> None:
    """/delete_my_data: what goes, what stays, and a second look."""
    profile = profile_of(session, person.id)
    assert profile is not None
    coach = get_person(session, profile.coach_id)
    text = words.ask(coach.first_name, context.keep_traffic_days, own=coach.id == person.id)
    yes, no = Button(words.yes_button(), "gone:yes"), Button(words.no_button(), "gone:no")
    say(session, chat_id=person.chat_id, text=text, buttons=[[yes, no]], now=context.now)


def tapped(
    session: Session, person: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Buttons "gone:yes" and "gone:no"."""
    answer(session, incoming, context)
    profile = profile_of(session, person.id)
    if profile is None:
        rewrite(session, incoming, words.nothing_there(), context)
    elif arguments == ["yes"]:
        _delete(session, person, profile, incoming, context)
    else:
        rewrite(session, incoming, words.kept(), context)


def _delete(
    session: Session, person: Person, profile: AthleteProfile, incoming: Incoming, context: Context
) -> None:
    person_id, chat_id = profile.person_id, person.chat_id
    coaches = others_coaching(session, profile)
    urgent = any(row.level != Level.ADVISORY for row in open_alerts(session, person_id))
    delete_all_photos(session, person_id, context)
    _delete_traffic(session, person_id, chat_id, incoming)
    _delete_rows(session, person_id)
    # What the session remembers of the rows is out of date now.
    forget_kept(session)
    session.expire_all()
    if _delete_person(session, person_id):
        set_menu(session, chat_id=chat_id, commands=(), now=context.now)
    say(session, chat_id=chat_id, text=words.done(), now=context.now)
    for coach in coaches:
        with speaking_to(coach):
            text = words.coach_told(incoming.first_name, warning_open=urgent)
            say(session, chat_id=coach.chat_id, text=text, now=context.now)


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
