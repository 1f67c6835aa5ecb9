"""The load of the next plan as earlier weeks suggest it: offered to the coach, never put in force."""

from __future__ import annotations

from dataclasses import replace

from sqlmodel import Session

from bot.core.chat.cards import EVENT, LEARNT
from bot.core.chat.outbox import Button, Delivery, Topic
from bot.core.turn import OnAthlete, Turn
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.people.changes import BY_LEARNT_LOAD, Change
from bot.people.people import name_of, record
from bot.people.telling import answer, rewrite, say_to
from bot.plan import words as plan_words
from bot.plan.buttons import LEARNT_NO
from bot.plan.limits import keep_limits
from bot.plan.next_load import flow
from bot.plan.next_load.flow import NEXT_LOAD
from bot.plan.next_load.learnt import Offer, event_ahead, load_begun, make_offer
from bot.plan.planning import plan_misfits, use_plan
from bot.plan.prep import Prep, Version, offer_room, plan_id
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.traffic import TopicKind
from bot.store.tables.week import EventRow
from bot.week.load import athlete_of, current_limits, plan_days, plan_from
from bot.words import common
from engine.planning.behind.next_load import ModelMisfit, NothingLearnt
from engine.values.limits import plan_problems


def offer(turn: Turn, coach: Person, profile: AthleteProfile, event: EventRow) -> None:
    """After the coach's verdict on a look: the next load, to take over or to leave."""
    try:
        made = make_offer(turn, profile)
    except NothingLearnt:
        return
    except ModelMisfit:
        _say_misfit(turn, coach, profile)
        return
    record(turn, profile.person_id, by=None, what=Change.NEXT_LOAD_SUGGESTED(
        event=id_of(event), look=made.found.look, g_per_kg=made.found.g_per_kg,
        was_g_per_kg=made.found.before_g_per_kg,
    ))  # fmt: skip
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
    record(turn, turn.profile.person_id, Change.NEXT_LOAD_LEFT(), by=turn.person.id)
    rewrite(turn, common.cancelled())


def answered(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    """Used, it passes the review and the limits as any plan does; left, nothing changes."""
    if not answers["use"]:
        say_to(turn, coach, common.cancelled())
        record(turn, profile.person_id, Change.NEXT_LOAD_LEFT(), by=coach.id)
        return
    event = event_ahead(turn, profile)
    if (
        event is None
        or event.id != answers["_event"]
        or plan_id(turn.session, event) != answers["_plan"]
        or load_begun(turn.session, profile, event, turn.context)
    ):
        say_to(turn, coach, flow.moved_on())
        return
    plan = plan_from(answers["_days"])
    prep = Prep(turn, coach, profile, event)
    record(turn, profile.person_id, by=coach.id, what=Change.NEXT_LOAD_TAKEN_OVER(
        g_per_kg=answers["_g_per_kg"], was_g_per_kg=answers["_was_g_per_kg"],
    ))  # fmt: skip
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
    standing = plan_id(turn.session, event)
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
    asking.open_question(turn, coach, NEXT_LOAD, profile.person_id, {
        "_said": said,
        "_table": plan_words.plan_table(found.plan, event.day, profile.volume_unit),
        "_days": plan_days(found.plan),
        "_shape": made.shape,
        "_plan": standing,
        "_event": event.id,
        "_load_total_g": load_total_g,
        "_g_per_kg": found.g_per_kg,
        "_was_g_per_kg": found.before_g_per_kg,
    })  # fmt: skip


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
