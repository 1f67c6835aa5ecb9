"""A coaching ends, by the coach or by the athlete: nothing stays open, all concerned are told.

The athlete keeps what is theirs, the coach sees nothing of it any more.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from sqlmodel import Session, col, select

from bot.alerts import notes
from bot.alerts.alerts import open_alerts
from bot.alerts.delivery import settle_message, step_of, subject_of, told_of
from bot.core.chat.outbox import Button
from bot.core.timing import agenda
from bot.core.turn import Act, ChatTurn, OnAthlete, Turn
from bot.decision.signoff import signoff
from bot.dialogue import asking
from bot.membership import flow_second, second_coach, words
from bot.membership.buttons import END_NO, END_YES, LEAVE, IsSure, Sure
from bot.membership.onboarding import onboarding
from bot.membership.words import goes_on
from bot.people.changes import Change
from bot.people.people import get_person, get_profile, local_date, name_of, record, second_coaches
from bot.people.telling import ask_sure, rewrite, say_to
from bot.readiness import readiness as ready
from bot.safety.flow_symptom import ASKED_ABOUT_SIGNS
from bot.store.base import id_of
from bot.store.tables.coach import SecondCoach
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.week import AlertRow, DecisionRow, DecisionStatus
from bot.week import prompts
from bot.week.snapshots import end_hold
from bot.words import common
from engine.safety import Level


def ask_to_end(turn: OnAthlete) -> None:
    """Ending takes a second tap, on a question that says what it means."""
    refused = _refusal(turn.session, turn.profile)
    if refused:
        say_to(turn, turn.person, refused)
        return
    text = flow_second.end_sure(name_of(turn.session, turn.profile.person_id))
    yes = Button(flow_second.end_yes_button(), END_YES(turn.profile.person_id))
    no = Button(flow_second.end_no_button(), END_NO(turn.profile.person_id))
    ask_sure(turn, turn.person, text, yes, no)


def end(turn: OnAthlete) -> None:
    """The relation is over, and both are told."""
    refused = _refusal(turn.session, turn.profile)
    if refused:
        rewrite(turn, refused)
        return
    athlete = get_person(turn.session, turn.profile.person_id)
    record(turn, turn.profile.person_id, Change.COACH_ENDED(), by=turn.person.id)
    part(turn, turn.profile, turn.person)
    rewrite(turn, flow_second.ended(athlete.first_name))
    say_to(turn, athlete, lambda: flow_second.athlete_told_ended(turn.person.first_name))


def part(turn: Turn, profile: AthleteProfile, coach: Person) -> None:
    """Nobody coaches the athlete from here on, and nothing waits to be asked or told of them."""
    let_go(turn, profile, coach)
    end_hold(turn, profile.person_id, local_date(profile, turn.context))
    # Nobody else coaches them: what they keep is theirs alone until they take up an invitation.
    profile.coach_id, profile.status = profile.person_id, AthleteStatus.ENDED
    agenda.cancel(turn.session, subject=prompts.subject(profile))
    for question in asking.open_questions(
        turn.session, get_person(turn.session, profile.person_id)
    ):
        # Whether a doubtful word meant a warning sign is still to be known, for the athlete's sake.
        if question.subject_id == profile.person_id and question.flow not in ASKED_ABOUT_SIGNS:
            asking.close(turn, question)


def let_go(turn: Turn, profile: AthleteProfile, coach: Person) -> None:
    """Whoever stood beside this coach for this one athlete does no more; held notes go untold."""
    beside = select(SecondCoach).where(
        SecondCoach.athlete_id == profile.person_id, SecondCoach.coach_id == coach.id
    )
    for row in turn.session.exec(beside).all():
        if row.ended_at is None:
            second_coach.end(turn, row)
    notes.forget_held(turn.session, profile.person_id)


def keep(turn: OnAthlete) -> None:
    rewrite(turn, goes_on())


def take_up(turn: Turn, person: Person, profile: AthleteProfile, coach: Person) -> None:
    """Another coach's invitation, after an end: everything that was is there again."""
    profile.coach_id = id_of(coach)
    waits = onboarding.has_to_wait(profile)
    profile.status = AthleteStatus.DOCTOR_FIRST if waits else AthleteStatus.ACTIVE
    record(turn, profile.person_id, Change.COACH_BEGAN(), by=coach.id)
    self_coached = coach.id == person.id
    if self_coached:
        say_to(turn, person, flow_second.taken_up_own)
    else:
        say_to(turn, person, partial(flow_second.athlete_told_taken_up, coach.first_name))
        say_to(turn, coach, partial(flow_second.taken_up, person.first_name))
    prompts.schedule(turn, profile)
    ready.schedule(turn, profile)


def _refusal(session: Session, profile: AthleteProfile) -> str:
    if profile.coach_id == profile.person_id:
        return flow_second.end_own()
    if has_pending_items(session, profile):
        return flow_second.end_waits(name_of(session, profile.person_id))
    return ""


def has_pending_items(session: Session, profile: AthleteProfile) -> bool:
    """An alert that nobody has acknowledged, or a change that nobody has signed off."""
    alert = select(AlertRow.id).where(
        AlertRow.athlete_id == profile.person_id, col(AlertRow.acknowledged_at).is_(None)
    )
    waiting = select(DecisionRow.id).where(
        DecisionRow.athlete_id == profile.person_id, DecisionRow.status == DecisionStatus.WAITING
    )
    return session.exec(alert).first() is not None or session.exec(waiting).first() is not None


def ask(turn: Act) -> None:
    """/leave: what it means, and a second look."""
    profile = get_profile(turn.session, turn.person.id)
    refused = _not_now(profile)
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
    profile = get_profile(turn.session, turn.person.id)
    refused = _not_now(profile)
    if refused:
        rewrite(turn, refused)
    elif pressed.sure is Sure.YES:
        _leave(turn, turn.person, profile)
    else:
        rewrite(turn, words.goes_on())


def _not_now(profile: AthleteProfile) -> str:
    if profile.status in (AthleteStatus.ENDED, AthleteStatus.DECLINED):
        return common.nobody_coaches_you()
    return flow_second.end_own() if profile.coach_id == profile.person_id else ""


def _leave(turn: ChatTurn, person: Person, profile: AthleteProfile) -> None:
    coach, beside = (
        get_person(turn.session, profile.coach_id),
        second_coaches(turn.session, profile),
    )
    record(turn, profile.person_id, Change.ATHLETE_LEFT(coach=coach.first_name), by=person.id)
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
    agenda.cancel(turn.session, subject=subject_of(row))
    record(turn, row.athlete_id, Change.ALERT_CLOSED(**step_of(row)), by=by)
    for reader in readers:
        settle_message(turn, row, reader, settled=partial(why, person.first_name))


def _close_proposal(
    turn: Turn, person: Person, row: DecisionRow, by: int, why: Callable[[str], str]
) -> None:
    row.status = DecisionStatus.CLOSED
    record(turn, id_of(person), by=by, what=Change.PROPOSAL_CLOSED(
        decision=id_of(row), day=row.sets_date.isoformat(), carb_g=row.carb_g,
    ))  # fmt: skip
    signoff.close_proposal(turn, row, lambda _: why(person.first_name))


def waiting(session: Session, profile: AthleteProfile) -> Sequence[DecisionRow]:
    """Changes that wait for the coach's approval."""
    query = select(DecisionRow).where(
        DecisionRow.athlete_id == profile.person_id, DecisionRow.status == DecisionStatus.WAITING
    )
    return session.exec(query).all()
