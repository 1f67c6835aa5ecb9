"""From a recorded check-in to a decision, and from a decision to what people are told."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date, datetime

from sqlmodel import Session, col, select

from bot.alerts import alerts
from bot.alerts import words_advice as advice
from bot.alerts import words_athlete as safety
from bot.alerts import words_cautions as cautions
from bot.core.outbox import Button, Buttons, drop_waiting
from bot.core.topics import Topic, on
from bot.core.turn import Turn
from bot.decision import signoff
from bot.decision import words_self_coached as on_your_own
from bot.decision import words_target as words
from bot.decision.buttons import ON_ANSWERS, ChangeDo
from bot.decision.care import OF_EATING_AND_MOOD, WARNED, care_for
from bot.decision.words_outlook import outlook_line
from bot.decision.words_reasons import reason
from bot.decision.words_target import no_plan_yet, nothing_planned_today
from bot.people.changes import Change
from bot.people.people import get_person, is_own_coach, local_date, record, speaking_to
from bot.people.telling import say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile
from bot.store.tables.traffic import OutboxRow, TopicKind, Urgency
from bot.store.tables.week import AlertRow, CheckInRow, DecisionRow, DecisionStatus
from bot.week.load import (
    Week,
    build_case,
    checkin_row,
    current_week,
    day_set,
    set_day,
    target_in_force,
)
from bot.words.common import something_off_button
from engine.decision.decide import Decision, Outcome, case_as_dict, decide, decision_as_dict
from engine.decision.kept import decision_from_dict
from engine.safety import FlagId, Level
from engine.symptoms import EATING_AND_MOOD, Symptom


def decide_checkin(
    turn: Turn,
    profile: AthleteProfile,
    row: CheckInRow,
    *,
    lead: str = "",
    told_anew: bool = True,
    answer_by: datetime | None = None,
    quietly: bool = False,
) -> DecisionRow | None:
    """Decide on this check-in as it stands now; an earlier decision on it is replaced.

    `told_anew` is False where not the answers but something around them changed. `answer_by`: the
    deadline of a proposal that had been put before the coach already.

    Saves the decision whole, puts its figure in force, tells the athlete, and brings flags, notes
    and larger changes to the coach. `quietly`: the athlete is not told. None where there is no week
    to decide on yet.
    """
    week = current_week(turn.session, profile)
    person = get_person(turn.session, profile.person_id)
    if week is None:
        coach = get_person(turn.session, profile.coach_id)
        say_to(turn, person, lambda: no_plan_yet(coach.first_name))
        return None
    _replace_earlier(turn, row)
    case = build_case(turn.session, week, row)
    decision = decide(case)
    known = alerts.found_on(turn.session, profile.person_id, decision.date)
    moods = [f.id for f in decision.flags if f.id in EATING_AND_MOOD and f.id not in known]
    if moods and profile.frozen_at is None:
        freeze(turn, profile, OF_EATING_AND_MOOD)
        case = replace(case, frozen=True)
        decision = decide(case)
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
    turn.session.add(decided)
    turn.session.flush()
    record(
        turn, profile.person_id, Change.DECIDED, by=None, decision=decided.id,
        outcome=decided.outcome, rule=decision.rule, day=decided.sets_date.isoformat(),
        carb_g=decided.carb_g, planned_carb_g=decided.planned_carb_g, status=decided.status,
    )  # fmt: skip
    # A warning that was seen to is not sounded again because a number or the plan changed.
    seen_to = not told_anew and alerts.seen_to(turn.session, profile, decision.flags, decision.date)
    if decision.outcome is Outcome.ESCALATED and not seen_to:
        freeze(turn, profile, decision.rule)
    _put_in_force(turn, week, decision, decided)
    _bring_to_coach(turn, profile, decision, decided, told_anew, answer_by)
    alerts.correct(turn, profile, row, decision.flags)
    if not quietly:
        with speaking_to(person):
            lead = "\n\n".join(part for part in (_answer_of_now(turn, profile), lead) if part)
            _tell_athlete(turn, week, decision, decided, lead, known, seen_to=seen_to)
    return decided


def decide_with(
    turn: Turn,
    profile: AthleteProfile,
    row: CheckInRow,
    *,
    lead: str | None,
    always: bool,
    answer_by: datetime | None = None,
) -> bool:
    """Decide again with what was told since; whether the athlete was sent the target for it.

    `lead` stands before it; None: nothing is sent. Without `always`, only a figure that is another
    one now is. `answer_by`: the deadline of a proposal that waited already.
    """
    before = latest_decision(turn.session, profile.person_id)
    stood = None if before is None else (before.sets_date, stands(before))
    row.revision += 1
    turn.session.add(row)
    decided = decide_checkin(turn, profile, row, told_anew=False, answer_by=answer_by, quietly=True)
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
                week.plan,
                decided.sets_date,
                week.days_out(decided.sets_date),
                care.lines(target, planned.carb_g, profile.volume_unit),
                why,
                lead=lead or safety.decided_anew(),
            )
        )
        say_to(turn, person, text, topic=target_topic(profile.person_id, decided.sets_date))
    return True


def stands(decided: DecisionRow) -> float | None:
    """The carbohydrate that a decision leaves in force until somebody says otherwise."""
    waiting = decided.status == DecisionStatus.WAITING
    return decision_from_dict(decided.decision).lapse_g if waiting else decided.carb_g


def answer_topic(athlete_id: int) -> Topic:
    """What is answered to a complaint, until a target goes out with it."""
    return Topic(TopicKind.ANSWER, athlete_id)


def _answer_of_now(turn: Turn, profile: AthleteProfile) -> str:
    """What has just been answered to the same message, which is then not sent by itself."""
    waiting = select(OutboxRow).where(
        *on(answer_topic(profile.person_id)),
        OutboxRow.status == "waiting",
        OutboxRow.created_at == turn.now,
    )
    text = ""
    for row in turn.session.exec(waiting).all():
        row.status, text = "dropped", row.payload["text"]
        turn.session.add(row)
    return text


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


def say_emergency(turn: Turn, profile: AthleteProfile, found: Sequence[str]) -> None:
    """Stop, and call for help; once for what is told in one go."""
    person = get_person(turn.session, profile.person_id)
    coach = get_person(turn.session, profile.coach_id)
    drop_waiting(turn.session, answer_topic(profile.person_id))
    say_to(
        turn,
        person,
        lambda: (
            safety.emergency_self_coached(found, turn.context.helpline)
            if is_own_coach(profile)
            else safety.emergency(found, coach.first_name, turn.context.helpline)
        ),
        urgency=Urgency.URGENT,
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
    turn.session.add(row)
    with speaking_to(get_person(turn.session, profile.person_id)):
        lead = words.because(because, own=profile.coach_id == profile.person_id)
    decide_checkin(turn, profile, row, lead=lead, told_anew=False, answer_by=answer_by)


def send_target(turn: Turn, profile: AthleteProfile, day: date, *, because: str) -> None:
    """Send a day's target as it holds now. Nothing where there is no target for the day."""
    week = current_week(turn.session, profile)
    target = target_in_force(turn.session, week, day) if week else None
    if week is None or target is None:
        return
    planned = week.plan.day(week.days_out(day))
    assert planned is not None
    person = get_person(turn.session, profile.person_id)
    care = care_for(turn, profile)
    if care.unsaid:
        return
    say_to(
        turn,
        person,
        lambda: words.target_message(
            week.plan,
            day,
            week.days_out(day),
            care.lines(target, planned.carb_g, profile.volume_unit),
            "",
            lead=words.because(because, own=profile.coach_id == profile.person_id),
        ),
        topic=target_topic(profile.person_id, day),
    )


