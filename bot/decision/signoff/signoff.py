"""Changes that wait for the coach's approval: put before the coach, with a deadline."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime, time, timedelta
from functools import partial

from sqlmodel import Session, col, select

from bot.core.chat.cards import SIGN, Say
from bot.core.chat.outbox import Button, Buttons, Delivery, Shown
from bot.core.timing import agenda, instants
from bot.core.timing.agenda import Subject
from bot.core.turn import Context, Turn
from bot.decision import words_target as athlete_words
from bot.decision.flow_figure import OTHER_FIGURE
from bot.decision.signoff import words
from bot.decision.words_forecast import foreseen, under_a_proposal
from bot.decision.words_target import reason
from bot.dialogue import asking
from bot.people.coach_settings import clock_for
from bot.people.people import (
    approvers,
    get_profile,
    is_own_coach,
    name_of,
    person_in_chat,
    profile_of,
)
from bot.people.telling import edit_to, say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import CheckInRow, DecisionRow, DecisionStatus
from bot.week.cases import decision_of, default_carb_g, is_small_step, plan_g, stands_g
from bot.words import figures
from engine.decision.decide import Decision

LAPSE = "sign-off-lapse"

# Our own choice, all three: long enough to be seen, early enough to eat by.
WAIT = timedelta(hours=2)
LATEST = time(12, 0)  # on the day that is set, where the athlete is: an hour after the cut-off
AT_LEAST = timedelta(minutes=30)


def ask_coach(
    turn: Turn,
    profile: AthleteProfile,
    decision_row: DecisionRow,
    *,
    answer_by: datetime | None = None,
) -> None:
    """Put a proposal before the coach, with a deadline at which it lapses to its small step.

    `answer_by` is the deadline that it had before; it holds where there is time enough left.
    """
    due_at = answer_by or _deadline(profile, decision_row, turn.context)
    if due_at < turn.now + AT_LEAST:
        due_at = _deadline(profile, decision_row, turn.context)
    decision_row.sign_off_due_at = due_at
    for coach in approvers(turn.session, profile):
        row = say_to(
            turn,
            coach,
            partial(proposal_text, turn.session, coach, profile, decision_row),
            buttons=partial(_buttons, decision_row, self_coached=coach.id == profile.person_id),
            how=Delivery(dedupe=_said_to(decision_row, coach), decision_id=decision_row.id),
        )
        if coach.id == profile.coach_id:
            decision_row.outbox_id = id_of(row)
    agenda.put(
        turn.session,
        agenda.Named(subject_of(decision_row), decision_row.sets_date, LAPSE),
        due_at=due_at,
    )


def ask_anew(turn: Turn, coach: Person) -> None:
    """Proposals that wait for this coach and whose message did not reach them, once more."""
    failed = select(OutboxRow.decision_id).where(
        OutboxRow.chat_id == coach.chat_id,
        OutboxRow.status == "failed",
        col(OutboxRow.decision_id).is_not(None),
    )
    numbers = set(turn.session.exec(failed))
    waiting = select(DecisionRow).where(
        col(DecisionRow.id).in_(numbers), DecisionRow.status == DecisionStatus.WAITING
    )
    for row in turn.session.exec(waiting.order_by(col(DecisionRow.id))).all():
        profile = profile_of(turn.session, row.athlete_id)
        if profile is None or coach.id not in {one.id for one in approvers(turn.session, profile)}:
            continue
        put_again(turn, coach, profile, row)


def put_again(
    turn: Turn, coach: Person, profile: AthleteProfile, row: DecisionRow, *, lead: str = ""
) -> None:
    """The proposal once more, with its buttons, below a line that says why."""
    text = proposal_text(turn.session, coach, profile, row)
    sent = say_to(
        turn,
        coach,
        f"{lead}\n\n{text}" if lead else text,
        buttons=_buttons(row, self_coached=coach.id == profile.person_id),
        how=Delivery(dedupe=f"{_said_to(row, coach)}:{turn.now.isoformat()}", decision_id=row.id),
    )
    if coach.id == profile.coach_id:
        row.outbox_id = id_of(sent)


def waiting_line(session: Session, profile: AthleteProfile, decision_row: DecisionRow) -> str:
    """What the athlete reads under a target while a larger change waits."""
    assert decision_row.carb_g is not None
    assert decision_row.sign_off_due_at is not None
    return athlete_words.waiting_for_coach(
        "" if is_own_coach(profile) else name_of(session, profile.coach_id),
        decision_row.carb_g,
        default_carb_g(decision_row),
        figures.clock_in(decision_row.sign_off_due_at, profile.zone),
        small=is_small_step(decision_row),
    )


def replaced(turn: Turn, decision_row: DecisionRow) -> None:
    """A new decision took this one's place: no deadline, no buttons, no question left open."""
    profile = get_profile(turn.session, decision_row.athlete_id)
    name = name_of(turn.session, profile.person_id)
    self_coached = profile.coach_id == profile.person_id
    close_proposal(turn, decision_row, lambda _: words.replaced(name, self_coached=self_coached))


