"""Putting questions to people and taking their answers; the draft lives in the question's row."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from sqlmodel import Session, col, select

from bot import figures
from bot.context import Context
from bot.dialogue import DONE, Answers, Flow, Step, Unread, given_by, offered
from bot.flows.reading import NO, SKIP, YES, said
from bot.incoming import Incoming
from bot.messages import common
from bot.messages.refusals import refusal_text
from bot.outbox import CALLBACK_DATA_LIMIT_BYTES, Button, Buttons, edit, say
from bot.service import tapping
from bot.store.people import OpenQuestion, Person
from engine.units import Refusal

CANCEL = "x"
MEANT = "_meant"  # what an answer that was refused was probably meant to be
TYPED_IN = "_typed_in"  # message id -> the key that it answered, so that editing it can be followed


@dataclass(frozen=True, slots=True)
class Registered:
    """A flow and what happens once everything in it has been answered."""

    flow: Flow
    finish: Callable[[Session, Person, OpenQuestion, Context], None]


Flows = Mapping[str, Registered]


def open_question(
    session: Session,
    person: Person,
    flow: Flow,
    *,
    context: Context,
    subject_id: int | None = None,
    answers: Answers | None = None,
    message_id: int | None = None,
    beside: bool = False,
) -> OpenQuestion:
    """Begin a flow by asking its first open step; an earlier run of it on the subject is closed.

    With `beside`, an earlier run stays open: each is to be answered.
    With `message_id` the question takes that message's place instead of sending a new one.
    """
    if not beside:
        for earlier in open_questions(session, person, flow=flow.id, subject_id=subject_id):
            close(session, earlier, context)
    question = OpenQuestion(
        person_id=person.id or 0,
        flow=flow.id,
        subject_id=subject_id,
        answers=dict(answers or {}),
        asked_at=context.now,
    )
    session.add(question)
    session.flush()
    step = flow.next_step(question.answers)
    assert step is not None, f"flow {flow.id} was opened with nothing left to ask"
    _ask(session, person, question, flow, step, context, message_id=message_id)
    return question


def open_questions(
    session: Session, person: Person, *, flow: str | None = None, subject_id: int | None = None
) -> list[OpenQuestion]:
    """What has been asked and not answered, the latest last."""
    query = select(OpenQuestion).where(
        OpenQuestion.person_id == person.id, col(OpenQuestion.closed_at).is_(None)
    )
    if flow is not None:
        query = query.where(OpenQuestion.flow == flow, OpenQuestion.subject_id == subject_id)
    return list(session.exec(query.order_by(col(OpenQuestion.asked_at), col(OpenQuestion.id))))


def close(session: Session, question: OpenQuestion, context: Context) -> None:
    question.closed_at = context.now
    session.add(question)


def is_outdated(question: OpenQuestion, flows: Flows) -> bool:
    """Whether what was asked is asked no more: it was put before the bot was brought up to date."""
    registered = flows.get(question.flow)
    return registered is None or registered.flow.step(question.step) is None


def bring_up_to_date(
    session: Session,
    person: Person,
    question: OpenQuestion,
    flows: Flows,
    context: Context,
    *,
    message_id: int | None = None,
) -> None:
    """Put an outdated question back to the next one that its flow still asks, and say so.

    The answers given are kept. Where they are all that is needed the flow is finished, and a
    question of a flow that is no more is closed. `message_id` is the message to take the place of.
    """
    registered = flows.get(question.flow)
    step = registered.flow.next_step(question.answers) if registered is not None else None
    if registered is None or step is None:
        close(session, question, context)
        if registered is not None:
            registered.finish(session, person, question, context)
        return
    _ask(
        session, person, question, registered.flow, step, context,
        message_id=message_id, lead=common.asked_otherwise_now(),
    )  # fmt: skip


def take_typed(
    session: Session,
    person: Person,
    question: OpenQuestion,
    registered: Registered,
    step: Step,
    answer: object,
    incoming: Incoming,
    context: Context,
) -> None:
    """What was read from a typed text as the answer to this step of the question."""
    if incoming.message_id is not None:
        typed_in = question.answers.get(TYPED_IN, {}) | {str(incoming.message_id): step.key}
        question.answers = question.answers | {TYPED_IN: typed_in}
    if step.many:
        ticked = question.answers.get(_ticks(step), [])
        answer = ticked if answer == DONE else [*ticked, answer]
    _take(session, person, question, registered, step, answer, context, message_id=None)


def refuse(
    session: Session,
    person: Person,
    question: OpenQuestion,
    flows: Flows,
    text: str,
    context: Context,
) -> None:
    """Say what is wrong with an answer, and put the question once more."""
    step = flows[question.flow].flow.step(question.step)
    assert step is not None
    try:
        read_answer(step, text, question, context)
    except Unread as unread:
        _refuse(
            session, person, question, flows[question.flow].flow, step, str(unread), context,
            meant=_meant(unread),
        )  # fmt: skip


def remind(
    session: Session,
    person: Person,
    question: OpenQuestion,
    flows: Flows,
    sentence: str,
    context: Context,
) -> None:
    """Something was said to what came meanwhile; the question stands, and its buttons too."""
    flow = flows[question.flow].flow
    step = flow.step(question.step)
    assert step is not None
    _refuse(session, person, question, flow, step, sentence, context)


def tapped(
    session: Session,
    person: Person,
    arguments: list[str],
    incoming: Incoming,
    flows: Flows,
    context: Context,
) -> None:
    """Take a button's press: `arguments` are question id, step key and value."""
    question_id, key = (*arguments, "", "")[:2]
    value = ":".join(arguments[2:])  # a time of day has a colon of its own
    question = session.get(OpenQuestion, int(question_id)) if question_id.isdigit() else None
    if question is None or question.person_id != person.id:
        tapping.answer(session, incoming, context, common.not_your_button())
        return
    registered = flows.get(question.flow)
    step = registered.flow.step(key) if registered else None
    if question.closed_at is not None or registered is None:
        tapping.answer(session, incoming, context, common.question_closed())
        return
    if value == CANCEL and key == CANCEL:
        close(session, question, context)
        tapping.answer(session, incoming, context)
        tapping.rewrite(session, incoming, common.cancelled(), context)
        return
    if is_outdated(question, flows):
        tapping.answer(session, incoming, context)
        place = incoming.message_id if key == question.step else None
        bring_up_to_date(session, person, question, flows, context, message_id=place)
        return
    accepted = _accepted(step, question) if step is not None else set()
    if step is None or key != question.step or value not in accepted:
        tapping.answer(session, incoming, context, common.already_answered())
        return
    tapping.answer(session, incoming, context)
    if step.many and value != DONE:
        _toggle(session, person, question, registered.flow, step, value, incoming, context)
        return
    if step.many:
        given: object = list(question.answers.get(_ticks(step), []))
    else:
        try:
            given = read_answer(step, value, question, context)
        except Unread as unread:
            _refuse(session, person, question, registered.flow, step, str(unread), context)
            return
    _take(
        session, person, question, registered, step, given, context,
        message_id=incoming.message_id,
    )  # fmt: skip


