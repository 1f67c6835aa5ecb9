"""The coach looks at the limits, and sets or changes any of them."""

from __future__ import annotations

from dataclasses import replace

from sqlmodel import Session

from bot.core.chat.cards import CARD, LIMITS, PLAN, SEASON, OfEvent
from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import OnAthlete
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.people.people import name_of
from bot.people.telling import answer, rewrite, say_to
from bot.plan import flow_limits, words
from bot.plan.buttons import LIMITS_USE, ONE_LIMIT, OfLimit
from bot.plan.flow_limits import LIMIT
from bot.plan.numbers import meant_plan
from bot.plan.planning import (
    THE_ONE,
    counts_now,
    meant_event,
    meant_for,
    naming,
    say_problems,
    week_changed,
)
from bot.plan.prep import Prep, limits_for, store_limits
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow
from bot.week.load import athlete_of, baseline_of, current_limits, current_plan
from bot.words.common import step_back_button
from engine.planning.room import room_to_correct
from engine.values.limits import LIMIT_KEYS, Limits, plan_problems
from engine.values.plan import PeakPlan


def show_limits(turn: OnAthlete, pressed: OfEvent = THE_ONE) -> None:
    """The limits in force, or those suggested around the plan; a button a limit.

    With an event ahead, those that are meant for it.
    """
    answer(turn)
    meant = meant_plan(turn, pressed)
    if meant is None:
        return
    event, plan = meant
    limits = current_limits(turn.session, event, athlete_of(turn.profile))
    shown = limits or Limits.suggested(athlete_of(turn.profile), plan, baseline_of(turn.profile))
    text = flow_limits.limits_view(
        name_of(turn.session, turn.profile.person_id),
        [
            flow_limits.limit_line(key, getattr(shown, key), turn.profile.volume_unit)
            for key in LIMIT_KEYS
        ],
        are_set=limits is not None,
        self_coached=turn.self_coached,
        cost=_cost(turn.session, turn.person, turn.profile, plan, shown),
    )
    waits = meant_for(turn.session, turn.profile, event)
    text = f"{waits}\n\n{text}" if waits else text
    ahead = event if waits else None
    rewrite(turn, text, _limit_buttons(turn.profile, are_set=limits is not None, ahead=ahead))


def use_suggested_limits(turn: OnAthlete, pressed: OfEvent) -> None:
    """Put the suggested limits in force as they are."""
    answer(turn)
    meant = meant_plan(turn, pressed)
    if meant is None:
        return
    event, plan = meant
    if current_limits(turn.session, event, athlete_of(turn.profile)) is not None:
        show_limits(turn, OfEvent(event.id))
        return
    limits = Limits.suggested(athlete_of(turn.profile), plan, baseline_of(turn.profile))
    if keep_limits(Prep(turn, turn.person, turn.profile, event), plan, limits):
        if not counts_now(turn.session, turn.profile, event):
            button = Button(words.see_plan_button(), PLAN(turn.profile.person_id, id_of(event)))
            rewrite(turn, flow_limits.limits_set(), [[button]])
            return
        rewrite(turn, flow_limits.limits_set(), [[_limits_button(turn.profile)]])
        week_changed(turn, turn.person, turn.profile, because="limits-changed", was_complete=False)


def ask_limit(turn: OnAthlete, pressed: OfLimit) -> None:
    """A button under the limits: ask for the new value."""
    key, event = pressed.key, meant_event(turn, pressed.event)
    plan = current_plan(turn.session, event) if event is not None else None
    if event is None or plan is None or key is None or key not in LIMIT_KEYS:
        show_limits(turn)
        return
    answer(turn)
    limits = limits_for(turn.session, turn.profile, event, plan)
    _open_limit(Prep(turn, turn.person, turn.profile, event), limits, key)


