"""On PostgreSQL: everybody whom a use case may concern is locked before it reads anything of them.

Whatever a use case reads and then writes hangs on people: an athlete, whoever coaches them, stands in
or is told of alerts. Two that share one of these run one after the other; all others side by side.
The keys are taken in their order, so that no two wait for each other, and go with the transaction.
Every statement after that sees what was committed before, which READ COMMITTED grants: within the
same people it is as if there were one writer, as on SQLite, where there is one.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from sqlalchemy import text
from sqlmodel import Session, select

from bot.core.subjects import Subject, about
from bot.store.tables.desk import SecondCoach
from bot.store.tables.people import OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import AlertRow, DecisionRow

#: Advisory locks have two numbers; the first keeps these apart from those of chats and rights.
PEOPLE = 1
#: What is about nobody in particular takes its turn behind this number, which no person has.
NOBODY = 0

_CONCERNED = """
    WITH coaching AS (
        SELECT CAST(:person AS INTEGER) AS id
        UNION SELECT coach_id FROM athlete_profile WHERE person_id = :person
        UNION SELECT coach_id FROM second_coach WHERE person_id = :person AND ended_at IS NULL
        UNION SELECT id FROM person WHERE second_contact_id = :person
    )
    SELECT id FROM coaching
    UNION SELECT person_id FROM second_coach
        WHERE coach_id IN (SELECT id FROM coaching) AND ended_at IS NULL
    UNION SELECT second_contact_id FROM person
        WHERE id IN (SELECT id FROM coaching) AND second_contact_id IS NOT NULL
"""
_LOOK = text(_CONCERNED)
_TAKE = text(
    f"SELECT id, pg_advisory_xact_lock({PEOPLE}, id) FROM ({_CONCERNED} ORDER BY 1) AS concerned"
)


def hold(session: Session, person_id: int | None) -> None:
    """Lock everybody whom something about this person may concern; None: about nobody known."""
    if session.get_bind().dialect.name == "sqlite":
        return
    values = {"person": NOBODY if person_id is None else person_id}
    held: set[int] = set()
    # Who is concerned may have changed while we waited for them.
    while not set(session.connection().scalars(_LOOK, values) if held else (-1,)) <= held:
        held |= set(session.connection().scalars(_TAKE, values))


def hold_sender(session: Session, telegram_user_id: int) -> None:
    """The same for whoever has written."""
    if session.get_bind().dialect.name != "sqlite":
        query = select(Person.id).where(Person.telegram_user_id == telegram_user_id)
        hold(session, session.exec(query).first())


def hold_chat(session: Session, chat_id: int) -> None:
    """The same for whoever has this chat."""
    if session.get_bind().dialect.name != "sqlite":
        hold(session, session.exec(select(Person.id).where(Person.chat_id == chat_id)).first())


def hold_subject(session: Session, duty: AgendaRow) -> None:
    """The same for whom a duty is about."""
    if session.get_bind().dialect.name == "sqlite":
        return
    found = about(duty)
    hold(session, SUBJECTS[found[0]](session, found[1]) if found is not None else None)


#: Whom what a duty is about concerns first of all.
SUBJECTS: Mapping[Subject, Callable[[Session, int], int | None]] = {
    Subject.ATHLETE: lambda _session, number: number,
    Subject.COACH: lambda _session, number: number,
    Subject.GONE: lambda _session, number: number,
    Subject.ALERT: lambda session, number: session.exec(
        select(AlertRow.athlete_id).where(AlertRow.id == number)
    ).first(),
    Subject.DECISION: lambda session, number: session.exec(
        select(DecisionRow.athlete_id).where(DecisionRow.id == number)
    ).first(),
    Subject.QUESTION: lambda session, number: session.exec(
        select(OpenQuestion.person_id).where(OpenQuestion.id == number)
    ).first(),
    Subject.SECOND: lambda session, number: session.exec(
        select(SecondCoach.coach_id).where(SecondCoach.id == number)
    ).first(),
}
