"""Every message of an athlete is read for symptoms and drugs, whatever else it is about."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from sqlmodel import Session, select

from bot import agenda
from bot.context import Context
from bot.flows.symptom import SYMPTOM_CHECK
from bot.incoming import Incoming
from bot.messages import on_your_own
from bot.messages import safety as words
from bot.outbox import say
from bot.service import alerts, asking
from bot.service.deciding import decide_checkin, freeze
from bot.service.people import get_person, is_own_coach, local_date, profile_of, record, speaking_to
from bot.service.week import DRANK_IN_AN_HOUR, checkin_row
from bot.store.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.store.traffic import AgendaRow, Urgency
from bot.store.week import SymptomReport
from engine.checkin import CheckIn
from engine.safety import Level, fastest_drinking_l_per_h, flags_of_words
from engine.symptoms import WARNINGS, Symptom
from engine.symptoms import screen as screen_text

UNANSWERED = "symptom-unanswered"
DRUG = "drug-named"
ANSWER_WITHIN = timedelta(minutes=10)  # our own choice; silence counts as a yes


def screen(session: Session, person: Person, incoming: Incoming, context: Context) -> bool:
    """Look for symptoms and drugs in what an athlete wrote, and act on it; whether any was there."""
    profile = profile_of(session, person.id)
    if profile is None or profile.status == AthleteStatus.DECLINED:
        return False
    found = screen_text(incoming.text)
    if found.drug:
        _drug_named(session, person, profile, found.drug_words, context)
    too_fast = _drank_too_fast(session, profile, incoming.text, context)
    sure = [hit.symptom for hit in found.hits if hit.sure]
    if sure:
        report(session, profile, sure, context)
    doubtful = [
        hit
        for hit in found.hits
        if not hit.sure and hit.symptom in WARNINGS and hit.symptom not in sure
    ]
    for hit in doubtful:
        _ask_to_be_sure(session, person, profile, hit.symptom, hit.words, context)
    return bool(found.drug or sure or doubtful or too_fast)


def may_be_urgent(text: str) -> bool:
    """Whether this may tell of a warning, so that it is to be dealt with before all else."""
    return text.endswith(":emergency") or bool(screen_text(text).warnings)


def report(
    session: Session, profile: AthleteProfile, symptoms: list[Symptom], context: Context
) -> None:
    """Keep symptoms told outside the check-in's own question; a warning acts at once."""
    day = local_date(profile, context)
    new = [
        symptom
        for symptom in dict.fromkeys(symptoms)
        if _keep(session, profile, symptom.value, context)
    ]
    serious = [symptom for symptom in symptoms if symptom in WARNINGS]
    if serious:
        _warn(session, profile, serious, context)
        return
    if not new or profile.status != AthleteStatus.ACTIVE:
        return
    row = checkin_row(session, profile.person_id, day)
    if row is not None:
        row.revision += 1
        session.add(row)
        decide_checkin(
            session, profile, row, context=context, lead=words.noted_symptoms(new), told_anew=False
        )
        return
    person = get_person(session, profile.person_id)
    coach = get_person(session, profile.coach_id)
    text = (
        on_your_own.noted(new) if coach.id == person.id else words.told_coach(new, coach.first_name)
    )
    say(session, chat_id=person.chat_id, text=text, now=context.now)


def _keep(session: Session, profile: AthleteProfile, told: str, context: Context) -> bool:
    """Write down for the day what was told; False where it was there already."""
    day = local_date(profile, context)
    known = session.exec(
        select(SymptomReport).where(
            SymptomReport.athlete_id == profile.person_id,
            SymptomReport.date == day,
            SymptomReport.symptom == told,
        )
    ).first()
    if known is not None:
        return False
    session.add(SymptomReport(athlete_id=profile.person_id, date=day, symptom=told, at=context.now))
    session.flush()
    record(
        session, profile.person_id, "symptom", context, by=profile.person_id, told=told
    )  # fmt: skip
    return True


