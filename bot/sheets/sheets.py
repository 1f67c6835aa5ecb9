"""A plan as a sheet: handed out, and taken back with the differences shown first."""

from __future__ import annotations

from typing import Any

from sqlmodel import Session, col, select

from bot.core.chat.cards import PLAN_SHEET, PlanInFormat
from bot.core.chat.outbox import Button, send_document
from bot.core.turn import Document, OnAthlete, Turn
from bot.dialogue import asking
from bot.people.changes import BY_SHEET, Change
from bot.people.people import local_date, name_of, own_athlete, record
from bot.people.telling import answer, say_to
from bot.plan.numbers import first_things_first
from bot.plan.planning import (
    counts_now,
    days_follow_plan,
    meant_event,
    meant_for,
    naming,
    week_changed,
)
from bot.plan.prep import Prep, Version
from bot.plan.review import flow as flow_review
from bot.plan.review.gate import ask_first
from bot.sheets import words
from bot.sheets.flow import SHEET
from bot.sheets.format import layout
from bot.sheets.format.making import FORMATS
from bot.sheets.format.opening import Grid, SheetRefused
from bot.sheets.format.reading import Filled, SheetProblems, Wrong, read_sheet
from bot.sheets.sheet_filled import (
    Base,
    date_of,
    differences,
    filled_limits,
    filled_plan,
    limits_of,
    totals_text,
    touches_days_over,
)
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.week import EventRow, LimitsRow, PlanRow
from bot.week import snapshots
from bot.week.load import athlete_of, baseline_of, event_ahead, plan_days, plan_of, plan_row
from bot.week.weeks_of import weeks_of_one
from bot.words import common, figures
from engine.planning.drafting.template import as_ever
from engine.values.athlete import energy_kcal
from engine.values.limits import Limits, plan_problems
from engine.values.plan import DayTarget, PeakPlan


def offer_sheet(turn: OnAthlete, pressed: PlanInFormat) -> None:
    """The card's button; with a format, the file itself."""
    answer(turn)
    event = meant_event(turn, pressed.event)
    base = _base(turn.session, turn.profile, event)
    if base is None or event is None:
        first_things_first(turn, turn.person, turn.profile, event)
        return
    form = pressed.format
    if form not in FORMATS:
        who, ahead = turn.profile.person_id, naming(turn.session, turn.profile, event)
        buttons = [
            Button(words.format_button(form), PLAN_SHEET(who, form, ahead)) for form in FORMATS
        ]
        text = f"{words.ask_format()}\n\n{flow_review.add_totals_hint(layout.TOTAL_HEADINGS)}"
        say_to(turn, turn.person, text, buttons=[buttons])
        return
    caption = words.caption if base.limits_row is None else words.caption_with_limits
    send_document(
        turn,
        chat_id=turn.person.chat_id,
        document={
            "make": "plan-sheet", "format": form, "athlete": turn.profile.person_id,
            "plan": base.plan_row.id, "limits": base.limits_id,
        },
        caption=caption(name_of(turn.session, turn.profile.person_id), self_coached=turn.self_coached),
    )  # fmt: skip


