"""What falls due of the day's timetable, and what of the day's own menu goes with a meal."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from sqlmodel import Session

from bot.context import Context
from bot.flows.stage import LOOK
from bot.messages import food_day as food_words
from bot.messages import stage_entries as words
from bot.outbox import say
from bot.service import asking, stage_day
from bot.service.care import care_for
from bot.service.food_day import day_row
from bot.service.food_list import food_of, rows_of
from bot.service.people import get_person, profile_of
from bot.service.week import current_event
from bot.store.people import AthleteProfile
from bot.store.stage import StageRow
from bot.store.traffic import AgendaRow
from bot.store.week import EventRow
from engine.stage_day import Entry, Kind

#: Said without a sound: they come every hour.
QUIET = (Kind.DRINK, Kind.SIP)


def remind(session: Session, duty: AgendaRow, context: Context) -> None:
    """What falls due of the timetable, said once; stale or overtaken reminders are not said."""
    row = session.get(StageRow, duty.payload.get("stage_day", 0))
    profile = profile_of(session, row.athlete_id) if row is not None else None
    event = current_event(session, profile.person_id) if profile is not None else None
    if row is None or profile is None or event is None or event.id != row.event_id:
        return
    # A reminder of a day from which the event has moved away.
    if row.cancelled_at is not None or duty.local_date != event.day:
        return
    entry = stage_day.settle(session, row, duty.payload["key"])
    if entry is None or context.now - duty.due_at > stage_day.STALE_AFTER:
        return
    athlete = get_person(session, profile.person_id)
    if entry.kind is Kind.PUMP and care_for(session, profile, context).still:
        return
    if entry.kind is Kind.LOOK:
        asking.open_question(
            session, athlete, LOOK, context=context, subject_id=profile.person_id,
            answers={"_stage_day": row.id},
        )  # fmt: skip
        return
    text = words.reminder(
        entry, len(row.facts["stages"]), event.zone, _food(session, profile, event, entry, context)
    )
    say(
        session, chat_id=athlete.chat_id, text=text, now=context.now,
        dedupe=f"stage:{row.id}:{event.day}:{entry.key}", silent=entry.kind in QUIET,
    )  # fmt: skip


def _food(
    session: Session, profile: AthleteProfile, event: EventRow, entry: Entry, context: Context
) -> str:
    """What the day's own menu has for this meal, where the athlete has made one."""
    if entry.kind not in (Kind.MEAL, Kind.LAST_MEAL):
        return ""
    menu = day_row(session, profile.person_id, event.day, context).meals
    if not menu:
        return ""
    local = entry.at.astimezone(ZoneInfo(event.zone))
    nearest = min(
        menu, key=lambda meal: abs(_minutes(meal["at"]) - (local.hour * 60 + local.minute))
    )
    foods = {str(row.id): food_of(row) for row in rows_of(session, profile.person_id)}
    portions = [
        food_words.amount(foods[id], steps * foods[id].step_g)
        for id, steps in nearest["portions"].items()
        if id in foods
    ]
    return words.food_hint("; ".join(portions)) if portions else ""


def _minutes(clock: str) -> int:
    hours, minutes = clock.split(":")
    return int(hours) * 60 + int(minutes)
