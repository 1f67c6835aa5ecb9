"""The body model against published experiments: measured beside modelled."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache

from engine.bench.protocol import Protocol, Reading, read_protocol, simulate
from engine.evidence.experiments.loading import MODERATE
from engine.evidence.experiments.loading import STUDIES as FITTED
from engine.evidence.experiments.study import UNFITTED, Measure, Measured, Study
from engine.model.physiology import HOURS_A_DAY

#: Those that the constants were fitted to, and those that they were not.
STUDIES = (*FITTED, *MODERATE, *UNFITTED)

GLYCOGEN_TOLERANCE = 0.15  # of the measured value, where no SD is reported
MASS_TOLERANCE_PERCENT = 0.4  # of body mass, where no SD is reported


@dataclass(frozen=True, slots=True, kw_only=True)
class Comparison:
    study: Study
    measured: Measured
    modelled: float
    allowed: float

    @property
    def residual(self) -> float:
        return self.modelled - self.measured.value

    @property
    def holds(self) -> bool:
        return abs(self.residual) <= self.allowed


@cache
def compare() -> tuple[Comparison, ...]:
    """Every measured figure of every study beside the model's, one set of constants for all.

    The same each time, and it takes seconds: kept once it was asked for.
    """
    return tuple(row for study in STUDIES for row in _compare_study(study))


def _compare_study(study: Study) -> list[Comparison]:
    protocol = read_protocol(study.protocol)
    readings = _phase_ends(simulate(protocol))
    usual = _phase_ends(simulate(_without_fibre(protocol)))
    return [
        Comparison(
            study=study,
            measured=measured,
            modelled=_modelled(measured, readings, usual),
            allowed=_allowed(measured, protocol),
        )
        for measured in study.measured
    ]


def _phase_ends(readings: list[Reading]) -> list[Reading]:
    """The last reading of each phase, the start first."""
    return list({reading.phase: reading for reading in readings}.values())


def _without_fibre(protocol: Protocol) -> Protocol:
    """The same protocol with the usual fibre throughout."""
    return replace(
        protocol,
        phases=tuple(
            replace(phase, intake=replace(phase.intake, fibre_g=None)) for phase in protocol.phases
        ),
    )


def _modelled(measured: Measured, readings: list[Reading], usual: list[Reading]) -> float:
    now, then = readings[measured.after], readings[measured.since]
    mass = now.body_mass_change_kg - then.body_mass_change_kg
    gained = now.muscle_glycogen_g - then.muscle_glycogen_g
    match measured.measure:
        case Measure.MUSCLE:
            return now.muscle_glycogen_mmol_per_kg
        case Measure.MUSCLE_RATIO:
            return 100 * now.muscle_glycogen_mmol_per_kg / then.muscle_glycogen_mmol_per_kg
        case Measure.MUSCLE_RATE:
            rise = now.muscle_glycogen_mmol_per_kg - then.muscle_glycogen_mmol_per_kg
            return rise / (HOURS_A_DAY * (now.day - then.day))
        case Measure.MASS_PERCENT:
            return 100 * mass / then.body_mass_kg
        case Measure.MASS:
            return mass
        case Measure.WATER:
            return now.water_change_l - then.water_change_l
        case Measure.STORES_PER_KG:
            return (now.muscle_glycogen_g + now.liver_glycogen_g) / readings[0].body_mass_kg
        case Measure.WATER_PER_GLYCOGEN:
            water = now.muscle_water_change_l - then.muscle_water_change_l
            return 1000 * water / gained
        case Measure.GUT_DIFFERENCE:
            return now.gut_kg - usual[measured.after].gut_kg


def _allowed(measured: Measured, protocol: Protocol) -> float:
    if measured.spread is not None:
        within = measured.spread
    elif measured.measure is Measure.MASS_PERCENT:
        within = MASS_TOLERANCE_PERCENT
    elif measured.measure in {Measure.MASS, Measure.WATER}:
        within = MASS_TOLERANCE_PERCENT / 100 * float(protocol.person.body_mass_kg)
    else:
        within = 0.0
    if measured.measure in {Measure.MUSCLE, Measure.MUSCLE_RATIO, Measure.MUSCLE_RATE}:
        within = max(within, GLYCOGEN_TOLERANCE * measured.value)
    return within
