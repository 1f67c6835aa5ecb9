"""What goes along when an event moves: plan and limits, timetable, journey, calendar files."""

from __future__ import annotations

from dataclasses import dataclass
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.core.chat.outbox import ARRIVED, Button
from bot.core.timing import agenda
from bot.core.turn import OnAthlete, Turn
from bot.event import words
from bot.event.buttons import ON_STAGE, StageView
from bot.event.stage import day as stage_day
from bot.event.stage import views as stage_views
from bot.event.stage import words as stage_words
from bot.event.travel import ARRIVE
from bot.people.changes import Change
from bot.people.people import get_person, local_date, name_of
from bot.people.telling import say_to, speaking_to
from bot.plan.planning import event_line
from bot.readiness import readiness as ready
from bot.store.base import id_of
from bot.store.tables.event import CalendarRow, TripRow
from bot.store.tables.people import AthleteProfile, HistoryRow, Person
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import EventRow, LimitsRow, PlanRow
from bot.week import prompts
from bot.week.load import event_ahead, limits_row, plan_row


@dataclass(frozen=True, slots=True)
class Followed:
    """What became of timetable and journey; None where there was none. `timetable`, `journey`:
    whether it came along.
    """

    timetable: bool | None = None
    journey: bool | None = None


def copy_plan_and_limits(session: Session, earlier: EventRow, event: EventRow) -> None:
    """The newest plan and limits of the earlier event, for the new one."""
    plan, limits, new = plan_row(session, earlier), limits_row(session, earlier), id_of(event)
    if plan is not None:
        session.add(PlanRow(event_id=new, **plan.model_dump(exclude={"id", "event_id"})))
    if limits is not None:
        session.add(LimitsRow(event_id=new, **limits.model_dump(exclude={"id", "event_id"})))


def day_is_done(turn: Turn, event: EventRow) -> bool:
    """Whether the last class of the event's timetable is over: then the day has been, and stays."""
    row = stage_day.stage_row(turn.session, event)
    if row is None or row.cancelled_at is not None:
        return False
    return not stage_day.running(row, turn.context)


def follow(turn: Turn, profile: AthleteProfile, earlier: EventRow, event: EventRow) -> Followed:
    """Timetable, journey and calendar files of the earlier event become those of this one."""
    for calendar in turn.session.exec(
        select(CalendarRow).where(CalendarRow.event_id == earlier.id)
    ).all():
        calendar.event_id = id_of(event)
    return Followed(
        timetable=_timetable(turn, profile, earlier, event),
        journey=_journey(turn, profile, earlier, event),
    )


def can_go_back(turn: OnAthlete, row: HistoryRow) -> bool:
    """Whether the event before has its day to come; or there was none, and no times rest on it."""
    detail = Change.EVENT_SET.of(row)
    number = detail["before"].get("event")
    earlier = turn.session.get(EventRow, number) if number is not None else None
    now_set = event_ahead(turn.session, turn.profile.person_id, detail["event"])
    if now_set is None:
        return False
    if detail["before"].get("more"):
        return stage_day.stage_row(turn.session, now_set) is None
    if earlier is None:
        first = detail.get("was") is None
        return first and stage_day.stage_row(turn.session, now_set) is None
    return earlier.day >= local_date(turn.profile, turn.context)


def go_back(turn: OnAthlete, row: HistoryRow) -> None:
    """The event before counts again with its plan and limits; timetable and journey go back to it."""
    by, profile = turn.person, turn.profile
    detail = Change.EVENT_SET.of(row)
    before, event = detail["before"], turn.session.get_one(EventRow, detail["event"])
    number = before.get("counted") if before.get("more") else before["event"]
    earlier = turn.session.get_one(EventRow, number) if number is not None else None
    more = bool(before.get("more"))
    counted = event.active
    event.active = event.waits = False
    if earlier is not None and (counted or not more):
        earlier.active, earlier.waits = counted, not counted
    turn.session.flush()
    followed = Followed()
    if earlier is not None and not more:
        followed = follow(turn, profile, event, earlier)
    ready.schedule(turn, profile)
    prompts.schedule(turn, profile)
    _tell_gone_back(turn, by, profile, row, earlier)
    if earlier is not None:
        tell(turn, by, profile, earlier, followed)


def _tell_gone_back(
    turn: Turn, by: Person, profile: AthleteProfile, row: HistoryRow, earlier: EventRow | None
) -> None:
    """The coach reads what holds again; the athlete a correction, where the change had reached them."""

    def line() -> str:
        return event_line(profile, earlier, turn.context) if earlier is not None else ""

    if earlier is not None:
        say_to(turn, by, words.event_is_back(line()))
    said = [
        turn.session.get(OutboxRow, number) for number in Change.EVENT_SET.of(row).get("said", [])
    ]
    athlete = get_person(turn.session, profile.person_id)
    if athlete.id != by.id and any(one is not None and one.status in ARRIVED for one in said):
        say_to(turn, athlete, lambda: words.athlete_told_event_back(by.first_name, line()))


def tell(
    turn: Turn, by: Person, profile: AthleteProfile, event: EventRow, followed: Followed
) -> None:
    """Both read the day anew, or what has to be told again."""
    athlete = get_person(turn.session, profile.person_id)
    readers = [by] if by.id == athlete.id else [by, athlete]
    for reader in readers:
        with speaking_to(reader):
            _tell_one(turn, reader, profile, event, followed)


def _tell_one(
    turn: Turn, reader: Person, profile: AthleteProfile, event: EventRow, followed: Followed
) -> None:
    name = name_of(turn.session, profile.person_id)
    own = reader.id == profile.person_id
    if followed.timetable:
        stage_views.say_day(turn, reader, profile, lead=words.came_along(event.day, event.zone))
    elif followed.timetable is False:
        keys = [[Button(stage_words.set_button(), ON_STAGE(StageView.SET, profile.person_id))]]
        text = words.stayed_behind(name, self_coached=own)
        say_to(turn, reader, text, buttons=keys)
    if followed.journey is False:
        text = words.journey_gone(name, event.zone, own=own)
        say_to(turn, reader, text)


def _timetable(
    turn: Turn, profile: AthleteProfile, earlier: EventRow, event: EventRow
) -> bool | None:
    row = stage_day.stage_row(turn.session, earlier)
    if row is None:
        return None
    if row.cancelled_at is not None or stage_day.stage_row(turn.session, event) is not None:
        stage_day.cancel_reminders(turn, profile, row, due_ones_too=True)
        return False if row.cancelled_at is not None else None
    return stage_day.follow(turn, profile, row, earlier, event)


def _journey(
    turn: Turn, profile: AthleteProfile, earlier: EventRow, event: EventRow
) -> bool | None:
    """The flight stays booked: it goes along where it still leads to the event in time."""
    # Where a move is taken back, the journey may have stayed with the event that it went to.
    trips = select(TripRow).where(col(TripRow.event_id).in_((earlier.id, event.id)))
    trip = turn.session.exec(trips.order_by(col(TripRow.id).desc())).first()
    if trip is None:
        return None
    arrival = trip.arrive_at.astimezone(ZoneInfo(trip.away_zone)).date()
    agenda.cancel(turn.session, subject=prompts.subject(profile), kinds=[ARRIVE])
    if trip.away_zone != event.zone or arrival > event.day:
        return False if trip.arrived_at is None else None
    trip.event_id = id_of(event)
    if trip.arrived_at is None:
        agenda.put(
            turn.session, agenda.Named(prompts.subject(profile), event.day, ARRIVE),
            due_at=trip.arrive_at, payload={"trip": id_of(trip)}, again=True,
        )  # fmt: skip
    return True
