"""Three lighter mornings after a show or a shoot."""

from __future__ import annotations

from datetime import timedelta
from functools import partial

from sqlmodel import Session, col, select

from bot.alerts import alerts
from bot.alerts import words_athlete as safety_words
from bot.core.timing import agenda, instants
from bot.core.timing.agenda import Several, Subject
from bot.core.turn import Turn
from bot.debrief import flow_after_show
from bot.debrief.flow_after_show import AFTER_SHOW, OFF
from bot.debrief.past_week import next_week_runs
from bot.dialogue import asking
from bot.people.people import get_person, local_date, others_coaching, profile_of
from bot.people.telling import say_to
from bot.safety.reports import Told, report
from bot.store.tables.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import CheckInRow, EventRow
from bot.week.load import checkin_row
from bot.week.prompts import subject
from engine.evidence.planning.health import AFTER_DAYS
from engine.safety import FlagId
from engine.safety.weight import after_show_flags
from engine.symptoms import Symptom, screen
from engine.values.plan import PLAN_DAYS

ASK = Several("after-show")
DAYS = int(AFTER_DAYS.value)


def begin(turn: Turn, profile: AthleteProfile, event: EventRow) -> None:
    """The morning after: the cautions, then one short question on this and two more mornings."""
    person = get_person(turn.session, profile.person_id)
    say_to(turn, person, partial(flow_after_show.over, event.kind, DAYS))
    for number in range(1, DAYS + 1):
        day = event.day + timedelta(days=number)
        agenda.put(
            turn.session, agenda.Named(subject(profile), day, ASK(number)),
            due_at=instants.local_instant(day, profile.prompt_time, profile.zone or event.zone),
            payload={"event": event.id},
        )  # fmt: skip


def due(turn: Turn, duty: AgendaRow) -> None:
    profile = profile_of(turn.session, Subject.ATHLETE.of(duty))
    if profile is None or profile.status != AthleteStatus.ACTIVE:
        return
    day = local_date(profile, turn.context)
    if day != duty.local_date or next_week_runs(turn, profile):
        return
    person = get_person(turn.session, profile.person_id)
    for earlier in asking.open_questions(
        turn.session, person, flow=AFTER_SHOW.id, subject_id=profile.person_id
    ):
        asking.close(turn, earlier)
    asking.open_question(turn, person, AFTER_SHOW, profile.person_id, {
        "_day": ASK.number(duty),
        "_name": person.first_name,
        "_weight_unit": profile.weight_unit,
        "_event": duty.payload["event"],
    })  # fmt: skip


def answered(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """Warnings act as ever; cautions of these days go to the coach; the rest is told off kindly."""
    profile = profile_of(turn.session, person.id)
    if profile is None:
        return
    answers = question.answers
    off = answers["feels"] == OFF
    said = answers.get("symptoms", []) if off else []
    symptoms = _symptoms(said)
    written = "; ".join(text for text in said if text not in set(Symptom))
    weight = answers.get("weight_kg")
    row = _keep(turn, profile, symptoms, weight)
    before = _stage_weight(turn.session, profile, answers["_event"])
    rise = [f for f in after_show_flags((), weight, before) if f.id is FlagId.AFTER_SHOW_RISE]
    alerts.raise_flags(turn, profile, alerts.Found(rise, row.date))
    if symptoms or written:
        told = Told(
            symptoms=tuple(symptoms) or (Symptom.UNWELL,), words=written, unread=not symptoms
        )
        report(turn, profile, told)
        return
    coach = get_person(turn.session, profile.coach_id)
    self_coached = coach.id == profile.person_id
    if off:
        text = safety_words.look_into_it(coach.first_name, self_coached=self_coached)
        if not self_coached:
            _pass_on(turn, profile, person, said)
    elif rise:
        text = flow_after_show.rising(self_coached=self_coached)
    else:
        text = flow_after_show.fine(answers["_day"] >= DAYS)
    say_to(turn, person, text)


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
    turn: Turn, profile: AthleteProfile, symptoms: list[Symptom], weight_kg: float | None
) -> CheckInRow:
    day = local_date(profile, turn.context)
    row = checkin_row(turn.session, profile.person_id, day) or CheckInRow(
        athlete_id=profile.person_id, date=day, answered_at=turn.now
    )
    row.weight_kg = weight_kg if weight_kg is not None else row.weight_kg
    row.symptoms = [symptom.value for symptom in symptoms]
    row.answered_at = turn.now
    turn.session.add(row)
    turn.session.flush()
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


def _pass_on(turn: Turn, profile: AthleteProfile, person: Person, said: list[str]) -> None:
    for coach in others_coaching(turn.session, profile):
        say_to(turn, coach, partial(flow_after_show.coach_told, person.first_name, said))
