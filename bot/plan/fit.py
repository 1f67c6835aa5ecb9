"""A plan that does not fit its limits is put to the coach again, with what could give way."""

from __future__ import annotations

from sqlmodel import Session

from bot.core.turn import Turn
from bot.dialogue import asking
from bot.people.people import own_athlete
from bot.people.telling import say_to
from bot.plan import flow_fit
from bot.plan import words as plan_words
from bot.plan.flow_fit import CUT, LEAVE, PLAN_FIT, RAISE, draft_of, edited
from bot.plan.planning import use_plan
from bot.plan.prep import Prep, Version
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.week import EventRow
from bot.week.load import (
    athlete_of,
    baseline_of,
    current_limits,
    event_ahead,
    limits_row,
    plan_days,
    plan_row,
)
from bot.words import figures
from bot.words.common import cancelled
from engine.planning.fitting import cut_to_fit, room_made
from engine.values.limits import LIMIT_KEYS, Limits, Problem, plan_problems
from engine.values.plan import DayTarget, PeakPlan


def limits_for(
    session: Session, profile: AthleteProfile, event: EventRow, plan: PeakPlan
) -> Limits:
    """The limits in force, or else those that would be suggested around the plan."""
    athlete = athlete_of(profile)
    limits = current_limits(session, event, athlete)
    return limits or Limits.suggested(athlete, plan, baseline_of(profile))


def offer_room(prep: Prep, version: Version) -> None:
    """Ask what is to give way: a limit, a figure of the draft, or nothing; or whether it is used."""
    turn, profile, event, plan = prep.turn, prep.profile, prep.event, version.plan
    limits = limits_for(turn.session, profile, event, plan)
    problems, unit = plan_problems(plan, limits), profile.volume_unit
    room = room_made(plan, limits)
    standing, bounds = plan_row(turn.session, event), limits_row(turn.session, event)
    asking.open_question(
        turn, prep.coach, PLAN_FIT, subject_id=profile.person_id,
        answers={
            "_event": event.id, "_event_day": event.day.isoformat(),
            "_base": standing.id if standing is not None else 0,
            "_limits": bounds.id if bounds is not None else 0,
            "_days": plan_days(plan), "_shape": version.shape,
            "_reason": version.reason, "_how": version.how,
            "_problems": plan_words.problem_lines(problems, unit) if problems else "",
            "_raises": flow_fit.limit_moves([(m.key, m.was, m.becomes) for m in room.moved], unit)
            if room.limits is not None else "",
            "_past": _past(limits, room.past_bounds, unit),
            "_bounds": {key: getattr(room.limits, key) for key in LIMIT_KEYS}
            if room.limits is not None else None,
            "_volume_unit": unit,
        },
    )  # fmt: skip


def _past(limits: Limits, past: tuple[Problem, ...], unit: str) -> str:
    if not past:
        return ""
    rail = limits.guard_rails.rail(past[0].limit)
    over = past[0].value > rail.high
    bound = rail.high if over else rail.low
    source = rail.high_source if over else rail.low_source
    return flow_fit.past_bound(
        past[0].limit, figures.limit(past[0].limit, bound, unit), source.citation
    )


def answered(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """Nothing counts before it fits; what was kept is put again after every change of it."""
    answers, do = question.answers, question.answers.get("do", LEAVE)
    profile = own_athlete(turn.session, coach, question.about)
    if profile is None or do == LEAVE:
        say_to(turn, coach, cancelled())
        return
    event = event_ahead(turn.session, profile.person_id, answers["_event"])
    standing = plan_row(turn.session, event) if event is not None else None
    bounds = limits_row(turn.session, event) if event is not None else None
    if (
        event is None
        or event.day.isoformat() != answers["_event_day"]
        or (standing.id if standing is not None else 0) != answers["_base"]
        or (bounds.id if bounds is not None else 0) != answers["_limits"]
    ):
        say_to(turn, coach, flow_fit.moved_on())
        return
    plan, prep = draft_of(answers), Prep(turn, coach, profile, event)
    if isinstance(do, dict):
        plan = PeakPlan(tuple(DayTarget(**day) for day in edited(answers)))
    elif do == CUT:
        plan = cut_to_fit(plan, limits_for(turn.session, profile, event, plan))
    version = Version(plan, answers["_shape"], answers["_reason"], answers["_how"])
    if isinstance(do, dict) or do == CUT:
        offer_room(prep, version)
    else:
        use_plan(prep, version, bounds=answers["_bounds"] if do == RAISE else None)
