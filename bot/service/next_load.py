"""The load of the next plan as earlier weeks suggest it: offered to the coach, never put in force."""

from __future__ import annotations

from dataclasses import replace

from sqlmodel import Session

from bot.context import Context
from bot.flows.next_load import NEXT_LOAD
from bot.incoming import Incoming
from bot.messages import coach as card_words
from bot.messages import coach_plan as plan_words
from bot.messages import next_load as words
from bot.outbox import Button, say
from bot.service import asking
from bot.service.learnt import Offer, event_ahead, load_begun, make_offer
from bot.service.limit_setting import keep_limits
from bot.service.people import get_person, own_athlete, record
from bot.service.planning import plan_misfits, say_problems, use_plan
from bot.service.tapping import answer, rewrite
from bot.service.undoing import BY_LEARNT_LOAD
from bot.service.week import athlete_of, current_limits, plan_days, plan_row
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.week import EventRow
from engine.limits import plan_problems
from engine.next_load import ModelMisfit, NothingLearnt
from engine.plan import DayTarget, PeakPlan


def offer(
    session: Session, coach: Person, profile: AthleteProfile, event: EventRow, context: Context
) -> None:
    """After the coach's word on a look: the next load, to take over or to leave."""
    try:
        made = make_offer(session, profile, context)
    except NothingLearnt:
        return
    except ModelMisfit:
        _say_misfit(session, coach, profile, context)
        return
    record(
        session, profile.person_id, "next load suggested", context, by=None, event=event.id,
        look=made.found.look, g_per_kg=made.found.g_per_kg,
        was_g_per_kg=made.found.before_g_per_kg,
    )  # fmt: skip
    number = profile.person_id
    take = Button(words.take_over_button(), f"c:learnt:{number}")
    leave = Button(words.leave_button(), f"c:learnt-no:{number}")
    say(
        session, chat_id=coach.chat_id, now=context.now, topic=f"learnt:{coach.id}:{number}",
        text=_said(session, coach, profile, made), buttons=[[take, leave]],
    )  # fmt: skip


def show(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The card's button, and the one under the offer: the plan with that load, to be used or left."""
    answer(session, incoming, context)
    event = event_ahead(session, profile, context)
    if event is not None and load_begun(profile, event, context):
        say(session, chat_id=coach.chat_id, text=words.load_has_begun(), now=context.now)
        return
    try:
        made = make_offer(session, profile, context)
    except NothingLearnt:
        text = words.nothing_learnt(_name(session, profile), own=coach.id == profile.person_id)
        say(session, chat_id=coach.chat_id, text=text, now=context.now)
    except ModelMisfit:
        _say_misfit(session, coach, profile, context)
    else:
        _ask_to_use(session, coach, profile, made, context)


def leave(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The other button under the offer."""
    answer(session, incoming, context)
    record(session, profile.person_id, "next load left", context, by=coach.id)
    rewrite(session, incoming, words.left(), context)


def answered(session: Session, coach: Person, question: OpenQuestion, context: Context) -> None:
    """Used, it passes the review and the limits as any plan does; left, nothing changes."""
    answers = question.answers
    profile = own_athlete(session, coach, question.subject_id or 0)
    if profile is None or not answers["use"]:
        say(session, chat_id=coach.chat_id, text=words.left(), now=context.now)
        if profile is not None:
            record(session, profile.person_id, "next load left", context, by=coach.id)
        return
    event = event_ahead(session, profile, context)
    if (
        event is None
        or event.id != answers["_event"]
        or _plan_id(session, event) != answers["_plan"]
        or load_begun(profile, event, context)
    ):
        say(session, chat_id=coach.chat_id, text=words.moved_on(), now=context.now)
        return
    plan = PeakPlan(tuple(DayTarget(**day) for day in answers["_days"]))
    record(
        session, profile.person_id, "next load taken over", context, by=coach.id,
        g_per_kg=answers["_g_per_kg"], was_g_per_kg=answers["_was_g_per_kg"],
    )  # fmt: skip
    limits, total_g = current_limits(session, event, athlete_of(profile)), answers["_load_total_g"]
    if limits is not None and total_g is not None:
        limits = replace(limits, load_total_g=total_g)
        if not keep_limits(
            session, coach, profile, event, plan, limits, context, how=BY_LEARNT_LOAD
        ):  # fmt: skip
            return
    use_plan(
        session, coach, profile, event, plan, shape=answers["_shape"], context=context,
        how=BY_LEARNT_LOAD,
    )  # fmt: skip


def _ask_to_use(
    session: Session, coach: Person, profile: AthleteProfile, made: Offer, context: Context
) -> None:
    said, event, found = _said(session, coach, profile, made), made.event, made.found
    if event is None:
        button = Button(card_words.event_button(), f"c:event:{profile.person_id}")
        say(
            session, chat_id=coach.chat_id, text=words.set_event_first(said), now=context.now,
            buttons=[[button]],
        )  # fmt: skip
        return
    standing = _plan_id(session, event)
    if standing and not found.changes:
        say(session, chat_id=coach.chat_id, text=words.as_it_stands(said), now=context.now)
        return
    limits = current_limits(session, event, athlete_of(profile))
    roomier = limits.with_room_for(found.plan) if limits is not None else None
    if roomier is None:
        problems = plan_misfits(session, profile, event, found.plan)
    else:
        problems = plan_problems(found.plan, roomier)
    if problems:
        say_problems(session, coach, profile, problems, context)
        return
    load_total_g = None
    if limits is not None and roomier is not None and roomier != limits:
        load_total_g = roomier.load_total_g
        said = f"{said}\n\n{words.limits_move(limits.load_total_g, load_total_g)}"
    asking.open_question(
        session, coach, NEXT_LOAD, context=context, subject_id=profile.person_id,
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
    return row.id or 0 if row is not None else 0


def _said(session: Session, coach: Person, profile: AthleteProfile, made: Offer) -> str:
    own = coach.id == profile.person_id
    return words.suggestion(made.found, made.made_from, _name(session, profile), own=own)


def _say_misfit(session: Session, coach: Person, profile: AthleteProfile, context: Context) -> None:
    text = words.model_misfits(_name(session, profile), own=coach.id == profile.person_id)
    say(session, chat_id=coach.chat_id, text=text, now=context.now)


def _name(session: Session, profile: AthleteProfile) -> str:
    return get_person(session, profile.person_id).first_name
