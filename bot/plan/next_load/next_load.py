"""The load of the next plan as earlier weeks suggest it: what they taught, and the offer to the coach.

It is never put in force by itself.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import timedelta

from sqlalchemy import bindparam
from sqlmodel import Session, col, select

from bot.core.chat.cards import EVENT, LEARNT
from bot.core.chat.outbox import Button, Delivery, Topic
from bot.core.turn import Context, OnAthlete, Turn
from bot.dialogue import asking
from bot.people.changes import BY_LEARNT_LOAD, Change
from bot.people.people import local_date, name_of, own_athlete, record
from bot.people.telling import answer, rewrite, say_to
from bot.plan import words as plan_words
from bot.plan.buttons import LEARNT_NO
from bot.plan.fit import offer_room
from bot.plan.limits import keep_limits
from bot.plan.next_load import flow
from bot.plan.next_load.flow import NEXT_LOAD
from bot.plan.planning import plan_misfits, use_plan
from bot.plan.prep import Prep, Version
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.traffic import TopicKind
from bot.store.tables.week import EventRow
from bot.store.working_out import worked_out
from bot.week.cases import weeks_before
from bot.week.load import (
    athlete_of,
    baseline_of,
    current_event,
    current_limits,
    current_plan,
    may_have,
    plan_days,
    plan_row,
    target_of,
)
from bot.words import common
from engine.planning.behind.next_load import ModelMisfit, NextLoad, NothingLearnt, next_load
from engine.values.athlete import Athlete
from engine.values.case import PastWeek
from engine.values.limits import Limits, plan_problems
from engine.values.plan import LOAD_DAYS, DayTarget, PeakPlan


@dataclass(frozen=True, slots=True)
class Offer:
    """A suggested load, the plan it was made from, and where it would go (None: no event yet)."""

    found: NextLoad
    made_from: PeakPlan
    shape: str
    event: EventRow | None


def make_offer(turn: Turn, profile: AthleteProfile) -> Offer:
    """Made from the plan that the coach has set for the next event, or else from the last week's.

    Raises NothingLearnt or ModelMisfit.
    """
    weeks = weeks_before(turn.session, profile.person_id, local_date(profile, turn.context))
    if not weeks:
        raise NothingLearnt("no week behind")
    athlete, event = athlete_of(profile), event_ahead(turn, profile)
    plan = current_plan(turn.session, event) if event is not None else None
    last = _last_event(turn.session, profile, weeks[-1])
    standing = event if plan is not None else last
    row = plan_row(turn.session, standing) if standing is not None else None
    limits = _limits(turn.session, event, athlete) or _limits(turn.session, last, athlete)
    made_from = plan or weeks[-1].as_it_went
    return Offer(
        found=worked_out(
            turn.session,
            next_load,
            athlete,
            baseline_of(profile),
            made_from,
            weeks,
            limits,
            target=target_of(event) if event is not None else None,
        ),
        made_from=made_from,
        shape=row.shape if row is not None else "",
        event=event,
    )


def learnt_g_per_kg(turn: Turn, profile: AthleteProfile) -> float | None:
    """The mean load day that is suggested (g/kg), for somebody who drafts; None where none is."""
    try:
        return make_offer(turn, profile).found.g_per_kg
    except (NothingLearnt, ModelMisfit):
        return None


def something_learnt(session: Session, profile: AthleteProfile) -> bool:
    """Whether a day lies behind on whose look there is a word."""
    if not may_have(session, EventRow, profile.person_id):
        return False
    return session.exec(_LOOKED_AT, params={"athlete": profile.person_id}).first() is not None


_LOOKED_AT = select(EventRow.id).where(
    EventRow.athlete_id == bindparam("athlete"),
    col(EventRow.active).is_(False),
    col(EventRow.look).is_not(None),
)


def _limits(session: Session, event: EventRow | None, athlete: Athlete) -> Limits | None:
    """The event's limits; None where there are none, or none that this body mass still allows."""
    try:
        return current_limits(session, event, athlete) if event is not None else None
    except ValueError:
        return None


def event_ahead(turn: Turn, profile: AthleteProfile) -> EventRow | None:
    """The event that is set, unless its day is over."""
    event = current_event(turn.session, profile.person_id)
    return event if event is not None and event.day >= local_date(profile, turn.context) else None


def _last_event(session: Session, profile: AthleteProfile, week: PastWeek) -> EventRow | None:
    query = (
        select(EventRow)
        .where(EventRow.athlete_id == profile.person_id, EventRow.day == week.day)
        .order_by(col(EventRow.id).desc())
    )
    return session.exec(query).first()


def load_begun(
    session: Session, profile: AthleteProfile, event: EventRow, context: Context
) -> bool:
    """Whether the first load day is here: from then on the mornings move single days."""
    plan = current_plan(session, event)
    first = plan.first_load_day if plan is not None else max(LOAD_DAYS)
    return local_date(profile, context) >= event.day - timedelta(days=first)


