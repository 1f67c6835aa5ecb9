"""The coach drafts the plan; what follows from a week that is complete."""

from __future__ import annotations

from dataclasses import asdict, replace
from datetime import date

from sqlmodel import Session, col, select

from bot.core.chat.cards import LIMITS, PLAN, OfEvent
from bot.core.chat.outbox import Button
from bot.core.turn import Context, OnAthlete, Turn
from bot.debrief import debrief
from bot.decision import deciding
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.people.changes import Change
from bot.people.coach_settings import moment_for
from bot.people.people import get_person, local_date, name_of, record
from bot.people.telling import say_to, tell_athlete
from bot.plan import flow_limits, words
from bot.plan.flow import DRAFT, drafted
from bot.plan.flow_limits import CUT, LEAVE, RAISE, draft_of, edited
from bot.plan.next_load.learnt import learnt_g_per_kg
from bot.plan.prep import (
    Prep,
    Version,
    asked_event,
    limits_for,
    limits_id,
    offer_room,
    plan_id,
    store_limits,
)
from bot.plan.review import flow as flow_review
from bot.plan.review.gate import ask_first, keep_reason, look_over, said_of
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import DaySetRow, EventRow, PlanRow
from bot.week import prompts
from bot.week.load import (
    Figure,
    athlete_of,
    baseline_of,
    checkin_row,
    current_event,
    current_limits,
    current_week,
    event_ahead,
    plan_days,
    plan_from,
    plan_row,
    set_day,
)
from bot.week.snapshots import days_changed, end_hold, take_snapshot
from bot.words.common import cancelled
from engine.planning.drafting.template import named
from engine.planning.fitting import cut_to_fit
from engine.values.limits import GuardRails, Limits, Problem, plan_problems
from engine.values.plan import PeakPlan

#: The event that counts.
THE_ONE = OfEvent()


def event_line(profile: AthleteProfile, event: EventRow, context: Context) -> str:
    days_out = (event.day - local_date(profile, context)).days
    return words.event_line(event.kind, event.day, event.zone, days_out)


def ask_draft(turn: OnAthlete, pressed: OfEvent) -> None:
    """Draft a plan from a shape and the athlete's body mass, for an event ahead where one is named."""
    if has_measures(turn, turn.person, turn.profile):
        open_draft(turn, turn.person, turn.profile, meant_event(turn, pressed.event))


def meant_event(turn: OnAthlete, named: int | None) -> EventRow | None:
    """The event ahead that a button names; the one that counts where it names none."""
    if named is not None:
        return event_ahead(turn.session, turn.profile.person_id, named)
    return current_event(turn.session, turn.profile.person_id)


def naming(session: Session, profile: AthleteProfile, event: EventRow) -> int | None:
    """What a button carries to name the event; None for the one that counts."""
    return None if counts_now(session, profile, event) else id_of(event)


def meant_for(session: Session, profile: AthleteProfile, event: EventRow) -> str:
    """Which event something is for, in words; "" for the one that counts."""
    if counts_now(session, profile, event):
        return ""
    return words.meant_for(event.kind, event.day)


