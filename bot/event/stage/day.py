"""The timetable of the day as it is kept: laid out, moved, called off; and what falls due of it."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.core.chat.outbox import Delivery
from bot.core.timing import agenda, instants
from bot.core.timing.agenda import Several
from bot.core.turn import Context, Turn
from bot.decision.to_athlete import care_for
from bot.dialogue import asking
from bot.event.stage import words
from bot.event.stage.flow import LOOK
from bot.food import words_day as food_words
from bot.food.day import day_row
from bot.food.list import food_of, rows_of
from bot.people.changes import Change
from bot.people.people import get_person, profile_of, record
from bot.people.telling import say_to
from bot.store.base import id_of
from bot.store.tables.event import StageRow
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.traffic import AgendaRow, Urgency
from bot.store.tables.week import EventRow
from bot.week.load import current_event
from bot.week.prompts import subject
from engine.evidence.staging import ROUND_TO_MIN
from engine.stage_day.stage_day import Entry, Kind, StageDay, in_order, timeline

REMIND = Several("stage")
#: A reminder that could not be given within this span of its time is not given at all.
STALE_AFTER = timedelta(minutes=20)


def stage_row(session: Session, event: EventRow) -> StageRow | None:
    return session.exec(select(StageRow).where(StageRow.event_id == event.id)).first()


def look_of(session: Session, event: EventRow) -> float | None:
    """How long before the stage the look is checked there, in minutes; None as is common."""
    row = stage_row(session, event)
    return row.facts.get("look_before_min") if row is not None else None


def lay_out(
    turn: Turn, profile: AthleteProfile, event: EventRow, day: StageDay, by: Person
) -> StageRow:
    """Set the day, or set it anew; what has been done stays done."""
    row = stage_row(turn.session, event) or StageRow(
        event_id=id_of(event), athlete_id=profile.person_id, facts={}, entries=[],
        set_by=id_of(by), set_at=turn.now,
    )  # fmt: skip
    before = _before(row)
    row.cancelled_at = None
    row.set_by, row.set_at = id_of(by), turn.now
    _plan(turn, profile, event, row, day)
    entry = Change.DAY_LAID_OUT(stage_day=id_of(row), before=before)
    record(turn, profile.person_id, entry, by=by.id)
    return row


def follow(
    turn: Turn, profile: AthleteProfile, row: StageRow, earlier: EventRow, event: EventRow
) -> bool:
    """The event moved: the same times by the clocks of its new day and place, reminders anew.

    What was said of the old day is said again on another day, and not on the same one. False, and
    the timetable stays behind without reminders, where every class would be in the past by then.
    """
    day = _transplanted(day_of(row), earlier, event)
    if event.day != earlier.day:
        drop_look_check(turn, profile)
    cancel_reminders(turn, profile, row, due_ones_too=earlier.day != event.day)
    if max(day.stages) <= turn.now:
        return False
    if event.day != earlier.day:
        row.entries = []
    row.event_id, row.set_at = id_of(event), turn.now
    _plan(turn, profile, event, row, day)
    return True


def drop_look_check(turn: Turn, profile: AthleteProfile) -> None:
    """One that is open has its stage no longer before it."""
    athlete = get_person(turn.session, profile.person_id)
    for question in asking.open_questions(
        turn.session, athlete, flow=LOOK.id, subject_id=profile.person_id
    ):
        asking.close(turn, question)


def _transplanted(day: StageDay, earlier: EventRow, event: EventRow) -> StageDay:
    """Each time as the clocks show it, on the new day by the clocks there."""

    def at(moment: datetime) -> datetime:
        local = moment.astimezone(ZoneInfo(earlier.zone))
        return instants.local_instant(
            event.day + (local.date() - earlier.day), local.time(), event.zone
        )

    stages: list[datetime] = []
    for stage in map(at, day.stages):
        # Clocks that leap can bring two times together: the classes still come one by one.
        after = stages[-1] + timedelta(minutes=float(ROUND_TO_MIN)) if stages else stage
        stages.append(max(stage, after))
    return StageDay(
        stages=tuple(stages),
        usual_wake=at(day.usual_wake),
        travel_min=day.travel_min,
        registration=at(day.registration) if day.registration else None,
        tan=at(day.tan) if day.tan else None,
        look_before_min=day.look_before_min,
    )


def move(turn: Turn, profile: AthleteProfile, event: EventRow, minutes: int, by: Person) -> None:
    """The classes still ahead come so much later, or earlier: the rest of the day anew."""
    row = stage_row(turn.session, event)
    assert row is not None
    before = _before(row)
    day = day_of(row).moved(timedelta(minutes=minutes), turn.now)
    _plan(turn, profile, event, row, day)
    entry = Change.DAY_MOVED(minutes=minutes, stage_day=id_of(row), before=before)
    record(turn, profile.person_id, entry, by=by.id)


def call_off(turn: Turn, profile: AthleteProfile, row: StageRow, by: Person) -> None:
    before = _before(row)
    row.cancelled_at = turn.now
    turn.session.add(row)
    cancel_reminders(turn, profile, row)
    drop_look_check(turn, profile)
    entry = Change.STAGE_CALLED_OFF(stage_day=id_of(row), before=before)
    record(turn, profile.person_id, entry, by=by.id)


def restore(
    turn: Turn, profile: AthleteProfile, event: EventRow, row: StageRow, before: dict[str, Any]
) -> None:
    """The times as they were before a change; what has been done since stays done."""
    row.facts = before["facts"]
    row.cancelled_at = turn.now if before["cancelled"] else None
    _plan(turn, profile, event, row, day_of(row))
    if row.cancelled_at is not None:
        cancel_reminders(turn, profile, row)


def day_of(row: StageRow) -> StageDay:
    """The engine's day of a row."""
    facts = row.facts

    def at(key: str) -> datetime | None:
        return datetime.fromisoformat(facts[key]) if facts.get(key) else None

    return StageDay(
        stages=tuple(datetime.fromisoformat(stage) for stage in facts["stages"]),
        usual_wake=datetime.fromisoformat(facts["usual_wake"]),
        travel_min=facts["travel_min"],
        registration=at("registration"),
        tan=at("tan"),
        look_before_min=facts.get("look_before_min"),
    )


