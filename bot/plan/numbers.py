"""The coach looks at the plan, and changes any number of any day."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from bot.core.chat.cards import (
    CARD,
    DRAFT,
    EVENT,
    LIMITS,
    PLAN,
    PLAN_SHEET,
    SEASON,
    SETUP,
    TEMPLATES,
    OfEvent,
)
from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import OnAthlete, Turn
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.people.coach_settings import own_moment
from bot.people.people import local_date, name_of
from bot.people.telling import answer, rewrite, say_to
from bot.plan import words
from bot.plan.buttons import DAY, NUMBER, REVIEW, TEMPLATE_SAVE, TOTAL, OfDay, OfNumber
from bot.plan.flow import PLAN_NUMBER
from bot.plan.planning import (
    THE_ONE,
    days_follow_plan,
    meant_event,
    meant_for,
    naming,
    set_plan,
    week_changed,
)
from bot.plan.prep import Figure, Prep, Version
from bot.plan.review import flow as flow_review
from bot.plan.review.gate import ask_first, look_over, new_findings
from bot.plan.templates import flow as flow_templates
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow
from bot.week.load import baseline_of, current_plan, plan_row
from bot.words import common, phases
from engine.planning.drafting.template import as_ever, renamed
from engine.values.plan import MOST_LOAD_DAYS, PLAN_DAYS, PeakPlan


def show_plan(turn: OnAthlete, pressed: OfEvent = THE_ONE) -> None:
    """The plan as a table, a button a day; where there is none, what comes first.

    With an event named, the plan of one that still waits.
    """
    answer(turn)
    event = meant_event(turn, pressed.event)
    row = plan_row(turn.session, event) if event is not None else None
    if event is None or row is None:
        first_things_first(turn, turn.person, turn.profile, event)
        return
    plan = current_plan(turn.session, event)
    assert plan is not None
    plan = as_ever(plan, baseline_of(turn.profile))
    text = words.plan_view(
        name_of(turn.session, turn.profile.person_id),
        words.plan_table(plan, event.day, turn.profile.volume_unit),
        own_moment(turn.session, turn.person, turn.profile, row.set_at),
        self_coached=turn.self_coached,
    )
    if waits := meant_for(turn.session, turn.profile, event):
        rewrite(turn, f"{waits}\n\n{text}", _buttons_ahead(turn.profile, event, plan))
    else:
        rewrite(turn, text, _plan_buttons(turn.profile))


def _buttons_ahead(profile: AthleteProfile, event: EventRow, plan: PeakPlan) -> Buttons:
    """What can be done with the plan of an event that still waits: any number of any day too."""
    who, number = profile.person_id, id_of(event)
    days = [Button(words.day_button(day.days_out), DAY(who, day.days_out, number)) for day in plan]
    return [
        days[:4],
        days[4:],
        [
            Button(flow_review.review_button(), REVIEW(who, number)),
            Button(words.new_draft_button(), DRAFT(who, number)),
            Button(words.limits_button(), LIMITS(who, number)),
            Button(common.step_back_button(), SEASON(who)),
        ],
        _files_and_templates(who, number),
    ]


def show_day(turn: OnAthlete, pressed: OfDay) -> None:
    """One day of the plan, a button a number."""
    found = _day_of(turn, pressed.days_out, pressed.event)
    if found is None:
        show_plan(turn)
        return
    event, plan, days_out = found
    target = as_ever(plan, baseline_of(turn.profile)).day(days_out)
    assert target is not None
    answer(turn)
    day = event.day - timedelta(days=days_out)
    keys = [key for key in words.FIELDS if key != "phase" or days_out > 0]
    who, naming_it = turn.profile.person_id, naming(turn.session, turn.profile, event)
    buttons = [
        [
            Button(words.field_button(key), NUMBER(who, days_out, key, naming_it))
            for key in keys[i : i + 3]
        ]
        for i in range(0, len(keys), 3)
    ]
    back = [
        Button(flow_review.total_button(), TOTAL(who, days_out, naming_it)),
        Button(common.step_back_button(), PLAN(who, naming_it)),
    ]
    text = words.day_view(target, day, turn.profile.volume_unit)
    rewrite(turn, text, [*buttons, back])


def ask_number(turn: OnAthlete, pressed: OfNumber) -> None:
    """A button under a day: ask for the new number."""
    found, key = _day_of(turn, pressed.days_out, pressed.event), pressed.field
    if found is None or key is None or key not in words.FIELDS:
        show_plan(turn)
        return
    event, plan, days_out = found
    if event.day - timedelta(days=days_out) < local_date(turn.profile, turn.context):
        answer(turn, words.day_over())
        return
    answer(turn)
    value = getattr(as_ever(plan, baseline_of(turn.profile)).day(days_out), key)
    _open_number(Prep(turn, turn.person, turn.profile, event), Figure(days_out, key), value)


def number_given(prep: Prep, answers: Answers) -> None:
    """The number is there, and the plan is as it was asked about or newer."""
    set_number(prep, Figure(answers["_days_out"], answers["_field"]), answers["value"])


def set_number(prep: Prep, figure: Figure, value: object) -> None:
    """A new version of the event's plan with this one number changed."""
    turn, coach, profile, event = prep.turn, prep.coach, prep.profile, prep.event
    days_out, key = figure
    plan, row = current_plan(turn.session, event), plan_row(turn.session, event)
    target = plan.day(days_out) if plan is not None else None
    if plan is None or row is None or target is None:
        say_to(turn, coach, words.plan_first())
        return
    day = event.day - timedelta(days=days_out)
    if day < local_date(profile, turn.context):
        say_to(turn, coach, words.day_over())
        return
    habits = baseline_of(profile)
    plan = as_ever(plan, habits)
    target = plan.day(days_out) or target
    try:
        changed = plan.with_day(replace(target, **{key: value}))  # type: ignore[arg-type]
    except ValueError:  # the one thing that a number alone can't break: how many days load
        say_to(turn, coach, phases.too_many_load_days(MOST_LOAD_DAYS))
        return
    if key == "carb_g":
        changed = renamed(changed, days_out, habits)
    version = Version(changed, row.shape)
    if ask_first(prep, version, changed=figure):
        return
    if not set_plan(prep, version):
        # What was typed did not fit; the question stays, so that another figure can be sent.
        _open_number(prep, figure, getattr(target, key))
        return
    number_is_live(prep, plan, changed, figure)


