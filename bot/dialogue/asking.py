"""Putting questions to people; the draft of their answers lives in the question's row."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from contextlib import suppress
from dataclasses import dataclass
from functools import partial
from typing import NamedTuple

from sqlmodel import Session

from bot.core.chat.buttons import Rest, Route
from bot.core.chat.outbox import Button, Buttons, Shown, edit
from bot.core.turn import Context, Turn
from bot.dialogue.flow import (
    DONE,
    NO,
    SKIP,
    UNKNOWN,
    YES,
    Answers,
    Flow,
    InvalidAnswer,
    Step,
    plainly,
    said,
)
from bot.people.people import asked, own_athlete
from bot.people.telling import Said, as_said, say_to, speaking_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.working_out import worked_out
from bot.words import common, figures
from bot.words.invalid_answers import parse_error_text
from engine.written.late import Late
from engine.written.units import ParseError

CANCEL = "x"
MEANT = "_meant"  # what an answer that was refused was probably meant to be


#: What follows once everything in a flow has been answered, and by whom.
Finish = Callable[[Turn, Person, OpenQuestion], None]


@dataclass(frozen=True, slots=True)
class FlowBinding:
    """A flow and what happens once everything in it has been answered."""

    flow: Flow
    finish: Finish


def of_own_athlete(
    finish: Callable[[Turn, Person, AthleteProfile, Answers], None],
    gone: Callable[[], str] | None = common.not_your_athlete,
) -> Finish:
    """The end of a coach's flow on an athlete. Where the athlete is not theirs, or no more, that is
    said in `gone`, or nothing is.
    """

    def finish_if_own(turn: Turn, coach: Person, question: OpenQuestion) -> None:
        profile = own_athlete(turn.session, coach, question.about)
        if profile is not None:
            finish(turn, coach, profile, question.answers)
        elif gone is not None:
            say_to(turn, coach, gone())

    return finish_if_own


Flows = Mapping[str, FlowBinding]


class Put(NamedTuple):
    """A question put to somebody: the step of its flow that is asked."""

    person: Person
    question: OpenQuestion
    flow: Flow
    step: Step


def open_question(
    turn: Turn,
    person: Person,
    flow: Flow,
    subject_id: int | None = None,
    answers: Answers | None = None,
) -> OpenQuestion:
    """Begin a flow by asking its first open step; an earlier run of it on the subject is closed, unless
    the flow is `concurrent`. The subject is an athlete's id, or that of what the flow is about.
    """
    if not flow.concurrent:
        for earlier in open_questions(turn.session, person, flow=flow.id, subject_id=subject_id):
            close(turn, earlier)
    question = OpenQuestion(
        person_id=id_of(person),
        flow=flow.id,
        subject_id=subject_id,
        answers=dict(answers or {}),
        asked_at=turn.now,
    )
    turn.session.add(question)
    step = flow.next_step(question.answers)
    assert step is not None, f"flow {flow.id} was opened with nothing left to ask"
    ask(turn, Put(person, question, flow, step))
    return question


def open_questions(
    session: Session, person: Person, *, flow: str | None = None, subject_id: int | None = None
) -> list[OpenQuestion]:
    """What has been asked and not answered, the latest last."""
    every = asked(session, person)
    if flow is None:
        return list(every)
    return [one for one in every if one.flow == flow and one.subject_id == subject_id]


def close(turn: Turn, question: OpenQuestion) -> None:
    question.closed_at = turn.now


def is_outdated(question: OpenQuestion, flows: Flows) -> bool:
    """Whether what was asked is asked no more: it was put before the bot was brought up to date."""
    registered = flows.get(question.flow)
    return registered is None or registered.flow.step(question.step) is None


def bring_up_to_date(
    turn: Turn,
    person: Person,
    question: OpenQuestion,
    flows: Flows,
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
        close(turn, question)
        if registered is not None:
            registered.finish(turn, person, question)
        return
    put = Put(person, question, registered.flow, step)
    ask(turn, put, message_id=message_id, lead=common.asked_otherwise_now())


def refuse(turn: Turn, person: Person, question: OpenQuestion, flows: Flows, text: str) -> None:
    """Say what is wrong with an answer, and put the question once more."""
    step = flows[question.flow].flow.step(question.step)
    assert step is not None
    try:
        read_answer(step, text, question, turn.context)
    except InvalidAnswer as unread:
        put = Put(person, question, flows[question.flow].flow, step)
        put_again(turn, put, str(unread), meant=_meant(unread))


def remind(turn: Turn, person: Person, question: OpenQuestion, flows: Flows, sentence: str) -> None:
    """Something was said to what came meanwhile; the question stands, and its buttons too."""
    flow = flows[question.flow].flow
    step = flow.step(question.step)
    assert step is not None
    put_again(turn, Put(person, question, flow, step), sentence)


class Answer(NamedTuple):
    """A question's button: its step, and the value, which may have colons of its own."""

    question: int
    key: str
    value: Rest


ANSWER = Route("q", Answer)


def read_answer(step: Step, text: str, question: OpenQuestion, context: Context) -> object:
    """The answer as the step reads it. Raises InvalidAnswer with the sentence to reply with.

    The words of a button, typed out, are that button; so are their first ones where they are no
    other's, and a yes or no that a button stands for.
    """
    text = _as_button(step, text, question)
    if step.many and text == DONE:
        return DONE
    answers = question.answers | {"_now": context.now.isoformat()}
    try:
        return step.answer(text, answers)
    except ParseError as error:
        with suppress(ParseError, InvalidAnswer):
            if (plainer := plainly(text)) != text:
                return step.answer(plainer, answers)
        raise InvalidAnswer(parse_error_text(error)) from error


