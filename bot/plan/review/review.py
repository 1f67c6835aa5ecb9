"""The coach answers a plan's warnings, and looks at all that the review has to say."""

from __future__ import annotations

from sqlmodel import Session

from bot.core.chat.cards import PLAN, OfEvent
from bot.core.chat.outbox import Button
from bot.core.turn import OnAthlete, Turn
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.people.coach_settings import own_moment
from bot.people.people import name_of
from bot.people.telling import answer, rewrite, say_to
from bot.plan import words as plan_words
from bot.plan.buttons import DAY, OfDay
from bot.plan.numbers import meant_plan, number_is_live
from bot.plan.planning import THE_ONE, draft_is_live, meant_event, naming, raise_limits, set_plan
from bot.plan.prep import Figure, Prep, Version, asked_event, plan_id
from bot.plan.review import flow as flow_review
from bot.plan.review import gate as plan_gate
from bot.plan.review.flow import PLAN_TOTAL
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow
from bot.week.load import athlete_of, baseline_of, current_plan, plan_from
from bot.words.common import step_back_button
from engine.planning.review import conventions_of, kcal_by_label, review_plan
from engine.values.plan import DayTarget, PeakPlan


def review_answered(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    """With a reason the plan goes live, if it still is the change that was asked about."""
    if not answers["sure"]:
        return
    event = asked_event(turn.session, profile, answers)
    if event is None or plan_id(turn.session, event) != answers["_base"]:
        button = Button(plan_words.see_plan_button(), PLAN(profile.person_id))
        say_to(turn, coach, flow_review.changed_meanwhile(), buttons=[[button]])
        return
    plan = plan_from(answers["_days"])
    before, prep = current_plan(turn.session, event), Prep(turn, coach, profile, event)
    if answers.get("_bounds"):
        raise_limits(prep, answers["_bounds"])
    if not set_plan(prep, Version(plan, answers["_shape"])):
        return
    plan_gate.keep_reason(prep, answers["_answers"], answers["reason"])
    noted = flow_review.reason_noted(answers["reason"])
    if answers["_field"] and before is not None:
        changed = Figure(answers["_days_out"], answers["_field"])
        number_is_live(prep, before, plan, changed, noted=noted)
    else:
        draft_is_live(prep, plan, noted=noted)


def show_review(turn: OnAthlete, pressed: OfEvent) -> None:
    """All that the review says of the plan in force, and the reasons kept."""
    answer(turn)
    meant = meant_plan(turn, pressed)
    if meant is None:
        return
    event, plan = meant
    findings = plan_gate.look_over(turn, turn.profile, event, plan)
    name, self_coached = name_of(turn.session, turn.profile.person_id), turn.self_coached
    kept = flow_review.reasons_kept(
        (own_moment(turn.session, turn.person, turn.profile, row.at), row.reason)
        for row in plan_gate.reasons(turn.session, event)
    )
    text = flow_review.review_view(
        name, findings, turn.profile.volume_unit, self_coached=self_coached
    )
    ahead = naming(turn.session, turn.profile, event)
    back = [[Button(step_back_button(), PLAN(turn.profile.person_id, ahead))]]
    rewrite(turn, "\n\n".join(p for p in (text, kept) if p), back)


def ask_total(turn: OnAthlete, pressed: OfDay) -> None:
    """A button under a day: which total does the coach's own plan give?"""
    answer(turn)
    event = meant_event(turn, pressed.event)
    day = _day(turn.session, event, pressed.days_out)
    if event is None or day is None:
        show_review(turn, THE_ONE)
        return
    asking.open_question(turn, turn.person, PLAN_TOTAL, turn.profile.person_id, {
        "_days_out": day.days_out, "_event": event.id,
    })  # fmt: skip


def total_given(prep: Prep, answers: Answers) -> None:
    """Hold the stated total against the day's macros, by both label conventions."""
    turn, coach, profile, event = prep.turn, prep.coach, prep.profile, prep.event
    day, stated = _day(turn.session, event, answers["_days_out"]), answers["kcal"]
    if day is None:
        say_to(turn, coach, plan_words.plan_first())
        return
    found = review_plan(
        athlete_of(profile), baseline_of(profile), PeakPlan((day,)),
        stated_kcal={day.days_out: stated},
    )  # fmt: skip
    off = [finding for finding in found if finding.id == "total-off"]
    fits = conventions_of(day, stated)
    text = (
        flow_review.findings_text(off, profile.volume_unit)
        if off
        else flow_review.total_fits(stated, *kcal_by_label(day))
    )
    if len(fits) == 1:
        text = f"{text} {flow_review.label_convention(fits[0])}"
    ahead = naming(turn.session, profile, event)
    button = Button(
        plan_words.day_button(day.days_out), DAY(profile.person_id, day.days_out, ahead)
    )
    say_to(turn, coach, text, buttons=[[button]])


def _day(session: Session, event: EventRow | None, days_out: int | None) -> DayTarget | None:
    plan = current_plan(session, event) if event is not None else None
    return plan.day(days_out) if plan is not None and days_out is not None else None
