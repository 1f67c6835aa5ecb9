"""What goes along when an event moves: plan and limits, timetable, journey, calendar files."""

from __future__ import annotations

from dataclasses import dataclass
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot import agenda
from bot.context import Context
from bot.messages import event_moving as words
from bot.messages import stage as stage_words
from bot.messages import taking_back as back_words
from bot.outbox import ARRIVED, Button, say
from bot.service import prompts, ready, stage_day, stage_views
from bot.service.people import get_person, local_date, speaking_to
from bot.service.planning import event_line
from bot.service.travel import ARRIVE
from bot.service.week import current_event, limits_row, plan_row
from bot.store.calendar import CalendarRow
from bot.store.people import AthleteProfile, HistoryRow, Person
from bot.store.traffic import OutboxRow
from bot.store.trip import TripRow
from bot.store.week import EventRow, LimitsRow, PlanRow


@dataclass(frozen=True, slots=True)
class Followed:
    """What became of timetable and journey; None where there was none. `timetable`, `journey`:
    whether it came along.
    """

    timetable: bool | None = None
    journey: bool | None = None


def copy_plan_and_limits(session: Session, earlier: EventRow, event: EventRow) -> None:
    """The newest plan and limits of the earlier event, for the new one."""
    assert event.id is not None
    plan, limits = plan_row(session, earlier), limits_row(session, earlier)
    if plan is not None:
        session.add(PlanRow(event_id=event.id, **plan.model_dump(exclude={"id", "event_id"})))
    if limits is not None:
        session.add(LimitsRow(event_id=event.id, **limits.model_dump(exclude={"id", "event_id"})))
    session.flush()


def day_is_done(session: Session, event: EventRow, context: Context) -> bool:
    """Whether the last class of the event's timetable is over: then the day has been, and stays."""
    row = stage_day.stage_row(session, event)
    if row is None or row.cancelled_at is not None:
        return False
    return not stage_day.running(row, event, context)


def follow(
    session: Session,
    profile: AthleteProfile,
    earlier: EventRow,
    event: EventRow,
    context: Context,
) -> Followed:
    """Timetable, journey and calendar files of the earlier event become those of this one."""
    for calendar in session.exec(
        select(CalendarRow).where(CalendarRow.event_id == earlier.id)
    ).all():
        calendar.event_id = event.id or 0
        session.add(calendar)
    session.flush()
    return Followed(
        timetable=_timetable(session, profile, earlier, event, context),
        journey=_journey(session, profile, earlier, event, context),
    )


def can_go_back(
    session: Session, profile: AthleteProfile, row: HistoryRow, context: Context
) -> bool:
    """Whether the event before has its day to come; or there was none, and no times rest on it."""
    number = row.detail["before"].get("event")
    earlier = session.get(EventRow, number) if number is not None else None
    now_set = current_event(session, profile.person_id)
    if now_set is None or now_set.id != row.detail["event"]:
        return False
    if earlier is None:
        first = row.detail.get("was") is None
        return first and stage_day.stage_row(session, now_set) is None
    return earlier.day >= local_date(profile, context)


def go_back(
    session: Session, by: Person, profile: AthleteProfile, row: HistoryRow, context: Context
) -> None:
    """The event before counts again with its plan and limits; timetable and journey go back to it."""
    event, number = session.get_one(EventRow, row.detail["event"]), row.detail["before"]["event"]
    earlier = session.get_one(EventRow, number) if number is not None else None
    event.active = False
    session.add(event)
    if earlier is not None:
        earlier.active = True
        session.add(earlier)
    session.flush()
    followed = Followed()
    if earlier is not None:
        followed = follow(session, profile, event, earlier, context)
    ready.schedule(session, profile, context)
    prompts.schedule(session, profile, context=context)
    _tell_gone_back(session, by, profile, row, earlier, context)
    if earlier is not None:
        tell(session, by, profile, earlier, followed, context)


def _tell_gone_back(
    session: Session,
    by: Person,
    profile: AthleteProfile,
    row: HistoryRow,
    earlier: EventRow | None,
    context: Context,
) -> None:
    """The coach reads what holds again; the athlete a correction, where the change had reached them."""

    def line() -> str:
        return event_line(profile, earlier, context) if earlier is not None else ""

    if earlier is not None:
        text = words.event_is_back(line())
        say(session, chat_id=by.chat_id, text=text, now=context.now)
    said = [session.get(OutboxRow, number) for number in row.detail.get("said", [])]
    athlete = get_person(session, profile.person_id)
    if athlete.id != by.id and any(one is not None and one.status in ARRIVED for one in said):
        with speaking_to(athlete):
            text = back_words.athlete_told_event_back(by.first_name, line())
            say(session, chat_id=athlete.chat_id, text=text, now=context.now)


def tell(
    session: Session,
    by: Person,
    profile: AthleteProfile,
    event: EventRow,
    followed: Followed,
    context: Context,
) -> None:
    """Both read the day anew, or what has to be told again."""
    athlete = get_person(session, profile.person_id)
    readers = [by] if by.id == athlete.id else [by, athlete]
    for reader in readers:
        with speaking_to(reader):
            _tell_one(session, reader, profile, event, followed, context)


def _tell_one(
    session: Session,
    reader: Person,
    profile: AthleteProfile,
    event: EventRow,
    followed: Followed,
    context: Context,
) -> None:
    name = get_person(session, profile.person_id).first_name
    own = reader.id == profile.person_id
    if followed.timetable:
        lead = words.came_along(event.day, event.zone)
        stage_views.say_day(session, reader, profile, context, lead=lead)
    elif followed.timetable is False:
        keys = [[Button(stage_words.set_button(), f"st:set:{profile.person_id}")]]
        text = words.stayed_behind(name, own=own)
        say(session, chat_id=reader.chat_id, text=text, now=context.now, buttons=keys)
    if followed.journey is False:
        text = words.journey_gone(name, event.zone, own=own)
        say(session, chat_id=reader.chat_id, text=text, now=context.now)


def _timetable(
    session: Session,
    profile: AthleteProfile,
    earlier: EventRow,
    event: EventRow,
    context: Context,
) -> bool | None:
    row = stage_day.stage_row(session, earlier)
    if row is None:
        return None
    if row.cancelled_at is not None or stage_day.stage_row(session, event) is not None:
        stage_day.cancel_reminders(session, profile, context, due_ones_too=True)
        return False if row.cancelled_at is not None else None
    return stage_day.follow(session, profile, row, earlier, event, context)


def _journey(
    session: Session,
    profile: AthleteProfile,
    earlier: EventRow,
    event: EventRow,
    context: Context,
) -> bool | None:
    """The flight stays booked: it goes along where it still leads to the event in time."""
    # Where a move is taken back, the journey may have stayed with the event that it went to.
    trips = select(TripRow).where(col(TripRow.event_id).in_((earlier.id, event.id)))
    trip = session.exec(trips.order_by(col(TripRow.id).desc())).first()
    if trip is None:
        return None
    arrival = trip.arrive_at.astimezone(ZoneInfo(trip.away_zone)).date()
    agenda.cancel(session, subject=prompts.subject(profile), kind=ARRIVE)
    if trip.away_zone != event.zone or arrival > event.day:
        return False if trip.arrived_at is None else None
    trip.event_id = event.id or 0
    session.add(trip)
    if trip.arrived_at is None:
        agenda.put(
            session, subject=prompts.subject(profile), local_date=event.day, kind=ARRIVE,
            due_at=trip.arrive_at, payload={"trip": trip.id}, again=True,
        )  # fmt: skip
    return True