def target_topic(athlete_id: int, day: date) -> Topic:
    """Of several targets for a day that have not been sent yet, only the latest is."""
    return Topic(TopicKind.TARGET, athlete_id, day=day)


def latest_decision(session: Session, athlete_id: int) -> DecisionRow | None:
    query = (
        select(DecisionRow)
        .where(
            DecisionRow.athlete_id == athlete_id,
            col(DecisionRow.status) != DecisionStatus.REPLACED,
        )
        .order_by(col(DecisionRow.id).desc())
    )
    return session.exec(query).first()


def _replace_earlier(turn: Turn, row: CheckInRow) -> None:
    earlier = turn.session.exec(
        select(DecisionRow).where(
            DecisionRow.checkin_id == row.id,
            col(DecisionRow.status) != DecisionStatus.REPLACED,
        )
    )
    for decided in earlier:
        was_waiting = decided.status == DecisionStatus.WAITING
        decided.status = DecisionStatus.REPLACED
        turn.session.add(decided)
        if was_waiting:
            signoff.replaced(turn, decided)


def _put_in_force(turn: Turn, week: Week, decision: Decision, decided: DecisionRow) -> None:
    athlete_id = week.profile.person_id
    standing = day_set(turn.session, athlete_id, decision.sets_date)
    if standing is not None and standing.by == "coach":
        return
    figure = decision.lapse_g if decision.needs_sign_off else decision.carb_g
    if figure is not None:
        set_day(
            turn, athlete_id, decision.sets_date, figure,
            by="decision" if _moves(decided) else "plan", decision_id=decided.id,
        )  # fmt: skip


