"""What falls due of the day's timetable, and what of the day's own menu goes with a meal."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from bot.core.chat.outbox import Delivery
from bot.core.turn import Turn
from bot.decision.care import care_for
from bot.dialogue import asking
from bot.event.stage import day as stage_day
from bot.event.stage import words_entries as words
from bot.event.stage.flow import LOOK
from bot.food import words_day as food_words
from bot.food.day import day_row
from bot.food.list import food_of, rows_of
from bot.people.people import get_person, profile_of
from bot.people.telling import say_to
from bot.store.tables.event import StageRow
from bot.store.tables.people import AthleteProfile
from bot.store.tables.traffic import AgendaRow, Urgency
from bot.store.tables.week import EventRow
from bot.week.load import current_event
from engine.stage_day.stage_day import Entry, Kind

#: Said without a sound: they come every hour.
QUIET = (Kind.DRINK, Kind.SIP)


def remind(turn: Turn, duty: AgendaRow) -> None:
    """What falls due of the timetable, said once; stale or overtaken reminders are not said."""
    row = turn.session.get(StageRow, duty.payload.get("stage_day", 0))
    profile = profile_of(turn.session, row.athlete_id) if row is not None else None
    event = current_event(turn.session, profile.person_id) if profile is not None else None
    if row is None or profile is None or event is None or event.id != row.event_id:
        return
    # A reminder of a day from which the event has moved away.
    if row.cancelled_at is not None or duty.local_date != event.day:
        return
    entry = stage_day.mark_done(turn.session, row, duty.payload["key"])
    if entry is None or turn.now - duty.due_at > stage_day.STALE_AFTER:
        return
    athlete = get_person(turn.session, profile.person_id)
    if entry.kind is Kind.PUMP and care_for(turn, profile).still:
        return
    if entry.kind is Kind.LOOK:
        asking.open_question(
            turn, athlete, LOOK, subject_id=profile.person_id,
            answers={"_stage_day": row.id},
        )  # fmt: skip
        return
    if entry.kind is Kind.STAGE:  # what was to be seen before it is past
        stage_day.drop_look_check(turn, profile)
    text = words.reminder(entry, len(row.facts["stages"]), _food(turn, profile, event, entry))
    say_to(
        turn,
        athlete,
        text,
        how=Delivery(
            silent=entry.kind in QUIET,
            dedupe=f"stage:{row.id}:{event.day}:{entry.key}",
            urgency=Urgency.STAGE_DAY,
        ),
    )


def _food(turn: Turn, profile: AthleteProfile, event: EventRow, entry: Entry) -> str:
    """What the day's own menu has for this meal, where the athlete has made one."""
    if entry.kind not in (Kind.MEAL, Kind.LAST_MEAL):
        return ""
    menu = day_row(turn, profile.person_id, event.day).meals
    if not menu:
        return ""
    local = entry.at.astimezone(ZoneInfo(event.zone))
    nearest = min(
        menu, key=lambda meal: abs(_minutes(meal["at"]) - (local.hour * 60 + local.minute))
    )
    foods = {str(row.id): food_of(row) for row in rows_of(turn.session, profile.person_id)}
    portions = [
        food_words.amount(foods[id], steps * foods[id].step_g)
        for id, steps in nearest["portions"].items()
        if id in foods
    ]
    return words.food_hint("; ".join(portions)) if portions else ""


def _minutes(clock: str) -> int:
    hours, minutes = clock.split(":")
    return int(hours) * 60 + int(minutes)
