"""`/ready`: whether a peak week is worth it, asked for by either, or 14 and 8 days before the event.

The coach is asked for judgement (condition, the diet so far), the athlete for their health. Either may
begin; what was answered waits for the other half, and both get the result.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import asdict
from datetime import time, timedelta
from typing import Any

from sqlmodel import Session, col, select

from bot.core.chat.cards import DRAFT
from bot.core.chat.outbox import SILENTLY, Button
from bot.core.timing import agenda, instants
from bot.core.timing.agenda import Several, Subject
from bot.core.turn import Act, Turn
from bot.decision.to_athlete import OF_EATING_AND_MOOD, WARNED
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.people.changes import Change
from bot.people.people import (
    athletes_of,
    get_person,
    is_own_coach,
    local_date,
    name_of,
    own_athlete,
    profile_of,
    record,
)
from bot.people.telling import answer, rewrite, say_to
from bot.readiness import words
from bot.readiness.buttons import READINESS, Do, OnReadiness
from bot.readiness.flow import READY, READY_ANYWAY, READY_HEALTH
from bot.store.base import id_of
from bot.store.tables.event import ReadinessRow
from bot.store.tables.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import EventRow
from bot.week.load import athlete_of, baseline_of, current_event, plan_row
from bot.week.prompts import subject
from bot.words import common
from engine.evidence.safety import KCAL_PER_MET_KG_H, LIFTING_SESSION, MET_LIFTING
from engine.planning.readiness import (
    Energy,
    Injury,
    Outcome,
    Periods,
    Questions,
    Readiness,
    readiness,
)
from engine.values.athlete import Athlete

ASK = Several("ready")
DAYS_BEFORE = (14, 8)
AT = time(9, 0)
#: Answered so short a time before, it is not asked again.
FRESH = timedelta(days=3)
WEEKS_OF_LOSS = 2
#: One half waits so long for the other; our own choice: until it is asked for the second time.
WAITS_FOR = timedelta(days=6)
OPEN = "open"  # the outcome of a row of which one half is still to come
JUDGEMENT, HEALTH = "condition", "injury"  # the answers by which a half is known to be there


def schedule(turn: Turn, profile: AthleteProfile) -> None:
    """Have it asked 14 and 8 days before the event that counts; a trial needs no such question."""
    asked = [ASK(days) for days in DAYS_BEFORE]
    agenda.cancel(turn.session, subject=subject(profile), kinds=asked)
    event = current_event(turn.session, profile.person_id)
    if event is None or event.kind == "trial":
        return
    for days in DAYS_BEFORE:
        day = event.day - timedelta(days=days)
        due = instants.local_instant(day, AT, profile.zone or event.zone)
        if due > turn.now:
            agenda.put(turn.session, agenda.Named(subject(profile), day, ASK(days)), due_at=due)


def due(turn: Turn, duty: AgendaRow) -> None:
    """Put the question to the coach, unless it has just been answered."""
    profile = profile_of(turn.session, Subject.ATHLETE.of(duty))
    event = current_event(turn.session, profile.person_id) if profile is not None else None
    if profile is None or event is None or profile.status == AthleteStatus.DECLINED:
        return
    latest = _latest(turn.session, profile.person_id)
    if latest is not None and latest.outcome != OPEN and turn.now - latest.at < FRESH:
        return
    if profile.frozen_at is not None and profile.frozen_because in (WARNED, OF_EATING_AND_MOOD):
        _ask_tomorrow(turn, profile, event, duty)
        return
    coach = get_person(turn.session, profile.coach_id)
    athlete = get_person(turn.session, profile.person_id)
    days_out = (event.day - local_date(profile, turn.context)).days
    open_ = _open_row(turn, profile)
    there = open_.answers if open_ is not None else {}
    self_coached = is_own_coach(profile)
    if JUDGEMENT not in there:
        say_to(
            turn,
            coach,
            lambda: words.due(athlete.first_name, event.kind, days_out, self_coached=self_coached),
            buttons=lambda: [[Button(words.answer_button(), READINESS(Do.ASK, profile.person_id))]],
            how=SILENTLY,
        )
    if HEALTH not in there and not self_coached:
        _ask_athlete(
            turn, athlete, lambda: words.due_for_athlete(event.kind, days_out, coach.first_name)
        )


def _ask_tomorrow(turn: Turn, profile: AthleteProfile, event: EventRow, duty: AgendaRow) -> None:
    """While a warning stands, or the mood is low, nobody is asked how lean the athlete is."""
    day = local_date(profile, turn.context) + timedelta(days=1)
    if day < event.day:
        due_at = instants.local_instant(day, AT, profile.zone or event.zone)
        agenda.put(turn.session, agenda.Named(duty.subject, day, duty.kind), due_at=due_at)


def command(turn: Act) -> None:
    """`/ready`: at once where there is one to ask about, else a button each."""
    found = [
        p
        for p in athletes_of(turn.session, turn.person)
        if p.baseline and p.body_mass_kg is not None
    ]
    own = profile_of(turn.session, turn.person.id)
    coached = own is not None and not is_own_coach(own)
    keys = [
        [Button(name_of(turn.session, p.person_id), READINESS(Do.ASK, p.person_id))] for p in found
    ]
    if coached and keys:
        keys.append([Button(words.about_me_button(), READINESS(Do.ME))])
    if own is not None and coached and not keys:
        _open_health(turn, turn.person, own)
    elif not keys:
        say_to(turn, turn.person, words.nobody())
    elif len(keys) == 1:
        _open(turn, turn.person, found[0])
    else:
        say_to(turn, turn.person, words.which_athlete(), buttons=keys)


def tapped(turn: Act, pressed: OnReadiness) -> None:
    do, number = pressed
    if do is Do.ME:
        own = profile_of(turn.session, turn.person.id)
        answer(turn, "" if own is not None else common.settled_already())
        if own is not None:
            _open_health(turn, turn.person, own)
        return
    if do in (Do.ASK, Do.AGAIN, Do.MINE):
        profile = own_athlete(turn.session, turn.person, number or 0)
        answer(turn, "" if profile is not None else common.settled_already())
        if profile is not None and do is Do.AGAIN:
            athlete = get_person(turn.session, profile.person_id)
            _ask_athlete(turn, athlete, lambda: words.asked_by_coach(turn.person.first_name))
            rewrite(turn, words.asked_again(athlete.first_name))
        elif profile is not None:
            _open(turn, turn.person, profile, anew=do is Do.MINE)
        return
    row = turn.session.get(ReadinessRow, number) if number is not None else None
    profile = own_athlete(turn.session, turn.person, row.athlete_id) if row is not None else None
    if row is None or profile is None or row.went_on:
        answer(turn, common.settled_already())
        return
    answer(turn)
    if do is Do.GO_ON:
        asking.open_question(turn, turn.person, READY_ANYWAY, profile.person_id, {
            "_readiness": row.id,
        })  # fmt: skip
    else:
        rewrite(turn, words.agreed(row.outcome))


def answered(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    """The coach's questions are answered: the outcome, or what is still open."""
    row = _taken(turn, profile, coach, answers)
    if HEALTH in row.answers:
        _conclude(turn, profile, row)
        return
    athlete = get_person(turn.session, profile.person_id)
    say_to(turn, coach, words.athlete_open(athlete.first_name))
    _ask_athlete(turn, athlete, lambda: words.asked_by_coach(coach.first_name))


