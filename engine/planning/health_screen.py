"""The health questions before a first week: what asks for a doctor's clearance, what for caution.

Three lists to tick (conditions, eating, signs of too little energy), and weight for height. Nobody is
given a score: the outcome is that a doctor comes first, that the coach is to take care, or nothing.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from engine.evidence.planning import health as e
from engine.values.athlete import Sex


class Part(StrEnum):
    """One list to tick."""

    CONDITIONS = "conditions"
    EATING = "eating_habits"
    ENERGY = "energy_signs"


class Leads(StrEnum):
    """Where a sign leads by itself."""

    CLEARANCE = "clearance"
    CAUTION = "caution"
    COUNTED = "counted"  # only together with others


class Sign(StrEnum):
    """One line of a list, with its list, where it leads, and whom it is put to (None: everybody)."""

    part: Part
    leads: Leads
    only: Sex | None

    def __new__(cls, value: str, part: Part, leads: Leads, only: Sex | None = None) -> Sign:
        sign = str.__new__(cls, value)
        sign._value_ = value
        sign.part, sign.leads, sign.only = part, leads, only
        return sign

    DIABETES = "diabetes", Part.CONDITIONS, Leads.CLEARANCE
    KIDNEY = "kidney", Part.CONDITIONS, Leads.CLEARANCE
    HEART = "heart", Part.CONDITIONS, Leads.CLEARANCE
    FAINTED = "fainted", Part.CONDITIONS, Leads.CLEARANCE
    LOW_SODIUM = "low-sodium", Part.CONDITIONS, Leads.CLEARANCE
    MEDICINES = "medicines", Part.CONDITIONS, Leads.CLEARANCE
    GUT = "gut", Part.CONDITIONS, Leads.CAUTION
    GALLSTONES = "gallstones", Part.CONDITIONS, Leads.CAUTION
    EATING_DISORDER = "eating", Part.CONDITIONS, Leads.CLEARANCE
    PREGNANT = "pregnant", Part.CONDITIONS, Leads.CLEARANCE, Sex.FEMALE

    # SCOFF, in its order. Making oneself sick is dangerous by itself, whatever else is ticked.
    SICK = "scoff-sick", Part.EATING, Leads.CLEARANCE
    CONTROL = "scoff-control", Part.EATING, Leads.COUNTED
    ONE_STONE = "scoff-one-stone", Part.EATING, Leads.COUNTED
    FAT = "scoff-fat", Part.EATING, Leads.COUNTED
    FOOD = "scoff-food", Part.EATING, Leads.COUNTED

    PERIODS_AWAY = "periods-away", Part.ENERGY, Leads.CLEARANCE, Sex.FEMALE
    PERIODS_IRREGULAR = "periods-irregular", Part.ENERGY, Leads.CAUTION, Sex.FEMALE
    DRIVE_GONE = "drive-gone", Part.ENERGY, Leads.CLEARANCE, Sex.MALE
    DRIVE_LOW = "drive-low", Part.ENERGY, Leads.CAUTION, Sex.MALE
    STRESS_FRACTURE = "stress-fracture", Part.ENERGY, Leads.CLEARANCE
    ILL_OFTEN = "ill-often", Part.ENERGY, Leads.CAUTION
    ALWAYS_COLD = "always-cold", Part.ENERGY, Leads.CAUTION
    LOW_MOOD = "low-mood", Part.ENERGY, Leads.CAUTION
    BAD_SLEEP = "bad-sleep", Part.ENERGY, Leads.CAUTION


def sign_named(value: str) -> Sign:
    """The sign by its stored value. Raises KeyError for one that there is not."""
    return {sign.value: sign for sign in Sign}[value]


@dataclass(frozen=True, slots=True)
class Health:
    """What the answers come to. `floor`: under the body mass index at which no peak week runs.

    `clearance` and `cautions` hold single signs; the five questions on eating are one matter
    (`eating`), and so are several signs of low energy (`low_energy`).
    """

    clearance: tuple[Sign, ...]
    cautions: tuple[Sign, ...]
    eating: bool
    low_energy: bool
    underweight: bool
    floor: bool
    bmi: float

    @property
    def doctor_first(self) -> bool:
        return bool(self.clearance) or self.eating or self.low_energy or self.underweight


def asked_of(part: Part, sex: Sex) -> tuple[Sign, ...]:
    """The lines of a list that are put to somebody of this sex, in order."""
    return tuple(s for s in Sign if s.part is part and s.only in (None, sex))


def bmi_of(height_cm: float, body_mass_kg: float) -> float:
    """Body mass index in kg/m2."""
    return body_mass_kg / (height_cm / 100) ** 2


def believable(height_cm: float, body_mass_kg: float) -> bool:
    """Whether weight and height go together; if not, a slip is likelier than such a body."""
    bmi = bmi_of(height_cm, body_mass_kg)
    return float(e.BMI_DOUBTED_UNDER) <= bmi <= float(e.BMI_DOUBTED_OVER)


def body_fat_believable(sex: Sex, percent: float) -> bool:
    """Whether a body fat (%) goes with the sex; if not, it is asked about again."""
    if sex is Sex.FEMALE:
        low, high = e.BODY_FAT_DOUBTED_UNDER_WOMEN, e.BODY_FAT_DOUBTED_OVER_WOMEN
    else:
        low, high = e.BODY_FAT_DOUBTED_UNDER_MEN, e.BODY_FAT_DOUBTED_OVER_MEN
    return float(low) <= percent <= float(high)


def judged(told: Iterable[Sign], height_cm: float, body_mass_kg: float) -> Health:
    """What was ticked, and weight for height, as what follows from it.

    Sources: `engine.evidence.planning.health`; where a single condition leads is our own choice.
    """
    signs = tuple(dict.fromkeys(told))
    bmi = bmi_of(height_cm, body_mass_kg)
    alone = [s for s in signs if s.part is not Part.EATING]
    eating = [s for s in signs if s.part is Part.EATING]
    energy = [s for s in signs if s.part is Part.ENERGY]
    return Health(
        clearance=tuple(s for s in alone if s.leads is Leads.CLEARANCE),
        cautions=tuple(s for s in alone if s.leads is Leads.CAUTION),
        eating=len(eating) >= e.SCOFF_POSITIVE.value or Sign.SICK in eating,
        low_energy=len(energy) >= e.ENERGY_SIGNS.value,
        underweight=bmi < float(e.BMI_UNDERWEIGHT),
        floor=bmi < float(e.BMI_FLOOR),
        bmi=bmi,
    )
