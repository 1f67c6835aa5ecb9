"""What about an athlete needs the coach most just now, for the roster and the card."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from bot.coach.roster import words
from bot.coach.roster.rows import RosterRow
from bot.core.timing.instants import local_instant
from bot.core.turn import Context
from bot.store.tables.people import AthleteStatus
from bot.store.tables.week import DecisionStatus
from bot.week.prompts import asked_that_day, counts_as_missed
from bot.words import figures
from engine.safety import FlagId, Level
from engine.values.plan import PLAN_DAYS

NEEDS_THE_COACH = 8  # ranks up to this one
MISSED = 3
ASKED = 9  # this morning's check-in is waited for


@dataclass(frozen=True, slots=True)
class Priority:
    """How an athlete stands; a lower `rank` needs the coach sooner, then a lower `order`."""

    rank: int
    state: str
    order: float = 0.0
    in_order: bool = False  # nothing to say but that


def standing(seen: RosterRow, context: Context, here: str | None) -> Priority:
    """What about this athlete needs the coach most; a hold is said beside it.

    `here` is the zone of whoever reads it, None where it is not known.
    """
    found = _standing(seen, context, here)
    if seen.hold is None:
        return found
    held = words.state_held(seen.hold.carb_g, seen.hold.last)
    if found.in_order:
        return Priority(found.rank, held, found.order)
    return Priority(found.rank, f"{found.state} {held}", found.order)


def decided_line(seen: RosterRow) -> str | None:
    """What this morning's numbers led to, with the figure that stands now."""
    decided = seen.decided
    if seen.morning is None or decided is None:
        return None
    waiting = decided.status == DecisionStatus.WAITING
    stands = decided.carb_g if decided.carb_g is not None else decided.planned_carb_g
    carb_g = stands if waiting or seen.set_g is None else seen.set_g
    return words.decided(
        outcome_now(decided.outcome, decided.status), carb_g, decided.planned_carb_g,
        decided.sets_date,
    )  # fmt: skip


def outcome_now(outcome: str, status: str) -> str:
    """What a decision led to, or what has become of it where it was to be approved."""
    return {DecisionStatus.WAITING: "proposed", DecisionStatus.LAPSED: "lapsed"}.get(
        DecisionStatus(status), outcome
    )


def _standing(seen: RosterRow, context: Context, here: str | None) -> Priority:
    profile = seen.profile
    if seen.alert is not None:
        rank = 0 if seen.alert.level == Level.WARNING else 1
        opened = seen.alert.opened_at.timestamp()
        if seen.alert.flag == FlagId.DOUBT:
            return Priority(rank, words.state_unanswered(str(seen.alert.facts["words"])), opened)
        return Priority(rank, words.state_alert(seen.alert.level), opened)
    if seen.waiting is not None and seen.waiting.sign_off_due_at is not None:
        due = seen.waiting.sign_off_due_at
        until = _clock(seen, due, here)
        return Priority(2, words.state_waiting(until), due.timestamp())
    days_out = float(seen.days_out) if seen.days_out is not None else 1000.0
    if profile.frozen_at is not None:
        return Priority(4, words.state_frozen(profile.frozen_because), days_out)
    if not seen.person.reachable:
        return Priority(5, words.state_unreachable(), days_out)
    by_status = {
        AthleteStatus.DOCTOR_FIRST: (6, words.state_doctor()),
        AthleteStatus.ONBOARDING: (10, words.state_onboarding()),
        AthleteStatus.PAUSED: (11, words.state_paused()),
    }
    if profile.status in by_status:
        return Priority(*by_status[AthleteStatus(profile.status)], days_out)
    of_week = _standing_of_week(seen, context, here)
    if of_week is None:
        return Priority(12, words.state_fine(), days_out, in_order=True)
    return Priority(*of_week, days_out)


def _standing_of_week(
    seen: RosterRow, context: Context, here: str | None
) -> tuple[int, str] | None:
    """Where the week is; None where there is nothing to say of this morning."""
    if seen.event is None:
        return 8, words.state_to_set("event")
    if seen.plan_since is None or seen.limits_since is None:
        return 7, words.state_to_set("plan" if seen.plan_since is None else "limits")
    days_out = (seen.event.day - seen.today).days
    if days_out < 0:
        return 14, words.state_over()
    if days_out > max(PLAN_DAYS):
        return 13, words.state_ahead()
    if seen.morning is None:
        asked = asked_at(seen)
        set_up = max(seen.plan_since, seen.limits_since)
        if set_up < asked and counts_as_missed(seen.profile, context):
            return MISSED, words.state_missed()
        if context.now >= asked and asked_that_day(seen.profile, seen.today, set_up):
            return ASKED, words.state_missing()
        return 12, words.state_asked_at(_clock(seen, asked, here))
    if seen.asked_about:
        return 11, words.state_asked_about(seen.asked_about)
    if seen.complaints:
        return 11, words.state_complaints(seen.complaints)
    if seen.seen_to is not None:
        return 11, words.state_seen_to(seen.seen_to.level, seen.seen_to.flag)
    if seen.decided is not None and seen.decided.to_look_at:
        return 11, words.state_to_look_at(seen.decided.to_look_at)
    return None


def asked_at(seen: RosterRow) -> datetime:
    """When this morning's check-in is asked for."""
    return local_instant(seen.today, seen.profile.prompt_time, seen.profile.zone or "UTC")


def _clock(seen: RosterRow, instant: datetime, here: str | None) -> str:
    return figures.both_clocks(instant, here, seen.profile.zone, seen.person.first_name)
