"""A plan as a sheet: handed out, and taken back with the differences shown first."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import Any

from sqlmodel import Session, col, select

from bot.context import Context, Document
from bot.flows.sheets import SHEET
from bot.incoming import Incoming
from bot.languages import tr
from bot.messages import coach_figures as figures
from bot.messages import coach_plan as plan_words
from bot.messages import sheets as words
from bot.outbox import Button, say, send_document
from bot.service import asking
from bot.service.people import get_person, local_date, own_athlete, record
from bot.service.plan_gate import ask_first
from bot.service.plan_numbers import first_things_first
from bot.service.planning import days_follow_plan, week_changed
from bot.service.tapping import answer
from bot.service.week import (
    athlete_of,
    baseline_of,
    current_event,
    plan_days,
    plan_row,
)
from bot.sheets import layout, writing
from bot.sheets.opening import SheetRefused, open_sheet
from bot.sheets.reading import Filled, SheetProblems, Wrong, read_sheet
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.week import EventRow, LimitsRow, PlanRow
from engine.limits import (
    LIMIT_KEYS,
    GuardRails,
    Limits,
    OutsideGuardRail,
    plan_problems,
)
from engine.plan import DayTarget, PeakPlan

SAME_WITHIN = 0.5 * 10**-layout.DECIMALS + 1e-9


@dataclass(frozen=True, slots=True)
class Base:
    """The rows that hold now, which a sheet has to have been made from."""

    event: EventRow
    plan_row: PlanRow
    limits_row: LimitsRow | None

    @property
    def plan(self) -> PeakPlan:
        return _plan_of(self.plan_row)

    @property
    def limits_id(self) -> int:
        return (self.limits_row.id or 0) if self.limits_row is not None else 0


def offer_sheet(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The card's button; with a format, the file itself."""
    answer(session, incoming, context)
    base = _base(session, profile)
    if base is None:
        event = current_event(session, profile.person_id)
        first_things_first(session, coach, profile, event, context)
        return
    form = rest[0] if rest else ""
    if form not in writing.FORMATS:
        buttons = [
            Button(words.format_button(form), f"c:sheet:{profile.person_id}:{form}")
            for form in writing.FORMATS
        ]
        text = words.ask_format()
        say(session, chat_id=coach.chat_id, text=text, buttons=[buttons], now=context.now)
        return
    send_document(
        session, chat_id=coach.chat_id, now=context.now,
        document={
            "make": "plan-sheet", "format": form, "athlete": profile.person_id,
            "plan": base.plan_row.id, "limits": base.limits_id,
        },
        caption=words.caption(
            get_person(session, profile.person_id).first_name,
            with_limits=base.limits_row is not None,
            own=coach.id == profile.person_id,
        ),
    )  # fmt: skip


def make_sheet(session: Session, named: dict[str, Any], _context: Context) -> Document | None:
    """The file of these rows, which never change: the same bytes' worth however late it is sent."""
    row = session.get(PlanRow, named["plan"])
    limits_row = session.get(LimitsRow, named["limits"]) if named["limits"] else None
    event = session.get(EventRow, row.event_id) if row is not None else None
    profile = session.get(AthleteProfile, named["athlete"])
    if row is None or event is None or profile is None:
        return None
    name = get_person(session, profile.person_id).first_name
    plan, form = _plan_of(row), str(named["format"])
    sheet = layout.PlanSheet(
        version=layout.Version(profile.person_id, row.id or 0, (limits_row and limits_row.id) or 0),
        name=name,
        event=f"{tr(plan_words.KIND_WORDS[event.kind])}, {plan_words.day_and_year(event.day)}",
        plan=plan,
        days={day.days_out: figures.day(_date(event, day.days_out)) for day in plan},
        limits=_limits_of(profile, limits_row),
    )
    return Document(f"plan-{event.day.isoformat()}.{form}", writing.write(sheet, form))


def unpack_sheet(content: bytes) -> Filled | SheetRefused | SheetProblems:
    """What a file says, or why it says nothing; outside any transaction."""
    try:
        return read_sheet(open_sheet(content))
    except (SheetRefused, SheetProblems) as refused:
        return refused


