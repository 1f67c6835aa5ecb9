"""The coach's word on a change: approve it, set another figure, keep the plan, or say nothing."""

from __future__ import annotations

from datetime import date
from functools import partial

from sqlmodel import Session, select

from bot.context import Context
from bot.dialogue import Answers
from bot.flows.coach_figure import DAY_BY_HAND, OTHER_FIGURE
from bot.incoming import Incoming
from bot.messages import coach_signoff as words
from bot.messages import leaving as leaving_words
from bot.outbox import say
from bot.service import asking, deciding
from bot.service.changes import standing_before
from bot.service.desk import clock_for, moment_for
from bot.service.notes import quiet_now
from bot.service.people import get_person, local_date, own_athlete, profile_of, record, speaking_to
from bot.service.rights import others_coaching
from bot.service.signoff import is_small_step, plan_g, settle, stands_g
from bot.service.tapping import answer
from bot.service.week import (
    Week,
    checkin_row,
    current_week,
    day_set,
    set_day,
    target_in_force,
)
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.traffic import AgendaRow
from bot.store.week import DecisionRow, DecisionStatus
from engine.plan import LOAD_DAYS


def sign_tapped(
    session: Session, coach: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Buttons "sign:approve|other|keep:ID"."""
    action, number = (*arguments, "", "")[:2]
    row = session.get(DecisionRow, int(number)) if number.isdigit() else None
    profile = own_athlete(session, coach, row.athlete_id) if row is not None else None
    if row is None or profile is None or action not in ("approve", "other", "keep"):
        answer(session, incoming, context, words.not_your_decision())
        return
    late = _too_late(session, coach, profile, row, context)
    if late:
        answer(session, incoming, context, late)
        return
    if profile.frozen_at is not None and action != "keep":
        answer(session, incoming, context)
        say_frozen(session, coach, profile, context)
        return
    answer(session, incoming, context)
    if action == "approve":
        assert row.carb_g is not None
        _sign(session, coach, profile, row, DecisionStatus.APPROVED, row.carb_g, context)
    elif action == "keep":
        _sign(session, coach, profile, row, DecisionStatus.PLAN_KEPT, plan_g(row), context)
    else:
        _ask_other(session, coach, profile, row, context)


def other_figure_given(
    session: Session, coach: Person, question: OpenQuestion, context: Context
) -> None:
    """The end of the question for another figure."""
    row = session.get(DecisionRow, question.subject_id)
    profile = own_athlete(session, coach, row.athlete_id) if row is not None else None
    if row is None or profile is None:
        say(session, chat_id=coach.chat_id, text=words.not_your_decision(), now=context.now)
        return
    if question.answers.get("sure") is False:
        _ask_other(session, coach, profile, row, context)
        return
    late = _too_late(session, coach, profile, row, context)
    if late:
        say(session, chat_id=coach.chat_id, text=late, now=context.now)
        return
    if profile.frozen_at is not None:
        say_frozen(session, coach, profile, context)
        return
    figure = question.answers["carb_g"]
    because = question.answers.get("because", "")
    _sign(
        session, coach, profile, row, DecisionStatus.OTHER_FIGURE, figure, context, because=because
    )
    name = get_person(session, profile.person_id).first_name
    said = words.day_set(name, row.sets_date, figure, own=coach.id == profile.person_id)
    say(session, chat_id=coach.chat_id, text=said, now=context.now)


def lapse(session: Session, duty: AgendaRow, context: Context) -> None:
    """The deadline has passed without a word."""
    row = session.get(DecisionRow, int(duty.subject.partition(":")[2]))
    if row is None or row.status != DecisionStatus.WAITING:
        return
    profile = profile_of(session, row.athlete_id)
    assert profile is not None
    _lapse(session, profile, row, context)


def ask_day_by_hand(
    session: Session, coach: Person, profile: AthleteProfile, day: date, context: Context
) -> None:
    """Ask for a day's figure outside any proposal; the day is one that the week has."""
    week = current_week(session, profile)
    target = target_in_force(session, week, day) if week is not None else None
    if week is None or target is None:
        return
    if profile.frozen_at is not None:
        say_frozen(session, coach, profile, context)
        return
    asking.open_question(
        session, coach, DAY_BY_HAND, context=context, subject_id=profile.person_id,
        answers=question_context(session, coach, week, day, target.carb_g)
        | {"_proposed_g": None, "_stands_g": target.carb_g},
    )  # fmt: skip


def day_by_hand_given(
    session: Session, coach: Person, question: OpenQuestion, context: Context
) -> None:
    """The end of the question for a day's figure."""
    profile = own_athlete(session, coach, question.subject_id or 0)
    if profile is None:
        say(session, chat_id=coach.chat_id, text=words.not_your_decision(), now=context.now)
        return
    day, figure = date.fromisoformat(question.answers["_day"]), question.answers["carb_g"]
    name = get_person(session, profile.person_id).first_name
    if question.answers.get("sure") is False:
        ask_day_by_hand(session, coach, profile, day, context)
        return
    if local_date(profile, context) > day:
        say(session, chat_id=coach.chat_id, text=words.day_is_over(name), now=context.now)
        return
    if profile.frozen_at is not None:
        say_frozen(session, coach, profile, context)
        return
    before = standing_before(session, profile, context)
    set_day(session, profile.person_id, day, figure, by="coach", context=context)
    record(
        session, profile.person_id, "day set by hand", context, by=coach.id,
        day=day.isoformat(), carb_g=figure, because=question.answers.get("because", ""),
        before=before,
    )  # fmt: skip
    said = words.day_set(name, day, figure, own=coach.id == profile.person_id)
    say(session, chat_id=coach.chat_id, text=said, now=context.now)
    if _set_by_this_morning(session, profile, context) == day:
        deciding.redecide(session, profile, context=context, because="coach-set")
    else:
        deciding.send_target(session, profile, day, context=context, because="coach-set")


def _set_by_this_morning(
    session: Session, profile: AthleteProfile, context: Context
) -> date | None:
    """The day that this morning's check-in has decided on."""
    row = checkin_row(session, profile.person_id, local_date(profile, context))
    if row is None:
        return None
    query = select(DecisionRow).where(
        DecisionRow.checkin_id == row.id, DecisionRow.status != DecisionStatus.REPLACED
    )
    decision = session.exec(query).first()
    return decision.sets_date if decision is not None else None


def say_frozen(session: Session, coach: Person, profile: AthleteProfile, context: Context) -> None:
    name = get_person(session, profile.person_id).first_name
    text = words.frozen(name, own=coach.id == profile.person_id)
    say(session, chat_id=coach.chat_id, text=text, now=context.now)


def _sign(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    row: DecisionRow,
    status: DecisionStatus,
    carb_g: float,
    context: Context,
    *,
    because: str = "",
) -> None:
    kept = status == DecisionStatus.PLAN_KEPT
    before = standing_before(session, profile, context)
    row.status, row.signed_by, row.signed_at = status, coach.id, context.now
    session.add(row)
    set_day(
        session, profile.person_id, row.sets_date, carb_g, context=context,
        by="plan" if kept else "coach", decision_id=row.id,
    )  # fmt: skip
    record(
        session, profile.person_id, "signed off", context, by=coach.id,
        decision=row.id, status=status.value, carb_g=carb_g, day=row.sets_date.isoformat(),
        proposed_g=row.carb_g, because=because, before=before,
    )  # fmt: skip
    settle(session, row, partial(_what_happened, session, profile, row), context)
    deciding.send_target(session, profile, row.sets_date, context=context, because=status.value)


def _lapse(session: Session, profile: AthleteProfile, row: DecisionRow, context: Context) -> None:
    row.status = DecisionStatus.LAPSED
    session.add(row)
    figure, small = stands_g(row), is_small_step(row)
    set_day(
        session, profile.person_id, row.sets_date, figure, context=context,
        by="decision" if small else "plan", decision_id=row.id,
    )  # fmt: skip
    record(
        session, profile.person_id, "sign-off lapsed", context, by=None, decision=row.id,
        day=row.sets_date.isoformat(), carb_g=figure, proposed_g=row.carb_g,
        small=small,
    )  # fmt: skip
    settle(session, row, partial(_what_happened, session, profile, row), context)
    name = get_person(session, profile.person_id).first_name
    for coach in others_coaching(session, profile):
        with speaking_to(coach):
            text = words.lapsed_told(name, figure, own=False, small=small)
            quiet = quiet_now(session, coach, context)
            say(session, chat_id=coach.chat_id, text=text, now=context.now, silent=quiet)
    deciding.send_target(
        session, profile, row.sets_date, context=context, because=deciding.lapsed_because(row)
    )


def _too_late(
    session: Session, reader: Person, profile: AthleteProfile, row: DecisionRow, context: Context
) -> str:
    """What has happened to this proposal already; "" while it waits."""
    if row.status == DecisionStatus.WAITING and local_date(profile, context) > row.sets_date:
        _lapse(session, profile, row, context)
    if row.status == DecisionStatus.WAITING:
        return ""
    return _what_happened(session, profile, row, reader)


def _what_happened(
    session: Session, profile: AthleteProfile, row: DecisionRow, reader: Person
) -> str:
    if row.status == DecisionStatus.REPLACED:
        name = get_person(session, profile.person_id).first_name
        return words.replaced(name, own=profile.coach_id == profile.person_id)
    if row.status == DecisionStatus.CLOSED:
        return leaving_words.coaching_over()
    if row.status == DecisionStatus.LAPSED and row.sign_off_due_at is not None:
        due = clock_for(session, reader, profile, row.sign_off_due_at)
        return words.lapsed(stands_g(row), due, small=is_small_step(row))
    if row.signed_by is None or row.signed_at is None or row.carb_g is None:
        return words.in_force_already()
    by = get_person(session, row.signed_by).first_name
    when = moment_for(session, reader, profile, row.signed_at)
    if row.status == DecisionStatus.PLAN_KEPT:
        return words.plan_kept(by, plan_g(row), when)
    if row.status == DecisionStatus.OTHER_FIGURE:
        standing = day_set(session, profile.person_id, row.sets_date)
        same = standing is not None and standing.decision_id == row.id
        return words.other_figure(by, standing.carb_g if standing and same else None, when)
    return words.approved(by, row.carb_g, when)


def _ask_other(
    session: Session, coach: Person, profile: AthleteProfile, row: DecisionRow, context: Context
) -> None:
    week = current_week(session, profile)
    if week is None:
        say(session, chat_id=coach.chat_id, text=words.not_your_decision(), now=context.now)
        return
    asking.open_question(
        session, coach, OTHER_FIGURE, context=context, subject_id=row.id,
        answers=question_context(session, coach, week, row.sets_date, row.planned_carb_g)
        | {"_proposed_g": row.carb_g, "_stands_g": stands_g(row)},
    )  # fmt: skip


def question_context(
    session: Session, coach: Person, week: Week, day: date, planned_g: float | None
) -> Answers:
    """What the questions for a figure need to know to check it."""
    profile, limits = week.profile, week.limits
    rail = limits.guard_rails.rail("carb_ceiling_g")
    return {
        "_name": get_person(session, profile.person_id).first_name,
        "_own": coach.id == profile.person_id,
        "_day": day.isoformat(),
        "_planned_g": planned_g,
        "_limits": {
            "carb_floor_g": limits.carb_floor_g,
            "carb_ceiling_g": limits.carb_ceiling_g,
            "load_room_g": _load_room(session, week, day),
        },
        "_rail": {
            "low": rail.low,
            "high": rail.high,
            "low_source": rail.low_source.citation,
            "high_source": rail.high_source.citation,
        },
    }


def _load_room(session: Session, week: Week, day: date) -> float | None:
    """What the load total leaves for this day, the other load days as they stand (g)."""
    days_out = week.days_out(day)
    if days_out not in LOAD_DAYS:
        return None
    others = [
        target_in_force(session, week, week.date_of(out)) for out in LOAD_DAYS if out != days_out
    ]
    return week.limits.load_total_g - sum(target.carb_g for target in others if target)
