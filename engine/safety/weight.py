"""Flags on body mass: lost or gained too fast."""

from __future__ import annotations

from collections.abc import Iterator

from engine.evidence import safety as evidence
from engine.safety.flag import Flag, FlagId
from engine.safety.readings import above, at_least, believed_weight, last_morning
from engine.values.athlete import Athlete
from engine.values.checkin import CheckIn, History
from engine.values.level import Level


def weight_flags(athlete: Athlete, history: History, checkin: CheckIn) -> Iterator[Flag]:
    now = believed_weight(checkin.weight_kg)
    if now is None:
        return
    last = last_morning(history, checkin)
    if last is not None:
        yield from _against_last_morning(now, last)
    down = (athlete.body_mass_kg - now) / athlete.body_mass_kg * 100
    if at_least(down, float(evidence.WEIGHT_DROP_BASELINE)):
        facts = {
            "weight_kg": now,
            "before_kg": athlete.body_mass_kg,
            "down_percent": round(down, 6),
        }
        yield Flag(FlagId.WEIGHT_DROP_BASELINE, Level.CAUTION, facts, (evidence.NATA_2000,))
    yield from _weekly_loss(now, history, checkin)


def _against_last_morning(now: float, last: float) -> Iterator[Flag]:
    down = (last - now) / last * 100
    if at_least(down, float(evidence.WEIGHT_DROP_DAY)):
        facts = {"weight_kg": now, "before_kg": last, "down_percent": round(down, 6)}
        yield Flag(FlagId.WEIGHT_DROP_DAY, Level.CAUTION, facts, (evidence.NATA_2000,))


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
        yield Flag(FlagId.WEEKLY_LOSS, Level.ADVISORY, facts, (evidence.NCAA_WEIGHT_LOSS,))
