"""From a recorded check-in to a decision, and from a decision to what people are told."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from typing import NamedTuple

from sqlalchemy import bindparam
from sqlmodel import Session, col, select

from bot.alerts import alerts, words_athlete
from bot.alerts import words_advice as advice
from bot.core.chat.outbox import Delivery
from bot.core.turn import Turn
from bot.decision import words_target as words
from bot.decision.signoff import signoff
from bot.decision.to_athlete import (
    OF_EATING_AND_MOOD,
    WARNED,
    Before,
    answer_of_now,
    care_for,
    reason_of,
    send_target,
    stands,
    target_topic,
    tell,
    told_why,
)
from bot.decision.words_target import no_plan_yet
from bot.people.changes import Change
from bot.people.people import get_person, local_date, record
from bot.people.telling import say_to, speaking_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import AlertRow, CheckInRow, DecisionRow, DecisionStatus
from bot.store.working_out import worked_out
from bot.week.cases import build_case, decision_of, is_small_step, keep_made
from bot.week.load import Figure, Week, checkin_row, current_week, day_set, set_day, target_in_force
from engine.decision.decide import (
    Case,
    Decision,
    Outcome,
    asks_the_model,
    case_as_dict,
    decide,
    decision_as_dict,
)
from engine.safety import Level
from engine.symptoms import EATING_AND_MOOD


class Occasion(NamedTuple):
    """On what a check-in is decided.

    `lead` stands before what the athlete is told; None: they are told nothing. `told_anew` is False
    where not the answers but something around them changed. `answer_by`: the deadline of a proposal
    that had been put before the coach already.
    """

    lead: str | None = ""
    told_anew: bool = True
    answer_by: datetime | None = None


def decide_checkin(
    turn: Turn, profile: AthleteProfile, row: CheckInRow, on: Occasion
) -> DecisionRow | None:
    """Decide on this check-in as it stands now; an earlier decision on it is replaced.

    Saves the decision whole, puts its figure in force, tells the athlete, and brings flags, notes
    and larger changes to the coach. None where there is no week to decide on yet.
    """
    week = current_week(turn.session, profile)
    person = get_person(turn.session, profile.person_id)
    if week is None:
        coach = get_person(turn.session, profile.coach_id)
        say_to(turn, person, lambda: no_plan_yet(coach.first_name))
        return None
    _replace_earlier(turn, row)
    case = build_case(turn.session, week, row)
    decision = decided_on(turn.session, case)
    known = alerts.found_on(turn.session, profile.person_id, decision.date)
    moods = [f.id for f in decision.flags if f.id in EATING_AND_MOOD and f.id not in known]
    if moods and profile.frozen_at is None:
        freeze(turn, profile, OF_EATING_AND_MOOD)
        case = replace(case, frozen=True)
        decision = decided_on(turn.session, case)
    decided = DecisionRow(
        athlete_id=profile.person_id,
        event_id=id_of(week.event),
        checkin_id=id_of(row),
        revision=row.revision,
        sets_date=decision.sets_date,
        outcome=decision.outcome.value,
        status=DecisionStatus.WAITING if decision.needs_sign_off else DecisionStatus.IN_FORCE,
        carb_g=decision.carb_g,
        planned_carb_g=decision.planned_carb_g,
        case=case_as_dict(case),
        decision=decision_as_dict(decision),
        made_at=turn.now,
    )
    keep_made(decided, decision)
    turn.session.add(decided)
    record(turn, profile.person_id, by=None, what=Change.DECIDED(
        decision=id_of(decided), outcome=decided.outcome, rule=decision.rule,
        day=decided.sets_date.isoformat(), carb_g=decided.carb_g,
        planned_carb_g=decided.planned_carb_g, status=decided.status,
    ))  # fmt: skip
    # A warning that was seen to is not sounded again because a number or the plan changed.
    seen_to = not on.told_anew and alerts.seen_to(
        turn.session, profile, decision.flags, decision.date
    )
    if decision.outcome is Outcome.ESCALATED and not seen_to:
        freeze(turn, profile, decision.rule)
    _put_in_force(turn, week, decision, decided)
    _bring_to_coach(turn, profile, decided, on)
    alerts.correct(turn, profile, row, decision.flags)
    if on.lead is not None:
        with speaking_to(person):
            lead = "\n\n".join(part for part in (answer_of_now(turn, profile), on.lead) if part)
            tell(turn, week, decided, lead, Before(known, seen_to))
    return decided


def decided_on(session: Session, case: Case) -> Decision:
    """The decision that a case leads to, its forecast worked out with nothing locked."""
    if asks_the_model(case):
        worked_out(session, _foresee, case.without_the_clock)
    return decide(case)


def _foresee(case: Case) -> None:
    """What the model is asked in deciding on it is at hand then, for whatever differs by the clock."""
    decide(case)


def decide_with(
    turn: Turn, profile: AthleteProfile, row: CheckInRow, on: Occasion, *, always: bool
) -> bool:
    """Decide again with what was told since; whether the athlete was sent the target for it. Without
    `always`, only a figure that is another one now is.
    """
    lead = on.lead
    before = latest_decision(turn.session, profile.person_id)
    stood = None if before is None else (before.sets_date, stands(before))
    row.revision += 1
    decided = decide_checkin(turn, profile, row, on._replace(lead=None, told_anew=False))
    if lead is None or decided is None or decided.outcome == Outcome.ESCALATED:
        return False
    moved = stood != (decided.sets_date, stands(decided))
    week = current_week(turn.session, profile)
    if week is None or not (always or moved):
        return False
    target = target_in_force(turn.session, week, decided.sets_date)
    planned = week.plan.day(week.days_out(decided.sets_date))
    if target is None or planned is None:
        return False
    care = care_for(turn, profile)
    person = get_person(turn.session, profile.person_id)
    with speaking_to(person):
        why = (
            advice.figures_kept_back() if care.unsaid else told_why(turn.session, profile, decided)
        )
        text = (
            f"{lead}\n\n{why}".strip()
            if care.unsaid
            else words.target_message(
                words.target_head(week.plan, decided.sets_date, week.days_out(decided.sets_date)),
                care.lines(target, planned.carb_g, profile.volume_unit),
                why,
                lead=lead or words_athlete.decided_anew(),
            )
        )
        say_to(
            turn,
            person,
            text,
            how=Delivery(topic=target_topic(profile.person_id, decided.sets_date)),
        )
    return True


def warned_today(turn: Turn, profile: AthleteProfile) -> list[str]:
    """The warnings that hold just now: those of today, and what is still open from before."""
    day = local_date(profile, turn.context)
    query = select(AlertRow).where(
        AlertRow.athlete_id == profile.person_id, AlertRow.level == Level.WARNING
    )
    rows = turn.session.exec(query.order_by(col(AlertRow.id))).all()
    since = profile.frozen_at
    return list(
        dict.fromkeys(
            row.flag
            for row in rows
            if row.date == day
            or row.acknowledged_at is None
            or (since is not None and row.opened_at >= since)
        )
    )


def redecide(turn: Turn, profile: AthleteProfile, *, because: str) -> None:
    """Decide today's check-in again, after something around it has changed; else send the target."""
    today = local_date(profile, turn.context)
    row = checkin_row(turn.session, profile.person_id, today)
    if row is None:
        send_target(turn, profile, today, because=because)
        return
    decide_again(turn, profile, row, because=because)


