"""`/ready`: whether a peak week is worth it, asked by the coach or 14 and 8 days before the event."""

from __future__ import annotations

from dataclasses import asdict
from datetime import time, timedelta

from sqlmodel import Session, col, select

from bot import agenda
from bot.context import Context
from bot.flows.ready import READY, READY_ANYWAY
from bot.incoming import Incoming
from bot.messages import coach_plan as plan_words
from bot.messages import ready as words
from bot.outbox import Button, say
from bot.service import asking
from bot.service.care import OF_EATING_AND_MOOD, WARNED
from bot.service.people import (
    athletes_of,
    get_person,
    local_date,
    own_athlete,
    profile_of,
    record,
    speaking_to,
)
from bot.service.prompts import subject
from bot.service.tapping import answer, rewrite
from bot.service.week import athlete_of, baseline_of, current_event, plan_row
from bot.store.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.store.readiness import ReadinessRow
from bot.store.traffic import AgendaRow
from bot.store.week import EventRow
from engine.athlete import Athlete
from engine.evidence.safety import KCAL_PER_MET_KG_H, LIFTING_SESSION, MET_LIFTING
from engine.readiness import Injury, Outcome, Periods, Questions, Readiness, readiness

ASK = "ready"
DAYS_BEFORE = (14, 8)
AT = time(9, 0)
#: Answered so short a time before, it is not asked again.
FRESH = timedelta(days=3)
WEEKS_OF_LOSS = 2


def schedule(session: Session, profile: AthleteProfile, context: Context) -> None:
    """Have it asked 14 and 8 days before the event that counts; a trial needs no such question."""
    for days in DAYS_BEFORE:
        agenda.cancel(session, subject=subject(profile), kind=f"{ASK}:{days}")
    event = current_event(session, profile.person_id)
    if event is None or event.kind == "trial":
        return
    for days in DAYS_BEFORE:
        day = event.day - timedelta(days=days)
        due = agenda.local_instant(day, AT, profile.zone or event.zone)
        if due > context.now:
            agenda.put(
                session, subject=subject(profile), local_date=day, kind=f"{ASK}:{days}", due_at=due
            )


def due(session: Session, duty: AgendaRow, context: Context) -> None:
    """Put the question to the coach, unless it has just been answered."""
    profile = profile_of(session, int(duty.subject.partition(":")[2]))
    event = current_event(session, profile.person_id) if profile is not None else None
    if profile is None or event is None or profile.status == AthleteStatus.DECLINED:
        return
    latest = _latest(session, profile.person_id)
    if latest is not None and context.now - latest.at < FRESH:
        return
    if profile.frozen_at is not None and profile.frozen_because in (WARNED, OF_EATING_AND_MOOD):
        _ask_tomorrow(session, profile, event, duty, context)
        return
    coach = get_person(session, profile.coach_id)
    name = get_person(session, profile.person_id).first_name
    days_out = (event.day - local_date(profile, context)).days
    with speaking_to(coach):
        say(
            session, chat_id=coach.chat_id, now=context.now,
            text=words.due(name, event.kind, days_out, own=coach.id == profile.person_id),
            buttons=[[Button(words.answer_button(), f"rd:ask:{profile.person_id}")]],
            silent=True,
        )  # fmt: skip


def _ask_tomorrow(
    session: Session, profile: AthleteProfile, event: EventRow, duty: AgendaRow, context: Context
) -> None:
    """While a warning stands, or the mood is low, nobody is asked how lean the athlete is."""
    day = local_date(profile, context) + timedelta(days=1)
    if day < event.day:
        due_at = agenda.local_instant(day, AT, profile.zone or event.zone)
        agenda.put(
            session, subject=duty.subject, local_date=day, kind=duty.kind, due_at=due_at
        )  # fmt: skip


def command(session: Session, coach: Person, rest: str, context: Context) -> None:
    """`/ready`: at once where there is one athlete, else a button an athlete."""
    found = [p for p in athletes_of(session, coach) if p.baseline and p.body_mass_kg is not None]
    if not found:
        say(session, chat_id=coach.chat_id, text=words.nobody(), now=context.now)
    elif len(found) == 1:
        _open(session, coach, found[0], context)
    else:
        keys = [
            [Button(get_person(session, p.person_id).first_name, f"rd:ask:{p.person_id}")]
            for p in found
        ]
        say(
            session, chat_id=coach.chat_id, text=words.which_athlete(), now=context.now,
            buttons=keys,
        )  # fmt: skip


