"""The flag on energy availability of the day that begins."""

from __future__ import annotations

import re
from collections.abc import Iterator

from engine.evidence import safety as evidence
from engine.safety.flag import Flag, FlagId
from engine.safety.readings import below, finite
from engine.values.athlete import Athlete
from engine.values.energy import energy_kcal
from engine.values.level import Level
from engine.values.plan import DayTarget
from engine.written.late import Late

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