_ARTICLE = Late(r"^(?:an?|the|eine?n?|'?ne|nen|der|die|das) (?=\S)")


def _bare(words: str) -> str:
    """Without an article: "a trial" and "trial" are one button."""
    return _ARTICLE.sub("", words)


def _as_button(step: Step, text: str, question: OpenQuestion) -> str:
    plain = " ".join(text.split()).casefold().rstrip(" .!")
    meant = question.answers.get(MEANT, "")
    if meant and said(plain, YES):
        return str(meant)
    named = {
        choice.label.casefold(): choice.value
        for row in step.offers(question.answers)
        for choice in row
    }
    if step.many:
        named[common.done_button().casefold()] = DONE
    if plain in named:
        return named[plain]
    if (figure := plain.rstrip(" ?")).isdecimal() and figure in named:
        return named[figure]  # "4?" is a four
    begins = re.compile(rf"{re.escape(_bare(plain))}(?!\w|[.,]\d)")
    begun = {value for label, value in named.items() if begins.match(_bare(label))}
    if plain and len(begun) == 1:
        return begun.pop()
    if said(plain, UNKNOWN):
        unknown = {value for label, value in named.items() if said(label, UNKNOWN)}
        if len(unknown) == 1:
            return unknown.pop()
        if "skip" in named.values():
            return "skip"
    for words, value in ((YES, "yes"), (NO, "no"), (SKIP, "skip")):
        if value in named.values() and said(plain, words):
            return value
    return text


def is_button(question: OpenQuestion, flows: Flows, text: str) -> bool:
    """Whether the text is, word for word, what a button of this question says."""
    registered = flows.get(question.flow)
    step = registered.flow.step(question.step) if registered is not None else None
    plain = " ".join(text.split()).casefold()
    rows = step.offers(question.answers) if step is not None else ()
    return any(choice.label.casefold() == plain for row in rows for choice in row)


def ask_again(turn: Turn, person: Person, question: OpenQuestion, flows: Flows) -> None:
    """Put the open step of this question once more, as a new message."""
    if is_outdated(question, flows):
        bring_up_to_date(turn, person, question, flows)
        return
    flow = flows[question.flow].flow
    step = flow.step(question.step)
    assert step is not None
    ask(turn, Put(person, question, flow, step))


def ask(turn: Turn, put: Put, *, message_id: int | None = None, lead: str = "") -> None:
    """Put this step, in the language of who is asked: below `lead`, as a new message or in the place
    of that one.
    """
    person, question, flow, step = put
    question.step = step.key
    question.asked_at = turn.now
    with speaking_to(person):
        wording = step.asked(question.answers, partial(worked_out, turn.session))
        text = "\n\n".join(part for part in (lead, flow.given(question.answers), wording) if part)
        buttons = _buttons(question, flow, step)
    if message_id is None:
        question.outbox_id = id_of(say_to(turn, person, text, buttons=buttons))
    else:
        edit(turn, Shown(person.chat_id, message_id=message_id), text=text, buttons=buttons)


def _buttons(question: OpenQuestion, flow: Flow, step: Step) -> Buttons:
    ticked = set(question.answers.get(step.ticks, []))
    rows = [
        [
            Button(
                f"✓ {choice.label}" if choice.value in ticked else choice.label,
                ANSWER(id_of(question), step.key, Rest(choice.value)),
            )
            for choice in row
        ]
        for row in step.offers(question.answers)
    ]
    if step.many:
        done = step.none() if step.none is not None and not ticked else common.done_button()
        rows.append([Button(done, ANSWER(id_of(question), step.key, Rest(DONE)))])
    if flow.can_cancel:
        rows.append([Button(common.cancel_button(), ANSWER(id_of(question), CANCEL, Rest(CANCEL)))])
    return rows


def _meant(unread: InvalidAnswer) -> str:
    """What the answer was probably meant to be, where its reader can tell."""
    cause = unread.__cause__
    return str(cause.facts.get("hint") or "") if isinstance(cause, ParseError) else ""


def put_again(turn: Turn, put: Put, sentence: Said, *, meant: str = "") -> None:
    """The sentence, the question once more, and its buttons; first what was probably meant."""
    person, question, flow, step = put
    question.answers = {k: v for k, v in question.answers.items() if k != MEANT}
    with speaking_to(person):
        if meant and _can_be(step, meant, question, turn.context):
            question.answers = question.answers | {MEANT: meant}
        buttons = [list(row) for row in _buttons(question, flow, step)]
        carried = (id_of(question), step.key, Rest(meant))
        if MEANT in question.answers and ANSWER.fits(*carried):
            buttons.insert(0, [Button(figures.in_digits(meant), ANSWER(*carried))])
        wording = step.asked(question.answers | {"_again": True}, partial(worked_out, turn.session))
        say_to(turn, person, common.refused(as_said(sentence), wording), buttons=buttons)


def _can_be(step: Step, text: str, question: OpenQuestion, context: Context) -> bool:
    try:
        read_answer(step, text, question, context)
    except InvalidAnswer:
        return False
    return True
