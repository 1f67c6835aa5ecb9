"""A number of the plan set by one typed line, without going through the plan's buttons."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from sqlmodel import Session

from bot.context import Context
from bot.dialogue import Unread
from bot.flows.coach_number import TypedNumber, read_number
from bot.flows.coach_plan import PLAN_NUMBER
from bot.incoming import Incoming
from bot.messages import coach_plan as words
from bot.messages.refusals import refusal_text
from bot.outbox import Button, say
from bot.service import asking
from bot.service.people import get_person, local_date
from bot.service.plan_numbers import ask_number, first_things_first, set_number
from bot.service.rights import athletes_seen_by
from bot.service.tapping import answer
from bot.service.week import current_event, current_plan
from bot.store.people import AthleteProfile, OpenQuestion, Person
from engine.units import Refusal


def heard(
    session: Session,
    coach: Person,
    text: str,
    flows: asking.Flows,
    context: Context,
    *,
    asked: Sequence[OpenQuestion],
) -> bool:
    """Whether the text was such a line; it is none where the open question can take it."""
    typed = read_number(text)
    if typed is None or (asked and _answers(asked[-1], text, flows, context)):
        return False
    seen = athletes_seen_by(session, coach)
    if not seen:
        return False
    meant = [
        one for one in seen if typed.name is None or _called(session, one) == _plain(typed.name)
    ]
    if not meant:
        text = words.nobody_called(typed.name or "")
        say(session, chat_id=coach.chat_id, text=text, now=context.now)
    elif len(meant) == 1:
        _set(session, coach, meant[0], typed, context)
    else:
        _ask_whose(session, coach, meant, typed, context)
    return True


def set_tapped(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """Buttons "c:set:ATHLETE:DAYS_OUT:KEY:VALUE" under the question whose number it is."""
    number, key, value = (*rest, "", "", "")[:3]
    if not number.isdigit() or key not in words.FIELDS or not value:
        ask_number(session, coach, profile, rest, incoming, context)
        return
    answer(session, incoming, context)
    _set(session, coach, profile, TypedNumber(None, int(number), key, value), context)


def _set(
    session: Session, coach: Person, profile: AthleteProfile, typed: TypedNumber, context: Context
) -> None:
    event = current_event(session, profile.person_id)
    plan = current_plan(session, event) if event is not None else None
    target = plan.day(typed.days_out) if plan is not None else None
    if event is None or target is None:
        first_things_first(session, coach, profile, event, context)
        return
    if event.day - timedelta(days=typed.days_out) < local_date(profile, context):
        say(session, chat_id=coach.chat_id, text=words.day_over(), now=context.now)
        return
    about = {
        "_field": typed.key, "_days_out": typed.days_out, "_volume_unit": profile.volume_unit,
        "_value": getattr(target, typed.key),
    }  # fmt: skip
    try:
        value = PLAN_NUMBER.steps[0].read(typed.value, about)
    except Refusal as refusal:
        say(session, chat_id=coach.chat_id, text=refusal_text(refusal), now=context.now)
    except Unread as unread:
        say(session, chat_id=coach.chat_id, text=str(unread), now=context.now)
    else:
        set_number(session, coach, profile, typed.days_out, typed.key, value, context)


def _ask_whose(
    session: Session,
    coach: Person,
    meant: Sequence[AthleteProfile],
    typed: TypedNumber,
    context: Context,
) -> None:
    keys = [
        Button(
            get_person(session, one.person_id).first_name,
            f"c:set:{one.person_id}:{typed.days_out}:{typed.key}:{typed.value}",
        )
        for one in meant
    ]
    text = words.ask_whose_number(typed.days_out, typed.key, typed.value)
    rows = [keys[i : i + 3] for i in range(0, len(keys), 3)]
    say(session, chat_id=coach.chat_id, text=text, buttons=rows, now=context.now)


def _answers(question: OpenQuestion, text: str, flows: asking.Flows, context: Context) -> bool:
    step = flows[question.flow].flow.step(question.step)
    if step is None:
        return False
    try:
        asking.read_answer(step, text, question, context)
    except Unread:
        return False
    return True


def _called(session: Session, profile: AthleteProfile) -> str:
    return _plain(get_person(session, profile.person_id).first_name)


def _plain(name: str) -> str:
    return " ".join(name.split()).casefold()
