"""An athlete ends the coaching themself: nothing stays open over it, and all concerned are told."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from sqlmodel import Session, select

from bot.alerts.alerts import open_alerts
from bot.alerts.delivery import settle_message, subject_of, told_of
from bot.core.chat.outbox import Button
from bot.core.timing import agenda
from bot.core.turn import Act, ChatTurn, Turn
from bot.decision.signoff import signoff
from bot.membership import words_leaving as words
from bot.membership.buttons import LEAVE, IsSure, Sure
from bot.membership.ending import part
from bot.membership.second import words as ending_words
from bot.people.changes import Change
from bot.people.people import get_person, get_profile, name_of, record
from bot.people.rights import second_coaches
from bot.people.telling import answer, ask_sure, rewrite, say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.week import AlertRow, DecisionRow, DecisionStatus
from bot.words import common
from engine.safety import Level


def ask(turn: Act) -> None:
    """/leave: what it means, and a second look."""
    profile = get_profile(turn.session, turn.person.id)
    refused = _refusal(profile)
    if refused:
        say_to(turn, turn.person, refused)
        return
    alerts = open_alerts(turn.session, profile.person_id)
    parts = [words.sure(name_of(turn.session, profile.coach_id))]
    if any(row.level == Level.WARNING for row in alerts):
        parts.append(words.sure_while_warned())
    elif alerts or waiting(turn.session, profile):
        parts.append(words.sure_while_open())
    yes, no = Button(words.yes_button(), LEAVE(Sure.YES)), Button(words.no_button(), LEAVE(Sure.NO))
    ask_sure(turn, turn.person, "\n\n".join(parts), yes, no)


def tapped(turn: Act, pressed: IsSure) -> None:
    """The second tap."""
    answer(turn)
    profile = get_profile(turn.session, turn.person.id)
    refused = _refusal(profile)
    if refused:
        rewrite(turn, refused)
    elif pressed.sure is Sure.YES:
        _leave(turn, turn.person, profile)
    else:
        rewrite(turn, words.goes_on())


def _refusal(profile: AthleteProfile) -> str:
    if profile.status in (AthleteStatus.ENDED, AthleteStatus.DECLINED):
        return common.nobody_coaches_you()
    return ending_words.end_own() if profile.coach_id == profile.person_id else ""


def _leave(turn: ChatTurn, person: Person, profile: AthleteProfile) -> None:
    coach, beside = (
        get_person(turn.session, profile.coach_id),
        second_coaches(turn.session, profile),
    )
    record(turn, profile.person_id, Change.ATHLETE_LEFT, by=person.id, coach=coach.first_name)
    closed = close_all(turn, person, profile, by=id_of(person), why=words.closed)
    for second in beside:
        say_to(turn, second, partial(words.second_told, person.first_name, coach.first_name))
    part(turn, profile, coach)
    rewrite(turn, words.left(coach.first_name))
    parts = (words.coach_told, words.coach_told_while_open) if closed else (words.coach_told,)
    say_to(turn, coach, lambda: "\n\n".join(told(person.first_name) for told in parts))


def close_all(
    turn: Turn, person: Person, profile: AthleteProfile, *, by: int, why: Callable[[str], str]
) -> int:
    """Nothing between an athlete and whoever coached them waits any more; how much did.

    Nobody is called about their alerts from now on; whoever was reads `why`, with the athlete's name.
    """
    alerts, proposals = open_alerts(turn.session, id_of(person)), waiting(turn.session, profile)
    for alert in alerts:
        _close_alert(turn, person, alert, by, why)
    for proposal in proposals:
        _close_proposal(turn, person, proposal, by, why)
    return len(alerts) + len(proposals)


def _close_alert(
    turn: Turn, person: Person, row: AlertRow, by: int, why: Callable[[str], str]
) -> None:
    readers = told_of(turn.session, row)
    row.acknowledged_at = turn.now
    turn.session.add(row)
    agenda.cancel(turn.session, subject=subject_of(row))
    record(
        turn, row.athlete_id, Change.ALERT_CLOSED, by=by, alert=row.id,
        flag=row.flag, level=row.level, day=row.date.isoformat(),
    )  # fmt: skip
    for reader in readers:
        settle_message(turn, row, reader, settled=partial(why, person.first_name))


def _close_proposal(
    turn: Turn, person: Person, row: DecisionRow, by: int, why: Callable[[str], str]
) -> None:
    row.status = DecisionStatus.CLOSED
    turn.session.add(row)
    record(
        turn, id_of(person), Change.PROPOSAL_CLOSED, by=by,
        decision=row.id, day=row.sets_date.isoformat(), carb_g=row.carb_g,
    )  # fmt: skip
    signoff.close_proposal(turn, row, lambda _: why(person.first_name))


def waiting(session: Session, profile: AthleteProfile) -> Sequence[DecisionRow]:
    """Changes that wait for the coach's approval."""
    query = select(DecisionRow).where(
        DecisionRow.athlete_id == profile.person_id, DecisionRow.status == DecisionStatus.WAITING
    )
    return session.exec(query).all()
