"""What falls due of a morning: the prompt, the nudges, the missed check-in; and the day after."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.flows.checkin import ALL_FINE, CHECK_IN, NOTED, enough
from bot.messages import athlete as words
from bot.messages import on_your_own
from bot.outbox import say
from bot.service import alerts, asking, checkins, prompts
from bot.service.people import get_person, is_own_coach, local_date, profile_of, record
from bot.service.week import (
    athlete_of,
    baseline_of,
    checkin_row,
    current_event,
    current_week,
)
from bot.service.week_over import close_week
from bot.store.people import AthleteProfile, AthleteStatus, OpenQuestion
from bot.store.traffic import AgendaRow
from engine.athlete import Event, EventKind
from engine.checkin import CheckIn, History
from engine.safety import safety_flags


def prompt(session: Session, duty: AgendaRow, context: Context) -> None:
    """Ask for the morning's numbers, unless they are there or the morning has gone by."""
    profile = _still_wanted(session, duty, context)
    if profile is None:
        return
    person = get_person(session, profile.person_id)
    asking.open_question(
        session, person, CHECK_IN, context=context, subject_id=profile.person_id,
        answers=checkins.question_context(session, profile, duty.local_date),
    )  # fmt: skip
    prompts.follow_up(session, profile, duty.local_date, context=context)


def nudge(session: Session, duty: AgendaRow, context: Context) -> None:
    """Remind; where the numbers are there and only the last taps are missing, take what there is."""
    profile = _still_wanted(session, duty, context)
    if profile is None:
        return
    person = get_person(session, profile.person_id)
    question = _draft(session, profile)
    if question is not None and _enough(question):
        asking.close(session, question, context)
        answers = question.answers | {"carb_eaten_g": question.answers.get("carb_eaten_g")}
        checkins.take_draft(session, profile, answers, context)
        return
    first = duty.kind.endswith(":1")
    say(session, chat_id=person.chat_id, text=words.nudge(first), now=context.now)
    if question is not None and "weight_kg" in question.answers:
        asking.ask_again(session, person, question, {CHECK_IN.id: _asked_only()}, context)


def missed(session: Session, duty: AgendaRow, context: Context) -> None:
    """No check-in by the cut-off: the plan holds, and the coach is told."""
    profile = _still_wanted(session, duty, context)
    if profile is None:
        return
    question = _draft(session, profile)
    if question is not None:
        asking.close(session, question, context)
        checkins.pass_on_words(session, profile, question.answers.get(NOTED, ""), context)
    person = get_person(session, profile.person_id)
    text = on_your_own.missed() if is_own_coach(profile) else words.missed()
    say(session, chat_id=person.chat_id, text=text, now=context.now)
    record(session, profile.person_id, "missed", context, by=None)
    week = current_week(session, profile)
    if week is None:
        return
    flags = safety_flags(
        athlete=athlete_of(profile),
        baseline=baseline_of(profile),
        plan=week.plan,
        event=Event(kind=EventKind(week.event.kind), day=week.event.day, zone=week.event.zone),
        history=History(),
        checkin=CheckIn(date=duty.local_date),
        water_ceiling_l=week.limits.water_ceiling_l,
        mornings_missed=1,
    )
    told = [flag for flag in flags if flag.id == "missed-check-in"]
    alerts.raise_flags(session, profile, told, day=duty.local_date, context=context)


def event_over(session: Session, duty: AgendaRow, context: Context) -> None:
    """The morning after: the week is closed, with the cautions for the days that follow."""
    profile = profile_of(session, int(duty.subject.partition(":")[2]))
    event = current_event(session, profile.person_id) if profile else None
    if profile is None or event is None or event.day >= duty.local_date:
        return
    event.active = False
    session.add(event)
    close_week(session, profile, event, context)


def _still_wanted(session: Session, duty: AgendaRow, context: Context) -> AthleteProfile | None:
    """The athlete, if this morning is still theirs and its check-in is still missing."""
    profile = profile_of(session, int(duty.subject.partition(":")[2]))
    if profile is None or profile.status != AthleteStatus.ACTIVE:
        return None
    if duty.local_date != local_date(profile, context):
        return None
    done = checkin_row(session, profile.person_id, duty.local_date)
    return None if done is not None and checkins.is_answered(done) else profile


def _draft(session: Session, profile: AthleteProfile) -> OpenQuestion | None:
    person = get_person(session, profile.person_id)
    drafts = asking.open_questions(session, person, flow=CHECK_IN.id, subject_id=profile.person_id)
    return drafts[-1] if drafts else None


def _enough(question: OpenQuestion) -> bool:
    # Somebody who said that something is off is not cut short while saying what.
    return enough(question.answers) and question.answers.get("fine", ALL_FINE) == ALL_FINE


def _asked_only() -> asking.Registered:
    """The check-in's flow for asking a step once more, which finishes nothing."""
    return asking.Registered(CHECK_IN, checkins.finish)
