"""What falls due of a morning: the prompt, the nudges, the missed check-in; and the day after."""

from __future__ import annotations

from sqlalchemy import bindparam
from sqlmodel import Session, col, select

from bot.alerts import alerts
from bot.checkin import checkins, words
from bot.checkin.flow import CHECK_IN, enough
from bot.checkin.flow_reading import ALL_FINE, NOTED
from bot.core.timing.agenda import Subject
from bot.core.turn import Turn
from bot.decision import words_self_coached
from bot.decision.to_athlete import care_for
from bot.dialogue import asking
from bot.event import season
from bot.event.setting import close_week
from bot.people.changes import Change
from bot.people.people import example_of, get_person, is_own_coach, local_date, profile_of, record
from bot.people.telling import say_to
from bot.store.tables.people import AthleteProfile, AthleteStatus, HistoryRow, OpenQuestion
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import CheckInRow
from bot.week import prompts
from bot.week.load import (
    athlete_of,
    baseline_of,
    checkin_row,
    current_event,
    current_week,
    event_of,
)
from engine.safety import safety_flags
from engine.values.case import WeekSoFar
from engine.values.checkin import CheckIn, History
from engine.written.oneline import CORE


def prompt(turn: Turn, duty: AgendaRow) -> None:
    """Ask for the morning's numbers, unless they are there or the morning has gone by."""
    profile = _still_wanted(turn, duty)
    if profile is None:
        return
    person = get_person(turn.session, profile.person_id)
    about = checkins.question_context(turn.session, profile, duty.local_date)
    asking.open_question(turn, person, CHECK_IN, profile.person_id, about)
    prompts.follow_up(turn, profile, duty.local_date)


def nudge(turn: Turn, duty: AgendaRow) -> None:
    """Remind; where the numbers are there and only the last taps are missing, take what there is."""
    profile = _still_wanted(turn, duty)
    if profile is None:
        return
    person = get_person(turn.session, profile.person_id)
    question = _draft(turn.session, profile)
    if question is not None and _enough(question):
        asking.close(turn, question)
        answers = question.answers | {"carb_eaten_g": question.answers.get("carb_eaten_g")}
        checkins.take(turn, profile, checkins.with_note(answers), message_id=None)
        return
    if care_for(turn, profile).unsaid:
        return  # who has just told of eating or mood is not pressed for a weight
    first = prompts.NUDGE.number(duty) == 1
    example = words.example(question.answers) if question is not None else example_of(profile)
    say_to(turn, person, words.nudge(first, example))
    if question is not None and "weight_kg" in question.answers:
        asked_only = asking.FlowBinding(CHECK_IN, checkins.finish)  # nothing is finished by it
        asking.ask_again(turn, person, question, {CHECK_IN.id: asked_only})


def missed(turn: Turn, duty: AgendaRow) -> None:
    """No check-in by the cut-off: the plan holds, and the coach is told. What was told is kept."""
    profile = _still_wanted(turn, duty)
    if profile is None:
        return
    question = _draft(turn.session, profile)
    if question is not None:
        asking.close(turn, question)
        if any(question.answers.get(key) is not None for key in CORE):
            checkins.take_unfinished(turn, profile, question.answers)
            return
        checkins.pass_on_words(turn, profile, question.answers.get(NOTED, ""))
    person = get_person(turn.session, profile.person_id)
    say_to(turn, person, words_self_coached.missed() if is_own_coach(profile) else words.missed())
    record(turn, profile.person_id, Change.MISSED(), by=None)
    week = current_week(turn.session, profile)
    if week is None:
        return
    flags = safety_flags(
        WeekSoFar(
            athlete=athlete_of(profile),
            baseline=baseline_of(profile),
            event=event_of(week.event),
            plan=week.plan,
            history=History(),
            checkin=CheckIn(date=duty.local_date),
        ),
        water_ceiling_l=week.limits.water_ceiling_l,
        mornings_missed=1 if is_own_coach(profile) else _missed_in_silence(turn, profile),
    )
    told = [flag for flag in flags if flag.id == "missed-check-in"]
    alerts.raise_flags(turn, profile, alerts.Found(told, duty.local_date))


def event_over(turn: Turn, duty: AgendaRow) -> None:
    """The morning after: the week is closed, with the cautions for the days that follow."""
    profile = profile_of(turn.session, Subject.ATHLETE.of(duty))
    event = current_event(turn.session, profile.person_id) if profile else None
    if profile is None or event is None or event.day >= duty.local_date:
        return
    event.active = False
    close_week(turn, profile, event)
    season.take_over(turn, profile)


def _still_wanted(turn: Turn, duty: AgendaRow) -> AthleteProfile | None:
    """The athlete, if this morning is still theirs and its check-in is still missing."""
    profile = profile_of(turn.session, Subject.ATHLETE.of(duty))
    if profile is None or profile.status != AthleteStatus.ACTIVE:
        return None
    if duty.local_date != local_date(profile, turn.context):
        return None
    done = checkin_row(turn.session, profile.person_id, duty.local_date)
    return None if done is not None and checkins.is_answered(done) else profile


def _missed_in_silence(turn: Turn, profile: AthleteProfile) -> int:
    """How many check-ins were missed since this athlete last did anything here, this one too."""
    rows = turn.session.exec(_LATELY, params={"athlete": profile.person_id}).all()
    own = [at for what, by, at in rows if by == profile.person_id]
    answered = turn.session.exec(_ANSWERED, params={"athlete": profile.person_id}).first()
    heard = max([*own, *([answered] if answered is not None else [])], default=None)
    return sum(what == Change.MISSED and (heard is None or at > heard) for what, by, at in rows)


_SILENCE_LOOKED_AT = 60  # entries of the history: many more than two days of silence make
_LATELY = (
    select(HistoryRow.what, HistoryRow.by_id, HistoryRow.at)
    .where(HistoryRow.athlete_id == bindparam("athlete"))
    .order_by(col(HistoryRow.id).desc())
    .limit(_SILENCE_LOOKED_AT)
)
_ANSWERED = (
    select(CheckInRow.answered_at)
    .where(CheckInRow.athlete_id == bindparam("athlete"))
    .order_by(col(CheckInRow.date).desc())
    .limit(1)
)


def _draft(session: Session, profile: AthleteProfile) -> OpenQuestion | None:
    person = get_person(session, profile.person_id)
    drafts = asking.open_questions(session, person, flow=CHECK_IN.id, subject_id=profile.person_id)
    return drafts[-1] if drafts else None


def _enough(question: OpenQuestion) -> bool:
    # Somebody who said that something is off is not cut short while saying what.
    return enough(question.answers) and question.answers.get("fine", ALL_FINE) == ALL_FINE