def draft_given(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    """The draft is to be used, or another one drafted."""
    event = asked_event(turn.session, profile, answers)
    if not answers["use"]:
        open_draft(turn, coach, profile, event)
        return
    if event is None:
        say_to(turn, coach, words.event_first())
        return
    version = Version(drafted(answers), answers["shape"], answers.get("deep_reason", ""))
    use_plan(Prep(turn, coach, profile, event), version)


def use_plan(prep: Prep, version: Version, *, bounds: dict[str, float] | None = None) -> None:
    """Put a whole new plan in force and say what comes next; or ask, or say where it won't fit.

    `bounds`: limits that the coach has agreed to for it, which count from when the plan does.
    """
    turn, profile, event = prep.turn, prep.profile, prep.event
    plan = named(version.plan, baseline_of(profile))
    version, reason = replace(version, plan=plan), version.reason
    if bounds is None and plan_misfits(turn.session, profile, event, plan):
        offer_room(prep, version)
        return
    if ask_first(prep, version, bounds=bounds):
        return
    if bounds is not None:
        raise_limits(prep, bounds)
    if not set_plan(prep, version):
        return
    if reason:
        findings = look_over(turn, profile, event, plan)
        deep = [finding for finding in findings if finding.id == "deep-depletion"]
        keep_reason(prep, said_of(deep), reason)
    noted = flow_review.reason_noted(reason) if reason else ""
    draft_is_live(prep, plan, noted=noted)


def draft_is_live(prep: Prep, plan: PeakPlan, *, noted: str = "") -> None:
    """What follows from a whole new plan: it is said with what the review found, the days follow."""
    turn, coach, profile, event = prep.turn, prep.coach, prep.profile, prep.event
    counts = counts_now(turn.session, profile, event)
    if counts:
        days_follow_plan(turn, profile)
    was_complete = current_limits(turn.session, event, athlete_of(profile)) is not None
    findings = look_over(turn, profile, event, plan)
    parts = (
        words.plan_set(self_coached=coach.id == profile.person_id),
        noted,
        flow_review.looked_over(findings, profile.volume_unit),
    )
    number, ahead = profile.person_id, naming(turn.session, profile, event)
    following = (
        Button(words.see_plan_button(), PLAN(number, ahead)),
        Button(
            words.see_limits_button() if was_complete else words.set_limits_button(),
            LIMITS(number, ahead),
        ),
    )
    text = "\n\n".join(part for part in parts if part)
    say_to(turn, coach, text, buttons=[following])
    if was_complete and counts:
        week_changed(turn, coach, profile, because="plan-changed", was_complete=True)


def counts_now(session: Session, profile: AthleteProfile, event: EventRow) -> bool:
    """Whether it is the event that counts, and not one of the season that still waits."""
    current = current_event(session, profile.person_id)
    return current is not None and current.id == event.id


def set_plan(prep: Prep, version: Version) -> bool:
    """Keep a new version of the plan; False, with the days and bounds said, where it does not fit."""
    turn, coach, profile, event = prep.turn, prep.coach, prep.profile, prep.event
    plan = named(version.plan, baseline_of(profile))
    if plan_misfits(turn.session, profile, event, plan):
        offer_room(prep, replace(version, plan=plan, reason=""))
        return False
    earlier = plan_row(turn.session, event)
    row = PlanRow(
        event_id=id_of(event),
        shape=version.shape,
        days=plan_days(plan),
        set_by=id_of(coach),
        set_at=turn.now,
    )
    turn.session.add(row)
    record(turn, profile.person_id, by=coach.id, what=Change.PLAN_SET(
        plan=id_of(row), shape=version.shape, how=version.how,
        before={"plan": id_of(earlier) if earlier else None, **take_snapshot(turn, profile)},
        changed=days_changed(earlier.days if earlier is not None else [], row.days),
    ))  # fmt: skip
    return True


def raise_limits(prep: Prep, bounds: dict[str, float]) -> None:
    """The limits that were agreed to for a plan, in force."""
    limits = Limits(guard_rails=GuardRails.of(athlete_of(prep.profile)), **bounds)
    store_limits(prep, limits)


def plan_misfits(
    session: Session, profile: AthleteProfile, event: EventRow, plan: PeakPlan
) -> tuple[Problem, ...]:
    """Where a plan leaves the limits in force, or else those that would be suggested around it."""
    return plan_problems(plan, limits_for(session, profile, event, plan))


def say_problems(prep: Prep, problems: tuple[Problem, ...]) -> None:
    turn, coach, profile, event = prep.turn, prep.coach, prep.profile, prep.event
    number, ahead = profile.person_id, naming(turn.session, profile, event)
    say_to(
        turn,
        coach,
        words.does_not_fit(problems, profile.volume_unit),
        buttons=[
            [
                Button(words.see_plan_button(), PLAN(number, ahead)),
                Button(words.see_limits_button(), LIMITS(number, ahead)),
            ]
        ],
    )


def days_follow_plan(turn: Turn, profile: AthleteProfile, *, only: date | None = None) -> None:
    """Figures set earlier for today and later give way to the plan that the coach has just set."""
    week = current_week(turn.session, profile)
    if week is None:
        return
    if only is None:
        end_hold(turn, profile.person_id, local_date(profile, turn.context))
    query = select(DaySetRow).where(
        DaySetRow.athlete_id == profile.person_id,
        DaySetRow.date >= local_date(profile, turn.context),
    )
    for row in turn.session.exec(query.order_by(col(DaySetRow.date))).all():
        planned = week.plan.day(week.days_out(row.date))
        if planned is not None and only in (None, row.date):
            set_day(turn, profile.person_id, row.date, Figure(planned.carb_g, "plan"))


def week_changed(
    turn: Turn, coach: Person, profile: AthleteProfile, *, because: str, was_complete: bool
) -> None:
    """Lay out the mornings anew; decide today anew, or say that everything is set at last."""
    week = current_week(turn.session, profile)
    if week is None:
        return
    first = prompts.schedule(turn, profile)
    if not was_complete:
        athlete = get_person(turn.session, profile.person_id)
        self_coached = coach.id == profile.person_id
        if first is None:
            text = words.all_set_but_waiting(athlete.first_name, profile.status)
            say_to(turn, coach, text)
        else:
            text = words.all_set(
                athlete.first_name,
                moment_for(turn.session, coach, profile, first),
                self_coached=self_coached,
            )
            say_to(turn, coach, text)
            tell_athlete(turn, coach, profile, lambda: words.athlete_all_set(
                coach.first_name, moment_for(turn.session, athlete, profile, first)
            ))  # fmt: skip
    today = local_date(profile, turn.context)
    if was_complete or checkin_row(turn.session, profile.person_id, today) is not None:
        deciding.redecide(turn, profile, because=because)


def has_measures(turn: Turn, coach: Person, profile: AthleteProfile) -> bool:
    """Whether the first questions are answered; if not, the coach is told so."""
    if profile.body_mass_kg is not None and profile.zone is not None and profile.baseline:
        return True
    name = name_of(turn.session, profile.person_id)
    say_to(turn, coach, words.no_measures_yet(name))
    return False


def open_draft(turn: Turn, coach: Person, profile: AthleteProfile, event: EventRow | None) -> None:
    """Ask for shape and load of a draft for this event."""
    if event is None:
        say_to(turn, coach, words.event_first())
        return
    debrief.before_draft(turn, coach, profile)
    asking.open_question(turn, coach, DRAFT, profile.person_id, {
        "_name": name_of(turn.session, profile.person_id),
        "_own": coach.id == profile.person_id,
        "_athlete": asdict(athlete_of(profile)),
        "_baseline": dict(profile.baseline),
        "_event": event.id,
        "_event_day": event.day.isoformat(),
        "_kind": event.kind,
        "_today": local_date(profile, turn.context).isoformat(),
        "_weight_unit": profile.weight_unit,
        "_volume_unit": profile.volume_unit,
        "_learnt": learnt_g_per_kg(turn, profile),
    })  # fmt: skip


def fit_answered(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    """Nothing counts before it fits; what was kept is put again after every change of it."""
    do = answers.get("do", LEAVE)
    if do == LEAVE:
        say_to(turn, coach, cancelled())
        return
    event = asked_event(turn.session, profile, answers)
    if (
        event is None
        or event.day.isoformat() != answers["_event_day"]
        or plan_id(turn.session, event) != answers["_base"]
        or limits_id(turn.session, event) != answers["_limits"]
    ):
        say_to(turn, coach, flow_limits.moved_on())
        return
    plan, prep = draft_of(answers), Prep(turn, coach, profile, event)
    if isinstance(do, dict):
        plan = plan_from(edited(answers))
    elif do == CUT:
        plan = cut_to_fit(plan, limits_for(turn.session, profile, event, plan))
    version = Version(plan, answers["_shape"], answers["_reason"], answers["_how"])
    if isinstance(do, dict) or do == CUT:
        offer_room(prep, version)
    else:
        use_plan(prep, version, bounds=answers["_bounds"] if do == RAISE else None)