def sheet_came(session: Session, coach: Person, outcome: object, context: Context) -> None:
    """A sheet that was sent back: show what it would change, or say by cell why it cannot be taken."""
    if isinstance(outcome, SheetRefused):
        _say(session, coach, words.refused(outcome.why), context)
        return
    if isinstance(outcome, SheetProblems):
        _say_wrong(session, coach, outcome.found, context)
        return
    if not isinstance(outcome, Filled):
        _say(session, coach, words.could_not_fetch(), context)
        return
    profile = own_athlete(session, coach, outcome.version.athlete_id)
    if profile is None:
        _say(session, coach, words.not_yours(), context)
        return
    name, own = get_person(session, profile.person_id).first_name, coach.id == profile.person_id
    base = _base(session, profile)
    made_from = (outcome.version.plan_id, outcome.version.limits_id)
    if base is None or made_from != (base.plan_row.id, base.limits_id):
        _say(session, coach, words.moved_on(name, own=own), context)
        return
    wrong: list[Wrong] = []
    plan = _filled_plan(base, outcome, local_date(profile, context), profile, wrong)
    limits = _filled_limits(profile, base, outcome, wrong)
    if not wrong:
        fitted = limits or Limits.suggested(athlete_of(profile), plan, baseline_of(profile))
        wrong = [
            Wrong(
                outcome.cell(p.days_out, p.key) or outcome.cell(None, p.limit),
                "does-not-fit", {"problem": words.problem(p)},
            )
            for p in plan_problems(plan, fitted)
        ]  # fmt: skip
    if wrong:
        _say_wrong(session, coach, wrong, context)
        return
    lines = _differences(profile, base, plan, limits)
    if not lines:
        _say(session, coach, words.nothing_differs(name, own=own), context)
        return
    asking.open_question(
        session, coach, SHEET, context=context, subject_id=profile.person_id,
        answers={
            "_name": name, "_own": own, "_lines": lines, "_hidden": list(outcome.hidden),
            "_plan": base.plan_row.id, "_limits": base.limits_id,
            "_days": plan_days(plan), "_bounds": _bounds_of(limits) if limits else None,
        },
    )  # fmt: skip


def sheet_answered(
    session: Session, coach: Person, question: OpenQuestion, context: Context
) -> None:
    """Take the whole sheet over in one go, or nothing of it."""
    answers = question.answers
    if not answers["take"]:
        _say(session, coach, words.left(), context)
        return
    profile = own_athlete(session, coach, question.subject_id or 0)
    if profile is None:
        _say(session, coach, words.not_yours(), context)
        return
    own = coach.id == profile.person_id
    base = _base(session, profile)
    if base is None or (answers["_plan"], answers["_limits"]) != (base.plan_row.id, base.limits_id):
        _say(session, coach, words.moved_on(answers["_name"], own=own), context)
        return
    plan = PeakPlan(tuple(DayTarget(**day) for day in answers["_days"]))
    over = _touches_days_over(base, plan, local_date(profile, context))
    if over:
        _say_wrong(session, coach, [Wrong("", why, facts) for why, facts in over], context)
        return
    shape = base.plan_row.shape
    if plan != base.plan and ask_first(
        session, coach, profile, base.event, plan, shape=shape, context=context
    ):
        # The limits are taken; the plan waits for the reason that its warnings ask for.
        _keep(session, coach, profile, base, base.plan, answers["_bounds"], context)
        return
    _keep(session, coach, profile, base, plan, answers["_bounds"], context)
    _say(session, coach, words.taken(len(answers["_lines"]), own=own), context)
    for day in plan:
        was = base.plan.day(day.days_out)
        if was is not None and was.carb_g != day.carb_g:
            only = _date(base.event, day.days_out)
            days_follow_plan(session, profile, context, only=only)
    was_complete = base.limits_row is not None
    week_changed(
        session, coach, profile, context, because="plan-changed", was_complete=was_complete
    )


def _keep(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    base: Base,
    plan: PeakPlan,
    bounds: dict[str, float] | None,
    context: Context,
) -> None:
    """New versions of what differs."""
    event_id = base.event.id or 0
    if plan != base.plan:
        row = PlanRow(
            event_id=event_id, shape=base.plan_row.shape, days=plan_days(plan),
            set_by=coach.id or 0, set_at=context.now,
        )  # fmt: skip
        session.add(row)
        session.flush()
        record(
            session, profile.person_id, "plan set", context, by=coach.id,
            plan=row.id, shape=row.shape, how="sheet",
        )  # fmt: skip
    if bounds is not None and base.limits_row is not None and bounds != base.limits_row.bounds:
        kept = LimitsRow(event_id=event_id, bounds=bounds, set_by=coach.id or 0, set_at=context.now)
        session.add(kept)
        session.flush()
        record(
            session, profile.person_id, "limits set", context, by=coach.id,
            limits=kept.id, bounds=bounds, how="sheet",
        )  # fmt: skip


