"""Three lighter mornings after a show or a shoot."""

from __future__ import annotations

from datetime import timedelta

from sqlmodel import Session, col, select

from bot import agenda
from bot.context import Context
from bot.flows.after_show import AFTER_SHOW, OFF
from bot.messages import after_show as words
from bot.outbox import say
from bot.service import alerts, asking
from bot.service.asking import Registered
from bot.service.handles import Command, Duty, Tap
from bot.service.people import get_person, local_date, profile_of, speaking_to
from bot.service.prompts import subject
from bot.service.reports import Told, report
from bot.service.rights import others_coaching
from bot.service.week import checkin_row, current_event
from bot.store.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.store.traffic import AgendaRow
from bot.store.week import CheckInRow, EventRow
from engine.after_show import after_show_flags
from engine.evidence.after import AFTER_DAYS
from engine.plan import PLAN_DAYS
from engine.safety import FlagId
from engine.symptoms import Symptom, screen

ASK = "after-show"
DAYS = int(AFTER_DAYS.value)


def begin(session: Session, profile: AthleteProfile, event: EventRow, context: Context) -> None:
    """The morning after: the cautions, then one short question on this and two more mornings."""
    person = get_person(session, profile.person_id)
    say(session, chat_id=person.chat_id, text=words.over(event.kind, DAYS), now=context.now)
    for number in range(1, DAYS + 1):
        day = event.day + timedelta(days=number)
        agenda.put(
            session, subject=subject(profile), local_date=day, kind=f"{ASK}:{number}",
            due_at=agenda.local_instant(day, profile.prompt_time, profile.zone or event.zone),
            payload={"event": event.id},
        )  # fmt: skip


def due(session: Session, duty: AgendaRow, context: Context) -> None:
    profile = profile_of(session, int(duty.subject.partition(":")[2]))
    if profile is None or profile.status != AthleteStatus.ACTIVE:
        return
    day = local_date(profile, context)
    if day != duty.local_date or _asked_anyway(session, profile, context):
        return
    person = get_person(session, profile.person_id)
    for earlier in asking.open_questions(
        session, person, flow=AFTER_SHOW.id, subject_id=profile.person_id
    ):
        asking.close(session, earlier, context)
    asking.open_question(
        session, person, AFTER_SHOW, context=context, subject_id=profile.person_id,
        answers={
            "_day": int(duty.kind.partition(":")[2]),
            "_name": person.first_name,
            "_weight_unit": profile.weight_unit,
            "_event": duty.payload["event"],
        },
    )  # fmt: skip


def answered(session: Session, person: Person, question: OpenQuestion, context: Context) -> None:
    """Warnings act as ever; cautions of these days go to the coach; the rest is told off kindly."""
    profile = profile_of(session, person.id)
    if profile is None:
        return
    answers = question.answers
    off = answers["feels"] == OFF
    said = answers.get("symptoms", []) if off else []
    symptoms = _symptoms(said)
    written = "; ".join(text for text in said if text not in set(Symptom))
    weight = answers.get("weight_kg")
    row = _keep(session, profile, symptoms, weight, context)
    before = _stage_weight(session, profile, answers["_event"])
    rise = [f for f in after_show_flags((), weight, before) if f.id is FlagId.AFTER_SHOW_RISE]
    alerts.raise_flags(session, profile, rise, day=row.date, context=context)
    if symptoms or written:
        told = Told(
            symptoms=tuple(symptoms) or (Symptom.UNWELL,), words=written, unread=not symptoms
        )
        report(session, profile, told, context)
        return
    coach = get_person(session, profile.coach_id)
    own = coach.id == profile.person_id
    if off:
        text = words.look_into_it(coach.first_name, own=own)
        if not own:
            _pass_on(session, profile, person, said, context)
    elif rise:
        text = words.rising(own=own)
    else:
        text = words.fine(answers["_day"] >= DAYS)
    say(session, chat_id=person.chat_id, text=text, now=context.now)


def _symptoms(said: list[str]) -> list[Symptom]:
    """Ticked ones by id, written ones as they are read."""
    found: list[Symptom] = []
    for text in said:
        if text in set(Symptom):
            found.append(Symptom(text))
        else:
            found += [hit.symptom for hit in screen(text).hits]
    return list(dict.fromkeys(found))


def _keep(
    session: Session,
    profile: AthleteProfile,
    symptoms: list[Symptom],
    weight_kg: float | None,
    context: Context,
) -> CheckInRow:
    day = local_date(profile, context)
    row = checkin_row(session, profile.person_id, day) or CheckInRow(
        athlete_id=profile.person_id, date=day, answered_at=context.now
    )
    row.weight_kg = weight_kg if weight_kg is not None else row.weight_kg
    row.symptoms = [symptom.value for symptom in symptoms]
    row.answered_at = context.now
    session.add(row)
    session.flush()
    return row


def _stage_weight(session: Session, profile: AthleteProfile, event_id: int) -> float | None:
    """The weight of the last morning of that week on which there is one."""
    event = session.get(EventRow, event_id)
    if event is None:
        return None
    query = select(CheckInRow).where(
        CheckInRow.athlete_id == profile.person_id,
        CheckInRow.date <= event.day,
        CheckInRow.date >= event.day - timedelta(days=max(PLAN_DAYS)),
        col(CheckInRow.weight_kg).is_not(None),
    )
    row = session.exec(query.order_by(col(CheckInRow.date).desc())).first()
    return row.weight_kg if row is not None else None


def _asked_anyway(session: Session, profile: AthleteProfile, context: Context) -> bool:
    """Whether the next week has begun and asks its own questions."""
    event = current_event(session, profile.person_id)
    if event is None:
        return False
    return 0 <= (event.day - local_date(profile, context)).days <= max(PLAN_DAYS)


def _pass_on(
    session: Session,
    profile: AthleteProfile,
    person: Person,
    said: list[str],
    context: Context,
) -> None:
    for coach in others_coaching(session, profile):
        with speaking_to(coach):
            text = words.coach_told(person.first_name, said)
            say(session, chat_id=coach.chat_id, text=text, now=context.now)


COMMANDS: tuple[Command, ...] = ()
TAPS: tuple[Tap, ...] = ()
FLOWS = (Registered(AFTER_SHOW, answered),)
DUTIES = (Duty(ASK, due),)
