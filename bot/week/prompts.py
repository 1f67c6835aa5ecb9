"""When an athlete is asked: the mornings of a peak week, as agenda rows in the athlete's own zone."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from sqlmodel import Session

from bot.core.timing import agenda, instants
from bot.core.timing.agenda import Several, Subject
from bot.core.turn import Context, Turn
from bot.people.people import local_date
from bot.store.tables.people import AthleteProfile, AthleteStatus
from bot.week.load import checkin_row, current_week
from engine.values.case import DEFAULT_CUT_OFF
from engine.values.plan import PLAN_DAYS, PeakPlan

PROMPT, NUDGE, MISSED, OVER = "prompt", Several("nudge"), "missed", "event-over"
# Our own choice: soon enough to matter, seldom enough not to nag.
NUDGES_AFTER = (timedelta(minutes=30), timedelta(minutes=90))
MISSED_AFTER_AT_LEAST = timedelta(hours=3)
#: Mornings whose answers may lead to a proposal come before all others that are asked at the same
#: time, so that a coach reads them first.
FIRST, LATER = 0, 1


def subject(profile: AthleteProfile) -> str:
    return Subject.ATHLETE(profile.person_id)


def schedule(turn: Turn, profile: AthleteProfile) -> datetime | None:
    """Lay out the mornings from today to the event, and the day after it; returns the first instant.

    To be called whenever event, zone, prompt time or status change: a morning that has been asked
    is not asked again, one that lies ahead moves, one that no longer belongs is cancelled.
    """
    agenda.cancel(turn.session, subject=subject(profile), kinds=[PROMPT, OVER])
    week = current_week(turn.session, profile) if profile.status == AthleteStatus.ACTIVE else None
    if week is None or profile.zone is None:
        return None
    today = local_date(profile, turn.context)
    first: datetime | None = None
    for days_out in PLAN_DAYS:
        day = week.date_of(days_out)
        if day < today or checkin_row(turn.session, profile.person_id, day) is not None:
            continue
        due = instants.local_instant(day, profile.prompt_time, profile.zone)
        if day == today and _too_late_today(profile, turn.context):
            continue
        row = agenda.put_in_rank(
            turn.session, agenda.Named(subject(profile), day, PROMPT), due_at=due,
            rank=FIRST if _may_matter(week.plan, days_out) else LATER,
        )  # fmt: skip
        if row.status == "waiting":
            first = min(first or due, due)
    after = week.event.day + timedelta(days=1)
    agenda.put(
        turn.session, agenda.Named(subject(profile), after, OVER),
        due_at=instants.local_instant(after, profile.prompt_time, profile.zone),
    )  # fmt: skip
    return max(first, turn.now) if first else None


def _may_matter(plan: PeakPlan, days_out: int) -> bool:
    """Whether that morning lies between the day before the load and the event."""
    return days_out <= plan.first_load_day + 1 or plan.after_refeed(days_out)


def _too_late_today(profile: AthleteProfile, context: Context) -> bool:
    clock = context.now.astimezone(ZoneInfo(profile.zone or "UTC")).time()
    return clock >= DEFAULT_CUT_OFF and clock > profile.prompt_time


def asked_that_day(profile: AthleteProfile, day: date, set_up: datetime) -> bool:
    """Whether a week that was set up at this instant still asks on this day (see `schedule`)."""
    zone = profile.zone or "UTC"
    asked = instants.local_instant(day, profile.prompt_time, zone)
    return set_up < max(asked, instants.local_instant(day, DEFAULT_CUT_OFF, zone))


def counts_as_missed(profile: AthleteProfile, context: Context) -> bool:
    """Whether a check-in that is not there by now is late enough today to count as missed."""
    today = local_date(profile, context)
    zone = profile.zone or "UTC"
    asked = instants.local_instant(today, profile.prompt_time, zone)
    cut_off = instants.local_instant(today, DEFAULT_CUT_OFF, zone)
    return context.now >= max(cut_off, asked + MISSED_AFTER_AT_LEAST)


def follow_up(turn: Turn, profile: AthleteProfile, day: date) -> None:
    """After a prompt has gone out: nudges, and the hour at which the check-in counts as missed."""
    for number, after in enumerate(NUDGES_AFTER, start=1):
        agenda.put(
            turn.session, agenda.Named(subject(profile), day, NUDGE(number)),
            due_at=turn.now + after,
        )  # fmt: skip
    cut_off = instants.local_instant(day, DEFAULT_CUT_OFF, profile.zone or "UTC")
    agenda.put(
        turn.session, agenda.Named(subject(profile), day, MISSED),
        due_at=max(cut_off, turn.now + MISSED_AFTER_AT_LEAST),
    )  # fmt: skip


def cancel_morning(session: Session, profile: AthleteProfile, day: date) -> None:
    """The check-in is there: no prompt, nudge or missed note for that day any more."""
    kinds = (PROMPT, MISSED, *(NUDGE(n) for n in range(1, len(NUDGES_AFTER) + 1)))
    agenda.cancel(session, subject=subject(profile), kinds=kinds, local_date=day)
