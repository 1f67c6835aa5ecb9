"""Flags on drinking: too little, too much, too fast."""

from __future__ import annotations

from collections.abc import Iterator

from engine.athlete import Athlete, Baseline, Event, Sex
from engine.checkin import CheckIn
from engine.evidence import safety as evidence
from engine.level import Level
from engine.plan import PeakPlan

from .drinking import fastest_drinking_l_per_h
from .flag import Flag
from .readings import above, believed_water, below


def water_flags(
    athlete: Athlete, baseline: Baseline, plan: PeakPlan, event: Event, checkin: CheckIn
) -> Iterator[Flag]:
    water = believed_water(checkin.water_l)
    if water is not None:
        yield from _day_flags(water, athlete, _target(baseline, plan, event, checkin))
    yield from too_fast_flags(checkin)


def too_fast_flags(checkin: CheckIn) -> Iterator[Flag]:
    """More within an hour than kidneys can pass, by the answer or by what was written."""
    fastest = _fastest(checkin)
    most = float(evidence.WATER_IN_AN_HOUR)
    if fastest is not None and above(fastest, most):
        facts = {"water_l_per_h": fastest, "most_l_per_h": most}
        yield Flag("water-too-fast", Level.CAUTION, facts, (evidence.IOM_2005,))


def _target(baseline: Baseline, plan: PeakPlan, event: Event, checkin: CheckIn) -> float:
    """Yesterday's target: a morning's answer speaks of the day before."""
    yesterday = plan.day(event.days_out(checkin.date) + 1)
    return baseline.water_l if yesterday is None else yesterday.water_l


def _day_flags(water: float, athlete: Athlete, target: float) -> Iterator[Flag]:
    women = athlete.sex is Sex.FEMALE
    adequate = evidence.WATER_ADEQUATE_WOMEN if women else evidence.WATER_ADEQUATE_MEN
    if below(water, float(adequate)):
        facts = {"water_l": water, "adequate_l": float(adequate)}
        yield Flag("water-under-adequate", Level.CAUTION, facts, (adequate.source,))
    facts = {"water_l": water, "target_l": target}
    if target > 0 and below(water, target * float(evidence.WATER_UNDER_TARGET) / 100):
        source = evidence.WATER_UNDER_TARGET.source
        yield Flag("water-under-target", Level.CAUTION, facts, (source,))
    if target > 0 and above(water, target * float(evidence.WATER_OVER_TARGET) / 100):
        source = evidence.WATER_OVER_TARGET.source
        yield Flag("water-over-target", Level.CAUTION, facts, (source,))
    most = float(evidence.WATER_GUARD_RAIL) / 1000 * athlete.body_mass_kg
    if above(water, most):
        facts = {"water_l": water, "most_l": most}
        yield Flag("water-over-guard-rail", Level.CAUTION, facts, (evidence.REALE_2018,))


def _fastest(checkin: CheckIn) -> float | None:
    told = [fastest_drinking_l_per_h(text) for text in (checkin.note, *checkin.symptoms)]
    told.append(believed_water(checkin.water_within_one_hour_l))
    return max((rate for rate in told if rate is not None), default=None)