def _moves(decided: DecisionRow) -> bool:
    """Whether the check-in moves the day's figure before anybody has answered."""
    return decided.status != DecisionStatus.WAITING or signoff.is_small_step(decided)


def lapsed_because(decided: DecisionRow) -> str:
    """Why the figure is what it is, where nobody answered in time (see `words.because`)."""
    return "lapsed-small" if signoff.is_small_step(decided) else "lapsed"


def freeze(turn: Turn, profile: AthleteProfile, because: str) -> None:
    """Adjust nothing until the coach lifts it. A freeze that is there keeps its reason, but for a
    warning, which outweighs others.
    """
    graver = because == WARNED and profile.frozen_because != WARNED
    if profile.frozen_at is None or graver:
        profile.frozen_at, profile.frozen_because = turn.now, because
        turn.session.add(profile)
        record(turn, profile.person_id, Change.FROZEN, by=None, because=because)


def _bring_to_coach(
    turn: Turn,
    profile: AthleteProfile,
    decision: Decision,
    decided: DecisionRow,
    told_anew: bool,
    answer_by: datetime | None,
) -> None:
    alerts.raise_flags(turn, profile, decision.flags, day=decision.date, told_anew=told_anew)
    if decision.needs_sign_off:
        signoff.ask_coach(turn, profile, decided, answer_by=answer_by)
    elif decision.tell_coach and decision.outcome is not Outcome.ESCALATED:
        athlete = get_person(turn.session, profile.person_id)
        alerts.note(
            turn, profile,
            lambda: words.coach_note(athlete.first_name, reason_of(profile, decided)),
        )  # fmt: skip


def reason_of(profile: AthleteProfile, decided: DecisionRow) -> str:
    """The reason as the athlete reads it."""
    decision = decision_from_dict(decided.decision)
    rule, own = decision.rule, is_own_coach(profile)
    if rule == "frozen" and profile.frozen_because in (WARNED, OF_EATING_AND_MOOD):
        return safety.rests_until_talked(own=own)
    said = on_your_own.reason(rule) if own else ""
    return said or reason(decision, profile.weight_unit, profile.volume_unit, own=own)


_NOT_AS_PROPOSED = (DecisionStatus.OTHER_FIGURE, DecisionStatus.PLAN_KEPT)


def told_why(session: Session, profile: AthleteProfile, decided: DecisionRow) -> str:
    """The reason beside a figure: "eat 50 g more" is not said as an order before it is approved."""
    own, why = is_own_coach(profile), reason_of(profile, decided)
    if decided.status == DecisionStatus.WAITING:
        line = signoff.waiting_line(session, profile, decided)
        return f"{line}\n\n{words.suggested(why)}"
    if decided.status == DecisionStatus.LAPSED:
        return words.because(lapsed_because(decided), own=own)
    if decided.status in _NOT_AS_PROPOSED:
        return words.because(decided.status, own=own)
    return why