def offer(turn: Turn, coach: Person, profile: AthleteProfile, event: EventRow) -> None:
    """After the coach's verdict on a look: the next load, to take over or to leave."""
    try:
        made = make_offer(turn, profile)
    except NothingLearnt:
        return
    except ModelMisfit:
        _say_misfit(turn, coach, profile)
        return
    record(
        turn, profile.person_id, Change.NEXT_LOAD_SUGGESTED, by=None, event=event.id,
        look=made.found.look, g_per_kg=made.found.g_per_kg,
        was_g_per_kg=made.found.before_g_per_kg,
    )  # fmt: skip
    number = profile.person_id
    take = Button(flow.take_over_button(), LEARNT(number))
    leave = Button(common.cancel_button(), LEARNT_NO(number))
    say_to(
        turn,
        coach,
        _said(turn.session, coach, profile, made),
        buttons=[[take, leave]],
        how=Delivery(topic=Topic(TopicKind.LEARNT, id_of(coach), number)),
    )


def show(turn: OnAthlete) -> None:
    """The card's button, and the one under the offer: the plan with that load, to be used or left."""
    answer(turn)
    event = event_ahead(turn, turn.profile)
    if event is not None and load_begun(turn.session, turn.profile, event, turn.context):
        say_to(turn, turn.person, flow.load_has_begun())
        return
    try:
        made = make_offer(turn, turn.profile)
    except NothingLearnt:
        text = flow.nothing_learnt(
            _name(turn.session, turn.profile), self_coached=turn.self_coached
        )
        say_to(turn, turn.person, text)
    except ModelMisfit:
        _say_misfit(turn, turn.person, turn.profile)
    else:
        _ask_to_use(turn, turn.person, turn.profile, made)


def leave(turn: OnAthlete) -> None:
    """The other button under the offer."""
    answer(turn)
    record(turn, turn.profile.person_id, Change.NEXT_LOAD_LEFT, by=turn.person.id)
    rewrite(turn, common.cancelled())


def answered(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """Used, it passes the review and the limits as any plan does; left, nothing changes."""
    answers = question.answers
    profile = own_athlete(turn.session, coach, question.about)
    if profile is None or not answers["use"]:
        say_to(turn, coach, common.cancelled())
        if profile is not None:
            record(turn, profile.person_id, Change.NEXT_LOAD_LEFT, by=coach.id)
        return
    event = event_ahead(turn, profile)
    if (
        event is None
        or event.id != answers["_event"]
        or _plan_id(turn.session, event) != answers["_plan"]
        or load_begun(turn.session, profile, event, turn.context)
    ):
        say_to(turn, coach, flow.moved_on())
        return
    plan = PeakPlan(tuple(DayTarget(**day) for day in answers["_days"]))
    prep = Prep(turn, coach, profile, event)
    record(
        turn, profile.person_id, Change.NEXT_LOAD_TAKEN_OVER, by=coach.id,
        g_per_kg=answers["_g_per_kg"], was_g_per_kg=answers["_was_g_per_kg"],
    )  # fmt: skip
    limits, total_g = (
        current_limits(turn.session, event, athlete_of(profile)),
        answers["_load_total_g"],
    )
    if limits is not None and total_g is not None:
        limits = replace(limits, load_total_g=total_g)
        if not keep_limits(prep, plan, limits, how=BY_LEARNT_LOAD):
            return
    use_plan(prep, Version(plan, answers["_shape"], how=BY_LEARNT_LOAD))


def _ask_to_use(turn: Turn, coach: Person, profile: AthleteProfile, made: Offer) -> None:
    said, event, found = _said(turn.session, coach, profile, made), made.event, made.found
    if event is None:
        button = Button(common.event_button(), EVENT(profile.person_id))
        say_to(turn, coach, flow.set_event_first(said), buttons=[[button]])
        return
    standing = _plan_id(turn.session, event)
    if standing and not found.changes:
        say_to(turn, coach, flow.as_it_stands(said))
        return
    limits = current_limits(turn.session, event, athlete_of(profile))
    roomier = limits.with_room_for(found.plan) if limits is not None else None
    if roomier is None:
        problems = plan_misfits(turn.session, profile, event, found.plan)
    else:
        problems = plan_problems(found.plan, roomier)
    if problems:
        version = Version(found.plan, made.shape, how=BY_LEARNT_LOAD)
        offer_room(Prep(turn, coach, profile, event), version)
        return
    load_total_g = None
    if limits is not None and roomier is not None and roomier != limits:
        load_total_g = roomier.load_total_g
        said = f"{said}\n\n{flow.limits_move(limits.load_total_g, load_total_g)}"
    asking.open_question(
        turn, coach, NEXT_LOAD, subject_id=profile.person_id,
        answers={
            "_said": said,
            "_table": plan_words.plan_table(found.plan, event.day, profile.volume_unit),
            "_days": plan_days(found.plan),
            "_shape": made.shape,
            "_plan": standing,
            "_event": event.id,
            "_load_total_g": load_total_g,
            "_g_per_kg": found.g_per_kg,
            "_was_g_per_kg": found.before_g_per_kg,
        },
    )  # fmt: skip


def _plan_id(session: Session, event: EventRow) -> int:
    row = plan_row(session, event)
    return id_of(row) if row is not None else 0


def _said(session: Session, coach: Person, profile: AthleteProfile, made: Offer) -> str:
    self_coached = coach.id == profile.person_id
    return flow.suggestion(
        made.found, made.made_from, _name(session, profile), self_coached=self_coached
    )


def _say_misfit(turn: Turn, coach: Person, profile: AthleteProfile) -> None:
    text = flow.model_misfits(
        _name(turn.session, profile), self_coached=coach.id == profile.person_id
    )
    say_to(turn, coach, text)


def _name(session: Session, profile: AthleteProfile) -> str:
    return name_of(session, profile.person_id)
