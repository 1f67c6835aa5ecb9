"""What would become of an athlete's season, plan and limits: worked out in full, with nothing changed.

The same is worked out again when the coach has agreed; what differs by then is shown again.
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from typing import Any

from bot.core.timing.instants import local_instant
from bot.core.turn import Turn
from bot.event import season
from bot.event.stage import day as stage_day
from bot.event.stage.flow import NIGHT_UNTIL
from bot.people.people import local_date, name_of, own_athlete
from bot.plan.review import gate
from bot.plan.templates import templates
from bot.plan.templates.templates import own_template
from bot.setup.foreseen import Foreseen, Trouble, Wanted
from bot.store.tables.coach import TemplateRow
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow
from bot.week.load import (
    athlete_of,
    baseline_of,
    current_limits,
    current_plan,
    event_ahead,
    events_ahead,
    limits_row,
    plan_row,
)
from engine.planning.drafting.bridge import BRIDGE, bridge_plan, is_bridge
from engine.planning.drafting.draft import DEEP, MILD, Asked, draft_plan, load_range, usual_load
from engine.planning.drafting.template import scaled, scaled_limits
from engine.planning.fitting import room_made
from engine.safety import Level
from engine.stage_day.stage_day import StageDay
from engine.values.limits import Limits, OutsideGuardRail, plan_problems
from engine.values.plan import PeakPlan


def foresee(turn: Turn, coach: Person, wanted: Wanted, others: Sequence[Wanted] = ()) -> Foreseen:
    """What this would do now. `others`: what is wanted for the same athlete in the same go."""
    seen = Foreseen(wanted)
    profile = own_athlete(turn.session, coach, wanted.athlete_id)
    if profile is None:
        seen.troubles.append(Trouble("athlete", "not-yours"))
        return seen
    seen.profile = profile
    seen.name = name_of(turn.session, profile.person_id)
    if profile.body_mass_kg is None or profile.zone is None or not profile.baseline:
        seen.troubles.append(Trouble("athlete", "no-measures", {"name": seen.name}))
        return seen
    _event(turn, seen, profile)
    if not seen.troubles:
        template = _template(turn, coach, seen)
        _plan(turn, seen, profile, template, others)
        _limits(turn, seen, profile, template)
        _stage(turn, seen, profile, template)
        _asks(seen, profile, template)
        _habits(seen, profile, template)
        _review(turn, seen, profile)
    seen.mark = _mark(turn, seen, profile)
    return seen


def _event(turn: Turn, seen: Foreseen, profile: AthleteProfile) -> None:
    wanted, day = seen.wanted, date.fromisoformat(seen.wanted.day)
    ahead = events_ahead(turn.session, profile.person_id)
    if wanted.event_id:
        seen.event = event_ahead(turn.session, profile.person_id, wanted.event_id)
        if seen.event is None:
            seen.troubles.append(Trouble("code", "event-gone"))
    else:
        seen.event = next((row for row in ahead if row.day == day), None)
    if day < local_date(profile, turn.context):
        seen.troubles.append(Trouble("day", "day-past", {"day": wanted.day}))
    elif any(row.day == day and row is not seen.event for row in ahead):
        seen.troubles.append(Trouble("day", "day-taken", {"day": wanted.day}))
    if seen.event is not None:
        now = (seen.event.kind, seen.event.day, seen.event.zone)
        seen.moves = now != (wanted.kind, day, wanted.zone)


def _template(turn: Turn, coach: Person, seen: Foreseen) -> TemplateRow | None:
    if not seen.wanted.template_id:
        return None
    row = own_template(turn.session, coach, seen.wanted.template_id)
    if row is None:
        seen.troubles.append(Trouble("plan", "template-gone"))
    return row


def _plan(
    turn: Turn,
    seen: Foreseen,
    profile: AthleteProfile,
    template: TemplateRow | None,
    others: Sequence[Wanted],
) -> None:
    wanted, standing = seen.wanted, None
    if seen.event is not None:
        standing = current_plan(turn.session, seen.event)
        row = plan_row(turn.session, seen.event)
        seen.plan, seen.shape = standing, row.shape if row is not None else ""
    athlete, baseline = athlete_of(profile), baseline_of(profile)
    made: PeakPlan | None = None
    if template is not None:
        made, seen.shape, seen.template = (
            scaled(template.days, athlete, baseline), template.shape, template.name,
        )  # fmt: skip
    elif wanted.plan and not wanted.template_id:
        made, seen.shape = _drafted(turn, seen, profile, others), wanted.plan
    if made is None:
        return
    made = _days_over_stay(turn, seen, profile, made, standing)
    seen.plan_is_new, seen.plan = made != standing, made


def _drafted(
    turn: Turn, seen: Foreseen, profile: AthleteProfile, others: Sequence[Wanted]
) -> PeakPlan | None:
    wanted, load = seen.wanted, seen.wanted.load_g_per_kg
    athlete, baseline = athlete_of(profile), baseline_of(profile)
    low, high = load_range("even" if wanted.plan == BRIDGE else wanted.plan)
    if load is not None and not low <= load <= high:
        seen.troubles.append(Trouble("load_g_per_kg", "load-out", {"low": low, "high": high}))
        return None
    if wanted.plan == BRIDGE:
        earlier = _earlier(turn, seen, profile, others)
        if earlier is None:
            seen.troubles.append(Trouble("plan", "no-bridge"))
            return None
        between = (date.fromisoformat(wanted.day) - earlier).days
        return bridge_plan(athlete, baseline, between, load)
    mean = load if load is not None else usual_load(athlete.sex)
    try:
        return draft_plan(athlete, baseline, Asked(wanted.plan, mean, wanted.depletion or MILD))
    except ValueError:
        seen.troubles.append(Trouble("depletion", "no-such-depletion"))
        return None


def _earlier(
    turn: Turn, seen: Foreseen, profile: AthleteProfile, others: Sequence[Wanted]
) -> date | None:
    """The day of the event that a bridge would begin at, in what is there or wanted with it."""
    day = date.fromisoformat(seen.wanted.day)
    days = [date.fromisoformat(one.day) for one in others if one.kind != "trial"]
    event = seen.event or _as_event(seen)
    standing = season.before(turn, profile, _on(event, day))
    found = [*days, *([standing.day] if standing is not None else [])]
    return max((one for one in found if is_bridge(one, day)), default=None)


def _days_over_stay(
    turn: Turn, seen: Foreseen, profile: AthleteProfile, plan: PeakPlan, standing: PeakPlan | None
) -> PeakPlan:
    day, today = date.fromisoformat(seen.wanted.day), local_date(profile, turn.context)
    if seen.event is None or seen.event.day != day:
        return plan
    for target in standing or ():
        if day - timedelta(days=target.days_out) < today:
            plan = plan.with_day(target)
    return plan


def _limits(
    turn: Turn, seen: Foreseen, profile: AthleteProfile, template: TemplateRow | None
) -> None:
    athlete, baseline, wanted = athlete_of(profile), baseline_of(profile), seen.wanted
    begun = current_limits(turn.session, seen.event, athlete) if seen.event is not None else None
    seen.limits_are = "kept" if begun is not None else "none"
    limits = begun
    if template is not None and template.limits and (begun is None or seen.plan_is_new):
        limits = scaled_limits(template.limits, athlete, baseline)
        seen.limits_are = "template" if limits != begun else "kept"
    elif limits is None and seen.plan is not None and (seen.plan_is_new or wanted.bounds):
        limits, seen.limits_are = Limits.suggested(athlete, seen.plan, baseline), "suggested"
    if limits is None:
        if wanted.bounds:
            seen.troubles.append(Trouble(next(iter(wanted.bounds)), "limits-without-plan"))
        return
    given = {key: value for key, value in wanted.bounds.items() if _differs(limits, key, value)}
    try:
        bounds = limits.by_key | given
        limits = Limits(guard_rails=limits.guard_rails, **bounds)
    except OutsideGuardRail as outside:
        facts = {
            "limit": outside.limit, "value": outside.value, "bound": outside.bound,
            "citation": outside.source.citation,
        }  # fmt: skip
        seen.troubles.append(Trouble(outside.limit, "guard-rail", facts))
        return
    except ValueError:
        seen.troubles.append(Trouble(next(iter(given)), "floor-over-ceiling"))
        return
    if given:
        seen.limits_are = "given"
    seen.limits = _with_room(seen, limits, set(given))


def _differs(limits: Limits, key: str, value: float) -> bool:
    return bool(abs(getattr(limits, key) - value) > 0.005)


def _with_room(seen: Foreseen, limits: Limits, given: set[str]) -> Limits:
    """The limits, moved for the plan where they are a template's or a proposal: what the coach has
    set or written is moved only where they have agreed to it.
    """
    problems = plan_problems(seen.plan, limits) if seen.plan is not None else ()
    if not problems or seen.plan is None:
        return limits
    room = room_made(seen.plan, limits)
    own_word = seen.limits_are == "kept" or given & {moved.key for moved in room.moved}
    if room.limits is not None and (not own_word or seen.wanted.make_room):
        seen.moved_limits = room.moved
        seen.limits_are = "given" if seen.limits_are == "kept" else seen.limits_are
        return room.limits
    for problem in problems:
        at = problem.limit if problem.limit in given else "plan"
        moved = next((m for m in room.moved if m.key == problem.limit), None)
        seen.troubles.append(Trouble(at, "does-not-fit", {"problem": problem, "moved": moved}))
    return limits


def _stage(
    turn: Turn, seen: Foreseen, profile: AthleteProfile, template: TemplateRow | None
) -> None:
    wanted, day = seen.wanted, date.fromisoformat(seen.wanted.day)
    row = stage_day.stage_row(turn.session, seen.event) if seen.event is not None else None
    row = row if row is not None and row.cancelled_at is None else None
    spans = dict((template.habits if template is not None else {}).get("stage") or {})
    standing = stage_day.day_of(row) if row is not None else None
    if not wanted.stage:
        if wanted.look_before_min is not None and standing is not None and not seen.moves:
            _new_stage(seen, standing, replace(standing, look_before_min=wanted.look_before_min))
        return
    first = _instant(day, time.fromisoformat(wanted.stage), wanted.zone)
    if first <= turn.now:
        seen.troubles.append(Trouble("stage", "stage-past"))
        return
    if standing is not None and not spans:
        shift = first - standing.stages[0]
        made = replace(
            standing,
            stages=tuple(stage + shift for stage in standing.stages),
            registration=standing.registration and standing.registration + shift,
            tan=standing.tan and standing.tan + shift,
        )
    else:
        made = StageDay(
            stages=(first,),
            usual_wake=local_instant(day, profile.prompt_time, wanted.zone),
            travel_min=spans.get("travel_min") or 0,
            registration=_before(first, spans.get("registration_before_min")),
            tan=_before(first, spans.get("tan_before_min")),
            look_before_min=spans.get("look_before_min"),
        )
    if wanted.look_before_min is not None:
        made = replace(made, look_before_min=wanted.look_before_min)
    _new_stage(seen, standing if not seen.moves else None, made)


def _new_stage(seen: Foreseen, standing: StageDay | None, made: StageDay) -> None:
    if made != standing:
        seen.stage_day = made


def _instant(day: date, at: time, zone: str) -> datetime:
    """A clock time of the day, or of the night after it."""
    return local_instant(day + timedelta(days=at < NIGHT_UNTIL), at, zone)


def _before(stage: datetime, minutes: float | None) -> datetime | None:
    return stage - timedelta(minutes=minutes) if minutes else None


def _asks(seen: Foreseen, profile: AthleteProfile, template: TemplateRow | None) -> None:
    """What the row says stands before what the template holds, and that before nothing."""
    standing = seen.event.asks if seen.event is not None else {}
    held = templates.asks_of(template, profile) if template is not None else {}
    wanted = {key: one for key, one in held.items() if key not in standing} | seen.wanted.asks
    seen.asks = {key: one for key, one in wanted.items() if one != standing.get(key)}


def _habits(seen: Foreseen, profile: AthleteProfile, template: TemplateRow | None) -> None:
    held = template.habits if template is not None else {}
    asked = seen.wanted.asked_at or held.get("asked_at", "")
    if asked and time.fromisoformat(asked) != profile.prompt_time:
        seen.asked_at = time.fromisoformat(asked)
    if seen.event is None or seen.plan_is_new:
        seen.meals = held.get("meals", {})
    tomorrow = held.get("always_tomorrow")
    if tomorrow is not None and tomorrow != profile.always_tomorrow:
        seen.always_tomorrow = tomorrow


def _review(turn: Turn, seen: Foreseen, profile: AthleteProfile) -> None:
    if seen.plan is None or not seen.plan_is_new:
        return
    event = seen.event or _as_event(seen)
    seen.findings = gate.look_over(turn, profile, _on(event, date.fromisoformat(seen.wanted.day)),
                                   seen.plan)  # fmt: skip
    deep = seen.wanted.depletion == DEEP
    needed = [
        one for one in seen.findings
        if one.level is Level.WARNING or (deep and one.id == "deep-depletion")
    ]  # fmt: skip
    said = gate.answered(turn.session, event) if seen.event is not None else []
    seen.warnings = tuple(one for one in needed if any(s not in said for s in gate.said_of([one])))


def _as_event(seen: Foreseen) -> EventRow:
    """The event as a row that is put nowhere: for whoever asks only about kind and day."""
    wanted = seen.wanted
    return EventRow(
        athlete_id=wanted.athlete_id, kind=wanted.kind, day=date.fromisoformat(wanted.day),
        zone=wanted.zone, set_by=0, set_at=datetime.min.replace(tzinfo=UTC),
    )  # fmt: skip


def _on(event: EventRow, day: date) -> EventRow:
    return EventRow(
        athlete_id=event.athlete_id, kind=event.kind, day=day, zone=event.zone,
        set_by=event.set_by, set_at=event.set_at,
    )  # fmt: skip


def _mark(turn: Turn, seen: Foreseen, profile: AthleteProfile) -> str:
    """What it all rests on, in a few characters."""
    session = turn.session
    rows = events_ahead(session, profile.person_id)
    rests_on: list[Any] = [profile.status, profile.coach_id, profile.prompt_time]
    rests_on += [profile.body_mass_kg, sorted(profile.baseline.items()), profile.zone]
    for row in rows:
        plan, limits = plan_row(session, row), limits_row(session, row)
        stage = stage_day.stage_row(session, row)
        rests_on.append(
            [
                row.id, row.kind, row.day, row.zone, row.active, row.class_name,
                plan.id if plan is not None else 0, limits.id if limits is not None else 0,
                stage.facts if stage is not None else None,
            ]
        )  # fmt: skip
    rests_on += [
        seen.plan, seen.limits, seen.stage_day, sorted(seen.asks.items()),
        [trouble.why for trouble in seen.troubles],
        [one.id for one in seen.warnings],
    ]  # fmt: skip
    return hashlib.sha256(repr(rests_on).encode()).hexdigest()[:16]
