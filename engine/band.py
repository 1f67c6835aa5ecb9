"""The weight band: where this morning's weight may lie if the week runs to plan.

Plan arithmetic: carbohydrate eaten over or under habit goes into or out of the stores, up to what
the stores hold, and takes its water along; around that, the day-to-day scatter of morning weight.
The band is wide on purpose: false precision would have the rules act on noise.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date, timedelta

from engine.athlete import Athlete, Baseline, Event
from engine.checkin import CheckIn, History
from engine.evidence import deciding as e
from engine.plan import PLAN_DAYS, PeakPlan
from engine.safety import plausible_weight

GRAMS_PER_KG = 1000


@dataclass(frozen=True, slots=True)
class WeightBand:
    """An 80 % band for one morning's weight, kg."""

    low_kg: float
    expected_kg: float
    high_kg: float


def weight_band(
    *,
    athlete: Athlete,
    baseline: Baseline,
    event: Event,
    plan: PeakPlan,
    history: History,
    checkin: CheckIn,
) -> WeightBand:
    """The band for the morning of `checkin`, from earlier mornings (its own weight is not used).

    The anchor is the mean of up to three earlier mornings, each carried forward to today; with no
    such morning, the athlete's body mass on file.
    """
    today = checkin.date
    stores = _stores(
        athlete=athlete,
        baseline=baseline,
        event=event,
        plan=plan,
        history=history,
        checkin=checkin,
    )
    mornings = _anchor_mornings(history, today)
    weights = [weight for _, weight in mornings] or [athlete.body_mass_kg]
    now = stores.get(today, 0.0)
    swings = [now - stores.get(day, 0.0) for day, _ in mornings] or [now]

    swing_kg = _mean(swings) / GRAMS_PER_KG
    water_low, water_high = e.GLYCOGEN_WATER_LOW.value, e.GLYCOGEN_WATER_HIGH.value
    swing = swing_kg * (1 + (water_low + water_high) / 2)
    expected = _mean(weights) + swing

    scatter = e.BAND_Z.value * e.MORNING_WEIGHT_CV.value * _mean(weights)
    scatter *= math.sqrt(1 + 1 / len(weights))
    outward = math.hypot(scatter, swing_kg * (water_high - water_low) / 2)
    # Lean dieting people moved far less than the arithmetic: the band reaches back towards that.
    inward = math.hypot(scatter, swing * (1 - e.SWING_SEEN_SHARE.value))
    below, above = (inward, outward) if swing > 0 else (outward, inward)
    return WeightBand(expected - below, expected, expected + above)


def _anchor_mornings(history: History, today: date) -> list[tuple[date, float]]:
    earliest = today - timedelta(days=int(e.ANCHOR_LOOKS_BACK_DAYS.value))
    found = [
        (c.date, c.weight_kg)
        for c in history.checkins
        if earliest <= c.date < today and c.weight_kg is not None and plausible_weight(c.weight_kg)
    ]
    return found[-int(e.MORNINGS_FOR_AN_ANCHOR.value) :]


def _stores(
    *,
    athlete: Athlete,
    baseline: Baseline,
    event: Event,
    plan: PeakPlan,
    history: History,
    checkin: CheckIn,
) -> dict[date, float]:
    """Grams in the stores against habit, by morning, from seven days out to today's."""
    most = e.STORE_SWING_G_PER_KG.value * athlete.body_mass_kg
    eaten = {c.date - timedelta(days=1): c.carb_eaten_g for c in (*history.checkins, checkin)}

    def carbs(day: date) -> float:
        told, planned = eaten.get(day), plan.day(event.days_out(day))
        if told is not None and 0 <= told <= e.CARB_EATEN_MOST_G.value:
            return told
        if (set_g := history.set_on(day)) is not None:
            return set_g
        return planned.carb_g if planned else baseline.carb_g

    day, level = event.day - timedelta(days=max(PLAN_DAYS)), 0.0
    levels = {day: level}
    while day < checkin.date:
        level = min(max(level + carbs(day) - baseline.carb_g, -most), most)
        day += timedelta(days=1)
        levels[day] = level
    return levels


def _mean(values: list[float]) -> float:
    return sum(values) / len(values)
