"""Who the athlete is: the facts that hold for the whole week."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, time
from enum import StrEnum
from zoneinfo import ZoneInfo

from engine.evidence.planning.drafting import CAP_BY_HEIGHT_CM
from engine.evidence.safety import (
    KCAL_PER_G_CARB,
    KCAL_PER_G_FAT,
    KCAL_PER_G_FIBRE,
    KCAL_PER_G_PROTEIN,
)
from engine.values.checkin import USUAL_LOOK, TargetLook


def energy_kcal(carb_g: float, protein_g: float, fat_g: float, fibre_g: float | None = 0) -> float:
    """Energy in kcal by EU 1169/2011 Annex XIV; carbohydrate is without fibre, as on EU labels.

    Fibre that is not counted adds nothing: where too little energy is what is looked for, that is
    the careful side, and 25 g of it are 50 kcal.
    """
    return (
        carb_g * float(KCAL_PER_G_CARB)
        + protein_g * float(KCAL_PER_G_PROTEIN)
        + fat_g * float(KCAL_PER_G_FAT)
        + (fibre_g or 0) * float(KCAL_PER_G_FIBRE)
    )


#: Caps that can be a class at all.
LIGHTEST_KG, HEAVIEST_KG = 30.0, 250.0


@dataclass(frozen=True, slots=True, kw_only=True)
class WeighIn:
    """`at` is the hour where the event is, so many days before its day; `cap_kg` is still allowed.

    `over_height_kg` is what a height-weight class allows over the height in cm less 100, if that is
    what the cap was made of.
    """

    days_out: int
    at: time
    cap_kg: float
    over_height_kg: float | None = None

    def __post_init__(self) -> None:
        if not 0 <= self.days_out <= 7:
            raise ValueError(f"a weigh-in is 7 to 0 days out, not {self.days_out}")
        if not LIGHTEST_KG <= self.cap_kg <= HEAVIEST_KG:
            raise ValueError(f"a cap of {self.cap_kg} kg is outside 30 to 250 kg")

    @classmethod
    def by_height(
        cls, *, days_out: int, at: time, height_cm: float, over_height_kg: float
    ) -> WeighIn:
        """The cap of a height-weight class for somebody of this height."""
        cap = round(height_cm - CAP_BY_HEIGHT_CM.value + over_height_kg, 1)
        return cls(days_out=days_out, at=at, cap_kg=cap, over_height_kg=over_height_kg)


class Sex(StrEnum):
    FEMALE = "female"
    MALE = "male"


class EventKind(StrEnum):
    SHOW = "show"
    SHOOT = "shoot"
    TRIAL = "trial"


@dataclass(frozen=True, slots=True, kw_only=True)
class Athlete:
    """Body mass is the mass before the week begins, the figure all percentages are taken of."""

    sex: Sex
    birth_year: int
    height_cm: float
    body_mass_kg: float
    body_fat_percent: float | None = None

    def __post_init__(self) -> None:
        if not 1900 <= self.birth_year <= 2100:
            raise ValueError(f"birth_year {self.birth_year} is no year of birth")
        if not 120 <= self.height_cm <= 230:
            raise ValueError(f"height_cm {self.height_cm} is outside 120 to 230 cm")
        if not 30 <= self.body_mass_kg <= 250:
            raise ValueError(f"body_mass_kg {self.body_mass_kg} is outside 30 to 250 kg")
        if self.body_fat_percent is not None and not 2 <= self.body_fat_percent <= 60:
            raise ValueError(f"body_fat_percent {self.body_fat_percent} is outside 2 to 60 %")

    @property
    def fat_free_mass_kg(self) -> float | None:
        """Fat-free mass in kg, or None where body fat is unknown."""
        if self.body_fat_percent is None:
            return None
        return self.body_mass_kg * (1 - self.body_fat_percent / 100)


@dataclass(frozen=True, slots=True, kw_only=True)
class Baseline:
    """What the athlete habitually eats and drinks a day, before the week.

    Fibre and sodium are None where they are not counted: then they stay as always, and no ordinary
    figure takes the place of a habit that nobody knows.
    """

    carb_g: float
    protein_g: float
    fat_g: float
    fibre_g: float | None = None
    water_l: float
    sodium_mg: float | None = None

    def __post_init__(self) -> None:
        bounds = {
            "carb_g": 1500, "protein_g": 600, "fat_g": 400,
            "fibre_g": 150, "water_l": 15, "sodium_mg": 20000,
        }  # fmt: skip
        for name, most in bounds.items():
            value = getattr(self, name)
            if value is not None and not 0 <= value <= most:
                raise ValueError(f"baseline {name} {value} is outside 0 to {most}")


@dataclass(frozen=True, slots=True, kw_only=True)
class Event:
    """The day everything leads to: a show, a photo shoot, or a trial of either.

    `target` is the look that it asks for, None where nobody has said.
    """

    kind: EventKind
    day: date
    zone: str
    target: TargetLook | None = None

    def __post_init__(self) -> None:
        ZoneInfo(self.zone)  # an unknown zone is refused here, by name

    @property
    def look(self) -> TargetLook:
        """The look that rules and forecast aim for."""
        return self.target or USUAL_LOOK

    def days_out(self, day: date) -> int:
        """Days from `day` to the event: 0 on the day itself, negative after it."""
        return (self.day - day).days
