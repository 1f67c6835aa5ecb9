"""A filled-in sheet held against the rows it was made from: what it changes, and what cannot be.

Totals that came with it are held against the figures beside them.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date, timedelta

from bot.plan import words as plan_words
from bot.plan.review import flow as flow_review
from bot.sheets import words
from bot.sheets.format import layout
from bot.sheets.format.reading import Filled, Wrong
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import EventRow, LimitsRow, PlanRow
from bot.week.load import athlete_of, baseline_of, plan_of
from bot.words import figures
from engine.planning.drafting.template import as_ever, renamed
from engine.planning.review import conventions_of, review_plan
from engine.values.athlete import Baseline
from engine.values.limits import LIMIT_KEYS, GuardRails, Limits, OutsideGuardRail
from engine.values.plan import MOST_LOAD_DAYS, PeakPlan

SAME_WITHIN = 0.5 * 10**-layout.DECIMALS + 1e-9


@dataclass(frozen=True, slots=True)
class Base:
    """The rows that hold now, which a sheet has to have been made from."""

    event: EventRow
    plan_row: PlanRow
    limits_row: LimitsRow | None
    habits: Baseline

    @property
    def plan(self) -> PeakPlan:
        return as_ever(plan_of(self.plan_row), self.habits)

    @property
    def limits_id(self) -> int:
        return id_of(self.limits_row) if self.limits_row is not None else 0


def filled_plan(base: Base, filled: Filled, today: date, wrong: list[Wrong]) -> PeakPlan:
    """The plan as filled in; figures that only lost decimals on the way stay as they were."""
    days, reread = {target.days_out: target for target in base.plan}, list[int]()
    for target in base.plan:
        given = filled.days.get(target.days_out)
        if given is None:
            wrong.append(Wrong("", "day-missing", {"days_out": target.days_out}))
            continue
        changes = {
            key: value for key, value in given.items() if not _same(getattr(target, key), value)
        }
        if date_of(base.event, target.days_out) < today:
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
            days[target.days_out] = replace(target, **changes)  # type: ignore[arg-type]
            if "carb_g" in changes and "phase" not in changes:
                reread.append(target.days_out)
    known = {target.days_out for target in base.plan}
    wrong += [
        Wrong(filled.cell(days_out, "carb_g"), "day-new", {"days_out": days_out})
        for days_out in filled.days
        if days_out not in known
    ]
    try:
        plan = PeakPlan(tuple(days.values()))
    except ValueError:
        wrong.append(
            Wrong(filled.cell(max(days), "phase"), "many-load-days", {"most": MOST_LOAD_DAYS})
        )
        return base.plan
    for days_out in reread:
        plan = renamed(plan, days_out, base.habits)
    return plan


def filled_limits(
    profile: AthleteProfile, base: Base, filled: Filled, wrong: list[Wrong]
) -> Limits | None:
    """The limits as filled in; those in force where the sheet has none."""
    before = limits_of(profile, base.limits_row)
    if not filled.bounds or before is None:
        if filled.bounds:
            first = next(iter(filled.bounds))
            wrong.append(Wrong(filled.cell(None, first), "limits-not-set"))
        return before
    changes = {
        key: value for key, value in filled.bounds.items() if not _same(getattr(before, key), value)
    }
    try:
        return Limits(guard_rails=before.guard_rails, **(before.by_key | changes))
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


def differences(
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
    before = limits_of(profile, base.limits_row)
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


def touches_days_over(
    base: Base, plan: PeakPlan, today: date
) -> list[tuple[str, dict[str, str | float]]]:
    """Days that ended between the question and its answer."""
    return [
        ("day-over", {"label": figures.days_out(day.days_out), "was": "its own figures"})
        for day in plan
        if date_of(base.event, day.days_out) < today and base.plan.day(day.days_out) != day
    ]


def _same(was: float | str | None, given: float | str | None) -> bool:
    if isinstance(was, float | int) and isinstance(given, float | int):
        return bool(abs(was - given) <= SAME_WITHIN)
    if isinstance(was, str) and isinstance(given, str):
        return " ".join(was.split()) == given
    return bool(was == given)


def limits_of(profile: AthleteProfile, row: LimitsRow | None) -> Limits | None:
    if row is None:
        return None
    return Limits(guard_rails=GuardRails.of(athlete_of(profile)), **row.bounds)


def date_of(event: EventRow, days_out: int) -> date:
    return event.day - timedelta(days=days_out)


def totals_text(profile: AthleteProfile, plan: PeakPlan, stated: Mapping[int, float]) -> str:
    """What there is to say of stated kcal (by days out) beside this plan; empty without any."""
    days = [day for day in plan if day.days_out in stated]
    if not days:
        return ""
    findings = review_plan(athlete_of(profile), baseline_of(profile), plan, stated_kcal=stated)
    off = [finding for finding in findings if finding.id == "total-off"]
    if off:
        return flow_review.findings_text(off, profile.volume_unit)
    fits = [set(conventions_of(day, stated[day.days_out])) for day in days]
    shared = set.intersection(*fits)
    return flow_review.totals_fit(len(days), only=shared.pop() if len(shared) == 1 else None)
