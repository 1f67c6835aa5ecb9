"""The coach looks at the limits, and sets or changes any of them."""

from __future__ import annotations

from dataclasses import replace

from sqlmodel import Session

from bot.context import Context
from bot.flows.coach_limits import LIMIT
from bot.incoming import Incoming
from bot.messages import coach_limits as limit_words
from bot.messages import coach_plan as words
from bot.outbox import Button, Buttons, say
from bot.service import asking
from bot.service.changes import differences, standing_before
from bot.service.people import get_person, own_athlete, record
from bot.service.plan_numbers import first_things_first
from bot.service.planning import say_problems, week_changed
from bot.service.tapping import answer, rewrite
from bot.service.week import (
    athlete_of,
    baseline_of,
    current_event,
    current_limits,
    current_plan,
    limits_row,
)
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.week import EventRow, LimitsRow
from engine.limits import LIMIT_KEYS, Limits, plan_problems
from engine.plan import PeakPlan
from engine.room import room_to_correct


def show_limits(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The limits in force, or those suggested around the plan; a button a limit."""
    answer(session, incoming, context)
    event = current_event(session, profile.person_id)
    plan = current_plan(session, event) if event is not None else None
    if event is None or plan is None:
        first_things_first(session, coach, profile, event, context)
        return
    limits = current_limits(session, event, athlete_of(profile))
    shown = limits or Limits.suggested(athlete_of(profile), plan, baseline_of(profile))
    text = limit_words.limits_view(
        get_person(session, profile.person_id).first_name,
        [
            limit_words.limit_line(key, getattr(shown, key), profile.volume_unit)
            for key in LIMIT_KEYS
        ],
        are_set=limits is not None,
        own=coach.id == profile.person_id,
        cost=_cost(session, coach, profile, plan, shown),
    )
    rewrite(session, incoming, text, context, _limit_buttons(profile, are_set=limits is not None))


def use_suggested_limits(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """Put the suggested limits in force as they are."""
    answer(session, incoming, context)
    event = current_event(session, profile.person_id)
    plan = current_plan(session, event) if event is not None else None
    if event is None or plan is None:
        first_things_first(session, coach, profile, event, context)
        return
    if current_limits(session, event, athlete_of(profile)) is not None:
        show_limits(session, coach, profile, [], incoming, context)
        return
    limits = Limits.suggested(athlete_of(profile), plan, baseline_of(profile))
    if keep_limits(session, coach, profile, event, plan, limits, context):
        rewrite(session, incoming, limit_words.limits_set(), context, [[_limits_button(profile)]])
        week_changed(session, coach, profile, context, because="limits-changed", was_complete=False)


def ask_limit(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """A button under the limits: ask for the new value."""
    key = rest[0] if rest else ""
    event = current_event(session, profile.person_id)
    plan = current_plan(session, event) if event is not None else None
    if event is None or plan is None or key not in LIMIT_KEYS:
        show_limits(session, coach, profile, [], incoming, context)
        return
    answer(session, incoming, context)
    _open_limit(
        session, coach, profile, _limits_or_suggested(session, profile, event, plan), key, context
    )


def limit_given(session: Session, coach: Person, question: OpenQuestion, context: Context) -> None:
    """A new version of the limits with this one changed; suggested ones are thereby set."""
    profile = own_athlete(session, coach, question.subject_id or 0)
    event = current_event(session, profile.person_id) if profile is not None else None
    plan = current_plan(session, event) if event is not None else None
    if profile is None or event is None or plan is None:
        say(session, chat_id=coach.chat_id, text=words.plan_first(), now=context.now)
        return
    was_complete = current_limits(session, event, athlete_of(profile)) is not None
    key, value = question.answers["_key"], question.answers["value"]
    before = _limits_or_suggested(session, profile, event, plan)
    try:
        limits = replace(before, **{key: value})
    except ValueError:
        _say_contradiction(session, coach, profile, before, key, value, context)
        _open_limit(session, coach, profile, before, key, context)
        return
    if not keep_limits(session, coach, profile, event, plan, limits, context):
        # What was typed did not fit; the question stays, so that another figure can be sent.
        _open_limit(session, coach, profile, before, key, context)
        return
    text = limit_words.limit_changed(
        limit_words.limit_line(key, value, profile.volume_unit),
        _cost(session, coach, profile, plan, limits) if key in BOUND_A_CORRECTION else "",
    )
    say(
        session, chat_id=coach.chat_id, text=text, now=context.now,
        buttons=[[_limits_button(profile)]],
    )  # fmt: skip
    week_changed(
        session, coach, profile, context, because="limits-changed", was_complete=was_complete
    )


#: The limits that say how far a load day can be corrected.
BOUND_A_CORRECTION = ("carb_floor_g", "carb_ceiling_g", "change_per_day_g", "load_total_g")


def _cost(
    session: Session, coach: Person, profile: AthleteProfile, plan: PeakPlan, limits: Limits
) -> str:
    """What these limits cost, in plain words."""
    return limit_words.room_line(
        room_to_correct(plan, limits),
        get_person(session, profile.person_id).first_name,
        own=coach.id == profile.person_id,
    )


def _open_limit(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    limits: Limits,
    key: str,
    context: Context,
) -> None:
    rail = limits.guard_rails.rail(key)
    asking.open_question(
        session, coach, LIMIT, context=context, subject_id=profile.person_id,
        answers={
            "_key": key,
            "_value": getattr(limits, key),
            "_low": rail.low,
            "_high": rail.high,
            "_low_source": rail.low_source.citation,
            "_high_source": rail.high_source.citation,
            "_volume_unit": profile.volume_unit,
        },
    )  # fmt: skip


def _limits_or_suggested(
    session: Session, profile: AthleteProfile, event: EventRow, plan: PeakPlan
) -> Limits:
    athlete = athlete_of(profile)
    return current_limits(session, event, athlete) or Limits.suggested(
        athlete, plan, baseline_of(profile)
    )


def keep_limits(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    event: EventRow,
    plan: PeakPlan,
    limits: Limits,
    context: Context,
    how: str = "",
) -> bool:
    """Keep a new version; False, with the days and bounds said, where the plan would not fit."""
    problems = plan_problems(plan, limits)
    if problems:
        say_problems(session, coach, profile, problems, context)
        return False
    earlier = limits_row(session, event)
    row = LimitsRow(
        event_id=event.id or 0,
        bounds={key: getattr(limits, key) for key in LIMIT_KEYS},
        set_by=coach.id or 0,
        set_at=context.now,
    )
    session.add(row)
    session.flush()
    record(
        session, profile.person_id, "limits set", context, by=coach.id,
        limits=row.id, bounds=row.bounds, how=how,
        before={
            "limits": earlier.id if earlier is not None else None,
            **standing_before(session, profile, context),
        },
        changed=differences(earlier.bounds if earlier is not None else None, row.bounds),
    )  # fmt: skip
    return True


def _say_contradiction(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    before: Limits,
    key: str,
    value: float,
    context: Context,
) -> None:
    """A floor over its ceiling: the only way left in which a limit inside its guard rail is refused."""
    what, end, unit = key.split("_")
    floor = value if end == "floor" else getattr(before, f"{what}_floor_{unit}")
    ceiling = value if end == "ceiling" else getattr(before, f"{what}_ceiling_{unit}")
    text = limit_words.limits_contradict(key, profile.volume_unit, floor, ceiling)
    say(session, chat_id=coach.chat_id, text=text, now=context.now)


def _limits_button(profile: AthleteProfile) -> Button:
    return Button(words.see_limits_button(), f"c:limits:{profile.person_id}")


def _limit_buttons(profile: AthleteProfile, *, are_set: bool) -> Buttons:
    keys = [
        Button(limit_words.limit_button(key), f"c:lim:{profile.person_id}:{key}")
        for key in LIMIT_KEYS
    ]
    last = [
        Button(words.see_plan_button(), f"c:plan:{profile.person_id}"),
        Button(words.back_button(), f"c:card:{profile.person_id}"),
    ]
    use = [Button(limit_words.use_limits_button(), f"c:limits-use:{profile.person_id}")]
    rows = [keys[i : i + 2] for i in range(0, len(keys), 2)]
    return [*([] if are_set else [use]), *rows, last]