def _tell_athlete(
    turn: Turn,
    week: Week,
    decision: Decision,
    decided: DecisionRow,
    lead: str,
    known: Mapping[str, int],
    *,
    seen_to: bool,
) -> None:
    """`known`: what had been brought to the coach before, and answered."""
    profile = week.profile
    person = get_person(turn.session, profile.person_id)
    if decision.outcome is Outcome.ESCALATED and not seen_to:
        drop_waiting(turn.session, target_topic(profile.person_id, decision.sets_date))
        _tell_of_warning(turn, profile, decision, lead, known)
        return
    care = care_for(turn, profile)
    lead = "\n\n".join(part for part in (lead, _answer(turn, profile, decision, known)) if part)
    if care.unsaid:
        text = f"{lead}\n\n{advice.figures_kept_back()}".strip()
        say_to(turn, person, text)
        return
    target = target_in_force(turn.session, week, decision.sets_date)
    planned = week.plan.day(week.days_out(decision.sets_date))
    if target is None or planned is None:
        text = f"{lead}\n\n{nothing_planned_today()}".strip()
        say_to(turn, person, text)
        return
    why = safety.warning_seen_to() if seen_to else told_why(turn.session, profile, decided)
    course = outlook_line(decision, stands(decided))
    if course and not seen_to:
        why += f"\n{course}"
    if decision.needs_sign_off:
        if seen_to:
            why += "\n\n" + signoff.waiting_line(turn.session, profile, decided)
        target = replace(target, carb_g=decision.lapse_g or target.carb_g)
    text = words.target_message(
        week.plan,
        decision.sets_date,
        decision.days_out,
        care.lines(target, planned.carb_g, profile.volume_unit),
        why,
        lead=lead,
        caution=_cautions(turn.session, profile, decision),
    )
    say_to(
        turn,
        person,
        text,
        buttons=target_buttons(decided.checkin_id, decision.ask_again),
        topic=target_topic(profile.person_id, decision.sets_date),
    )


def _tell_of_warning(
    turn: Turn, profile: AthleteProfile, decision: Decision, lead: str, known: Mapping[str, int]
) -> None:
    """What is new is an emergency; what was answered before stands, and is not shouted again."""
    warnings = [flag.id for flag in decision.flags if flag.level is Level.WARNING]
    new = [found for found in warnings if known.get(found, -1) < Level.WARNING.rank]
    if new:
        say_emergency(turn, profile, new)
        return
    person = get_person(turn.session, profile.person_id)
    coach = get_person(turn.session, profile.coach_id)
    stands = safety.warning_stands(warnings, coach.first_name, own=is_own_coach(profile))
    text = "\n\n".join(part for part in (lead, f"{safety.answers_saved()} {stands}") if part)
    say_to(turn, person, text)


def _answer(
    turn: Turn, profile: AthleteProfile, decision: Decision, known: Mapping[str, int]
) -> str:
    """What is said to complaints of this check-in that have not been answered yet."""
    coach = "" if is_own_coach(profile) else get_person(turn.session, profile.coach_id).first_name
    new = [flag for flag in decision.flags if known.get(flag.id, -1) < flag.level.rank]
    moods = [flag.id for flag in new if flag.id in EATING_AND_MOOD]
    symptoms = [f.id for f in new if isinstance(f.id, Symptom) and f.level is not Level.WARNING]
    if moods:
        return advice.mood(moods, coach, turn.context.helpline)
    if any(flag.id is FlagId.LOW_SODIUM for flag in new):
        return advice.low_sodium(coach)
    return advice.told(symptoms, coach) if symptoms else ""


def _cautions(session: Session, profile: AthleteProfile, decision: Decision) -> str:
    """Each finding in the answers in a sentence with what to do; one drink is told once."""
    raised = {flag.id for flag in decision.flags}
    coach = "" if is_own_coach(profile) else get_person(session, profile.coach_id).first_name
    found = [
        flag
        for flag in decision.flags
        if isinstance(flag.id, FlagId)
        and flag.id is not FlagId.LOW_SODIUM
        and alerts.SAID_BY.get(flag.id) not in raised
    ]
    lines = [
        cautions.line(
            flag.id, dict(flag.facts),
            weight_unit=profile.weight_unit, volume_unit=profile.volume_unit,
        )
        for flag in found
        if isinstance(flag.id, FlagId)
    ]  # fmt: skip
    told = any(
        flag.level is Level.CAUTION and flag.id is not FlagId.DOUBT for flag in decision.flags
    )
    return cautions.together(lines, coach, no_raise=told)


def target_buttons(checkin_id: int, ask_again: tuple[str, ...]) -> Buttons:
    """Under a target: change an answer, say that something is off; first what has to be asked again."""
    again = [
        [Button(words.ask_again_button(key), ON_ANSWERS(ChangeDo.ONE, checkin_id, key))]
        for key in ask_again
    ]
    return [
        *again,
        [
            Button(words.change_button(), ON_ANSWERS(ChangeDo.CHANGE, checkin_id)),
            Button(something_off_button(), ON_ANSWERS(ChangeDo.OFF, checkin_id)),
        ],
    ]
