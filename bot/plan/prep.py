"""What a coach works on: one event of an athlete, a version of its plan, one figure of that; and the
limits around it: those in force, a new version, what could give way where plan and limits don't fit.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import NamedTuple

from sqlmodel import Session

from bot.core.turn import Turn
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.people.changes import Change
from bot.people.people import record
from bot.people.telling import say_to
from bot.plan import flow_limits
from bot.plan import words as plan_words
from bot.plan.flow_limits import PLAN_FIT
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow, LimitsRow
from bot.week.load import (
    athlete_of,
    baseline_of,
    current_event,
    current_limits,
    event_ahead,
    limits_row,
    plan_days,
    plan_row,
)
from bot.week.snapshots import differences, take_snapshot
from bot.words import figures
from engine.planning.fitting import room_made
from engine.values.limits import Limits, Problem, plan_problems
from engine.values.plan import PeakPlan


@dataclass(frozen=True, slots=True)
class Prep:
    """One event of an athlete, and the coach who sets something for it."""

    turn: Turn
    coach: Person
    profile: AthleteProfile
    event: EventRow


@dataclass(frozen=True, slots=True)
class Version:
    """A plan that is to be kept.

    `reason`: why the coach wants its deep depletion, where it has one; kept with the plan. `how`: by
    what it came about, where something else was changed along with it.
    """

    plan: PeakPlan
    shape: str
    reason: str = ""
    how: str = ""


class Figure(NamedTuple):
    """One figure of a plan, by the field of its day."""

    days_out: int
    key: str


def asked_event(session: Session, profile: AthleteProfile, answers: Answers) -> EventRow | None:
    """The event that a question is about: the one that it names, else the one that counts."""
    number = answers.get("_event")
    if number is None:
        return current_event(session, profile.person_id)
    return event_ahead(session, profile.person_id, number)


def of_own_event(
    finish: Callable[[Prep, Answers], None], gone: Callable[[], str] = plan_words.plan_first
) -> asking.Finish:
    """The end of a coach's flow on an event of an athlete; where that is no more, `gone` is said."""

    def finish_if_ahead(
        turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers
    ) -> None:
        event = asked_event(turn.session, profile, answers)
        if event is not None:
            finish(Prep(turn, coach, profile, event), answers)
        else:
            say_to(turn, coach, gone())

    return asking.of_own_athlete(finish_if_ahead, gone)


def plan_id(session: Session, event: EventRow) -> int:
    """The number of the event's plan as it stands now; 0 where it has none."""
    row = plan_row(session, event)
    return id_of(row) if row is not None else 0


def limits_id(session: Session, event: EventRow) -> int:
    """The same of its limits."""
    row = limits_row(session, event)
    return id_of(row) if row is not None else 0


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
    asking.open_question(turn, prep.coach, PLAN_FIT, profile.person_id, {
        "_event": event.id, "_event_day": event.day.isoformat(),
        "_base": plan_id(turn.session, event), "_limits": limits_id(turn.session, event),
        "_days": plan_days(plan), "_shape": version.shape,
        "_reason": version.reason, "_how": version.how,
        "_problems": plan_words.problem_lines(problems, unit) if problems else "",
        "_raises": flow_limits.limit_moves([(m.key, m.was, m.becomes) for m in room.moved], unit)
        if room.limits is not None else "",
        "_past": _past(limits, room.past_bounds, unit),
        "_bounds": room.limits.by_key
        if room.limits is not None else None,
        "_volume_unit": unit,
    })  # fmt: skip


def _past(limits: Limits, past: tuple[Problem, ...], unit: str) -> str:
    if not past:
        return ""
    rail = limits.guard_rails.rail(past[0].limit)
    over = past[0].value > rail.high
    bound = rail.high if over else rail.low
    source = rail.high_source if over else rail.low_source
    return flow_limits.past_bound(
        past[0].limit, figures.limit(past[0].limit, bound, unit), source.citation
    )


def store_limits(prep: Prep, limits: Limits, *, how: str = "") -> None:
    """Whether the plan fits them is for the caller to have seen."""
    turn, coach, profile, event = prep.turn, prep.coach, prep.profile, prep.event
    earlier = limits_row(turn.session, event)
    row = LimitsRow(
        event_id=id_of(event), bounds=limits.by_key, set_by=id_of(coach), set_at=turn.now
    )
    turn.session.add(row)
    record(turn, profile.person_id, by=coach.id, what=Change.LIMITS_SET(
        limits=id_of(row), bounds=row.bounds, how=how,
        before={"limits": id_of(earlier) if earlier else None, **take_snapshot(turn, profile)},
        changed=differences(earlier.bounds if earlier is not None else None, row.bounds),
    ))  # fmt: skip
