"""The safety flags: what in a morning's answers a coach must know of.

Every threshold stands in `engine.evidence.safety` with its unit and source. A caution forbids a
raise; a warning stops the adjusting; what follows from a flag is not decided here.
"""

from __future__ import annotations

from collections.abc import Iterator

from engine.evidence import safety as evidence
from engine.safety.complaints import Complaints, complaint_flags, complaints
from engine.safety.flag import FINDINGS, Fact, Finding, Flag, FlagId, finding, highest_level
from engine.safety.water import (
    LOW_SODIUM_SIGNS,
    fastest_drinking_l_per_h,
    low_sodium_flags,
    too_fast_flags,
    water_flags,
    water_target,
)
from engine.safety.weight import (
    above,
    below,
    energy_flags,
    exercise_kcal,
    finite,
    plausible_water,
    plausible_weight,
    weight_flags,
    within,
)
from engine.symptoms import Symptom
from engine.values.case import WeekSoFar
from engine.values.checkin import CheckIn, History
from engine.values.level import Level

__all__ = [
    "FINDINGS",
    "LOW_SODIUM_SIGNS",
    "Fact",
    "Finding",
    "Flag",
    "FlagId",
    "Level",
    "exercise_kcal",
    "fastest_drinking_l_per_h",
    "finding",
    "flags_of_words",
    "highest_level",
    "plausible_water",
    "plausible_weight",
    "safety_flags",
]


def safety_flags(
    week: WeekSoFar, *, water_ceiling_l: float | None, mornings_missed: int = 0
) -> tuple[Flag, ...]:
    """Every flag of one check-in, the most urgent first. Raises on no content of a check-in.

    Readings that cannot be believed raise no flags of their own: the gates ask for them again.
    A doubtful find in the reported symptoms and the note is a flag of its own, never a warning.
    """
    athlete, history, checkin = week.athlete, week.history, week.checkin
    said = complaints(checkin)
    flags = [
        *complaint_flags(said),
        *low_sodium_flags(
            history, checkin, said, target_l=water_target(week), ceiling_l=finite(water_ceiling_l)
        ),
        *weight_flags(athlete, history, checkin),
        *water_flags(week, said),
        *_urine(checkin, said),
        *_pulse(checkin),
        *_missed(mornings_missed),
        *_sleep(history, checkin),
        *energy_flags(athlete, week.plan.day(week.days_out)),
    ]
    return tuple(sorted(flags, key=lambda flag: -flag.level.rank))


def flags_of_words(told: CheckIn) -> tuple[Flag, ...]:
    """The flags that rest on what was said alone, without weight, plan or earlier mornings."""
    said = complaints(told)
    flags = [
        *complaint_flags(said),
        *low_sodium_flags(History(), told, said, target_l=None, ceiling_l=None),
        *_urine(told, said),
        *_pulse(told),
        *too_fast_flags(told),
    ]
    return tuple(sorted(flags, key=lambda flag: -flag.level.rank))


def _urine(checkin: CheckIn, said: Complaints) -> Iterator[Flag]:
    colour = within(checkin.urine_colour, float(evidence.URINE_DARK), float(evidence.URINE_DARKEST))
    facts: dict[str, Fact] = {}
    if colour is not None:
        facts["colour"] = colour
    if words := said.words.get(Symptom.URINE_DARK):
        facts["words"] = words
    if facts or Symptom.URINE_DARK in said.sure:
        yield Flag(Symptom.URINE_DARK, Level.CAUTION, facts, (evidence.ARMSTRONG_1994,))


def _pulse(checkin: CheckIn) -> Iterator[Flag]:
    pulse = within(checkin.resting_pulse, 0, float(evidence.PULSE_BELIEVABLE))
    if pulse is not None and above(pulse, float(evidence.PULSE_HIGH)):
        yield Flag(FlagId.PULSE_HIGH, Level.CAUTION, {"pulse": pulse}, (evidence.RESTING_PULSE,))


def _missed(mornings: int) -> Iterator[Flag]:
    if mornings >= float(evidence.MISSED_CHECK_IN):
        facts = {"mornings": float(mornings)}
        yield Flag(FlagId.MISSED_CHECK_IN, Level.ADVISORY, facts, (evidence.MISSED_MORNING,))


def _sleep(history: History, checkin: CheckIn) -> Iterator[Flag]:
    before = [c for c in history.checkins if (checkin.date - c.date).days == 1]
    nights = [within(c.sleep_h, 0, 24) for c in (*before, checkin)]
    slept = [night for night in nights if night is not None]
    if len(slept) == 2 and all(below(night, float(evidence.SHORT_SLEEP)) for night in slept):
        facts = {"last_night_h": slept[1], "night_before_h": slept[0]}
        yield Flag(FlagId.SHORT_SLEEP, Level.ADVISORY, facts, (evidence.ADULT_SLEEP,))
