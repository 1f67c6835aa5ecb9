"""A number of the plan set by one typed line, without going through the plan's buttons."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from sqlmodel import Session

from bot.core.chat.outbox import Button
from bot.core.turn import Context, OnAthlete, Turn
from bot.dialogue import asking
from bot.dialogue.flow import InvalidAnswer
from bot.people.people import athletes_seen_by, local_date, name_of
from bot.people.telling import say_to
from bot.plan import words
from bot.plan.buttons import SET_NUMBER, OfNumber, SetNumber
from bot.plan.flow import PLAN_NUMBER
from bot.plan.flow_number import TypedNumber, read_number
from bot.plan.numbers import ask_number, first_things_first, set_number
from bot.plan.prep import Figure, Prep
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.week.load import current_event, current_plan
from bot.words.invalid_answers import parse_error_text
from engine.written.units import ParseError


def heard(
    turn: Turn, coach: Person, text: str, flows: asking.Flows, *, asked: Sequence[OpenQuestion]
) -> bool:
    """Whether the text was such a line; it is none where the open question can take it."""
    typed = read_number(text)
    if typed is None or (asked and _answers(asked[-1], text, flows, turn.context)):
        return False
    seen = athletes_seen_by(turn.session, coach)
    if not seen:
        return False
    meant = [
        one
        for one in seen
        if typed.name is None or _called(turn.session, one) == _plain(typed.name)
    ]
    if not meant:
        text = words.nobody_called(typed.name or "")
        say_to(turn, coach, text)
    elif len(meant) == 1:
        _set(turn, coach, meant[0], typed)
    else:
        _ask_whose(turn, coach, meant, typed)
    return True


def set_tapped(turn: OnAthlete, pressed: SetNumber) -> None:
    """The buttons under the question whose number it is."""
    days_out, key, value = pressed
    if days_out is None or key is None or key not in words.FIELDS or value is None:
        ask_number(turn, OfNumber(days_out, key))
        return
    _set(turn, turn.person, turn.profile, TypedNumber(None, days_out, key, value))


def _set(turn: Turn, coach: Person, profile: AthleteProfile, typed: TypedNumber) -> None:
    event = current_event(turn.session, profile.person_id)
    plan = current_plan(turn.session, event) if event is not None else None
    target = plan.day(typed.days_out) if plan is not None else None
    if event is None or target is None:
        first_things_first(turn, coach, profile, event)
        return
    if event.day - timedelta(days=typed.days_out) < local_date(profile, turn.context):
        say_to(turn, coach, words.day_over())
        return
    about = {
        "_field": typed.key, "_days_out": typed.days_out, "_volume_unit": profile.volume_unit,
        "_value": getattr(target, typed.key),
    }  # fmt: skip
    try:
        value = PLAN_NUMBER.steps[0].answer(typed.value, about)
    except ParseError as error:
        say_to(turn, coach, parse_error_text(error))
    except InvalidAnswer as unread:
        say_to(turn, coach, str(unread))
    else:
        figure = Figure(typed.days_out, typed.key)
        set_number(Prep(turn, coach, profile, event), figure, value)


def _ask_whose(
    turn: Turn, coach: Person, meant: Sequence[AthleteProfile], typed: TypedNumber
) -> None:
    keys = [
        Button(
            name_of(turn.session, one.person_id),
            SET_NUMBER(one.person_id, typed.days_out, typed.key, typed.value),
        )
        for one in meant
    ]
    text = words.ask_whose_number(typed.days_out, typed.key, typed.value)
    rows = [keys[i : i + 3] for i in range(0, len(keys), 3)]
    say_to(turn, coach, text, buttons=rows)


def _answers(question: OpenQuestion, text: str, flows: asking.Flows, context: Context) -> bool:
    step = flows[question.flow].flow.step(question.step)
    if step is None:
        return False
    try:
        asking.read_answer(step, text, question, context)
    except InvalidAnswer:
        return False
    return True


def _called(session: Session, profile: AthleteProfile) -> str:
    return _plain(name_of(session, profile.person_id))


def _plain(name: str) -> str:
    return " ".join(name.split()).casefold()
