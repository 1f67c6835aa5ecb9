"""A morning that is typed: in one line, told again, or changed by editing the message."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, timedelta
from typing import Any, NamedTuple
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.checkin import words
from bot.checkin.checkins import (
    answers_of,
    finish,
    is_answered,
    question_context,
    take,
    units_of,
    with_note,
)
from bot.checkin.flow import CHECK_IN, open_figures, read_morning
from bot.checkin.flow_reading import (
    CORRECTS,
    DOUBTS,
    FEWEST_OF_A_MORNING,
    NOTED,
    OFF_TARGET,
    ONE_FIGURE,
    TAKEN_AS,
    WHY,
    agreed,
    is_morning,
    is_whole,
    known_of,
    read_told,
    taken_from,
)
from bot.core.turn import ChatTurn, Turn
from bot.dialogue import asking
from bot.dialogue.answering import TYPED_IN
from bot.dialogue.flow import Answers, InvalidAnswer, given_by
from bot.people.people import local_date, profile_of
from bot.people.telling import say_to
from bot.plan.flow_number import read_number
from bot.safety.flow_symptom import ASKED_ABOUT_SIGNS
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.store.tables.week import CheckInRow
from bot.week.load import checkin_row, current_week
from bot.words import figures
from engine.written.oneline import CORE, Doubt, DoubtCode, Report
from engine.written.training_told import Went, how_training_went

#: One that says it was sent longer ago says it by another clock: Telegram hands on a day's at most.
_WAITS_AT_MOST = timedelta(days=7)


def one_line(turn: ChatTurn, person: Person) -> bool:
    """Take a text that nobody's question waits for as a morning, or as a part of one.

    False where it is none: then nothing has been taken, and it is for somebody else. Where it is
    True, all of it has landed: figures as answers, what was doubtful as a question, every other word
    in the note, which goes to the coach.
    """
    profile = profile_of(turn.session, person.id)
    if profile is None or profile.status != AthleteStatus.ACTIVE:
        return False
    if read_number(turn.incoming.text) is not None:
        return False  # a number of the plan ("2 days out carbs 420") is no number of the morning
    beside_another = _answers_another_question(turn.session, person)
    today = local_date(profile, turn.context)
    row = checkin_row(turn.session, profile.person_id, today)
    if row is not None and is_answered(row):
        if beside_another:
            return False
        return _put_right(turn, person, profile, row) or _change_told(turn, person, profile, row)
    told = morning_in(turn.session, person, profile, turn.incoming.text, today)
    if told is None or (beside_another and not is_whole(told.report)):
        return False
    for draft in told.drafts:
        asking.close(turn, draft)
    answers = told.answers
    if turn.incoming.message_id is not None:
        first = _first_key(told.report)
        typed_in = answers.get(TYPED_IN, {}) | {str(turn.incoming.message_id): first}
        answers[TYPED_IN] = typed_in
    _go_on(turn, person, profile, answers)
    return True


def came_late(turn: ChatTurn, person: Person) -> bool:
    """Whether a text tells a morning that was over before it got here (the bot was away meanwhile).

    Its figures are another day's, so that they must not be taken for this one's.
    """
    profile = profile_of(turn.session, person.id)
    if profile is None or profile.status != AthleteStatus.ACTIVE or profile.zone is None:
        return False
    today = local_date(profile, turn.context)
    sent = turn.incoming.sent_at
    if sent.astimezone(ZoneInfo(profile.zone)).date() >= today or turn.now - sent > _WAITS_AT_MOST:
        return False
    row = checkin_row(turn.session, profile.person_id, today)
    if row is not None and is_answered(row):
        return False
    return morning_in(turn.session, person, profile, turn.incoming.text, today) is not None


class ToldMorning(NamedTuple):
    """What a text tells of a morning: its answers with those given before, in `drafts` left open."""

    report: Report
    answers: Answers
    drafts: Sequence[OpenQuestion]


def morning_in(
    session: Session, person: Person, profile: AthleteProfile, text: str, today: date
) -> ToldMorning | None:
    """The morning that a text tells of, of an athlete who has not told theirs yet; None: it is none."""
    drafts = asking.open_questions(session, person, flow=CHECK_IN.id, subject_id=profile.person_id)
    drafts = [draft for draft in drafts if draft.answers.get("_date") == today.isoformat()]
    given = (
        drafts[-1].answers | units_of(profile)
        if drafts
        else question_context(session, profile, today)
    )
    if given.get(DOUBTS):
        return None  # what was doubtful is answered where it was asked
    report = read_morning(text, given) if drafts else read_told(text, known_of(given, ()))
    asked = bool(drafts) and (bool(open_figures(given)) or report.labelled)
    if not is_morning(report, asked=asked, whole_week=_in_week(session, profile, today)):
        return None
    return ToldMorning(report, given | taken_from(report, given), drafts)


def _first_key(report: Report) -> str:
    told = [*report.answers, *(doubt.answer for doubt in report.doubts)]
    return next((key for key in told if CHECK_IN.step(key) is not None), CORE[0])


def _go_on(turn: Turn, person: Person, profile: AthleteProfile, answers: Answers) -> None:
    """Ask for what is still missing or in doubt; take the morning where nothing is."""
    answers = answers | {"_greeting": ""}
    if CHECK_IN.next_step(answers) is not None:
        asking.open_question(turn, person, CHECK_IN, profile.person_id, answers)
        return
    question = OpenQuestion(
        person_id=id_of(person), flow=CHECK_IN.id, subject_id=profile.person_id,
        answers=answers, asked_at=turn.now, closed_at=turn.now,
    )  # fmt: skip
    turn.session.add(question)
    finish(turn, person, question)


def _in_week(session: Session, profile: AthleteProfile, today: date) -> bool:
    week = current_week(session, profile)
    return week is not None and week.plan.day(week.days_out(today)) is not None


def _put_right(turn: ChatTurn, person: Person, profile: AthleteProfile, row: CheckInRow) -> bool:
    """One figure, where an answer was worked out and its writer told to send the right one."""
    if not ONE_FIGURE.fullmatch(turn.incoming.text):
        return False
    query = (
        select(OpenQuestion)
        .where(OpenQuestion.person_id == person.id, OpenQuestion.flow == CHECK_IN.id)
        .order_by(col(OpenQuestion.id).desc())
        .limit(1)
    )
    question = turn.session.exec(query).first()
    if question is None or question.answers.get("_date") != row.date.isoformat():
        return False
    old = answers_of(turn.session, profile, row)
    for key in question.answers.get(TAKEN_AS, {}):
        report = read_told(turn.incoming.text, known_of(old, (key,)))
        if key not in report.answers or report.doubts:
            continue
        _take_changed(turn, profile, old, {key: report.answers[key]})
        return True
    return False


def _take_changed(
    turn: Turn, profile: AthleteProfile, old: Answers, changed: Mapping[str, Any]
) -> None:
    answers = {**old, **changed}
    lead = f"{words.changed(old, answers)}\n{words.re_decided()}"
    take(turn, profile, answers, message_id=None, lead=lead)


def _take_training(turn: ChatTurn, profile: AthleteProfile, old: Answers, went: Went) -> None:
    """How the training went, told by itself after the morning; words with a figure are noted, too."""
    words_told = turn.incoming.text.strip()
    noted = " / ".join(part for part in (old.get("note") or "", words_told) if part)
    beside = {"note": noted} if any(map(str.isdigit, words_told)) else {}
    _take_changed(turn, profile, old, {"training_done": went.value, **beside})


def _change_told(turn: ChatTurn, person: Person, profile: AthleteProfile, row: CheckInRow) -> bool:
    """A morning told again, or a figure of it: the whole replaces it, a part is asked about first."""
    old = answers_of(turn.session, profile, row)
    went = how_training_went(turn.incoming.text)
    if went is not None and old.get("_trained") and went.value != row.training_done:
        _take_training(turn, profile, old, went)
        return True
    report = read_told(turn.incoming.text, known_of(old, ()))
    if sum(1 for key in CORE if key in report.answers) == len(CORE) and not report.doubts:
        context_of_today = question_context(turn.session, profile, row.date)
        answers = with_note(context_of_today | taken_from(report, context_of_today))
        take(turn, profile, answers, message_id=turn.incoming.message_id)
        return True
    changed = {
        key: value
        for key, value in report.answers.items()
        if value is not None and value != getattr(row, key)
    }
    if report.off_target and not changed and not report.doubts:
        _ask_for_carbs(turn, person, profile, old)
        return True
    if not (report.labelled or report.told >= FEWEST_OF_A_MORNING):
        return False
    if report.note and not (len(changed) == 1 and CORRECTS.search(turn.incoming.text)):
        return False
    if not changed and not report.doubts:
        return False
    if not report.doubts and all(getattr(row, key) is None for key in changed):
        _take_changed(turn, profile, old, changed)  # it was still open: nothing told is put aside
        return True
    first = next(iter(changed), CORE[0])
    ask = Doubt(
        code=DoubtCode.CHANGE, answer=first, given=turn.incoming.text.strip(), options=(changed,)
    )
    doubts = ((ask,) if changed else ()) + report.doubts
    found = taken_from(Report(doubts=doubts), old)
    if not found[DOUBTS]:
        return False
    asking.open_question(turn, person, CHECK_IN, profile.person_id, old | found | {"_greeting": ""})
    return True


def _ask_for_carbs(turn: ChatTurn, person: Person, profile: AthleteProfile, old: Answers) -> None:
    """Of a morning that has been told: its carbs, said now not to have been on target."""
    answers = {key: value for key, value in old.items() if key != "carb_eaten_g"}
    answers |= {OFF_TARGET: True, "_greeting": "", NOTED: turn.incoming.text.strip()}
    asking.open_question(turn, person, CHECK_IN, profile.person_id, answers)


def _answers_another_question(session: Session, person: Person) -> bool:
    """Whether the latest open question takes figures and is not of a check-in: the text is its."""
    asked = [q for q in asking.open_questions(session, person) if q.flow not in ASKED_ABOUT_SIGNS]
    return bool(asked) and asked[-1].flow != CHECK_IN.id


def edited(turn: ChatTurn, person: Person) -> bool:
    """The text of an earlier message was changed: if it held an answer, the answer changes with it.

    False where it held none.
    """
    profile = profile_of(turn.session, person.id)
    if profile is None or turn.incoming.message_id is None:
        return False
    today = local_date(profile, turn.context)
    row = turn.session.exec(
        select(CheckInRow).where(
            CheckInRow.athlete_id == person.id, CheckInRow.message_id == turn.incoming.message_id
        )
    ).first()
    if row is not None:
        _edited_line(turn, person, profile, row, today)
        return True
    question = _question_typed_in(turn.session, person, turn.incoming.message_id)
    if question is None:
        return False
    _edited_answer(turn, person, profile, question, today)
    return True


def _edited_line(
    turn: ChatTurn, person: Person, profile: AthleteProfile, row: CheckInRow, today: date
) -> None:
    if row.date != today:
        say_to(turn, person, words.too_late_to_change(figures.long_day(row.date)))
        return
    old = answers_of(turn.session, profile, row)
    report = read_told(turn.incoming.text, known_of(old, ()))
    report = agreed(report, old)
    told = {*report.answers, *(doubt.answer for doubt in report.doubts)}
    if len(told & set(CORE)) < min(len(CORE), FEWEST_OF_A_MORNING):
        say_to(turn, person, words.no_longer_a_check_in())
        return
    if report.doubts:
        answers = old | taken_from(report, old) | {"_greeting": ""}
        asking.open_question(turn, person, CHECK_IN, profile.person_id, answers)
        return
    answers = old | taken_from(report, old)
    answers = with_note({key: value for key, value in answers.items() if key != "note"})
    if words.so_far(old) == words.so_far(answers) and row.note == answers.get("note", row.note):
        return
    lead = f"{words.changed(old, answers)}\n{words.re_decided()}"
    take(turn, profile, answers, message_id=turn.incoming.message_id, lead=lead)


def _question_typed_in(session: Session, person: Person, message_id: int) -> OpenQuestion | None:
    query = (
        select(OpenQuestion)
        .where(OpenQuestion.person_id == person.id, OpenQuestion.flow == CHECK_IN.id)
        .order_by(col(OpenQuestion.id).desc())
        .limit(20)
    )
    return next(
        (q for q in session.exec(query) if str(message_id) in q.answers.get(TYPED_IN, {})), None
    )


def _still_asked(question: OpenQuestion) -> bool:
    """Whether what an open question asks is still to be asked; one that is closed asks nothing."""
    step = CHECK_IN.step(question.step)
    return question.closed_at is not None or step is None or step.applies(question.answers)


def _edited_answer(
    turn: ChatTurn, person: Person, profile: AthleteProfile, question: OpenQuestion, today: date
) -> None:
    if question.answers["_date"] != today.isoformat():
        day = date.fromisoformat(question.answers["_date"])
        text = words.too_late_to_change(figures.long_day(day))
        say_to(turn, person, text)
        return
    key = question.answers[TYPED_IN][str(turn.incoming.message_id)]
    step = CHECK_IN.step(key)
    assert step is not None
    try:
        value = asking.read_answer(step, turn.incoming.text, question, turn.context)
    except InvalidAnswer as unread:
        text = f"{unread}\n\n{words.no_longer_a_check_in()}"
        say_to(turn, person, text)
        return
    found = given_by(step, [value] if step.many else value)
    if found.get(DOUBTS) or found.get(WHY):
        say_to(turn, person, words.no_longer_a_check_in())
        return
    if all(question.answers.get(name) == value for name, value in found.items()):
        return
    old = dict(question.answers)
    question.answers = question.answers | found
    turn.session.add(question)
    lead = words.changed(old, question.answers)
    row = checkin_row(turn.session, profile.person_id, today)
    if row is None:
        say_to(turn, person, lead)
        if not _still_asked(question):  # the edit has answered what it was asked about
            asking.close(turn, question)
            _go_on(turn, person, profile, question.answers)
        return
    answers = answers_of(turn.session, profile, row) | found
    take(
        turn, profile, answers, message_id=None,
        lead=f"{lead}\n{words.re_decided()}",
    )  # fmt: skip