def decide_again(
    turn: Turn,
    profile: AthleteProfile,
    row: CheckInRow,
    *,
    because: str,
    answer_by: datetime | None = None,
) -> None:
    """Decide this check-in again, in which no answer has changed."""
    row.revision += 1
    with speaking_to(get_person(turn.session, profile.person_id)):
        lead = words.because(because, self_coached=profile.coach_id == profile.person_id)
    decide_checkin(turn, profile, row, Occasion(lead, told_anew=False, answer_by=answer_by))


def latest_decision(session: Session, athlete_id: int) -> DecisionRow | None:
    return session.exec(_LATEST, params={"athlete": athlete_id}).first()


# Built once: building a statement costs more than asking it.
_STANDING_ON = select(DecisionRow).where(
    DecisionRow.checkin_id == bindparam("checkin"),
    col(DecisionRow.status) != DecisionStatus.REPLACED,
)
_LATEST = (
    select(DecisionRow)
    .where(
        DecisionRow.athlete_id == bindparam("athlete"),
        col(DecisionRow.status) != DecisionStatus.REPLACED,
    )
    .order_by(col(DecisionRow.id).desc())
    .limit(1)
)


def _replace_earlier(turn: Turn, row: CheckInRow) -> None:
    if row.revision == 1:
        return  # it is as it was first told, and each decision is on another revision
    for decided in turn.session.exec(_STANDING_ON, params={"checkin": row.id}):
        was_waiting = decided.status == DecisionStatus.WAITING
        decided.status = DecisionStatus.REPLACED
        if was_waiting:
            signoff.replaced(turn, decided)


def _put_in_force(turn: Turn, week: Week, decision: Decision, decided: DecisionRow) -> None:
    athlete_id = week.profile.person_id
    standing = day_set(turn.session, athlete_id, decision.sets_date)
    if standing is not None and standing.by == "coach":
        return
    figure = decision.lapse_g if decision.needs_sign_off else decision.carb_g
    if figure is not None:
        stands = Figure(figure, "decision" if _moves(decided) else "plan", decided.id)
        set_day(turn, athlete_id, decision.sets_date, stands)


def _moves(decided: DecisionRow) -> bool:
    """Whether the check-in moves the day's figure before anybody has answered."""
    return decided.status != DecisionStatus.WAITING or is_small_step(decided)


def freeze(turn: Turn, profile: AthleteProfile, because: str) -> None:
    """Adjust nothing until the coach lifts it. A freeze that is there keeps its reason, but for a
    warning, which outweighs others.
    """
    graver = because == WARNED and profile.frozen_because != WARNED
    if profile.frozen_at is None or graver:
        profile.frozen_at, profile.frozen_because = turn.now, because
        record(turn, profile.person_id, Change.FROZEN(because=because), by=None)


def _bring_to_coach(
    turn: Turn, profile: AthleteProfile, decided: DecisionRow, on: Occasion
) -> None:
    decision = decision_of(decided)
    found = alerts.Found(decision.flags, decision.date, on.told_anew)
    alerts.raise_flags(turn, profile, found)
    if decision.needs_sign_off:
        signoff.ask_coach(turn, profile, decided, answer_by=on.answer_by)
    elif decision.tell_coach and decision.outcome is not Outcome.ESCALATED:
        athlete = get_person(turn.session, profile.person_id)
        alerts.note(
            turn, profile,
            lambda: words.coach_note(athlete.first_name, reason_of(profile, decided)),
        )  # fmt: skip
