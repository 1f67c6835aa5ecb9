"""Taking an answer, tapped or typed, and going on to the next question.

Typed words answer whichever open question can take them, several at once, with a rest.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta
from typing import Any

from bot.core.chat.buttons import UnreadableError
from bot.core.chat.outbox import Shown, edit
from bot.core.turn import ChatTurn, Context, Turn
from bot.dialogue import asking
from bot.dialogue.asking import (
    ANSWER,
    CANCEL,
    MEANT,
    FlowBinding,
    Flows,
    Put,
    ask,
    bring_up_to_date,
    close,
    is_outdated,
    put_again,
    read_answer,
)
from bot.dialogue.flow import (
    DONE,
    NO,
    NONE,
    SKIP,
    YES,
    Flow,
    InvalidAnswer,
    Step,
    given_by,
    offered,
    said,
)
from bot.people import telling
from bot.store.tables.people import OpenQuestion, Person
from bot.words import common
from bot.words.common import none_of_these_button
from engine.written.late import Late
from engine.written.questions import asks_something
from engine.written.units import ParseError, ParseErrorCode

TYPED_IN = "_typed_in"  # message id -> the key that it answered, so that editing it can be followed


def take_typed(turn: ChatTurn, put: Put, registered: FlowBinding, answer: object) -> None:
    """What was read from a typed text as the answer to the step that was put."""
    _, question, flow, step = put
    key = _answered(flow, step, answer)
    if turn.incoming.message_id is not None and key is not None:
        typed_in = question.answers.get(TYPED_IN, {}) | {str(turn.incoming.message_id): key}
        question.answers = question.answers | {TYPED_IN: typed_in}
    if step.many:
        ticked = question.answers.get(step.ticks, [])
        answer = ticked if answer == DONE else [*ticked, answer]
    _keep(turn, put, registered, answer, message_id=None)


def _answered(flow: Flow, step: Step, answer: object) -> str | None:
    """The step that an answer is of: of one that spreads over others, the first it fell to."""
    if answer is None:
        return step.key
    given = given_by(step, answer) if step.spreads else {step.key: answer}
    if step.key in given:
        return step.key
    return next((key for key in given if flow.step(key) is not None), None)


def tapped(turn: ChatTurn, person: Person, flows: Flows) -> None:
    """Take the press of a question's button."""
    try:
        number, key, value = ANSWER.read(turn.incoming.text)
    except UnreadableError:
        telling.answer(turn, common.not_your_button())
        return
    question = turn.session.get(OpenQuestion, number)
    if question is None or question.person_id != person.id:
        telling.answer(turn, common.not_your_button())
        return
    registered = flows.get(question.flow)
    step = registered.flow.step(key) if registered else None
    if question.closed_at is not None or registered is None:
        telling.answer(turn, common.question_closed())
        return
    if value == CANCEL and key == CANCEL:
        close(turn, question)
        telling.answer(turn)
        telling.rewrite(turn, common.cancelled())
        return
    if is_outdated(question, flows):
        telling.answer(turn)
        place = turn.incoming.message_id if key == question.step else None
        bring_up_to_date(turn, person, question, flows, message_id=place)
        return
    accepted = _accepted(step, question) if step is not None else set()
    if step is None or key != question.step or value not in accepted:
        telling.answer(turn, common.already_answered())
        return
    telling.answer(turn)
    put = Put(person, question, registered.flow, step)
    if step.many and value != DONE:
        _toggle(turn, put, value)
        return
    if step.many:
        given: object = list(question.answers.get(step.ticks, []))
    else:
        try:
            given = read_answer(step, value, question, turn.context)
        except InvalidAnswer as unread:
            put_again(turn, put, str(unread))
            return
    _keep(turn, put, registered, given, message_id=turn.incoming.message_id)


def _keep(
    turn: Turn, put: Put, registered: FlowBinding, answer: object, *, message_id: int | None
) -> None:
    person, question, flow, step = put
    answers = {k: v for k, v in question.answers.items() if k not in (step.ticks, MEANT)}
    if step.back_to and (step.returns or answer is None):
        kept = answers if answer is None else answers | given_by(step, answer)
        question.answers = {k: v for k, v in kept.items() if k != step.back_to}
    else:
        question.answers = answers | given_by(step, answer)
    following = flow.next_step(question.answers)
    if step.stays and message_id is not None:
        _leave_standing(turn, put, message_id)
        message_id = None
    elif message_id is None and question.outbox_id is not None:
        _settle_old_message(turn, put)
    if following is not None:
        ask(turn, put._replace(step=following), message_id=message_id)
        return
    close(turn, question)
    if message_id is not None:
        edit(
            turn, Shown(person.chat_id, message_id=message_id),
            text=flow.given(question.answers) or common.noted(),
        )  # fmt: skip
    registered.finish(turn, person, question)