def health_given(turn: Turn, athlete: Person, question: OpenQuestion) -> None:
    """The athlete's questions are answered: the outcome, or what is still open."""
    profile = profile_of(turn.session, athlete.id)
    if profile is None or profile.status in (AthleteStatus.ENDED, AthleteStatus.DECLINED):
        return
    row = _taken(turn, profile, athlete, question.answers)
    if JUDGEMENT in row.answers:
        _conclude(turn, profile, row)
        return
    coach = get_person(turn.session, profile.coach_id)
    say_to(turn, athlete, words.coach_open(coach.first_name))
    say_to(
        turn,
        coach,
        lambda: words.athlete_answered(athlete.first_name),
        buttons=lambda: [[Button(words.answer_button(), READINESS(Do.ASK, profile.person_id))]],
        how=SILENTLY,
    )


def _taken(turn: Turn, profile: AthleteProfile, by: Person, answers: Answers) -> ReadinessRow:
    """The row with these answers in it, beside those of the other half if they wait."""
    given = {k: v for k, v in answers.items() if not k.startswith("_")}
    row = _open_row(turn, profile)
    event = current_event(turn.session, profile.person_id)
    if row is None:
        row = ReadinessRow(
            athlete_id=profile.person_id, answers={}, outcome=OPEN, reasons=[], by_id=id_of(by),
            at=turn.now,
        )  # fmt: skip
    row.event_id = event.id if event is not None else None
    if JUDGEMENT in given:
        row.by_id = id_of(by)
    row.answers, row.at = {**row.answers, **given}, turn.now
    turn.session.add(row)
    turn.session.flush()
    return row


