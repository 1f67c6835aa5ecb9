"""`/ready`: whether a peak week is worth it, asked by the coach or 14 and 8 days before the event."""

from __future__ import annotations

from dataclasses import asdict
from datetime import time, timedelta

from sqlmodel import Session, col, select

from bot.core import agenda, instants
from bot.core.callbacks import answer, rewrite
from bot.core.outbox import Button
from bot.core.turn import Act, Turn
from bot.decision.care import OF_EATING_AND_MOOD, WARNED
from bot.dialogue import asking
from bot.people.changes import Change
from bot.people.people import athletes_of, get_person, local_date, own_athlete, profile_of, record
from bot.people.telling import say_to
from bot.readiness import words
from bot.readiness.flow import READY, READY_ANYWAY
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.store.tables.readiness import ReadinessRow
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import EventRow
from bot.week.load import athlete_of, baseline_of, current_event, plan_row
from bot.week.prompts import subject
from bot.words import common
from engine.evidence.safety import KCAL_PER_MET_KG_H, LIFTING_SESSION, MET_LIFTING
from engine.planning.readiness import Injury, Outcome, Periods, Questions, Readiness, readiness
from engine.values.athlete import Athlete

ASK = "ready"
DAYS_BEFORE = (14, 8)
AT = time(9, 0)
#: Answered so short a time before, it is not asked again.
FRESH = timedelta(days=3)
WEEKS_OF_LOSS = 2


def schedule(turn: Turn, profile: AthleteProfile) -> None:
    """Have it asked 14 and 8 days before the event that counts; a trial needs no such question."""
    for days in DAYS_BEFORE:
        agenda.cancel(turn.session, subject=subject(profile), kind=f"{ASK}:{days}")
    event = current_event(turn.session, profile.person_id)
    if event is None or event.kind == "trial":
        return
    for days in DAYS_BEFORE:
        day = event.day - timedelta(days=days)
        due = instants.local_instant(day, AT, profile.zone or event.zone)
        if due > turn.now:
            agenda.put(
                turn.session,
                subject=subject(profile),
                local_date=day,
                kind=f"{ASK}:{days}",
                due_at=due,
            )


def due(turn: Turn, duty: AgendaRow) -> None:
    """Put the question to the coach, unless it has just been answered."""
    profile = profile_of(turn.session, int(duty.subject.partition(":")[2]))
    event = current_event(turn.session, profile.person_id) if profile is not None else None
    if profile is None or event is None or profile.status == AthleteStatus.DECLINED:
        return
    latest = _latest(turn.session, profile.person_id)
    if latest is not None and turn.now - latest.at < FRESH:
        return
    if profile.frozen_at is not None and profile.frozen_because in (WARNED, OF_EATING_AND_MOOD):
        _ask_tomorrow(turn, profile, event, duty)
        return
    coach = get_person(turn.session, profile.coach_id)
    name = get_person(turn.session, profile.person_id).first_name
    days_out = (event.day - local_date(profile, turn.context)).days
    say_to(
        turn,
        coach,
        lambda: words.due(name, event.kind, days_out, own=coach.id == profile.person_id),
        buttons=lambda: [[Button(words.answer_button(), f"rd:ask:{profile.person_id}")]],
        silent=True,
    )


def _ask_tomorrow(turn: Turn, profile: AthleteProfile, event: EventRow, duty: AgendaRow) -> None:
    """While a warning stands, or the mood is low, nobody is asked how lean the athlete is."""
    day = local_date(profile, turn.context) + timedelta(days=1)
    if day < event.day:
        due_at = instants.local_instant(day, AT, profile.zone or event.zone)
        agenda.put(
            turn.session, subject=duty.subject, local_date=day, kind=duty.kind, due_at=due_at
        )  # fmt: skip


