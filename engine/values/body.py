"""Body composition from skinfolds, resting energy, and energy availability: published equations."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from engine.evidence.planning.health import SKINFOLD_LEAST_MM, SKINFOLD_MOST_MM
from engine.evidence.source import mark
from engine.values.athlete import Sex

#: Density (g/mL) = a - b x sum + c x sum^2 - d x years, by sex and number of sites.
#: Jackson & Pollock 1978 (men), Jackson, Pollock & Ward 1980 (women).
_DENSITY = {
    (Sex.MALE, 3): (1.10938, 0.0008267, 0.0000016, 0.0002574),
    (Sex.FEMALE, 3): (1.0994921, 0.0009929, 0.0000023, 0.0001392),
    (Sex.MALE, 7): (1.112, 0.00043499, 0.00000055, 0.00028826),
    (Sex.FEMALE, 7): (1.097, 0.00046971, 0.00000056, 0.00012828),
}
#: Where a fold of skin is measured.
SITES_3 = {
    Sex.MALE: (mark("chest"), mark("abdomen"), mark("thigh")),
    Sex.FEMALE: (mark("triceps"), mark("hip (suprailiac)"), mark("thigh")),
}


def body_density(sex: Sex, years: float, skinfolds_mm: Sequence[float]) -> float:
    """Body density in g/mL from three or seven skinfolds.

    Raises ValueError for another number of sites, or for folds that nobody has.
    """
    factors = _DENSITY.get((sex, len(skinfolds_mm)))
    if factors is None:
        raise ValueError(f"3 or 7 skinfolds make a density, not {len(skinfolds_mm)}")
    low, high = float(SKINFOLD_LEAST_MM), float(SKINFOLD_MOST_MM)
    for fold in skinfolds_mm:
        if not (math.isfinite(fold) and low <= fold <= high):
            raise ValueError(f"a skinfold of {fold} mm is outside {low:g} to {high:g} mm")
    a, b, c, d = factors
    total = sum(skinfolds_mm)
    return a - b * total + c * total**2 - d * years


def siri_body_fat(density: float) -> float:
    """Body fat in % from density in g/mL (Siri 1961)."""
    return 495 / density - 450


def body_fat_from_skinfolds(sex: Sex, years: float, skinfolds_mm: Sequence[float]) -> float:
    """Body fat in %; very lean athletes come out some per cent either side of the truth."""
    return siri_body_fat(body_density(sex, years, skinfolds_mm))


def mifflin_st_jeor(sex: Sex, kg: float, cm: float, years: float) -> float:
    """Resting energy in kcal a day (Mifflin, St Jeor et al. 1990)."""
    return 10 * kg + 6.25 * cm - 5 * years + (5 if sex is Sex.MALE else -161)


def cunningham(fat_free_mass_kg: float) -> float:
    """Resting energy in kcal a day from fat-free mass (Cunningham 1980)."""
    return 500 + 22 * fat_free_mass_kg


def energy_availability(eaten_kcal: float, exercise_kcal: float, fat_free_mass_kg: float) -> float:
    """kcal per kg fat-free mass a day: what food leaves once exercise has been paid for.

    Raises ValueError where there is no fat-free mass to divide by.
    """
    if not fat_free_mass_kg > 0:
        raise ValueError("fat-free mass has to be over 0 kg")
    return (eaten_kcal - exercise_kcal) / fat_free_mass_kg


def against_band(
    weight_kg: float | None, low_kg: float | None, high_kg: float | None
) -> int | None:
    """1 for a weight above the band that was expected, -1 below it, 0 inside; None where unknown."""
    if weight_kg is None or low_kg is None or high_kg is None:
        return None
    return (weight_kg > high_kg) - (weight_kg < low_kg)


# What finished weeks of other athletes teach of the next one: a prior, as it is stored with a case.
#
# `None` in its place is the published prior. Nothing here names an athlete.


@dataclass(frozen=True, slots=True)
class Spread:
    """A parameter of the model: where it lies and how far it scatters (its SD)."""

    name: str
    mean: float
    spread: float

    def __post_init__(self) -> None:
        if not (math.isfinite(self.mean) and math.isfinite(self.spread) and self.spread > 0):
            raise ValueError(f"{self.name}: {self.mean} with spread {self.spread} is no prior")


@dataclass(frozen=True, slots=True)
class KindShares:
    """How likely each kind of a trait of bodies is held to be; the shares add up to 1."""

    name: str
    shares: tuple[float, ...]

    def __post_init__(self) -> None:
        if any(not 0 <= share <= 1 for share in self.shares) or abs(sum(self.shares) - 1) > 1e-6:
            raise ValueError(f"{self.name}: {self.shares} are no shares of one")


@dataclass(frozen=True, slots=True, kw_only=True)
class Taught:
    """What finished weeks have taught of one athlete: the belief after them, summed up."""

    weeks: int
    model: int
    parameters: tuple[Spread, ...]
    kinds: tuple[KindShares, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Prior:
    """The prior for the next athlete of a coach, with what it rests on.

    `model` is the number of the model whose parameters these are.
    """

    weeks: int
    athletes: int
    model: int
    parameters: tuple[Spread, ...]
    kinds: tuple[KindShares, ...]
