"""A coach's words that wait for the tap which sends them: asked about once more, so none is lost."""

from __future__ import annotations

from datetime import timedelta

from bot.core.timing import agenda
from bot.core.timing.agenda import Subject
from bot.core.turn import Turn
from bot.dialogue import asking
from bot.dialogue.flow import Step
from bot.direct import words_passing_on as words
from bot.direct.flow_passing_on import PASS_ON
from bot.people.people import get_person, speaking_to
from bot.store.tables.people import OpenQuestion
from bot.store.tables.traffic import AgendaRow

UNSENT = "words-unsent"
AFTER = timedelta(
    minutes=20
)  # our own choice: long enough for a tap, short enough to be remembered

FEWEST_WORDS = 3  # an "ok" or a "thanks" that nobody sent was meant for the bot


def wait(turn: Turn, question: OpenQuestion) -> None:
    if len(str(question.answers["_text"]).split()) < FEWEST_WORDS:
        return
    agenda.put(
        turn.session, agenda.Named(Subject.QUESTION(question.id), turn.now.date(), UNSENT),
        due_at=turn.now + AFTER,
    )  # fmt: skip


def remind(turn: Turn, duty: AgendaRow) -> None:
    question = turn.session.get(OpenQuestion, Subject.QUESTION.of(duty))
    if question is None or question.closed_at is not None:
        return
    coach = get_person(turn.session, question.person_id)
    with speaking_to(coach):
        asking.put_again(
            turn, asking.Put(coach, question, PASS_ON, _step(question)), words.not_sent_yet()
        )


def _step(question: OpenQuestion) -> Step:
    step = PASS_ON.step(question.step)
    assert step is not None
    return step