def close_proposal(turn: Turn, row: DecisionRow, what: Callable[[Person], str]) -> None:
    """Take deadline, buttons and open question away; the proposal's message says what became of it.

    `what` says so, and is asked for each reader in their language.
    """
    agenda.cancel(turn.session, subject=subject_of(row))
    asked = turn.session.exec(
        select(OpenQuestion).where(
            OpenQuestion.flow == OTHER_FIGURE.id,
            OpenQuestion.subject_id == row.id,
            col(OpenQuestion.closed_at).is_(None),
        )
    )
    for question in asked.all():
        asking.close(turn, question)
    told = turn.session.exec(
        select(OutboxRow).where(OutboxRow.decision_id == row.id).order_by(col(OutboxRow.id))
    )
    for message in told.all():
        reader = person_in_chat(turn.session, message.chat_id)
        if reader is None:
            continue
        edit_to(
            turn,
            reader,
            Shown(reader.chat_id, outbox_id=message.id),
            partial(_settled, message.payload["text"], what, reader),
        )


def _settled(said: str, what: Callable[[Person], str], reader: Person) -> str:
    return words.settled(said, what(reader))


def proposal_text(
    session: Session, reader: Person, profile: AthleteProfile, row: DecisionRow
) -> str:
    assert row.carb_g is not None
    assert row.planned_carb_g is not None
    assert row.sign_off_due_at is not None
    self_coached, decision = profile.coach_id == profile.person_id, decision_of(row)
    proposed = words.Proposal(
        name=name_of(session, profile.person_id),
        day=row.sets_date,
        days_out=decision.days_out,
        planned_g=row.planned_carb_g,
        proposed_g=row.carb_g,
        alone_g=decision.trace.limits["apply_without_asking_g"],
        why=reason(
            decision,
            profile.weight_unit,
            profile.volume_unit,
            self_coached=self_coached,
            stands_g=None if self_coached else stands_g(row),
        ),
        morning=morning_line(profile, session.get(CheckInRow, row.checkin_id)),
        until=clock_for(session, reader, profile, row.sign_off_due_at),
        default_carb_g=default_carb_g(row),
        self_coached=self_coached,
        foreseen=_foreseen(decision),
        small=is_small_step(row),
    )
    return words.proposal(proposed)


def _foreseen(decision: Decision) -> str:
    """The chances beside the plan's, and where the size comes from if it is the forecast's."""
    chances, trace = foreseen(decision), decision.trace
    sized = trace.forecast_g is not None and trace.asked_g != trace.rule_g
    return f"{chances}\n{under_a_proposal()}" if chances and sized else chances


def morning_line(profile: AthleteProfile, row: CheckInRow | None) -> str:
    """The morning's three numbers (four in the load), in the athlete's units."""
    if row is None:
        return words.morning_line(None, None, None, None)
    return words.morning_line(
        figures.weight(row.weight_kg, profile.weight_unit) if row.weight_kg is not None else None,
        row.fullness,
        row.sharpness,
        figures.volume(row.water_l, profile.volume_unit) if row.water_l is not None else None,
        row.training_done,
    )


def _said_to(row: DecisionRow, coach: Person) -> str:
    """What makes a repeat of the proposal's message to this coach harmless."""
    return f"sign-off:{row.id}:{coach.id}"


def subject_of(row: DecisionRow) -> str:
    return Subject.DECISION(row.id)


def _deadline(profile: AthleteProfile, row: DecisionRow, context: Context) -> datetime:
    latest = instants.local_instant(row.sets_date, LATEST, profile.zone or "UTC")
    return max(min(context.now + WAIT, latest), context.now + AT_LEAST)


def _buttons(row: DecisionRow, *, self_coached: bool) -> Buttons:
    assert row.carb_g is not None
    return [
        [
            Button(
                words.approve_button(row.carb_g, self_coached=self_coached),
                SIGN(Say.APPROVE, id_of(row)),
            )
        ],
        [Button(words.other_button(), SIGN(Say.OTHER, id_of(row)))],
        [Button(words.keep_button(plan_g(row)), SIGN(Say.KEEP, id_of(row)))],
    ]
