"""What each day of a plan is for, where nobody has said so: read off its figures.

A load is the last run of large days before the event, with at most one smaller day between two of
them. Where that smaller day is a low one, the large day before it was a refeed: the load comes after.
What a coach has said is kept.
"""

from __future__ import annotations

from dataclasses import replace

from engine.evidence import deciding
from engine.evidence.planning import phases as e
from engine.values.athlete import Baseline
from engine.values.plan import LOAD_DAYS, MOST_LOAD_DAYS, DayTarget, PeakPlan, Phase


def named(plan: PeakPlan, baseline: Baseline) -> PeakPlan:
    """The plan with a phase on each day; those that it states are kept as they are.

    A plan that no figures give a load to keeps it where it always was, three days out to one.
    """
    if all(day.phase is not None for day in plan):
        return plan
    found = _load_of(plan, baseline)
    stated = {day.days_out for day in plan if day.phase is Phase.LOAD}
    if stated:
        found = tuple(sorted(stated, reverse=True))
    elif not found:
        found = tuple(out for out in LOAD_DAYS if plan.day(out) is not None)
    return PeakPlan(tuple(_named(day, found, plan, baseline) for day in plan))


def as_ever(plan: PeakPlan, baseline: Baseline) -> PeakPlan:
    """The plan with its phases said as they were understood all along, whatever its figures."""
    load = tuple(out for out in plan.load_days if plan.day(out) is not None)
    return PeakPlan(tuple(_named(day, load, plan, baseline) for day in plan))


def renamed(plan: PeakPlan, days_out: int, baseline: Baseline) -> PeakPlan:
    """The plan with that day's phase read anew, once its carbs are others.

    A low, usual or rest day that has become as large as the load joins it, or is a refeed where a low
    day follows; a refeed that is no longer large is what the days around it are. A load day stays one:
    how light a load day may be is the coach's.
    """
    day = plan.day(days_out)
    if day is None or day.phase in (Phase.LOAD, Phase.EVENT):
        return plan
    large = _large(day, plan, baseline)
    if not large:
        load = plan.load_days
        fresh = _named(replace(day, phase=None), load, plan, baseline)
        return plan if day.phase in (Phase.REST, fresh.phase) else plan.with_day(fresh)
    return plan.with_day(replace(day, phase=_of_large(plan, days_out, baseline)))


def _of_large(plan: PeakPlan, days_out: int, baseline: Baseline) -> Phase:
    """A large day beside the load, or a rest day away from it, is one of it; else it is a refeed."""
    room = len(plan.load_days) < MOST_LOAD_DAYS
    following = plan.day(days_out - 1)
    if not plan.load_days or (room and plan.loading(days_out)):
        return Phase.LOAD
    low = following is not None and _low(following, baseline)
    beside = days_out - plan.first_load_day <= 2 and not low
    return Phase.LOAD if room and beside else Phase.REFEED


def _load_of(plan: PeakPlan, baseline: Baseline) -> tuple[int, ...]:
    """The load days that the figures show, the furthest out first."""
    large = [day.days_out for day in plan if day.days_out > 0 and _large(day, plan, baseline)]
    load: list[int] = []
    for out in sorted(large):  # from the event backwards
        if len(load) == MOST_LOAD_DAYS:
            break
        if load and not _joined(plan, out, load[-1], baseline):
            break
        load.append(out)
    return tuple(reversed(load))


def _joined(plan: PeakPlan, out: int, nearer: int, baseline: Baseline) -> bool:
    """Whether nothing, or one day that is not low, lies between two large days."""
    if out - nearer > 2:
        return False
    between = plan.day(out - 1) if out - nearer == 2 else None
    return between is None or not _low(between, baseline)


def _named(day: DayTarget, load: tuple[int, ...], plan: PeakPlan, baseline: Baseline) -> DayTarget:
    return day if day.phase is not None else replace(day, phase=_phase(day, load, plan, baseline))


def _phase(day: DayTarget, load: tuple[int, ...], plan: PeakPlan, baseline: Baseline) -> Phase:
    if day.days_out == 0:
        return Phase.EVENT
    if day.days_out in load:
        return Phase.LOAD
    if day.days_out < max(load, default=0):
        return Phase.REST
    if _large(day, plan, baseline):
        return Phase.REFEED
    usual = day.carb_g >= e.USUAL_OF_HABIT.value * baseline.carb_g
    return Phase.USUAL if usual else Phase.DEPLETION


def _large(day: DayTarget, plan: PeakPlan, baseline: Baseline) -> bool:
    most = max((other.carb_g for other in plan if other.days_out > 0), default=0.0)
    least = max(e.LARGE_OF_HABIT.value * baseline.carb_g, e.LARGE_OF_LARGEST.value * most)
    return day.carb_g > 0 and day.carb_g >= least


def _low(day: DayTarget, baseline: Baseline) -> bool:
    return day.carb_g < deciding.DEPLETED_SHARE.value * baseline.carb_g
