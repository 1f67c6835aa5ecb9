"""The coach answers a plan's warnings, and looks at all that the review has to say."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.flows.plan_review import PLAN_TOTAL
from bot.incoming import Incoming
from bot.messages import coach_figures as figures
from bot.messages import coach_plan as plan_words
from bot.messages import plan_review as words
from bot.messages import plan_totals as total_words
from bot.outbox import Button, say
from bot.service import asking, plan_gate
from bot.service.people import get_person, own_athlete
from bot.service.plan_numbers import first_things_first, number_is_live
from bot.service.planning import draft_is_live, set_plan
from bot.service.tapping import answer, rewrite
from bot.service.week import athlete_of, baseline_of, current_event, current_plan, plan_row
from bot.store.people import AthleteProfile, OpenQuestion, Person
from engine.plan import DayTarget, PeakPlan
from engine.review import conventions_of, kcal_by_label, review_plan


def review_answered(
    session: Session, coach: Person, question: OpenQuestion, context: Context
) -> None:
    """With a reason the plan goes live, if it still is the change that was asked about."""
    profile = own_athlete(session, coach, question.subject_id or 0)
    answers = question.answers
    if profile is None or not answers["sure"]:
        return
    event = current_event(session, profile.person_id)
    standing = plan_row(session, event) if event is not None else None
    if (
        event is None
        or event.id != answers["_event"]
        or (standing.id if standing is not None else 0) != answers["_base"]
    ):
        button = Button(plan_words.see_plan_button(), f"c:plan:{profile.person_id}")
        say(
            session, chat_id=coach.chat_id, text=words.changed_meanwhile(), now=context.now,
            buttons=[[button]],
        )  # fmt: skip
        return
    plan = PeakPlan(tuple(DayTarget(**day) for day in answers["_days"]))
    before = current_plan(session, event)
    if not set_plan(session, coach, profile, event, plan, shape=answers["_shape"], context=context):
        return
    plan_gate.keep_reason(session, coach, event, answers["_answers"], answers["reason"], context)
    noted = words.reason_noted(answers["reason"])
    if answers["_field"] and before is not None:
        number_is_live(
            session, coach, profile, event, before, plan, answers["_field"],
            answers["_days_out"], context, noted=noted,
        )  # fmt: skip
    else:
        draft_is_live(session, coach, profile, event, plan, context, noted=noted)


def show_review(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """All that the review says of the plan in force, and the reasons kept."""
    answer(session, incoming, context)
    event = current_event(session, profile.person_id)
    plan = current_plan(session, event) if event is not None else None
    if event is None or plan is None:
        first_things_first(session, coach, profile, event, context)
        return
    findings = plan_gate.look_over(session, profile, event, plan, context)
    name, own = get_person(session, profile.person_id).first_name, coach.id == profile.person_id
    kept = words.reasons_kept(
        (figures.moment(row.at, profile.zone), row.reason)
        for row in plan_gate.reasons(session, event)
    )
    text = words.review_view(name, findings, profile.volume_unit, own=own)
    back = [[Button(plan_words.back_button(), f"c:plan:{profile.person_id}")]]
    rewrite(session, incoming, "\n\n".join(p for p in (text, kept) if p), context, back)


def ask_total(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """A button under a day: which total does the coach's own plan give?"""
    answer(session, incoming, context)
    day = _day(session, profile, rest[0] if rest else "")
    if day is None:
        show_review(session, coach, profile, [], incoming, context)
        return
    asking.open_question(
        session, coach, PLAN_TOTAL, context=context, subject_id=profile.person_id,
        answers={"_days_out": day.days_out},
    )  # fmt: skip


def total_given(session: Session, coach: Person, question: OpenQuestion, context: Context) -> None:
    """Hold the stated total against the day's macros, by both label conventions."""
    profile = own_athlete(session, coach, question.subject_id or 0)
    day = _day(session, profile, str(question.answers["_days_out"])) if profile else None
    if profile is None or day is None:
        say(session, chat_id=coach.chat_id, text=plan_words.plan_first(), now=context.now)
        return
    stated = question.answers["kcal"]
    found = review_plan(
        athlete_of(profile), baseline_of(profile), PeakPlan((day,)),
        stated_kcal={day.days_out: stated},
    )  # fmt: skip
    off = [finding for finding in found if finding.id == "total-off"]
    fits = conventions_of(day, stated)
    text = (
        words.findings_text(off, profile.volume_unit)
        if off
        else words.total_fits(stated, *kcal_by_label(day))
    )
    if len(fits) == 1:
        text = f"{text} {total_words.label_convention(fits[0])}"
    button = Button(
        plan_words.day_button(day.days_out), f"c:day:{profile.person_id}:{day.days_out}"
    )
    say(session, chat_id=coach.chat_id, text=text, now=context.now, buttons=[[button]])


def _day(session: Session, profile: AthleteProfile, named: str) -> DayTarget | None:
    event = current_event(session, profile.person_id)
    plan = current_plan(session, event) if event is not None else None
    return plan.day(int(named)) if plan is not None and named.isdigit() else None
