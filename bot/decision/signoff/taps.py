"""The coach's answer to a change: approve it, set another figure, keep the plan, or say nothing."""

from __future__ import annotations

from datetime import date
from functools import partial
from typing import NamedTuple

from sqlmodel import Session, col, select

from bot.alerts.notes import quiet_now
from bot.core.chat.cards import OnProposal, Say
from bot.core.chat.outbox import Delivery
from bot.core.timing.agenda import Subject
from bot.core.turn import Act, ChatTurn, Turn
from bot.decision import deciding, to_athlete
from bot.decision.flow_figure import DAY_BY_HAND, OTHER_FIGURE
from bot.decision.signoff import signoff, words
from bot.decision.signoff.signoff import close_proposal
from bot.dialogue import asking
from bot.dialogue.flow import Answers, said
from bot.people.changes import Change
from bot.people.coach_settings import clock_for, moment_for
from bot.people.people import (
    approvers,
    athletes_seen_by,
    get_profile,
    local_date,
    name_of,
    others_coaching,
    own_athlete,
    record,
)
from bot.people.telling import answer, say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import DecisionRow, DecisionStatus
from bot.week.cases import default_carb_g, is_small_step, plan_g
from bot.week.load import Figure, Week, checkin_row, current_week, day_set, set_day, target_in_force
from bot.week.snapshots import take_snapshot
from bot.words import common
from bot.words.languages import mark
from engine.written.late import Late


def sign_tapped(turn: Act, pressed: OnProposal) -> None:
    """The coach's answer to a proposal."""
    row = turn.session.get(DecisionRow, pressed.decision)
    profile = own_athlete(turn.session, turn.person, row.athlete_id) if row is not None else None
    if row is None or profile is None:
        answer(turn, words.not_your_decision())
        return
    late = _too_late(turn, turn.person, profile, row)
    if late:
        answer(turn, late)
        return
    if profile.frozen_at is not None and pressed.say is not Say.KEEP:
        answer(turn)
        say_frozen(turn, turn.person, profile)
        return
    answer(turn)
    if pressed.say is Say.APPROVE:
        assert row.carb_g is not None
        _sign(turn, turn.person, profile, row, Verdict(DecisionStatus.APPROVED, row.carb_g))
    elif pressed.say is Say.KEEP:
        _sign(turn, turn.person, profile, row, Verdict(DecisionStatus.PLAN_KEPT, plan_g(row)))
    else:
        _ask_other(turn, turn.person, profile, row)


def approve_if_open(turn: Turn, coach: Person, profile: AthleteProfile, row: DecisionRow) -> str:
    """Approve a proposal among others; what stands against it, and nothing is done, or "".

    The athlete has been found to be this coach's.
    """
    late = _too_late(turn, coach, profile, row)
    if late or row.carb_g is None:
        return late or words.in_force_already()
    if profile.frozen_at is not None:
        name = name_of(turn.session, profile.person_id)
        return words.frozen(name, self_coached=coach.id == profile.person_id)
    _sign(turn, coach, profile, row, Verdict(DecisionStatus.APPROVED, row.carb_g))
    return ""