def number_is_live(
    prep: Prep, before: PeakPlan, changed: PeakPlan, figure: Figure, *, noted: str = ""
) -> None:
    """What follows from one changed number: it is said with what is new to the review."""
    turn, coach, profile, event = prep.turn, prep.coach, prep.profile, prep.event
    days_out, key = figure
    target = changed.day(days_out)
    assert target is not None
    value = words.field_value(key, getattr(target, key), profile.volume_unit)
    who, naming_it = profile.person_id, naming(turn.session, profile, event)
    parts = [words.field_set(key, days_out, value), noted]
    was = before.day(days_out)
    if key == "carb_g" and was is not None and target.phase is not was.phase:
        parts.append(phases.counts_as(target))
    if not noted:
        found = new_findings(
            look_over(turn, profile, event, changed), look_over(turn, profile, event, before)
        )
        parts.append(flow_review.findings_text(found, profile.volume_unit))
    say_to(
        turn,
        coach,
        "\n\n".join(part for part in parts if part),
        buttons=[
            [
                Button(words.day_button(days_out), DAY(who, days_out, naming_it)),
                Button(words.see_plan_button(), PLAN(who, naming_it)),
            ]
        ],
    )
    if naming_it is not None:
        return  # it waits: no day of now follows from it
    if key == "carb_g":
        day = event.day - timedelta(days=days_out)
        days_follow_plan(turn, profile, only=day)
    week_changed(turn, coach, profile, because="plan-changed", was_complete=True)


def meant_plan(turn: OnAthlete, pressed: OfEvent) -> tuple[EventRow, PeakPlan] | None:
    """The event that a button names, and its plan; where one lacks, what has to come first is said."""
    event = meant_event(turn, pressed.event)
    plan = current_plan(turn.session, event) if event is not None else None
    if event is None or plan is None:
        first_things_first(turn, turn.person, turn.profile, event)
        return None
    return event, plan


def first_things_first(
    turn: Turn, coach: Person, profile: AthleteProfile, event: EventRow | None
) -> None:
    """Say what has to be set before there is anything to see here, with its button."""
    if event is None:
        button = Button(common.event_button(), EVENT(profile.person_id))
        text = words.event_first()
    else:
        number, ahead = profile.person_id, naming(turn.session, profile, event)
        button = Button(common.draft_plan_button(), DRAFT(number, ahead))
        text = words.plan_first()
    buttons = [button, Button(common.setup_button(), SETUP(profile.person_id))]
    if event is not None:
        buttons.append(
            Button(flow_templates.use_button(), TEMPLATES(profile.person_id, None, ahead))
        )
    say_to(turn, coach, text, buttons=[buttons])


def _open_number(prep: Prep, figure: Figure, value: float | str | None) -> None:
    asking.open_question(prep.turn, prep.coach, PLAN_NUMBER, prep.profile.person_id, {
        "_field": figure.key,
        "_days_out": figure.days_out,
        "_value": value,
        "_volume_unit": prep.profile.volume_unit,
        "_event": prep.event.id,
    })  # fmt: skip


def _plan_buttons(profile: AthleteProfile) -> Buttons:
    days = [
        Button(words.day_button(days_out), DAY(profile.person_id, days_out))
        for days_out in PLAN_DAYS
    ]
    return [
        days[:4],
        days[4:],
        [
            Button(flow_review.review_button(), REVIEW(profile.person_id)),
            Button(words.new_draft_button(), DRAFT(profile.person_id)),
            Button(words.limits_button(), LIMITS(profile.person_id)),
            Button(common.step_back_button(), CARD(profile.person_id)),
        ],
        _files_and_templates(profile.person_id, None),
    ]


def _files_and_templates(who: int, event: int | None) -> list[Button]:
    return [
        Button(common.sheet_button(), PLAN_SHEET(who, None, event)),
        Button(flow_templates.save_button(), TEMPLATE_SAVE(who, event)),
        Button(flow_templates.use_button(), TEMPLATES(who, None, event)),
    ]


def _day_of(
    turn: OnAthlete, days_out: int | None, named: int | None
) -> tuple[EventRow, PeakPlan, int] | None:
    """The event, its plan and the day out that a button names; None where they are not there."""
    event = meant_event(turn, named)
    plan = current_plan(turn.session, event) if event is not None else None
    if event is None or plan is None or days_out is None or plan.day(days_out) is None:
        return None
    return event, plan, days_out
