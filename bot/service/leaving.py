"""An athlete ends the coaching themself: nothing stays open over it, and all concerned are told."""

from __future__ import annotations

from collections.abc import Sequence

from sqlmodel import Session, select

from bot import agenda
from bot.context import Context
from bot.incoming import Incoming
from bot.messages import coach_second as ending_words
from bot.messages import leaving as words
from bot.outbox import Button, say
from bot.service import signoff
from bot.service.alerts import alert_text, open_alerts, settle_message, subject_of, told_of
from bot.service.ending import part
from bot.service.people import get_person, profile_of, record, speaking_to
from bot.service.rights import second_coaches
from bot.service.tapping import answer, ask_sure, rewrite
from bot.store.people import AthleteProfile, AthleteStatus, Person
from bot.store.week import AlertRow, DecisionRow, DecisionStatus
from engine.safety import Level


def ask(session: Session, person: Person, _rest: str, context: Context) -> None:
    """/leave: what it means, and a second look."""
    profile = profile_of(session, person.id)
    assert profile is not None
    refused = _refusal(profile)
    if refused:
        say(session, chat_id=person.chat_id, text=refused, now=context.now)
        return
    alerts, waiting = open_alerts(session, profile.person_id), _waiting(session, profile)
    parts = [words.sure(get_person(session, profile.coach_id).first_name)]
    if any(row.level == Level.WARNING for row in alerts):
        parts.append(words.sure_while_warned())
    elif alerts or waiting:
        parts.append(words.sure_while_open())
    yes, no = Button(words.yes_button(), "leave:yes"), Button(words.no_button(), "leave:no")
    ask_sure(session, person, "\n\n".join(parts), yes, no, context)


def tapped(
    session: Session, person: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Buttons "leave:yes" and "leave:no"."""
    answer(session, incoming, context)
    profile = profile_of(session, person.id)
    assert profile is not None
    refused = _refusal(profile)
    if refused:
        rewrite(session, incoming, refused, context)
    elif arguments == ["yes"]:
        _leave(session, person, profile, incoming, context)
    else:
        rewrite(session, incoming, words.goes_on(), context)


def _refusal(profile: AthleteProfile) -> str:
    if profile.status in (AthleteStatus.ENDED, AthleteStatus.DECLINED):
        return words.nobody_coaches_you()
    return ending_words.end_own() if profile.coach_id == profile.person_id else ""


def _leave(
    session: Session, person: Person, profile: AthleteProfile, incoming: Incoming, context: Context
) -> None:
    coach, beside = get_person(session, profile.coach_id), second_coaches(session, profile)
    record(
        session, profile.person_id, "athlete left", context, by=person.id, coach=coach.first_name
    )
    closed = _close_alerts(session, person, context)
    closed += _close_proposals(session, person, profile, context)
    for second in beside:
        with speaking_to(second):
            text = words.second_told(person.first_name, coach.first_name)
            say(session, chat_id=second.chat_id, text=text, now=context.now)
    part(session, profile, coach, context)
    rewrite(session, incoming, words.left(coach.first_name), context)
    with speaking_to(coach):
        parts = [words.coach_told(person.first_name)]
        if closed:
            parts.append(words.coach_told_while_open(person.first_name))
        say(session, chat_id=coach.chat_id, text="\n\n".join(parts), now=context.now)


def _close_alerts(session: Session, person: Person, context: Context) -> int:
    """Nobody is called about them any more; whoever was reads why. How many there were."""
    rows = open_alerts(session, person.id or 0)
    for row in rows:
        _close_alert(session, person, row, context)
    return len(rows)


def _close_alert(session: Session, person: Person, row: AlertRow, context: Context) -> None:
    readers = told_of(session, row)
    row.acknowledged_at = context.now
    session.add(row)
    agenda.cancel(session, subject=subject_of(row))
    record(
        session, row.athlete_id, "alert closed", context, by=person.id, alert=row.id,
        flag=row.flag, level=row.level, day=row.date.isoformat(),
    )  # fmt: skip
    for reader in readers:
        with speaking_to(reader):
            text = alert_text(session, row, reader, settled=words.closed(person.first_name))
            settle_message(session, row, reader, text, context)


def _close_proposals(
    session: Session, person: Person, profile: AthleteProfile, context: Context
) -> int:
    rows = _waiting(session, profile)
    for row in rows:
        row.status = DecisionStatus.CLOSED
        session.add(row)
        record(
            session, profile.person_id, "proposal closed", context, by=person.id,
            decision=row.id, day=row.sets_date.isoformat(), carb_g=row.carb_g,
        )  # fmt: skip
        signoff.settle(session, row, lambda _: words.closed(person.first_name), context)
    return len(rows)


def _waiting(session: Session, profile: AthleteProfile) -> Sequence[DecisionRow]:
    query = select(DecisionRow).where(
        DecisionRow.athlete_id == profile.person_id, DecisionRow.status == DecisionStatus.WAITING
    )
    return session.exec(query).all()
