"""`/travel`: the journey to an event elsewhere; the prompts follow the athlete on arrival."""

from __future__ import annotations

from sqlmodel import Session, col, select

from bot.alerts import alerts
from bot.core.timing import agenda
from bot.core.turn import Act, Turn
from bot.dialogue import asking
from bot.event import flow_travel
from bot.event.flow_travel import TRAVEL, arriving, leaving
from bot.people.changes import Change
from bot.people.people import active, get_person, profile_of, record
from bot.people.telling import say_to
from bot.store.base import id_of
from bot.store.tables.event import TripRow
from bot.store.tables.people import OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow
from bot.week import prompts
from bot.week.load import current_event
from engine.planning.travel import Journey, plan_journey

ARRIVE = "travel"


def command(turn: Act) -> None:
    """Ask for the journey, where the event is on other clocks than the athlete."""
    profile = active(turn, turn.person)
    if profile is None:
        return
    event = current_event(turn.session, profile.person_id)
    if event is None or profile.zone is None:
        say_to(turn, turn.person, flow_travel.no_event())
        return
    if event.zone == profile.zone:
        text = flow_travel.same_zone(event.zone)
        say_to(turn, turn.person, text)
        return
    asking.open_question(turn, turn.person, TRAVEL, profile.person_id, {
        "_home": profile.zone,
        "_away": event.zone,
        "_event_day": event.day.isoformat(),
        "_event": event.id,
    })  # fmt: skip


def given(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """The shift and the meals on the way, to both; the clocks change over on arrival."""
    profile = profile_of(turn.session, person.id)
    event = current_event(turn.session, profile.person_id) if profile is not None else None
    answers = question.answers
    if profile is None or event is None or event.id != answers["_event"]:
        say_to(turn, person, flow_travel.no_event())
        return
    trip = TripRow(
        athlete_id=profile.person_id, event_id=answers["_event"], leave_at=leaving(answers),
        arrive_at=arriving(answers), home_zone=answers["_home"], away_zone=answers["_away"],
        set_at=turn.now,
    )  # fmt: skip
    turn.session.add(trip)
    turn.session.flush()
    agenda.cancel(turn.session, subject=prompts.subject(profile), kinds=[ARRIVE])
    agenda.put(
        turn.session, agenda.Named(prompts.subject(profile), event.day, ARRIVE),
        due_at=trip.arrive_at, payload={"trip": id_of(trip)}, again=True,
    )  # fmt: skip
    record(turn, profile.person_id, Change.JOURNEY(trip=id_of(trip)), by=person.id)
    found = plan_journey(
        Journey(
            leave=trip.leave_at, arrive=trip.arrive_at, home_zone=trip.home_zone,
            away_zone=trip.away_zone, wake=profile.prompt_time, told=turn.now,
        )
    )  # fmt: skip
    about = (found, trip.home_zone, trip.away_zone, event.day, trip.arrive_at)
    say_to(turn, person, flow_travel.plan(*about))
    lead = flow_travel.coach_lead
    alerts.note(turn, profile, lambda: f"{lead(person.first_name)}\n\n{flow_travel.plan(*about)}")


def arrived(turn: Turn, duty: AgendaRow) -> None:
    """The athlete's clocks are now those of the event: the mornings ahead move with them."""
    trip = turn.session.get(TripRow, duty.payload.get("trip", 0))
    profile = profile_of(turn.session, trip.athlete_id) if trip is not None else None
    event = current_event(turn.session, profile.person_id) if profile is not None else None
    if trip is None or profile is None or event is None or event.id != trip.event_id:
        return
    if _newest(turn.session, trip.event_id) != trip.id or profile.zone != trip.home_zone:
        return
    profile.zone = trip.away_zone
    trip.arrived_at = turn.now
    turn.session.add(profile)
    turn.session.add(trip)
    record(turn, profile.person_id, Change.ARRIVED(trip=id_of(trip)), by=None)
    prompts.schedule(turn, profile)
    person = get_person(turn.session, profile.person_id)
    say_to(turn, person, flow_travel.arrived(trip.away_zone))
    alerts.note(
        turn, profile, lambda: flow_travel.coach_told_arrived(person.first_name, trip.away_zone)
    )


def _newest(session: Session, event_id: int) -> int | None:
    query = select(TripRow.id).where(TripRow.event_id == event_id)
    return session.exec(query.order_by(col(TripRow.id).desc())).first()
