"""The coach drafts the plan; what follows from a week that is complete."""

from __future__ import annotations

from dataclasses import asdict
from datetime import date

from sqlmodel import Session, col, select

from bot.context import Context
from bot.flows.coach_plan import DRAFT, drafted
from bot.incoming import Incoming
from bot.messages import coach_plan as words
from bot.messages import plan_review as review_words
from bot.outbox import Button, say
from bot.service import asking, debrief, deciding, prompts
from bot.service.changes import days_changed, end_hold, standing_before
from bot.service.desk import moment_for
from bot.service.learnt import learnt_g_per_kg
from bot.service.people import get_person, local_date, own_athlete, record, speaking_to
from bot.service.plan_gate import ask_first, keep_reason, look_over, said_of
from bot.service.tapping import answer
from bot.service.week import (
    athlete_of,
    baseline_of,
    checkin_row,
    current_event,
    current_limits,
    current_week,
    plan_days,
    plan_row,
    set_day,
)
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.week import DaySetRow, EventRow, PlanRow
from engine.limits import Limits, Problem, plan_problems
from engine.plan import PeakPlan


def event_line(profile: AthleteProfile, event: EventRow, context: Context) -> str:
    days_out = (event.day - local_date(profile, context)).days
    return words.event_line(event.kind, event.day, event.zone, days_out)