def _filled_plan(
    base: Base, filled: Filled, today: date, profile: AthleteProfile, wrong: list[Wrong]
) -> PeakPlan:
    """The plan as filled in; figures that only lost decimals on the way stay as they were."""
    plan = base.plan
    for target in base.plan:
        given = filled.days.get(target.days_out)
        if given is None:
            wrong.append(Wrong("", "day-missing", {"days_out": target.days_out}))
            continue
        changes = {
            key: value for key, value in given.items() if not _same(getattr(target, key), value)
        }
        if _date(base.event, target.days_out) < today:
            wrong += [
                Wrong(
                    filled.cell(target.days_out, key), "day-over",
                    {
                        "label": plan_words.FIELDS[key][0].lower(),
                        "was": plan_words.field_value(key, getattr(target, key), "l"),
                    },
                )
                for key in changes
            ]  # fmt: skip
        elif changes:
            plan = plan.with_day(replace(target, **changes))  # type: ignore[arg-type]
    known = {target.days_out for target in base.plan}
    wrong += [
        Wrong(filled.cell(days_out, "carb_g"), "day-new", {"days_out": days_out})
        for days_out in filled.days
        if days_out not in known
    ]
    return plan


def _filled_limits(
    profile: AthleteProfile, base: Base, filled: Filled, wrong: list[Wrong]
) -> Limits | None:
    """The limits as filled in; those in force where the sheet has none."""
    before = _limits_of(profile, base.limits_row)
    if not filled.bounds or before is None:
        if filled.bounds:
            first = next(iter(filled.bounds))
            wrong.append(Wrong(filled.cell(None, first), "limits-not-set"))
        return before
    changes = {
        key: value for key, value in filled.bounds.items() if not _same(getattr(before, key), value)
    }
    try:
        return Limits(guard_rails=before.guard_rails, **(_bounds_of(before) | changes))
    except OutsideGuardRail as outside:
        wrong.append(
            Wrong(
                filled.cell(None, outside.limit), "guard-rail",
                {
                    "value": figures.limit(outside.limit, outside.value),
                    "bound": figures.limit(outside.limit, outside.bound),
                    "citation": outside.source.citation,
                },
            )
        )  # fmt: skip
    except ValueError:
        first = next((k for k in changes if "floor" in k or "ceiling" in k), "carb_floor_g")
        wrong.append(Wrong(filled.cell(None, first), "floor-over-ceiling"))
    return None


def _differences(
    profile: AthleteProfile, base: Base, plan: PeakPlan, limits: Limits | None
) -> list[str]:
    unit = profile.volume_unit
    lines = []
    for target in plan:
        was = base.plan.day(target.days_out)
        lines += [
            words.plan_change(
                target.days_out, key,
                plan_words.field_value(key, getattr(was, key), unit),
                plan_words.field_value(key, getattr(target, key), unit),
            )
            for key in plan_words.FIELDS
            if getattr(was, key) != getattr(target, key)
        ]  # fmt: skip
    before = _limits_of(profile, base.limits_row)
    if limits is not None and before is not None:
        lines += [
            words.limit_change(
                key,
                figures.limit(key, getattr(before, key), unit),
                figures.limit(key, getattr(limits, key), unit),
            )
            for key in LIMIT_KEYS
            if getattr(before, key) != getattr(limits, key)
        ]
    return lines


def _touches_days_over(
    base: Base, plan: PeakPlan, today: date
) -> list[tuple[str, dict[str, str | float]]]:
    """Days that ended between the question and its answer."""
    return [
        ("day-over", {"label": figures.days_out(day.days_out), "was": "its own figures"})
        for day in plan
        if _date(base.event, day.days_out) < today and base.plan.day(day.days_out) != day
    ]


def _same(was: float | str | None, given: float | str | None) -> bool:
    if isinstance(was, float | int) and isinstance(given, float | int):
        return bool(abs(was - given) <= SAME_WITHIN)
    if isinstance(was, str) and isinstance(given, str):
        return " ".join(was.split()) == given
    return bool(was == given)


def _base(session: Session, profile: AthleteProfile) -> Base | None:
    event = current_event(session, profile.person_id)
    row = plan_row(session, event) if event is not None else None
    if event is None or row is None:
        return None
    query = (
        select(LimitsRow).where(LimitsRow.event_id == event.id).order_by(col(LimitsRow.id).desc())
    )
    return Base(event, row, session.exec(query).first())


def _plan_of(row: PlanRow) -> PeakPlan:
    return PeakPlan(tuple(DayTarget(**day) for day in row.days))


def _limits_of(profile: AthleteProfile, row: LimitsRow | None) -> Limits | None:
    if row is None:
        return None
    return Limits(guard_rails=GuardRails.of(athlete_of(profile)), **row.bounds)


def _bounds_of(limits: Limits) -> dict[str, float]:
    return {key: getattr(limits, key) for key in LIMIT_KEYS}


def _date(event: EventRow, days_out: int) -> date:
    return event.day - timedelta(days=days_out)


def _say(session: Session, coach: Person, text: str, context: Context) -> None:
    say(session, chat_id=coach.chat_id, text=text, now=context.now)


def _say_wrong(session: Session, coach: Person, wrong: list[Wrong], context: Context) -> None:
    lines = [(found.cell, words.wrong_cell(found.why, found.facts)) for found in wrong]
    _say(session, coach, words.problems(lines), context)
