"""What is done about an alert: acknowledging it, lifting a freeze or setting one, listing them."""

from __future__ import annotations

from sqlmodel import Session, col, select

from bot import agenda
from bot.context import Context
from bot.flows.symptom import ASKED_ABOUT_SIGNS
from bot.incoming import Incoming
from bot.messages import alerts as words
from bot.messages import coach_figures as figures
from bot.messages import leaving as leaving_words
from bot.messages.alert_causes import cause
from bot.messages.common import their_time
from bot.outbox import Button, Buttons, say
from bot.service import deciding
from bot.service.alerts import (
    CORRECTED,
    WITHIN,
    alert_text,
    latest_message,
    open_alerts,
    settle_message,
    subject_of,
    told_of,
)
from bot.service.asking import open_questions
from bot.service.people import (
    athletes_of,
    get_person,
    local_date,
    own_athlete,
    profile_of,
    record,
    speaking_to,
)
from bot.service.rights import covered, given_to
from bot.service.tapping import answer, ask_sure, rewrite
from bot.service.week import current_week, target_in_force
from bot.store.people import AthleteProfile, Person
from bot.store.week import AlertRow
from engine.safety import Level

FROZEN_BY_HAND = "coach"


def alert_tapped(
    session: Session, person: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Buttons "alert:ack:ID"."""
    action, number = (*arguments, "", "")[:2]
    row = session.get(AlertRow, int(number)) if number.isdigit() else None
    if row is None or action != "ack" or not _may(session, person, row):
        answer(session, incoming, context, words.not_your_alert())
        return
    if row.acknowledged_at is not None:
        said = _settled_already(session, row, person)
        answer(session, incoming, context, said)
        rewrite(session, incoming, alert_text(session, row, person, settled=said), context)
        return
    _acknowledge(session, person, row, incoming, context)


def _settled_already(session: Session, row: AlertRow, reader: Person) -> str:
    """What became of an alert that is no longer open."""
    profile = profile_of(session, row.athlete_id)
    by = get_person(session, row.acknowledged_by).first_name if row.acknowledged_by else None
    if by is None and CORRECTED in row.facts:
        return words.corrected_already()
    if by is None and profile is not None and profile.coach_id != row.coach_id:
        return leaving_words.coaching_over()
    return words.acknowledged_already(by, _when(session, row, reader))


def list_alerts(session: Session, person: Person, _rest: str, context: Context) -> None:
    """/alerts: each open alert once more, with its button; for a coach or a second contact."""
    rows = [
        row
        for profile in _whose(session, person)
        for row in open_alerts(session, profile.person_id)
        if person.id in {one.id for one in told_of(session, row)}
    ]
    head = words.how_many_open(len(rows)) if rows else words.none_open()
    say(session, chat_id=person.chat_id, text=head, now=context.now)
    for row in rows:
        say(
            session, chat_id=person.chat_id, now=context.now,
            text=alert_text(session, row, person),
            buttons=[[Button(words.acknowledge_button(), f"alert:ack:{row.id}")]],
        )  # fmt: skip


def _whose(session: Session, person: Person) -> list[AthleteProfile]:
    """Athletes of whom this person may be told: their own, and those of coaches whom they back."""
    coaches = select(Person).where(Person.second_contact_id == person.id)
    found = {
        profile.person_id: profile
        for coach in (person, *session.exec(coaches.order_by(col(Person.id))))
        for profile in athletes_of(session, coach)
    }
    for given in given_to(session, person):
        for profile in covered(session, given):
            found.setdefault(profile.person_id, profile)
    return list(found.values())


def freeze(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The coach stops all adjusting by hand."""
    own = coach.id == profile.person_id
    athlete = get_person(session, profile.person_id)
    if profile.frozen_at is None:
        profile.frozen_at, profile.frozen_because = context.now, FROZEN_BY_HAND
        session.add(profile)
        record(session, profile.person_id, "frozen", context, by=coach.id)
        if not own:
            with speaking_to(athlete):
                text = words.athlete_told_frozen(coach.first_name)
                say(session, chat_id=athlete.chat_id, text=text, now=context.now)
    answer(session, incoming, context)
    said = words.frozen_by_hand(athlete.first_name, own=own)
    rewrite(session, incoming, said, context, [[lift_button(profile.person_id)]])


def ask_to_lift(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """Lifting takes a second tap, on a question that says what it means."""
    answer(session, incoming, context)
    if profile.frozen_at is None:
        rewrite(session, incoming, words.not_frozen(), context)
        return
    if waits := _lift_waits(session, profile):
        say(session, chat_id=coach.chat_id, text=waits, now=context.now)
        return
    name = get_person(session, profile.person_id).first_name
    text = words.lift_sure(name, own=coach.id == profile.person_id)
    yes = Button(words.lift_yes_button(), f"c:lift-yes:{profile.person_id}")
    no = Button(words.lift_no_button(), f"c:lift-no:{profile.person_id}")
    ask_sure(session, coach, text, yes, no, context)


def _lift_waits(session: Session, profile: AthleteProfile) -> str:
    """What is still open, so that the freeze cannot be lifted yet; "" where nothing is."""
    name = get_person(session, profile.person_id).first_name
    still = [row for row in open_alerts(session, profile.person_id) if row.level != Level.ADVISORY]
    if still:
        lines = [
            words.open_line(
                words.level_word(row.flag, Level(row.level)),
                cause(
                    row.flag, row.facts, name=name,
                    weight_unit=profile.weight_unit, volume_unit=profile.volume_unit,
                ),
            )
            for row in still
        ]  # fmt: skip
        return words.lift_waits("\n".join(lines))
    for question in open_questions(session, get_person(session, profile.person_id)):
        if question.flow in ASKED_ABOUT_SIGNS:
            return words.lift_waits_for_answer(name, str(question.answers["_words"]))
    return ""


def lift(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """Adjusting goes on from here."""
    own = coach.id == profile.person_id
    athlete = get_person(session, profile.person_id)
    answer(session, incoming, context)
    if profile.frozen_at is None:
        rewrite(session, incoming, words.not_frozen(), context)
        return
    if waits := _lift_waits(session, profile):
        rewrite(session, incoming, waits, context)
        return
    profile.frozen_at, profile.frozen_because = None, ""
    session.add(profile)
    record(session, profile.person_id, "freeze lifted", context, by=coach.id)
    rewrite(session, incoming, words.lifted(athlete.first_name, own=own), context)
    if not own and not _has_target_today(session, profile, context):
        with speaking_to(athlete):
            text = words.athlete_told_lifted(coach.first_name)
            say(session, chat_id=athlete.chat_id, text=text, now=context.now)
    deciding.redecide(session, profile, context=context, because="lifted")


def keep_frozen(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    answer(session, incoming, context)
    rewrite(session, incoming, words.kept_frozen(), context)


def lift_button(athlete_id: int) -> Button:
    return Button(words.lift_button(), f"c:lift:{athlete_id}")


def _has_target_today(session: Session, profile: AthleteProfile, context: Context) -> bool:
    week = current_week(session, profile)
    today = local_date(profile, context)
    return week is not None and target_in_force(session, week, today) is not None


def _may(session: Session, person: Person, row: AlertRow) -> bool:
    coach = get_person(session, row.coach_id)
    told = {one.id for one in told_of(session, row)}
    return person.id in told or person.id == coach.second_contact_id


def _acknowledge(
    session: Session, person: Person, row: AlertRow, incoming: Incoming, context: Context
) -> None:
    row.acknowledged_at, row.acknowledged_by = context.now, person.id
    session.add(row)
    _with_it(session, row)
    agenda.cancel(session, subject=subject_of(row))
    record(
        session, row.athlete_id, "alert acknowledged", context, by=person.id,
        alert=row.id, flag=row.flag, level=row.level,
    )  # fmt: skip
    answer(session, incoming, context, words.acknowledged_tap())
    buttons = _after(session, person, row)
    latest = latest_message(session, row, person)
    settle_message(session, row, person, settled_text(session, row, person), context, buttons)
    if latest is None or latest.message_id != incoming.message_id:
        rewrite(session, incoming, settled_text(session, row, person), context, buttons)
    _tell_others(session, person, row, context)


def _with_it(session: Session, row: AlertRow) -> None:
    """What was told in the same message is acknowledged with it."""
    within = select(AlertRow).where(
        AlertRow.athlete_id == row.athlete_id, AlertRow.date == row.date
    )
    for other in session.exec(within).all():
        if other.facts.get(WITHIN) == row.id:
            other.acknowledged_by = row.acknowledged_by
            session.add(other)


def _tell_others(session: Session, person: Person, row: AlertRow, context: Context) -> None:
    athlete = get_person(session, row.athlete_id)
    coach = get_person(session, row.coach_id)
    for other in told_of(session, row):
        if other.id == person.id:
            continue
        with speaking_to(other):
            settle_message(session, row, other, settled_text(session, row, other), context)
            say(
                session, chat_id=other.chat_id, now=context.now,
                text=words.acknowledged_elsewhere(person.first_name, athlete.first_name),
                buttons=_after(session, other, row),
            )  # fmt: skip
    if athlete.id not in (person.id, coach.id):
        with speaking_to(athlete):
            say(
                session, chat_id=athlete.chat_id, now=context.now,
                text=words.athlete_told_acknowledged(person.first_name),
                silent=row.level != Level.WARNING,
            )  # fmt: skip


def _after(session: Session, reader: Person, row: AlertRow) -> Buttons:
    """After a warning, the coach can lift the freeze."""
    profile = own_athlete(session, reader, row.athlete_id)
    if profile is None or profile.frozen_at is None or row.level != Level.WARNING:
        return ()
    return [[lift_button(row.athlete_id)]]


def settled_text(session: Session, row: AlertRow, reader: Person) -> str:
    """An acknowledged alert as this reader sees it."""
    return alert_text(session, row, reader, settled=settled_line(session, row, reader))


def settled_line(session: Session, row: AlertRow, reader: Person) -> str:
    """Who acknowledged it, and when."""
    by = get_person(session, row.acknowledged_by or 0)
    return words.acknowledged(by.first_name, _when(session, row, reader))


def _when(session: Session, row: AlertRow, reader: Person) -> str:
    profile = profile_of(session, row.athlete_id)
    assert row.acknowledged_at is not None
    when = figures.moment(row.acknowledged_at, profile.zone if profile else None)
    return when if reader.id == row.athlete_id else their_time(when)