def make_sheet(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The file of these rows, which never change, with what has been set and answered by now."""
    row = turn.session.get(PlanRow, named["plan"])
    limits_row = turn.session.get(LimitsRow, named["limits"]) if named["limits"] else None
    event = turn.session.get(EventRow, row.event_id) if row is not None else None
    profile = turn.session.get(AthleteProfile, named["athlete"])
    if row is None or event is None or profile is None:
        return None
    name = name_of(turn.session, profile.person_id)
    plan, form = as_ever(plan_of(row), baseline_of(profile)), str(named["format"])
    sheet = layout.PlanSheet(
        version=layout.Version(profile.person_id, id_of(row), (limits_row and limits_row.id) or 0),
        name=name,
        event=f"{common.event_name(event.kind)}, {common.day_and_year(event.day)}",
        plan=plan,
        days={day.days_out: figures.short_day(date_of(event, day.days_out)) for day in plan},
        limits=limits_of(profile, limits_row),
        beside=_beside(turn.session, event, plan),
    )
    return Document(f"plan-{event.day.isoformat()}.{form}", layout.write(sheet, form))


def _beside(session: Session, event: EventRow, plan: PeakPlan) -> dict[int, dict[str, float]]:
    """What was set, eaten and answered on each day, and the energy of it."""
    weeks = weeks_of_one(session, event.athlete_id)
    days = next((week.days for week in weeks if week.event_id == event.id), ())
    found: dict[int, dict[str, float]] = {}
    for day in days:
        target = plan.day(day.days_out)
        if target is None:
            continue
        set_g = day.set_carb_g if day.set_carb_g is not None else target.carb_g
        others = (target.protein_g, target.fat_g, target.fibre_g)
        told = {
            "set_g": set_g, "eaten_g": day.eaten_carb_g, "water_l": day.water_l,
            "weight_kg": day.weight_kg, "fullness": day.fullness, "sharpness": day.sharpness,
            "kcal_planned": energy_kcal(target.carb_g, *others),
            "kcal_set": energy_kcal(set_g, *others),
        }  # fmt: skip
        found[day.days_out] = {key: value for key, value in told.items() if value is not None}
    return found


def unpack_grid(grid: Grid) -> Filled | SheetRefused | SheetProblems:
    """What a plan's sheet says, or why it says nothing; outside any transaction."""
    try:
        return read_sheet(grid)
    except (SheetRefused, SheetProblems) as refused:
        return refused


def sheet_came(turn: Turn, coach: Person, outcome: object) -> None:
    """A sheet that was sent back: show what it would change, or say by cell why it cannot be taken."""
    if isinstance(outcome, SheetRefused):
        say_to(turn, coach, words.refused(outcome.why))
        return
    if isinstance(outcome, SheetProblems):
        _say_wrong(turn, coach, outcome.found)
        return
    if not isinstance(outcome, Filled):
        say_to(turn, coach, words.could_not_fetch())
        return
    profile = own_athlete(turn.session, coach, outcome.version.athlete_id)
    if profile is None:
        say_to(turn, coach, words.not_yours())
        return
    name, self_coached = name_of(turn.session, profile.person_id), coach.id == profile.person_id
    base = _base_of(turn.session, profile, outcome.version.plan_id)
    made_from = (outcome.version.plan_id, outcome.version.limits_id)
    if base is None or made_from != (base.plan_row.id, base.limits_id):
        say_to(turn, coach, words.moved_on(name, self_coached=self_coached))
        return
    wrong: list[Wrong] = []
    plan = filled_plan(base, outcome, local_date(profile, turn.context), wrong)
    limits = filled_limits(profile, base, outcome, wrong)
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
        _say_wrong(turn, coach, wrong)
        return
    lines = differences(profile, base, plan, limits)
    totals = totals_text(profile, plan, outcome.totals)
    if not lines:
        said = (words.nothing_differs(name, self_coached=self_coached), totals)
        say_to(turn, coach, "\n\n".join(part for part in said if part))
        return
    asking.open_question(turn, coach, SHEET, profile.person_id, {
        "_name": name, "_own": self_coached, "_lines": lines, "_hidden": list(outcome.hidden),
        "_totals": totals, "_for": meant_for(turn.session, profile, base.event),
        "_plan": base.plan_row.id, "_limits": base.limits_id,
        "_days": plan_days(plan), "_bounds": limits.by_key if limits else None,
    })  # fmt: skip


def sheet_answered(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """Take the whole sheet over in one go, or nothing of it."""
    answers = question.answers
    if not answers["take"]:
        say_to(turn, coach, common.cancelled())
        return
    profile = own_athlete(turn.session, coach, question.about)
    if profile is None:
        say_to(turn, coach, words.not_yours())
        return
    self_coached = coach.id == profile.person_id
    base = _base_of(turn.session, profile, answers["_plan"])
    if base is None or (answers["_plan"], answers["_limits"]) != (base.plan_row.id, base.limits_id):
        say_to(turn, coach, words.moved_on(answers["_name"], self_coached=self_coached))
        return
    plan = PeakPlan(tuple(DayTarget(**day) for day in answers["_days"]))
    over = touches_days_over(base, plan, local_date(profile, turn.context))
    if over:
        _say_wrong(turn, coach, [Wrong("", why, facts) for why, facts in over])
        return
    version = Version(plan, base.plan_row.shape)
    prep = Prep(turn, coach, profile, base.event)
    if plan != base.plan and ask_first(prep, version):
        # The limits are taken; the plan waits for the reason that its warnings ask for.
        _keep(prep, base, base.plan, answers["_bounds"])
        return
    _keep(prep, base, plan, answers["_bounds"])
    say_to(turn, coach, words.taken(len(answers["_lines"])))
    if not counts_now(turn.session, profile, base.event):
        return  # it waits: no day of now follows from it
    for day in plan:
        was = base.plan.day(day.days_out)
        if was is not None and was.carb_g != day.carb_g:
            only = date_of(base.event, day.days_out)
            days_follow_plan(turn, profile, only=only)
    was_complete = base.limits_row is not None
    week_changed(turn, coach, profile, because="plan-changed", was_complete=was_complete)


def _keep(prep: Prep, base: Base, plan: PeakPlan, bounds: dict[str, float] | None) -> None:
    """New versions of what differs."""
    turn, coach, profile = prep.turn, prep.coach, prep.profile
    event_id = id_of(base.event)
    before = snapshots.take_snapshot(turn, profile)
    if plan != base.plan:
        row = PlanRow(
            event_id=event_id, shape=base.plan_row.shape, days=plan_days(plan),
            set_by=id_of(coach), set_at=turn.now,
        )  # fmt: skip
        turn.session.add(row)
        record(turn, profile.person_id, by=coach.id, what=Change.PLAN_SET(
            plan=id_of(row), shape=row.shape, how=BY_SHEET, before={"plan": base.plan_row.id, **before},
            changed=snapshots.days_changed(base.plan_row.days, row.days),
        ))  # fmt: skip
    if bounds is not None and base.limits_row is not None and bounds != base.limits_row.bounds:
        kept = LimitsRow(event_id=event_id, bounds=bounds, set_by=id_of(coach), set_at=turn.now)
        turn.session.add(kept)
        record(turn, profile.person_id, by=coach.id, what=Change.LIMITS_SET(
            limits=id_of(kept), bounds=bounds, how=BY_SHEET,
            before={"limits": base.limits_id, **before},
            changed=snapshots.differences(base.limits_row.bounds, bounds),
        ))  # fmt: skip


def _base_of(session: Session, profile: AthleteProfile, plan_id: int) -> Base | None:
    """What holds now for the event ahead that this version of a plan is of."""
    row = session.get(PlanRow, plan_id)
    event = event_ahead(session, profile.person_id, row.event_id) if row is not None else None
    return _base(session, profile, event)


def _base(session: Session, profile: AthleteProfile, event: EventRow | None) -> Base | None:
    row = plan_row(session, event) if event is not None else None
    if event is None or row is None:
        return None
    query = (
        select(LimitsRow).where(LimitsRow.event_id == event.id).order_by(col(LimitsRow.id).desc())
    )
    return Base(event, row, session.exec(query).first(), baseline_of(profile))


def _say_wrong(turn: Turn, coach: Person, wrong: list[Wrong]) -> None:
    lines = [(found.cell, words.wrong_cell(found.why, found.facts)) for found in wrong]
    say_to(turn, coach, words.problems(lines))