def command(turn: Act) -> None:
    """`/ready`: at once where there is one athlete, else a button an athlete."""
    found = [
        p
        for p in athletes_of(turn.session, turn.person)
        if p.baseline and p.body_mass_kg is not None
    ]
    if not found:
        say_to(turn, turn.person, words.nobody())
    elif len(found) == 1:
        _open(turn, turn.person, found[0])
    else:
        keys = [
            [Button(get_person(turn.session, p.person_id).first_name, f"rd:ask:{p.person_id}")]
            for p in found
        ]
        say_to(turn, turn.person, words.which_athlete(), buttons=keys)


def tapped(turn: Act) -> None:
    """Buttons "rd:ask:ATHLETE", "rd:on:ROW" and "rd:ok:ROW"."""
    view, number = (*turn.arguments, "", "")[:2]
    if view == "ask":
        profile = own_athlete(turn.session, turn.person, int(number)) if number.isdigit() else None
        answer(turn, "" if profile is not None else words.settled())
        if profile is not None:
            _open(turn, turn.person, profile)
        return
    row = turn.session.get(ReadinessRow, int(number)) if number.isdigit() else None
    profile = own_athlete(turn.session, turn.person, row.athlete_id) if row is not None else None
    if row is None or profile is None or row.went_on:
        answer(turn, words.settled())
        return
    answer(turn)
    if view == "on":
        asking.open_question(
            turn, turn.person, READY_ANYWAY, subject_id=profile.person_id,
            answers={"_readiness": row.id},
        )  # fmt: skip
    else:
        rewrite(turn, words.agreed(row.outcome))


def answered(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """Every question is answered: the outcome with its reasons, kept."""
    profile = own_athlete(turn.session, coach, question.about)
    if profile is None:
        return
    athlete, answers = athlete_of(profile), question.answers
    found = readiness(
        athlete,
        baseline_of(profile),
        answers["_years"],
        _questions(profile, athlete, question),
    )
    event = current_event(turn.session, profile.person_id)
    row = ReadinessRow(
        athlete_id=profile.person_id, event_id=event.id if event is not None else None,
        answers={k: v for k, v in answers.items() if not k.startswith("_")},
        outcome=found.outcome, reasons=_kept(found), by_id=id_of(coach), at=turn.now,
    )  # fmt: skip
    turn.session.add(row)
    turn.session.flush()
    record(
        turn, profile.person_id, Change.READINESS, by=coach.id, readiness=row.id,
        outcome=row.outcome,
    )  # fmt: skip
    keys: list[list[Button]] = []
    if found.outcome is Outcome.RUN and event is not None and plan_row(turn.session, event) is None:
        keys = [[Button(common.draft_plan_button(), f"c:draft:{profile.person_id}")]]
    elif found.outcome is not Outcome.RUN:
        keys = [
            [
                Button(words.agreed_button(row.outcome), f"rd:ok:{row.id}"),
                Button(words.go_on_button(), f"rd:on:{row.id}"),
            ]
        ]
    name, own = (
        get_person(turn.session, profile.person_id).first_name,
        coach.id == profile.person_id,
    )
    say_to(turn, coach, words.outcome(name, found, own=own), buttons=keys)


def went_on(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """The coach goes on against the outcome; the reason is kept with the answers."""
    row = turn.session.get(ReadinessRow, question.answers["_readiness"])
    if row is None or own_athlete(turn.session, coach, row.athlete_id) is None:
        return
    row.went_on = question.answers["reason"]
    turn.session.add(row)
    record(
        turn, row.athlete_id, Change.WENT_ON_AGAINST_READINESS, by=coach.id,
        readiness=row.id, outcome=row.outcome,
    )  # fmt: skip
    say_to(turn, coach, words.reason_kept(row.went_on))


def _open(turn: Turn, coach: Person, profile: AthleteProfile) -> None:
    name = get_person(turn.session, profile.person_id).first_name
    if not profile.baseline or profile.body_mass_kg is None or profile.birth_year is None:
        say_to(turn, coach, words.no_measures(name))
        return
    asking.open_question(
        turn, coach, READY, subject_id=profile.person_id,
        answers={
            "_name": name,
            "_own": coach.id == profile.person_id,
            "_sex": profile.sex,
            "_years": local_date(profile, turn.context).year - profile.birth_year,
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