def other_figure_given(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """The end of the question for another figure."""
    row = turn.session.get(DecisionRow, question.subject_id)
    profile = own_athlete(turn.session, coach, row.athlete_id) if row is not None else None
    if row is None or profile is None:
        say_to(turn, coach, words.not_your_decision())
        return
    if question.answers.get("sure") is False:
        _ask_other(turn, coach, profile, row)
        return
    late = _too_late(turn, coach, profile, row)
    if late:
        say_to(turn, coach, late)
        return
    if profile.frozen_at is not None:
        say_frozen(turn, coach, profile)
        return
    figure = question.answers["carb_g"]
    because = question.answers.get("because", "")
    _sign(turn, coach, profile, row, Verdict(DecisionStatus.OTHER_FIGURE, figure, because))
    name = name_of(turn.session, profile.person_id)
    said = words.day_set(name, row.sets_date, figure, self_coached=coach.id == profile.person_id)
    say_to(turn, coach, said)


def lapse(turn: Turn, duty: AgendaRow) -> None:
    """The deadline has passed without an answer."""
    row = turn.session.get(DecisionRow, Subject.DECISION.of(duty))
    if row is None or row.status != DecisionStatus.WAITING:
        return
    profile = get_profile(turn.session, row.athlete_id)
    _lapse(turn, profile, row)


def ask_day_by_hand(turn: Turn, coach: Person, profile: AthleteProfile, day: date) -> None:
    """Ask for a day's figure outside any proposal; the day is one that the week has."""
    week = current_week(turn.session, profile)
    target = target_in_force(turn.session, week, day) if week is not None else None
    if week is None or target is None:
        return
    if profile.frozen_at is not None:
        say_frozen(turn, coach, profile)
        return
    asking.open_question(turn, coach, DAY_BY_HAND, profile.person_id, {
        **question_context(turn.session, coach, week, day, target.carb_g),
        "_proposed_g": None, "_stands_g": target.carb_g,
    })  # fmt: skip


def day_by_hand_given(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    """The end of the question for a day's figure."""
    day, figure = date.fromisoformat(answers["_day"]), answers["carb_g"]
    name = name_of(turn.session, profile.person_id)
    if answers.get("sure") is False:
        ask_day_by_hand(turn, coach, profile, day)
        return
    if local_date(profile, turn.context) > day:
        say_to(turn, coach, words.day_is_over(name))
        return
    if profile.frozen_at is not None:
        say_frozen(turn, coach, profile)
        return
    before = take_snapshot(turn, profile)
    set_day(turn, profile.person_id, day, Figure(figure, "coach"))
    record(turn, profile.person_id, by=coach.id, what=Change.DAY_SET_BY_HAND(
        day=day.isoformat(), carb_g=figure, because=answers.get("because", ""),
        before=before,
    ))  # fmt: skip
    said = words.day_set(name, day, figure, self_coached=coach.id == profile.person_id)
    say_to(turn, coach, said)
    if _set_by_this_morning(turn, profile) == day:
        deciding.redecide(turn, profile, because="coach-set")
    else:
        to_athlete.send_target(turn, profile, day, because="coach-set")


def _set_by_this_morning(turn: Turn, profile: AthleteProfile) -> date | None:
    """The day that this morning's check-in has decided on."""
    row = checkin_row(turn.session, profile.person_id, local_date(profile, turn.context))
    if row is None:
        return None
    query = select(DecisionRow).where(
        DecisionRow.checkin_id == row.id, DecisionRow.status != DecisionStatus.REPLACED
    )
    decision = turn.session.exec(query).first()
    return decision.sets_date if decision is not None else None


def say_frozen(turn: Turn, coach: Person, profile: AthleteProfile) -> None:
    name = name_of(turn.session, profile.person_id)
    say_to(turn, coach, words.frozen(name, self_coached=coach.id == profile.person_id))


class Verdict(NamedTuple):
    """What a coach says to a proposal, the figure that holds by it, and why."""

    status: DecisionStatus
    carb_g: float
    because: str = ""


def _sign(
    turn: Turn, coach: Person, profile: AthleteProfile, row: DecisionRow, said: Verdict
) -> None:
    status, carb_g, because = said
    kept = status == DecisionStatus.PLAN_KEPT
    before = take_snapshot(turn, profile)
    row.status, row.signed_by, row.signed_at = status, coach.id, turn.now
    turn.session.add(row)
    stands = Figure(carb_g, "plan" if kept else "coach", row.id)
    set_day(turn, profile.person_id, row.sets_date, stands)
    record(turn, profile.person_id, by=coach.id, what=Change.SIGNED_OFF(
        decision=id_of(row), status=status.value, carb_g=carb_g, day=row.sets_date.isoformat(),
        proposed_g=row.carb_g, because=because, before=before,
    ))  # fmt: skip
    close_proposal(turn, row, partial(_what_happened, turn.session, profile, row))
    to_athlete.send_target(turn, profile, row.sets_date, because=status.value)


def _lapse(turn: Turn, profile: AthleteProfile, row: DecisionRow) -> None:
    row.status = DecisionStatus.LAPSED
    turn.session.add(row)
    figure, small = default_carb_g(row), is_small_step(row)
    stands = Figure(figure, "decision" if small else "plan", row.id)
    set_day(turn, profile.person_id, row.sets_date, stands)
    record(turn, profile.person_id, by=None, what=Change.SIGN_OFF_LAPSED(
        decision=id_of(row), day=row.sets_date.isoformat(), carb_g=figure, proposed_g=row.carb_g,
        small=small,
    ))  # fmt: skip
    close_proposal(turn, row, partial(_what_happened, turn.session, profile, row))
    name = name_of(turn.session, profile.person_id)
    for coach in others_coaching(turn.session, profile):
        text = partial(words.lapsed_told, name, figure, small=small)
        say_to(turn, coach, text, how=Delivery(silent=quiet_now(turn, coach)))
    to_athlete.send_target(turn, profile, row.sets_date, because=to_athlete.lapsed_because(row))


def _too_late(turn: Turn, reader: Person, profile: AthleteProfile, row: DecisionRow) -> str:
    """What has happened to this proposal already; "" while it waits."""
    if row.status == DecisionStatus.WAITING and local_date(profile, turn.context) > row.sets_date:
        _lapse(turn, profile, row)
    if row.status == DecisionStatus.WAITING:
        return ""
    return _what_happened(turn.session, profile, row, reader)


def _what_happened(
    session: Session, profile: AthleteProfile, row: DecisionRow, reader: Person
) -> str:
    if row.status == DecisionStatus.REPLACED:
        name = name_of(session, profile.person_id)
        return words.replaced(name, self_coached=profile.coach_id == profile.person_id)
    if row.status == DecisionStatus.CLOSED:
        return common.coaching_over()
    if row.status == DecisionStatus.LAPSED and row.sign_off_due_at is not None:
        due = clock_for(session, reader, profile, row.sign_off_due_at)
        return words.lapsed(default_carb_g(row), due, small=is_small_step(row))
    if row.signed_by is None or row.signed_at is None or row.carb_g is None:
        return words.in_force_already()
    by = name_of(session, row.signed_by)
    when = moment_for(session, reader, profile, row.signed_at)
    if row.status == DecisionStatus.PLAN_KEPT:
        return words.plan_kept(by, plan_g(row), when)
    if row.status == DecisionStatus.OTHER_FIGURE:
        standing = day_set(session, profile.person_id, row.sets_date)
        same = standing is not None and standing.decision_id == row.id
        return words.other_figure(by, standing.carb_g if standing and same else None, when)
    return words.approved(by, row.carb_g, when)


def _ask_other(turn: Turn, coach: Person, profile: AthleteProfile, row: DecisionRow) -> None:
    week = current_week(turn.session, profile)
    if week is None:
        say_to(turn, coach, words.not_your_decision())
        return
    asking.open_question(turn, coach, OTHER_FIGURE, row.id, {
        **question_context(turn.session, coach, week, row.sets_date, row.planned_carb_g),
        "_proposed_g": row.carb_g, "_stands_g": default_carb_g(row),
    })  # fmt: skip


def question_context(
    session: Session, coach: Person, week: Week, day: date, planned_g: float | None
) -> Answers:
    """What the questions for a figure need to know to check it."""
    profile, limits = week.profile, week.limits
    rail = limits.guard_rails.rail("carb_ceiling_g")
    return {
        "_name": name_of(session, profile.person_id),
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
    load_days = week.plan.load_days
    if days_out not in load_days:
        return None
    others = [
        target_in_force(session, week, week.date_of(out)) for out in load_days if out != days_out
    ]
    return week.limits.load_total_g - sum(target.carb_g for target in others if target)


#: Words of assent that say nothing else.
ASSENT = mark(
    "ok, okay, yes, y, yep, yeah, sure, approve, approved, approve it, agreed, go, go ahead, do it, "
    "fine, fine by me, sounds good, looks good, 👍, ✅"
)
#: And those that say no to a change; another figure says so too.
DISSENT = mark(
    "keep, keep it, keep the plan, stay on plan, stick to the plan, reject, decline, don't"
)
_FIGURE = Late(r"\d{2,4} ?(?:g|grams?|gramm|carbs?|kh)?")


def assented(turn: ChatTurn, person: Person) -> bool:
    """Asks for the tap, where somebody who may sign off says yes, no or a figure to nothing that was
    asked.

    False where nothing waits for them: an "ok" between people is passed on like any other word. A
    typed word approves nothing by itself, because it doesn't say beside which figure it was read.
    """
    text = turn.incoming.text.strip(" .!")
    if not (said(text, ASSENT) or said(text, DISSENT) or _FIGURE.fullmatch(text.casefold())):
        return False
    mine = {
        profile.person_id: profile
        for profile in athletes_seen_by(turn.session, person)
        if person.id in {one.id for one in approvers(turn.session, profile)}
    }
    waiting = select(DecisionRow).where(
        col(DecisionRow.athlete_id).in_(mine), DecisionRow.status == DecisionStatus.WAITING
    )
    rows = turn.session.exec(waiting.order_by(col(DecisionRow.id))).all()
    for row in rows:
        signoff.put_again(turn, person, mine[row.athlete_id], row, lead=words.tap_to_answer())
    return bool(rows)