def ask_draft(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """Draft a plan from a shape and the athlete's body mass."""
    answer(session, incoming, context)
    if has_measures(session, coach, profile, context):
        _open_draft(session, coach, profile, context)


def draft_given(session: Session, coach: Person, question: OpenQuestion, context: Context) -> None:
    """The draft is to be used, or another one drafted."""
    profile = own_athlete(session, coach, question.subject_id or 0)
    if profile is None:
        return
    if not question.answers["use"]:
        _open_draft(session, coach, profile, context)
        return
    event = current_event(session, profile.person_id)
    if event is None:
        say(session, chat_id=coach.chat_id, text=words.event_first(), now=context.now)
        return
    shape, plan = question.answers["shape"], drafted(question.answers)
    reason = question.answers.get("deep_reason", "")
    use_plan(session, coach, profile, event, plan, shape=shape, context=context, reason=reason)


def use_plan(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    event: EventRow,
    plan: PeakPlan,
    *,
    shape: str,
    context: Context,
    reason: str = "",
    how: str = "",
) -> None:
    """Put a whole new plan in force and say what comes next; or ask, or say where it won't fit.

    `reason`: why the coach wants its deep depletion, where it has one; kept with the plan. `how`: by
    what it came about, where something else was changed along with it.
    """
    if ask_first(session, coach, profile, event, plan, shape=shape, context=context):
        return
    if not set_plan(session, coach, profile, event, plan, shape=shape, context=context, how=how):
        return
    if reason:
        findings = look_over(session, profile, event, plan, context)
        deep = [finding for finding in findings if finding.id == "deep-depletion"]
        keep_reason(session, coach, event, said_of(deep), reason, context)
    noted = review_words.reason_noted(reason) if reason else ""
    draft_is_live(session, coach, profile, event, plan, context, noted=noted)


def draft_is_live(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    event: EventRow,
    plan: PeakPlan,
    context: Context,
    *,
    noted: str = "",
) -> None:
    """What follows from a whole new plan: it is said with what the review found, the days follow."""
    days_follow_plan(session, profile, context)
    was_complete = current_limits(session, event, athlete_of(profile)) is not None
    findings = look_over(session, profile, event, plan, context)
    parts = (
        words.plan_set(own=coach.id == profile.person_id),
        noted,
        review_words.looked_over(findings, profile.volume_unit),
    )
    following = (
        Button(words.see_plan_button(), f"c:plan:{profile.person_id}"),
        Button(
            words.see_limits_button() if was_complete else words.set_limits_button(),
            f"c:limits:{profile.person_id}",
        ),
    )
    text = "\n\n".join(part for part in parts if part)
    say(session, chat_id=coach.chat_id, text=text, now=context.now, buttons=[following])
    if was_complete:
        week_changed(session, coach, profile, context, because="plan-changed", was_complete=True)


def set_plan(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    event: EventRow,
    plan: PeakPlan,
    *,
    shape: str,
    context: Context,
    how: str = "",
) -> bool:
    """Keep a new version of the plan; False, with the days and bounds said, where it does not fit."""
    problems = plan_misfits(session, profile, event, plan)
    if problems:
        say_problems(session, coach, profile, problems, context)
        return False
    earlier = plan_row(session, event)
    row = PlanRow(
        event_id=event.id or 0,
        shape=shape,
        days=plan_days(plan),
        set_by=coach.id or 0,
        set_at=context.now,
    )
    session.add(row)
    session.flush()
    record(
        session, profile.person_id, "plan set", context, by=coach.id, plan=row.id, shape=shape,
        how=how,
        before={
            "plan": earlier.id if earlier is not None else None,
            **standing_before(session, profile, context),
        },
        changed=days_changed(earlier.days if earlier is not None else [], row.days),
    )  # fmt: skip
    return True


def plan_misfits(
    session: Session, profile: AthleteProfile, event: EventRow, plan: PeakPlan
) -> tuple[Problem, ...]:
    """Where a plan leaves the limits in force, or else those that would be suggested around it."""
    athlete = athlete_of(profile)
    limits = current_limits(session, event, athlete) or Limits.suggested(
        athlete, plan, baseline_of(profile)
    )
    return plan_problems(plan, limits)


def say_problems(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    problems: tuple[Problem, ...],
    context: Context,
) -> None:
    say(
        session, chat_id=coach.chat_id, now=context.now,
        text=words.does_not_fit(problems, profile.volume_unit),
        buttons=[
            [
                Button(words.see_plan_button(), f"c:plan:{profile.person_id}"),
                Button(words.see_limits_button(), f"c:limits:{profile.person_id}"),
            ]
        ],
    )  # fmt: skip


def days_follow_plan(
    session: Session, profile: AthleteProfile, context: Context, *, only: date | None = None
) -> None:
    """Figures set earlier for today and later give way to the plan that the coach has just set."""
    week = current_week(session, profile)
    if week is None:
        return
    if only is None:
        end_hold(session, profile.person_id, local_date(profile, context), context)
    query = select(DaySetRow).where(
        DaySetRow.athlete_id == profile.person_id,
        DaySetRow.date >= local_date(profile, context),
    )
    for row in session.exec(query.order_by(col(DaySetRow.date))).all():
        planned = week.plan.day(week.days_out(row.date))
        if planned is not None and only in (None, row.date):
            set_day(
                session, profile.person_id, row.date, planned.carb_g, by="plan", context=context
            )


def week_changed(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    context: Context,
    *,
    because: str,
    was_complete: bool,
) -> None:
    """Lay out the mornings anew; decide today anew, or say that everything is set at last."""
    week = current_week(session, profile)
    if week is None:
        return
    first = prompts.schedule(session, profile, context=context)
    if not was_complete:
        athlete = get_person(session, profile.person_id)
        own = coach.id == profile.person_id
        if first is None:
            text = words.all_set_but_waiting(athlete.first_name, profile.status)
            say(session, chat_id=coach.chat_id, text=text, now=context.now)
        else:
            text = words.all_set(
                athlete.first_name, moment_for(session, coach, profile, first), own=own
            )
            say(session, chat_id=coach.chat_id, text=text, now=context.now)
            if not own:
                with speaking_to(athlete):
                    text = words.athlete_all_set(
                        coach.first_name, moment_for(session, athlete, profile, first)
                    )
                    say(session, chat_id=athlete.chat_id, text=text, now=context.now)
    if was_complete or _checked_in_today(session, profile, context):
        deciding.redecide(session, profile, context=context, because=because)


def _checked_in_today(session: Session, profile: AthleteProfile, context: Context) -> bool:
    return checkin_row(session, profile.person_id, local_date(profile, context)) is not None


def has_measures(
    session: Session, coach: Person, profile: AthleteProfile, context: Context
) -> bool:
    """Whether the first questions are answered; if not, the coach is told so."""
    if profile.body_mass_kg is not None and profile.zone is not None and profile.baseline:
        return True
    name = get_person(session, profile.person_id).first_name
    say(session, chat_id=coach.chat_id, text=words.no_measures_yet(name), now=context.now)
    return False


def _open_draft(session: Session, coach: Person, profile: AthleteProfile, context: Context) -> None:
    event = current_event(session, profile.person_id)
    if event is None:
        say(session, chat_id=coach.chat_id, text=words.event_first(), now=context.now)
        return
    debrief.before_draft(session, coach, profile, context)
    asking.open_question(
        session, coach, DRAFT, context=context, subject_id=profile.person_id,
        answers={
            "_name": get_person(session, profile.person_id).first_name,
            "_own": coach.id == profile.person_id,
            "_athlete": asdict(athlete_of(profile)),
            "_baseline": dict(profile.baseline),
            "_event_day": event.day.isoformat(),
            "_kind": event.kind,
            "_today": local_date(profile, context).isoformat(),
            "_weight_unit": profile.weight_unit,
            "_volume_unit": profile.volume_unit,
            "_learnt": learnt_g_per_kg(session, profile, context),
        },
    )  # fmt: skip
