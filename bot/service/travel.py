"""`/travel`: the journey to an event elsewhere; the prompts follow the athlete on arrival."""

from __future__ import annotations

from sqlmodel import Session, col, select

from bot import agenda
from bot.context import Context
from bot.flows.travel import TRAVEL, arriving, leaving
from bot.messages import travel as words
from bot.outbox import say
from bot.service import alerts, asking, prompts
from bot.service.asking import Registered
from bot.service.athlete_views import active
from bot.service.handles import ATHLETE, Command, Duty, Tap
from bot.service.people import get_person, profile_of, record
from bot.service.week import current_event
from bot.store.people import OpenQuestion, Person
from bot.store.traffic import AgendaRow
from bot.store.trip import TripRow
from engine.travel import Journey, plan_journey

ARRIVE = "travel"


def command(session: Session, person: Person, rest: str, context: Context) -> None:
    """Ask for the journey, where the event is on other clocks than the athlete."""
    profile = active(session, person, context)
    if profile is None:
        return
    event = current_event(session, profile.person_id)
    if event is None or profile.zone is None:
        say(session, chat_id=person.chat_id, text=words.no_event(), now=context.now)
        return
    if event.zone == profile.zone:
        text = words.same_zone(event.zone)
        say(session, chat_id=person.chat_id, text=text, now=context.now)
        return
    asking.open_question(
        session, person, TRAVEL, context=context, subject_id=profile.person_id,
        answers={
            "_home": profile.zone,
            "_away": event.zone,
            "_event_day": event.day.isoformat(),
            "_event": event.id,
        },
    )  # fmt: skip


def given(session: Session, person: Person, question: OpenQuestion, context: Context) -> None:
    """The shift and the meals on the way, to both; the clocks change over on arrival."""
    profile = profile_of(session, person.id)
    event = current_event(session, profile.person_id) if profile is not None else None
    answers = question.answers
    if profile is None or event is None or event.id != answers["_event"]:
        say(session, chat_id=person.chat_id, text=words.no_event(), now=context.now)
        return
    trip = TripRow(
        athlete_id=profile.person_id, event_id=answers["_event"], leave_at=leaving(answers),
        arrive_at=arriving(answers), home_zone=answers["_home"], away_zone=answers["_away"],
        set_at=context.now,
    )  # fmt: skip
    session.add(trip)
    session.flush()
    agenda.cancel(session, subject=prompts.subject(profile), kind=ARRIVE)
    agenda.put(
        session, subject=prompts.subject(profile), local_date=event.day, kind=ARRIVE,
        due_at=trip.arrive_at, payload={"trip": trip.id}, again=True,
    )  # fmt: skip
    record(session, profile.person_id, "journey", context, by=person.id, trip=trip.id)
    found = plan_journey(
        Journey(
            leave=trip.leave_at, arrive=trip.arrive_at, home_zone=trip.home_zone,
            away_zone=trip.away_zone, wake=profile.prompt_time, told=context.now,
        )
    )  # fmt: skip
    about = (found, trip.home_zone, trip.away_zone, event.day, trip.arrive_at)
    say(session, chat_id=person.chat_id, text=words.plan(*about), now=context.now)
    alerts.note(
        session,
        profile,
        lambda: words.plan(*about, lead=words.coach_lead(person.first_name)),
        context,
    )


def arrived(session: Session, duty: AgendaRow, context: Context) -> None:
    """The athlete's clocks are now those of the event: the mornings ahead move with them."""
    trip = session.get(TripRow, duty.payload.get("trip", 0))
    profile = profile_of(session, trip.athlete_id) if trip is not None else None
    event = current_event(session, profile.person_id) if profile is not None else None
    if trip is None or profile is None or event is None or event.id != trip.event_id:
        return
    if _newest(session, trip.event_id) != trip.id or profile.zone != trip.home_zone:
        return
    profile.zone = trip.away_zone
    trip.arrived_at = context.now
    session.add(profile)
    session.add(trip)
    record(session, profile.person_id, "arrived", context, by=None, trip=trip.id)
    prompts.schedule(session, profile, context=context)
    person = get_person(session, profile.person_id)
    say(session, chat_id=person.chat_id, text=words.arrived(trip.away_zone), now=context.now)
    alerts.note(
        session,
        profile,
        lambda: words.coach_told_arrived(person.first_name, trip.away_zone),
        context,
    )


def _newest(session: Session, event_id: int) -> int | None:
    query = select(TripRow.id).where(TripRow.event_id == event_id)
    return session.exec(query.order_by(col(TripRow.id).desc())).first()


COMMANDS = (Command("travel", ATHLETE, command, words.menu),)
TAPS: tuple[Tap, ...] = ()
FLOWS = (Registered(TRAVEL, given),)
DUTIES = (Duty(ARRIVE, arrived),)
