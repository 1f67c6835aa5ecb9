"""The weight band: where this morning's weight may lie if the week runs to plan.

Plan arithmetic: carbohydrate eaten over or under habit goes into or out of the stores, up to what
the stores hold, and takes its water along; around that, the day-to-day scatter of morning weight.
The band is wide on purpose: false precision would have the rules act on noise. What is not known
(missed mornings, training that nobody told of, habitual sodium, a mass on file that may be weeks old)
widens it further, so that it does not overrule what is seen.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date, timedelta

from engine.evidence import deciding as e
from engine.safety import plausible_weight
from engine.values.case import WeekSoFar
from engine.values.checkin import TRAINED, History
from engine.values.plan import PLAN_DAYS, Exercise

GRAMS_PER_KG = 1000


@dataclass(frozen=True, slots=True)
class WeightBand:
    """An 80 % band for one morning's weight, kg."""

    low_kg: float
    expected_kg: float
    high_kg: float


def weight_band(week: WeekSoFar) -> WeightBand:
    """The band for this morning, from earlier ones (its own weight is not used).

    The anchor is the mean of up to three earlier mornings, each carried forward to today; with no
    such morning, the athlete's body mass on file.
    """
    today = week.checkin.date
    stores = _stores(week)
    mornings = _anchor_mornings(week.history, today)
    weights = [weight for _, weight in mornings] or [week.athlete.body_mass_kg]
    now = stores.get(today, 0.0)
    swings = [now - stores.get(day, 0.0) for day, _ in mornings] or [now]

    swing_kg = (_mean(swings) + _left_in_g(week)) / GRAMS_PER_KG
    water_low, water_high = e.GLYCOGEN_WATER_LOW.value, e.GLYCOGEN_WATER_HIGH.value
    swing = swing_kg * _watered()
    expected = _mean(weights) + swing

    scatter = e.BAND_Z.value * e.MORNING_WEIGHT_CV.value * _mean(weights)
    scatter *= math.sqrt(1 + 1 / len(weights))
    unknown = _unknown_sd(week, [day for day, _ in mornings])
    scatter = math.hypot(scatter, e.BAND_Z.value * unknown)
    outward = math.hypot(scatter, swing_kg * (water_high - water_low) / 2)
    # Lean dieting people moved far less than the arithmetic: the band reaches back towards that.
    inward = math.hypot(scatter, swing * (1 - e.SWING_SEEN_SHARE.value))
    below, above = (inward, outward) if swing > 0 else (outward, inward)
    return WeightBand(expected - below, expected, expected + above)


def _unknown_sd(week: WeekSoFar, mornings: list[date]) -> float:
    """SD in kg of what the band's arithmetic does not know this morning."""
    kg = week.athlete.body_mass_kg
    doubts = [0.0 if mornings else e.ON_FILE_SD.value * kg]
    if mornings:
        missed = (week.checkin.date - mornings[-1]).days - 1
        doubts.append(e.MISSED_MORNING_SD.value * kg * math.sqrt(max(missed, 0)))
    if week.baseline.sodium_mg is None:
        doubts.append(e.UNKNOWN_SODIUM_SD.value * kg)
    if week.checkin.training_done is None and _trained_yesterday(week):
        session_kg = e.SESSION_G_PER_KG.value * kg * _watered() / GRAMS_PER_KG
        doubts.append(e.SESSION_UNKNOWN_SHARE.value * session_kg)
    return math.hypot(*doubts)


def _left_in_g(week: WeekSoFar) -> float:
    """Grams of glycogen that yesterday's session left in (or, negative, took besides)."""
    done = week.checkin.training_done
    if done is None or not _trained_yesterday(week):
        return 0.0
    return (1 - TRAINED[done]) * e.SESSION_G_PER_KG.value * week.athlete.body_mass_kg


def _trained_yesterday(week: WeekSoFar) -> bool:
    yesterday = week.yesterday
    return yesterday is not None and yesterday.exercise is not Exercise.NONE


def _watered() -> float:
    return 1 + (e.GLYCOGEN_WATER_LOW.value + e.GLYCOGEN_WATER_HIGH.value) / 2


def _anchor_mornings(history: History, today: date) -> list[tuple[date, float]]:
    earliest = today - timedelta(days=int(e.ANCHOR_LOOKS_BACK_DAYS.value))
    found = [
        (c.date, c.weight_kg)
        for c in history.checkins
        if earliest <= c.date < today and c.weight_kg is not None and plausible_weight(c.weight_kg)
    ]
    return found[-int(e.MORNINGS_FOR_AN_ANCHOR.value) :]


def _stores(week: WeekSoFar) -> dict[date, float]:
    """Grams in the stores against habit, by morning, from seven days out to today's."""
    athlete, baseline, event, plan = week.athlete, week.baseline, week.event, week.plan
    history, checkin = week.history, week.checkin
    planned = {event.day - timedelta(days=day.days_out): day.carb_g for day in plan.days}
    in_force = planned | {day.date: day.carb_g for day in history.set_days}
    most = e.STORE_SWING_G_PER_KG.value * athlete.body_mass_kg
    eaten = {c.date - timedelta(days=1): c.carb_eaten_g for c in (*history.checkins, checkin)}

    def carbs(day: date) -> float:
        told = eaten.get(day)
        if told is not None and 0 <= told <= e.CARB_EATEN_MOST_G.value:
            return told
        return in_force.get(day, baseline.carb_g)

    day, level = event.day - timedelta(days=max(PLAN_DAYS)), 0.0
    levels = {day: level}
    while day < checkin.date:
        level = min(max(level + carbs(day) - baseline.carb_g, -most), most)
        day += timedelta(days=1)
        levels[day] = level
    return levels


def _mean(values: list[float]) -> float:
    return sum(values) / len(values)
