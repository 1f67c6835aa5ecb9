"""Another coach beside the first one for a while: invited, joined, and over again."""

from __future__ import annotations

from datetime import date, time, timedelta
from functools import partial
from typing import Any

from sqlmodel import Session

from bot.core.chat.cards import OfRow
from bot.core.chat.outbox import SILENTLY, Button
from bot.core.timing import agenda, instants
from bot.core.timing.agenda import Subject
from bot.core.turn import OnAthlete, Turn
from bot.dialogue import asking
from bot.membership import flow_second
from bot.membership.buttons import SECOND_ASK, SECOND_END
from bot.membership.flow_second import ONE, SECOND
from bot.people.changes import Change
from bot.people.coach_settings import zone_of_coach
from bot.people.people import (
    covered,
    get_person,
    given_by,
    given_to,
    name_of,
    own_athlete,
    profile_of,
    record,
)
from bot.people.telling import answer, rewrite, say_to
from bot.store.base import id_of
from bot.store.tables.coach import SecondCoach
from bot.store.tables.people import OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow
from bot.week.load import current_event
from bot.words import common

OVER = "second-coach-over"


def show_second(turn: OnAthlete) -> None:
    """The card's button: who stands beside the coach now, and the way to invite somebody."""
    answer(turn)
    rows = given_by(turn.session, id_of(turn.person))
    number = turn.profile.person_id
    lines = [
        flow_second.running_line(
            name_of(turn.session, row.person_id),
            flow_second.who(_name_of(turn.session, row.athlete_id)),
            row.rights,
            row.until_day,
        )
        for row in rows
    ]
    removing = [
        [
            Button(
                flow_second.remove_button(name_of(turn.session, row.person_id)),
                SECOND_END(number, id_of(row)),
            )
        ]
        for row in rows
    ]
    say_to(
        turn,
        turn.person,
        flow_second.running(lines) if lines else flow_second.nobody(),
        buttons=[*removing, [Button(flow_second.add_button(), SECOND_ASK(number))]],
    )


def ask_second(turn: OnAthlete) -> None:
    """For whom, with which rights, until when; the invitation comes after it."""
    answer(turn)
    event = current_event(turn.session, turn.profile.person_id)
    asking.open_question(turn, turn.person, SECOND, turn.profile.person_id, {
        "_name": name_of(turn.session, turn.profile.person_id),
        "_event_day": event.day.isoformat() if event is not None else None,
        "_zone": zone_of_coach(turn.session, turn.person) or turn.profile.zone or "UTC",
    })  # fmt: skip


def agreed(turn: Turn, coach: Person, question: OpenQuestion) -> dict[str, Any] | None:
    """What an invitation is to carry; None, with a word, where the athlete is not the coach's."""
    profile = own_athlete(turn.session, coach, question.about)
    if profile is None or profile.coach_id != coach.id:
        say_to(turn, coach, common.not_your_athlete())
        return None
    answers = question.answers
    return {
        "athlete_id": profile.person_id if answers["whom"] == ONE else None,
        "rights": answers["rights"],
        "until": answers["until"],
        "zone": answers["_zone"],
    }


def refusal(session: Session, person: Person, coach: Person) -> str:
    """Why this person cannot be the second coach; "" where they can."""
    profile = profile_of(session, person.id)
    if person.id == coach.id:
        return flow_second.not_your_own()
    if profile is not None and profile.coach_id == coach.id:
        return flow_second.athlete_is_no_second(coach.first_name)
    return ""


def join(turn: Turn, person: Person, coach: Person, detail: dict[str, Any]) -> bool:
    """Stand beside the coach from now on; False where the time that was agreed is over."""
    assert person.id is not None
    assert coach.id is not None
    until = date.fromisoformat(detail["until"])
    until_at = instants.local_instant(until + timedelta(days=1), time(0, 0), detail["zone"])
    if until_at <= turn.now:
        return False
    for earlier in given_by(turn.session, id_of(coach)):
        if earlier.person_id == person.id and earlier.athlete_id == detail["athlete_id"]:
            _close(turn, earlier)
    row = SecondCoach(
        coach_id=coach.id, person_id=person.id, athlete_id=detail["athlete_id"],
        rights=detail["rights"], given_at=turn.now,
        until_day=until, until_at=until_at,
    )  # fmt: skip
    turn.session.add(row)
    turn.session.flush()
    agenda.put(turn.session, agenda.Named(Subject.SECOND(row.id), until, OVER), due_at=until_at)
    name = _name_of(turn.session, row.athlete_id)
    say_to(
        turn,
        person,
        lambda: flow_second.welcome(
            coach.first_name, name or flow_second.theirs(None), row.rights, until
        ),
    )
    say_to(
        turn,
        coach,
        lambda: flow_second.joined(person.first_name, flow_second.who(name), row.rights, until),
    )
    for profile in covered(turn.session, row):
        record(turn, profile.person_id, by=coach.id, what=Change.SECOND_COACH_JOINED(
            name=person.first_name, rights=flow_second.RIGHTS[row.rights], until=until.isoformat(),
        ))  # fmt: skip
        if profile.person_id != coach.id:
            athlete = get_person(turn.session, profile.person_id)
            say_to(
                turn,
                athlete,
                partial(
                    flow_second.athlete_told_joined,
                    coach.first_name,
                    person.first_name,
                    row.rights,
                    until,
                ),
            )
    return True


def end_second(turn: OnAthlete, pressed: OfRow) -> None:
    """The first coach ends it before its time."""
    answer(turn)
    row = turn.session.get(SecondCoach, pressed.row)
    if row is None or row.coach_id != turn.person.id or row.ended_at is not None:
        rewrite(turn, flow_second.not_given())
        return
    end(turn, row)
    name = name_of(turn.session, row.person_id)
    rewrite(turn, flow_second.over_told(name))


def over(turn: Turn, duty: AgendaRow) -> None:
    """The last day is over."""
    row = turn.session.get(SecondCoach, Subject.SECOND.of(duty))
    if row is not None and row.ended_at is None:
        end(turn, row)
        coach, person = (
            get_person(turn.session, row.coach_id),
            get_person(turn.session, row.person_id),
        )
        say_to(turn, coach, lambda: flow_second.over_told(person.first_name), how=SILENTLY)


def end_overdue(turn: Turn, person: Person) -> None:
    """Rights that have run out are gone before anything is done with them, however late a duty is."""
    for row in given_to(turn.session, person):
        if row.until_at <= turn.now:
            end(turn, row)


def end(turn: Turn, row: SecondCoach) -> None:
    """Take the rights away; the second coach and the athletes are told, silently: it is midnight."""
    athletes = covered(turn.session, row)
    _close(turn, row)
    coach, person = get_person(turn.session, row.coach_id), get_person(turn.session, row.person_id)
    say_to(turn, person, partial(flow_second.over, coach.first_name), how=SILENTLY)
    for profile in athletes:
        record(turn, profile.person_id, Change.SECOND_COACH_OVER(name=person.first_name), by=None)
        if profile.person_id != coach.id:
            athlete = get_person(turn.session, profile.person_id)
            say_to(
                turn,
                athlete,
                partial(flow_second.athlete_told_over, person.first_name),
                how=SILENTLY,
            )


def _close(turn: Turn, row: SecondCoach) -> None:
    row.ended_at = turn.now
    turn.session.add(row)
    turn.session.flush()
    agenda.cancel(turn.session, subject=Subject.SECOND(row.id))


def _name_of(session: Session, athlete_id: int | None) -> str | None:
    return name_of(session, athlete_id) if athlete_id is not None else None
