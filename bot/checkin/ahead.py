"""A morning's forecast, worked out before its answers are taken: while nothing is locked, and from a
guess at what they will be taken for. A wrong guess costs time and nothing else.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import timedelta

from sqlalchemy import bindparam, func
from sqlmodel import Session, col, select

from bot.checkin.checkins import row_with, with_note
from bot.checkin.flow import CHECK_IN
from bot.checkin.typed import morning_in
from bot.core.chat.buttons import UnreadableError
from bot.core.turn import Context, Incoming, Kind
from bot.decision.deciding import decided_on
from bot.dialogue import asking
from bot.dialogue.flow import Answers, InvalidAnswer, given_by
from bot.people.people import get_profile, local_date
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.week import CheckInRow, EventRow
from bot.week.cases import build_case
from bot.week.load import checkin_row, current_week
from engine.values.case import ForecastUse

#: Whoever has told mornings before, and whose forecast is asked: for nobody else does it take long.
_FOLLOWED = (
    select(AthleteProfile.person_id, func.max(CheckInRow.date))
    .select_from(Person)
    .join(AthleteProfile, col(AthleteProfile.person_id) == Person.id)
    .join(EventRow, col(EventRow.athlete_id) == Person.id)
    .join(CheckInRow, col(CheckInRow.athlete_id) == Person.id)
    .where(
        Person.chat_id == bindparam("chat"),
        col(EventRow.active).is_(True),
        AthleteProfile.forecast != ForecastUse.RULES_ONLY,
    )
    .group_by(col(AthleteProfile.person_id))
)


def foresee(
    session: Session, context: Context, chat_id: int, read: Callable[[], Incoming | None]
) -> None:
    """Work out what the answer to this may have to ask the model, where it tells a morning."""
    found = session.exec(_FOLLOWED, params={"chat": chat_id}).first()
    if found is None or found[1] > context.now.date() + timedelta(days=1):
        return
    incoming = read()
    if incoming is None or not incoming.private or incoming.kind not in (Kind.TEXT, Kind.TAP):
        return
    profile = get_profile(session, found[0])
    person = session.get_one(Person, profile.person_id)
    today = local_date(profile, context)
    if found[1] >= today:
        return  # it has been told, and is decided anew seldom
    answers = (
        _tapped(session, person, incoming, context)
        if incoming.kind is Kind.TAP
        else _typed(session, person, profile, incoming, context)
    )
    week = current_week(session, profile)
    if answers is None or answers.get("_date") != today.isoformat() or week is None:
        return
    if CHECK_IN.next_step(answers) is not None:
        return  # something is asked first
    row = row_with(checkin_row(session, profile.person_id, today), profile, with_note(answers))
    row.answered_at = context.now
    decided_on(session, build_case(session, week, row))


def _typed(
    session: Session, person: Person, profile: AthleteProfile, incoming: Incoming, context: Context
) -> Answers | None:
    """With a text as the answer to what was asked last; else with the morning that it tells."""
    text = incoming.text
    if text.startswith("/"):
        return None
    asked = asking.open_questions(session, person)
    if asked and asked[-1].flow == CHECK_IN.id:
        answered = _with(asked[-1], asked[-1].step, text, context)
        if answered is not None:
            return answered
    if not any(map(str.isdigit, text)):
        return None
    told = morning_in(session, person, profile, text, local_date(profile, context))
    return told.answers if told is not None else None


def _tapped(
    session: Session, person: Person, incoming: Incoming, context: Context
) -> Answers | None:
    if not asking.ANSWER.begins(incoming.text):
        return None
    try:
        number, key, value = asking.ANSWER.read(incoming.text)
    except UnreadableError:
        return None
    question = session.get(OpenQuestion, number)
    if question is None or question.person_id != person.id or question.flow != CHECK_IN.id:
        return None
    return _with(question, key, value, context)


def _with(question: OpenQuestion, key: str, text: str, context: Context) -> Answers | None:
    """What has been answered once this is the answer to that step; None where it cannot be."""
    step = CHECK_IN.step(key)
    if step is None or step.many or question.closed_at is not None or key != question.step:
        return None
    try:
        answer = asking.read_answer(step, text, question, context)
    except InvalidAnswer:
        return None
    return question.answers | given_by(step, answer)