def _warn(
    session: Session, profile: AthleteProfile, serious: list[Symptom], context: Context
) -> None:
    """A warning: freeze, tell the athlete to stop and get help, fetch the coach."""
    person = get_person(session, profile.person_id)
    freeze(session, profile, "warning-flag", context)
    day = local_date(profile, context)
    flags = flags_of_words(CheckIn(date=day, symptoms=tuple(s.value for s in serious)))
    alerts.raise_flags(session, profile, flags, day=day, context=context)
    self_coached = profile.coach_id == profile.person_id
    text = (words.emergency_self_coached if self_coached else words.emergency)(
        [flag.id for flag in flags if flag.level is Level.WARNING]
    )
    say(session, chat_id=person.chat_id, text=text, now=context.now, urgency=Urgency.URGENT)


def _drug_named(
    session: Session,
    person: Person,
    profile: AthleteProfile,
    named: Sequence[str],
    context: Context,
) -> None:
    """A refusal, a caution to the coach, and no raise that day (the word is kept for the check-in)."""
    text = on_your_own.drug_refusal() if is_own_coach(profile) else words.drug_refusal()
    say(session, chat_id=person.chat_id, text=text, now=context.now)
    for word in named:
        _keep(session, profile, word, context)
    day = local_date(profile, context)
    flags = [f for f in flags_of_words(CheckIn(date=day, symptoms=tuple(named))) if f.id == DRUG]
    alerts.raise_flags(session, profile, flags, day=day, context=context)


def _drank_too_fast(session: Session, profile: AthleteProfile, text: str, context: Context) -> bool:
    """Whether the text tells of more water within an hour than kidneys can pass; if so, act on it."""
    rate = fastest_drinking_l_per_h(text)
    day = local_date(profile, context)
    flags = flags_of_words(CheckIn(date=day, water_within_one_hour_l=rate))
    if not flags:
        return False
    _keep(session, profile, f"{DRANK_IN_AN_HOUR}{rate}", context)
    alerts.raise_flags(session, profile, flags, day=day, context=context)
    person = get_person(session, profile.person_id)
    text = on_your_own.drank_too_fast() if is_own_coach(profile) else words.drank_too_fast()
    say(session, chat_id=person.chat_id, text=text, now=context.now)
    return True


def _ask_to_be_sure(
    session: Session,
    person: Person,
    profile: AthleteProfile,
    symptom: Symptom,
    said: str,
    context: Context,
) -> None:
    for earlier in asking.open_questions(
        session, person, flow=SYMPTOM_CHECK.id, subject_id=profile.person_id
    ):
        if earlier.answers["_symptom"] == symptom.value:
            return  # that is being asked already, and its silence counts from then
    question = asking.open_question(
        session, person, SYMPTOM_CHECK, context=context, subject_id=profile.person_id,
        answers={"_symptom": symptom.value, "_words": said[:80]}, beside=True,
    )  # fmt: skip
    agenda.put(
        session, subject=f"question:{question.id}", local_date=local_date(profile, context),
        kind=UNANSWERED, due_at=context.now + ANSWER_WITHIN,
    )  # fmt: skip


def answered(session: Session, person: Person, question: OpenQuestion, context: Context) -> None:
    """The athlete said whether a doubtful phrase meant it."""
    agenda.cancel(session, subject=f"question:{question.id}")
    profile = profile_of(session, person.id)
    assert profile is not None
    if question.answers["sure"]:
        report(session, profile, [Symptom(question.answers["_symptom"])], context)
    else:
        say(session, chat_id=person.chat_id, text=words.doubtful_cleared(), now=context.now)


def unanswered(session: Session, duty: AgendaRow, context: Context) -> None:
    """No answer in time counts as a yes."""
    question = session.get(OpenQuestion, int(duty.subject.partition(":")[2]))
    if question is None or question.closed_at is not None:
        return
    asking.close(session, question, context)
    profile = profile_of(session, question.person_id)
    if profile is not None:
        with speaking_to(get_person(session, profile.person_id)):
            report(session, profile, [Symptom(question.answers["_symptom"])], context)