def _conclude(turn: Turn, profile: AthleteProfile, row: ReadinessRow) -> None:
    """Both halves are there: the outcome with its reasons, kept and told to both."""
    athlete = athlete_of(profile)
    years = local_date(profile, turn.context).year - (profile.birth_year or 0)
    found = readiness(
        athlete, baseline_of(profile), years, _questions(profile, athlete, row.answers)
    )
    event = current_event(turn.session, profile.person_id)
    row.outcome, row.reasons = found.outcome, _kept(found)
    turn.session.add(row)
    entry = Change.READINESS(readiness=id_of(row), outcome=row.outcome)
    record(turn, profile.person_id, entry, by=row.by_id)
    coach = get_person(turn.session, profile.coach_id)
    person, self_coached = get_person(turn.session, profile.person_id), is_own_coach(profile)
    to_draft = event is not None and plan_row(turn.session, event) is None
    say_to(
        turn,
        coach,
        lambda: words.outcome(person.first_name, found, self_coached=self_coached),
        buttons=lambda: _keys(profile, row, found, to_draft=to_draft),
    )
    if not self_coached:
        say_to(turn, person, lambda: words.outcome_for_athlete(found, coach.first_name))


def _keys(
    profile: AthleteProfile, row: ReadinessRow, found: Readiness, *, to_draft: bool
) -> list[list[Button]]:
    if found.outcome is Outcome.RUN:
        draft = Button(common.draft_plan_button(), DRAFT(profile.person_id))
        return [[draft]] if to_draft else []
    return [
        [
            Button(words.agreed_button(row.outcome), READINESS(Do.AGREED, id_of(row))),
            Button(words.go_on_button(), READINESS(Do.GO_ON, id_of(row))),
        ]
    ]


def went_on(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """The coach goes on against the outcome; the reason is kept with the answers."""
    row = turn.session.get(ReadinessRow, question.answers["_readiness"])
    if row is None or own_athlete(turn.session, coach, row.athlete_id) is None:
        return
    row.went_on = question.answers["reason"]
    turn.session.add(row)
    entry = Change.WENT_ON_AGAINST_READINESS(readiness=id_of(row), outcome=row.outcome)
    record(turn, row.athlete_id, entry, by=coach.id)
    say_to(turn, coach, words.reason_kept(row.went_on))


def _open(turn: Turn, coach: Person, profile: AthleteProfile, *, anew: bool = False) -> None:
    name = name_of(turn.session, profile.person_id)
    if not profile.baseline or profile.body_mass_kg is None or profile.birth_year is None:
        say_to(turn, coach, words.no_measures(name))
        return
    waits = _open_row(turn, profile)
    if waits is not None and JUDGEMENT in waits.answers and not anew:
        keys = [
            [Button(words.ask_again_button(name), READINESS(Do.AGAIN, profile.person_id))],
            [Button(words.mine_anew_button(), READINESS(Do.MINE, profile.person_id))],
        ]
        say_to(turn, coach, words.in_place(name, waits.answers[JUDGEMENT]), buttons=keys)
        return
    asking.open_question(turn, coach, READY, profile.person_id, {
        "_name": name,
        "_own": coach.id == profile.person_id,
        "_sex": profile.sex,
        "_years": local_date(profile, turn.context).year - profile.birth_year,
        "_weight_unit": profile.weight_unit,
    })  # fmt: skip


def _open_health(turn: Turn, athlete: Person, profile: AthleteProfile) -> None:
    if not profile.baseline or profile.sex is None:
        say_to(turn, athlete, words.first_questions_first())
        return
    asking.open_question(turn, athlete, READY_HEALTH, profile.person_id, {"_sex": profile.sex})


def _ask_athlete(turn: Turn, athlete: Person, sentence: Callable[[], str]) -> None:
    say_to(
        turn, athlete, sentence,
        buttons=lambda: [[Button(words.answer_button(), READINESS(Do.ME))]], how=SILENTLY,
    )  # fmt: skip


def _questions(profile: AthleteProfile, athlete: Athlete, answers: Mapping[str, Any]) -> Questions:
    kg, energy = athlete.body_mass_kg, answers.get("energy")
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
        energy=Energy(energy) if energy is not None else None,
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


def _open_row(turn: Turn, profile: AthleteProfile) -> ReadinessRow | None:
    """The half that is there, while it waits for the other one."""
    row = _latest(turn.session, profile.person_id)
    waits = row is not None and row.outcome == OPEN and turn.now - row.at < WAITS_FOR
    return row if waits else None


def _latest(session: Session, athlete_id: int) -> ReadinessRow | None:
    query = select(ReadinessRow).where(ReadinessRow.athlete_id == athlete_id)
    return session.exec(query.order_by(col(ReadinessRow.id).desc())).first()