def tapped(
    session: Session, coach: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Buttons "rd:ask:ATHLETE", "rd:on:ROW" and "rd:ok:ROW"."""
    view, number = (*arguments, "", "")[:2]
    if view == "ask":
        profile = own_athlete(session, coach, int(number)) if number.isdigit() else None
        answer(session, incoming, context, "" if profile is not None else words.settled())
        if profile is not None:
            _open(session, coach, profile, context)
        return
    row = session.get(ReadinessRow, int(number)) if number.isdigit() else None
    profile = own_athlete(session, coach, row.athlete_id) if row is not None else None
    if row is None or profile is None or row.went_on:
        answer(session, incoming, context, words.settled())
        return
    answer(session, incoming, context)
    if view == "on":
        asking.open_question(
            session, coach, READY_ANYWAY, context=context, subject_id=profile.person_id,
            answers={"_readiness": row.id},
        )  # fmt: skip
    else:
        rewrite(session, incoming, words.agreed(row.outcome), context)


def answered(session: Session, coach: Person, question: OpenQuestion, context: Context) -> None:
    """Every question is answered: the outcome with its reasons, kept."""
    profile = own_athlete(session, coach, question.subject_id or 0)
    if profile is None:
        return
    athlete, answers = athlete_of(profile), question.answers
    found = readiness(
        athlete,
        baseline_of(profile),
        answers["_years"],
        _questions(profile, athlete, question),
    )
    event = current_event(session, profile.person_id)
    row = ReadinessRow(
        athlete_id=profile.person_id, event_id=event.id if event is not None else None,
        answers={k: v for k, v in answers.items() if not k.startswith("_")},
        outcome=found.outcome, reasons=_kept(found), by_id=coach.id or 0, at=context.now,
    )  # fmt: skip
    session.add(row)
    session.flush()
    record(
        session, profile.person_id, "readiness", context, by=coach.id, readiness=row.id,
        outcome=row.outcome,
    )  # fmt: skip
    keys: list[list[Button]] = []
    if found.outcome is Outcome.RUN and event is not None and plan_row(session, event) is None:
        keys = [[Button(plan_words.draft_plan_button(), f"c:draft:{profile.person_id}")]]
    elif found.outcome is not Outcome.RUN:
        keys = [
            [
                Button(words.agreed_button(row.outcome), f"rd:ok:{row.id}"),
                Button(words.go_on_button(), f"rd:on:{row.id}"),
            ]
        ]
    name, own = get_person(session, profile.person_id).first_name, coach.id == profile.person_id
    say(
        session, chat_id=coach.chat_id, text=words.outcome(name, found, own=own), now=context.now,
        buttons=keys,
    )  # fmt: skip


def went_on(session: Session, coach: Person, question: OpenQuestion, context: Context) -> None:
    """The coach goes on against the outcome; the reason is kept with the answers."""
    row = session.get(ReadinessRow, question.answers["_readiness"])
    if row is None or own_athlete(session, coach, row.athlete_id) is None:
        return
    row.went_on = question.answers["reason"]
    session.add(row)
    record(
        session, row.athlete_id, "went on against readiness", context, by=coach.id,
        readiness=row.id, outcome=row.outcome,
    )  # fmt: skip
    say(session, chat_id=coach.chat_id, text=words.reason_kept(row.went_on), now=context.now)


def _open(session: Session, coach: Person, profile: AthleteProfile, context: Context) -> None:
    name = get_person(session, profile.person_id).first_name
    if not profile.baseline or profile.body_mass_kg is None or profile.birth_year is None:
        say(session, chat_id=coach.chat_id, text=words.no_measures(name), now=context.now)
        return
    asking.open_question(
        session, coach, READY, context=context, subject_id=profile.person_id,
        answers={
            "_name": name,
            "_own": coach.id == profile.person_id,
            "_sex": profile.sex,
            "_years": local_date(profile, context).year - profile.birth_year,
            "_weight_unit": profile.weight_unit,
        },
    )  # fmt: skip


def _questions(profile: AthleteProfile, athlete: Athlete, question: OpenQuestion) -> Questions:
    answers, kg = question.answers, athlete.body_mass_kg
    loss, lost = answers.get("loss_kg"), answers.get("lost_kg")
    fat = answers.get("folds_fat") or answers.get("body_fat")
    # An ordinary training day: one session, as in the flag on energy availability.
    session_kcal = float(KCAL_PER_MET_KG_H) * kg * (float(MET_LIFTING) - 1) * float(LIFTING_SESSION)
    return Questions(
        condition=answers["condition"],
        body_fat_percent=fat if isinstance(fat, int | float) else None,
        loss_percent_per_week=None if loss is None else 100 * loss / WEEKS_OF_LOSS / kg,
        # Of the mass before the diet, as the criterion counts.
        loss_percent_in_all=None if lost is None else 100 * lost / (kg + lost),
        weeks_dieted=answers.get("weeks"),
        periods=Periods(answers.get("periods", Periods.UNKNOWN)),
        sleep_h=answers.get("sleep_h"),
        injury=Injury(answers["injury"]),
        needs_doctor=profile.status == AthleteStatus.DOCTOR_FIRST,
        exercise_kcal=session_kcal,
    )


def _kept(found: Readiness) -> list[dict[str, object]]:
    return [
        {"id": reason.id, "facts": dict(reason.facts), "source": asdict(reason.source)["id"]}
        for reason in found.reasons
    ]


def _latest(session: Session, athlete_id: int) -> ReadinessRow | None:
    query = select(ReadinessRow).where(ReadinessRow.athlete_id == athlete_id)
    return session.exec(query.order_by(col(ReadinessRow.id).desc())).first()
