"""Every message of an athlete is read for symptoms and drugs, whatever else it is about.

What is sure is told, and what is not is asked; what is made of the answers: `bot.safety.answers`.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import timedelta

from sqlmodel import Session

from bot.alerts import doubts
from bot.core.timing import agenda
from bot.core.timing.agenda import Subject
from bot.core.turn import ChatTurn, Context, Turn
from bot.dialogue import asking
from bot.dialogue.flow import Flow
from bot.dialogue.requests import requested
from bot.people.people import local_date, profile_of
from bot.safety import reports
from bot.safety.flow_symptom import (
    ASKED_ABOUT_SIGNS,
    EMERGENCY,
    SOMETHING_WRONG,
    SYMPTOM_CHECK,
    UNWELL_HOW,
)
from bot.safety.reports import BEFORE_WORSE, Told
from bot.store.tables.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.week.cases import DRANK_IN_AN_HOUR
from bot.words.languages import language
from engine.safety import Level, fastest_drinking_l_per_h, flags_of_words
from engine.symptoms import Concern, Hit, Screening, Suspicion, Symptom
from engine.symptoms import screen as screen_text
from engine.symptoms.across import asks_how_to_drink
from engine.symptoms.asked_whether import says_all_is_well
from engine.symptoms.ear.reading import speaks_of_body_or_mood
from engine.values.checkin import CheckIn
from engine.written.questions import asks_something
from engine.written.stage_times import parse_stage_word

UNANSWERED = "symptom-unanswered"
ANSWER_WITHIN = timedelta(minutes=10)  # our own choice: then the coach is to ask
LONGEST_QUOTE = 200
WHOLLY_READ = 3  # words: beside a complaint that is sure, so few say nothing else


_MAY_BE_ASKED = frozenset(AthleteStatus) - {AthleteStatus.DECLINED, AthleteStatus.ENDED}


def screen(turn: ChatTurn, person: Person, answers: Callable[[], bool]) -> bool:
    """Look for signs and drugs in what an athlete wrote, and act on it; whether anything was said.

    What is sure is kept, told to the coach and answered; where the ears are not sure, one question
    is asked, and the coach is told of that. `answers` says whether the text answers what was asked
    last: then no tone of voice makes more of it.
    """
    profile = profile_of(turn.session, person.id)
    if profile is None or profile.status == AthleteStatus.DECLINED:
        return False
    found = _heard(turn.incoming.text)
    told = _told(profile, found, turn.incoming.text, turn.context)
    asked = _asked_last(turn.session, person)
    warned = any(symptom.level is Level.WARNING for symptom in told.symptoms)
    if asked is not None and _takes_complaints(asked) and not warned:
        if not asks_something(turn.incoming.text):  # the coach need not wait for the rest
            doubts.wrote_more(turn, profile, asked, short(turn.incoming.text))
        return False  # the text is its answer, and told with the rest of it
    if told:
        reports.bring(turn, person, profile, told)
        if told.symptoms:
            _no_longer_asked(turn, person, profile, told.symptoms)
    elif asked is not None and asked.flow == SOMETHING_WRONG.id:
        if says_all_is_well(turn.incoming.text) or not _graver_doubts(found):
            return False  # likewise
        let_go(turn, asked)  # something is, and what it may be is asked instead
        doubts.settled(turn, profile, asked, doubts.TOLD)
    return _ask_about(turn, person, profile, found, answers) or bool(told)


def only_wonders(turn: ChatTurn, person: Person) -> bool:
    """Whether nothing came of what was just written but the question if something is wrong, of the body
    or on no word of body or mood: then figures beside it weigh on nobody.
    """
    asked = _asked_last(turn.session, person)
    found = _heard(turn.incoming.text)
    if found.hits or found.drug_words or asked is None or asked.flow != SOMETHING_WRONG.id:
        return False
    of_body = asked.answers["_concern"] == Concern.BODY
    mild = of_body or not speaks_of_body_or_mood(turn.incoming.text)
    return mild and asked.asked_at == turn.now


def mild_doubt(text: str) -> Symptom | None:
    """The mild complaint that a text may mean, the gravest where it may mean several."""
    doubtful = [hit.symptom for hit in screen_text(text).doubtful]
    mild = [symptom for symptom in doubtful if symptom.level is Level.ADVISORY]
    return min(
        mild, default=None,
        key=lambda one: (one not in BEFORE_WORSE, list(Symptom).index(one)),
    )  # fmt: skip


def asked_about_mild(turn: Turn, person: Person, symptom: Symptom, text: str) -> bool:
    """Ask whether that is meant, where it would change the day; whether it was asked."""
    profile = profile_of(turn.session, person.id)
    if symptom not in BEFORE_WORSE or profile is None or profile.status not in _MAY_BE_ASKED:
        return False
    _ask_to_be_sure(turn, person, profile, Hit(symptom, False, text), text)
    return True


def _asked_last(session: Session, person: Person) -> OpenQuestion | None:
    """The latest open question, where it is one of these."""
    asked = asking.open_questions(session, person)
    return asked[-1] if asked and asked[-1].flow in ASKED_ABOUT_SIGNS else None


def asks_of_something_else(question: OpenQuestion, text: str) -> bool:
    """Whether it was asked what is wrong, and the text asks back without a word of that."""
    found = _heard(text)
    says_what = found.hits or found.suspicions
    return _takes_complaints(question) and asks_something(text) and not says_what


def _takes_complaints(asked: OpenQuestion) -> bool:
    """Whether what is asked is what is wrong, so that a complaint answers it; no figure is."""
    return asked.flow == UNWELL_HOW.id and asked.step == UNWELL_HOW.steps[0].key


def _no_longer_asked(
    turn: Turn, person: Person, profile: AthleteProfile, told: Sequence[Symptom]
) -> None:
    """It has been said plainly what is wrong, so the question whether anything is has its answer, and
    so has the one whether it is this.
    """
    for flow in (SOMETHING_WRONG, UNWELL_HOW, SYMPTOM_CHECK):
        for question in asking.open_questions(
            turn.session, person, flow=flow.id, subject_id=profile.person_id
        ):
            if flow is SYMPTOM_CHECK and question.answers["_symptom"] not in told:
                continue
            let_go(turn, question)
            doubts.settled(turn, profile, question, doubts.TOLD)


def _told(profile: AthleteProfile, found: Screening, text: str, context: Context) -> Told:
    sure = tuple(hit.symptom for hit in found.hits if hit.sure)
    rate = fastest_drinking_l_per_h(text)
    day = local_date(profile, context)
    too_fast = rate is not None and flags_of_words(CheckIn(date=day, water_within_one_hour_l=rate))
    return Told(
        symptoms=sure,
        words=text.strip(),
        drugs=found.drug_words,
        readings=(f"{DRANK_IN_AN_HOUR}{rate}",) if too_fast else (),
    )


def _ask_about(
    turn: ChatTurn,
    person: Person,
    profile: AthleteProfile,
    found: Screening,
    answers: Callable[[], bool],
) -> bool:
    """One question where something may be meant; whether one was asked."""
    text = turn.incoming.text
    sure = [hit for hit in found.hits if hit.sure]
    warned = any(hit.symptom.level is Level.WARNING for hit in sure)
    doubtful = _graver_doubts(found)
    if doubtful:
        first = _first(doubtful)
        if warned and first.symptom is not Symptom.SELF_HARM:
            return False
        if len(doubtful) == 1 or first.symptom is Symptom.SELF_HARM:
            _ask_to_be_sure(turn, person, profile, first, text)
            return True
        _ask_what_is_wrong(turn, person, profile, Concern.BODY, text)
        return True
    if requested(text) not in (None, "help") or parse_stage_word(text, language()) is not None:
        return False  # "what do I eat today" is served, and nothing else was said
    suspicion = _gravest([one for one in found.suspicions if not _is_of_drinking(one)])
    understood = bool(sure) and len(text.split()) <= WHOLLY_READ
    if suspicion is None or warned or understood or (sure and suspicion.concern is Concern.BODY):
        return False  # with what is sure, the whole sentence is with the coach
    if not found.hits and any(map(str.isdigit, text)) and answers():
        return False  # a figure that was asked for; a city may be heard in nearly anything
    _ask_what_is_wrong(turn, person, profile, suspicion.concern, text)
    return True


def _graver_doubts(found: Screening) -> list[Hit]:
    """What may be meant and is more than a mild complaint."""
    return [hit for hit in found.doubtful if hit.symptom.level is not Level.ADVISORY]


def _is_of_drinking(suspicion: Suspicion) -> bool:
    """Whether the clause is understood as drinking: a question how, or where it was too fast, which is
    told already.
    """
    asks = asks_how_to_drink(f"{suspicion.words}?")
    return asks or fastest_drinking_l_per_h(suspicion.words) is not None


def _first(doubtful: Sequence[Hit]) -> Hit:
    """Thoughts of self-harm before all else, then as a coach should read them."""
    order = list(Symptom)
    return min(
        doubtful, key=lambda hit: (hit.symptom is not Symptom.SELF_HARM, order.index(hit.symptom))
    )


def _gravest(suspicions: Sequence[Suspicion]) -> Suspicion | None:
    order = list(Concern)
    return min(suspicions, key=lambda one: (order.index(one.concern), -one.score), default=None)


def _ask_to_be_sure(
    turn: Turn, person: Person, profile: AthleteProfile, hit: Hit, text: str
) -> None:
    for earlier in asking.open_questions(
        turn.session, person, flow=SYMPTOM_CHECK.id, subject_id=profile.person_id
    ):
        if earlier.answers["_symptom"] == hit.symptom.value:
            let_go(turn, earlier)  # asked anew, with the newer words
            doubts.settled(turn, profile, earlier, doubts.TOLD)
    answers = {"_symptom": hit.symptom.value, "_words": short(text)}
    _ask(turn, person, profile, SYMPTOM_CHECK, answers)


def _ask_what_is_wrong(
    turn: Turn, person: Person, profile: AthleteProfile, concern: Concern, text: str
) -> None:
    answers = {"_concern": concern.value, "_words": short(text)}
    _ask(turn, person, profile, SOMETHING_WRONG, answers)


def _ask(
    turn: Turn, person: Person, profile: AthleteProfile, flow: Flow, answers: dict[str, str]
) -> None:
    """Ask, tell the coach that it was asked, and wait for an answer for so long."""
    question = asking.open_question(turn, person, flow, profile.person_id, answers)
    doubts.asked(turn, profile, question)
    wait(turn, profile, question)


def wait(turn: Turn, profile: AthleteProfile, question: OpenQuestion) -> None:
    agenda.put(
        turn.session,
        agenda.Named(Subject.QUESTION(question.id), local_date(profile, turn.context), UNANSWERED),
        due_at=turn.now + ANSWER_WITHIN,
    )


def let_go(turn: Turn, question: OpenQuestion) -> None:
    asking.close(turn, question)
    agenda.cancel(turn.session, subject=Subject.QUESTION(question.id))


def short(text: str) -> str:
    plain = " ".join(text.split())
    return plain if len(plain) <= LONGEST_QUOTE else plain[: LONGEST_QUOTE - 1] + "…"


def _heard(text: str) -> Screening:
    """What both ears make of a text; a command's own word is no word of a person's."""
    found = screen_text(text)
    if text.startswith("/"):
        behind = text.partition(" ")[2]
        found = replace(found, suspicions=screen_text(behind).suspicions if behind.strip() else ())
    if asks_how_to_drink(text):  # who asks how to drink has not given it up
        hits = tuple(hit for hit in found.hits if hit.symptom is not Symptom.DRYING_OUT)
        found = replace(found, hits=hits)
    return found


def may_be_urgent(text: str) -> bool:
    """Whether this may tell of a warning, so that it is to be dealt with before all else."""
    return text.endswith(f":{EMERGENCY}") or bool(screen_text(text).warnings)