def _leave_standing(turn: Turn, put: Put, message_id: int) -> None:
    """What was agreed to stays readable above the next question, without its buttons."""
    person, question, _, step = put
    answer = question.answers[step.key]
    labels = [c.label for row in step.offers(question.answers) for c in row if c.value == answer]
    text = "\n\n".join([step.asked(question.answers), *(f"→ {label}" for label in labels)])
    edit(turn, Shown(person.chat_id, message_id=message_id), text=text)


def _settle_old_message(turn: Turn, put: Put) -> None:
    """A typed answer leaves buttons standing above it: take them away."""
    person, question, flow, step = put
    if step.offers(question.answers):
        edit(
            turn, Shown(person.chat_id, outbox_id=question.outbox_id),
            text=flow.given(question.answers) or step.asked(question.answers),
        )  # fmt: skip


def _toggle(turn: ChatTurn, put: Put, value: str) -> None:
    _, question, _, step = put
    ticked: list[str] = list(question.answers.get(step.ticks, []))
    ticked = [v for v in ticked if v != value] if value in ticked else [*ticked, value]
    question.answers = question.answers | {step.ticks: ticked}
    ask(turn, put, message_id=turn.incoming.message_id)


def _accepted(step: Step, question: OpenQuestion) -> set[str]:
    more = {str(question.answers.get(MEANT, "")), DONE if step.many else ""} - {""}
    return offered(step, question.answers) | more


# Our own choice: an earlier question than the latest is still in mind for this long.
LISTENS_FOR = timedelta(hours=12)
LISTENS_LONG = timedelta(days=4)  # likewise, for what is asked by a flow that is patient
# A longer text tells something, even with a figure in it, and is no answer that went wrong. Coaches
# are asked for dates and reasons, which take more words.
MOST_WORDS_OF_AN_ATTEMPT, MOST_OF_A_NAME, MOST_OF_A_COACHS = 3, 5, 8
_BREAK = Late(r"\s*(?:[\n;]+|,(?=\s)|[.!](?=\s)|\s[-–]\s)\s*")
_FIGURE = Late(r"\d[\d.,]*\s*[^\W\d]{0,3}")


@dataclass(frozen=True, slots=True)
class Taken:
    """What of a text was an answer; `rest` is what was said beside it."""

    rest: str = ""


def takes_anything(question: OpenQuestion, flows: asking.Flows) -> bool:
    """Whether the question waits for free words, so that whatever is typed could be its answer."""
    step = _step(question, flows)
    return step is not None and step.takes_anything(question.answers)


def reads(asked: Sequence[OpenQuestion], flows: asking.Flows, text: str, context: Context) -> bool:
    """Whether the text is, as a whole, an answer to the question that was put last; free words are
    none.
    """
    if not asked or takes_anything(asked[-1], flows):
        return False
    step = _step(asked[-1], flows)
    return step is not None and _read(step, text, asked[-1], context) is not None


def answered(
    turn: ChatTurn, person: Person, flows: asking.Flows, *, asked: Sequence[OpenQuestion]
) -> Taken | None:
    """Take the text as the answer to an open question that can read it, the latest first.

    Free words are taken by the latest question only. None: it answers nothing.
    """
    for number, question in enumerate(reversed(asked)):
        if question.closed_at is not None:
            continue
        if number and (
            turn.now - question.asked_at > LISTENS_FOR
            or takes_anything(question, flows)
            or _put_again_since(question, asked, turn.incoming.text, flows)
        ):
            continue
        taken = _take(turn, person, question, flows)
        if taken is not None:
            return taken
    return None


def _put_again_since(
    question: OpenQuestion, asked: Sequence[OpenQuestion], text: str, flows: asking.Flows
) -> bool:
    """Whether a newer question of the same kind waits, so that a yes would be meant for that one."""
    newer = asked[[one.id for one in asked].index(question.id) + 1 :]
    again = any(one.flow == question.flow and one.closed_at is None for one in newer)
    return again and not asking.is_button(question, flows, text)