def read_answer(step: Step, text: str, question: OpenQuestion, context: Context) -> object:
    """The answer as the step reads it. Raises Unread with the sentence to reply with.

    The words of a button, typed out, are that button; so are their first ones where they are no
    other's, and a yes or no that a button stands for.
    """
    text = _as_button(step, text, question)
    if step.many and text == DONE:
        return DONE
    try:
        return step.read(text, question.answers | {"_now": context.now.isoformat()})
    except Refusal as refusal:
        raise Unread(refusal_text(refusal)) from refusal


def _as_button(step: Step, text: str, question: OpenQuestion) -> str:
    plain = " ".join(text.split()).casefold().rstrip(" .!")
    meant = question.answers.get(MEANT, "")
    if meant and said(plain, YES):
        return str(meant)
    named = {
        choice.label.casefold(): choice.value
        for row in step.choices(question.answers)
        for choice in row
    }
    if step.many:
        named[common.done_button().casefold()] = DONE
    if plain in named:
        return named[plain]
    begins = re.compile(rf"{re.escape(plain)}(?!\w|[.,]\d)")
    begun = {value for label, value in named.items() if begins.match(label)}
    if plain and len(begun) == 1:
        return begun.pop()
    for words, value in ((YES, "yes"), (NO, "no"), (SKIP, "skip")):
        if value in named.values() and said(plain, words):
            return value
    return text


def is_button(question: OpenQuestion, flows: Flows, text: str) -> bool:
    """Whether the text is, word for word, what a button of this question says."""
    registered = flows.get(question.flow)
    step = registered.flow.step(question.step) if registered is not None else None
    plain = " ".join(text.split()).casefold()
    rows = step.choices(question.answers) if step is not None else ()
    return any(choice.label.casefold() == plain for row in rows for choice in row)


def ask_again(
    session: Session, person: Person, question: OpenQuestion, flows: Flows, context: Context
) -> None:
    """Put the open step of this question once more, as a new message."""
    if is_outdated(question, flows):
        bring_up_to_date(session, person, question, flows, context)
        return
    flow = flows[question.flow].flow
    step = flow.step(question.step)
    assert step is not None
    _ask(session, person, question, flow, step, context)


def _take(
    session: Session,
    person: Person,
    question: OpenQuestion,
    registered: Registered,
    step: Step,
    answer: object,
    context: Context,
    *,
    message_id: int | None,
) -> None:
    answers = {k: v for k, v in question.answers.items() if k not in (_ticks(step), MEANT)}
    if step.back_to and answer is None:
        question.answers = {k: v for k, v in answers.items() if k != step.back_to}
    else:
        question.answers = answers | given_by(step, answer)
    flow = registered.flow
    following = flow.next_step(question.answers)
    if step.stays and message_id is not None:
        _leave_standing(session, person, question, step, message_id, context)
        message_id = None
    elif message_id is None and question.outbox_id is not None:
        _settle_old_message(session, person, question, flow, step, context)
    if following is not None:
        _ask(session, person, question, flow, following, context, message_id=message_id)
        return
    close(session, question, context)
    if message_id is not None:
        edit(
            session, chat_id=person.chat_id, message_id=message_id, now=context.now,
            text=flow.so_far(question.answers) or common.noted(),
        )  # fmt: skip
    registered.finish(session, person, question, context)


