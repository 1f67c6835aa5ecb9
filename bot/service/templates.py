"""A coach's own plan templates: saved off one athlete, scaled onto another; shared with nobody."""

from __future__ import annotations

from datetime import timedelta

from sqlmodel import Session, col, select

from bot.context import Context
from bot.flows.templates import TEMPLATE_NAME, TEMPLATE_USE
from bot.incoming import Incoming
from bot.messages import coach_plan as plan_words
from bot.messages import templates as words
from bot.outbox import Button, say
from bot.service import asking
from bot.service.people import get_person, local_date, own_athlete
from bot.service.planning import plan_misfits, say_problems, use_plan
from bot.service.tapping import answer, rewrite
from bot.service.week import (
    athlete_of,
    baseline_of,
    current_event,
    current_plan,
    plan_days,
    plan_row,
)
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.templates import TemplateRow
from bot.store.week import EventRow
from engine.plan import DayTarget, PeakPlan
from engine.template import relative, scaled

MOST_TEMPLATES = 30


def ask_to_save(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """A button under the plan: ask for a name."""
    answer(session, incoming, context)
    event = current_event(session, profile.person_id)
    if event is None or plan_row(session, event) is None:
        _say(session, coach, plan_words.plan_first(), context)
        return
    mine = templates_of(session, coach)
    if len(mine) >= MOST_TEMPLATES:
        _say(session, coach, words.too_many(MOST_TEMPLATES), context)
        return
    asking.open_question(
        session, coach, TEMPLATE_NAME, context=context, subject_id=profile.person_id,
        answers={"_names": [row.name.casefold() for row in mine]},
    )  # fmt: skip


def name_given(session: Session, coach: Person, question: OpenQuestion, context: Context) -> None:
    """Keep the plan as it is now under this name."""
    profile = own_athlete(session, coach, question.subject_id or 0)
    event = current_event(session, profile.person_id) if profile is not None else None
    plan = current_plan(session, event) if event is not None else None
    row = plan_row(session, event) if event is not None else None
    if profile is None or plan is None or row is None:
        _say(session, coach, plan_words.plan_first(), context)
        return
    name = question.answers["name"]
    if any(mine.name.casefold() == name.casefold() for mine in templates_of(session, coach)):
        _say(session, coach, words.name_taken(name), context)
        return
    session.add(
        TemplateRow(
            coach_id=coach.id or 0, name=name, shape=row.shape, made_at=context.now,
            days=relative(plan, athlete_of(profile), baseline_of(profile)),
        )
    )  # fmt: skip
    session.flush()
    _say(session, coach, words.saved(name), context)


def use_template(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The coach's templates as buttons; of the one tapped, what it makes for this athlete."""
    answer(session, incoming, context)
    name, own = get_person(session, profile.person_id).first_name, coach.id == profile.person_id
    event = current_event(session, profile.person_id)
    if event is None or not profile.baseline:
        text = plan_words.event_first() if profile.baseline else plan_words.no_measures_yet(name)
        _say(session, coach, text, context)
        return
    mine = templates_of(session, coach)
    if not mine:
        _say(session, coach, words.none_yet(), context)
        return
    if not rest:
        buttons = [[Button(row.name, f"c:tpl:{profile.person_id}:{row.id}")] for row in mine]
        text = words.which(name, own=own)
        say(session, chat_id=coach.chat_id, text=text, buttons=buttons, now=context.now)
        return
    row = _own_template(session, coach, rest[0])
    if row is None:
        _say(session, coach, words.gone(), context)
        return
    _show(session, coach, profile, event, row, context)


def use_answered(session: Session, coach: Person, question: OpenQuestion, context: Context) -> None:
    """The scaled plan is to be used, or left."""
    answers = question.answers
    profile = own_athlete(session, coach, question.subject_id or 0)
    if profile is None or not answers["use"]:
        _say(session, coach, words.left(), context)
        return
    event = current_event(session, profile.person_id)
    base = plan_row(session, event) if event is not None else None
    plan = PeakPlan(tuple(DayTarget(**day) for day in answers["_days"]))
    if (
        event is None
        or (base.id if base is not None else 0) != answers["_plan"]
        or plan != _with_days_over(session, profile, event, plan, context)
    ):
        _say(session, coach, words.moved_on(), context)
        return
    use_plan(session, coach, profile, event, plan, shape=answers["_shape"], context=context)


def list_templates(session: Session, coach: Person, _rest: str, context: Context) -> None:
    """/templates"""
    mine = templates_of(session, coach)
    if not mine:
        _say(session, coach, words.none_yet(), context)
        return
    say(
        session, chat_id=coach.chat_id, now=context.now,
        text=words.listed([words.row(row.name, row.made_at) for row in mine]),
        buttons=[[Button(words.delete_button(row.name), f"tpl:del:{row.id}")] for row in mine],
    )  # fmt: skip


def tapped(
    session: Session, coach: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Buttons "tpl:del:ID", "tpl:del-yes:ID", "tpl:keep:ID"."""
    action, number = (*arguments, "", "")[:2]
    answer(session, incoming, context)
    row = _own_template(session, coach, number)
    if row is None:
        _say(session, coach, words.gone(), context)
    elif action == "del":
        text = words.ask_delete(row.name)
        yes = Button(words.delete_yes_button(), f"tpl:del-yes:{row.id}")
        no = Button(words.keep_button(), f"tpl:keep:{row.id}")
        say(session, chat_id=coach.chat_id, text=text, buttons=[[yes, no]], now=context.now)
    elif action == "del-yes":
        session.delete(row)
        rewrite(session, incoming, words.deleted(row.name), context)
    else:
        rewrite(session, incoming, words.kept(), context)


def templates_of(session: Session, coach: Person) -> list[TemplateRow]:
    """The coach's own, by name."""
    query = select(TemplateRow).where(TemplateRow.coach_id == coach.id)
    return list(session.exec(query.order_by(col(TemplateRow.name))))


def _own_template(session: Session, coach: Person, number: str) -> TemplateRow | None:
    row = session.get(TemplateRow, int(number)) if number.isdigit() else None
    return row if row is not None and row.coach_id == coach.id else None


def _show(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    event: EventRow,
    row: TemplateRow,
    context: Context,
) -> None:
    made = scaled(row.days, athlete_of(profile), baseline_of(profile))
    plan = _with_days_over(session, profile, event, made, context)
    problems = plan_misfits(session, profile, event, plan)
    if problems:
        say_problems(session, coach, profile, problems, context)
        return
    base = plan_row(session, event)
    asking.open_question(
        session, coach, TEMPLATE_USE, context=context, subject_id=profile.person_id,
        answers={
            "_template": row.name, "_shape": row.shape,
            "_name": get_person(session, profile.person_id).first_name,
            "_own": coach.id == profile.person_id,
            "_table": plan_words.plan_table(plan, event.day, profile.volume_unit),
            "_days_over": plan != made,
            "_days": plan_days(plan), "_plan": base.id if base is not None else 0,
        },
    )  # fmt: skip


def _with_days_over(
    session: Session, profile: AthleteProfile, event: EventRow, plan: PeakPlan, context: Context
) -> PeakPlan:
    """The plan with the days that are over as they stand in the present one."""
    present, today = current_plan(session, event), local_date(profile, context)
    for target in present or ():
        if event.day - timedelta(days=target.days_out) < today:
            plan = plan.with_day(target)
    return plan


def _say(session: Session, coach: Person, text: str, context: Context) -> None:
    say(session, chat_id=coach.chat_id, text=text, now=context.now)