def limit_given(prep: Prep, answers: Answers) -> None:
    """A new version of the limits with this one changed; suggested ones are thereby set."""
    turn, coach, profile, event = prep.turn, prep.coach, prep.profile, prep.event
    plan = current_plan(turn.session, event)
    if plan is None:
        say_to(turn, coach, words.plan_first())
        return
    was_complete = current_limits(turn.session, event, athlete_of(profile)) is not None
    key, value = answers["_key"], answers["value"]
    before = limits_for(turn.session, profile, event, plan)
    try:
        limits = replace(before, **{key: value})
    except ValueError:
        _say_contradiction(prep, before, key, value)
        _open_limit(prep, before, key)
        return
    if not keep_limits(prep, plan, limits):
        # What was typed did not fit; the question stays, so that another figure can be sent.
        _open_limit(prep, before, key)
        return
    text = flow_limits.limit_changed(
        flow_limits.limit_line(key, value, profile.volume_unit),
        _cost(turn.session, coach, profile, plan, limits) if key in BOUND_A_CORRECTION else "",
    )
    naming_it = naming(turn.session, profile, event)
    say_to(turn, coach, text, buttons=[[_limits_button(profile, naming_it)]])
    if naming_it is not None:
        return  # it waits: no day of now follows from it
    week_changed(turn, coach, profile, because="limits-changed", was_complete=was_complete)


#: The limits that say how far a load day can be corrected.
BOUND_A_CORRECTION = ("carb_floor_g", "carb_ceiling_g", "change_per_day_g", "load_total_g")


def _cost(
    session: Session, coach: Person, profile: AthleteProfile, plan: PeakPlan, limits: Limits
) -> str:
    """What these limits cost, in plain words."""
    return flow_limits.room_line(
        room_to_correct(plan, limits),
        name_of(session, profile.person_id),
        self_coached=coach.id == profile.person_id,
    )


def _open_limit(prep: Prep, limits: Limits, key: str) -> None:
    profile = prep.profile
    rail = limits.guard_rails.rail(key)
    asking.open_question(prep.turn, prep.coach, LIMIT, profile.person_id, {
        "_key": key,
        "_event": prep.event.id,
        "_value": getattr(limits, key),
        "_low": rail.low,
        "_high": rail.high,
        "_low_source": rail.low_source.citation,
        "_high_source": rail.high_source.citation,
        "_volume_unit": profile.volume_unit,
    })  # fmt: skip


def keep_limits(prep: Prep, plan: PeakPlan, limits: Limits, how: str = "") -> bool:
    """Keep a new version; False, with the days and bounds said, where the plan would not fit."""
    problems = plan_problems(plan, limits)
    if problems:
        say_problems(prep, problems)
        return False
    store_limits(prep, limits, how=how)
    return True


def _say_contradiction(prep: Prep, before: Limits, key: str, value: float) -> None:
    """A floor over its ceiling: the only way left in which a limit inside its guard rail is refused."""
    what, end, unit = key.split("_")
    floor = value if end == "floor" else getattr(before, f"{what}_floor_{unit}")
    ceiling = value if end == "ceiling" else getattr(before, f"{what}_ceiling_{unit}")
    text = flow_limits.limits_contradict(key, prep.profile.volume_unit, floor, ceiling)
    say_to(prep.turn, prep.coach, text)


def _limits_button(profile: AthleteProfile, ahead: int | None = None) -> Button:
    return Button(words.see_limits_button(), LIMITS(profile.person_id, ahead))


def _limit_buttons(
    profile: AthleteProfile, *, are_set: bool, ahead: EventRow | None = None
) -> Buttons:
    who, number = profile.person_id, id_of(ahead) if ahead is not None else None
    keys = [
        Button(flow_limits.limit_button(key), ONE_LIMIT(who, key, number)) for key in LIMIT_KEYS
    ]
    back = CARD(who) if ahead is None else SEASON(who)
    last = [Button(words.see_plan_button(), PLAN(who, number)), Button(step_back_button(), back)]
    use = [Button(flow_limits.use_limits_button(), LIMITS_USE(who, number))]
    rows = [keys[i : i + 2] for i in range(0, len(keys), 2)]
    return [*([] if are_set else [use]), *rows, last]
