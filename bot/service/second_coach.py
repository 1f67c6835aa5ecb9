"""Another coach beside the first one for a while: invited, joined, and over again."""

from __future__ import annotations

from datetime import date, time, timedelta
from typing import Any

from sqlmodel import Session, col, select

from bot import agenda
from bot.context import Context
from bot.flows.coach_second import ONE, SECOND
from bot.incoming import Incoming
from bot.messages import coach as card_words
from bot.messages import coach_second as words
from bot.outbox import Button, say
from bot.service import asking
from bot.service.desk import zone_of_coach
from bot.service.people import get_person, own_athlete, profile_of, record, speaking_to
from bot.service.rights import covered, given_by
from bot.service.tapping import answer, rewrite
from bot.service.week import current_event
from bot.store.desk import SecondCoach
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.traffic import AgendaRow

OVER = "second-coach-over"


def show_second(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The card's button: who stands beside the coach now, and the way to invite somebody."""
    answer(session, incoming, context)
    rows = given_by(session, coach)
    number = profile.person_id
    lines = [
        words.running_line(
            get_person(session, row.person_id).first_name,
            words.who(_name_of(session, row.athlete_id)),
            row.rights,
            row.until_day,
        )
        for row in rows
    ]
    removing = [
        [
            Button(
                words.remove_button(get_person(session, row.person_id).first_name),
                f"c:second-end:{number}:{row.id}",
            )
        ]
        for row in rows
    ]
    say(
        session, chat_id=coach.chat_id, now=context.now,
        text=words.running(lines) if lines else words.nobody(),
        buttons=[*removing, [Button(words.add_button(), f"c:second-ask:{number}")]],
    )  # fmt: skip


def ask_second(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """For whom, with which rights, until when; the invitation comes after it."""
    answer(session, incoming, context)
    event = current_event(session, profile.person_id)
    asking.open_question(
        session, coach, SECOND, context=context, subject_id=profile.person_id,
        answers={
            "_name": get_person(session, profile.person_id).first_name,
            "_event_day": event.day.isoformat() if event is not None else None,
            "_zone": zone_of_coach(session, coach) or profile.zone or "UTC",
        },
    )  # fmt: skip


def agreed(
    session: Session, coach: Person, question: OpenQuestion, context: Context
) -> dict[str, Any] | None:
    """What an invitation is to carry; None, with a word, where the athlete is not the coach's."""
    profile = own_athlete(session, coach, question.subject_id or 0)
    if profile is None or profile.coach_id != coach.id:
        say(session, chat_id=coach.chat_id, text=card_words.not_your_athlete(), now=context.now)
        return None
    answers = question.answers
    return {
        "athlete_id": profile.person_id if answers["whom"] == ONE else None,
        "rights": answers["rights"],
        "until": answers["until"],
        "zone": answers["_zone"],
    }


def refusal(session: Session, person: Person, coach: Person, detail: dict[str, Any]) -> str:
    """Why this person cannot be the second coach; "" where they can."""
    profile = profile_of(session, person.id)
    if person.id == coach.id:
        return words.not_your_own()
    if profile is not None and profile.coach_id == coach.id:
        return words.athlete_is_no_second(coach.first_name)
    return ""


def join(
    session: Session, person: Person, coach: Person, detail: dict[str, Any], context: Context
) -> bool:
    """Stand beside the coach from now on; False where the time that was agreed is over."""
    assert person.id is not None
    assert coach.id is not None
    until = date.fromisoformat(detail["until"])
    until_at = agenda.local_instant(until + timedelta(days=1), time(0, 0), detail["zone"])
    if until_at <= context.now:
        return False
    for earlier in given_by(session, coach):
        if earlier.person_id == person.id and earlier.athlete_id == detail["athlete_id"]:
            _close(session, earlier, context)
    row = SecondCoach(
        coach_id=coach.id, person_id=person.id, athlete_id=detail["athlete_id"],
        rights=detail["rights"], given_at=context.now,
        until_day=until, until_at=until_at,
    )  # fmt: skip
    session.add(row)
    session.flush()
    agenda.put(session, subject=f"second:{row.id}", local_date=until, kind=OVER, due_at=until_at)
    name = _name_of(session, row.athlete_id)
    with speaking_to(person):
        text = words.welcome(coach.first_name, name or words.theirs(None), row.rights, until)
        say(session, chat_id=person.chat_id, text=text, now=context.now)
    with speaking_to(coach):
        text = words.joined(person.first_name, words.who(name), row.rights, until)
        say(session, chat_id=coach.chat_id, text=text, now=context.now)
    for profile in covered(session, row):
        record(
            session, profile.person_id, "second coach joined", context, by=coach.id,
            name=person.first_name, rights=words.RIGHTS[row.rights], until=until.isoformat(),
        )  # fmt: skip
        if profile.person_id != coach.id:
            athlete = get_person(session, profile.person_id)
            with speaking_to(athlete):
                text = words.athlete_told_joined(
                    coach.first_name, person.first_name, row.rights, until
                )
                say(session, chat_id=athlete.chat_id, text=text, now=context.now)
    return True


def end_second(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The first coach ends it before its time."""
    answer(session, incoming, context)
    row = session.get(SecondCoach, int(rest[0])) if rest and rest[0].isdigit() else None
    if row is None or row.coach_id != coach.id or row.ended_at is not None:
        rewrite(session, incoming, words.not_given(), context)
        return
    end(session, row, context)
    name = get_person(session, row.person_id).first_name
    rewrite(session, incoming, words.over_told(name), context)


def over(session: Session, duty: AgendaRow, context: Context) -> None:
    """The last day is over."""
    row = session.get(SecondCoach, int(duty.subject.partition(":")[2]))
    if row is not None and row.ended_at is None:
        end(session, row, context)
        coach, person = get_person(session, row.coach_id), get_person(session, row.person_id)
        with speaking_to(coach):
            text = words.over_told(person.first_name)
            say(session, chat_id=coach.chat_id, text=text, now=context.now, silent=True)


def end_overdue(session: Session, person: Person, context: Context) -> None:
    """Rights that have run out are gone before anything is done with them, however late a duty is."""
    query = select(SecondCoach).where(
        SecondCoach.person_id == person.id,
        col(SecondCoach.ended_at).is_(None),
        SecondCoach.until_at <= context.now,
    )
    for row in session.exec(query).all():
        end(session, row, context)


def end(session: Session, row: SecondCoach, context: Context) -> None:
    """Take the rights away; the second coach and the athletes are told, silently: it is midnight."""
    athletes = covered(session, row)
    _close(session, row, context)
    coach, person = get_person(session, row.coach_id), get_person(session, row.person_id)
    with speaking_to(person):
        text = words.over(coach.first_name)
        say(session, chat_id=person.chat_id, text=text, now=context.now, silent=True)
    for profile in athletes:
        record(
            session, profile.person_id, "second coach over", context, by=None,
            name=person.first_name,
        )  # fmt: skip
        if profile.person_id != coach.id:
            athlete = get_person(session, profile.person_id)
            with speaking_to(athlete):
                text = words.athlete_told_over(person.first_name)
                say(session, chat_id=athlete.chat_id, text=text, now=context.now, silent=True)


def _close(session: Session, row: SecondCoach, context: Context) -> None:
    row.ended_at = context.now
    session.add(row)
    session.flush()
    agenda.cancel(session, subject=f"second:{row.id}")


def _name_of(session: Session, athlete_id: int | None) -> str | None:
    return get_person(session, athlete_id).first_name if athlete_id is not None else None
