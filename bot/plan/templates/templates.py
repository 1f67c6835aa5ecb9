"""A coach's own plan templates: saved off one athlete, scaled onto another; shared with nobody.

What belongs to one beside its plan (limits, when to ask, the spans of the stage day) is kept in shares
and spans, so that nobody's own figures or times go along.
"""

from __future__ import annotations

from datetime import datetime, time, timedelta
from typing import Any

from sqlmodel import Session, col, select

from bot.core.chat.cards import TEMPLATES, OfEvent, OfTemplate
from bot.core.chat.outbox import Button
from bot.core.turn import Act, OnAthlete, Turn
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.food import by_template
from bot.people.people import local_date, name_of
from bot.people.telling import answer, rewrite, say_to
from bot.plan import words as plan_words
from bot.plan.buttons import TEMPLATE, Do, OnTemplate
from bot.plan.planning import THE_ONE, meant_event, meant_for, naming, plan_misfits, use_plan
from bot.plan.prep import Prep, Version, asked_event, offer_room, plan_id
from bot.plan.templates import flow as flow_templates
from bot.plan.templates.flow import TEMPLATE_NAME, TEMPLATE_USE
from bot.store.base import id_of
from bot.store.tables.coach import TemplateRow
from bot.store.tables.event import StageRow
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow
from bot.week.load import (
    athlete_of,
    baseline_of,
    current_limits,
    current_plan,
    plan_days,
    plan_from,
    plan_row,
)
from bot.words.common import cancelled, keep_it_button
from engine.planning.drafting.template import relative, relative_limits, scaled
from engine.values.athlete import WeighIn
from engine.values.plan import PeakPlan

Habits = dict[str, Any]


def limit_shares(session: Session, profile: AthleteProfile, event: EventRow) -> dict[str, Any]:
    """The limits in force as shares; nothing where none are."""
    athlete = athlete_of(profile)
    limits = current_limits(session, event, athlete)
    return relative_limits(limits, athlete, baseline_of(profile)) if limits is not None else {}


def habits_of(session: Session, profile: AthleteProfile, event: EventRow) -> Habits:
    """When the athlete is asked, which day a morning sets, and how the stage day is laid out."""
    found: Habits = {
        "kind": event.kind,
        "asked_at": f"{profile.prompt_time:%H:%M}",
        "always_tomorrow": profile.always_tomorrow,
        "asks": _asks(event),
        "meals": by_template.held(session, profile),
    }
    row = session.exec(select(StageRow).where(StageRow.event_id == event.id)).first()
    return found | ({"stage": _spans(row.facts)} if row is not None else {})


def _asks(event: EventRow) -> Habits:
    """The look, and a weigh-in by height: any other cap is a class, and so one athlete's."""
    look, weigh_in = event.asks.get("look"), event.asks.get("weigh_in")
    found: Habits = {"look": look} if look else {}
    if weigh_in and weigh_in.get("over_height_kg") is not None:
        found["weigh_in"] = {key: weigh_in[key] for key in ("days_out", "at", "over_height_kg")}
    return found


def asks_of(template: TemplateRow, profile: AthleteProfile) -> Habits:
    """What an event of this athlete asks for by the template, as a row keeps it."""
    held: Habits = dict(template.habits.get("asks", {}))
    weigh_in = held.pop("weigh_in", None)
    if weigh_in is not None and profile.height_cm is not None:
        try:
            made = WeighIn.by_height(
                days_out=weigh_in["days_out"], at=time.fromisoformat(weigh_in["at"]),
                height_cm=profile.height_cm, over_height_kg=weigh_in["over_height_kg"],
            )  # fmt: skip
        except ValueError:
            return held  # no class at that height
        held["weigh_in"] = {"cap_kg": made.cap_kg, **weigh_in}
    return held


def _spans(facts: dict[str, Any]) -> Habits:
    """Minutes: the way there, and how long before the first class each duty is."""
    first = datetime.fromisoformat(facts["stages"][0])

    def before(key: str) -> float | None:
        if not facts.get(key):
            return None
        return (first - datetime.fromisoformat(facts[key])).total_seconds() / 60

    return {
        "travel_min": facts["travel_min"],
        "registration_before_min": before("registration"),
        "tan_before_min": before("tan"),
        "look_before_min": facts.get("look_before_min"),
    }


MOST_TEMPLATES = 30


def ask_to_save(turn: OnAthlete, pressed: OfEvent = THE_ONE) -> None:
    """A button under the plan: ask for a name."""
    answer(turn)
    event = meant_event(turn, pressed.event)
    if event is None or plan_row(turn.session, event) is None:
        say_to(turn, turn.person, plan_words.plan_first())
        return
    mine = templates_of(turn.session, turn.person)
    if len(mine) >= MOST_TEMPLATES:
        say_to(turn, turn.person, flow_templates.too_many(MOST_TEMPLATES))
        return
    asking.open_question(turn, turn.person, TEMPLATE_NAME, turn.profile.person_id, {
        "_names": [row.name.casefold() for row in mine], "_event": event.id,
    })  # fmt: skip


