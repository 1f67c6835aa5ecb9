"""Taking the answer to a question, tapped or typed, and going on to the next."""

from __future__ import annotations

from bot.core.chat.buttons import UnreadableError
from bot.core.chat.outbox import Shown, edit
from bot.core.turn import ChatTurn, Turn
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
from bot.dialogue.flow import DONE, Flow, InvalidAnswer, Step, given_by, offered
from bot.people import telling as tapping
from bot.store.tables.people import OpenQuestion, Person
from bot.words import common

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
    _take(turn, put, registered, answer, message_id=None)


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
        tapping.answer(turn, common.not_your_button())
        return
    question = turn.session.get(OpenQuestion, number)
    if question is None or question.person_id != person.id:
        tapping.answer(turn, common.not_your_button())
        return
    registered = flows.get(question.flow)
    step = registered.flow.step(key) if registered else None
    if question.closed_at is not None or registered is None:
        tapping.answer(turn, common.question_closed())
        return
    if value == CANCEL and key == CANCEL:
        close(turn, question)
        tapping.answer(turn)
        tapping.rewrite(turn, common.cancelled())
        return
    if is_outdated(question, flows):
        tapping.answer(turn)
        place = turn.incoming.message_id if key == question.step else None
        bring_up_to_date(turn, person, question, flows, message_id=place)
        return
    accepted = _accepted(step, question) if step is not None else set()
    if step is None or key != question.step or value not in accepted:
        tapping.answer(turn, common.already_answered())
        return
    tapping.answer(turn)
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
    _take(turn, put, registered, given, message_id=turn.incoming.message_id)


def _take(
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