def _leave_standing(
    session: Session,
    person: Person,
    question: OpenQuestion,
    step: Step,
    message_id: int,
    context: Context,
) -> None:
    """What was agreed to stays readable above the next question, without its buttons."""
    answer = question.answers[step.key]
    labels = [c.label for row in step.choices(question.answers) for c in row if c.value == answer]
    text = "\n\n".join([step.ask(question.answers), *(f"→ {label}" for label in labels)])
    edit(session, chat_id=person.chat_id, message_id=message_id, text=text, now=context.now)


def _settle_old_message(
    session: Session,
    person: Person,
    question: OpenQuestion,
    flow: Flow,
    step: Step,
    context: Context,
) -> None:
    """A typed answer leaves buttons standing above it: take them away."""
    if step.choices(question.answers):
        edit(
            session, chat_id=person.chat_id, outbox_id=question.outbox_id, now=context.now,
            text=flow.so_far(question.answers) or step.ask(question.answers),
        )  # fmt: skip


def _toggle(
    session: Session,
    person: Person,
    question: OpenQuestion,
    flow: Flow,
    step: Step,
    value: str,
    incoming: Incoming,
    context: Context,
) -> None:
    ticked: list[str] = list(question.answers.get(_ticks(step), []))
    ticked = [v for v in ticked if v != value] if value in ticked else [*ticked, value]
    question.answers = question.answers | {_ticks(step): ticked}
    _ask(session, person, question, flow, step, context, message_id=incoming.message_id)


def _ask(
    session: Session,
    person: Person,
    question: OpenQuestion,
    flow: Flow,
    step: Step,
    context: Context,
    *,
    message_id: int | None = None,
    lead: str = "",
) -> None:
    question.step = step.key
    question.asked_at = context.now
    text = "\n\n".join(
        part for part in (lead, flow.so_far(question.answers), step.ask(question.answers)) if part
    )
    buttons = _buttons(question, flow, step)
    if message_id is None:
        row = say(session, chat_id=person.chat_id, text=text, buttons=buttons, now=context.now)
        question.outbox_id = row.id
    else:
        edit(
            session, chat_id=person.chat_id, message_id=message_id, text=text,
            buttons=buttons, now=context.now,
        )  # fmt: skip
    session.add(question)


def _buttons(question: OpenQuestion, flow: Flow, step: Step) -> Buttons:
    ticked = set(question.answers.get(_ticks(step), []))
    rows = [
        [
            Button(
                f"✓ {choice.label}" if choice.value in ticked else choice.label,
                f"q:{question.id}:{step.key}:{choice.value}",
            )
            for choice in row
        ]
        for row in step.choices(question.answers)
    ]
    if step.many:
        done = step.none() if step.none is not None and not ticked else common.done_button()
        rows.append([Button(done, f"q:{question.id}:{step.key}:{DONE}")])
    if flow.can_cancel:
        rows.append([Button(common.cancel_button(), f"q:{question.id}:{CANCEL}:{CANCEL}")])
    return rows


def _accepted(step: Step, question: OpenQuestion) -> set[str]:
    more = {str(question.answers.get(MEANT, "")), DONE if step.many else ""} - {""}
    return offered(step, question.answers) | more


def _meant(unread: Unread) -> str:
    """What the answer was probably meant to be, where its reader can tell."""
    cause = unread.__cause__
    return str(cause.facts.get("hint") or "") if isinstance(cause, Refusal) else ""


def _ticks(step: Step) -> str:
    return f"_ticked_{step.key}"


def _refuse(
    session: Session,
    person: Person,
    question: OpenQuestion,
    flow: Flow,
    step: Step,
    sentence: str,
    context: Context,
    *,
    meant: str = "",
) -> None:
    """The sentence, the question once more, and its buttons; first what was probably meant."""
    question.answers = {k: v for k, v in question.answers.items() if k != MEANT}
    if meant and _can_be(step, meant, question, context):
        question.answers = question.answers | {MEANT: meant}
    buttons = [list(row) for row in _buttons(question, flow, step)]
    data = f"q:{question.id}:{step.key}:{meant}"
    if MEANT in question.answers and len(data.encode()) <= CALLBACK_DATA_LIMIT_BYTES:
        buttons.insert(0, [Button(figures.in_digits(meant), data)])
    text = common.refused(sentence, step.ask(question.answers | {"_again": True}))
    say(session, chat_id=person.chat_id, text=text, now=context.now, buttons=buttons)
    session.add(question)


def _can_be(step: Step, text: str, question: OpenQuestion, context: Context) -> bool:
    try:
        read_answer(step, text, question, context)
    except Unread:
        return False
    return True