def entries_of(row: StageRow) -> list[tuple[Entry, bool]]:
    """Every entry and whether it is done, in order."""
    done = {entry["key"] for entry in row.entries if entry["done"]}
    found = [
        Entry(e["key"], Kind(e["kind"]), datetime.fromisoformat(e["at"]), e["class_number"])
        for e in row.entries
    ]
    return [(entry, entry.key in done) for entry in in_order(found)]


def mark_done(session: Session, row: StageRow, key: str) -> Entry | None:
    """Mark an entry done, as its one reminder falls due; None where it is no longer there."""
    found = next((e for e, _ in entries_of(row) if e.key == key), None)
    if found is None:
        return None
    row.entries = [{**e, "done": e["done"] or e["key"] == key} for e in row.entries]
    session.add(row)
    session.flush()
    return found


def cancel_reminders(
    turn: Turn, profile: AthleteProfile, day: StageRow | None, *, due_ones_too: bool = False
) -> None:
    """Cancel those of a day ahead; one that has just fallen due is still to be said, unless told
    otherwise. Those of another event's day stay.
    """
    if day is None:
        return
    waiting = select(AgendaRow).where(
        AgendaRow.subject == subject(profile),
        AgendaRow.status == "waiting",
        col(AgendaRow.kind).startswith(REMIND("")),
    )
    if not due_ones_too:
        waiting = waiting.where(AgendaRow.due_at > turn.now)
    for row in turn.session.exec(waiting):
        if row.payload.get("stage_day") != day.id:
            continue
        row.status = "cancelled"
        turn.session.add(row)
    turn.session.flush()


def _before(row: StageRow) -> dict[str, Any]:
    """What a change has to remember so that it can be taken back."""
    return {"facts": row.facts, "cancelled": row.cancelled_at is not None}


def _plan(
    turn: Turn, profile: AthleteProfile, event: EventRow, row: StageRow, day: StageDay
) -> None:
    # What was due by now counts as done, whether or not its reminder has gone out yet.
    done = [e for e, is_done in entries_of(row) if is_done or e.at <= turn.now]
    # Laid out days before, nothing is bound by now.
    ahead = timeline(day, now=turn.now, done=done)
    row.facts = _facts(day)
    row.entries = [*_kept(done, done=True), *_kept(ahead, done=False)]
    turn.session.add(row)
    turn.session.flush()
    cancel_reminders(turn, profile, row)
    for entry in ahead:
        agenda.put(
            turn.session, agenda.Named(subject(profile), event.day, REMIND(entry.key)),
            due_at=entry.at, payload={"stage_day": id_of(row), "key": entry.key},
        )  # fmt: skip


def _facts(day: StageDay) -> dict[str, Any]:
    return {
        "stages": [stage.isoformat() for stage in day.stages],
        "usual_wake": day.usual_wake.isoformat(),
        "travel_min": day.travel_min,
        "registration": day.registration.isoformat() if day.registration else None,
        "tan": day.tan.isoformat() if day.tan else None,
        "look_before_min": day.look_before_min,
    }


def _kept(entries: Sequence[Entry], *, done: bool) -> list[dict[str, Any]]:
    return [
        {
            "key": entry.key,
            "kind": entry.kind.value,
            "at": entry.at.isoformat(),
            "class_number": entry.class_number,
            "done": done,
        }
        for entry in entries
    ]


def running(row: StageRow | None, context: Context) -> bool:
    """Whether the day can still be moved: it is set, not called off, and a class lies ahead."""
    if row is None or row.cancelled_at is not None:
        return False
    return max(day_of(row).stages) > context.now


def local_day(event: EventRow, context: Context) -> bool:
    """Whether it is the event's day where the event is, or the night after it."""
    local = context.now.astimezone(ZoneInfo(event.zone))
    return event.day in (local.date(), (local - timedelta(hours=4)).date())


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
    entry = mark_done(turn.session, row, duty.payload["key"])
    if entry is None or turn.now - duty.due_at > STALE_AFTER:
        return
    athlete = get_person(turn.session, profile.person_id)
    if entry.kind is Kind.PUMP and care_for(turn, profile).still:
        return
    if entry.kind is Kind.LOOK:
        asking.open_question(turn, athlete, LOOK, profile.person_id, {"_stage_day": row.id})
        return
    if entry.kind is Kind.STAGE:  # what was to be seen before it is past
        drop_look_check(turn, profile)
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