def name_given(prep: Prep, answers: Answers) -> None:
    """Keep the plan as it is now under this name."""
    turn, coach, profile, event = prep.turn, prep.coach, prep.profile, prep.event
    plan, row = current_plan(turn.session, event), plan_row(turn.session, event)
    if plan is None or row is None:
        say_to(turn, coach, plan_words.plan_first())
        return
    name = answers["name"]
    if any(mine.name.casefold() == name.casefold() for mine in templates_of(turn.session, coach)):
        say_to(turn, coach, flow_templates.name_taken(name))
        return
    turn.session.add(
        TemplateRow(
            coach_id=id_of(coach), name=name, shape=row.shape, made_at=turn.now,
            days=relative(plan, athlete_of(profile), baseline_of(profile)),
            limits=limit_shares(turn.session, profile, event),
            habits=habits_of(turn.session, profile, event),
        )
    )  # fmt: skip
    turn.session.flush()
    say_to(turn, coach, flow_templates.saved(name))


def use_template(turn: OnAthlete, pressed: OfTemplate) -> None:
    """The coach's templates as buttons; of the one tapped, what it makes for this athlete."""
    answer(turn)
    name, self_coached = name_of(turn.session, turn.profile.person_id), turn.self_coached
    event = meant_event(turn, pressed.event)
    if event is None or not turn.profile.baseline:
        text = (
            plan_words.event_first() if turn.profile.baseline else plan_words.no_measures_yet(name)
        )
        say_to(turn, turn.person, text)
        return
    mine = templates_of(turn.session, turn.person)
    if not mine:
        say_to(turn, turn.person, flow_templates.none_yet())
        return
    if pressed.template is None:
        who, ahead = turn.profile.person_id, naming(turn.session, turn.profile, event)
        buttons = [[Button(row.name, TEMPLATES(who, id_of(row), ahead))] for row in mine]
        text = flow_templates.which(name, self_coached=self_coached)
        say_to(turn, turn.person, text, buttons=buttons)
        return
    row = own_template(turn.session, turn.person, pressed.template)
    if row is None:
        say_to(turn, turn.person, flow_templates.gone())
        return
    _show(turn, turn.person, turn.profile, event, row)


def use_answered(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    """The scaled plan is to be used, or left."""
    if not answers["use"]:
        say_to(turn, coach, cancelled())
        return
    event, plan = asked_event(turn.session, profile, answers), plan_from(answers["_days"])
    if (
        event is None
        or plan_id(turn.session, event) != answers["_plan"]
        or plan != _with_days_over(turn, profile, event, plan)
    ):
        say_to(turn, coach, flow_templates.moved_on())
        return
    use_plan(Prep(turn, coach, profile, event), Version(plan, answers["_shape"]))


def list_templates(turn: Act) -> None:
    """/templates"""
    mine = templates_of(turn.session, turn.person)
    if not mine:
        say_to(turn, turn.person, flow_templates.none_yet())
        return
    say_to(
        turn,
        turn.person,
        flow_templates.listed([flow_templates.row(row.name, row.made_at) for row in mine]),
        buttons=[
            [Button(flow_templates.delete_button(row.name), TEMPLATE(Do.DELETE, id_of(row)))]
            for row in mine
        ],
    )


def tapped(turn: Act, pressed: OnTemplate) -> None:
    """The buttons under the list of templates."""
    answer(turn)
    row = own_template(turn.session, turn.person, pressed.template)
    if row is None:
        say_to(turn, turn.person, flow_templates.gone())
    elif pressed.do is Do.DELETE:
        text = flow_templates.ask_delete(row.name)
        yes = Button(flow_templates.delete_yes_button(), TEMPLATE(Do.DELETE_YES, id_of(row)))
        no = Button(keep_it_button(), TEMPLATE(Do.KEEP, id_of(row)))
        say_to(turn, turn.person, text, buttons=[[yes, no]])
    elif pressed.do is Do.DELETE_YES:
        turn.session.delete(row)
        rewrite(turn, flow_templates.deleted(row.name))
    else:
        rewrite(turn, flow_templates.kept())


def templates_of(session: Session, coach: Person) -> list[TemplateRow]:
    """The coach's own, by name."""
    query = select(TemplateRow).where(TemplateRow.coach_id == coach.id)
    return list(session.exec(query.order_by(col(TemplateRow.name))))


def own_template(session: Session, coach: Person, number: int) -> TemplateRow | None:
    """One of the coach's own by its number; None for any other."""
    row = session.get(TemplateRow, number)
    return row if row is not None and row.coach_id == coach.id else None


def _show(
    turn: Turn, coach: Person, profile: AthleteProfile, event: EventRow, row: TemplateRow
) -> None:
    made = scaled(row.days, athlete_of(profile), baseline_of(profile))
    plan = _with_days_over(turn, profile, event, made)
    if plan_misfits(turn.session, profile, event, plan):
        offer_room(Prep(turn, coach, profile, event), Version(plan, row.shape))
        return
    asking.open_question(turn, coach, TEMPLATE_USE, profile.person_id, {
        "_template": row.name, "_shape": row.shape,
        "_name": name_of(turn.session, profile.person_id),
        "_own": coach.id == profile.person_id,
        "_table": plan_words.plan_table(plan, event.day, profile.volume_unit),
        "_days_over": plan != made,
        "_days": plan_days(plan), "_plan": plan_id(turn.session, event),
        "_event": event.id, "_for": meant_for(turn.session, profile, event),
    })  # fmt: skip


def _with_days_over(
    turn: Turn, profile: AthleteProfile, event: EventRow, plan: PeakPlan
) -> PeakPlan:
    """The plan with the days that are over as they stand in the present one."""
    present, today = current_plan(turn.session, event), local_date(profile, turn.context)
    for target in present or ():
        if event.day - timedelta(days=target.days_out) < today:
            plan = plan.with_day(target)
    return plan
