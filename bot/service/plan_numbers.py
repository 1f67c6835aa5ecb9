"""The coach looks at the plan, and changes any number of any day."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from sqlmodel import Session

from bot.context import Context
from bot.flows.coach_plan import PLAN_NUMBER
from bot.incoming import Incoming
from bot.messages import coach as card_words
from bot.messages import coach_figures as figures
from bot.messages import coach_plan as words
from bot.messages import plan_review as review_words
from bot.messages import sheets as sheet_words
from bot.messages import templates as template_words
from bot.outbox import Button, Buttons, say
from bot.service import asking
from bot.service.people import get_person, local_date, own_athlete
from bot.service.plan_gate import ask_first, look_over, new_findings
from bot.service.planning import (
    days_follow_plan,
    set_plan,
    week_changed,
)
from bot.service.tapping import answer, rewrite
from bot.service.week import (
    current_event,
    current_plan,
    plan_row,
)
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.week import EventRow
from engine.plan import PLAN_DAYS, PeakPlan


def show_plan(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The plan as a table, a button a day; where there is none, what comes first."""
    answer(session, incoming, context)
    event = current_event(session, profile.person_id)
    row = plan_row(session, event) if event is not None else None
    if event is None or row is None:
        first_things_first(session, coach, profile, event, context)
        return
    plan = current_plan(session, event)
    assert plan is not None
    text = words.plan_view(
        get_person(session, profile.person_id).first_name,
        words.plan_table(plan, event.day, profile.volume_unit),
        figures.moment(row.set_at, profile.zone),
        own=coach.id == profile.person_id,
    )
    rewrite(session, incoming, text, context, _plan_buttons(profile))


