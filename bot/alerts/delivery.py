"""An alert on its way: to whom it goes, in which words, and again until somebody acknowledges it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import timedelta
from functools import partial
from typing import Any
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.alerts import notes, words, words_after
from bot.alerts.buttons import ALERT, Do
from bot.core.chat.outbox import Button, Delivery, Shown, Topic, on
from bot.core.timing import agenda
from bot.core.timing.agenda import Several, Subject
from bot.core.turn import Turn
from bot.people.changes import Change
from bot.people.coach_settings import moment_for
from bot.people.details import AlertOn
from bot.people.people import get_person, get_profile, name_of, profile_of, record, second_coaches
from bot.people.telling import Keys, Said, as_said, edit_to, say_to, speaking_to
from bot.store.base import id_of
from bot.store.tables.coach import Rights
from bot.store.tables.people import Person
from bot.store.tables.traffic import AgendaRow, OutboxRow, TopicKind, Urgency
from bot.store.tables.week import AlertRow
from engine.safety import FlagId, Level
from engine.symptoms import Concern

REPEAT = Several("alert-repeat")


@dataclass(frozen=True, slots=True)
class Repeats:
    """How often an open alert is repeated, after how many repeats the second contact joins."""

    every: timedelta
    contact_after: int
    then_every: timedelta


# Our own choice, all of these: no study says how fast a coach has to be fetched.
REPEATS = {
    Level.WARNING: Repeats(timedelta(minutes=5), 3, timedelta(minutes=15)),
    Level.CAUTION: Repeats(timedelta(minutes=30), 4, timedelta(hours=2)),
}
# A half-empty bottle is asked about by day, and no second contact is fetched for it.
CALM_REPEATS = Repeats(timedelta(hours=3), 1000, timedelta(hours=3))
# A doubt is brought on as a caution is until whoever can be fetched has been; then it waits for the
# day, since more of the same in the night tells nobody anything.
DOUBT_REPEATS = Repeats(timedelta(minutes=30), 4, timedelta(hours=3))
DAY_FROM, DAY_TO = 7, 21  # hours of the athlete's clock
CALM = frozenset({FlagId.WATER_UNDER_ADEQUATE, FlagId.WATER_UNDER_TARGET})
STOP_REPEATING_AFTER = timedelta(hours=24)
MISSED = "missed-check-in"
# In the facts of alerts of which one message tells: what else it tells, and in which it is told.
TOGETHER, WITHIN = "_with", "_in"


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


def repeat(turn: Turn, duty: AgendaRow) -> None:
    """An alert that nobody has acknowledged yet sounds again."""
    row = turn.session.get(AlertRow, Subject.ALERT.of(duty))
    if row is None or row.acknowledged_at is not None:
        return
    coach = get_person(turn.session, row.coach_id)
    if turn.now - row.opened_at >= STOP_REPEATING_AFTER:
        for person in told_of(turn.session, row):
            send(turn, row, person, words_after.stopped)
        record(turn, row.athlete_id, Change.ALERT_NO_LONGER_REPEATED(**step_of(row)), by=None)
        return
    if _waits_for_the_day(row) and _at_night(turn, row, coach):
        _put_repeat(turn, row)
        return
    row.repeats += 1
    repeated = Change.ALERT_REPEATED(**step_of(row), times=row.repeats)
    record(turn, row.athlete_id, repeated, by=None)
    for person in told_of(turn.session, row):
        send(turn, row, person, partial(words_after.again, row.repeats))
    if row.repeats >= _repeats_of(row).contact_after:
        _bring_in_contact(turn, row, coach, words_after.no_answer)
    _put_repeat(turn, row)


def coach_gone(turn: Turn, coach: Person) -> None:
    """The coach cannot be reached: what is open goes to the second contact at once."""
    query = select(AlertRow).where(
        AlertRow.coach_id == coach.id, col(AlertRow.acknowledged_at).is_(None)
    )
    for row in turn.session.exec(query.order_by(col(AlertRow.id))).all():
        _bring_in_contact(turn, row, coach, words_after.unreachable)


def latest_message(session: Session, row: AlertRow, person: Person) -> OutboxRow | None:
    """The newest message that told this person of the alert."""
    query = select(OutboxRow).where(*on(topic_of(row, person))).order_by(col(OutboxRow.id).desc())
    return session.exec(query).first()


def settle_message(
    turn: Turn, row: AlertRow, person: Person, *, settled: Said = "", buttons: Keys = ()
) -> None:
    """Rewrite the newest message about this alert as it is now, with what has become of it, and with
    these buttons in place of its own.
    """
    message = latest_message(turn.session, row, person)
    if message is not None and message.status not in ("dropped", "failed"):
        text = partial(alert_text, turn.session, row, person, settled=settled)
        edit_to(turn, person, Shown(person.chat_id, outbox_id=message.id), text, buttons=buttons)


def subject_of(row: AlertRow) -> str:
    return Subject.ALERT(row.id)


def alert_text(session: Session, row: AlertRow, reader: Person, *, settled: Said = "") -> str:
    """The alert as this reader sees it."""
    profile = get_profile(session, row.athlete_id)
    found = words.Found(
        name=name_of(session, row.athlete_id),
        flag=row.flag,
        level=Level(row.level),
        facts=row.facts,
        when=moment_for(session, reader, profile, row.opened_at),
        weight_unit=profile.weight_unit,
        volume_unit=profile.volume_unit,
        self_coached=reader.id == row.athlete_id,
        beside=_told_beside(session, row),
    )
    return words.alert(found, as_said(settled))


def _told_beside(session: Session, row: AlertRow) -> list[tuple[str, Mapping[str, Any]]]:
    """What else its message tells, and with which facts."""
    if TOGETHER not in row.facts:
        return []
    query = (
        select(AlertRow)
        .where(AlertRow.athlete_id == row.athlete_id, AlertRow.date == row.date)
        .order_by(col(AlertRow.id))
    )
    return [
        (other.flag, other.facts)
        for other in session.exec(query)
        if other.facts.get(WITHIN) == row.id
    ]


def ping(turn: Turn, row: AlertRow, *, answer: Callable[[], str] | None = None) -> bool:
    """Tell who is to hear of it. Who coaches themselves reads it as the `answer` to their words, where
    there is one: whether they have read it so.
    """
    coach = get_person(turn.session, row.coach_id)
    if row.level == Level.ADVISORY:
        _note_advisory(turn, row, coach)
        return False
    answered = False
    for person in told_of(turn.session, row):
        if answer is not None and person.id == row.athlete_id:
            send(turn, row, person, partial(_in_the_answer, answer))
            answered = True
        else:
            send(turn, row, person)
    _put_repeat(turn, row)
    self_coached = row.coach_id == row.athlete_id
    if not coach.reachable:
        _bring_in_contact(turn, row, coach, words_after.unreachable)
    elif self_coached and row.level == Level.WARNING:
        _bring_in_contact(turn, row, coach, words_after.on_their_own)
    return answered


def _in_the_answer(answer: Callable[[], str], _alert: str) -> str:
    return f"{answer()}\n\n{words.acknowledge_own()}"


def _note_advisory(turn: Turn, row: AlertRow, coach: Person) -> None:
    profile = get_profile(turn.session, row.athlete_id)
    for person in (coach, *second_coaches(turn.session, profile, rights=Rights.FULL)):
        if person.id == row.athlete_id and row.flag == MISSED:
            continue  # told as the athlete already
        notes.tell(turn, person, row.athlete_id, partial(alert_text, turn.session, row, person))


def _bring_in_contact(
    turn: Turn, row: AlertRow, coach: Person, why_of: Callable[[str], str]
) -> None:
    """Send the alert to the second contact too, once, and tell the athlete how things stand.

    `why_of` says, with the coach's name, why it is not the coach alone who is told.
    """
    if row.second_contact_at is not None:
        return
    contact = second_contact(turn.session, coach)
    if contact is not None and not contact.reachable:
        contact = None
    with speaking_to(coach):
        why = why_of(coach.first_name)  # as the coach will read it in the history
    if contact is not None:
        row.second_contact_at = turn.now
        send(
            turn, row, contact, lambda text: words_after.to_contact(why_of(coach.first_name), text)
        )
        kept = Change.SECOND_CONTACT_TOLD(**step_of(row), contact=contact.first_name, why=why)
    else:
        kept = Change.NO_SECOND_CONTACT_TO_TELL(**step_of(row), why=why)
    record(turn, row.athlete_id, kept, by=None)
    if row.coach_id != row.athlete_id:
        athlete = get_person(turn.session, row.athlete_id)
        others = _others(turn.session, row, contact)
        say_to(
            turn,
            athlete,
            lambda: words_after.athlete_told_no_answer(
                why_of(coach.first_name), others, urgent=row.level == Level.WARNING
            ),
            how=Delivery(dedupe=f"alert-no-answer:{row.id}"),
        )


def _others(session: Session, row: AlertRow, contact: Person | None) -> list[str]:
    """The names of those beside the coach who have been told."""
    others = [*_fellows(session, row), *([contact] if contact is not None else [])]
    return list(dict.fromkeys(person.first_name for person in others))


def send(
    turn: Turn, row: AlertRow, person: Person, worded: Callable[[str], str] | None = None
) -> None:
    """The alert as a new message, which takes the button over from the message before it; `worded`
    makes of its text what is said this time.
    """

    def text() -> str:
        told = alert_text(turn.session, row, person)
        return worded(told) if worded else told

    before = latest_message(turn.session, row, person)
    sent = say_to(
        turn,
        person,
        text,
        buttons=lambda: [[acknowledge_button(row)]],
        how=Delivery(
            topic=topic_of(row, person),
            dedupe=f"alert:{row.id}:{person.id}:{turn.now.isoformat()}",
            urgency=Urgency.URGENT,
        ),
    )
    if before is not None and before is not sent and before.status not in ("dropped", "failed"):
        edit_to(turn, person, Shown(person.chat_id, outbox_id=before.id), before.payload["text"])
    if person.id == row.coach_id:
        row.outbox_id = id_of(sent)


def acknowledge_button(row: AlertRow) -> Button:
    return Button(words_after.acknowledge_button(), ALERT(Do.ACKNOWLEDGE, id_of(row)))


def _repeats_of(row: AlertRow) -> Repeats:
    if _is_calm(row):
        return CALM_REPEATS
    return DOUBT_REPEATS if _is_doubt(row) else REPEATS[Level(row.level)]


def _is_doubt(row: AlertRow) -> bool:
    return row.flag == FlagId.DOUBT and row.level != Level.WARNING


def _waits_for_the_day(row: AlertRow) -> bool:
    """What nobody is woken for: no longer, of a doubt, once all were told as often as may help."""
    return _is_calm(row) or (_is_doubt(row) and row.repeats >= DOUBT_REPEATS.contact_after)


def _is_calm(row: AlertRow) -> bool:
    """A half-empty bottle, or words of which nobody knows what they might mean: asked by day, and
    no second contact is fetched. A doubt about a certain complaint, or one that sounds like an
    emergency or like despair, keeps the pace of a caution.
    """
    vague = row.flag == FlagId.DOUBT and row.facts.get("sounds_like") == Concern.BODY
    return (row.flag in CALM or vague) and row.level != Level.WARNING


def _at_night(turn: Turn, row: AlertRow, coach: Person) -> bool:
    """Whether the coach sleeps: their quiet hours, or late and early where the athlete is."""
    profile = profile_of(turn.session, row.athlete_id)
    zone = ZoneInfo((profile.zone if profile else None) or "UTC")
    hour = turn.now.astimezone(zone).hour
    return notes.quiet_now(turn, coach) or not DAY_FROM <= hour < DAY_TO


def _put_repeat(turn: Turn, row: AlertRow) -> None:
    repeats = _repeats_of(row)
    wait = repeats.then_every if row.repeats >= repeats.contact_after else repeats.every
    agenda.put(
        turn.session,
        agenda.Named(subject_of(row), row.date, REPEAT(row.repeats + 1)),
        due_at=min(turn.now + wait, row.opened_at + STOP_REPEATING_AFTER),
        again=True,
    )


def topic_of(row: AlertRow, person: Person) -> Topic:
    """What all messages that tell this person of the alert are on."""
    return Topic(TopicKind.ALERT, id_of(row), person.id)


def _fellows(session: Session, row: AlertRow) -> list[Person]:
    profile = profile_of(session, row.athlete_id)
    if profile is None or profile.coach_id != row.coach_id:
        return []
    return second_coaches(session, profile)


def step_of(row: AlertRow) -> AlertOn:
    """What a step of the alert's life is kept with."""
    return {
        "alert": id_of(row), "flag": row.flag, "level": row.level, "day": row.date.isoformat(),
    }  # fmt: skip