def answered_in_part(
    turn: ChatTurn, person: Person, flows: asking.Flows, question: OpenQuestion
) -> Taken | None:
    """Take the parts of a text that answer this question and those that follow it, one after the
    other. None: its beginning answers nothing.
    """
    step = _step(question, flows)
    if step is None:
        return None
    registered = flows[question.flow]
    return _take_parts(turn, asking.Put(person, question, registered.flow, step), registered)


def is_bare(text: str) -> bool:
    """Whether the text is a yes, a no, "none of these" or one figure: meant for what was asked, or for
    nothing.
    """
    plain = text.strip().rstrip(" .!")
    words = (YES, NO, SKIP, NONE, none_of_these_button())
    return any(said(plain, one) for one in words) or bool(_FIGURE.fullmatch(plain))


def attempted(
    question: OpenQuestion, flows: asking.Flows, text: str, context: Context, *, coach: bool = False
) -> bool:
    """Whether the text, which the question cannot take, looks meant for it: a figure out of range,
    a bare yes or no, a city misspelt; from a `coach`, any word or two. Anything else was said of one's
    own accord.
    """
    step = _step(question, flows)
    if step is None:
        return False
    try:
        asking.read_answer(step, text, question, context)
    except InvalidAnswer as unread:
        cause = unread.__cause__
    else:
        return False
    if is_bare(text) or (step.private and not asks_something(text)):
        return True
    words = text.split()
    if (coach and len(words) <= 2) or all(_is_figure(word) for word in words):
        return True
    most = MOST_OF_A_NAME if step.names else MOST_WORDS_OF_AN_ATTEMPT
    if "?" in text or len(words) > (MOST_OF_A_COACHS if coach else most):
        return False
    reads_figures = coach or isinstance(cause, ParseError) or not step.offers(question.answers)
    if reads_figures and any(character.isdigit() for character in text):
        return True
    if isinstance(cause, ParseError):
        return bool(cause.facts.get("hint")) or (
            cause.code is not ParseErrorCode.NOT_A_NUMBER and len(words) <= 2
        )
    return step.names or not step.offers(question.answers)


def _is_figure(word: str) -> bool:
    return any(map(str.isdigit, word)) and not any(map(str.isalpha, word))


def _step(question: OpenQuestion, flows: asking.Flows) -> Step | None:
    registered = flows.get(question.flow)
    return registered.flow.step(question.step) if registered is not None else None


def _take(
    turn: ChatTurn, person: Person, question: OpenQuestion, flows: asking.Flows
) -> Taken | None:
    registered, step = flows[question.flow], _step(question, flows)
    before = registered.flow.step(step.back_to) if step is not None and step.back_to else None
    for one in (step, before):
        if one is None:
            continue
        read = _read(one, turn.incoming.text, question, turn.context)
        if read is not None:
            put = asking.Put(person, question, registered.flow, one)
            take_typed(turn, put, registered, read[0])
            return Taken()
    return None


def _take_parts(turn: ChatTurn, put: asking.Put, registered: asking.FlowBinding) -> Taken | None:
    """ "no, 1996, female": each part answers the question that comes next, until one does not.

    A bare yes or no answers only the question that was seen.
    """
    parts = [part for part in _BREAK.split(turn.incoming.text) if part]
    if len(parts) < 2:
        return None
    _, question, _, step = put
    found: list[tuple[Step, Any]] = []
    given = dict(question.answers)
    current: Step | None = step
    while parts and current is not None and not current.many:
        trial = OpenQuestion(
            person_id=question.person_id, flow=question.flow, step=current.key, answers=given,
            asked_at=question.asked_at,
        )  # fmt: skip
        if found and (said(parts[0], YES) or said(parts[0], NO) or current.takes_anything(given)):
            break
        read = _read(current, parts[0], trial, turn.context)
        if read is None or (current.back_to and (current.returns or read[0] is None)):
            break
        found.append((current, read[0]))
        given = given | given_by(current, read[0])
        parts.pop(0)
        current = registered.flow.next_step(given)
    if not found:
        return None
    for done, answer in found[:-1]:
        question.answers = question.answers | given_by(done, answer)
    last, answer = found[-1]
    take_typed(turn, put._replace(step=last), registered, answer)
    return Taken(rest=", ".join(parts))


def _read(step: Step, text: str, question: OpenQuestion, context: Context) -> tuple[Any] | None:
    try:
        return (asking.read_answer(step, text, question, context),)
    except InvalidAnswer:
        return None
