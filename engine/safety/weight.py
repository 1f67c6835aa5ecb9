"""What is believed of a morning's readings, and what body mass says by its fall or rise."""

from __future__ import annotations

import math
import re
from collections.abc import Collection, Iterator

from engine.evidence import safety as evidence
from engine.evidence.planning.health import AFTER_RISE, AFTER_SHOW_HARM
from engine.evidence.units import LEAST_BODY_MASS, MOST_BODY_MASS, MOST_WATER
from engine.safety.flag import Flag, FlagId
from engine.symptoms import Symptom
from engine.values.athlete import Athlete, energy_kcal
from engine.values.checkin import CheckIn, History
from engine.values.level import Level
from engine.values.plan import DayTarget
from engine.written.late import Late

_TOLERANCE = 1e-9  # of the threshold; far below what any scale shows, above what floats lose


def finite(value: float | None) -> float | None:
    """The value as a finite float, or None."""
    if value is None:
        return None
    try:
        number = float(value)
    except (OverflowError, TypeError, ValueError):
        return None
    return number if math.isfinite(number) else None


def within(value: float | None, low: float, high: float) -> float | None:
    """The value where it lies between the bounds, else None."""
    number = finite(value)
    return number if number is not None and low <= number <= high else None


def believed_weight(kg: float | None) -> float | None:
    return within(kg, float(LEAST_BODY_MASS), float(MOST_BODY_MASS))


def believed_water(litres: float | None) -> float | None:
    return within(litres, 0, float(MOST_WATER))


def plausible_weight(kg: float | None) -> bool:
    """Whether this can be the body mass of an adult, in kg."""
    return believed_weight(kg) is not None


def plausible_water(litres: float | None) -> bool:
    """Whether this can be a day's drinking, in L."""
    return believed_water(litres) is not None


def at_least(value: float, threshold: float) -> bool:
    """value >= threshold, where 60.0 -> 58.2 kg is a drop of 3 % in spite of binary fractions."""
    return value >= threshold - _TOLERANCE * max(1.0, abs(threshold))


def above(value: float, threshold: float) -> bool:
    """value > threshold, equal within float error being not above."""
    return value > threshold + _TOLERANCE * max(1.0, abs(threshold))


def below(value: float, threshold: float) -> bool:
    """value < threshold, equal within float error being not below."""
    return value < threshold - _TOLERANCE * max(1.0, abs(threshold))


def last_morning(history: History, checkin: CheckIn) -> float | None:
    """The latest believable weight of the mornings just before, in kg."""
    reach = float(evidence.LAST_MORNING_WITHIN)
    for earlier in reversed(history.checkins):
        days = (checkin.date - earlier.date).days
        if 1 <= days <= reach and (weight := believed_weight(earlier.weight_kg)) is not None:
            return weight
    return None


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


_NO_SESSION = Late(
    r"\s*(?:rest|off|none|no|nothing|posing|mobility|stretch\w*|walk\w*|travel|-|/|n/?a)\b.*|\s*-?\s*",
    re.IGNORECASE | re.DOTALL,
)


def energy_flags(athlete: Athlete, day: DayTarget | None) -> Iterator[Flag]:
    """Silent where body fat is unknown or the day has no target."""
    lean = athlete.fat_free_mass_kg
    if lean is None or day is None:
        return
    eaten = energy_kcal(day.carb_g, day.protein_g, day.fat_g, day.fibre_g)
    exercise = exercise_kcal(day, athlete.body_mass_kg)
    available = (eaten - exercise) / lean
    if below(available, float(evidence.LOW_ENERGY_AVAILABILITY)):
        facts = {
            "energy_kcal": eaten,
            "exercise_kcal": exercise,
            "fat_free_mass_kg": lean,
            "kcal_per_kg": available,
        }
        sources = (evidence.ENERGY_AVAILABILITY, evidence.ANNEX_XIV, evidence.COMPENDIUM_2011)
        yield Flag(FlagId.LOW_ENERGY, Level.ADVISORY, facts, sources)


def exercise_kcal(day: DayTarget, body_mass_kg: float) -> float:
    """An estimate of the day's exercise energy, above rest, in kcal.

    Cardio counts as brisk walking and a training session as an hour of lifting, by the Compendium
    of Physical Activities (2011) less one MET of rest. Steps are daily life and are not counted.
    """
    per_met = float(evidence.KCAL_PER_MET_KG_H) * body_mass_kg
    cardio_h = (finite(day.cardio_min) or 0.0) / 60
    session_h = 0.0 if _NO_SESSION.fullmatch(day.training) else float(evidence.LIFTING_SESSION)
    return per_met * (
        (float(evidence.MET_CARDIO) - 1) * cardio_h + (float(evidence.MET_LIFTING) - 1) * session_h
    )


# The three mornings after: what rapid eating after long restriction can do, watched for.
#
# Case reports tell of paralysis and palpitations days after a show, from a fall of potassium and
# phosphate as food comes back at once. Warnings stay the same as ever; here is what else is looked at.

#: Not yet an emergency, and a doctor's matter all the same in these days.
LOOKED_AT = (
    Symptom.SWELLING, Symptom.SWOLLEN_HANDS, Symptom.CRAMPS, Symptom.TINGLING, Symptom.DIZZY,
    Symptom.SHAKY, Symptom.EXHAUSTION,
)  # fmt: skip


def after_show_flags(
    symptoms: Collection[Symptom], weight_kg: float | None, stage_weight_kg: float | None
) -> Iterator[Flag]:
    """Cautions for the coach: complaints of these days, and weight that shoots up."""
    told = [symptom for symptom in LOOKED_AT if symptom in symptoms]
    if told:
        named = {"symptoms": ", ".join(symptom.value for symptom in told)}
        yield Flag(FlagId.AFTER_SHOW_COMPLAINT, Level.CAUTION, named, (AFTER_SHOW_HARM,))
    if weight_kg is None or stage_weight_kg is None:
        return
    up = 100 * (weight_kg - stage_weight_kg) / stage_weight_kg
    if up > float(AFTER_RISE) + 1e-9:
        facts = {"weight_kg": weight_kg, "before_kg": stage_weight_kg, "up_percent": round(up, 6)}
        yield Flag(
            FlagId.AFTER_SHOW_RISE, Level.CAUTION, facts, (AFTER_SHOW_HARM, AFTER_RISE.source)
        )
