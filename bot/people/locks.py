"""On PostgreSQL: everybody whom a use case may concern is locked before it reads anything of them.

Whatever a use case reads and then writes hangs on people: an athlete, whoever coaches them, stands in
or is told of alerts. An athlete's turn has the athlete alone and shares the others with turns of
other athletes; the turn of somebody who coaches, stands in or is told has all of them alone. So a
coach's turn and one of their athletes' run one after the other, two athletes' side by side.
What is the coach's own and written in athletes' turns as well (what waits for them to read, when the
roster is made anew) has a lock of its own, their settings', taken when it is come to (`hold_coaches`).
The keys are taken in their order, so that no two wait for each other, and go with the transaction.
Every statement after that sees what was committed before, which READ COMMITTED grants: within the
same people it is as if there were one writer, as on SQLite, where there is one.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any
from weakref import WeakKeyDictionary

from sqlalchemy import TextClause, text
from sqlmodel import Session, select

from bot.core.timing.agenda import Subject, about
from bot.store.remembering import forget, looked_up
from bot.store.tables.coach import CoachNote, CoachSettings, SecondCoach
from bot.store.tables.people import OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import AlertRow, DecisionRow
from bot.store.writing import DRAWN_ALONG, forget_numbers, numbers_came_along

#: Advisory locks have two numbers; the first keeps these apart from those of chats and rights.
PEOPLE, DESKS = 1, 2
#: What is about nobody in particular takes its turn behind this number, which no person has.
NOBODY = 0

#: Everybody who is concerned, and whether they are to be held alone. Who acts is looked up once, and
#: what is read of them tells both: put as seven subqueries this took the server twice as long.
_CONCERNED = """
    WITH me AS MATERIALIZED (
        {me}
    ), coaching AS MATERIALIZED (
        SELECT id, for_others FROM me
        UNION ALL SELECT coach_id, FALSE FROM athlete_profile
            WHERE person_id = (SELECT id FROM me)
        UNION ALL SELECT coach_id, TRUE FROM second_coach
            WHERE person_id = (SELECT id FROM me) AND ended_at IS NULL
        UNION ALL SELECT id, TRUE FROM person WHERE second_contact_id = (SELECT id FROM me)
    ), concerned AS (
        SELECT id FROM coaching
        UNION SELECT person_id FROM second_coach
            WHERE coach_id IN (SELECT id FROM coaching) AND ended_at IS NULL
        UNION SELECT second_contact_id FROM person
            WHERE id IN (SELECT id FROM coaching) AND second_contact_id IS NOT NULL
    )
    SELECT id, id = (SELECT id FROM me) OR (SELECT bool_or(for_others) FROM coaching) AS alone
    FROM concerned ORDER BY 1
