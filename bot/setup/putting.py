"""What was foreseen and agreed to is put in force, for one athlete, in the caller's transaction."""

from __future__ import annotations

from datetime import date

from bot.core.turn import Turn
from bot.decision import deciding
from bot.event import asks, season
from bot.event.season import New
from bot.event.setting import replace_event
from bot.event.stage import day as stage_day
from bot.food import by_template
from bot.people.changes import BY_SETUP, Change
from bot.people.people import local_date, record
from bot.people.telling import tell_athlete
from bot.plan.planning import counts_now, days_follow_plan, event_line, set_plan
from bot.plan.prep import Prep, Version, store_limits
from bot.plan.review import gate
from bot.readiness import readiness as ready
from bot.setup import words
from bot.setup.foreseen import Foreseen
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow
from bot.week import prompts
from bot.week.load import checkin_row, current_event, current_week
from bot.week.snapshots import take_snapshot
from bot.words import figures


def put(turn: Turn, coach: Person, seen: Foreseen, reason: str = "") -> EventRow:
    """Event, plan, limits and times as foreseen; the athlete is told once. `reason`: for its warnings.

    Raises ValueError for what was foreseen with troubles: nothing of that is ever put in force.
    """
    profile = seen.profile
    if profile is None or seen.troubles or (seen.warnings and not reason):
        raise ValueError("this was not to be put in force")
    before = take_snapshot(turn, profile)
    counted = current_event(turn.session, profile.person_id)
    event = _event(turn, coach, profile, seen)
    prep = Prep(turn, coach, profile, event)
    if seen.limits is not None and seen.limits_are in ("template", "suggested", "given"):
        store_limits(prep, seen.limits, how=BY_SETUP)
    if seen.plan is not None and seen.plan_is_new:
        if not set_plan(prep, Version(seen.plan, seen.shape, how=BY_SETUP)):
            raise ValueError("a plan that was foreseen to fit does not")
        if seen.warnings:
            gate.keep_reason(prep, gate.said_of(seen.warnings), reason)
    if seen.stage_day is not None:
        stage_day.lay_out(turn, profile, event, seen.stage_day, coach)
    for key, value in seen.asks.items():
        asks.keep(prep, key, value, how=BY_SETUP)
    if seen.meals:
        by_template.put(turn, coach, profile, seen.meals)
    _habits(turn, coach, profile, seen)
    said = _tell_athlete(turn, coach, profile, event, seen)
    if seen.event is None or seen.moves:
        record(turn, profile.person_id, by=coach.id, what=Change.EVENT_SET(
            event=id_of(event), kind=event.kind, day=event.day.isoformat(), zone=event.zone,
            how=BY_SETUP, said=said, before=_before(seen, counted) | before,
            was=[seen.event.kind, seen.event.day.isoformat()] if seen.event is not None else None,
        ))  # fmt: skip
    season.choose_active(turn, profile)
    _follow(turn, profile, event, seen)
    return event


def _before(seen: Foreseen, counted: EventRow | None) -> dict[str, object]:
    """What the event's own entry remembers, as for one that is set by hand."""
    if seen.event is not None:
        return {"event": seen.event.id}
    number = counted.id if counted is not None else None
    return {"event": None, "counted": number, "more": number is not None}


def _event(turn: Turn, coach: Person, profile: AthleteProfile, seen: Foreseen) -> EventRow:
    wanted = seen.wanted
    new = New(
        kind=wanted.kind, day=date.fromisoformat(wanted.day), zone=wanted.zone,
        class_name=wanted.class_name,
    )  # fmt: skip
    if seen.event is None:
        earlier = current_event(turn.session, profile.person_id)
        if earlier is not None and earlier.day < local_date(profile, turn.context):
            return replace_event(turn, coach, profile, new, earlier)[0]
        return season.add(turn, coach, profile, new)
    if seen.moves:
        return replace_event(turn, coach, profile, new, seen.event)[0]
    if wanted.class_name:
        seen.event.class_name = wanted.class_name
    return seen.event


def _habits(turn: Turn, coach: Person, profile: AthleteProfile, seen: Foreseen) -> None:
    if seen.asked_at is None and seen.always_tomorrow is None:
        return
    profile.prompt_time = seen.asked_at or profile.prompt_time
    if seen.always_tomorrow is not None:
        profile.always_tomorrow = seen.always_tomorrow
        entry = Change.ALWAYS_TOMORROW(on=seen.always_tomorrow)
        record(turn, profile.person_id, entry, by=coach.id)
    if seen.asked_at is not None:
        record(turn, profile.person_id, Change.SETTINGS(flow="set-prompt_time"), by=coach.id)


def _follow(turn: Turn, profile: AthleteProfile, event: EventRow, seen: Foreseen) -> None:
    """Mornings, the days' figures and a decision of today follow, where it is the event that counts."""
    ready.schedule(turn, profile)
    prompts.schedule(turn, profile)
    if not counts_now(turn.session, profile, event):
        return
    if seen.plan_is_new or seen.moves or seen.event is None:
        days_follow_plan(turn, profile)
    today = local_date(profile, turn.context)
    if (
        current_week(turn.session, profile) is not None
        and checkin_row(turn.session, profile.person_id, today) is not None
    ):
        deciding.redecide(turn, profile, because="plan-changed")


def _tell_athlete(
    turn: Turn, coach: Person, profile: AthleteProfile, event: EventRow, seen: Foreseen
) -> list[int]:
    """One message for all of it; the outbox row, so that it can be corrected if it is taken back."""
    return tell_athlete(
        turn,
        coach,
        profile,
        lambda: words.athlete_told(
            words.event_set(
                coach.first_name,
                event_line(profile, event, turn.context),
                event.class_name,
                new=seen.event is None,
                moves=seen.moves,
            ),
            figures.clock_in(seen.stage_day.stages[0], event.zone) if seen.stage_day else "",
            planned=seen.plan is not None and seen.limits is not None,
            asked_at=seen.asked_at,
        ),
    )
