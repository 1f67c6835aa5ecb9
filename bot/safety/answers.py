"""What is made of an athlete's answer to whether something is wrong, and of no answer in time."""

from __future__ import annotations

from bot.alerts import doubts
from bot.alerts import words_athlete as words
from bot.core.timing import agenda
from bot.core.timing.agenda import Subject
from bot.core.turn import ChatTurn, Kind, Turn
from bot.dialogue import asking
from bot.dialogue.asking import FlowBinding
from bot.people.people import get_person, get_profile, has_agreed, is_own_coach, profile_of
from bot.people.telling import say_to
from bot.safety.flow_symptom import EMERGENCY, FINE, SOMETHING_WRONG, SYMPTOM_CHECK, UNWELL_HOW
from bot.safety.reports import Told, bring, cleared, who_knows
from bot.safety.watch import let_go, short, wait
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow
from bot.week.cases import PULSE, URINE
from engine.safety import Level
from engine.symptoms import Concern, Symptom
from engine.symptoms import screen as screen_text


def answered(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """The athlete said whether a doubtful phrase meant it."""
    agenda.cancel(turn.session, subject=Subject.QUESTION(question.id))
    profile = get_profile(turn.session, person.id)
    symptom = Symptom(question.answers["_symptom"])
    if question.answers["sure"]:
        doubts.settled(turn, profile, question, doubts.TOLD)
        bring(turn, person, profile, Told(symptoms=(symptom,), words=question.answers["_words"]))
        return
    doubts.settled(turn, profile, question, doubts.NO, words=_typed(turn))
    say_to(turn, person, words.doubtful_cleared(who_knows(turn, person, profile)))
    if has_agreed(turn.session, person):
        cleared(turn, profile, symptom.value)


def _typed(turn: Turn) -> str:
    """What was typed in place of a tap, where it says more than one word would."""
    typed = isinstance(turn, ChatTurn) and turn.incoming.kind in (Kind.TEXT, Kind.EDITED)
    text = turn.incoming.text if isinstance(turn, ChatTurn) and typed else ""
    return short(text) if len(text.split()) > 1 else ""


def all_is_fine(turn: Turn, profile: AthleteProfile) -> None:
    """A morning's answers say that all is fine: what was asked before, of the body, has its answer.

    A doubt about a warning or about the mood wants an answer of its own.
    """
    if not is_own_coach(profile) and not doubts.asked_lately(turn, profile):
        return
    person = get_person(turn.session, profile.person_id)
    for question in asking.open_questions(turn.session, person, subject_id=profile.person_id):
        if question.asked_at >= turn.now or question.flow not in (
            SYMPTOM_CHECK.id,
            SOMETHING_WRONG.id,
        ):
            continue
        about = question.answers.get("_symptom")
        mild = Symptom(about).level is Level.ADVISORY if about else False
        if mild or question.answers.get("_concern") in (Concern.BODY, Concern.EMERGENCY):
            let_go(turn, question)
            doubts.settled(turn, profile, question, doubts.CHECKED_IN)


def answered_how(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """Fine, unwell, or an emergency; one answer is that to all such questions that are open."""
    profile = get_profile(turn.session, person.id)
    how, said = question.answers["how"], question.answers["_words"]
    agenda.cancel(turn.session, subject=Subject.QUESTION(question.id))
    open_ones = asking.open_questions(
        turn.session, person, flow=SOMETHING_WRONG.id, subject_id=profile.person_id
    )
    by = doubts.FINE if how == FINE else doubts.TOLD
    for other in open_ones:
        let_go(turn, other)
        doubts.settled(turn, profile, other, by, words=_typed(turn))
    if how == FINE:
        doubts.settled(turn, profile, question, by, words=_typed(turn))
        say_to(turn, person, words.glad_you_are_fine(who_knows(turn, person, profile)))
    elif how == EMERGENCY:
        doubts.settled(turn, profile, question, by)
        bring(turn, person, profile, Told(emergency=True, words=said))
    else:
        typed = _typed(turn)
        words_of_both = short(f"{said}; {typed}") if typed else said
        asks = asking.open_question(turn, person, UNWELL_HOW, profile.person_id, {
            "_words": words_of_both,
        })  # fmt: skip
        doubts.feels_unwell(turn, profile, question, asks, words_of_both)
        wait(turn, profile, asks)


def told_what(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """What it is that does not feel well; with nothing placed, that alone goes to the coach."""
    agenda.cancel(turn.session, subject=Subject.QUESTION(question.id))
    profile = get_profile(turn.session, person.id)
    doubts.settled(turn, profile, question, doubts.TOLD)
    answers = question.answers
    ticked = [Symptom(told) for told in answers["symptoms"] if told in set(Symptom)]
    written = [told for told in answers["symptoms"] if told not in set(Symptom)]
    read = [hit.symptom for text in written for hit in screen_text(text).hits]
    readings = [f"{PULSE}{answers['pulse']}"] if answers.get("pulse") is not None else []
    if answers.get("urine") is not None:
        readings.append(f"{URINE}{answers['urine']}")
    told = Told(
        symptoms=tuple(dict.fromkeys([*ticked, *read])) or (Symptom.UNWELL,),
        words="; ".join(written) or answers["_words"],
        readings=tuple(readings),
        unread=bool(written) and not read,
    )
    bring(turn, person, profile, told)


def unanswered(turn: Turn, duty: AgendaRow) -> None:
    """No answer in time: the coach is to ask, as of a doubt; and the athlete is asked once more."""
    question = turn.session.get(OpenQuestion, Subject.QUESTION.of(duty))
    if question is None or question.closed_at is not None:
        return
    profile = profile_of(turn.session, question.person_id)
    if profile is None:
        return
    doubts.unanswered(turn, profile, question)
    person = get_person(turn.session, profile.person_id)
    question.answers = question.answers | {"_once_more": True}
    asking.ask_again(turn, person, question, FLOW_OF)


FLOWS = (
    FlowBinding(SYMPTOM_CHECK, answered),
    FlowBinding(SOMETHING_WRONG, answered_how),
    FlowBinding(UNWELL_HOW, told_what),
)
FLOW_OF = {registered.flow.id: registered for registered in FLOWS}
