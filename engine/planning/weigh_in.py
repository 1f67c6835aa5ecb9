"""What the scale is likely to show at a weigh-in, and whether a cap can be made without harm.

Nothing is ever cut by water or salt for a weight. What honestly moves the scale within days is the
glycogen of load days that may as well come after the weigh-in, with its water, and what low fibre
leaves out of the gut; the rest is tissue, which takes weeks, or dehydration, which is no way.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date, timedelta
from enum import StrEnum

from engine.decision.band import GRAMS_PER_KG, weight_band
from engine.evidence import deciding
from engine.evidence.planning import drafting
from engine.evidence.source import Source
from engine.values.athlete import Athlete, Baseline, WeighIn
from engine.values.case import WeekSoFar
from engine.values.checkin import CheckIn, History
from engine.values.plan import PeakPlan


class Standing(StrEnum):
    """How a cap looks from today."""

    LIKELY_MADE = "likely made"
    IN_DOUBT = "in doubt"
    LIKELY_MISSED = "likely missed"


@dataclass(frozen=True, slots=True, kw_only=True)
class OnScale:
    """The scale at the weigh-in: an 80 % band in kg, and the chance of showing more than the cap."""

    day: date
    weigh_in: WeighIn
    low_kg: float
    expected_kg: float
    high_kg: float
    chance_over: float

    @property
    def standing(self) -> Standing:
        if self.chance_over >= drafting.MISSED_FROM.value:
            return Standing.LIKELY_MISSED
        doubt = self.chance_over >= drafting.IN_DOUBT_FROM.value
        return Standing.IN_DOUBT if doubt else Standing.LIKELY_MADE

    @property
    def cap_kg(self) -> float:
        return self.weigh_in.cap_kg

    @property
    def over_kg(self) -> float:
        """How far what is expected lies over the cap; 0 where it does not."""
        return max(self.expected_kg - self.cap_kg, 0.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Making:
    """What food alone may take off by the weigh-in (kg, by what), and what is left after that.

    `ways`: "load-after" (load days that could follow the weigh-in, least and most) and "fibre".
    """

    over_kg: float
    ways: Mapping[str, tuple[float, float]]
    left_kg: float
    left_percent: float
    sources: tuple[Source, ...]

    @property
    def safely(self) -> bool:
        """Whether food alone explains what is over."""
        return self.left_kg <= 0


def on_scale(week: WeekSoFar, weigh_in: WeighIn) -> OnScale:
    """The scale at the weigh-in if the week goes on as planned, from the mornings of its history."""
    day = week.event.day - timedelta(days=weigh_in.days_out)
    band = weight_band(replace(week, checkin=CheckIn(date=day)))
    later = max(weigh_in.at.hour + weigh_in.at.minute / 60 - drafting.MORNING_HOUR.value, 0.0)
    share = min(later / drafting.DAY_RISE_HOURS.value, 1.0) * drafting.DAY_RISE_SHARE.value
    rise = share * band.expected_kg
    doubt = deciding.BAND_Z.value * drafting.DAY_RISE_SPREAD.value * rise
    expected = band.expected_kg + rise
    below = math.hypot(band.expected_kg - band.low_kg, doubt)
    above = math.hypot(band.high_kg - band.expected_kg, doubt)
    gap = weigh_in.cap_kg - expected
    sd = (above if gap > 0 else below) / deciding.BAND_Z.value
    return OnScale(
        day=day,
        weigh_in=weigh_in,
        low_kg=expected - below,
        expected_kg=expected,
        high_kg=expected + above,
        chance_over=0.5 * math.erfc(gap / sd / math.sqrt(2)),
    )


def making(
    athlete: Athlete, baseline: Baseline, plan: PeakPlan, scale: OnScale, *, days_left: int
) -> Making:
    """What food may take off what is over, `days_left` before the weigh-in; never water or salt."""
    ways: dict[str, tuple[float, float]] = {}
    sources: list[Source] = []
    weigh_in = scale.weigh_in
    load = _load_before_g(plan, baseline, weigh_in, days_left)
    if load > 0 and weigh_in.days_out > 0:
        least = 1 + deciding.GLYCOGEN_WATER_LOW.value
        most = 1 + deciding.GLYCOGEN_WATER_HIGH.value
        stored = min(load, deciding.STORE_SWING_G_PER_KG.value * athlete.body_mass_kg)
        seen = deciding.SWING_SEEN_SHARE.value
        ways["load-after"] = (stored * least * seen / GRAMS_PER_KG, stored * most / GRAMS_PER_KG)
        sources += [deciding.FERNANDEZ_ELIAS_2015, deciding.KREITZMAN_1992, deciding.HOMER_2024]
    fibre = baseline.fibre_g or 0.0
    before = plan.day(weigh_in.days_out + 1)
    already = (
        before is not None
        and before.fibre_g is not None
        and before.fibre_g < drafting.FIBRE_FROM_G.value
    )
    enough = days_left >= drafting.FIBRE_DAYS.value
    if fibre >= drafting.FIBRE_FROM_G.value and enough and not already:
        ways["fibre"] = (0.0, drafting.FIBRE_LIGHTER_KG.value)
        sources.append(deciding.FOO_2022)
    # What is surest counts: the least that was seen of the load, and half of what fibre may do.
    sure = sum(
        (least + most) / 2 if key == "fibre" else least for key, (least, most) in ways.items()
    )
    left = max(scale.over_kg - sure, 0.0)
    return Making(
        over_kg=scale.over_kg,
        ways=ways,
        left_kg=left,
        left_percent=100 * left / athlete.body_mass_kg,
        sources=tuple(sources),
    )


def _load_before_g(plan: PeakPlan, baseline: Baseline, weigh_in: WeighIn, days_left: int) -> float:
    """Grams over habit on load days still to come that are eaten before the weigh-in."""
    ahead = range(weigh_in.days_out + 1, weigh_in.days_out + days_left + 1)
    days = [plan.day(out) for out in plan.load_days if out in ahead]
    return sum(max(day.carb_g - baseline.carb_g, 0.0) for day in days if day is not None)


def with_today(history: History, today: CheckIn) -> History:
    """The history with this morning in it, which no band of a later day may miss."""
    others = [checkin for checkin in history.checkins if checkin.date != today.date]
    return replace(history, checkins=tuple(sorted([*others, today], key=lambda c: c.date)))
