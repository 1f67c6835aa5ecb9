"""Flags on body mass: lost or gained too fast."""

from __future__ import annotations

from collections.abc import Iterator

from engine.athlete import Athlete
from engine.checkin import CheckIn, History
from engine.evidence import safety as evidence
from engine.level import Level
from engine.symptoms import Symptom

from .complaints import Complaints
from .flag import Flag
from .readings import above, at_least, believed_water, believed_weight

_LOW_SODIUM_SIGNS = frozenset(
    {
        Symptom.HEADACHE,
        Symptom.SEVERE_HEADACHE,
        Symptom.NAUSEA,
        Symptom.VOMITING,
        Symptom.REPEATED_VOMITING,
        Symptom.SWOLLEN_HANDS,
    }
)


def weight_flags(
    athlete: Athlete,
    history: History,
    checkin: CheckIn,
    said: Complaints,
    water_ceiling_l: float | None,
) -> Iterator[Flag]:
    now = believed_weight(checkin.weight_kg)
    if now is None:
        return
    last = last_morning(history, checkin)
    if last is not None:
        yield from _against_last_morning(now, last, checkin, said, water_ceiling_l)
    down = (athlete.body_mass_kg - now) / athlete.body_mass_kg * 100
    if at_least(down, float(evidence.WEIGHT_DROP_BASELINE)):
        facts = {
            "weight_kg": now,
            "before_kg": athlete.body_mass_kg,
            "down_percent": round(down, 6),
        }
        yield Flag("weight-drop-baseline", Level.CAUTION, facts, (evidence.NATA_2000,))
    yield from _weekly_loss(now, history, checkin)


def last_morning(history: History, checkin: CheckIn) -> float | None:
    """The latest believable weight of the mornings just before, in kg."""
    reach = float(evidence.LAST_MORNING_WITHIN)
    for earlier in reversed(history.checkins):
        days = (checkin.date - earlier.date).days
        if 1 <= days <= reach and (weight := believed_weight(earlier.weight_kg)) is not None:
            return weight
    return None


def _against_last_morning(
    now: float, last: float, checkin: CheckIn, said: Complaints, water_ceiling_l: float | None
) -> Iterator[Flag]:
    change = (now - last) / last * 100
    facts: dict[str, float | str] = {"weight_kg": now, "before_kg": last}
    if at_least(-change, float(evidence.WEIGHT_DROP_DAY)):
        yield Flag(
            "weight-drop-24h",
            Level.CAUTION,
            {**facts, "down_percent": round(-change, 6)},
            (evidence.NATA_2000,),
        )
    water = believed_water(checkin.water_l)
    much_water = water is not None and water_ceiling_l is not None
    up_and_drinking = (
        at_least(change, float(evidence.WEIGHT_RISE_DAY))
        and much_water
        and at_least(water or 0, water_ceiling_l or 0)
    )
    up_and_unwell = above(now, last) and said.any_of(_LOW_SODIUM_SIGNS)
    if up_and_drinking or up_and_unwell:
        facts["up_percent"] = round(change, 6)
        if water is not None:
            facts["water_l"] = water
        signs = [said.words[s] for s in Symptom if s in _LOW_SODIUM_SIGNS and s in said.words]
        if signs:
            facts["words"] = "; ".join(signs)
        yield Flag("low-sodium-pattern", Level.CAUTION, facts, (evidence.HEW_BUTLER_2015,))


def _weekly_loss(now: float, history: History, checkin: CheckIn) -> Iterator[Flag]:
    """Against the morning nearest to seven days back, a day either side allowed for."""
    earlier = [
        (days, weight)
        for c in history.checkins
        if 6 <= (days := (checkin.date - c.date).days) <= 8
        and (weight := believed_weight(c.weight_kg)) is not None
    ]
    if not earlier:
        return
    days, before = min(earlier, key=lambda found: abs(found[0] - 7))
    weekly = (before - now) / before * 100 * 7 / days
    if above(weekly, float(evidence.WEEKLY_LOSS)):
        facts = {
            "weight_kg": now,
            "before_kg": before,
            "days": float(days),
            "percent": round(weekly, 6),
        }
        yield Flag("weekly-loss-fast", Level.ADVISORY, facts, (evidence.NCAA_WEIGHT_LOSS,))
