"""Flags brought to the coach: told at once, repeated until acknowledged, then a second contact."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from sqlmodel import Session, col, select

from bot import agenda
from bot.context import Context
from bot.messages import alerts as words
from bot.outbox import Button, Buttons, edit, say
from bot.service import notes
from bot.service.people import get_person, profile_of, record, speaking_to
from bot.service.rights import others_coaching, second_coaches
from bot.store.desk import Rights
from bot.store.people import AthleteProfile, AthleteStatus, Person
from bot.store.traffic import AgendaRow, OutboxRow, Urgency
from bot.store.week import AlertRow
from engine.record import plain
from engine.safety import Flag, Level

REPEAT = "alert-repeat"


@dataclass(frozen=True, slots=True)
class Pace:
    """How often an open alert is repeated, after how many repeats the second contact joins."""

    every: timedelta
    contact_after: int
    then_every: timedelta


# Our own choice, all of these: no study says how fast a coach has to be fetched.
PACES = {
    Level.WARNING: Pace(timedelta(minutes=5), 3, timedelta(minutes=15)),
    Level.CAUTION: Pace(timedelta(minutes=30), 4, timedelta(minutes=30)),
}
STOP_REPEATING_AFTER = timedelta(hours=24)
# The same drink told twice: where both come at once, only the second is brought to the coach.
SAID_BY = {
    "water-under-target": "water-under-adequate",
    "water-over-target": "water-over-guard-rail",
}
MISSED = "missed-check-in"
# What a plan or a whole week shows would be news only once.
ONCE_A_WEEK = frozenset({"low-energy-availability", "weekly-loss-fast"})


def raise_flags(
    session: Session,
    profile: AthleteProfile,
    flags: Sequence[Flag],
    *,
    day: date,
    context: Context,
    told_anew: bool = True,
) -> None:
    """Bring flags to the coach. A cause whose alert is open pings again only at a worse level.

    `told_anew` is False where nothing new was said (a plan changed and the morning was decided
    again): then a warning acknowledged that day is not raised once more.
    """
    raised = {flag.id for flag in flags}
    if profile.status == AthleteStatus.ENDED:
        return  # nobody coaches them; what they are told to do themselves is said all the same
    for flag in sorted(flags, key=lambda flag: -flag.level.rank):
        if SAID_BY.get(flag.id) in raised:
            continue
        _raise(session, profile, flag, day, context, told_anew=told_anew)


def open_alerts(session: Session, athlete_id: int) -> list[AlertRow]:
    """Not yet acknowledged: the worst first, then the oldest."""
    query = select(AlertRow).where(
        AlertRow.athlete_id == athlete_id, col(AlertRow.acknowledged_at).is_(None)
    )
    return sorted(session.exec(query), key=lambda row: (-Level(row.level).rank, row.opened_at))


def seen_to(session: Session, profile: AthleteProfile, flags: Sequence[Flag], day: date) -> bool:
    """Whether there are warnings among these flags and somebody has acknowledged each that day."""
    query = select(AlertRow.flag).where(
        AlertRow.athlete_id == profile.person_id,
        AlertRow.date == day,
        AlertRow.level == Level.WARNING,
        col(AlertRow.acknowledged_by).is_not(None),
    )
    warned = {flag.id for flag in flags if flag.level is Level.WARNING}
    still_open = {row.flag for row in open_alerts(session, profile.person_id)}
    return bool(warned) and warned <= set(session.exec(query)) - still_open


def second_contact(session: Session, coach: Person) -> Person | None:
    return get_person(session, coach.second_contact_id) if coach.second_contact_id else None


def told_of(session: Session, row: AlertRow) -> list[Person]:
    """Who hears of this alert as it stands: the coach, second coaches, then the second contact."""
    coach = get_person(session, row.coach_id)
    contact = second_contact(session, coach) if row.second_contact_at else None
    people = {person.id: person for person in (coach, *_fellows(session, row))}
    if contact is not None:
        people.setdefault(contact.id, contact)
    return list(people.values())


def note(
    session: Session,
    profile: AthleteProfile,
    words_for: Callable[[], str],
    context: Context,
    *,
    once: bool = False,
) -> None:
    """Something that needs no word: silent, gathered, and held in quiet hours.

    To those who coach somebody else, each in their language; on their own, athletes read it with
    their target. With `once`, the same words are not noted twice within a day.
    """
    for person in others_coaching(session, profile):
        with speaking_to(person):
            text = words_for()
            if not (once and notes.noted(session, person, profile.person_id, text, context)):
                notes.tell(session, person, profile.person_id, text, context)


def repeat(session: Session, duty: AgendaRow, context: Context) -> None:
    """An alert that nobody has acknowledged yet sounds again."""
    row = session.get(AlertRow, int(duty.subject.partition(":")[2]))
    if row is None or row.acknowledged_at is not None:
        return
    coach = get_person(session, row.coach_id)
    if context.now - row.opened_at >= STOP_REPEATING_AFTER:
        for person in told_of(session, row):
            with speaking_to(person):
                text = words.stopped(alert_text(session, row, person))
                _send(session, row, person, text, context)
        _record(session, row, "alert no longer repeated", context)
        return
    row.repeats += 1
    _record(session, row, "alert repeated", context, times=row.repeats)
    for person in told_of(session, row):
        with speaking_to(person):
            text = words.again(row.repeats, alert_text(session, row, person))
            _send(session, row, person, text, context)
    if row.repeats >= PACES[Level(row.level)].contact_after:
        _bring_in_contact(session, row, coach, words.no_answer, context)
    session.add(row)
    _put_repeat(session, row, context)


def tell_again(session: Session, row: AlertRow, person: Person, context: Context) -> None:
    """An open alert once more, to somebody whom it did not reach."""
    _send(session, row, person, alert_text(session, row, person), context)


def coach_gone(session: Session, coach: Person, context: Context) -> None:
    """The coach cannot be reached: what is open goes to the second contact at once."""
    query = select(AlertRow).where(
        AlertRow.coach_id == coach.id, col(AlertRow.acknowledged_at).is_(None)
    )
    for row in session.exec(query.order_by(col(AlertRow.id))).all():
        _bring_in_contact(session, row, coach, words.unreachable, context)


def latest_message(session: Session, row: AlertRow, person: Person) -> OutboxRow | None:
    """The newest message that told this person of the alert."""
    query = (
        select(OutboxRow)
        .where(OutboxRow.topic == topic_of(row, person))
        .order_by(col(OutboxRow.id).desc())
    )
    return session.exec(query).first()


def settle_message(
    session: Session,
    row: AlertRow,
    person: Person,
    text: str,
    context: Context,
    buttons: Buttons = (),
) -> None:
    """Rewrite the newest message about this alert, with these buttons in place of its own."""
    message = latest_message(session, row, person)
    if message is not None and message.status not in ("dropped", "failed"):
        edit(
            session, chat_id=person.chat_id, outbox_id=message.id, text=text, buttons=buttons,
            now=context.now,
        )  # fmt: skip


def subject_of(row: AlertRow) -> str:
    return f"alert:{row.id}"


def alert_text(session: Session, row: AlertRow, reader: Person, *, settled: str = "") -> str:
    """The alert as this reader sees it."""
    profile = profile_of(session, row.athlete_id)
    assert profile is not None
    return words.alert(
        name=get_person(session, row.athlete_id).first_name,
        flag=row.flag,
        level=Level(row.level),
        facts=row.facts,
        opened_at=row.opened_at,
        zone=profile.zone,
        weight_unit=profile.weight_unit,
        volume_unit=profile.volume_unit,
        own=reader.id == row.athlete_id,
        settled=settled,
    )


def _raise(
    session: Session,
    profile: AthleteProfile,
    flag: Flag,
    day: date,
    context: Context,
    *,
    told_anew: bool,
) -> None:
    facts = plain(dict(flag.facts))
    same_cause = select(AlertRow).where(
        AlertRow.athlete_id == profile.person_id, AlertRow.flag == flag.id
    )
    for earlier in session.exec(same_cause.order_by(col(AlertRow.id).desc())).all():
        worse = flag.level.rank > Level(earlier.level).rank
        if earlier.acknowledged_at is None:
            if not worse:
                return
            _supersede(session, earlier, flag.level, context)
        elif flag.id in ONCE_A_WEEK and abs((day - earlier.date).days) < 7:
            return
        elif earlier.date == day and not worse:
            if flag.level is Level.ADVISORY:
                return
            if earlier.facts == facts and not (told_anew and flag.level is Level.WARNING):
                return
    row = AlertRow(
        athlete_id=profile.person_id,
        coach_id=profile.coach_id,
        flag=flag.id,
        level=flag.level,
        facts=facts,
        date=day,
        opened_at=context.now,
        acknowledged_at=context.now if flag.level is Level.ADVISORY else None,
    )
    session.add(row)
    session.flush()
    _record(session, row, "alert opened", context, facts=facts)
    _ping(session, row, context)


def _ping(session: Session, row: AlertRow, context: Context) -> None:
    coach = get_person(session, row.coach_id)
    if row.level == Level.ADVISORY:
        _note_advisory(session, row, coach, context)
        return
    for person in told_of(session, row):
        with speaking_to(person):
            _send(session, row, person, alert_text(session, row, person), context)
    _put_repeat(session, row, context)
    own = row.coach_id == row.athlete_id
    if not coach.reachable:
        _bring_in_contact(session, row, coach, words.unreachable, context)
    elif own and row.level == Level.WARNING:
        _bring_in_contact(session, row, coach, words.on_their_own, context)


def _note_advisory(session: Session, row: AlertRow, coach: Person, context: Context) -> None:
    profile = profile_of(session, row.athlete_id)
    assert profile is not None
    for person in (coach, *second_coaches(session, profile, rights=Rights.FULL)):
        if person.id == row.athlete_id and row.flag == MISSED:
            continue  # told as the athlete already
        with speaking_to(person):
            notes.tell(session, person, row.athlete_id, alert_text(session, row, person), context)


def _bring_in_contact(
    session: Session,
    row: AlertRow,
    coach: Person,
    why_of: Callable[[str], str],
    context: Context,
) -> None:
    """Send the alert to the second contact too, once, and tell the athlete how things stand.

    `why_of` says, with the coach's name, why it is not the coach alone who is told.
    """
    if row.second_contact_at is not None:
        return
    contact = second_contact(session, coach)
    if contact is not None and not contact.reachable:
        contact = None
    with speaking_to(coach):
        why = why_of(coach.first_name)  # as the coach will read it in the history
    if contact is not None:
        row.second_contact_at = context.now
        session.add(row)
        with speaking_to(contact):
            text = words.to_contact(why_of(coach.first_name), alert_text(session, row, contact))
            _send(session, row, contact, text, context)
        _record(session, row, "second contact told", context, contact=contact.first_name, why=why)
    else:
        _record(session, row, "no second contact to tell", context, why=why)
    if row.coach_id != row.athlete_id:
        athlete = get_person(session, row.athlete_id)
        with speaking_to(athlete):
            others = _others(session, row, contact)
            say(
                session, chat_id=athlete.chat_id, now=context.now,
                text=words.athlete_told_no_answer(
                    why_of(coach.first_name), others, urgent=row.level == Level.WARNING
                ),
                dedupe=f"alert-no-answer:{row.id}",
            )  # fmt: skip


def _others(session: Session, row: AlertRow, contact: Person | None) -> list[str]:
    """The names of those beside the coach who have been told."""
    others = [*_fellows(session, row), *([contact] if contact is not None else [])]
    return list(dict.fromkeys(person.first_name for person in others))


def _supersede(session: Session, row: AlertRow, level: Level, context: Context) -> None:
    row.acknowledged_at = context.now
    session.add(row)
    session.flush()  # the index allows one open row a cause and level
    agenda.cancel(session, subject=subject_of(row))
    _record(session, row, "alert became worse", context, now=level.value)
    for person in told_of(session, row):
        with speaking_to(person):
            text = alert_text(session, row, person, settled=words.superseded(level))
            settle_message(session, row, person, text, context)


def _send(session: Session, row: AlertRow, person: Person, text: str, context: Context) -> None:
    """The alert as a new message, which takes the button over from the message before it."""
    before = latest_message(session, row, person)
    sent = say(
        session, chat_id=person.chat_id, text=text, now=context.now,
        buttons=[[Button(words.acknowledge_button(), f"alert:ack:{row.id}")]],
        topic=topic_of(row, person),
        dedupe=f"{topic_of(row, person)}:{context.now.isoformat()}",
        urgency=Urgency.URGENT,
    )  # fmt: skip
    if before is not None and before.id != sent.id and before.status not in ("dropped", "failed"):
        edit(
            session, chat_id=person.chat_id, outbox_id=before.id, now=context.now,
            text=before.payload["text"],
        )  # fmt: skip
    if person.id == row.coach_id:
        row.outbox_id = sent.id
        session.add(row)


def _put_repeat(session: Session, row: AlertRow, context: Context) -> None:
    pace = PACES[Level(row.level)]
    wait = pace.then_every if row.repeats >= pace.contact_after else pace.every
    agenda.put(
        session,
        subject=subject_of(row),
        local_date=row.date,
        kind=f"{REPEAT}:{row.repeats + 1}",
        due_at=min(context.now + wait, row.opened_at + STOP_REPEATING_AFTER),
    )


def topic_of(row: AlertRow, person: Person) -> str:
    """What all messages that tell this person of the alert are on."""
    return f"alert:{row.id}:{person.id}"


def _fellows(session: Session, row: AlertRow) -> list[Person]:
    profile = profile_of(session, row.athlete_id)
    if profile is None or profile.coach_id != row.coach_id:
        return []
    return second_coaches(session, profile)


def _record(session: Session, row: AlertRow, what: str, context: Context, **detail: object) -> None:
    """A step of the alert's life, for the history."""
    record(
        session, row.athlete_id, what, context, by=None, alert=row.id, flag=row.flag,
        level=row.level, day=row.date.isoformat(), **detail,
    )  # fmt: skip