def show_day(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """One day of the plan, a button a number."""
    found = _day_of(session, profile, rest)
    if found is None:
        show_plan(session, coach, profile, [], incoming, context)
        return
    event, plan, days_out = found
    target = plan.day(days_out)
    assert target is not None
    answer(session, incoming, context)
    day = event.day - timedelta(days=days_out)
    keys = list(words.FIELDS)
    buttons = [
        [
            Button(words.field_button(key), f"c:num:{profile.person_id}:{days_out}:{key}")
            for key in keys[i : i + 3]
        ]
        for i in range(0, len(keys), 3)
    ]
    back = [
        Button(review_words.total_button(), f"c:kcal:{profile.person_id}:{days_out}"),
        Button(words.back_button(), f"c:plan:{profile.person_id}"),
    ]
    text = words.day_view(target, day, profile.volume_unit)
    rewrite(session, incoming, text, context, [*buttons, back])


def ask_number(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """A button under a day: ask for the new number."""
    found, key = _day_of(session, profile, rest), (rest[1] if len(rest) > 1 else "")
    if found is None or key not in words.FIELDS:
        show_plan(session, coach, profile, [], incoming, context)
        return
    event, plan, days_out = found
    if event.day - timedelta(days=days_out) < local_date(profile, context):
        answer(session, incoming, context, words.day_over())
        return
    answer(session, incoming, context)
    value = getattr(plan.day(days_out), key)
    _open_number(session, coach, profile, days_out, key, value, context)


def number_given(session: Session, coach: Person, question: OpenQuestion, context: Context) -> None:
    """The number is there, and the plan is as it was asked about or newer."""
    profile = own_athlete(session, coach, question.subject_id or 0)
    if profile is None:
        say(session, chat_id=coach.chat_id, text=words.plan_first(), now=context.now)
        return
    key, days_out = question.answers["_field"], question.answers["_days_out"]
    set_number(session, coach, profile, days_out, key, question.answers["value"], context)


def set_number(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    days_out: int,
    key: str,
    value: object,
    context: Context,
) -> None:
    """A new version of the plan with this one number changed."""
    event = current_event(session, profile.person_id)
    plan = current_plan(session, event) if event is not None else None
    row = plan_row(session, event) if event is not None else None
    target = plan.day(days_out) if plan is not None else None
    if event is None or plan is None or row is None or target is None:
        say(session, chat_id=coach.chat_id, text=words.plan_first(), now=context.now)
        return
    day = event.day - timedelta(days=days_out)
    if day < local_date(profile, context):
        say(session, chat_id=coach.chat_id, text=words.day_over(), now=context.now)
        return
    changed = plan.with_day(replace(target, **{key: value}))  # type: ignore[arg-type]
    if ask_first(
        session, coach, profile, event, changed,
        shape=row.shape, context=context, field=key, days_out=days_out,
    ):  # fmt: skip
        return
    if not set_plan(session, coach, profile, event, changed, shape=row.shape, context=context):
        # What was typed did not fit; the question stays, so that another figure can be sent.
        _open_number(session, coach, profile, days_out, key, getattr(target, key), context)
        return
    number_is_live(session, coach, profile, event, plan, changed, key, days_out, context)


def number_is_live(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    event: EventRow,
    before: PeakPlan,
    changed: PeakPlan,
    key: str,
    days_out: int,
    context: Context,
    *,
    noted: str = "",
) -> None:
    """What follows from one changed number: it is said with what is new to the review."""
    target = changed.day(days_out)
    assert target is not None
    value = words.field_value(key, getattr(target, key), profile.volume_unit)
    parts = [words.field_set(key, days_out, value), noted]
    if not noted:
        found = new_findings(
            look_over(session, profile, event, changed, context),
            look_over(session, profile, event, before, context),
        )
        parts.append(review_words.findings_text(found, profile.volume_unit))
    say(
        session, chat_id=coach.chat_id, now=context.now,
        text="\n\n".join(part for part in parts if part),
        buttons=[
            [
                Button(
                    words.day_button(days_out), f"c:day:{profile.person_id}:{days_out}"
                ),
                Button(words.see_plan_button(), f"c:plan:{profile.person_id}"),
            ]
        ],
    )  # fmt: skip
    if key == "carb_g":
        day = event.day - timedelta(days=days_out)
        days_follow_plan(session, profile, context, only=day)
    week_changed(session, coach, profile, context, because="plan-changed", was_complete=True)


def first_things_first(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    event: EventRow | None,
    context: Context,
) -> None:
    """Say what has to be set before there is anything to see here, with its button."""
    if event is None:
        button = Button(card_words.event_button(), f"c:event:{profile.person_id}")
        text = words.event_first()
    else:
        button = Button(words.draft_plan_button(), f"c:draft:{profile.person_id}")
        text = words.plan_first()
    buttons = [button]
    if event is not None:
        buttons.append(Button(template_words.use_button(), f"c:tpl:{profile.person_id}"))
    say(session, chat_id=coach.chat_id, text=text, now=context.now, buttons=[buttons])


def _open_number(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    days_out: int,
    key: str,
    value: float | str | None,
    context: Context,
) -> None:
    asking.open_question(
        session, coach, PLAN_NUMBER, context=context, subject_id=profile.person_id,
        answers={
            "_field": key,
            "_days_out": days_out,
            "_value": value,
            "_volume_unit": profile.volume_unit,
        },
    )  # fmt: skip


def _plan_buttons(profile: AthleteProfile) -> Buttons:
    days = [
        Button(words.day_button(days_out), f"c:day:{profile.person_id}:{days_out}")
        for days_out in PLAN_DAYS
    ]
    return [
        days[:4],
        days[4:],
        [
            Button(review_words.review_button(), f"c:review:{profile.person_id}"),
            Button(words.new_draft_button(), f"c:draft:{profile.person_id}"),
            Button(words.limits_button(), f"c:limits:{profile.person_id}"),
            Button(words.back_button(), f"c:card:{profile.person_id}"),
        ],
        [
            Button(sheet_words.sheet_button(), f"c:sheet:{profile.person_id}"),
            Button(template_words.save_button(), f"c:tpl-save:{profile.person_id}"),
            Button(template_words.use_button(), f"c:tpl:{profile.person_id}"),
        ],
    ]


def _day_of(
    session: Session, profile: AthleteProfile, rest: list[str]
) -> tuple[EventRow, PeakPlan, int] | None:
    """The event, its plan and the day out that a button names; None where they are not there."""
    event = current_event(session, profile.person_id)
    plan = current_plan(session, event) if event is not None else None
    named = rest[0] if rest else ""
    if event is None or plan is None or not named.isdigit() or plan.day(int(named)) is None:
        return None
    return event, plan, int(named)
