"""A morning's forecast, worked out before its answers are taken: while nothing is locked, and from a
guess at what they will be taken for. A wrong guess costs time and nothing else.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime, time, timedelta
from zoneinfo import ZoneInfo

from sqlalchemy import bindparam, func
from sqlmodel import Session, col, select

from bot.checkin.checkins import row_with, with_note
from bot.checkin.flow import CHECK_IN
from bot.checkin.typed import morning_in
from bot.core.chat.buttons import UnreadableError
from bot.core.timing.instants import local_instant
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
    select(AthleteProfile.person_id, AthleteProfile.zone, func.max(CheckInRow.date))
    .select_from(Person)
    .join(AthleteProfile, col(AthleteProfile.person_id) == Person.id)
    .join(EventRow, col(EventRow.athlete_id) == Person.id)
    .join(CheckInRow, col(CheckInRow.athlete_id) == Person.id)
    .where(
        Person.chat_id == bindparam("chat"),
        col(EventRow.active).is_(True),
        AthleteProfile.forecast != ForecastUse.RULES_ONLY,
    )
    .group_by(col(AthleteProfile.person_id), col(AthleteProfile.zone))
)


#: For so long nobody is looked up again who was not followed.
LOOK_AGAIN = timedelta(days=1)


def foresee(
    session: Session, context: Context, chat_id: int, read: Callable[[], Incoming | None]
) -> datetime | None:
    """Work out what the answer to this may have to ask the model, where it tells a morning. Returns
    until when nothing in this chat will ask it, as things stand; None where something may at any time.
    """
    found = session.exec(_FOLLOWED, params={"chat": chat_id}).first()
    if found is None:
        return context.now + LOOK_AGAIN
    athlete_id, zone, told = found
    today = context.now.astimezone(ZoneInfo(zone or "UTC")).date()
    if told >= today:  # it has been told, and is decided anew seldom
        return local_instant(today + timedelta(days=1), time(), zone or "UTC")
    incoming = read()
    if incoming is not None and incoming.private and incoming.kind in (Kind.TEXT, Kind.TAP):
        _foresee(session, context, athlete_id, incoming)
    return None


def _foresee(session: Session, context: Context, athlete_id: int, incoming: Incoming) -> None:
    profile = get_profile(session, athlete_id)
    person = session.get_one(Person, profile.person_id)
    today = local_date(profile, context)
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
