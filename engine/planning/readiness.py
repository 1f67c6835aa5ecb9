"""Is a peak week worth it? A rating, a few questions, one of three outcomes, each with its reasons."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from enum import StrEnum

from engine.evidence.planning import health as e
from engine.evidence.source import Source, mark
from engine.values.athlete import Athlete, Baseline, Sex, energy_kcal
from engine.values.body import cunningham, energy_availability, mifflin_st_jeor


class Outcome(StrEnum):
    RUN = "run-it"
    KEEP_DIETING = "keep-dieting"
    DOCTOR = "doctor-first"


class Periods(StrEnum):
    REGULAR = "regular"
    IRREGULAR = "irregular"
    AWAY = "away"  # three months or more
    COVERED = "covered"  # a method that suppresses or replaces them
    UNKNOWN = "unknown"


class Injury(StrEnum):
    NONE = "none"
    MINOR = "minor"
    SERIOUS = "serious"


class Energy(StrEnum):
    GOOD = "good"
    LOW = "low"
    DRAINED = "drained"  # hardly any on most days


#: The coach's rating in plain words; 4 and 5 have something that a peak week can show.
CONDITIONS: Mapping[int, str] = {
    1: mark("soft: no lines at rest"),
    2: mark("fit: upper abs show, the rest is soft"),
    3: mark("lean: abs clear, legs and lower back not yet"),
    4: mark("very lean: separation all over, lower back and hips tight"),
    5: mark("stage lean: fine lines everywhere, nothing left to lose"),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Questions:
    """What is known of the athlete some days before; None is "not said".

    `loss_percent_per_week` is positive for weight going down; `loss_percent_in_all` over the diet.
    `exercise_kcal` is an ordinary day's.
    """

    condition: int
    body_fat_percent: float | None = None
    loss_percent_per_week: float | None = None
    loss_percent_in_all: float | None = None
    weeks_dieted: float | None = None
    periods: Periods = Periods.UNKNOWN
    energy: Energy | None = None
    sleep_h: float | None = None
    injury: Injury = Injury.NONE
    needs_doctor: bool = False
    exercise_kcal: float = 0.0

    def __post_init__(self) -> None:
        if self.condition not in CONDITIONS:
            raise ValueError(f"condition {self.condition} is outside 1 to 5")


@dataclass(frozen=True, slots=True)
class Reason:
    """One thing that speaks for an outcome (None: worth knowing, whatever the outcome)."""

    id: str
    speaks_for: Outcome | None
    source: Source
    facts: Mapping[str, float] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Readiness:
    """The outcome, its reasons first, and figures: availability and resting energy in kcal."""

    outcome: Outcome
    reasons: tuple[Reason, ...]
    availability: float | None
    resting_kcal: float


REASONS = (
    "screening", "injury-serious", "periods-away", "bmi-low", "lost-much", "availability-very-low",
    "not-lean", "lean", "body-fat-doubts", "loss-too-fast", "loss-fast", "availability-low",
    "periods-irregular", "energy-low", "diet-long", "sleep-short", "injury-minor",
)  # fmt: skip


def readiness(
    athlete: Athlete, baseline: Baseline, years: float, questions: Questions
) -> Readiness:
    """Doctor first where anything asks for one; no peak week for somebody not yet lean; else run it."""
    lean = _fat_free_mass(athlete, questions)
    available = (
        energy_availability(_eaten(baseline), questions.exercise_kcal, lean) if lean else None
    )
    found = [
        *_doctor(athlete, questions, available),
        *_condition(athlete, questions),
        *_worth_knowing(athlete, questions, available),
    ]
    asked = {reason.speaks_for for reason in found}
    outcome = next(o for o in (Outcome.DOCTOR, Outcome.KEEP_DIETING, Outcome.RUN) if o in asked)
    reasons = sorted(found, key=lambda reason: reason.speaks_for is not outcome)
    resting = (
        cunningham(lean)
        if lean
        else mifflin_st_jeor(athlete.sex, athlete.body_mass_kg, athlete.height_cm, years)
    )
    return Readiness(outcome, tuple(reasons), available, resting)


def _fat_free_mass(athlete: Athlete, questions: Questions) -> float | None:
    percent = questions.body_fat_percent or athlete.body_fat_percent
    return athlete.body_mass_kg * (1 - percent / 100) if percent is not None else None


def _eaten(baseline: Baseline) -> float:
    return energy_kcal(baseline.carb_g, baseline.protein_g, baseline.fat_g, baseline.fibre_g)


def _doctor(athlete: Athlete, questions: Questions, available: float | None) -> Iterator[Reason]:
    doctor = Outcome.DOCTOR
    if questions.needs_doctor:
        yield Reason("screening", doctor, e.SCREENING)
    if questions.injury is Injury.SERIOUS:
        yield Reason("injury-serious", doctor, e.INJURY)
    if athlete.sex is Sex.FEMALE and questions.periods is Periods.AWAY:
        yield Reason("periods-away", doctor, e.REDS_2023)
    bmi = athlete.body_mass_kg / (athlete.height_cm / 100) ** 2
    if bmi < float(e.BMI_TOO_LOW):
        yield Reason("bmi-low", doctor, e.NICE_REFEEDING, {"bmi": bmi})
    lost = questions.loss_percent_in_all
    if lost is not None and lost > float(e.LOSS_IN_ALL):
        yield Reason("lost-much", doctor, e.NICE_REFEEDING, {"percent": lost})
    if available is not None and available < float(e.VERY_LOW_AVAILABILITY):
        source = e.VERY_LOW_AVAILABILITY.source
        yield Reason("availability-very-low", doctor, source, {"kcal_per_kg": available})


def _condition(athlete: Athlete, questions: Questions) -> Iterator[Reason]:
    facts = {"condition": float(questions.condition)}
    if questions.condition < e.CONDITION_READY.value:
        yield Reason("not-lean", Outcome.KEEP_DIETING, e.PEAK_WEEK_WORTH, facts)
        return
    yield Reason("lean", Outcome.RUN, e.PEAK_WEEK_WORTH, facts)
    high = e.BODY_FAT_HIGH_WOMEN if athlete.sex is Sex.FEMALE else e.BODY_FAT_HIGH_MEN
    percent = questions.body_fat_percent
    if percent is not None and percent > float(high):
        facts = {"percent": percent, "usual": float(high)}
        yield Reason("body-fat-doubts", None, high.source, facts)


def _worth_knowing(
    athlete: Athlete, questions: Questions, available: float | None
) -> Iterator[Reason]:
    loss = questions.loss_percent_per_week
    if loss is not None and loss > float(e.LOSS_TOO_FAST):
        yield Reason("loss-too-fast", None, e.LOSS_TOO_FAST.source, {"percent": loss})
    elif loss is not None and loss > float(e.LOSS_FAST):
        yield Reason("loss-fast", None, e.LOSS_FAST.source, {"percent": loss})
    if available is not None and (
        float(e.VERY_LOW_AVAILABILITY) <= available < float(e.LOW_AVAILABILITY)
    ):
        source = e.LOW_AVAILABILITY.source
        yield Reason("availability-low", None, source, {"kcal_per_kg": available})
    if athlete.sex is Sex.FEMALE and questions.periods is Periods.IRREGULAR:
        yield Reason("periods-irregular", None, e.REDS_2023)
    if questions.energy in (Energy.LOW, Energy.DRAINED):
        yield Reason("energy-low", None, e.REDS_2023)
    if questions.weeks_dieted is not None and questions.weeks_dieted > float(e.LONG_DIET_WEEKS):
        source = e.LONG_DIET_WEEKS.source
        yield Reason("diet-long", None, source, {"weeks": questions.weeks_dieted})
    if questions.sleep_h is not None and questions.sleep_h < float(e.SLEEP_SHORT_H):
        yield Reason("sleep-short", None, e.SLEEP_SHORT_H.source, {"hours": questions.sleep_h})
    if questions.injury is Injury.MINOR:
        yield Reason("injury-minor", None, e.INJURY)