"""
_TAKING = (
    f"SELECT id, alone, CASE WHEN alone THEN pg_advisory_xact_lock({PEOPLE}, id)"
    f" ELSE pg_advisory_xact_lock_shared({PEOPLE}, id) END FROM ({_CONCERNED}) AS concerned"
)
_BY_ID = """SELECT CAST(:person AS INTEGER) AS id,
            EXISTS (SELECT 1 FROM person WHERE id = :person AND is_coach) AS for_others"""
#: Who has written, by their number at Telegram.
_BY_NUMBER = f"""SELECT coalesce(max(id), {NOBODY}) AS id,
            coalesce(bool_or(is_coach), FALSE) AS for_others
        FROM person WHERE telegram_user_id = :person"""
#: Whoever looks holds what they need to go on, so the numbers of their rows come along.
_LOOKING = f"SELECT id, alone FROM ({_CONCERNED}) AS concerned UNION ALL {DRAWN_ALONG}"
_LOOK, _LOOK_BY_NUMBER = (text(_LOOKING.format(me=me)) for me in (_BY_ID, _BY_NUMBER))
_TAKE, _TAKE_BY_NUMBER = (text(_TAKING.format(me=me)) for me in (_BY_ID, _BY_NUMBER))
_TAKE_THESE = text(
    f"SELECT CASE WHEN alone THEN pg_advisory_xact_lock({PEOPLE}, id)"
    f" ELSE pg_advisory_xact_lock_shared({PEOPLE}, id) END"
    " FROM unnest(CAST(:people AS INTEGER[]), CAST(:alone AS BOOLEAN[])) AS concerned (id, alone)"
)
_TAKE_DESKS = text(
    f"SELECT pg_advisory_xact_lock({DESKS}, id)"
    " FROM (SELECT unnest(CAST(:people AS INTEGER[])) AS id ORDER BY 1) AS sharing"
)
#: Where a session notes whom it holds, and how.
SHARED = "people shared"
#: Of so many people a process remembers who was concerned.
REMEMBERED = 20_000

_Concerned = tuple[tuple[int, bool], ...]
_last_concerned: WeakKeyDictionary[object, dict[tuple[TextClause, int], _Concerned]] = (
    WeakKeyDictionary()
)


@dataclass(slots=True)
class _Sharing:
    """People by number: those held alone, all that are held, and those whose desks are held."""

    alone: set[int] = field(default_factory=set)
    with_others: set[int] = field(default_factory=set)
    desks: set[int] = field(default_factory=set)


def hold(session: Session, person_id: int | None) -> None:
    """Lock everybody whom something about this person may concern; None: about nobody known."""
    if session.get_bind().dialect.name != "sqlite":
        _hold(session, _LOOK, _TAKE, NOBODY if person_id is None else person_id)


def _hold(session: Session, look: TextClause, take: TextClause, person: int) -> None:
    """Whoever was concerned when this person was last looked at is locked unasked; whether that is
    still everybody is looked at once they are held, as it is after any other wait.
    """
    last = _last_concerned.setdefault(session.get_bind(), {})
    values = {"person": person}
    if held := last.get((look, person), ()):
        people, alone = zip(*held, strict=True)
        looked_up(session, _TAKE_THESE, {"people": _array(people), "alone": _array(alone)})
    else:
        held = _pairs(looked_up(session, take, values))
    # Who is concerned may have changed since, or while we waited for them.
    while not set(concerned := _pairs(found := looked_up(session, look, values))) <= set(held):
        held += _pairs(looked_up(session, take, values))
    if len(last) >= REMEMBERED:
        last.clear()
    last[look, person] = concerned
    numbers_came_along(session, [number for number, alone in found if alone is None])
    sharing = session.info.setdefault(SHARED, _Sharing())
    sharing.alone |= {one for one, alone in held if alone}
    sharing.with_others |= {one for one, _ in held}


def _array(values: Sequence[object]) -> str:
    """As the server writes an array: the driver would take longer over a list than the server."""
    return f"{{{','.join(map(str, values))}}}"


def _pairs(rows: Sequence[Sequence[Any]]) -> _Concerned:
    return tuple((row[0], row[1]) for row in rows if row[1] is not None)


def hold_coaches(session: Session) -> None:
    """Lock what is the coach's own, of everybody whom this turn shares with others: to be called before
    it is read in order to write it. It is read anew from here on.
    """
    sharing = session.info.get(SHARED)
    people = sharing.with_others - sharing.alone - sharing.desks if sharing is not None else ()
    if sharing is not None and people:
        session.flush()
        looked_up(session, _TAKE_DESKS, {"people": sorted(people)})
        sharing.desks |= people
        forget(session, CoachSettings, CoachNote, AgendaRow)
        forget_numbers(session)
        for row in session:
            if isinstance(row, CoachSettings | CoachNote):
                session.expire(row)


def hold_sender(session: Session, telegram_user_id: int) -> None:
    """The same for whoever has written."""
    if session.get_bind().dialect.name != "sqlite":
        _hold(session, _LOOK_BY_NUMBER, _TAKE_BY_NUMBER, telegram_user_id)


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
